package sandslurry.separation.channel;

import sandslurry.correlation.Physics;
import sandslurry.numeric.Roots;

/**
 * Laminar flow in a rectangular open channel, where Manning's formula does not apply.
 *
 * <pre>f = Po/Re,   Po = 96 (1 − 1.3553 a + 1.9467 a² − 1.7012 a³ + 0.9564 a⁴ − 0.2537 a⁵)</pre>
 *
 * <p>f Darcy friction factor; Re = 4 R V/ν Reynolds number on four times the hydraulic radius; a
 * the smaller over the larger of the width W and twice the depth h. An open channel is the lower
 * half of a closed duct of W by 2 h, whose hydraulic diameter is the same 4 R. A wide channel has a
 * → 0 and f = 96/Re, the falling film of Nusselt: V = g S h²/(3 ν).
 *
 * <p>Source: Shah and London (1978), Laminar Flow Forced Convection in Ducts, Academic Press; the
 * coefficients from memory, unverified, checked against the series for a square duct, Po = 56.91.
 *
 * @param channel the channel
 * @param viscosityM2ps kinematic viscosity of the liquid at the wall [m2/s]
 */
public record LaminarChannel(OpenChannel channel, double viscosityM2ps) {
  /** Reynolds number on four times the hydraulic radius below which the flow is laminar. */
  public static final double LAMINAR_BELOW = 2000;

  /** Checks the viscosity. */
  public LaminarChannel {
    if (!(viscosityM2ps > 0 && Double.isFinite(viscosityM2ps))) {
      throw new IllegalArgumentException(
          "the viscosity must be > 0 but was " + viscosityM2ps + " m2/s");
    }
  }

  /**
   * Poiseuille number.
   *
   * @param depthM depth of water [m]
   * @return f Re, from 56.9 for a duct half as deep as wide to 96 for a film
   */
  double poiseuilleNumber(double depthM) {
    OpenChannel.requireDepth(depthM);
    double a = Math.min(channel.widthM(), 2 * depthM) / Math.max(channel.widthM(), 2 * depthM);
    return 96 * (1 + a * (-1.3553 + a * (1.9467 + a * (-1.7012 + a * (0.9564 - 0.2537 * a)))));
  }

  /**
   * Friction of a flow over that of Manning's formula.
   *
   * @param flow the flow
   * @return ratio of the stresses on the wall; above 1 the flow drags more than Manning says
   */
  public double overManning(ChannelFlow flow) {
    double reynolds = 4 * flow.hydraulicRadiusM() * flow.velocityMps() / viscosityM2ps;
    return poiseuilleNumber(flow.depthM()) / reynolds / flow.darcyFrictionFactor();
  }

  /**
   * Depth of uniform laminar flow.
   *
   * @param flowM3ps the flow, positive [m3/s]
   * @return the depth at which V = 32 g S R²/(ν Po) carries it [m]
   * @throws IllegalArgumentException if the floor is level
   */
  public double normalDepthM(double flowM3ps) {
    if (!(channel.slope() > 0)) {
      throw new IllegalArgumentException("a level floor has no depth of uniform flow");
    }
    double film =
        Math.cbrt(
            3 * viscosityM2ps * flowM3ps / channel.widthM() / Physics.GRAVITY / channel.slope());
    return Roots.betweenDecades(
        "depth of laminar flow",
        depth -> Math.log(carriedM3ps(depth) / flowM3ps),
        0.5 * film,
        1e6 * film);
  }

  /** Uniform laminar flow at a depth: g R S = f V²/8 with f = Po ν/(4 R V) [m3/s]. */
  private double carriedM3ps(double depthM) {
    double radius = channel.hydraulicRadiusM(depthM);
    double velocity =
        32
            * Physics.GRAVITY
            * channel.slope()
            * radius
            * radius
            / (viscosityM2ps * poiseuilleNumber(depthM));
    return velocity * channel.widthM() * depthM;
  }
}
