package sandslurry.settling;

import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;
import sandslurry.units.Kind;

/**
 * Drag coefficient of a grain against its Reynolds number: C_D = 4 R g d / (3 w²), Re = w d / ν,
 * with w the velocity [m/s], d the diameter [m], ν the kinematic viscosity [m²/s], g gravity [m/s²]
 * and R = ρs/ρ − 1.
 */
@FunctionalInterface
interface DragLaw {
  /** The Reynolds number at which drag balances weight. */
  Equation REYNOLDS =
      Equation.search(
          "Re",
          "Reynolds number at which drag balances weight",
          "root of C_D(Re) Re^2 less 4/3 Ar, Ar of R g d^3 / nu^2",
          Kind.NUMBER,
          "balance of forces on a grain",
          "Ar");

  /** The velocity that follows from the drag coefficient. */
  Equation VELOCITY =
      Equation.of(
          "w",
          "settling velocity of a grain",
          "sqrt(4 R g d / (3 C_D))",
          Kind.FALL,
          "balance of forces on a grain",
          "R, d m, C_D");

  /**
   * The drag coefficient.
   *
   * @param reynoldsNumber w d / ν, positive
   * @return the drag coefficient on the area πd²/4
   */
  double dragCoefficient(double reynoldsNumber);

  /**
   * Keeps the step of the drag coefficient.
   *
   * @param trace what keeps the steps
   * @param drag the drag coefficient
   * @param reynoldsNumber its Reynolds number
   * @return the drag coefficient
   */
  default double step(Trace trace, double drag, double reynoldsNumber) {
    return drag;
  }

  /**
   * The velocity at which drag balances the weight in the liquid.
   *
   * <p>The balance is C_D(Re) Re² = 4/3 · R g d³/ν². Its left side must rise with Re, as it does
   * for every law of this package, so that there is one root. It is sought in the logarithm of Re,
   * from the Stokes value outwards by decades until the root is bracketed.
   *
   * @param grain the grain, whose diameter is taken as it stands
   * @param liquid the liquid
   * @param trace what keeps the steps
   * @return terminal settling velocity [m/s]
   * @throws IllegalArgumentException if the grain is not denser than the liquid
   * @throws UnsolvedException if the law gives no root
   */
  default double terminalVelocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(grain, liquid);
    double weight = 4.0 / 3 * numbers.archimedes();
    // A creeping grain has its root at the Stokes value to the last digit: the ends stand off it.
    double low = 0.9 * numbers.archimedes() / 18;
    double high = 1.1 * numbers.archimedes() / 18;
    while (dragCoefficient(low) * low * low > weight) {
      low /= 10;
    }
    while (dragCoefficient(high) * high * high < weight) {
      high *= 10;
    }
    double reynolds =
        Roots.betweenDecades(
            "Reynolds number of the falling grain",
            re -> Math.log(dragCoefficient(re) * re * re / weight),
            low,
            high);
    double velocity = numbers.velocityMps(reynolds);
    trace.step(REYNOLDS, reynolds, numbers.archimedes());
    double drag = step(trace, dragCoefficient(reynolds), reynolds);
    trace.step(
        VELOCITY,
        velocity,
        numbers.buoyantGravityMps2() / Physics.GRAVITY,
        numbers.diameterM(),
        drag);
    return velocity;
  }
}
