package sandslurry.settling;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.numeric.Roots;

/**
 * How fast a grain falls in a liquid of any rheology, at rest or sheared.
 *
 * <p>A settling law for Newtonian liquids is given a viscosity of the liquid at the shear rate that
 * the grain meets, and the velocity that agrees with itself is found.
 *
 * <p><b>At rest</b> the shear rate is that of the grain itself, w/d, and the viscosity the apparent
 * one, yield stress included: μ = τ(w/d)/(w/d). In creeping flow this gives no motion when τy ≥ g d
 * (ρs − ρ)/18, a constant of 0.056 that lies inside the range of {@link StaticSuspension}. For a
 * power law the published correction of Stokes' law, at most 1.5 on the drag (from memory,
 * unverified), is left out: the grain is told a little too fast.
 *
 * <p><b>Sheared</b> by the flow at a rate γ̇b the liquid has yielded everywhere; its state is that
 * of the total rate √(γ̇b² + (w/d)²). What viscosity a slow fall across the shear meets follows
 * from the law of flow, stress = η(γ̇)·rate in every direction with η = τ/γ̇: a small further rate
 * in the direction of the main shear meets the slope of the rheogram, dτ/dγ̇, and one across it the
 * secant τ/γ̇. The flow about a grain has both, so the truth lies between
 *
 * <ul>
 *   <li>the tangent n K γ̇ⁿ⁻¹, the <b>fastest</b> fall, and
 *   <li>the secant τ/γ̇ = τy/γ̇ + K γ̇ⁿ⁻¹, the <b>slowest</b> fall, which still counts the yield
 *       stress as a viscosity;
 *   <li>the <b>design</b> value takes the flowing part alone, K γ̇ⁿ⁻¹, none of the yield stress:
 *       for n below 1 it lies between the two, and it errs to the side of faster settling, so that
 *       a line is not passed that drops its sand.
 * </ul>
 *
 * <p>That a sphere in a sheared yield-stress liquid meets far less drag than in the same liquid at
 * rest is shown by the simulations of Sarabian, Rosti, Brandt and Hormozi (abstract read); for
 * tests in pipes see A. D. Thomas (1979), International Journal of Multiphase Flow 5:113-129, and
 * the works named in the theory page.
 */
public final class ShearSettling {
  /** The viscosity of a sheared liquid that a falling grain is taken to meet. */
  public enum Assumption {
    /** Tangent of the rheogram. */
    FASTEST,
    /** Flowing part of the stress over the shear rate. */
    DESIGN,
    /** Whole stress over the shear rate. */
    SLOWEST
  }

  private static final double SLOWEST_MPS = 1e-30;
  private static final int MOST_STEPS = 60;
  private static final double AGREES = 1e-10;

  private ShearSettling() {}

  /**
   * Settling velocity in the liquid at rest.
   *
   * @param grain the grain, denser than the liquid
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param model a settling law for Newtonian liquids
   * @return velocity [m/s], 0 when the yield stress holds the grain, and what lay outside the range
   *     of the law
   */
  public static Estimate atRest(
      Grain grain, Rheology rheology, double densityKgM3, SettlingVelocityModel model) {
    double d = grain.diameterM();
    return fall(grain, densityKgM3, model, w -> rheology.apparentViscosityPaS(w / d));
  }

  /**
   * Settling velocity in the liquid while the flow shears it.
   *
   * @param grain the grain, denser than the liquid
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param bulkShearRatePs shear rate of the flow, positive: 8V/D as a mean over a pipe [1/s]
   * @param assumption the viscosity taken
   * @param model a settling law for Newtonian liquids
   * @return velocity [m/s], and what lay outside the range of the law
   */
  static Estimate sheared(
      Grain grain,
      Rheology rheology,
      double densityKgM3,
      double bulkShearRatePs,
      Assumption assumption,
      SettlingVelocityModel model) {
    if (!(bulkShearRatePs > 0 && Double.isFinite(bulkShearRatePs))) {
      throw new IllegalArgumentException(
          "settling under shear needs a shear rate > 0 but has " + bulkShearRatePs + " 1/s");
    }
    double d = grain.diameterM();
    DoubleUnaryOperator viscosity =
        w -> viscosity(rheology, total(bulkShearRatePs, w / d), assumption);
    // The fall hardly changes the shear: the velocity that agrees with itself is found by putting
    // it in again, which brings it nearer by 1 - n or more, times the part of w/d in the shear.
    double w = 0;
    for (int i = 0; i < MOST_STEPS; i++) {
      Estimate next = model.velocityMps(grain, new Liquid(densityKgM3, viscosity.applyAsDouble(w)));
      if (Math.abs(next.value() - w) <= AGREES * next.value()) {
        return next;
      }
      w = next.value();
    }
    return fall(grain, densityKgM3, model, viscosity);
  }

