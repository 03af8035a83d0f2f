package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Limit of deposition in sewers after Ab Ghani.
 *
 * <pre>
 * V/√(g d (s − 1)) = 3.08 Dgr^−0.09 C^0.21 (R/d)^0.53 λs^−0.21
 * λs = 1.13 λ^0.98 C^0.02 Dgr^0.01,  Dgr = d [g (s − 1)/ν²]^(1/3)
 * </pre>
 *
 * <p>V velocity at the limit [m/s]; g gravity [m/s²]; d grain size [m]; s density of sand over
 * density of carrier; C volume fraction; R hydraulic radius [m], D/4 of the full pipe; λ and λs
 * Darcy friction factor of the carrier alone and with sand moving on the floor; ν kinematic
 * viscosity of the carrier [m²/s]. Every term is without dimension.
 *
 * <p>Tested with 0.46 to 8.3 mm in pipes of 154 to 450 mm at 0.76 to 1450 ppm by volume (from
 * memory, unverified). Coarser grains are asked for less, as V goes with about d^−0.12.
 */
final class AbGhani1993 extends DepositionVelocityModel {
  /** The finest sand tested; for coarser the relation asks less. */
  static final double FINEST_M = 0.46e-3;

  /** The power of the friction factor when the equation is solved for V. */
  static final double FRICTION_POWER = 0.98 * 0.21;

  private static final Citation SOURCE =
      new Citation(
              "Ab Ghani",
              1993,
              "Sediment transport in sewers, PhD thesis, University of Newcastle upon Tyne")
          .fromMemory("coefficients and range");
  private static final Equation DGR =
      SOURCE.equation(
          "D_gr",
          "dimensionless grain size",
          "d (g (s - 1)/nu^2)^(1/3)",
          Kind.NUMBER,
          "d m, s, nu m2/s");
  private static final Equation BED =
      SOURCE.equation(
          "f_s",
          "friction factor with sand on the floor",
          "1.13 f^0.98 C^0.02 D_gr^0.01",
          Kind.NUMBER,
          "f, C, D_gr");
  private static final Equation V =
      SOURCE.equation(
          "V_AG",
          "deposition velocity by Ab Ghani",
          "sqrt(g d (s - 1)) 3.08 D_gr^-0.09 C^0.21 (D/(4 d))^0.53 f_s^-0.21",
          Kind.VELOCITY,
          "d m, s, D_gr, C, D m, f_s");

  private static final Equation FOUND =
      Equation.search(
          "V_AG",
          "deposition velocity by Ab Ghani, as found",
          "velocity that agrees with its own friction factor",
          Kind.VELOCITY,
          SOURCE.toString(),
          "C, d m, D m");

  AbGhani1993() {
    super(
        "ab-ghani-1993",
        "Ab Ghani, limit of deposition",
        Limit.ANY_BED,
        SOURCE,
        Within.PUBLISHED
            .size(FINEST_M, 8.3e-3)
            .bore(0.154, 0.45)
            .fraction(0.76e-6, 1450e-6)
            .likeWater(),
        V,
        BED,
        DGR);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    return valueMps(slurry, slurry.d50M(), slurry.volumeFraction(), bore, trace);
  }

  static double valueMps(Slurry slurry, double sizeM, double fraction, Bore bore, Trace trace) {
    if (!(fraction > 0)) {
      return 0;
    }
    double velocity =
        VelocityScale.atFrictionMps(
            slurry, bore, FRICTION_POWER, demand(slurry, sizeM, bore, fraction));
    if (trace.records()) {
      double d = bore.diameterM();
      double ratio = slurry.densityRatio();
      double nu = slurry.liquid().kinematicViscosityM2ps();
      double grain = trace.step(DGR, size(slurry, sizeM), sizeM, ratio, nu);
      trace.step(FOUND, velocity, fraction, sizeM, d);
      double friction = VelocityScale.friction(slurry, bore, velocity, trace);
      double bed = bedFactor(fraction, grain) * Math.pow(friction, 0.98);
      trace.step(BED, bed, friction, fraction, grain);
      trace.step(V, velocity, sizeM, ratio, grain, fraction, d, bed);
    }
    return velocity;
  }

  /** What V times the {@link #FRICTION_POWER} of the friction factor of the carrier must be. */
  static double demand(Slurry slurry, double sizeM, Bore bore, double fraction) {
    return demand(slurry, sizeM, bore.diameterM() / 4, fraction);
  }

  static double demand(Slurry slurry, double sizeM, double hydraulicRadiusM, double fraction) {
    double weight = Physics.GRAVITY * (slurry.densityRatio() - 1);
    double grain = size(slurry, sizeM);
    double bed = bedFactor(fraction, grain);
    return Math.sqrt(weight * sizeM)
        * 3.08
        * Math.pow(grain, -0.09)
        * Math.pow(fraction, 0.21)
        * Math.pow(hydraulicRadiusM / sizeM, 0.53)
        * Math.pow(bed, -0.21);
  }

  /** Dgr. */
  private static double size(Slurry slurry, double sizeM) {
    double nu = slurry.liquid().kinematicViscosityM2ps();
    return sizeM * Math.cbrt(Physics.GRAVITY * (slurry.densityRatio() - 1) / (nu * nu));
  }

  /** λs but for the friction factor of the carrier, which depends on V. */
  private static double bedFactor(double fraction, double grain) {
    return 1.13 * Math.pow(fraction, 0.02) * Math.pow(grain, 0.01);
  }
}
