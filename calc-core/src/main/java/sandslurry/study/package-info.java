/**
 * Many evaluations of one design: which standard pipe fits, and which change of a design mends it.
 */
package sandslurry.study;
