/** What is given of the line: its route and flow rates. */
package sandslurry.design.line;
