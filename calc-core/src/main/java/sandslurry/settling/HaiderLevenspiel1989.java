package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/**
 * Settling velocity of a grain of known sphericity, from the drag law of Haider and Levenspiel.
 *
 * <pre>
 * C_D = 24/Re (1 + A Re^B) + C / (1 + D/Re)
 *
 * φ = 1:  A = 0.1806, B = 0.6459, C = 0.4251, D = 6880.95
 *
 * φ &lt; 1:  A = exp(2.3288 − 6.4581 φ + 2.4486 φ²)
 *         B = 0.0964 + 0.5565 φ
 *         C = exp(4.905 − 13.8944 φ + 18.4222 φ² − 10.2599 φ³)
 *         D = exp(1.4681 + 12.2584 φ − 20.7322 φ² + 15.8855 φ³)
 * </pre>
 *
 * <p>C_D drag coefficient; Re = w d / ν; w settling velocity [m/s], found by {@link
 * DragLaw#terminalVelocityMps}; d diameter of the sphere of equal volume [m], which is found from
 * the sieve size and the Corey shape factor by √((1 + S^(4/3))/2) = sieve size / d; ν kinematic
 * viscosity [m²/s]; φ sphericity, the surface of that sphere over the surface of the grain.
 *
 * <p>The paper gives spheres a line of their own, used here for φ = 1 exactly. The general line
 * does not meet it: put φ = 1 into it and the drag is up to 7 % higher near Re = 1000, so there is
 * a step at φ = 1.
 *
 * <p>Published for Re below 2.6·10⁵ (spheres) and 2.5·10⁴ (others). The shapes with the same extent
 * in all directions have φ of 0.67 and more; below, the data are of discs, and the scatter is
 * large. As Re goes to 0 the law tends to Stokes' law of the sphere of equal volume whatever the
 * shape, so natural grains below about 0.1 mm come out too fast.
 */
final class HaiderLevenspiel1989 extends Published implements SettlingVelocityModel {
  private static final Bound SPHERE_REYNOLDS =
      new Bound("Reynolds number of a sphere", Kind.NUMBER, 0, 2.6e5);
  private static final Bound REYNOLDS = new Bound("Reynolds number", Kind.NUMBER, 0, 2.5e4);
  private static final Bound SPHERICITY = new Bound("sphericity", Kind.NUMBER, 0.67, 1);

  private static final Citation SOURCE =
      new Citation("Haider and Levenspiel", 1989, "Powder Technology 58:63-70");
  private static final Equation A =
      SOURCE.equation(
          "A",
          "first coefficient of the drag",
          "exp(2.3288 - 6.4581 psi + 2.4486 psi^2) for psi < 1; else 0.1806",
          Kind.NUMBER,
          "psi");
  private static final Equation B =
      SOURCE.equation(
          "B",
          "second coefficient of the drag",
          "0.0964 + 0.5565 psi for psi < 1; else 0.6459",
          Kind.NUMBER,
          "psi");
  private static final Equation C =
      SOURCE.equation(
          "C",
          "third coefficient of the drag",
          "exp(4.905 - 13.8944 psi + 18.4222 psi^2 - 10.2599 psi^3) for psi < 1; else 0.4251",
          Kind.NUMBER,
          "psi");
  private static final Equation D =
      SOURCE.equation(
          "D",
          "fourth coefficient of the drag",
          "exp(1.4681 + 12.2584 psi - 20.7322 psi^2 + 15.8855 psi^3) for psi < 1; else 6880.95",
          Kind.NUMBER,
          "psi");
  private static final Equation DRAG =
      SOURCE.equation(
          "C_D",
          "drag coefficient",
          "24/Re (1 + A Re^B) + C / (1 + D/Re)",
          Kind.NUMBER,
          "Re, A, B, C, D");

  HaiderLevenspiel1989() {
    super(
        "haider-levenspiel-1989",
        "Haider and Levenspiel",
        SOURCE,
        List.of(SPHERE_REYNOLDS, REYNOLDS, SPHERICITY),
        DragLaw.VELOCITY,
        DRAG,
        A,
        B,
        C,
        D);
  }

  /**
   * The drag law for one sphericity.
   *
   * @param sphericity φ, above 0 and not above 1
   * @return the line of spheres when φ = 1, otherwise the general line
   * @throws IllegalArgumentException if the sphericity lies outside its bounds
   */
  public static DragLaw dragLaw(double sphericity) {
    if (!(sphericity > 0 && sphericity <= 1)) {
      throw new IllegalArgumentException(
          "sphericity must be above 0 and not above 1 but was " + sphericity);
    }
    if (sphericity == 1) {
      return new Law(sphericity, 0.1806, 0.6459, 0.4251, 6880.95);
    }
    return new Law(
        sphericity,
        Math.exp(polynomial(sphericity, 2.3288, -6.4581, 2.4486, 0)),
        0.0964 + 0.5565 * sphericity,
        Math.exp(polynomial(sphericity, 4.905, -13.8944, 18.4222, -10.2599)),
        Math.exp(polynomial(sphericity, 1.4681, 12.2584, -20.7322, 15.8855)));
  }

  private record Law(double sphericity, double a, double b, double c, double d) implements DragLaw {
    @Override
    public double dragCoefficient(double re) {
      return 24 / re * (1 + a * Math.pow(re, b)) + c / (1 + d / re);
    }

    @Override
    public double step(Trace trace, double drag, double re) {
      trace.step(A, a, sphericity);
      trace.step(B, b, sphericity);
      trace.step(C, c, sphericity);
      trace.step(D, d, sphericity);
      return trace.step(DRAG, drag, re, a, b, c, d);
    }
  }

  private static double polynomial(double x, double c0, double c1, double c2, double c3) {
    return c0 + x * (c1 + x * (c2 + x * c3));
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    double sphericity = grain.shape().sphericity();
    Grain nominal = NominalDiameter.grain(grain);
    double velocity = dragLaw(sphericity).terminalVelocityMps(nominal, liquid, trace);
    return Estimate.checks()
        .check(
            sphericity == 1 ? SPHERE_REYNOLDS : REYNOLDS,
            GrainNumbers.of(nominal, liquid).reynolds(velocity))
        .check(SPHERICITY, sphericity)
        .value(velocity);
  }
}
