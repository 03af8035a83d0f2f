package sandslurry.settling;

import sandslurry.correlation.Citation;

/**
 * Settling velocity of a sphere from the drag law of Schiller and Naumann: the reference against
 * which the other sphere laws are compared.
 *
 * <pre>C_D = 24/Re (1 + 0.15 Re^0.687), not less than 0.44</pre>
 *
 * <p>C_D drag coefficient; Re = w d / ν; w settling velocity [m/s], found by {@link
 * DragLaw#terminalVelocityMps}; d diameter [m]; ν kinematic viscosity [m²/s].
 *
 * <p>The formula is for Re below 800. It meets the constant 0.44 of Newton's regime near Re = 990,
 * from where the constant is used, so the law has no step; codes that switch at Re = 1000 differ by
 * less than 1 %. Beyond 800, and for grains that are not spheres, the estimate says that it is out
 * of range: above Re = 1000 the constant is up to 15 % from the drag of spheres.
 */
final class SchillerNaumann1933 extends Spheres {
  private static final double NEWTON_DRAG = 0.44;

  private static final Citation SOURCE =
      new Citation(
          "Schiller and Naumann",
          1933,
          "Zeitschrift des Vereines Deutscher Ingenieure 77:318; coefficients from memory, checked"
              + " against other sphere laws");

  SchillerNaumann1933() {
    super(
        "schiller-naumann-1933",
        "Schiller and Naumann, sphere",
        SOURCE,
        800,
        "max(24/Re (1 + 0.15 Re^0.687), 0.44)");
  }

  @Override
  public double dragCoefficient(double reynoldsNumber) {
    double viscous = 24 / reynoldsNumber * (1 + 0.15 * Math.pow(reynoldsNumber, 0.687));
    return Math.max(viscous, NEWTON_DRAG);
  }
}
