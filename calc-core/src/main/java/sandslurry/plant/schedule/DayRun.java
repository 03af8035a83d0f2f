package sandslurry.plant.schedule;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import sandslurry.plant.network.NoSteadyState;

/**
 * Days by schedule, one after the other.
 *
 * @param days the days that were completed
 * @param stopped why the run stopped early, if it did
 */
public record DayRun(List<Day> days, Optional<NoSteadyState> stopped) {
  /** Copies the list. */
  public DayRun {
    days = List.copyOf(days);
  }

  /**
   * The last day.
   *
   * @return the day, or nothing when none was completed
   */
  public Optional<Day> last() {
    return days.isEmpty() ? Optional.empty() : Optional.of(days.get(days.size() - 1));
  }

  /**
   * The first day after which a value stays within a part of its whole change.
   *
   * @param value what is watched, such as the total solids of a pit
   * @param limit where it settles, from a steady balance or a long run
   * @param part the part of the change that may be left, such as 0.05
   * @return number of the day; empty when the run is too short
   */
  public OptionalInt settledBy(ToDoubleFunction<Day> value, double limit, double part) {
    double allowed = part * Math.abs(limit - 0);
    int settled = days.size();
    while (settled > 0 && Math.abs(value.applyAsDouble(days.get(settled - 1)) - limit) <= allowed) {
      settled--;
    }
    return settled < days.size() ? OptionalInt.of(settled + 1) : OptionalInt.empty();
  }
}
