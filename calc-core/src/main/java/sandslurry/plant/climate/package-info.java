/** Published records of the weather of a place, month by month. */
package sandslurry.plant.climate;
