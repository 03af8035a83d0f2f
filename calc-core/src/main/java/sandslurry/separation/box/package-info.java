/** The dilution box and the heap of drained sand. */
package sandslurry.separation.box;
