/**
 * The Design: what the user knows, as a document that keeps every text that was typed, its file,
 * and its reading into checked values. Reading finds all problems at once and names each field.
 */
package sandslurry.design;
