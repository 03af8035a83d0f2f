package sandslurry.separation.channel;

import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/**
 * Whether the flow in a gravity pipe moves the sand on its floor.
 *
 * <p>Two criteria are asked, and both must be kept: the stress of the Shields curve (or another
 * {@link ScourModel}), θ (ρs − ρ) g d, and the stress of {@link Merritt2009} for sewers. Both
 * compare with the mean stress ρ g R S, which on the floor of a pipe is exceeded somewhat. They say
 * that a grain on a clean floor moves, not that the whole load does: where sand arrives faster than
 * a creeping layer carries it, it fills the pipe all the same.
 *
 * @param stressPa tractive stress of the flow [Pa]
 * @param scourStressPa stress at which the grain begins to move [Pa]
 * @param sewerStressPa stress that the practice of sewers asks [Pa]
 */
public record SelfCleansing(double stressPa, double scourStressPa, double sewerStressPa) {
  /**
   * Judges a flow.
   *
   * @param flow the flow
   * @param coarse the coarsest grain that is to be moved, denser than the liquid
   * @param liquid the liquid
   * @return the judgement
   */
  public static SelfCleansing of(GravityFlow flow, Grain coarse, Liquid liquid) {
    double submerged = coarse.densityKgM3() - liquid.densityKgM3();
    if (!(submerged > 0)) {
      throw new IllegalArgumentException(
          "the grain must be denser than the liquid but is "
              + coarse.densityKgM3()
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    Estimate shields = ScourModels.SHIELDS.shieldsNumber(coarse, liquid);
    return new SelfCleansing(
        flow.tractiveStressPa(liquid.densityKgM3()),
        shields.value() * submerged * Physics.GRAVITY * coarse.diameterM(),
        new Merritt2009().neededStressPa(coarse.diameterM()).value());
  }

  /**
   * The stress needed.
   *
   * @return the greater of the two [Pa]
   */
  public double neededStressPa() {
    return Math.max(scourStressPa, sewerStressPa);
  }

  /**
   * Says whether the pipe cleans itself.
   *
   * @return true if the stress reaches the greater of the two
   */
  public boolean kept() {
    return stressPa >= neededStressPa();
  }
}
