package sandslurry.transport.friction;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/** Friction factor of a Newtonian liquid in a full pipe. */
public final class PipeFriction {
  /** The source of {@link #darcyFactor}. */
  public static final Citation SOURCE =
      new Citation("Churchill", 1977, "Chemical Engineering 84(24):91-92");

  /** The equation of {@link #darcyFactor}. */
  static final Equation EQUATION =
      SOURCE.equation(
          "f",
          "Darcy friction factor",
          "64/Re for Re < 1; else 8 [(8/Re)^12 + {(2.457 ln[1/((7/Re)^0.9 + 0.27 e)])^16"
              + " + (37530/Re)^16}^-1.5]^(1/12)",
          Kind.NUMBER,
          "Re, e");

  private static final double LAMINAR = 64;

  private PipeFriction() {}

  /**
   * Darcy friction factor in all regimes after Churchill (1977), Chemical Engineering 84(24):91-92.
   *
   * <pre>
   * f = 8 [(8/Re)¹² + (A + B)^−1.5]^(1/12)
   * A = {2.457 ln[1/((7/Re)^0.9 + 0.27 ε/D)]}¹⁶,  B = (37530/Re)¹⁶
   * </pre>
   *
   * <p>f Darcy friction factor, four times the Fanning factor (for which the leading 8 is a 2); Re
   * = V D/ν Reynolds number; ε/D roughness over bore. It tends to 64/Re in laminar flow and to the
   * equation of Colebrook in turbulent flow; between Re = 2000 and 4000 it is a smooth guess, as
   * every formula is there.
   *
   * @param reynolds Reynolds number, positive
   * @param relativeRoughness roughness over bore, 0 for a smooth pipe
   * @return Darcy friction factor
   * @throws IllegalArgumentException if the Reynolds number is not positive or the roughness is
   *     negative
   */
  public static double darcyFactor(double reynolds, double relativeRoughness) {
    if (!(reynolds > 0 && Double.isFinite(reynolds))
        || !(relativeRoughness >= 0 && Double.isFinite(relativeRoughness))) {
      throw new IllegalArgumentException(
          "friction needs Re > 0 and a roughness >= 0 but has "
              + reynolds
              + " and "
              + relativeRoughness);
    }
    // In creeping flow the 12th and 16th powers leave the range of a double; there f is laminar.
    if (reynolds < 1) {
      return LAMINAR / reynolds;
    }
    double root = 2.457 * Math.log(roughness(reynolds, relativeRoughness));
    double sum = power16(root) + power16(37530 / reynolds);
    return 8 * twelfthRoot(power12(8 / reynolds) + 1 / (sum * Math.sqrt(sum)));
  }

  /**
   * The same with its step.
   *
   * @param reynolds Reynolds number, positive
   * @param relativeRoughness roughness over bore, 0 for a smooth pipe
   * @param trace what keeps the step
   * @return Darcy friction factor
   */
  public static double darcyFactor(double reynolds, double relativeRoughness, Trace trace) {
    double factor = darcyFactor(reynolds, relativeRoughness);
    return trace.step(EQUATION, factor, reynolds, relativeRoughness);
  }

  /** The turbulent part of the equation, 8 A^(−1/8), on its own; infinite at Re = 7. */
  static double turbulentFactor(double reynolds, double relativeRoughness) {
    double root = 2.457 * Math.log(roughness(reynolds, relativeRoughness));
    return 8 / (root * root);
  }

  /** (7/Re)^0.9 + 0.27 ε/D. */
  private static double roughness(double reynolds, double relativeRoughness) {
    return Math.pow(7 / reynolds, 0.9) + 0.27 * relativeRoughness;
  }

  /** The part that joins laminar to turbulent flow, 8 B^(−1/8). */
  static double transitionalFactor(double reynolds) {
    double ratio = reynolds / 37530;
    return 8 * ratio * ratio;
  }

  /** The equation as a join of its three parts: each of them may come from another law. */
  static double join(double laminar, double transitional, double turbulent) {
    double minus8 = 1 / power8(turbulent) + 1 / power8(transitional);
    return twelfthRoot(power12(laminar) + 1 / (minus8 * Math.sqrt(minus8)));
  }

  // Products and roots in the place of powers: a system curve spends its time here.

  private static double power8(double x) {
    double x2 = x * x;
    double x4 = x2 * x2;
    return x4 * x4;
  }

  private static double power12(double x) {
    double x2 = x * x;
    double x4 = x2 * x2;
    return x4 * x4 * x4;
  }

  private static double power16(double x) {
    return power8(x * x);
  }

  private static double twelfthRoot(double x) {
    return Math.cbrt(Math.sqrt(Math.sqrt(x)));
  }
}
