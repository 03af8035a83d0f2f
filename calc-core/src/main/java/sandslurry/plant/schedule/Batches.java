package sandslurry.plant.schedule;

import java.util.ArrayList;
import java.util.List;
import sandslurry.units.InUnit;

/**
 * When something flows in batches: manure while a pen is scraped, water while an alley is flushed.
 *
 * <p>All that comes in a day comes in the batches, evenly while one lasts; the day is the same
 * every day, so that the interval divides it.
 *
 * @param firstS start of one of the batches since midnight, 0 to below a day [s]
 * @param intervalS time from the start of one to that of the next; a whole number of them makes a
 *     day [s]
 * @param durationS how long one lasts, above 0 to the interval [s]
 */
public record Batches(double firstS, double intervalS, double durationS) {
  private static final double ROUNDING = 1e-9;

  /** Checks every bound. */
  public Batches {
    double day = InUnit.DAY.si(1);
    if (!(firstS >= 0 && firstS < day)) {
      throw new IllegalArgumentException(
          "the first batch starts between 0 and a day but was to start at " + firstS + " s");
    }
    double count = day / intervalS;
    if (!(intervalS > 0
        && Math.abs(count - Math.rint(count)) <= ROUNDING * count
        && count >= 0.5)) {
      throw new IllegalArgumentException(
          "a whole number of batches must make a day but their interval was " + intervalS + " s");
    }
    if (!(durationS > 0 && durationS <= intervalS)) {
      throw new IllegalArgumentException(
          "a batch lasts above 0 to " + intervalS + " s but was to last " + durationS + " s");
    }
  }

  /**
   * Number of batches.
   *
   * @return how many come in a day
   */
  public int perDay() {
    return (int) Math.rint(InUnit.DAY.si(1) / intervalS);
  }

  /**
   * Flow while a batch lasts over the mean of the day.
   *
   * @return interval over duration, 1 or more
   */
  double peakFactor() {
    return intervalS / durationS;
  }

  /**
   * The mean flow over a part of the day over the mean of the day.
   *
   * @param fromS start of the part since midnight [s]
   * @param toS its end, after the start and not after the next midnight [s]
   * @return 0 between batches, {@link #peakFactor} within one
   */
  double factor(double fromS, double toS) {
    if (!(fromS < toS)) {
      throw new IllegalArgumentException(
          "a part of the day needs a length but goes from " + fromS + " to " + toS + " s");
    }
    double overlap = 0;
    for (int k = -1; k <= perDay(); k++) {
      double start = firstS % intervalS + k * intervalS;
      overlap += Math.max(0, Math.min(toS, start + durationS) - Math.max(fromS, start));
    }
    return overlap / (toS - fromS) * peakFactor();
  }

  /**
   * When batches start and end.
   *
   * @return times since midnight, within the day, in no order [s]
   */
  List<Double> edgesS() {
    double day = InUnit.DAY.si(1);
    List<Double> edges = new ArrayList<>();
    for (int k = -1; k < perDay(); k++) {
      double start = firstS % intervalS + k * intervalS;
      for (double edge : new double[] {start, start + durationS}) {
        if (edge > 0 && edge < day) {
          edges.add(edge);
        }
      }
    }
    return List.copyOf(edges);
  }
}
