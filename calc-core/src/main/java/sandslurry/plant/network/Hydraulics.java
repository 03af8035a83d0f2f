package sandslurry.plant.network;

import java.util.Arrays;
import sandslurry.numeric.LinearSystem;
import sandslurry.numeric.UnsolvedException;

/**
 * The volumes that pass through units at given shares, pits and their pumps among them, at rest or
 * over a step of time.
 *
 * <p>A pump takes its flow as far as the pit has it above the stop level, and no more: a pump that
 * is larger than what comes in starts and stops, and takes what comes in. What stands above the
 * weir runs over it. All of this follows from the flows into the pit, which follow from all others:
 *
 * <pre>V = e + Σ out(V)</pre>
 *
 * <p>V volume through each unit; e what comes from outside and what the pit held at the start of
 * the step; out the outlets, each linear between kinks, so that the method of Newton ends after a
 * few passes. It starts from pits that are full.
 */
final class Hydraulics {
  private static final int NOBODY = -1;
  private static final int MOST_PASSES = 60;
  private static final int MOST_ROUNDS = 200;
  private static final double AGREED = 1e-13;
  private static final double FULL = 1e6;

  private final int[][] takers;
  private final double[] outsideM3ps;
  private final Outlets[] units;

  /** What leaves a unit by each outlet at a volume, and how it changes with the volume. */
  interface Outlets {
    /**
     * Fills in what leaves.
     *
     * @param volumeM3ps volume through the unit [m3/s]
     * @param out by outlet [m3/s]
     * @param slope change of each outlet with the volume
     */
    void at(double volumeM3ps, double[] out, double[] slope);
  }

  /** A unit that divides its volume by shares. */
  record Shares(double[] shares) implements Outlets {
    @Override
    public void at(double volumeM3ps, double[] out, double[] slope) {
      for (int o = 0; o < out.length; o++) {
        out[o] = shares[o] * volumeM3ps;
        slope[o] = shares[o];
      }
    }
  }

  /**
   * A pit: its pumps in their order, the weir or brim, what settles.
   *
   * @param afloat share of the volume that does not settle
   * @param stopM3ps volume at the stop level over the length of the step [m3/s]; 0 at rest
   * @param brimM3ps volume up to weir or brim over the length of the step [m3/s]; 0 at rest
   * @param pumpsM3ps flow of each pump while it runs [m3/s]
   */
  record PitOutlets(double afloat, double stopM3ps, double brimM3ps, double[] pumpsM3ps)
      implements Outlets {
    @Override
    public void at(double volumeM3ps, double[] out, double[] slope) {
      Arrays.fill(slope, 0);
      double all = afloat * volumeM3ps;
      double left = Math.max(0, all - stopM3ps);
      double rest = all;
      double restSlope = afloat;
      for (int p = 0; p < pumpsM3ps.length; p++) {
        out[p] = Math.min(pumpsM3ps[p], left);
        slope[p] = left > 0 && out[p] < pumpsM3ps[p] ? afloat : 0;
        left -= out[p];
        rest -= out[p];
        restSlope -= slope[p];
      }
      int weir = pumpsM3ps.length;
      out[weir] = Math.max(0, rest - brimM3ps);
      slope[weir] = rest >= brimM3ps ? Math.max(0, restSlope) : 0;
      if (out.length > weir + 1) {
        out[weir + 1] = (1 - afloat) * volumeM3ps;
        slope[weir + 1] = 1 - afloat;
      }
    }
  }

  Hydraulics(int[][] takers, double[] outsideM3ps, Outlets[] units) {
    this.takers = takers;
    this.outsideM3ps = outsideM3ps;
    this.units = units;
  }

  /** The volume through each unit [m3/s]. */
  double[] volumesM3ps() {
    double[] volumes = new double[units.length];
    Arrays.fill(volumes, FULL * (1 + Arrays.stream(outsideM3ps).sum()));
    try {
      for (int pass = 0; pass < MOST_PASSES; pass++) {
        volumes = newton(volumes);
        for (int u = 0; u < volumes.length; u++) {
          volumes[u] = Math.max(0, volumes[u]);
        }
        if (agree(volumes, substituted(volumes))) {
          return volumes;
        }
      }
    } catch (UnsolvedException e) {
      volumes = outsideM3ps.clone();
    }
    for (int round = 0; round < MOST_ROUNDS; round++) {
      double[] before = volumes;
      volumes = substituted(before);
      if (agree(before, volumes)) {
        break;
      }
    }
    return volumes;
  }

