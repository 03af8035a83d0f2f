/** Head lost by a slurry of liquid and sand. */
package sandslurry.transport.headloss;
