package sandslurry.plant.account;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import sandslurry.numeric.FixedPoint;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;

/**
 * The sand that circulates between stalls and plant, put back through the plant until it is at
 * rest.
 *
 * <p>What is bedded is sand bought and sand recovered. As fine grains are lost the bedding
 * coarsens, and the plant, fed with another gradation in another load, catches another share of
 * each class. At rest, for each class i of the sand and for the mineral fines,
 *
 * <pre>
 * bedded_i = M f_i + rebedded_i(bedded)      Σ bedded_i = B
 * </pre>
 *
 * <p>f shares of the sand bought, M all sand bought, B all sand bedded. The state is found by
 * asking the plant what it gives back of a bedding, taking the shares that come back of each class,
 * putting the class balance of {@link SandCycle} to rest with them, and asking again until the
 * bedding stays what it is ({@link FixedPoint}). When shares do not depend on the load, that is the
 * cycle of {@link SandCycle} at the second asking. Derived from the balance; no source needed.
 *
 * <p>A class of which all comes back has no end to its circulation. It is taken to lose a billionth
 * of itself each time, so that it is all that circulates and nearly nothing need be bought: the
 * same limit.
 *
 * <p>The rest is a limit in time: a class needs about 1/(1 − η) turns of the bedding to come to it.
 * Organic matter and water that come with the sand are not put back; they dry and rot in the heap.
 *
 * @param bedded the sand bedded at rest
 * @param bought the sand bought at rest
 * @param rebedded the sand that comes back to the stalls at rest; other constituents left out
 * @param firstRebedded what comes back to the stalls of a bedding that is all new
 * @param passes how often the plant was asked
 * @param converged whether the bedding came to rest: moved by no more than {@link #AT_REST}
 * @param change how far the last asking moved the bedding, as a share of it
 */
public record SandCirculation(
    Stream bedded,
    Stream bought,
    Stream rebedded,
    Stream firstRebedded,
    int passes,
    boolean converged,
    double change) {
  /** The change of a bedding at which the plant is asked no more, as a share of it. */
  static final double SETTLED = 1e-10;

  /**
   * The change of a bedding that counts as none, as a share of it: who buys sand does not see it
   * (own choice, no source). A plant of which a unit switches between two states may never come
   * closer.
   */
  static final double AT_REST = 1e-3;

  private static final double LEAST_LOST = 1e-9;
  private static final int MOST_PASSES = 30;

  /** What balances of a plant may miss of a class all of which comes back. */
  private static final double ROUNDING = 1e-6;

  /**
   * Puts the sand to rest.
   *
   * @param newSand a bedding that is all bought: its mass is what is bedded at rest too, its shares
   *     are those of the sand bought
   * @param plant what comes back to the stalls of a bedding; only sand and mineral fines count
   * @return the state at rest, or the last that was found
   * @throws IllegalArgumentException if the plant gives back more of a class than was bedded
   */
  public static SandCirculation of(Stream newSand, UnaryOperator<Stream> plant) {
    Constituents constituents = newSand.constituents();
    double[] shares = grains(newSand);
    double all = sum(shares);
    Stream first = only(plant.apply(newSand));
    if (!(all > 0)) {
      return new SandCirculation(newSand, newSand, first, first, 1, true, 0);
    }
    double[][] asked = {grains(newSand), grains(first)};
    FixedPoint.Result result =
        FixedPoint.search(
            state -> {
              if (!Arrays.equals(state, asked[0])) {
                asked[0] = state;
                asked[1] = grains(only(plant.apply(stream(constituents, state))));
              }
              return atRest(shares, all, state, asked[1]);
            },
            shares.clone(),
            (a, b) -> distance(a, b) / all,
            SETTLED,
            MOST_PASSES);
    Stream bedded = stream(constituents, result.state());
    Stream rebedded = only(plant.apply(bedded));
    double bought = Math.max(0, all - sum(grains(rebedded)));
    return new SandCirculation(
        bedded,
        newSand.times(bought / all),
        rebedded,
        first,
        result.passes() + 1,
        result.change() <= AT_REST,
        result.change());
  }

  /** The bedding at rest if each class came back by the share by which it came back last. */
  private static double[] atRest(double[] shares, double all, double[] bedded, double[] back) {
    double[] next = new double[shares.length];
    for (int i = 0; i < next.length; i++) {
      double recovery = bedded[i] > 0 ? back[i] / bedded[i] : 0;
      if (!(recovery <= 1 + ROUNDING)) {
        throw new IllegalArgumentException(
            "more of a class comes back than was bedded: " + back[i] + " of " + bedded[i]);
      }
      next[i] = shares[i] / Math.max(1 - recovery, LEAST_LOST);
    }
    double sum = sum(next);
    for (int i = 0; i < next.length; i++) {
      next[i] *= all / sum;
    }
    return next;
  }

  /** Mineral fines and sand, which are all that is put back. */
  private static double[] grains(Stream stream) {
    return Arrays.copyOfRange(
        stream.toArray(), Constituents.MINERAL_FINES, stream.constituents().count());
  }

  private static Stream stream(Constituents constituents, double[] grains) {
    double[] flows = new double[constituents.count()];
    System.arraycopy(grains, 0, flows, Constituents.MINERAL_FINES, grains.length);
    return Stream.of(constituents, flows);
  }

  private static Stream only(Stream stream) {
    return stream(stream.constituents(), grains(stream));
  }

  private static double sum(double[] values) {
    double sum = 0;
    for (double value : values) {
      sum += value;
    }
    return sum;
  }

  private static double distance(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += Math.abs(one[i] - other[i]);
    }
    return sum;
  }

  /**
   * The share of the sand bedded that need not be bought at rest.
   *
   * @return rebedded over bedded, mineral fines counted; 0 when nothing is bedded
   */
  public double notBought() {
    double all = sum(grains(bedded));
    return all > 0 ? Math.min(1, sum(grains(rebedded)) / all) : 0;
  }

  /**
   * The share of a bedding that is all new that comes back.
   *
   * @return rebedded over bedded, mineral fines counted; 0 when nothing is bedded
   */
  public double notBoughtOfNewSand() {
    double all = sum(grains(bedded));
    return all > 0 ? Math.min(1, sum(grains(firstRebedded)) / all) : 0;
  }

  /**
   * How often the bedding must turn over before the slowest class that counts is at rest.
   *
   * @return 3/(1 − η) of the class of highest recovery that is a hundredth of the bedding or more;
   *     0 when nothing is bedded
   */
  public double turnsToRest() {
    double[] one = grains(bedded);
    double[] back = grains(rebedded);
    double all = sum(one);
    double turns = 0;
    for (int i = 0; i < one.length; i++) {
      if (one[i] >= 0.01 * all && one[i] > 0) {
        turns = Math.max(turns, 3 / Math.max(1 - back[i] / one[i], LEAST_LOST));
      }
    }
    return turns;
  }
}
