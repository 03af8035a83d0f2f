/** What a pressure and a flow rate read on site say of a line: pure numbers, no design. */
package sandslurry.diagnosis;
