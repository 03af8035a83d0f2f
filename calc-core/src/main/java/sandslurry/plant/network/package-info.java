/** Units and streams in a network and its steady balance. */
package sandslurry.plant.network;
