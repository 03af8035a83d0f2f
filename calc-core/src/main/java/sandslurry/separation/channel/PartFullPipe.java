package sandslurry.separation.channel;

import java.util.OptionalDouble;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Liquid;
import sandslurry.numeric.Roots;
import sandslurry.pipe.CircularSegment;

/**
 * A round gravity pipe that need not run full, with Manning's formula for uniform flow in it.
 *
 * <pre>V = R^(2/3) S^(1/2) / n,   R = A/P,   Q = A V</pre>
 *
 * <p>V mean velocity [m/s]; R hydraulic radius [m]; A wetted area [m²] and P wetted arc [m] of the
 * {@link CircularSegment}; S slope [m/m]; n Manning's roughness [s/m^(1/3)], here the same at every
 * depth. (Tables with an n that varies with depth give up to a fifth less velocity at quarter to
 * half depth: from memory, unverified.) The formula holds for fully rough turbulent flow, so not
 * for thick manure.
 *
 * <p>The pipe carries most, 8 % more than full, at 94 % of its depth, beyond which two depths
 * belong to one flow and the pipe may fill with a jolt: design to less.
 *
 * @param diameterM inside diameter [m]
 * @param slope fall over length, positive
 * @param manningN Manning's roughness n [s/m^(1/3)]
 */
public record PartFullPipe(double diameterM, double slope, double manningN) {
  /** Depth over bore at which most flows: 3 θ − 5 θ cos θ + 2 sin θ = 0 with θ = 2 β. */
  private static final double FULLEST_HALF_ANGLE =
      Roots.between(
              "depth of greatest flow", t -> 3 * t - 5 * t * Math.cos(t) + 2 * Math.sin(t), 5, 6)
          / 2;

  /** Checks that diameter, slope and roughness are positive. */
  public PartFullPipe {
    if (!(diameterM > 0 && Double.isFinite(diameterM))
        || !(slope > 0 && Double.isFinite(slope))
        || !(manningN > 0 && Double.isFinite(manningN))) {
      throw new IllegalArgumentException(
          "a gravity pipe needs a diameter, a slope and a roughness > 0 but has "
              + diameterM
              + " m, "
              + slope
              + ", "
              + manningN);
    }
  }

  /**
   * Uniform flow at a depth.
   *
   * @param depthShare depth over bore, above 0 to 1
   * @return the flow with what follows from it
   */
  public PartFullFlow atDepth(double depthShare) {
    if (!(depthShare > 0)) {
      throw new IllegalArgumentException(
          "the depth in a pipe must be > 0 but was " + depthShare + " of its bore");
    }
    return new PartFullFlow(this, new CircularSegment(diameterM, depthShare));
  }

  /**
   * The greatest flow without pressure.
   *
   * @return Q at 94 % of the depth [m3/s]
   */
  public double greatestFlowM3ps() {
    return atDepth(fullestDepthShare()).flowM3ps();
  }

  /**
   * Depth of uniform flow.
   *
   * @param flowM3ps the flow, positive [m3/s]
   * @return depth over bore, the lesser where there are two; nothing when the pipe cannot carry the
   *     flow without pressure
   */
  public OptionalDouble depthShare(double flowM3ps) {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    if (flowM3ps > greatestFlowM3ps()) {
      return OptionalDouble.empty();
    }
    double fullest = fullestDepthShare();
    // Near an empty pipe Q goes as the depth squared or faster, so this is below any root.
    double least = fullest * Math.min(0.5, Math.cbrt(flowM3ps / greatestFlowM3ps())) * 1e-3;
    while (atDepth(least).flowM3ps() > flowM3ps) {
      least /= 10;
    }
    return OptionalDouble.of(
        Roots.betweenDecades(
            "depth in a gravity pipe",
            share -> Math.log(atDepth(Math.min(share, 1)).flowM3ps() / flowM3ps),
            least,
            fullest));
  }

  /**
   * The widest hydraulic diameter of the pipe at any depth, at which it flows fastest: 4 R/D = 1 −
   * sin θ/θ is greatest where θ = tan θ, θ = 4.4934, at 81 % of the depth.
   *
   * @return 4 R = 1.217 D [m]
   */
  public double widestHydraulicDiameterM() {
    double angle = 4.493409457909064;
    return diameterM * (1 - Math.sin(angle) / angle);
  }

  private static double fullestDepthShare() {
    double sine = Math.sin(FULLEST_HALF_ANGLE / 2);
    return sine * sine;
  }

  /**
   * A uniform flow in a round pipe.
   *
   * @param pipe the pipe
   * @param wetted the wetted part of its bore
   */
  public record PartFullFlow(PartFullPipe pipe, CircularSegment wetted) {
    /**
     * Hydraulic radius.
     *
     * @return R = A/P [m]
     */
    public double hydraulicRadiusM() {
      return wetted.areaM2() / wetted.wettedPerimeterM();
    }

    /**
     * Mean velocity.
     *
     * @return V [m/s]
     */
    public double velocityMps() {
      return Math.pow(hydraulicRadiusM(), 2.0 / 3) * Math.sqrt(pipe.slope()) / pipe.manningN();
    }

    /**
     * Flow.
     *
     * @return Q = A V [m3/s]
     */
    public double flowM3ps() {
      return wetted.areaM2() * velocityMps();
    }

    /**
     * Tractive stress, the mean stress of the flow on the wetted wall.
     *
     * @param densityKgM3 density of the liquid [kg/m3]
     * @return τ = ρ g R S [Pa]
     */
    double tractiveStressPa(double densityKgM3) {
      if (!(densityKgM3 > 0 && Double.isFinite(densityKgM3))) {
        throw new IllegalArgumentException(
            "a density must be > 0 but was " + densityKgM3 + " kg/m3");
      }
      return densityKgM3 * Physics.GRAVITY * hydraulicRadiusM() * pipe.slope();
    }

    /**
     * Darcy friction factor that Manning's formula amounts to.
     *
     * @return f = 8 g n² / R^(1/3)
     */
    public double darcyFrictionFactor() {
      double n = pipe.manningN();
      return 8 * Physics.GRAVITY * n * n / Math.cbrt(hydraulicRadiusM());
    }

    /**
     * Reynolds number on four times the hydraulic radius; compare with {@link
     * ChannelFlow#TURBULENT}.
     *
     * @param liquid the liquid
     * @return 4 R V / ν
     */
    public double reynoldsNumber(Liquid liquid) {
      return 4 * hydraulicRadiusM() * velocityMps() / liquid.kinematicViscosityM2ps();
    }
  }
}
