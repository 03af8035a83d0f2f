/** The hydrocyclone. */
package sandslurry.separation.cyclone;
