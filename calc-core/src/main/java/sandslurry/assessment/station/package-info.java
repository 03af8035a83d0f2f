/** The pump and its suction. */
package sandslurry.assessment.station;
