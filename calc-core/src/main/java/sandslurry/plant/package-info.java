/** From pen to storage: streams by constituent and size class. */
package sandslurry.plant;
