/** The plant through the hours of a day. */
package sandslurry.plant.schedule;
