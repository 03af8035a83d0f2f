package sandslurry.fact;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * An input, declared once by its subject: reading, the page on the design file, its schema and the
 * row of the form follow from it.
 *
 * @param <T> what is read from it
 */
public final class Field<T> {
  /** What an absent field means. */
  enum Absence {
    /** It is missing. */
    MISSING,
    /** Its default counts. */
    STANDARD,
    /** It is not given, and that may be. */
    LEFT_OUT
  }

  private final String name;
  private String label = "";
  private String meaning = "";
  private final Content<?> content;
  private final Absence absence;
  private final String standard;
  private List<String> examples = List.of();

  Field(String name, Content<?> content, Absence absence, String standard) {
    this.name = name;
    this.content = content;
    this.absence = absence;
    this.standard = standard;
  }

  /**
   * Labels the field where it is declared.
   *
   * @param words its label, in the words of the trade
   * @return this
   */
  public Field<T> label(String words) {
    label = words;
    return this;
  }

  /**
   * Says what the field means where it is declared.
   *
   * @param sentence its meaning in one sentence
   * @return this
   */
  public Field<T> means(String sentence) {
    meaning = sentence;
    return this;
  }

  /**
   * Gives examples where the field is declared.
   *
   * @param texts texts that would be right, one in metric units first
   * @return this
   */
  public Field<T> such(String... texts) {
    examples = List.of(texts);
    return this;
  }

  /** Reads the field of a group; absent or wrong, as its kind has it. */
  Optional<?> read(Place group, Tree tree, List<Values> inside) {
    Tree value = tree.at(name);
    Place place = group.below(name);
    if (value.isRefused()) {
      return Optional.empty();
    }
    if (value.isThere()) {
      Optional<?> read = content.read(place, value, inside);
      return absence == Absence.LEFT_OUT ? read.map(Optional::of) : read;
    }
    if (absence == Absence.MISSING) {
      String wanted = content.wanted();
      place.problem(value, "is missing" + (wanted.isEmpty() ? "" : ": " + wanted));
      return Optional.empty();
    }
    return absence == Absence.LEFT_OUT
        ? Optional.of(Optional.empty())
        : content.standard(place, standard, inside);
  }

  /**
   * The name.
   *
   * @return its name in files
   */
  public String name() {
    return name;
  }

  /**
   * The label.
   *
   * @return its label, in the words of the trade
   */
  public String label() {
    return label;
  }

  /**
   * The meaning.
   *
   * @return its meaning in one sentence
   */
  public String meaning() {
    return meaning;
  }

  /**
   * What stands in it.
   *
   * @return the content
   */
  public Content<?> content() {
    return content;
  }

  /**
   * Whether it must be given.
   *
   * @return true for a field that may not be left out where there is it
   */
  public boolean isNeeded() {
    return absence == Absence.MISSING;
  }

  /**
   * The default.
   *
   * @return the text that counts when it is left out; empty for a field without one
   */
  public String standard() {
    return absence == Absence.STANDARD ? standard : "";
  }

  /**
   * Whether it may be left out without a default that counts.
   *
   * @return true for a field that need not be given
   */
  public boolean isOptional() {
    return absence == Absence.LEFT_OUT;
  }

  /**
   * What it means to leave it out.
   *
   * @return a few words; empty for a field that is needed
   */
  public String absent() {
    return absence == Absence.STANDARD && !standard.isEmpty() ? "default " + standard : standard;
  }

  /**
   * Examples.
   *
   * @return texts that would be right
   */
  public List<String> examples() {
    return examples;
  }

  /**
   * What this is and what may be typed, for a person.
   *
   * @return the meaning, examples and the range allowed in their units
   */
  public String help() {
    StringBuilder help = new StringBuilder(sentence(meaning));
    if (!examples.isEmpty()) {
      help.append(" Such as ").append(String.join(" or ", examples)).append('.');
    }
    String range = range();
    if (!range.isEmpty()) {
      help.append(" Allowed: ").append(range).append('.');
    }
    return help.toString();
  }

  /**
   * The range allowed.
   *
   * @return in the units of all examples; empty where there is none
   */
  String range() {
    Function<Type<?>, String> ranges =
        type ->
            examples.isEmpty()
                ? type.range("")
                : String.join(", or ", examples.stream().map(type::range).distinct().toList());
    return text(content).map(ranges).orElse("");
  }

  private static Optional<Type<?>> text(Content<?> content) {
    if (content instanceof Type<?> type) {
      return Optional.of(type);
    }
    return content instanceof Span<?> span ? Optional.of(span.type()) : Optional.empty();
  }

  private static String sentence(String words) {
    return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
  }

  @Override
  public String toString() {
    return name;
  }
}
