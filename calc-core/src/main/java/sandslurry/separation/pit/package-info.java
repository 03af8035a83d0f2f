/** Pits and their mixing. */
package sandslurry.separation.pit;
