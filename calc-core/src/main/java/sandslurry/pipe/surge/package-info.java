/** Water hammer: what a stop does to a pipe. */
package sandslurry.pipe.surge;
