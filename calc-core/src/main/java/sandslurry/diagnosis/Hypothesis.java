package sandslurry.diagnosis;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import sandslurry.numeric.Roots;

/**
 * One cause that may explain a reading, with one unknown: the depth of a bed, the thickness of the
 * liquor, the roughness of the wall. It is solved for the values at which the calculated pressure
 * differs from the one read by no more than {@link SiteReading#difference}.
 *
 * <p>All such values count, from the least to the greatest, even where between them some do not: a
 * bed in a slow line first lowers the pressure, since the sand then moves faster.
 *
 * @param law the calculated pressure by unknown and flow rate
 * @param least least value of the unknown
 * @param clean its value in the line as it was designed
 * @param most greatest value of the unknown
 * @param even true when equal steps of the unknown count alike, false when equal ratios do; the
 *     least value is then positive
 */
public record Hypothesis(Law law, double least, double clean, double most, boolean even) {
  private static final int STEPS = 24;

  /** The calculated pressure. */
  @FunctionalInterface
  public interface Law {
    /**
     * The pressure.
     *
     * @param unknown value of the unknown
     * @param flowM3ps flow rate [m3/s]
     * @return pressure [Pa]; NaN where there is none
     */
    double pressurePa(double unknown, double flowM3ps);
  }

  /** Checks the order of the values. */
  public Hypothesis {
    if (!(least <= clean && clean <= most && least < most) || !(even || least > 0)) {
      throw new IllegalArgumentException(
          "an unknown needs least <= clean <= most, above 0 where ratios count, but has "
              + least
              + ", "
              + clean
              + " and "
              + most);
    }
  }

  /**
   * The values that explain a reading.
   *
   * @param reading the reading
   * @param modelShare uncertainty of the calculated friction as a share of it
   * @param staticPa what of the pressure is no friction [Pa]
   * @return the values, with the one nearest to the clean line at which both pressures agree, or
   *     differ least; empty when none explains it
   */
  public Optional<Bracket> solve(SiteReading reading, double modelShare, double staticPa) {
    Map<List<Double>, Double> known = new HashMap<>();
    Law once =
        (x, flow) ->
            known.computeIfAbsent(
                List.of(x, flow), at -> law.pressurePa(unknown(at.get(0)), at.get(1)));
    DoubleUnaryOperator gap = x -> once.pressurePa(x, reading.flowM3ps()) - reading.pressurePa();
    DoubleUnaryOperator excess =
        x ->
            Math.abs(gap.applyAsDouble(x))
                - reading.difference(q -> once.pressurePa(x, q), modelShare, staticPa).totalPa();
    double[] grid = grid();
    double[] gaps = new double[grid.length];
    for (int i = 0; i < grid.length; i++) {
      gaps[i] = gap.applyAsDouble(grid[i]);
    }
    List<Double> accepted = new ArrayList<>();
    List<Double> roots = new ArrayList<>();
    for (int i = 0; i < grid.length; i++) {
      if (i > 0 && gaps[i - 1] * gaps[i] < 0) {
        roots.add(Roots.between("what explains a reading", gap, grid[i - 1], grid[i]));
        accepted.add(roots.get(roots.size() - 1));
      }
      if (gaps[i] == 0) {
        roots.add(grid[i]);
      }
      if (excess.applyAsDouble(grid[i]) <= 0) {
        accepted.add(grid[i]);
      }
    }
    if (accepted.isEmpty()) {
      return Optional.empty();
    }
    double low = end(excess, below(grid, accepted.get(0)), accepted.get(0));
    double last = accepted.get(accepted.size() - 1);
    double high = end(excess, above(grid, last), last);
    double best = best(roots, accepted, gap);
    return Optional.of(
        new Bracket(
            Math.min(unknown(low), unknown(best)),
            unknown(best),
            Math.max(unknown(high), unknown(best))));
  }

  /** Equal steps, with the clean line among them. */
  private double[] grid() {
    double[] grid = new double[STEPS + 2];
    double at = Math.min(1, step(clean));
    int i = 0;
    for (int k = 0; k <= STEPS; k++) {
      double x = (double) k / STEPS;
      if (at <= x && i == k) {
        grid[i++] = at;
      }
      grid[i++] = x;
    }
    return grid;
  }

  private double unknown(double x) {
    return x <= 0
        ? least
        : x >= 1 ? most : even ? least + x * (most - least) : least * Math.pow(most / least, x);
  }

  private double step(double value) {
    return even
        ? (value - least) / (most - least)
        : Math.log(value / least) / Math.log(most / least);
  }

  private static double below(double[] grid, double x) {
    double below = x;
    for (double point : grid) {
      below = point < x ? point : below;
    }
    return below;
  }

  private static double above(double[] grid, double x) {
    for (double point : grid) {
      if (point > x) {
        return point;
      }
    }
    return x;
  }

  /** The value between one that does not explain the reading and one that does. */
  private static double end(DoubleUnaryOperator excess, double outside, double inside) {
    double atOutside = outside == inside ? 0 : excess.applyAsDouble(outside);
    return atOutside > 0 && Double.isFinite(atOutside) && excess.applyAsDouble(inside) < 0
        ? Roots.between(
            "uncertainty of what explains a reading",
            excess,
            Math.min(outside, inside),
            Math.max(outside, inside))
        : inside;
  }

  private double best(List<Double> roots, List<Double> accepted, DoubleUnaryOperator gap) {
    double at = step(clean);
    double best = Double.NaN;
    for (double root : roots) {
      best = !(Math.abs(root - at) >= Math.abs(best - at)) ? root : best;
    }
    if (!roots.isEmpty()) {
      return best;
    }
    double least = Double.POSITIVE_INFINITY;
    for (double x : accepted) {
      double differs = Math.abs(gap.applyAsDouble(x));
      if (differs < least) {
        least = differs;
        best = x;
      }
    }
    return best;
  }
}
