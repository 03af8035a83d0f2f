package sandslurry.fact.finding;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.function.Function;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** A finding while it is written: its values and clauses are added one after another. */
public final class Found {
  private final Messages messages;
  private final Findings findings;
  private final String id;
  private final Severity severity;
  private final Topic topic;
  private final String element;
  private final Map<String, Value> values = new LinkedHashMap<>();
  private final List<String> why = new ArrayList<>();
  private final List<String> todo = new ArrayList<>();

  Found(
      Messages messages,
      Findings findings,
      String key,
      Severity severity,
      Topic topic,
      String element) {
    this.messages = messages;
    this.findings = findings;
    this.id = messages.id(key);
    this.severity = severity;
    this.topic = topic;
    this.element = element;
  }

  /**
   * Gives a number to the sentences.
   *
   * @param name its name in the message file
   * @param kind what it is
   * @param si its value in SI
   * @return this
   */
  public Found with(String name, Kind<?> kind, double si) {
    values.put(name, new Value.Number(kind, si));
    return this;
  }

  /**
   * Gives a number to the sentences where there is one.
   *
   * @param name its name in the message file
   * @param kind what it is
   * @param si its value in SI; empty where there is none
   * @return this
   */
  public Found with(String name, Kind<?> kind, OptionalDouble si) {
    si.ifPresent(value -> with(name, kind, value));
    return this;
  }

  /**
   * Gives a number with its range to the sentences.
   *
   * @param name its name in the message file
   * @param kind what it is
   * @param si its expected value in SI
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   * @return this
   */
  public Found with(String name, Kind<?> kind, double si, double lowSi, double highSi) {
    values.put(name, new Value.Ranged(kind, si, lowSi, highSi));
    return this;
  }

  /**
   * Gives a whole number to the sentences.
   *
   * @param name its name in the message file
   * @param number the number
   * @return this
   */
  public Found count(String name, double number) {
    return with(name, String.valueOf(Math.round(number)));
  }

  /**
   * Gives a name to the sentences: of a run, a unit, a correlation, a state.
   *
   * @param name its name in the message file
   * @param text the name
   * @return this
   */
  public Found with(String name, String text) {
    values.put(name, new Value.Name(text));
    return this;
  }

  /**
   * Gives something with numbers of its own to the sentences, such as a list.
   *
   * @param name its name in the message file
   * @param text how it reads in given units
   * @return this
   */
  public Found with(String name, Function<UnitSystem, String> text) {
    values.put(name, new Value.Shown(text));
    return this;
  }

  /**
   * Adds a clause to the reason.
   *
   * @param clause its key in the message file, without {@code why.}
   * @return this
   */
  public Found why(String clause) {
    why.add(clause);
    return this;
  }

  /**
   * Adds a clause to the reason where something holds.
   *
   * @param holds whether it does
   * @param clause its key in the message file, without {@code why.}
   * @return this
   */
  public Found why(boolean holds, String clause) {
    return holds ? why(clause) : this;
  }

  /**
   * Adds a clause to the cure.
   *
   * @param clause its key in the message file, without {@code do.}
   * @return this
   */
  public Found cure(String clause) {
    todo.add(clause);
    return this;
  }

  /**
   * Adds a clause to the cure where something holds.
   *
   * @param holds whether it does
   * @param clause its key in the message file, without {@code do.}
   * @return this
   */
  public Found cure(boolean holds, String clause) {
    return holds ? cure(clause) : this;
  }

  /**
   * Says more where something holds.
   *
   * @param holds whether it does
   * @param more adds values and clauses
   * @return this
   */
  public Found when(boolean holds, Consumer<Found> more) {
    if (holds) {
      more.accept(this);
    }
    return this;
  }

  /** Adds the finding, as it now is, to those of its writer. */
  public void add() {
    findings.all().add(finding());
  }

  /**
   * The finding as it now is.
   *
   * @return the finding
   */
  public Finding finding() {
    return new Finding(id, severity, topic, element, values, why, todo, messages, findings.units());
  }
}
