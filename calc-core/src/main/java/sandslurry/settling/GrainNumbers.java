package sandslurry.settling;

import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/**
 * What every settling formula is made of: one grain in one liquid, free of mass.
 *
 * @param diameterM the diameter that the formula asks for [m]
 * @param buoyantGravityMps2 R g with R = ρs/ρ − 1 [m/s2]
 * @param kinematicViscosityM2ps ν [m2/s]
 */
record GrainNumbers(double diameterM, double buoyantGravityMps2, double kinematicViscosityM2ps) {

  static GrainNumbers of(Grain grain, Liquid liquid) {
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    if (!(buoyancy > 0)) {
      throw new IllegalArgumentException(
          "a grain settles only when denser than its liquid but has "
              + grain.densityKgM3()
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    return new GrainNumbers(
        grain.diameterM(), buoyancy * Physics.GRAVITY, liquid.kinematicViscosityM2ps());
  }

  /** Keeps the step of a velocity by an equation in R, d and ν. */
  double step(Trace trace, Equation equation, double velocityMps) {
    return trace.step(
        equation,
        velocityMps,
        buoyantGravityMps2 / Physics.GRAVITY,
        diameterM,
        kinematicViscosityM2ps);
  }

  /** R g d³/ν², also called D* by Dietrich; the cube of the dimensionless diameter d*. */
  double archimedes() {
    double perViscosity = diameterM / kinematicViscosityM2ps;
    return buoyantGravityMps2 * diameterM * perViscosity * perViscosity;
  }

  double reynolds(double velocityMps) {
    return velocityMps * diameterM / kinematicViscosityM2ps;
  }

  double velocityMps(double reynolds) {
    return reynolds * kinematicViscosityM2ps / diameterM;
  }
}
