package sandslurry.fact.finding;

/**
 * One judgement on one part of the design.
 *
 * @param severity how grave it is
 * @param topic what it is about
 * @param element the part concerned, such as a run of pipe
 * @param what one sentence: what was found
 * @param why one sentence with the numbers behind it
 * @param cure one sentence with a number that would mend it; empty when there is nothing to mend
 */
public record Finding(
    Severity severity, Topic topic, String element, String what, String why, String cure) {

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
