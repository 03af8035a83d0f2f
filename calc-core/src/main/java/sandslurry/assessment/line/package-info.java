/** The line at the flow rates judged: settling, head, pressure, dilution. */
package sandslurry.assessment.line;
