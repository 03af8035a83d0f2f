package sandslurry.fact.finding;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.units.UnitSystem;

/**
 * One judgement on one part of the design: what was found, why, and what to do. It holds numbers;
 * its sentences stand in the message file of its subject.
 *
 * @param id its stable name, the subject before the dot, such as {@code lane.capture-low}
 * @param severity how grave it is
 * @param topic what it is about
 * @param element the part concerned, such as a run of pipe
 * @param values the numbers and names that its sentences hold, by name
 * @param reasons the clauses of the reason, by their keys in the message file
 * @param cures the clauses of the cure, by their keys; empty when there is nothing to mend
 * @param messages the message file of the subject
 * @param units the units that the design is read in
 */
public record Finding(
    String id,
    Severity severity,
    Topic topic,
    String element,
    Map<String, Value> values,
    List<String> reasons,
    List<String> cures,
    Messages messages,
    UnitSystem units) {
  /** Copies the lists and values. */
  public Finding {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    reasons = List.copyOf(reasons);
    cures = List.copyOf(cures);
  }

  /**
   * The same finding on another part.
   *
   * @param other the part concerned
   * @return the finding
   */
  public Finding on(String other) {
    return new Finding(id, severity, topic, other, values, reasons, cures, messages, units);
  }

  /**
   * What was found, in one sentence.
   *
   * @return the sentence, in the units of the design
   */
  public String what() {
    return messages.text(messages.key(id), values, units);
  }

  /**
   * The numbers behind it.
   *
   * @return its sentences; empty when there is nothing to add
   */
  public String why() {
    return joined(reasons, "why.");
  }

  /**
   * What would mend it.
   *
   * @return its sentences, with a number where there is one; empty when there is nothing to mend
   */
  public String cure() {
    return joined(cures, "do.");
  }

  /**
   * The part that it is on, as the beginning of a sentence.
   *
   * @return its name with a capital
   */
  public String place() {
    return element.substring(0, 1).toUpperCase(Locale.ROOT) + element.substring(1);
  }

  /**
   * The first sentence of the reason.
   *
   * @param longest characters from which on it is left out
   * @return the sentence with a space before it; empty when it is long
   */
  public String firstReason(int longest) {
    String why = why();
    int end = why.indexOf(". ");
    String first = end < 0 ? why : why.substring(0, end + 1);
    return first.isEmpty() || first.length() > longest ? "" : " " + first;
  }

  private String joined(List<String> clauses, String kind) {
    return clauses.stream()
        .map(clause -> messages.text(kind + clause, values, units))
        .collect(Collectors.joining(" "));
  }

  /** What a finding is about. */
  public enum Topic {
    /** Sand that settles in the line. */
    PLUGGING("plugging"),
    /** Wear of pipe and pump. */
    WEAR("wear"),
    /** Pressure and vacuum against what the pipe bears. */
    PRESSURE("pressure"),
    /** The pump and its duty. */
    PUMP("pump"),
    /** The states that the line meets. */
    STATES("states"),
    /** A line that stops full, and its flush. */
    STOP("stop and restart"),
    /** A day of pumping. */
    DAY("day"),
    /** A screw conveyor or a gravity pipe. */
    FEED("feed and return"),
    /** A pressure and a flow rate read on site. */
    OBSERVED("reading on site"),
    /** The settling lane. */
    LANE("lane"),
    /** The plant from the pens to the storage. */
    PLANT("plant"),
    /** What the inputs are worth. */
    DATA("data");

    private final String word;

    Topic(String word) {
      this.word = word;
    }

    /**
     * The topic in a word.
     *
     * @return for example "plugging"
     */
    public String word() {
      return word;
    }
  }
}
