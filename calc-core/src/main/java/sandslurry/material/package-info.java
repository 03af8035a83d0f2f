/** What the liquid, the sand and the mixture of both are made of. */
package sandslurry.material;
