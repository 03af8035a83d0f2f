/** The settling lane. */
package sandslurry.separation.lane;
