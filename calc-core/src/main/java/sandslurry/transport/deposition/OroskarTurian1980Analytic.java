package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.settling.HinderedSettling;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;

/**
 * Critical velocity of Oroskar and Turian from their energy balance: turbulent eddies must supply
 * the work that keeps the grains from falling.
 *
 * <pre>
 * V/√(g d (s − 1)) = {5 C (1 − C)^(2n−1) (D/d) Re^(1/8) / χ}^(8/15)
 * Re = D √(g d (s − 1)) / ν
 * </pre>
 *
 * <p>V critical velocity [m/s]; g gravity [m/s²]; d grain size d50 [m]; s density of sand over
 * density of carrier; C volume fraction; n exponent of hindered settling, here by {@link Rowe1987};
 * D bore [m]; ν kinematic viscosity of the carrier [m²/s]; χ share of the eddies that are faster
 * than the grains fall, 0.95 to 1 for sand, here 0.96 throughout, which moves V by less than 3 %.
 * Some reprints drop χ or the power 8/15.
 *
 * <p>The limit is between a bed and full suspension. The limits of range given are those within
 * which the formula is used here, not published ones; near C = 0 it tends to 0.
 */
final class OroskarTurian1980Analytic extends DepositionVelocityModel {
  static final Within WITHIN = Within.OWN.size(0.1e-3, 5e-3).bore(0.02, 0.5).fraction(0.02, 0.4);
  static final double EDDY_SHARE = 0.96;
  private static final HinderedSettling HINDERED = new Rowe1987();

  private static final Citation SOURCE =
      new Citation("Oroskar and Turian", 1980, "AIChE Journal 26:550-558")
          .fromMemory("coefficients");
  private static final Equation RE =
      SOURCE.equation(
          "Re",
          "Reynolds number of the grain scale",
          "D sqrt(g d (s - 1)) / nu",
          Kind.NUMBER,
          "D m, d m, s, nu m2/s");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Oroskar and Turian, analytic",
          "sqrt(g d (s - 1)) (5/0.96 C (1 - C)^(2 n - 1) (D/d) Re^(1/8))^(8/15)",
          Kind.VELOCITY,
          "d m, s, C, n, D m, Re");

  OroskarTurian1980Analytic() {
    super(
        "oroskar-turian-1980-analytic",
        "Oroskar and Turian, analytic",
        Limit.FULL_SUSPENSION,
        SOURCE,
        WITHIN,
        V,
        RE);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double c = slurry.volumeFraction();
    double grain = SettlingVelocities.reynoldsNumber(slurry.d50Grain(), slurry.liquid());
    double reynolds =
        trace.step(
            RE,
            reynolds(slurry, bore),
            bore.diameterM(),
            slurry.d50M(),
            slurry.densityRatio(),
            slurry.liquid().kinematicViscosityM2ps());
    double n = HINDERED.exponent(grain, c, trace).value();
    double energy =
        5
            * c
            * Math.pow(1 - c, 2 * n - 1)
            * (bore.diameterM() / slurry.d50M())
            * Math.pow(reynolds(slurry, bore), 1.0 / 8)
            / EDDY_SHARE;
    return trace.step(
        V,
        grainScaleMps(slurry) * Math.pow(energy, 8.0 / 15),
        slurry.d50M(),
        slurry.densityRatio(),
        c,
        n,
        bore.diameterM(),
        reynolds);
  }

  /** √(g d (s − 1)) [m/s]. */
  static double grainScaleMps(Slurry slurry, double sizeM) {
    return Math.sqrt(Physics.GRAVITY * sizeM * (slurry.densityRatio() - 1));
  }

  private static double grainScaleMps(Slurry slurry) {
    return grainScaleMps(slurry, slurry.d50M());
  }

  private static double reynolds(Slurry slurry, Bore bore) {
    return VelocityScale.reynolds(slurry, bore, grainScaleMps(slurry));
  }
}
