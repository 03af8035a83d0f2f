/** Positive-displacement pumps and the pulse of their strokes. */
package sandslurry.pump.piston;
