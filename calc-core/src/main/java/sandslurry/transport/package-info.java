/**
 * What happens in the pipe: friction of the liquid, deposition velocity of the sand, head loss with
 * solids.
 */
package sandslurry.transport;
