package sandslurry.plant.network;

import java.util.List;

/**
 * A network that does not come to rest, with the reason.
 *
 * @param reason which kind of failure
 * @param constituent the constituent that piles up, in words; empty when the reason is another
 * @param units the units in which it piles up or that do not agree
 * @param explanation sentences for the person who has to change the plant
 */
public record NoSteadyState(
    Reason reason, String constituent, List<String> units, String explanation)
    implements SteadyState {
  /** Why there is no steady state. */
  public enum Reason {
    /** A constituent flows into a loop and has no way out. */
    NO_PURGE,
    /** The way out is so narrow that the balance cannot be closed in double precision. */
    PURGE_TOO_SMALL,
    /** What the units do with their feeds and the feeds themselves did not settle on each other. */
    UNSETTLED
  }

  /** Copies the list. */
  public NoSteadyState {
    units = List.copyOf(units);
  }

  /**
   * A balance that cannot be closed in double precision.
   *
   * @param network the network
   * @param detail what failed
   * @return the failure, with what to do
   */
  public static NoSteadyState tooSmall(Network network, String detail) {
    return new NoSteadyState(
        Reason.PURGE_TOO_SMALL,
        "",
        network.units().stream().map(Unit::name).toList(),
        "There is no steady state that can be computed: more comes in than finds a way out, or it"
            + " circulates among "
            + String.join(", ", network.units().stream().map(Unit::name).toList())
            + " too many times before it leaves ("
            + detail
            + "). Widen its way out.");
  }
}
