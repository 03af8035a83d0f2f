/** Which standard pipes exist, and what a route is made of. */
package sandslurry.pipe;
