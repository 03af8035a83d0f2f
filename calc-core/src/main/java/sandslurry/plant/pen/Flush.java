package sandslurry.plant.pen;

import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.channel.ScourModels;
import sandslurry.units.InUnit;

/**
 * A flush of an alley: uniform flow of a given depth for a given time.
 *
 * <p>Practice: 5 ft/s, 3 in deep, at least 10 s (University of Missouri Extension WQ313 and WQ314).
 *
 * @param alley the alley
 * @param depthM depth of the flush [m]
 * @param durationS time that it runs [s]
 */
public record Flush(OpenChannel alley, double depthM, double durationS) {
  /** Checks depth and time. */
  public Flush {
    if (!(depthM > 0 && Double.isFinite(depthM)) || !(durationS > 0)) {
      throw new IllegalArgumentException(
          "depth and time must be > 0 but were " + depthM + " m and " + durationS + " s");
    }
  }

  /** Velocity of practice, 5 ft/s (WQ313) [m/s]. */
  public static final double PRACTICE_VELOCITY_MPS = InUnit.FOOT.si(5);

  /** Depth of practice, 3 in (WQ313) [m]. */
  public static final double PRACTICE_DEPTH_M = InUnit.FOOT.si(0.25);

  /** Least time of practice (WQ313) [s]. */
  public static final double PRACTICE_TIME_S = 10;

  /** Manning's n of a flushed alley under a normal load of manure (WQ314). */
  public static final double ALLEY_MANNING = 0.02;

  /**
   * A tank let out into an alley.
   *
   * @param alley the alley, which needs a slope
   * @param volumeM3 volume of one flush [m3]
   * @param rateM3ps rate at which it is let out [m3/s]
   * @return the flush: uniform flow of that rate for as long as the volume lasts
   */
  public static Flush released(OpenChannel alley, double volumeM3, double rateM3ps) {
    if (!(volumeM3 > 0 && Double.isFinite(volumeM3)) || !(rateM3ps > 0)) {
      throw new IllegalArgumentException(
          "volume and rate must be > 0 but were " + volumeM3 + " m3 and " + rateM3ps + " m3/s");
    }
    return new Flush(alley, alley.normalDepthM(rateM3ps), volumeM3 / rateM3ps);
  }

  /**
   * Length of the wave before it flattens.
   *
   * @return velocity times time [m]
   */
  public double waveM() {
    return velocityMps() * durationS;
  }

  /**
   * Tractive stress on the floor of the alley.
   *
   * @param densityKgM3 density of the liquid [kg/m3]
   * @return ρ g R S [Pa]
   */
  public double stressPa(double densityKgM3) {
    return densityKgM3 * Physics.GRAVITY * alley.hydraulicRadiusM(depthM) * alley.slope();
  }

  /**
   * Tractive stress that moves a grain that lies on the floor, by the Shields curve.
   *
   * @param grain the grain, denser than the liquid
   * @param liquid the liquid
   * @return θ (ρs − ρ) g d [Pa]
   */
  public static double movingStressPa(Grain grain, Liquid liquid) {
    return ScourModels.SHIELDS.shieldsNumber(grain, liquid).value()
        * (grain.densityKgM3() - liquid.densityKgM3())
        * Physics.GRAVITY
        * grain.diameterM();
  }

  /**
   * Shear velocity of the flow: grains that settle slower than this are carried up in it.
   *
   * @return √(g R S) [m/s]
   */
  public double shearVelocityMps() {
    return Math.sqrt(Physics.GRAVITY * alley.hydraulicRadiusM(depthM) * alley.slope());
  }

  /**
   * Velocity.
   *
   * @return that of uniform flow [m/s]
   */
  public double velocityMps() {
    return alley.uniformVelocityMps(depthM);
  }

  /**
   * Rate.
   *
   * @return width times depth times velocity [m3/s]
   */
  public double flowM3ps() {
    return alley.widthM() * depthM * velocityMps();
  }

  /**
   * The slope that gives a velocity at this depth.
   *
   * @param velocityMps velocity wanted [m/s]
   * @return (n V)² / R^(4/3) [m/m]
   */
  public double slopeFor(double velocityMps) {
    double friction = alley.manningN() * velocityMps;
    return friction * friction / Math.pow(alley.hydraulicRadiusM(depthM), 4.0 / 3);
  }
}
