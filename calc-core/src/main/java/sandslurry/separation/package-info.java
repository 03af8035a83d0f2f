/** What is caught, grain size by grain size: settling lanes and basins. */
package sandslurry.separation;
