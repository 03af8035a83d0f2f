package sandslurry.transport.friction;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
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
final class WilsonThomas1985 implements TurbulentFrictionModel {
  private static final double THICKENING = 11.6;
  private static final double VON_KARMAN = 2.5;
  private static final double SINGULAR_REYNOLDS = 7;
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

  private static final About ABOUT =
      new About(
          "wilson-thomas-1985",
          "Wilson and Thomas, thickened sub-layer",
          "V = V_N + u* [11.6 (alpha - 1) - 2.5 ln alpha - Omega]",
          new Citation(
                  "Wilson and Thomas",
                  1985,
                  "Canadian Journal of Chemical Engineering 63:539-546; rough wall added here")
              .fromMemory("coefficients"),
          List.of(REYNOLDS, INDEX, ROUGHNESS));

  @Override
  public Estimate wallStressPa(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps) {
    LaminarPipeFlow laminar = LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps);
    double inertia = densityKgM3 * velocityMps * bore.diameterM();
    double yield = rheology.yieldStressPa();
    double high = densityKgM3 * velocityMps * velocityMps;
    double hopeless = HOPELESS * (high + laminar.wallStressPa());
    // A friction factor of 1/8 is more than turbulent flow has: most searches begin below it.
    double likely = high / 64;
    if (residual(rheology, densityKgM3, bore, velocityMps, likely) >= 0) {
      high = likely;
    }
    while (residual(rheology, densityKgM3, bore, velocityMps, high) < 0 && high < hopeless) {
      high *= 8;
    }
    if (!(high < hopeless)) {
      double reynolds = inertia * laminar.wallShearRatePs() / laminar.wallStressPa();
      return Estimate.checks().check(REYNOLDS, reynolds).value(laminar.wallStressPa());
    }
    // From above, the first change of sign is the turbulent branch; below it lies only the part of
    // the friction law where it has no meaning.
    double low = high / 2;
    while (residual(rheology, densityKgM3, bore, velocityMps, low) >= 0) {
      low /= 2;
    }
    double stress =
        yield
            + Roots.betweenDecades(
                "wall stress of turbulent flow",
                x -> residual(rheology, densityKgM3, bore, velocityMps, x),
                low * 0.99,
                low * 2.02);
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

  /** ln τ − ln(f ρV²/8), at the stress that lies x above the yield stress. */
  private static double residual(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps, double x) {
    double stress = rheology.yieldStressPa() + x;
    double shearRate = Math.pow(x / rheology.consistency(), 1 / rheology.index());
    double logViscosity = Math.log(stress / shearRate) - gain(rheology, stress, x) / VON_KARMAN;
    double logReynolds = Math.log(densityKgM3 * velocityMps * bore.diameterM()) - logViscosity;
    if (!(logReynolds > Math.log(SINGULAR_REYNOLDS))) {
      return NO_FLOW;
    }
    double factor =
        PipeFriction.turbulentFactor(Math.exp(logReynolds), bore.roughnessM() / bore.diameterM());
    return Math.max(
        Math.log(8 * stress / (factor * densityKgM3 * velocityMps * velocityMps)), NO_FLOW);
  }

  private static double thickening(Rheology rheology, double stress) {
    double n = rheology.index();
    return 2 * (1 + n * rheology.yieldStressPa() / stress) / (1 + n);
  }

  /** The bracket: gain of mean velocity in units of the shear velocity. */
  private static double gain(Rheology rheology, double stress, double above) {
    double alpha = thickening(rheology, stress);
    double xi = rheology.yieldStressPa() / stress;
    double flattening = -VON_KARMAN * (Math.log(above / stress) + xi * (1 + xi / 2));
    return THICKENING * (alpha - 1) - VON_KARMAN * Math.log(alpha) - flattening;
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
