package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/** How much slower a crowd of grains falls than one: w_C = w (1 − C)ⁿ. */
public abstract class HinderedSettling extends Published {
  /**
   * A careful limit set here: the plots of Richardson and Zaki run on to about 0.58, but those are
   * fluidised spheres, and sand at rest itself holds about 0.6.
   */
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.4);

  private final Bound reynolds;
  private final Equation equation;

  /** As {@link Published}, with the greatest Reynolds number and n as a text of Re_p. */
  HinderedSettling(
      String id, String name, Citation source, double greatestReynolds, String equation) {
    this(
        id,
        name,
        source,
        new Bound("Reynolds number", Kind.NUMBER, 0, greatestReynolds),
        source.equation("n", "exponent of hindered settling", equation, Kind.NUMBER, "Re_p"));
  }

  private HinderedSettling(
      String id, String name, Citation source, Bound reynolds, Equation equation) {
    super(id, name, source, List.of(reynolds, CONCENTRATION), equation);
    this.reynolds = reynolds;
    this.equation = equation;
  }

  /** The exponent within and outside the published range. */
  abstract double exponent(double reynoldsNumber);

  /**
   * The exponent n of (1 − C)ⁿ.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @return the exponent, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  public final Estimate exponent(double reynoldsNumber, double volumeFraction) {
    return exponent(reynoldsNumber, volumeFraction, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @param trace what keeps the steps
   * @return the exponent, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  public final Estimate exponent(double reynoldsNumber, double volumeFraction, Trace trace) {
    if (!(reynoldsNumber >= 0) || !(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "hindered settling needs a Reynolds number of 0 or more and a volume fraction from 0 and"
              + " below 1 but has "
              + reynoldsNumber
              + " and "
              + volumeFraction);
    }
    return Estimate.checks()
        .check(reynolds, reynoldsNumber)
        .check(CONCENTRATION, volumeFraction)
        .value(trace.step(equation, exponent(reynoldsNumber), reynoldsNumber));
  }

  /**
   * The factor (1 − C)ⁿ on the velocity of one grain, which is that against the vessel, not against
   * the liquid that the sand displaces upwards. It must not be corrected again by a correlation
   * that contains (1 − C) itself.
   *
   * @param reynoldsNumber Reynolds number of one grain falling alone, not negative
   * @param volumeFraction volume of grains over volume of mixture, from 0 and below 1
   * @return the factor, 1 for a lone grain, and what lay outside the published range
   * @throws IllegalArgumentException if either value lies outside these bounds
   */
  public final Estimate factor(double reynoldsNumber, double volumeFraction) {
    Estimate exponent = exponent(reynoldsNumber, volumeFraction);
    return new Estimate(Math.pow(1 - volumeFraction, exponent.value()), exponent.excesses());
  }
}
