/** The sand and the liquid as they were understood. */
package sandslurry.assessment.materials;
