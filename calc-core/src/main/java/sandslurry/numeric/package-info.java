/**
 * Root finding, interpolation and sampling on plain numbers: the only room that knows the numerics
 * library, so that its traps are handled once.
 */
package sandslurry.numeric;
