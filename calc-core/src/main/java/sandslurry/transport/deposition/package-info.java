/** The least velocity at which sand stays in motion. */
package sandslurry.transport.deposition;
