/** What the pens make: manure, sand, wash and flush water. */
package sandslurry.plant.pen;
