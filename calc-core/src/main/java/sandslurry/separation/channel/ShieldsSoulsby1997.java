package sandslurry.separation.channel;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.units.Kind;

/**
 * Threshold of motion by the Shields curve in the algebraic form of Soulsby.
 *
 * <pre>
 * θ = 0.30 / (1 + 1.2 d*) + 0.055 (1 − exp(−0.020 d*)),   d* = d (g (s − 1) / ν²)^(1/3)
 * </pre>
 *
 * <p>θ critical Shields number; d* dimensionless grain size; d grain size [m]; g gravity [m/s²]; s
 * relative density of the grain; ν kinematic viscosity [m²/s]. Limits: 0.30 for very fine grains,
 * 0.055 for very coarse ones, least (0.030) at d* near 17, which is 0.7 mm quartz sand in water.
 * The curve is for a flat bed of loose grains; manure binds them, so it is on the safe side.
 *
 * <p>Source: Soulsby (1997), Dynamics of Marine Sands, Thomas Telford, eq. 77; read as quoted in
 * the wiki of the Coastal Inlets Research Program (incipient motion).
 */
public final class ShieldsSoulsby1997 implements ScourModel {
  private static final Citation SOURCE =
      new Citation("Soulsby", 1997, "Dynamics of Marine Sands, Thomas Telford, eq. 77");
  private static final Equation SIZE =
      SOURCE.equation(
          "d*",
          "dimensionless grain size",
          "d (g (s - 1)/nu^2)^(1/3)",
          Kind.NUMBER,
          "d m, s, nu m2/s");
  private static final Equation THETA =
      SOURCE.equation(
          "theta",
          "Shields number by the curve of Soulsby",
          "0.30 / (1 + 1.2 d*) + 0.055 (1 - exp(-0.020 d*))",
          Kind.NUMBER,
          "d*");

  private static final About ABOUT =
      new About(
          "shields-soulsby-1997", "Shields, curve of Soulsby", SOURCE, List.of(), THETA, SIZE);

  /** Creates the criterion; it has no state. */
  public ShieldsSoulsby1997() {}

  /**
   * Dimensionless grain size.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return d*
   */
  public static double dimensionlessSize(Grain grain, Liquid liquid) {
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    double viscosity = liquid.kinematicViscosityM2ps();
    return grain.diameterM() * Math.cbrt(Physics.GRAVITY * buoyancy / (viscosity * viscosity));
  }

  @Override
  public Estimate shieldsNumber(Grain grain, Liquid liquid, Trace trace) {
    double size = dimensionlessSize(grain, liquid);
    trace.step(
        SIZE,
        size,
        grain.diameterM(),
        grain.densityKgM3() / liquid.densityKgM3(),
        liquid.kinematicViscosityM2ps());
    double theta = 0.30 / (1 + 1.2 * size) - 0.055 * Math.expm1(-0.020 * size);
    return Estimate.checks().value(trace.step(THETA, theta, size));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
