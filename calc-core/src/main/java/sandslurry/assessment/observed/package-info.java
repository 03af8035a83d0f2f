/** What a pressure and a flow rate read on site say of the line and of its pump. */
package sandslurry.assessment.observed;
