package sandslurry.separation.lane;

import sandslurry.material.sand.SizeClass;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.Suspension;

/**
 * What a settling lane does with one size class of the sand.
 *
 * @param size the class
 * @param sandKgPs mean mass flow of the class into the lane over the whole day [kg/s]
 * @param settlingVelocityMps velocity of one grain falling alone, with its coating [m/s]
 * @param hinderedVelocityMps velocity among its neighbours, by which it is judged [m/s]
 * @param fallTimeS time to fall through the depth of water at that velocity [s]
 * @param stokesFallTimeS the time that Stokes's law would give for one grain alone [s]: for sand it
 *     is too short, and the difference shows why Stokes must not size a lane
 * @param suspensionRatio velocity among neighbours over shear velocity, w/u*
 * @param suspension what turbulence does with the class
 * @param capture shares caught when nothing is scoured
 * @param campScourMps mean velocity at which Camp's criterion (β = 0.04) moves the class [m/s]
 * @param shieldsScourMps mean velocity at which the Shields curve moves it [m/s]
 * @param scoured whether the mean velocity of the lane exceeds the lower of the two
 */
public record LaneClass(
    SizeClass size,
    double sandKgPs,
    double settlingVelocityMps,
    double hinderedVelocityMps,
    double fallTimeS,
    double stokesFallTimeS,
    double suspensionRatio,
    Suspension suspension,
    CaptureBand capture,
    double campScourMps,
    double shieldsScourMps,
    boolean scoured) {
  /**
   * Shares retained: what is caught, or nothing when the flow moves what it has dropped.
   *
   * @return the shares
   */
  public CaptureBand retained() {
    return scoured ? CaptureBand.NONE : capture;
  }
}
