/** What was found of a design, how grave it is, and what to do. */
package sandslurry.fact.finding;
