package sandslurry.units;

import java.util.Comparator;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Text of unknown origin made fit to be shown: what a design file holds may carry characters that a
 * terminal obeys or that turn the direction of writing, and may be as long as a book.
 */
public final class ShownText {
  /** The most characters of a value that a message repeats. */
  private static final int BRIEF = 60;

  /** The most characters of a message. */
  private static final int MESSAGE = 700;

  /** A space between a number and a unit. */
  private static final Pattern BEFORE_UNIT =
      Pattern.compile("(?<=\\d) (?=(?:" + symbols(symbol -> true) + ")(?![A-Za-z0-9]))");

  /** A unit at whose stroke a line might break, with its number and the mark that follows it. */
  private static final Pattern QUOTIENT =
      Pattern.compile(
          "(?:(?<![A-Za-z0-9])[0-9][0-9.]*\u00a0)?(?<![A-Za-z0-9])(?:"
              + symbols(symbol -> symbol.contains("/"))
              + "|[A-Za-z]{1,3}[23]?/(?:min|[a-z]))(?![A-Za-z0-9])[.,:;)]*");

  private static final char NO_BREAK = '\u00a0';

  private ShownText() {}

  private static String symbols(Predicate<String> which) {
    return Kind.all().stream()
        .flatMap(kind -> Stream.of(UnitSystem.values()).map(kind::symbol))
        .filter(symbol -> !symbol.isEmpty())
        .filter(which)
        .distinct()
        .sorted(Comparator.comparingInt(String::length).reversed())
        .map(Pattern::quote)
        .collect(Collectors.joining("|"));
  }

  /**
   * A text in which each number holds together with its unit.
   *
   * @param text any text
   * @return the text, with a no-break space between them
   */
  public static String together(String text) {
    return BEFORE_UNIT.matcher(text).replaceAll(String.valueOf(NO_BREAK));
  }

  /**
   * A text that was held together, with common spaces again.
   *
   * @param text any text
   * @return the text without no-break spaces
   */
  public static String apart(String text) {
    return text.replace(NO_BREAK, ' ');
  }

  /**
   * Marks the units at whose stroke a line might break, each with its number and the mark that
   * follows it.
   *
   * @param markup a text
   * @param before what to write before each
   * @param after what to write after each
   * @return the text with the marks
   */
  public static String markQuotients(String markup, String before, String after) {
    return QUOTIENT.matcher(markup).replaceAll(before + "$0" + after);
  }

  /**
   * A text with every control, direction and other invisible character written as an escape.
   *
   * @param text any text
   * @return for example {@code a\u005cu202eb} for an a, a right-to-left override and a b
   */
  public static String escaped(String text) {
    if (text.codePoints().noneMatch(ShownText::isInvisible)) {
      return text;
    }
    StringBuilder shown = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              if (isInvisible(c)) {
                for (char unit : Character.toChars(c)) {
                  shown.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
                }
              } else {
                shown.appendCodePoint(c);
              }
            });
    return shown.toString();
  }

  private static boolean isInvisible(int codePoint) {
    return switch (Character.getType(codePoint)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.SURROGATE,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR ->
          true;
      default -> false;
    };
  }

  /**
   * A value as a message may repeat it: escaped, and only its beginning when it is long.
   *
   * @param value any text
   * @return at most 60 characters of it
   */
  public static String brief(String value) {
    return cut(escaped(value.substring(0, Math.min(value.length(), 2 * BRIEF))), BRIEF);
  }

  /**
   * A sentence that is shown on one line, whatever it repeats.
   *
   * @param message any text
   * @return at most 700 characters of it, escaped
   */
  public static String message(String message) {
    return cut(escaped(message.substring(0, Math.min(message.length(), 2 * MESSAGE))), MESSAGE);
  }

  /**
   * Several sentences, each on a line of its own.
   *
   * @param text any text
   * @return the text, escaped but for its line breaks
   */
  public static String lines(String text) {
    return text.lines().map(ShownText::escaped).collect(Collectors.joining(System.lineSeparator()));
  }

  private static String cut(String text, int most) {
    return text.length() <= most ? text : text.substring(0, most - 1).stripTrailing() + "\u2026";
  }
}
