package sandslurry.settling;

import sandslurry.correlation.Bound;
import sandslurry.units.Kind;

/** What the exponents of hindered settling share. */
final class Crowd {
  /**
   * A careful limit set here: the plots of Richardson and Zaki run on to about 0.58, but those are
   * fluidised spheres, and sand at rest itself holds about 0.6.
   */
  static final Bound CONCENTRATION = new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.4);

  private Crowd() {}

  static void require(double reynoldsNumber, double volumeFraction) {
    if (!(reynoldsNumber >= 0) || !(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "hindered settling needs a Reynolds number of 0 or more and a volume fraction from 0 and"
              + " below 1 but has "
              + reynoldsNumber
              + " and "
              + volumeFraction);
    }
  }
}
