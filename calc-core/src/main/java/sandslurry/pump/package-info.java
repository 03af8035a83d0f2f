/**
 * Rotodynamic and piston pumps: the curve, what sand takes from it, where it meets the system, what
 * power it needs, and whether the suction side can feed it.
 */
package sandslurry.pump;
