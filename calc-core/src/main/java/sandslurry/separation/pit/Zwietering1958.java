package sandslurry.separation.pit;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.separation.Numbers;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The speed at which a mixer just suspends sand, after Zwietering: no grain lies on the floor for
 * more than one or two seconds.
 *
 * <pre>N = S ν^0.1 d^0.2 (g (ρs − ρ)/ρ)^0.45 X^0.13 / D^0.85</pre>
 *
 * <p>N speed [1/s]; S number of the impeller and pit; ν kinematic viscosity [m²/s]; d grain size
 * [m]; ρs, ρ densities [kg/m³]; g gravity [m/s²]; X hundred times the mass of sand over the mass of
 * liquor; D diameter of the impeller [m]. Without sand there is nothing to suspend: N is 0.
 *
 * <p>Range: grains of 0.05 to 3 mm, a difference of density of 50 to 2000 kg/m³, X of 0.1 to 20,
 * turbulent flow (Re = N D²/ν above 10⁴), a baffled tank.
 *
 * <p>Source: Zwietering (1958), Chemical Engineering Science 8:244-253; formula and range read at
 * myengineeringtools.com (solid suspension speed).
 */
public final class Zwietering1958 implements Correlation {
  private static final Bound SIZE = new Bound("grain size", Kind.GRAIN, 0.05e-3, 3e-3);
  private static final Bound DIFFERENCE =
      new Bound("density of sand over that of liquor", Kind.DENSITY, 50, 2000);
  private static final Bound LOADING =
      new Bound("mass of sand over mass of liquor", Kind.PERCENT, 0.001, 0.20);
  private static final Bound REYNOLDS =
      new Bound("Reynolds number of the mixer", Kind.NUMBER, 1e4, Double.POSITIVE_INFINITY);

  private static final Equation JUST =
      Equation.of(
          "N_js",
          "speed of the mixer that just suspends the grains",
          "S nu^0.1 d^0.2 (g (rho_s - rho)/rho)^0.45 X[%]^0.13 / D^0.85",
          Kind.FREQUENCY,
          "Zwietering 1958, Chemical Engineering Science 8:244-253",
          "S, nu m2/s, d m, rho_s kg/m3, rho kg/m3, X, D m");

  private static final About ABOUT =
      new About(
          "zwietering-1958",
          "Zwietering, just-suspended speed",
          "N = S nu^0.1 d^0.2 (g (rho_s - rho)/rho)^0.45 X^0.13 / D^0.85",
          new Citation("Zwietering", 1958, "Chemical Engineering Science 8:244-253"),
          List.of(SIZE, DIFFERENCE, LOADING, REYNOLDS));

  private static final double SIZE_POWER = 0.2;

  /** Creates the correlation; it has no state. */
  public Zwietering1958() {}

  /**
   * Speed that just suspends grains of one size.
   *
   * @param impeller the mixer
   * @param sizeM grain size: that of the coarse grains, such as d85 [m]
   * @param liquid the liquor
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param sandPerLiquor mass of sand over mass of liquor in the pit, 0 or more
   * @return the speed [1/s], and what lay outside the published range
   */
  public Estimate speedRps(
      Impeller impeller,
      double sizeM,
      Liquid liquid,
      double sandDensityKgM3,
      double sandPerLiquor) {
    return speedRps(impeller, sizeM, liquid, sandDensityKgM3, sandPerLiquor, Trace.NONE);
  }

  /** The same with its step. */
  Estimate speedRps(
      Impeller impeller,
      double sizeM,
      Liquid liquid,
      double sandDensityKgM3,
      double sandPerLiquor,
      Trace trace) {
    Numbers.positive("the grain size", sizeM, "m");
    Numbers.notNegative("the mass of sand over that of liquor", sandPerLiquor, "");
    double difference = sandDensityKgM3 - liquid.densityKgM3();
    Numbers.positive("the density of the sand less that of the liquor", difference, "kg/m3");
    double speed =
        impeller.suspensionNumber()
            * Math.pow(liquid.kinematicViscosityM2ps(), 0.1)
            * Math.pow(sizeM, SIZE_POWER)
            * Math.pow(Physics.GRAVITY * difference / liquid.densityKgM3(), 0.45)
            * Math.pow(InUnit.PERCENT.of(sandPerLiquor), 0.13)
            / Math.pow(impeller.diameterM(), 0.85);
    trace.step(
        JUST,
        speed,
        impeller.suspensionNumber(),
        liquid.kinematicViscosityM2ps(),
        sizeM,
        sandDensityKgM3,
        liquid.densityKgM3(),
        sandPerLiquor,
        impeller.diameterM());
    return Estimate.checks()
        .check(SIZE, sizeM)
        .check(DIFFERENCE, difference)
        .check(LOADING, sandPerLiquor)
        .check(REYNOLDS, reynolds(impeller, speed, liquid))
        .value(speed);
  }

  /**
   * How much faster a mixer must turn for grains of another size.
   *
   * @param sizeM grain size [m]
   * @param otherM the other size [m]
   * @return (d'/d)^0.2
   */
  public static double faster(double sizeM, double otherM) {
    return Math.pow(otherM / sizeM, SIZE_POWER);
  }

  /**
   * Reynolds number of a mixer.
   *
   * @param impeller the mixer
   * @param speedRps its speed [1/s]
   * @param liquid the liquor
   * @return N D²/ν
   */
  static double reynolds(Impeller impeller, double speedRps, Liquid liquid) {
    return speedRps * impeller.diameterM() * impeller.diameterM() / liquid.kinematicViscosityM2ps();
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
