package sandslurry.separation.lane;

import sandslurry.material.sand.GrainRange;
import sandslurry.separation.capture.CaptureBand;

/**
 * What a clean settling lane does with one size class of the sand.
 *
 * @param size the class
 * @param share mass of the class over mass of all sand
 * @param settlingVelocityMps velocity of one grain of the mean size falling alone, with its coating
 *     [m/s]
 * @param hinderedVelocityMps velocity among its neighbours, by which it is judged [m/s]
 * @param fallTimeS time to fall through the depth of water at that velocity [s]
 * @param stokesFallTimeS the time that Stokes's law would give for one grain alone [s]: for sand it
 *     is too short, and the difference shows why Stokes must not size a lane
 * @param suspensionRatio velocity among neighbours over shear velocity, w/u*
 * @param capture shares that reach the floor, of grains of the mean size
 * @param campScourMps mean velocity at which Camp's criterion (β = 0.04) moves the class [m/s]
 * @param shieldsScourMps mean velocity at which the Shields curve moves it [m/s]
 * @param kept shares that stay, over all sizes of the class
 */
// More than ten components: a row of the table of size classes, which shows each.
public record LaneClass(
    GrainRange size,
    double share,
    double settlingVelocityMps,
    double hinderedVelocityMps,
    double fallTimeS,
    double stokesFallTimeS,
    double suspensionRatio,
    CaptureBand capture,
    double campScourMps,
    double shieldsScourMps,
    KeptClass kept) {
  /**
   * The mean velocity at which the class begins to move on the floor.
   *
   * @return the lower of both [m/s]
   */
  public double scourVelocityMps() {
    return Math.min(campScourMps, shieldsScourMps);
  }
}
