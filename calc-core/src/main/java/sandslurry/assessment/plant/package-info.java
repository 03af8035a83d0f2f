/** The plant: its balance, units, day and circulating streams. */
package sandslurry.assessment.plant;
