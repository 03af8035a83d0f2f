/** How an Assessment reads: one report as data, and its views as plain text and as JSON. */
package sandslurry.report;
