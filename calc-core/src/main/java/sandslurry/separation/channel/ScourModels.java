package sandslurry.separation.channel;

import sandslurry.correlation.Family;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/** The catalogue of scour criteria. */
public final class ScourModels {
  /** Camp's criterion at the first movement of uniform grains. */
  public static final ScourModel CAMP = new CampScour1946(0.04);

  /** The Shields curve. */
  public static final ScourModel SHIELDS = new ShieldsSoulsby1997();

  /** Every correlation of the family. */
  public static final Family<ScourModel> FAMILY =
      Family.of("velocity that moves a grain", CAMP, SHIELDS, new CampScour1946(0.06));

  private ScourModels() {}

  /**
   * The mean velocity at which a grain begins to move, by the more cautious criterion.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @param darcyFriction Darcy friction factor of the flow
   * @return the lower velocity of Camp's and the Shields curve's [m/s]
   */
  public static double lowestMps(Grain grain, Liquid liquid, double darcyFriction) {
    return Math.min(
        CAMP.velocityMps(grain, liquid, darcyFriction).value(),
        SHIELDS.velocityMps(grain, liquid, darcyFriction).value());
  }
}
