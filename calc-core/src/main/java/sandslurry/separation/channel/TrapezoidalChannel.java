package sandslurry.separation.channel;

import java.util.Optional;
import sandslurry.pipe.CircularSegment;

/**
 * An open channel of trapezoidal section, or rectangular with upright walls, with Manning's formula
 * for uniform flow in it.
 *
 * <pre>A = (b + z h) h,   P = b + 2 h √(1 + z²)</pre>
 *
 * <p>b width of the floor [m]; z run over rise of the walls; h depth [m]: the geometry of any
 * textbook, such as Chow (1959). {@link OpenChannel} is the rectangular channel of lanes and
 * alleys, whose walls are never too low and whose depth a weir may set.
 *
 * @param floorWidthM width of the floor [m]
 * @param sideRun run over rise of the walls, 0 for upright ones
 * @param wallM height of the walls [m]
 * @param slope fall over length, positive
 * @param manningN Manning's roughness n [s/m^(1/3)]
 */
public record TrapezoidalChannel(
    double floorWidthM, double sideRun, double wallM, double slope, double manningN)
    implements GravityConduit {
  /** Checks that all are positive, but for the run of the walls, which is not negative. */
  public TrapezoidalChannel {
    GravityConduit.requirePositive("a channel", floorWidthM, wallM, slope, manningN);
    if (!(sideRun >= 0 && Double.isFinite(sideRun))) {
      throw new IllegalArgumentException("the run of walls must be >= 0 but was " + sideRun);
    }
  }

  @Override
  public TrapezoidalChannel on(double other) {
    return new TrapezoidalChannel(floorWidthM, sideRun, wallM, other, manningN);
  }

  @Override
  public double fullDepthM() {
    return wallM;
  }

  @Override
  public double fullestShare() {
    return 1;
  }

  @Override
  public double widestHydraulicDiameterM() {
    return 4 * atDepth(1).hydraulicRadiusM();
  }

  @Override
  public GravityFlow atDepth(double depthShare) {
    if (!(depthShare > 0 && depthShare <= 1)) {
      throw new IllegalArgumentException(
          "the depth in a channel must be > 0 to 1 of its walls but was " + depthShare);
    }
    return new Flow(this, depthShare);
  }

  /**
   * A uniform flow in the channel.
   *
   * @param conduit the channel
   * @param depthShare depth over the height of its walls
   */
  private record Flow(TrapezoidalChannel conduit, double depthShare) implements GravityFlow {
    @Override
    public double depthM() {
      return depthShare * conduit.wallM;
    }

    @Override
    public double areaM2() {
      return (conduit.floorWidthM + conduit.sideRun * depthM()) * depthM();
    }

    @Override
    public double wettedPerimeterM() {
      return conduit.floorWidthM + 2 * depthM() * Math.hypot(1, conduit.sideRun);
    }

    @Override
    public Optional<CircularSegment> segment() {
      return Optional.empty();
    }
  }
}
