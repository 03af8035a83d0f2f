/**
 * The hydraulic profile of a plant: fall of what runs by gravity, static head of what is pumped.
 */
package sandslurry.assessment.plant.profile;
