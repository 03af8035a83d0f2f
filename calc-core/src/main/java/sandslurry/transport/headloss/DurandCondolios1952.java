package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Kind;

/**
 * Friction of a heterogeneous sand slurry after Durand and Condolios, with the drag coefficient.
 *
 * <pre>
 * im = iw (1 + C Φ),   Φ = 150 ψ^−1.5,   ψ = V² √C_D / [g D (s − 1)]
 * </pre>
 *
 * <p>im gradient of the slurry and iw of the clear liquid, both in metres of carrier per metre of
 * pipe; C delivered volume fraction; V mean velocity [m/s]; g gravity [m/s²]; D bore [m]; s density
 * of the sand over that of the carrier; C_D drag coefficient of the d50 grain falling alone, C_D =
 * 4 g d (s − 1)/(3 w²), from the default settling velocity w [m/s].
 *
 * <p>About the constant: the measurements were first drawn against V² √Cx/(g D) with Cx = g d/w²,
 * the inverse square of a particle Froude number and no drag coefficient, and without s; there the
 * constant is 176 to 180. Putting s − 1 into the abscissa for sand of s = 2.65 turns 176 into
 * 176/1.65^1.5 = 83, still with Cx. As C_D = (4/3)(s − 1) Cx, the same curve drawn with C_D has the
 * constant 150. The three are one equation at s = 2.65. Books that print 81 or 82 together with C_D
 * lose nearly half of the effect of the solids; that form is right only as the bed term of {@link
 * WaspTwoPart1977}, which was fitted so.
 *
 * <p>Range: bores of 40 to 580 mm, grains of 0.2 to 25 mm, volume fractions of 2 to 22 %. The
 * equation holds above the deposition velocity; below it the value is that of a pipe over a bed and
 * not for design. Without sand it is the clear liquid exactly.
 */
final class DurandCondolios1952 extends HeadLossModel {
  private static final double CONSTANT = 150;
  private static final double EXPONENT = -1.5;
  static final Bound BORE = new Bound("bore", Kind.BORE, 0.04, 0.58);
  private static final Bound SIZE = new Bound("grain size d50", Kind.GRAIN, 2e-4, 0.025);
  private static final Bound CONCENTRATION =
      new Bound("volume fraction of sand", Kind.PERCENT, 0.02, 0.22);

  private static final Citation SOURCE =
      new Citation(
              "Durand and Condolios",
              1952,
              "Deuxiemes Journees de l'Hydraulique, Grenoble; Durand, 1953, Proceedings of the"
                  + " Minnesota International Hydraulics Convention:89-103; constants consistent"
                  + " with each other")
          .fromMemory("constants");
  static final Equation PSI =
      SOURCE.equation(
          "psi",
          "abscissa of Durand",
          "V^2 sqrt(C_D) / (g D (s - 1))",
          Kind.NUMBER,
          "V m/s, C_D, D m, s");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f (1 + 150 C psi^-1.5)",
          Kind.NUMBER,
          "i_f, C, psi");

  DurandCondolios1952() {
    super(
        "durand-condolios-1952",
        "Durand and Condolios",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, BORE, SIZE, CONCENTRATION),
        GRADIENT,
        PSI);
  }

  /** The abscissa ψ of Durand with the drag coefficient. */
  static double psi(Grain grain, Slurry slurry, Bore bore, double velocityMps, Trace trace) {
    double drag = SettlingVelocities.dragCoefficient(grain, slurry.liquid(), trace);
    double buoyancy = slurry.densityRatio() - 1;
    double psi =
        velocityMps
            * velocityMps
            * Math.sqrt(drag)
            / (Physics.GRAVITY * bore.diameterM() * buoyancy);
    return trace.step(PSI, psi, velocityMps, drag, bore.diameterM(), slurry.densityRatio());
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    double concentration = slurry.volumeFraction();
    double psi = psi(slurry.d50Grain(), slurry, bore, velocityMps, trace);
    double excess = CONSTANT * Math.pow(psi, EXPONENT);
    checks
        .check(BORE, bore.diameterM())
        .check(SIZE, slurry.d50M())
        .check(CONCENTRATION, concentration);
    return trace.step(
        GRADIENT,
        clear.gradient() * (1 + concentration * excess),
        clear.gradient(),
        concentration,
        psi);
  }
}
