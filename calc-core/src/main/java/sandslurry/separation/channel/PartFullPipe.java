package sandslurry.separation.channel;

import java.util.Optional;
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
public record PartFullPipe(double diameterM, double slope, double manningN)
    implements GravityConduit {
  /** Depth over bore at which most flows: 3 θ − 5 θ cos θ + 2 sin θ = 0 with θ = 2 β. */
  private static final double FULLEST_HALF_ANGLE =
      Roots.between(
              "depth of greatest flow", t -> 3 * t - 5 * t * Math.cos(t) + 2 * Math.sin(t), 5, 6)
          / 2;

  /** Checks that diameter, slope and roughness are positive. */
  public PartFullPipe {
    GravityConduit.requirePositive("a gravity pipe", diameterM, slope, manningN);
  }

  @Override
  public PartFullPipe on(double other) {
    return new PartFullPipe(diameterM, other, manningN);
  }

  @Override
  public double fullDepthM() {
    return diameterM;
  }

  @Override
  public PartFullFlow atDepth(double depthShare) {
    if (!(depthShare > 0)) {
      throw new IllegalArgumentException(
          "the depth in a pipe must be > 0 but was " + depthShare + " of its bore");
    }
    return new PartFullFlow(this, new CircularSegment(diameterM, depthShare));
  }

  /**
   * The widest hydraulic diameter of the pipe at any depth, at which it flows fastest: 4 R/D = 1 −
   * sin θ/θ is greatest where θ = tan θ, θ = 4.4934, at 81 % of the depth.
   *
   * @return 4 R = 1.217 D [m]
   */
  @Override
  public double widestHydraulicDiameterM() {
    double angle = 4.493409457909064;
    return diameterM * (1 - Math.sin(angle) / angle);
  }

  @Override
  public double fullestShare() {
    double sine = Math.sin(FULLEST_HALF_ANGLE / 2);
    return sine * sine;
  }

  /**
   * A uniform flow in a round pipe.
   *
   * @param conduit the pipe
   * @param wetted the wetted part of its bore
   */
  public record PartFullFlow(PartFullPipe conduit, CircularSegment wetted) implements GravityFlow {
    @Override
    public double areaM2() {
      return wetted.areaM2();
    }

    @Override
    public double wettedPerimeterM() {
      return wetted.wettedPerimeterM();
    }

    @Override
    public double depthM() {
      return wetted.depthM();
    }

    @Override
    public double depthShare() {
      return wetted.depthShare();
    }

    @Override
    public Optional<CircularSegment> segment() {
      return Optional.of(wetted);
    }
  }
}
