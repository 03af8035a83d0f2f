/** What a stop, a restart, a flush, a surge and the strokes of a pump do to the line. */
package sandslurry.assessment.stop;
