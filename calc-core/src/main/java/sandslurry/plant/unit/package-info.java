/** What each unit of the plant does to a stream. */
package sandslurry.plant.unit;
