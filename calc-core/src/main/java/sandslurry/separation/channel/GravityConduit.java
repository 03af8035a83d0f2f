package sandslurry.separation.channel;

import java.util.OptionalDouble;
import sandslurry.numeric.Roots;

/**
 * A pipe or channel on a slope in which a liquid runs with a free surface. Manning's formula holds
 * for fully rough turbulent flow, so not for thick manure.
 */
public sealed interface GravityConduit permits PartFullPipe, TrapezoidalChannel {
  /**
   * Fall over length.
   *
   * @return the slope, positive
   */
  double slope();

  /**
   * Manning's roughness.
   *
   * @return n [s/m^(1/3)]
   */
  double manningN();

  /**
   * The same on another slope.
   *
   * @param other fall over length, positive
   * @return the conduit
   */
  GravityConduit on(double other);

  /**
   * Bore, or height of the walls.
   *
   * @return the greatest depth [m]
   */
  double fullDepthM();

  /**
   * Depth over {@link #fullDepthM} at which most flows without pressure or spilling.
   *
   * @return the share
   */
  double fullestShare();

  /**
   * The widest hydraulic diameter at any depth.
   *
   * @return greatest 4 R [m]
   */
  double widestHydraulicDiameterM();

  /**
   * Uniform flow at a depth.
   *
   * @param depthShare depth over {@link #fullDepthM}, above 0 to 1
   * @return the flow with what follows from it
   */
  GravityFlow atDepth(double depthShare);

  /**
   * The greatest flow without pressure or spilling.
   *
   * @return Q [m3/s]
   */
  default double greatestFlowM3ps() {
    return atDepth(fullestShare()).flowM3ps();
  }

  /**
   * Depth of uniform flow.
   *
   * @param flowM3ps the flow, positive [m3/s]
   * @return depth over {@link #fullDepthM}, the lesser where there are two; nothing when the flow
   *     does not fit
   */
  default OptionalDouble depthShare(double flowM3ps) {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    double greatest = greatestFlowM3ps();
    if (flowM3ps > greatest) {
      return OptionalDouble.empty();
    }
    double fullest = fullestShare();
    // Near an empty conduit Q goes as a power of the depth above 1, so this is below any root.
    double least = fullest * Math.min(0.5, Math.cbrt(flowM3ps / greatest)) * 1e-3;
    while (atDepth(least).flowM3ps() > flowM3ps) {
      least /= 10;
    }
    return OptionalDouble.of(
        Roots.betweenDecades(
            "depth of uniform flow by gravity",
            share -> Math.log(atDepth(Math.min(share, 1)).flowM3ps() / flowM3ps),
            least,
            fullest));
  }

  /**
   * Checks what every conduit has.
   *
   * @param what the conduit in a word
   * @param values what must be positive
   */
  static void requirePositive(String what, double... values) {
    for (double value : values) {
      if (!(value > 0 && Double.isFinite(value))) {
        throw new IllegalArgumentException(
            what + " has sizes, a slope and a roughness > 0, not " + value);
      }
    }
  }
}
