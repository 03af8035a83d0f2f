/** The settling lane over its cleaning cycle. */
package sandslurry.assessment.lane;
