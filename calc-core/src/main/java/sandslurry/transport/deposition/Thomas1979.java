package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Deposition velocity of grains that lie inside the viscous sub-layer, after Thomas: the least that
 * a deposition velocity can be in turbulent flow.
 *
 * <pre>V = 9.0 [g ν (s − 1)]^0.37 (D/ν)^0.11</pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; ν kinematic viscosity of the carrier [m²/s]; s
 * density of sand over density of carrier; D bore [m]. The factor holds in any consistent system of
 * units: the exponents leave it without dimension. Grain size and concentration do not enter.
 *
 * <p>The formula is the smooth-pipe form of a limit on the shear velocity,
 *
 * <pre>u* = 1.1 [g ν (s − 1)]^(1/3),  V = u* √(8/f)</pre>
 *
 * <p>with f the Darcy friction factor of a smooth pipe. The two agree within 4 % from 50 to 500 mm
 * in water.
 *
 * <p>It is a prediction for grains below about 0.3 times the thickness 5 ν/u* of the sub-layer, and
 * for coarser grains a floor.
 */
final class Thomas1979 extends DepositionVelocityModel {
  private static final double SUBLAYER = 5;

  private static final Citation SOURCE =
      new Citation(
              "Thomas",
              1979,
              "International Journal of Multiphase Flow 5:113-129; the factor 9.0 seen in a"
                  + " handbook chapter on slurry pumps")
          .fromMemory("exponents");
  private static final Equation V =
      SOURCE.equation(
          "V_T",
          "deposition velocity of fine grains",
          "9.0 (g nu (s - 1))^0.37 (D/nu)^0.11",
          Kind.VELOCITY,
          "nu m2/s, s, D m");

  Thomas1979() {
    super(
        "thomas-1979",
        "Thomas, fine grains",
        Limit.STATIONARY_BED,
        SOURCE,
        Within.PUBLISHED.and(
            "grain size over thickness of the viscous sub-layer",
            Kind.NUMBER,
            0,
            0.3,
            (sand, pipe, v) -> sand.d50M() / sublayerM(sand)),
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double nu = slurry.liquid().kinematicViscosityM2ps();
    double buoyancy = Physics.GRAVITY * nu * (slurry.densityRatio() - 1);
    return trace.step(
        V,
        9.0 * Math.pow(buoyancy, 0.37) * Math.pow(bore.diameterM() / nu, 0.11),
        nu,
        slurry.densityRatio(),
        bore.diameterM());
  }

  /**
   * Shear velocity at the limit.
   *
   * @param slurry sand and carrier
   * @return u* = 1.1 [g ν (s − 1)]^(1/3) [m/s]
   */
  public static double shearVelocityMps(Slurry slurry) {
    double nu = slurry.liquid().kinematicViscosityM2ps();
    return 1.1 * Math.cbrt(Physics.GRAVITY * nu * (slurry.densityRatio() - 1));
  }

  private static double sublayerM(Slurry slurry) {
    return SUBLAYER * slurry.liquid().kinematicViscosityM2ps() / shearVelocityMps(slurry);
  }
}
