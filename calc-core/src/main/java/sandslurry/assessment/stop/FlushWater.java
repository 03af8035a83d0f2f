package sandslurry.assessment.stop;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;

/**
 * The line of a design full of the water that flushes it.
 *
 * @param model the line
 * @param sand whether what it flushes holds sand
 */
public record FlushWater(LineModel model, boolean sand) {
  /** Stress of the water on the wall that strips a liquid off it, over its yield stress. */
  static final double STRIPPING = 2;

  /** Velocity in the narrowest run at which every search for a flow of water ends. */
  private static final double MOST_TRIED_MPS = 30;

  private static final double LEAST_SHARE = 1e-4;

  /**
   * The water that flushes a line.
   *
   * @param materials what stands in its line
   * @param sandFraction volume fraction of sand in that
   * @return the line with water
   */
  public static FlushWater of(Materials materials, double sandFraction) {
    Materials water = materials.inFlushWater(sandFraction);
    return new FlushWater(new LineModel(water), sandFraction > 0);
  }

  double densityKgM3() {
    return model.materials().carrier().densityKgM3();
  }

  /** Pressure of a head of water [Pa]. */
  double pressurePa(double headM) {
    return headM * densityKgM3() * Physics.GRAVITY;
  }

  /**
   * Flow rate that carries off a bed in every run: it keeps the sand moving with margin at any
   * concentration, as a bed that is stirred up comes thick.
   *
   * @return flow rate; 0 without sand, empty when no flow rate through some run does [m3/s]
   */
  public OptionalDouble clearingM3ps() {
    return sand ? model.leastSafeFlowM3ps() : OptionalDouble.of(0);
  }

  /** Velocity in the largest bore of a run that carries off a bed; 0 without sand [m/s]. */
  OptionalDouble clearingMps(RunSpec run) {
    if (!sand) {
      return OptionalDouble.of(0);
    }
    OptionalDouble clearing = model.leastSafeFlowM3ps(run);
    return clearing.isPresent()
        ? OptionalDouble.of(new Bore(run.largestBoreM(), 0).velocityMps(clearing.getAsDouble()))
        : clearing;
  }

  /**
   * Flow at which water strips a liquid off the wall of every run [m3/s].
   *
   * @param yieldPa yield stress of the liquid while it flows [Pa]
   * @return the flow; 0 without yield stress, empty when none does
   */
  OptionalDouble strippingM3ps(double yieldPa) {
    if (!(yieldPa > 0)) {
      return OptionalDouble.of(0);
    }
    double most = mostTriedM3ps();
    double least = LEAST_SHARE * most;
    if (weakestPa(most) < STRIPPING * yieldPa) {
      return OptionalDouble.empty();
    }
    return weakestPa(least) >= STRIPPING * yieldPa
        ? OptionalDouble.of(least)
        : OptionalDouble.of(
            Roots.betweenDecades(
                "flow that strips", q -> weakestPa(q) - STRIPPING * yieldPa, least, most));
  }

  private double weakestPa(double flowM3ps) {
    return model.runs(flowM3ps, 0).stream().mapToDouble(this::wallStressPa).min().orElseThrow();
  }

  /** Stress of the water on the wall of a clean run [Pa]. */
  double wallStressPa(RunPoint point) {
    return pressurePa(point.flow().gradient()) * point.pipe().mean().diameterM() / 4;
  }

  /** The greatest flow that is tried [m3/s]. */
  double mostTriedM3ps() {
    return model.route().runs().stream()
        .mapToDouble(run -> run.meanBoreM())
        .map(bore -> MOST_TRIED_MPS * Math.PI / 4 * bore * bore)
        .min()
        .orElseThrow();
  }

  List<RunPoint> runs(double flowM3ps) {
    return model.runs(flowM3ps, 0);
  }
}
