/** The chapters of the design report, one class a subject. */
package sandslurry.report.section;
