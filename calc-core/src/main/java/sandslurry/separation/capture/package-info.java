/** What share of a size settles in a basin. */
package sandslurry.separation.capture;
