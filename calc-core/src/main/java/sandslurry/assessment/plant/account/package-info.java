/** Sand, storage, energy and money of the plant, each with its range. */
package sandslurry.assessment.plant.account;
