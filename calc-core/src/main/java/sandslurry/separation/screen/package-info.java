/** Screens and presses that part fibre from liquid. */
package sandslurry.separation.screen;
