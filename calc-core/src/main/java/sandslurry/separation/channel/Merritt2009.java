package sandslurry.separation.channel;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Tractive stress that keeps a sanitary sewer clean of sand and grit, after Merritt, as ASCE Manual
 * of Practice 60 (2007) takes it.
 *
 * <pre>τ = 0.867 Pa · (d / 1 mm)^0.277</pre>
 *
 * <p>τ needed mean stress on the wetted wall [Pa]; d size of the grains to be moved. For 1 mm sand,
 * the size used for sewers, 0.867 Pa was read; the power 0.277 is from memory, unverified, as is
 * the range. The stress must be reached at the flow that comes once a day in the week of least
 * flow, and it is for the little sand of a sewer: for the load of sand-laden manure it is
 * necessary, not sufficient. Older practice asks for 0.6 m/s (2 ft/s) when full.
 */
public final class Merritt2009 implements Correlation {
  private static final double STRESS_AT_1_MM_PA = 0.867;
  private static final double POWER = 0.277;
  private static final Bound SIZE = new Bound("grain size", Kind.GRAIN, 1e-4, 1e-2);

  private static final Citation SOURCE =
      new Citation(
              "Merritt",
              2009,
              "Tractive force design for sanitary sewer self-cleansing, Journal of Environmental"
                  + " Engineering 135(12):1338-1348")
          .fromMemory("power, volume and pages");
  private static final Equation STRESS =
      SOURCE.equation(
          "tau_m",
          "tractive stress that keeps a sewer clean",
          "0.867 d[mm]^0.277",
          Kind.STRESS,
          "d m");

  private static final About ABOUT =
      new About(
          "merritt-2009", "Merritt, tractive stress of sewers", SOURCE, List.of(SIZE), STRESS);

  /** Creates the criterion; it has no state. */
  public Merritt2009() {}

  /**
   * Stress needed.
   *
   * @param grainDiameterM d, positive [m]
   * @return τ [Pa], and whether the size lay outside the range
   */
  public Estimate neededStressPa(double grainDiameterM) {
    return neededStressPa(grainDiameterM, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param grainDiameterM grain size [m]
   * @param trace what keeps the step
   * @return the stress [Pa], and what lay outside the range
   */
  public Estimate neededStressPa(double grainDiameterM, Trace trace) {
    if (!(grainDiameterM > 0 && Double.isFinite(grainDiameterM))) {
      throw new IllegalArgumentException(
          "a grain size must be > 0 but was " + grainDiameterM + " m");
    }
    return Estimate.checks()
        .check(SIZE, grainDiameterM)
        .value(
            trace.step(
                STRESS,
                STRESS_AT_1_MM_PA * Math.pow(InUnit.MILLIMETRE.of(grainDiameterM), POWER),
                grainDiameterM));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
