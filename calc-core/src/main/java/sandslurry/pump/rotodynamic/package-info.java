/** Curves of rotodynamic pumps and where they meet the line. */
package sandslurry.pump.rotodynamic;