  private static boolean agree(double[] before, double[] after) {
    double change = 0;
    double scale = 0;
    for (int u = 0; u < after.length; u++) {
      change = Math.max(change, Math.abs(after[u] - before[u]));
      scale = Math.max(scale, after[u]);
    }
    return change <= AGREED * scale;
  }

  private double[] newton(double[] volumes) {
    int n = units.length;
    double[][] matrix = new double[n][n];
    double[] right = outsideM3ps.clone();
    for (int from = 0; from < n; from++) {
      matrix[from][from] += 1;
      double[] out = new double[takers[from].length];
      double[] slope = new double[out.length];
      units[from].at(volumes[from], out, slope);
      for (int o = 0; o < out.length; o++) {
        int to = takers[from][o];
        if (to != NOBODY) {
          matrix[to][from] -= slope[o];
          right[to] += out[o] - slope[o] * volumes[from];
        }
      }
    }
    return LinearSystem.solve("volume through the units", matrix, right);
  }

  private double[] substituted(double[] volumes) {
    double[] next = outsideM3ps.clone();
    for (int from = 0; from < next.length; from++) {
      double[] out = new double[takers[from].length];
      units[from].at(volumes[from], out, new double[out.length]);
      for (int o = 0; o < out.length; o++) {
        if (takers[from][o] != NOBODY) {
          next[takers[from][o]] += out[o];
        }
      }
    }
    return next;
  }

  /**
   * The share of the time in which what flows through each unit does so, on the average of its
   * volume: 1 where flows are even, the running share of the pump where all of it comes from one
   * that starts and stops. Pumps are taken to run independently of each other, so that the flow
   * that an average volume sees is
   *
   * <pre>V + Σ g² (1/d − 1) / V</pre>
   *
   * <p>with V the mean flow through the unit, g the part of it that a pump of running share d
   * brings. A pit evens out what comes to it.
   */
  double[] dutyShares(double[] volumes) {
    int n = units.length;
    double[] seen = volumes.clone();
    for (int from = 0; from < n; from++) {
      if (!(units[from] instanceof PitOutlets pit)) {
        continue;
      }
      double[] out = new double[takers[from].length];
      pit.at(volumes[from], out, new double[out.length]);
      for (int p = 0; p < pit.pumpsM3ps().length; p++) {
        double duty = pit.pumpsM3ps()[p] > 0 ? out[p] / pit.pumpsM3ps()[p] : 1;
        int to = takers[from][p];
        if (to == NOBODY || units[to] instanceof PitOutlets || !(out[p] > 0) || duty > 1 - 1e-9) {
          continue;
        }
        double[] brought = brought(to, out[p]);
        for (int u = 0; u < n; u++) {
          seen[u] += volumes[u] > 0 ? brought[u] * brought[u] * (1 / duty - 1) / volumes[u] : 0;
        }
      }
    }
    double[] duties = new double[n];
    for (int u = 0; u < n; u++) {
      duties[u] = seen[u] > 0 ? Math.min(1, volumes[u] / seen[u]) : 1;
    }
    return duties;
  }

  /** What of a flow into a unit passes each unit before it comes to a pit [m3/s]. */
  private double[] brought(int unit, double flowM3ps) {
    int n = units.length;
    double[][] matrix = new double[n][n];
    double[] right = new double[n];
    right[unit] = flowM3ps;
    for (int from = 0; from < n; from++) {
      matrix[from][from] += 1;
      if (units[from] instanceof Shares shares) {
        for (int o = 0; o < takers[from].length; o++) {
          int to = takers[from][o];
          if (to != NOBODY && !(units[to] instanceof PitOutlets)) {
            matrix[to][from] -= shares.shares()[o];
          }
        }
      }
    }
    try {
      return LinearSystem.solve("flow of a pump", matrix, right);
    } catch (UnsolvedException e) {
      return right;
    }
  }
}
