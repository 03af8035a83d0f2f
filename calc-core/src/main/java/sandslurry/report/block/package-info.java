/** Pieces of a report as data, and their writers as text and as HTML: knows no subject. */
package sandslurry.report.block;
