/**
 * What the program knows of one fact of each kind, said once by its subject: here the field, which
 * is an input with its name, label, meaning, limits and default.
 */
package sandslurry.fact;
