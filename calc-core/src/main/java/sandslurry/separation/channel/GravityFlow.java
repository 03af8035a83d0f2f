package sandslurry.separation.channel;

import java.util.Optional;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.pipe.CircularSegment;

/**
 * A uniform flow with a free surface in a {@link GravityConduit}, by Manning's formula.
 *
 * <pre>V = R^(2/3) S^(1/2) / n,   R = A/P,   Q = A V</pre>
 */
public interface GravityFlow {
  /**
   * Pipe or channel.
   *
   * @return the conduit
   */
  GravityConduit conduit();

  /**
   * Wetted area.
   *
   * @return A [m2]
   */
  double areaM2();

  /**
   * Wetted perimeter.
   *
   * @return P [m]
   */
  double wettedPerimeterM();

  /**
   * Depth of the liquid.
   *
   * @return the depth [m]
   */
  double depthM();

  /**
   * Depth over bore or height of the walls.
   *
   * @return the share, above 0 to 1
   */
  double depthShare();

  /**
   * The wetted part of the bore of a round pipe.
   *
   * @return the segment; empty for a channel
   */
  Optional<CircularSegment> segment();

  /**
   * Hydraulic radius.
   *
   * @return R = A/P [m]
   */
  default double hydraulicRadiusM() {
    return areaM2() / wettedPerimeterM();
  }

  /**
   * Mean velocity.
   *
   * @return V [m/s]
   */
  default double velocityMps() {
    return Math.pow(hydraulicRadiusM(), 2.0 / 3)
        * Math.sqrt(conduit().slope())
        / conduit().manningN();
  }

  /**
   * Flow.
   *
   * @return Q = A V [m3/s]
   */
  default double flowM3ps() {
    return areaM2() * velocityMps();
  }

  /**
   * Tractive stress, the mean stress of the flow on the wetted wall.
   *
   * @param densityKgM3 density of the liquid [kg/m3]
   * @return τ = ρ g R S [Pa]
   */
  default double tractiveStressPa(double densityKgM3) {
    if (!(densityKgM3 > 0 && Double.isFinite(densityKgM3))) {
      throw new IllegalArgumentException("a density must be > 0 but was " + densityKgM3 + " kg/m3");
    }
    return densityKgM3 * Physics.GRAVITY * hydraulicRadiusM() * conduit().slope();
  }

  /**
   * Darcy friction factor that Manning's formula amounts to.
   *
   * @return f = 8 g n² / R^(1/3)
   */
  default double darcyFrictionFactor() {
    double n = conduit().manningN();
    return 8 * Physics.GRAVITY * n * n / Math.cbrt(hydraulicRadiusM());
  }

  /**
   * Reynolds number on four times the hydraulic radius; compare with {@link ChannelFlow#TURBULENT}.
   *
   * @param liquid the liquid
   * @return 4 R V / ν
   */
  default double reynoldsNumber(Liquid liquid) {
    return 4 * hydraulicRadiusM() * velocityMps() / liquid.kinematicViscosityM2ps();
  }

  /**
   * What the flow takes to get into the conduit from a still surface: its velocity head and the
   * loss of a sharp edge, half of it (any textbook of hydraulics).
   *
   * @return 1.5 V² / (2 g) [m]
   */
  default double entranceHeadM() {
    double velocity = velocityMps();
    return 1.5 * velocity * velocity / (2 * Physics.GRAVITY);
  }
}
