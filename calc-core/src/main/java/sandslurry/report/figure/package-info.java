/** Result numbers, each declared once: a column of a table and a figure for other programs. */
package sandslurry.report.figure;
