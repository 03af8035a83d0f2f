/** The design file: its texts as typed, its reading with all problems at once, its saving. */
package sandslurry.design.document;
