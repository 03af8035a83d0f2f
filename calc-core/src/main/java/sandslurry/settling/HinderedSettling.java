package sandslurry.settling;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;

/** How much slower a crowd of grains falls than one: w_C = w (1 − C)ⁿ. */
public interface HinderedSettling extends Correlation {
  /**
   * The exponent n of (1 − C)ⁿ.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone
   * @param volumeFraction volume of grains over volume of mixture
   * @return the exponent, and what lay outside the published range
   */
  Estimate exponent(double reynoldsNumber, double volumeFraction);
}
