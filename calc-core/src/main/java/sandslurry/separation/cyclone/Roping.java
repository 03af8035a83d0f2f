package sandslurry.separation.cyclone;

import sandslurry.separation.Numbers;
import sandslurry.units.InUnit;

/**
 * When the underflow of a hydrocyclone turns from a spray into a rope.
 *
 * <p>A rope closes the air core. The cut coarsens and coarse sand leaves above, so a cyclone is
 * kept clear of it. Two published limits on the volume fraction of solids in the underflow are
 * given; a careful user takes the lower.
 */
final class Roping {
  private Roping() {}

  /**
   * The limit of Plitt, Flintoff and Stuffco: finer sand ropes sooner.
   *
   * <pre>C = 62.3 (1 − exp(−d/60))</pre>
   *
   * <p>C volume per cent of solids in the underflow; d median size of those solids [µm]. Plitt,
   * Flintoff and Stuffco (1987), Roping in hydrocyclones, Third International Conference on
   * Hydrocyclones, Oxford; from memory, unverified.
   *
   * @param medianM median size of the sand in the underflow, 0 or more [m]
   * @return the volume fraction above which it ropes
   */
  static double plittFlintoffStuffco(double medianM) {
    double micrometres = InUnit.MICROMETRE.of(Numbers.notNegative("the median size", medianM, "m"));
    return -62.3 * Math.expm1(-micrometres / 60) / InUnit.PERCENT.of(1);
  }

  /**
   * The limit of Mular and Jull: a thick overflow puts it higher.
   *
   * <pre>C = 0.5385 Co + 0.4911</pre>
   *
   * <p>C, Co volume fractions of solids in underflow and overflow. Mular and Jull (1978), Mineral
   * Processing Plant Design, AIME, as in the SPOC manual of Laguitton (1985); from memory,
   * unverified.
   *
   * @param overflowFraction volume fraction of sand in the overflow, 0 to 1
   * @return the volume fraction in the underflow above which it ropes
   */
  static double mularJull(double overflowFraction) {
    return 0.5385 * Numbers.share("the volume fraction of sand", overflowFraction) + 0.4911;
  }
}
