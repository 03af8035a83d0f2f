/** Which standard pipes there are: size, wall, bore and rating. */
package sandslurry.pipe.catalogue;
