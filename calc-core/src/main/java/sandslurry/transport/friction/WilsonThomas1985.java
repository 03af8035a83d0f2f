package sandslurry.transport.friction;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.material.liquid.Rheology;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Turbulent flow of any rheology after Wilson and Thomas: the viscous sub-layer is thicker than
 * that of a Newtonian liquid, so the core flows faster.
 *
 * <pre>
 * V = V_N + u* [11.6 (α − 1) − 2.5 ln α − Ω]
 * α = 2(1 + n ξ)/(1 + n),  ξ = τy/τw,  Ω = −2.5 ln(1 − ξ) − 2.5 ξ (1 + ξ/2)
 * </pre>
 *
 * <p>V mean velocity [m/s]; V_N that of a Newtonian liquid of the viscosity at the wall, μw =
 * τw/γ̇w [Pa.s], under the same wall stress; u* = √(τw/ρ) shear velocity [m/s]; α area under the
 * rheogram up to the wall over that of the Newtonian triangle, which for τ = τy + K γ̇ⁿ is the
 * expression above; Ω the flattening of the profile by the plug. With n = 1 and τy = 0 nothing is
 * added.
 *
 * <p>V_N is taken from the turbulent part of Churchill (1977), as for water in this calculator. In
 * a smooth pipe V_N rises by 2.5 u* per unit of ln(1/μ), so the bracket is the same as a Newtonian
 * liquid of the lesser viscosity
 *
 * <pre>μT = μw exp(−[11.6 (α − 1) − 2.5 ln α − Ω]/2.5)</pre>
 *
 * <p>and that is how it is computed, because it also says what a rough wall does, of which the
 * publication does not speak: the gain is lost as the roughness comes through the thickened
 * sub-layer, and a fully rough pipe has the friction of a Newtonian liquid. The friction never
 * falls below that of the Newtonian fully rough wall. To take at least the Newtonian rough value at
 * the viscosity of the wall instead would undo the model for every roughness, even none, because α
 * is at least 1.
 *
 * <p>In creeping flow there is no turbulent stress to speak of; where the friction law has no
 * solution the laminar stress is given, and the Reynolds number lies outside the range in any case.
 *
 * <p>The rheology must have been measured at the shear rate of the wall, hundreds to thousands per
 * second; extrapolated from low rates, K and n give a viscosity at the wall that is wrong.
 */
final class WilsonThomas1985 extends Published implements TurbulentFrictionModel {
  private static final double THICKENING = 11.6;
  private static final double VON_KARMAN = 2.5;
  private static final double LOG_2 = Math.log(2);

  /** The Reynolds number at which the turbulent part of Churchill's equation is infinite. */
  private static final double LOG_SINGULAR_REYNOLDS = Math.log(7);

  /** Reynolds number above which the balance has but one root. */
  private static final double LOG_SURELY_ONE = Math.log(1000);

  /**
   * Where the search begins: a common friction factor, and how it falls with the Reynolds number.
   */
  private static final double LIKELY_FACTOR = 0.02;

  private static final double FACTOR_SLOPE = 0.2;
  private static final double NO_FLOW = -700;
  private static final double HOPELESS = 1e9;
  private static final Bound REYNOLDS =
      new Bound(
          "Reynolds number at the viscosity of the wall",
          Kind.NUMBER,
          3000,
          Double.POSITIVE_INFINITY);
  private static final Bound INDEX = new Bound("flow index n", Kind.NUMBER, 0, 1);
  private static final Bound ROUGHNESS =
      new Bound("roughness in units of the thickened sub-layer", Kind.NUMBER, 0, 5);

  WilsonThomas1985() {
    super(
        "wilson-thomas-1985",
        "Wilson and Thomas, thickened sub-layer",
        "V = V_N + u* [11.6 (alpha - 1) - 2.5 ln alpha - Omega]",
        new Citation(
                "Wilson and Thomas",
                1985,
                "Canadian Journal of Chemical Engineering 63:539-546; rough wall added here")
            .fromMemory("coefficients"),
        List.of(REYNOLDS, INDEX, ROUGHNESS));
  }

