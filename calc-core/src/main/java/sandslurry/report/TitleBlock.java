package sandslurry.report;

/**
 * What a report says of itself.
 *
 * @param file the design file; empty when the design was not saved
 * @param date the date of the report, as text
 * @param program name and version of the program
 */
public record TitleBlock(String file, String date, String program) {}
