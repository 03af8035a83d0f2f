package sandslurry.fact.step;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation.How;
import sandslurry.units.Kind;

/**
 * The sheet of equations of a subject whose kernels record no steps themselves: a text file beside
 * the class that tells the working, so that all its equations and sources can be read at once.
 *
 * <p>An entry is a paragraph: {@code key: meaning}, then {@code symbol = right-hand side} (or
 * {@code symbol searched: what, among what}, or {@code symbol looked up: what, where}), then {@code
 * with} the symbols that are put in with their SI units, then {@code shown as} the kind of the
 * result, then {@code by} the source.
 */
public final class Equations {
  private static final Pattern ENTRY =
      Pattern.compile(
          "(?<key>[\\w-]+): (?<meaning>.+)\n"
              + "  (?<symbol>\\S+) (?<how>=|searched:|looked up:) (?<text>.+)"
              + "(\n  with (?<inputs>.+))?\n  shown as (?<kind>[\\w-]+)(\n  by (?<source>.+))?");
  private static final Map<String, How> HOW =
      Map.of("=", How.COMPUTED, "searched:", How.SEARCHED, "looked up:", How.LOOKED_UP);

  private static final Map<Class<?>, Equations> READ = new ConcurrentHashMap<>();

  private final String name;
  private final Map<String, Equation> entries;

  private Equations(String name, Map<String, Equation> entries) {
    this.name = name;
    this.entries = entries;
  }

  /**
   * The sheet of a class.
   *
   * @param owner the class; its sheet has its name and the ending {@code .equations}
   * @return the sheet, read once
   * @throws IllegalArgumentException if an entry cannot be read
   */
  public static Equations of(Class<?> owner) {
    return READ.computeIfAbsent(owner, Equations::sheet);
  }

  private static Equations sheet(Class<?> owner) {
    String name = owner.getSimpleName() + ".equations";
    Map<String, Equation> entries = new LinkedHashMap<>();
    for (String paragraph : read(owner, name).split("\n\\s*\n")) {
      String entry =
          paragraph.lines().filter(line -> !line.startsWith("#")).collect(Collectors.joining("\n"));
      Matcher parts = ENTRY.matcher(entry);
      if (!entry.isBlank()
          && (!parts.matches() || entries.put(parts.group("key"), equation(parts)) != null)) {
        throw new IllegalArgumentException(name + " does not read or repeats: " + entry);
      }
    }
    return new Equations(name, entries);
  }

  /** An entry; its source is empty where the code names it. */
  private static Equation equation(Matcher entry) {
    String inputs = entry.group("inputs");
    String source = entry.group("source");
    return new Equation(
        HOW.get(entry.group("how")),
        entry.group("symbol"),
        entry.group("meaning"),
        entry.group("text"),
        Kind.named(entry.group("kind")),
        source == null ? "" : source,
        inputs == null ? List.of() : Equation.read(inputs));
  }

  private static String read(Class<?> owner, String name) {
    try (InputStream file = Objects.requireNonNull(owner.getResourceAsStream(name), name)) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8).strip();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * What the sheet has.
   *
   * @return the keys in their order
   */
  Set<String> keys() {
    return entries.keySet();
  }

  /**
   * An equation whose source stands in the sheet.
   *
   * @param key its key
   * @return the equation
   * @throws IllegalArgumentException if the sheet has no such equation or none with a source
   */
  public Equation of(String key) {
    Equation equation = entry(key);
    if (equation.source().isEmpty()) {
      throw new IllegalArgumentException(key + " in " + name + " has no source");
    }
    return equation;
  }

  /**
   * An equation of a publication that the code names.
   *
   * @param key its key
   * @param source the publication
   * @return the equation
   * @throws IllegalArgumentException if the sheet has no such equation
   */
  public Equation of(String key, String source) {
    return entry(key).by(source);
  }

  private Equation entry(String key) {
    Equation entry = entries.get(key);
    if (entry == null) {
      throw new IllegalArgumentException("no equation " + key + " in " + name);
    }
    return entry;
  }
}