  @Override
  public Estimate wallStressPa(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps) {
    Balance balance = new Balance(rheology, densityKgM3, bore, velocityMps);
    double inertia = densityKgM3 * velocityMps * bore.diameterM();
    OptionalDouble near = balance.near();
    OptionalDouble logAbove = near.isPresent() ? near : balance.fromAbove();
    if (logAbove.isEmpty()) {
      LaminarPipeFlow laminar = LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps);
      double reynolds = inertia * laminar.wallShearRatePs() / laminar.wallStressPa();
      return Estimate.checks().check(REYNOLDS, reynolds).value(laminar.wallStressPa());
    }
    double stress = rheology.yieldStressPa() + Math.exp(logAbove.getAsDouble());
    double viscosity = stress / rheology.shearRatePs(stress);
    double roughness =
        bore.roughnessM()
            * Math.sqrt(stress * densityKgM3)
            / (viscosity * thickening(rheology, stress));
    return Estimate.checks()
        .check(REYNOLDS, inertia / viscosity)
        .check(INDEX, rheology.index())
        .check(ROUGHNESS, roughness)
        .value(stress);
  }

  private static double thickening(Rheology rheology, double stress) {
    double n = rheology.index();
    return 2 * (1 + n * rheology.yieldStressPa() / stress) / (1 + n);
  }

  /**
   * Wall stress against that of turbulent flow at one velocity: ln τ − ln(f ρV²/8), of the
   * logarithm of the part of τ above the yield stress. It is positive where τ is more than
   * turbulent flow asks.
   */
  static final class Balance implements DoubleUnaryOperator {
    private final Rheology rheology;
    private final double yieldPa;
    private final double index;
    private final double logConsistency;
    private final double logInertia;
    private final double dynamicPa;
    private final Bore bore;
    private final double velocityMps;

    Balance(Rheology rheology, double densityKgM3, Bore bore, double velocityMps) {
      this.rheology = rheology;
      this.yieldPa = rheology.yieldStressPa();
      this.index = rheology.index();
      this.logConsistency = Math.log(rheology.consistency());
      this.logInertia = Math.log(densityKgM3 * velocityMps * bore.diameterM());
      this.dynamicPa = densityKgM3 * velocityMps * velocityMps / 8;
      this.bore = bore;
      this.velocityMps = velocityMps;
    }

    @Override
    public double applyAsDouble(double logAbove) {
      double stress = yieldPa + Math.exp(logAbove);
      double logStress = Math.log(stress);
      double logReynolds = logReynolds(stress, logStress, logAbove);
      if (!(logReynolds > LOG_SINGULAR_REYNOLDS)) {
        return NO_FLOW;
      }
      double factor =
          PipeFriction.turbulentFactor(Math.exp(logReynolds), bore.roughnessM() / bore.diameterM());
      return Math.max(logStress - Math.log(factor * dynamicPa), NO_FLOW);
    }

    /** ln(ρVD/μT). */
    private double logReynolds(double stress, double logStress, double logAbove) {
      double logShearRate = (logAbove - logConsistency) / index;
      double alpha = thickening(rheology, stress);
      double xi = yieldPa / stress;
      double flattening = -VON_KARMAN * (logAbove - logStress + xi * (1 + xi / 2));
      double gain = THICKENING * (alpha - 1) - VON_KARMAN * Math.log(alpha) - flattening;
      return logInertia - (logStress - logShearRate) + gain / VON_KARMAN;
    }

    /** The root by secants; nothing where they stray or the flow creeps. */
    OptionalDouble near() {
      double start = LIKELY_FACTOR * dynamicPa;
      double above = Math.max(start - yieldPa, start / 4);
      double slope = above / (yieldPa + above) + FACTOR_SLOPE / index;
      OptionalDouble root = Roots.near(this, Math.log(above), slope);
      if (root.isPresent()) {
        double stress = yieldPa + Math.exp(root.getAsDouble());
        double logReynolds = logReynolds(stress, Math.log(stress), root.getAsDouble());
        return logReynolds > LOG_SURELY_ONE ? root : OptionalDouble.empty();
      }
      return root;
    }

    /**
     * The root looked for from above, where the first change of sign is the turbulent branch: below
     * it lies only the part of the friction law where it has no meaning.
     *
     * @return its logarithm; nothing where the friction law has no solution
     */
    OptionalDouble fromAbove() {
      double laminarPa = LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps).wallStressPa();
      double hopeless = Math.log(HOPELESS * (8 * dynamicPa + laminarPa));
      // A friction factor of 1/8 is more than turbulent flow has: most searches begin below it.
      double high = Math.log(dynamicPa / 8);
      while (applyAsDouble(high) < 0) {
        high += LOG_2;
        if (high > hopeless) {
          return OptionalDouble.empty();
        }
      }
      double low = high - LOG_2;
      while (applyAsDouble(low) >= 0) {
        low -= LOG_2;
      }
      return OptionalDouble.of(
          Roots.between("wall stress of turbulent flow", this, low, low + LOG_2));
    }
  }
}
