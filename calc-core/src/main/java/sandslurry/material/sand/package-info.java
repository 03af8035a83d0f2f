/** Grains and their gradation. */
package sandslurry.material.sand;