  /**
   * Settling velocity of a crowd of grains under shear: that of one grain times (1 − C)ⁿ, with the
   * exponent at the Reynolds number of that grain in the viscosity that it meets.
   *
   * @param grain the grain, denser than the liquid
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param bulkShearRatePs shear rate of the flow, positive [1/s]
   * @param volumeFraction volume of all grains over volume of mixture, 0 to below 1
   * @param assumption the viscosity taken
   * @param model a settling law for Newtonian liquids
   * @param crowd a law of hindered settling
   * @return velocity [m/s], and what lay outside the range of the settling law
   */
  public static Estimate shearedHindered(
      Grain grain,
      Rheology rheology,
      double densityKgM3,
      double bulkShearRatePs,
      double volumeFraction,
      Assumption assumption,
      SettlingVelocityModel model,
      HinderedSettling crowd) {
    if (!(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "a volume fraction lies in 0 to 1 but was " + volumeFraction);
    }
    Estimate alone = sheared(grain, rheology, densityKgM3, bulkShearRatePs, assumption, model);
    double d = grain.diameterM();
    double viscosity = viscosity(rheology, total(bulkShearRatePs, alone.value() / d), assumption);
    Estimate exponent = crowd.exponent(densityKgM3 * alone.value() * d / viscosity, volumeFraction);
    return new Estimate(
        alone.value() * Math.pow(1 - volumeFraction, exponent.value()),
        alone.inRange()
            ? exponent.excesses()
            : Stream.concat(alone.excesses().stream(), exponent.excesses().stream()).toList());
  }

  /** Shear rates lie far from where squares overflow, which is all that hypot would guard. */
  private static double total(double bulkShearRatePs, double ownShearRatePs) {
    return Math.sqrt(bulkShearRatePs * bulkShearRatePs + ownShearRatePs * ownShearRatePs);
  }

  private static double viscosity(Rheology rheology, double shearRatePs, Assumption assumption) {
    return switch (assumption) {
      case FASTEST -> rheology.tangentViscosityPaS(shearRatePs);
      case DESIGN -> rheology.flowingViscosityPaS(shearRatePs);
      case SLOWEST -> rheology.apparentViscosityPaS(shearRatePs);
    };
  }

  private static Estimate fall(
      Grain grain,
      double densityKgM3,
      SettlingVelocityModel model,
      DoubleUnaryOperator viscosityPaS) {
    // The logarithm of (law at the viscosity of w) over w falls with w: one root, or none where the
    // yield stress holds the grain.
    DoubleUnaryOperator ratio =
        w ->
            Math.log(
                model
                        .velocityMps(grain, new Liquid(densityKgM3, viscosityPaS.applyAsDouble(w)))
                        .value()
                    / w);
    double high = 1;
    while (ratio.applyAsDouble(high) > 0) {
      high *= 8;
    }
    double low = high;
    while (low > SLOWEST_MPS && ratio.applyAsDouble(low) <= 0) {
      low /= 8;
    }
    if (!(low > SLOWEST_MPS)) {
      return new Estimate(0, List.of());
    }
    double velocity = Roots.betweenDecades("settling velocity", ratio, low * 0.99, low * 8.1);
    return new Estimate(
        velocity,
        model
            .velocityMps(grain, new Liquid(densityKgM3, viscosityPaS.applyAsDouble(velocity)))
            .excesses());
  }
}
