/** What brings manure to the pump, what returns by gravity, and the day of pumping. */
package sandslurry.assessment.feed;
