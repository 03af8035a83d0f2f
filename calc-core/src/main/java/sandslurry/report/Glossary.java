package sandslurry.report;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;

/** The words of the trade that reports and form use, a sentence each. */
public final class Glossary {
  private static final String FILE = "glossary.txt";
  private static final int WIDE = 2000;
  private static final Map<String, String> TERMS = read();

  private Glossary() {}

  private static Map<String, String> read() {
    Map<String, String> terms = new LinkedHashMap<>();
    try (BufferedReader file =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(Glossary.class.getResourceAsStream(FILE), FILE),
                StandardCharsets.UTF_8))) {
      for (String line : file.lines().toList()) {
        int colon = line.indexOf(": ");
        terms.put(line.substring(0, colon), line.substring(colon + 2));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Collections.unmodifiableMap(terms);
  }

  /**
   * All terms.
   *
   * @return what each means, by the term, in the order of the alphabet
   */
  public static Map<String, String> terms() {
    return TERMS;
  }

  /**
   * The terms that a report uses.
   *
   * @param report the report
   * @return a list of them, as its last words
   */
  static Block of(List<Block> report) {
    String text = new TextView(WIDE).write(report);
    String small = text.toLowerCase(Locale.ROOT);
    return new Block.Items(
        TERMS.entrySet().stream()
            .filter(term -> isUsed(term.getKey(), text, small))
            .map(term -> term.getKey() + ": " + term.getValue())
            .toList(),
        Block.Items.Style.SMALL_PRINT);
  }

  /** A term with several words, such as "d50, d85", is used when one of them is. */
  private static boolean isUsed(String term, String text, String small) {
    return Arrays.stream(term.split(", | \\(|\\)"))
        // Most terms stand nowhere, which is seen without the long search for whole words.
        .filter(word -> small.contains(word.toLowerCase(Locale.ROOT)))
        .anyMatch(
            word ->
                Pattern.compile(
                        "\\b" + Pattern.quote(word) + "s?\\b",
                        word.matches(".*[a-z].*") ? Pattern.CASE_INSENSITIVE : 0)
                    .matcher(text)
                    .find());
  }
}
