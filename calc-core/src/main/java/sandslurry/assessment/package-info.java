/**
 * The evaluation of a Design into an Assessment: results, findings with a verdict, safety cautions
 * and the working by which every number can be followed. Pure: no files, no clock, no state.
 */
package sandslurry.assessment;
