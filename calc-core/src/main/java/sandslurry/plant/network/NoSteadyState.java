package sandslurry.plant.network;

import java.util.List;
import java.util.Optional;

/**
 * A network that does not come to rest, with the reason.
 *
 * @param reason which kind of failure
 * @param units the units in which it piles up or that do not agree
 * @param grows what grows most, and how fast
 * @param timeS time marched from the start until the search gave up; 0 without pits [s]
 * @param change by how much the flows through the first unit still change, over the flow
 * @param notes what these units say of their feeds
 */
public record NoSteadyState(
    Reason reason,
    List<String> units,
    Growth grows,
    double timeS,
    double change,
    List<UnitNote> notes)
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

  /**
   * What grows.
   *
   * @param constituent in words; empty when nothing grows
   * @param unit the unit in which it grows
   * @param kgps how fast it piles up there [kg/s]
   */
  public record Growth(String constituent, String unit, double kgps) {
    /** Nothing grows. */
    static final Growth NONE = new Growth("", "", 0);
  }

  /** Copies the lists. */
  public NoSteadyState {
    units = List.copyOf(units);
    notes = List.copyOf(notes);
  }

  /**
   * A balance that cannot be closed in double precision.
   *
   * @param network the network
   * @return the failure
   */
  static NoSteadyState tooSmall(Network network) {
    return new NoSteadyState(
        Reason.PURGE_TOO_SMALL,
        network.units().stream().map(Unit::name).toList(),
        Growth.NONE,
        0,
        0,
        List.of());
  }

  @Override
  public Optional<NoSteadyState> failure() {
    return Optional.of(this);
  }
}
