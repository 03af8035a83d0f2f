package sandslurry.fact.finding;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.units.UnitSystem;

/**
 * The message file of a subject: every sentence of its findings, in the file {@code
 * findings.properties} beside its classes.
 *
 * <p>A key without a dot is a finding and what it says; with {@code .means} after it, what it means
 * and when it comes, and with {@code .topic} what it is about where that is not the {@code topic}
 * of the file. {@code why.} and {@code do.} begin the clauses of reasons and cures, which the
 * findings of a subject share, {@code says.} what stands elsewhere. {@code {name}} holds the place
 * of a value, {@code {name:up}} rounded up, {@code {name:down}} rounded down, {@code {name:number}}
 * without its unit, {@code {name:rough}} of two digits, {@code {name:duration}} a time in the unit
 * that suits its size, {@code {name:longest}} the same rounded up, {@code {name:low}} the low end
 * of a range.
 */
public final class Messages {
  private static final String FILE = "findings.properties";
  private static final Pattern PLACE = Pattern.compile("\\{(\\w+)(?::(\\w+))?}");
  private static final Map<String, Messages> BY_PACKAGE = new ConcurrentHashMap<>();

  private final String subject;
  private final Properties sentences;

  private Messages(String subject, Properties sentences) {
    this.subject = subject;
    this.sentences = sentences;
  }

  private static Messages read(Class<?> owner) {
    Properties sentences = new Properties();
    try (Reader file =
        new InputStreamReader(
            Objects.requireNonNull(owner.getResourceAsStream(FILE), owner.getName()),
            StandardCharsets.UTF_8)) {
      sentences.load(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new Messages(sentences.getProperty("subject"), sentences);
  }

  /**
   * The message file beside a class.
   *
   * @param owner a class of the subject
   * @return the file, read once
   */
  public static Messages of(Class<?> owner) {
    return BY_PACKAGE.computeIfAbsent(owner.getPackageName(), name -> read(owner));
  }

  /**
   * Begins a finding.
   *
   * @param to takes it when it is added
   * @param key its key in this file
   * @param severity how grave it is
   * @param element the part concerned
   * @return the finding, to be given its values and clauses
   */
  public Found found(Findings to, String key, Severity severity, String element) {
    return new Found(this, to, key, severity, topic(key), element);
  }

  /** What a finding is about: its own topic, or that of the file. */
  Topic topic(String key) {
    String topic = sentences.getProperty(key + ".topic", sentences.getProperty("topic", ""));
    return Topic.valueOf(topic.toUpperCase(Locale.ROOT));
  }

  /**
   * A clause that stands elsewhere than in a finding.
   *
   * @param clause its key in this file, without {@code says.}
   * @param values the numbers and names that it holds, by name
   * @param units the units to show them in
   * @return the clause
   */
  public String says(String clause, Map<String, Value> values, UnitSystem units) {
    return text("says." + clause, values, units);
  }

  String id(String key) {
    if (!sentences.containsKey(key)) {
      throw new IllegalArgumentException("no finding " + subject + "." + key);
    }
    return subject + "." + key;
  }

  String key(String id) {
    return id.substring(subject.length() + 1);
  }

  String text(String key, Map<String, Value> values, UnitSystem units) {
    String template = sentences.getProperty(key);
    if (template == null) {
      throw new IllegalArgumentException("no message " + subject + "." + key);
    }
    Matcher place = PLACE.matcher(template);
    StringBuilder text = new StringBuilder();
    while (place.find()) {
      Value value = values.get(place.group(1));
      // A missing value must not cost the reader the report: its place stays, and tests look for
      // it.
      String shown =
          value == null
              ? place.group()
              : value.show(place.group(2) == null ? "" : place.group(2), units);
      place.appendReplacement(text, Matcher.quoteReplacement(shown));
    }
    return place.appendTail(text).toString();
  }
}
