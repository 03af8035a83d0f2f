package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.units.Kind;

/**
 * Settling velocity of natural grains by size, shape and roundness, after Dietrich.
 *
 * <pre>
 * W* = R3 · 10^(R1 + R2),  w = (W* R g ν)^(1/3)
 * R1 = −3.76715 + 1.92944 L − 0.09815 L² − 0.00575 L³ + 0.00056 L⁴
 * R2 = log(1 − (1 − S)/0.85) − (1 − S)^2.3 tanh(L − 4.6) + 0.3 (0.5 − S)(1 − S)² (L − 4.6)
 * R3 = (0.65 − (S/2.83) tanh(L − 4.6))^(1 + (3.5 − P)/2.5)
 * L = log D*,  D* = R g D³ / ν²
 * </pre>
 *
 * <p>w settling velocity [m/s]; W* dimensionless settling velocity; D nominal diameter, that of the
 * sphere of equal volume [m]; D* dimensionless size, which holds the cube of D; R = ρs/ρ − 1; g
 * gravity [m/s²]; ν kinematic viscosity [m²/s]; S Corey shape factor; P Powers roundness, 3.5 for
 * natural sand, 6 for a sphere; log to the base 10.
 *
 * <p>A grain is given by its sieve size; its nominal diameter is found from the Corey shape factor,
 * sieve size / D = √((1 + S^(4/3))/2), which is 1 for a sphere and 0.900 for S = 0.7.
 *
 * <p>Published for 0.05 &lt; D* &lt; 5·10⁹ and S of 0.2 and more. Outside, where the polynomial
 * turns away from physics, the value is continued and the excess reported: below D* = 0.05 as W* ~
 * D*², the slope of Stokes' law, and above 5·10⁹ as W* ~ D*^(1/2), that of a constant drag
 * coefficient. Dietrich himself gives spheres W* = D*²/5832 below 0.05; the continuation keeps the
 * shape terms and has no step, at the price of a sphere 5 % slower than by Stokes' law. R2 has no
 * value for S of 0.15 and less; every S below 0.2 is put in as 0.2, and reported.
 *
 * <p>Quartz coarser than about 5 mm in water falls a few per cent faster as the viscosity rises:
 * the drag of such grains rises slowly with the Reynolds number.
 */
final class Dietrich1982 extends Published implements SettlingVelocityModel {
  private static final double LEAST_SIZE = 0.05;
  private static final double GREATEST_SIZE = 5e9;
  private static final double LEAST_SHAPE_FACTOR = 0.2;
  private static final Bound SIZE =
      new Bound("dimensionless size D*", Kind.NUMBER, LEAST_SIZE, GREATEST_SIZE);
  private static final Bound SHAPE =
      new Bound("Corey shape factor", Kind.NUMBER, LEAST_SHAPE_FACTOR, 1);

  private static final Citation SOURCE =
      new Citation("Dietrich", 1982, "Water Resources Research 18:1615-1626");
  private static final Equation SIZE_STAR =
      SOURCE.equation(
          "D*", "dimensionless size", "R g d_n^3 / nu^2", Kind.NUMBER, "R, d_n m, nu m2/s");
  private static final Equation SIZE_HELD =
      SOURCE.equation(
          "D_e",
          "dimensionless size within the limits of the fit",
          "min(max(D*, 0.05), 5e9)",
          Kind.NUMBER,
          "D*");
  private static final Equation R1 =
      SOURCE.equation(
          "R1",
          "term of the size",
          "-3.76715 + 1.92944 log10(D_e) - 0.09815 log10(D_e)^2 - 0.00575 log10(D_e)^3 + 0.00056"
              + " log10(D_e)^4",
          Kind.NUMBER,
          "D_e");
  private static final Equation R2 =
      SOURCE.equation(
          "R2",
          "term of the shape",
          "log10(1 - (1 - S)/0.85) - (1 - S)^2.3 tanh(log10(D_e) - 4.6) + 0.3 (0.5 - S) (1 - S)^2"
              + " (log10(D_e) - 4.6)",
          Kind.NUMBER,
          "S, D_e");
  private static final Equation R3 =
      SOURCE.equation(
          "R3",
          "term of the roundness",
          "(0.65 - S/2.83 tanh(log10(D_e) - 4.6))^(1 + (3.5 - P)/2.5)",
          Kind.NUMBER,
          "S, D_e, P");
  private static final Equation W_STAR =
      SOURCE.equation(
          "W*",
          "dimensionless velocity",
          "R3 10^(R1 + R2) (D*/D_e)^2 for D* < D_e; else R3 10^(R1 + R2) (D*/D_e)^0.5",
          Kind.NUMBER,
          "R1, R2, R3, D*, D_e");
  private static final Equation W =
      SOURCE.equation(
          "w", "settling velocity of a grain", "(W* R g nu)^(1/3)", Kind.FALL, "W*, R, nu m2/s");

  Dietrich1982() {
    super(
        "dietrich-1982",
        "Dietrich",
        SOURCE,
        List.of(SIZE, SHAPE),
        W,
        W_STAR,
        R1,
        R2,
        R3,
        SIZE_HELD,
        SIZE_STAR);
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(NominalDiameter.grain(grain), liquid);
    double size = numbers.archimedes();
    double buoyancy = numbers.buoyantGravityMps2() / Physics.GRAVITY;
    double nu = numbers.kinematicViscosityM2ps();
    trace.step(SIZE_STAR, size, buoyancy, numbers.diameterM(), nu);
    double star = dimensionlessVelocity(size, grain.shape(), trace);
    double velocity = Math.cbrt(star * numbers.buoyantGravityMps2() * nu);
    trace.step(W, velocity, star, buoyancy, nu);
    return Estimate.checks()
        .check(SIZE, size)
        .check(SHAPE, grain.shape().coreyShapeFactor())
        .value(velocity);
  }

  private static double dimensionlessVelocity(double size, GrainShape shape, Trace trace) {
    double held = trace.step(SIZE_HELD, Math.min(Math.max(size, LEAST_SIZE), GREATEST_SIZE), size);
    double s = Math.max(shape.coreyShapeFactor(), LEAST_SHAPE_FACTOR);
    double flat = 1 - s;
    double l = Math.log10(held);
    double past = l - 4.6;
    double r1 = -3.76715 + l * (1.92944 + l * (-0.09815 + l * (-0.00575 + l * 0.00056)));
    double r2 =
        Math.log10(1 - flat / 0.85)
            - Math.pow(flat, 2.3) * Math.tanh(past)
            + 0.3 * (0.5 - s) * flat * flat * past;
    double roundness = shape.powersRoundness();
    double r3 = Math.pow(0.65 - s / 2.83 * Math.tanh(past), 1 + (3.5 - roundness) / 2.5);
    trace.step(R1, r1, held);
    trace.step(R2, r2, s, held);
    trace.step(R3, r3, s, held, roundness);
    double published = r3 * Math.pow(10, r1 + r2);
    // Beyond the fit the laws of creeping and of turbulent fall carry it on.
    double beyond = Math.pow(size / held, size < held ? 2 : 0.5);
    return trace.step(W_STAR, published * beyond, r1, r2, r3, size, held);
  }
}
