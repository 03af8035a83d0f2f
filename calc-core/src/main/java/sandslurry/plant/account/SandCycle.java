package sandslurry.plant.account;

import java.util.ArrayList;
import java.util.List;
import sandslurry.material.sand.SizeClass;

/**
 * The sand that circulates when recovered sand is bedded again: it coarsens, because the fine
 * classes are lost.
 *
 * <p>At rest each class i is bedded as often as it comes back: bedded = bought + η bedded. With f
 * the mass fractions of the sand bought, B all sand bedded and M the sand bought,
 *
 * <pre>
 * bedded_i = M f_i / (1 − η_i)      M = B / Σ f_i / (1 − η_i)
 * </pre>
 *
 * <p>The recovery of the whole is 1 − M/B. It is more than Σ f_i η_i, the recovery of new sand,
 * because the sand that circulates is coarser than what is bought. A class that comes back wholly
 * has no end to its circulation: then nothing need be bought once it fills the stalls, and such
 * classes are all that circulates. Derived from the balance; no source needed.
 *
 * @param bedded the sand that is bedded at rest, with the bought classes
 * @param beddedKgps all sand bedded [kg/s]
 * @param boughtKgps sand that must be bought [kg/s]
 * @param recoveryOfNewSand Σ f_i η_i: what comes back of sand just bought
 */
public record SandCycle(
    List<SizeClass> bedded, double beddedKgps, double boughtKgps, double recoveryOfNewSand) {
  /** Copies the list. */
  public SandCycle {
    bedded = List.copyOf(bedded);
  }

  /**
   * The cycle at rest.
   *
   * @param bought gradation of the sand bought; mass fractions that sum to 1
   * @param recovery share of each class that comes back to the stalls, of what was bedded
   * @param beddedKgps sand bedded [kg/s]
   * @return the cycle
   */
  public static SandCycle of(List<SizeClass> bought, List<Double> recovery, double beddedKgps) {
    if (bought.size() != recovery.size() || bought.isEmpty()) {
      throw new IllegalArgumentException(
          "needs a recovery for each of " + bought.size() + " classes but has " + recovery.size());
    }
    if (!recovery.stream().allMatch(share -> share >= 0 && share <= 1)) {
      throw new IllegalArgumentException("recoveries lie in 0 to 1 but were " + recovery);
    }
    if (!(beddedKgps >= 0 && Double.isFinite(beddedKgps))) {
      throw new IllegalArgumentException("the sand bedded must be >= 0 but was " + beddedKgps);
    }
    boolean endless = false;
    double newSand = 0;
    for (int i = 0; i < bought.size(); i++) {
      endless |= recovery.get(i) == 1 && bought.get(i).massFraction() > 0;
      newSand += bought.get(i).massFraction() * recovery.get(i);
    }
    double[] weights = new double[bought.size()];
    double sum = 0;
    for (int i = 0; i < weights.length; i++) {
      double fraction = bought.get(i).massFraction();
      double lost = 1 - recovery.get(i);
      weights[i] = endless ? (lost > 0 ? 0 : fraction) : fraction / lost;
      weights[i] = fraction > 0 ? weights[i] : 0;
      sum += weights[i];
    }
    List<SizeClass> bedded = new ArrayList<>();
    for (int i = 0; i < weights.length; i++) {
      SizeClass size = bought.get(i);
      bedded.add(new SizeClass(size.lowM(), size.highM(), size.meanM(), weights[i] / sum));
    }
    return new SandCycle(bedded, beddedKgps, endless ? 0 : beddedKgps / sum, newSand);
  }
}
