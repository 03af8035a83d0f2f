package sandslurry.settling;

import java.util.function.DoubleUnaryOperator;
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

  /** A drag coefficient of natural grains that fall fast, to begin the search with. */
  double NEAR_DRAG = 0.5;

  /** ln 10. */
  double DECADE = Math.log(10);

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
   * by secants from a value between the laws of Stokes and of Newton; where they stray, between
   * decades.
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
    double archimedes = numbers.archimedes();
    double logWeight = Math.log(4.0 / 3 * archimedes);
    DoubleUnaryOperator balance =
        logRe -> Math.log(dragCoefficient(Math.exp(logRe))) + 2 * logRe - logWeight;
    // Between Stokes' law and a drag coefficient of NEAR_DRAG, which the root is near for most
    // laws.
    double inertia = Math.sqrt(0.75 * NEAR_DRAG * archimedes);
    double start = Math.log(archimedes / (18 + inertia));
    double slope = (18 + 2 * inertia) / (18 + inertia);
    double logReynolds =
        Roots.near(balance, start, slope).orElseGet(() -> betweenDecades(balance, start));
    double reynolds = Math.exp(logReynolds);
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

  private static double betweenDecades(DoubleUnaryOperator balance, double start) {
    double low = start - DECADE;
    while (balance.applyAsDouble(low) > 0) {
      low -= DECADE;
    }
    double high = start + DECADE;
    while (balance.applyAsDouble(high) < 0) {
      high += DECADE;
    }
    return Roots.between("Reynolds number of the falling grain", balance, low, high);
  }
}
