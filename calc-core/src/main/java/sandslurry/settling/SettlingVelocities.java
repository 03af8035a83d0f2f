package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Family;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/** The catalogue of settling-velocity correlations. */
public final class SettlingVelocities {
  /** The correlation used where one grain size has one velocity: natural sand, any viscosity. */
  public static final SettlingVelocityModel DEFAULT = new FergusonChurch2004();

  private static final SettlingVelocityModel DIETRICH = new Dietrich1982();
  private static final SettlingVelocityModel STOKES = new Stokes1851();
  private static final SettlingVelocityModel SPHERE = new TurtonLevenspiel1986();

  /** Every correlation of the family. */
  public static final Family<SettlingVelocityModel> FAMILY =
      Family.of(
          "settling velocity of one grain",
          DEFAULT,
          DIETRICH,
          new Cheng1997(),
          new Soulsby1997(),
          new HaiderLevenspiel1989(),
          SPHERE,
          new SchillerNaumann1933(),
          STOKES);

  private static final Equation DRAG =
      Equation.of(
          "C_D",
          "drag coefficient of the grain",
          "4 g d R / (3 w^2)",
          Kind.NUMBER,
          Equation.DEFINITION,
          "d m, R, w m/s");

  private SettlingVelocities() {}

  /**
   * The correlation that suits a case.
   *
   * <p>The rule: a sphere (sphericity 1) takes Turton and Levenspiel, one law from creeping to
   * turbulent flow. A natural grain takes Ferguson and Church (the default) inside its range of
   * sizes, 0.01 to 10 mm; outside it Stokes if the Reynolds number is within that law's limit of
   * 0.1; otherwise Dietrich if in range. When none is in range the default is given, whose estimate
   * then says so. Stokes' law is therefore never given for sand, and never above its limit.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return the correlation
   */
  public static SettlingVelocityModel applicable(Grain grain, Liquid liquid) {
    if (grain.shape().sphericity() == 1) {
      return SPHERE;
    }
    for (SettlingVelocityModel model : List.of(DEFAULT, STOKES, DIETRICH)) {
      if (model.velocityMps(grain, liquid).inRange()) {
        return model;
      }
    }
    return DEFAULT;
  }

  /**
   * Drag coefficient that belongs to the settling velocity of the default correlation.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return C_D = 4 g d (s − 1) / (3 w²)
   */
  public static double dragCoefficient(Grain grain, Liquid liquid) {
    return dragCoefficient(grain, liquid, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @param trace what keeps the steps
   * @return C_D
   */
  public static double dragCoefficient(Grain grain, Liquid liquid, Trace trace) {
    double velocity = DEFAULT.velocityMps(grain, liquid, trace).value();
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    double d = grain.diameterM();
    return trace.step(
        DRAG,
        4 * Physics.GRAVITY * d * buoyancy / (3 * velocity * velocity),
        d,
        buoyancy,
        velocity);
  }

  /**
   * Reynolds number of a grain falling at the velocity of the default correlation.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return w d / ν
   */
  public static double reynoldsNumber(Grain grain, Liquid liquid) {
    return DEFAULT.velocityMps(grain, liquid).value()
        * grain.diameterM()
        / liquid.kinematicViscosityM2ps();
  }
}
