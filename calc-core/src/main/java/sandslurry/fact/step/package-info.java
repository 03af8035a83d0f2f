/** The steps of the working, each with what was put in. */
package sandslurry.fact.step;
