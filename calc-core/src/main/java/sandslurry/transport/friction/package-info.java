/** Friction of a liquid of any rheology in a pipe. */
package sandslurry.transport.friction;
