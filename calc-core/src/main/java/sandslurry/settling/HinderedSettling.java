package sandslurry.settling;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;

/** How much slower a crowd of grains falls than one: w_C = w (1 − C)ⁿ. */
public interface HinderedSettling extends Correlation {
  /**
   * The exponent n of (1 − C)ⁿ.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @return the exponent, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  default Estimate exponent(double reynoldsNumber, double volumeFraction) {
    return exponent(reynoldsNumber, volumeFraction, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @param trace what keeps the steps
   * @return the exponent, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  Estimate exponent(double reynoldsNumber, double volumeFraction, Trace trace);

  /**
   * The factor (1 − C)ⁿ on the velocity of one grain.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @return the factor, 1 for a lone grain, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  default Estimate factor(double reynoldsNumber, double volumeFraction) {
    Estimate exponent = exponent(reynoldsNumber, volumeFraction);
    return new Estimate(Math.pow(1 - volumeFraction, exponent.value()), exponent.excesses());
  }
}
