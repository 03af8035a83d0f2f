/** At what level the units of a plant stand, and whether what runs by gravity has fall enough. */
package sandslurry.plant.profile;
