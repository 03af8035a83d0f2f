/** Head lost in bends, tees, valves and entries. */
package sandslurry.pipe.fittings;
