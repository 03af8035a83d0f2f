package sandslurry.separation.channel;

import sandslurry.correlation.Bound;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.units.Kind;

/**
 * A flow of known depth in a rectangular channel.
 *
 * <p>Friction follows from Manning's formula with the actual velocity, not with the slope of the
 * floor, so that it also holds where a weir sets the depth. In uniform flow the two agree.
 *
 * @param channel the channel
 * @param flowM3ps the flow [m3/s]
 * @param depthM depth of water [m]
 */
public record ChannelFlow(OpenChannel channel, double flowM3ps, double depthM) {
  /**
   * Reynolds number above which flow in an open channel is turbulent whatever its walls, on four
   * times the hydraulic radius. Below 2000 it is laminar. Chow (1959), Open-Channel Hydraulics,
   * states the limits 500 and 2000 on the radius itself; from memory, unverified.
   */
  public static final Bound TURBULENT =
      new Bound("Reynolds number of the channel", Kind.NUMBER, 4 * 2000, Double.POSITIVE_INFINITY);

  /** Checks that flow and depth are positive and that the velocity is a finite number. */
  public ChannelFlow {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    OpenChannel.requireDepth(depthM);
    double velocity = flowM3ps / channel.widthM() / depthM;
    if (!(velocity > 0 && Double.isFinite(velocity))) {
      throw new IllegalArgumentException(
          "a flow of " + flowM3ps + " m3/s at a depth of " + depthM + " m has no finite velocity");
    }
  }

  /**
   * Mean velocity.
   *
   * @return V = Q / (W h) [m/s]
   */
  public double velocityMps() {
    return flowM3ps / channel.widthM() / depthM;
  }

  /**
   * Hydraulic radius.
   *
   * @return R [m]
   */
  public double hydraulicRadiusM() {
    return channel.hydraulicRadiusM(depthM);
  }

  /**
   * Froude number: below 1 the flow is tranquil, above 1 it shoots.
   *
   * @return V / √(g h)
   */
  public double froudeNumber() {
    return velocityMps() / Math.sqrt(Physics.GRAVITY * depthM);
  }

  /**
   * Reynolds number on four times the hydraulic radius, which makes it comparable with that of a
   * pipe. Many texts on open channels use the radius itself: a quarter of this number.
   *
   * @param liquid the liquid
   * @return 4 R V / ν
   */
  public double reynoldsNumber(Liquid liquid) {
    return 4 * hydraulicRadiusM() * velocityMps() / liquid.kinematicViscosityM2ps();
  }

  /**
   * Friction slope: the fall that the friction of this flow uses up.
   *
   * @return S = (n V)² / R^(4/3)
   */
  public double frictionSlope() {
    double root = channel.manningN() * velocityMps() / Math.pow(hydraulicRadiusM(), 2.0 / 3);
    return root * root;
  }

  /**
   * Shear velocity, the measure of the turbulence that the floor stirs up.
   *
   * @return u* = √(g R S) = n V √g / R^(1/6) [m/s]
   */
  public double shearVelocityMps() {
    return channel.manningN()
        * velocityMps()
        * Math.sqrt(Physics.GRAVITY)
        / Math.pow(hydraulicRadiusM(), 1.0 / 6);
  }

  /**
   * Darcy friction factor that Manning's formula amounts to.
   *
   * @return f = 8 u*² / V² = 8 g n² / R^(1/3)
   */
  public double darcyFrictionFactor() {
    double n = channel.manningN();
    return 8 * Physics.GRAVITY * n * n / Math.cbrt(hydraulicRadiusM());
  }
}
