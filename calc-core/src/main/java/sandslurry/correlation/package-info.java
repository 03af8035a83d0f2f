/**
 * What every published correlation gives back: a value, where it comes from, and whether the inputs
 * lie inside the range for which it was published.
 */
package sandslurry.correlation;
