/** What is found of the plant. */
package sandslurry.assessment.plant.judged;
