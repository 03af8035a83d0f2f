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
}
