package sandslurry.plant.network;

import java.util.List;
import sandslurry.plant.Stream;

/**
 * How a unit divides its feed: for every outlet and constituent, the share of what was fed that
 * leaves there. The shares of a constituent over all outlets sum to 1, so nothing is made or lost.
 *
 * @param shares shares by outlet, then by constituent
 * @param notes what is the matter with this feed
 */
public record Split(double[][] shares, List<UnitNote> notes) {
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the shares, corrects their rounding and copies both.
   *
   * @throws IllegalArgumentException if a share is not in 0 to 1 or those of a constituent do not
   *     sum to 1
   */
  public Split {
    double[][] copy = new double[shares.length][];
    for (int outlet = 0; outlet < shares.length; outlet++) {
      copy[outlet] = shares[outlet].clone();
    }
    for (int i = 0; shares.length > 0 && i < shares[0].length; i++) {
      double sum = 0;
      for (double[] outlet : copy) {
        if (!(outlet[i] >= -ROUNDING && outlet[i] <= 1 + ROUNDING)) {
          throw new IllegalArgumentException("a share lies in 0 to 1 but was " + outlet[i]);
        }
        outlet[i] = Math.max(0, outlet[i]);
        sum += outlet[i];
      }
      if (!(Math.abs(sum - 1) <= ROUNDING)) {
        throw new IllegalArgumentException("shares must sum to 1 but sum to " + sum);
      }
      for (int outlet = 0; sum != 1 && outlet < copy.length; outlet++) {
        copy[outlet][i] /= sum;
      }
    }
    shares = copy;
    notes = List.copyOf(notes);
  }

  /**
   * Two outlets, of which one takes given shares and the other the rest.
   *
   * @param first shares that leave by the first outlet
   * @param notes what is the matter with the feed
   * @return the split
   */
  public static Split two(double[] first, List<UnitNote> notes) {
    double[] rest = new double[first.length];
    for (int i = 0; i < first.length; i++) {
      rest[i] = 1 - first[i];
    }
    return new Split(new double[][] {first, rest}, notes);
  }

  /**
   * What leaves by an outlet.
   *
   * @param feed the feed
   * @param outlet index of the outlet
   * @return the stream
   */
  public Stream outlet(Stream feed, int outlet) {
    double[] flows = feed.toArray();
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= shares[outlet][i];
    }
    return Stream.of(feed.constituents(), flows);
  }
}
