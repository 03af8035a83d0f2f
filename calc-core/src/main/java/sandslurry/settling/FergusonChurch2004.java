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
 * Settling velocity of natural sand by sieve diameter, after Ferguson and Church.
 *
 * <pre>w = R g d² / (C1 ν + √(0.75 C2 R g d³))</pre>
 *
 * <p>w settling velocity [m/s]; R = ρs/ρ − 1 submerged relative density; g gravity [m/s²]; d sieve
 * diameter [m]; ν kinematic viscosity [m²/s]; C1 = 18, the constant of Stokes' law; C2 = 1.0, the
 * drag coefficient that natural grains tend to at high Reynolds number. The pair 18 and 1.0 belongs
 * to sieve diameters; nominal diameters take 20 and 1.1.
 *
 * <p>The form joins Stokes' law (small d) and a constant drag coefficient (large d), so it holds
 * for any viscosity and density; the range given is that of the measurements it was fitted to, from
 * fine silt to fine gravel.
 */
final class FergusonChurch2004 extends Published implements SettlingVelocityModel {
  private static final double STOKES_CONSTANT = 18;
  private static final double LIMITING_DRAG = 1.0;
  private static final Bound SIZE = new Bound("grain size", Kind.GRAIN, 1e-5, 1e-2);

  private static final Citation SOURCE =
      new Citation(
          "Ferguson and Church", 2004, "Journal of Sedimentary Research 74:933-937, eq. 4");
  private static final Equation W =
      SOURCE.equation(
          "w",
          "settling velocity of a grain",
          "R g d^2 / (18 nu + sqrt(0.75 * 1.0 R g d^3))",
          Kind.FALL,
          "R, d m, nu m2/s");

  FergusonChurch2004() {
    super("ferguson-church-2004", "Ferguson and Church", SOURCE, List.of(SIZE), W);
  }

  @Override
  public Estimate velocityMps(Grain grain, Liquid liquid, Trace trace) {
    GrainNumbers numbers = GrainNumbers.of(grain, liquid);
    double d = numbers.diameterM();
    double buoyantGravity = numbers.buoyantGravityMps2();
    double viscous = STOKES_CONSTANT * numbers.kinematicViscosityM2ps();
    double turbulent = Math.sqrt(0.75 * LIMITING_DRAG * buoyantGravity * d * d * d);
    double velocity = buoyantGravity * d * d / (viscous + turbulent);
    numbers.step(trace, W, velocity);
    return Estimate.checks().check(SIZE, d).value(velocity);
  }
}
