package sandslurry.separation.channel;

import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/**
 * The mean velocity at which a flow begins to move grains that lie on its floor.
 *
 * <p>Every member gives a critical Shields number θ, the ratio of the shear stress on the floor to
 * the submerged weight of a grain; the rest is common to all. With the stress τ = f ρ V²/8,
 *
 * <pre>V = √(8 θ (s − 1) g d / f)</pre>
 *
 * <p>V mean velocity [m/s]; s density of the grain over that of the liquid; g gravity [m/s²]; d
 * grain size [m]; f Darcy friction factor of the channel.
 */
public interface ScourModel extends Correlation {
  /**
   * Critical Shields number.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return θ = τ / ((ρs − ρ) g d) at which the grain begins to move, between 0.01 and 1
   */
  default Estimate shieldsNumber(Grain grain, Liquid liquid) {
    return shieldsNumber(grain, liquid, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @param trace what keeps the steps
   * @return the Shields number, and what lay outside the published range
   */
  Estimate shieldsNumber(Grain grain, Liquid liquid, Trace trace);

  /**
   * Scour velocity.
   *
   * @param grain the grain, denser than the liquid
   * @param liquid the liquid
   * @param darcyFrictionFactor Darcy friction factor of the channel
   * @return the mean velocity [m/s] at which the grain begins to move, and what lay outside the
   *     published range
   */
  default Estimate velocityMps(Grain grain, Liquid liquid, double darcyFrictionFactor) {
    Estimate shields = shieldsNumber(grain, liquid);
    double weight = buoyantGravity(grain, liquid) * grain.diameterM();
    return new Estimate(
        Math.sqrt(8 * shields.value() * weight / darcyFrictionFactor), shields.excesses());
  }

  private static double buoyantGravity(Grain grain, Liquid liquid) {
    if (!(grain.densityKgM3() > liquid.densityKgM3())) {
      throw new IllegalArgumentException(
          "the grain must be denser than the liquid but is "
              + grain.densityKgM3()
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    return (grain.densityKgM3() / liquid.densityKgM3() - 1) * Physics.GRAVITY;
  }
}
