package sandslurry.separation;

import java.util.List;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SizeClass;

/**
 * What flows into a settling lane, in plain SI.
 *
 * @param flowM3ps flow while the lane runs [m3/s]
 * @param runningShare share of the day that the lane runs: hours per day over 24, 0 to 1
 * @param liquid the carrier with its fines, without the sand
 * @param volumeFraction volume of sand over volume of mixture, 0 for clear liquid
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param shape shape of the grains
 * @param classes the gradation; mass fractions that sum to 1
 * @param settlingFactor what coatings of organic matter leave of the settling velocity of a clean
 *     grain: 1 for clean sand; 0.7 to 0.8 is what the design velocities of wastewater grit chambers
 *     amount to beside clean quartz (common practice, no source)
 */
public record LaneFeed(
    double flowM3ps,
    double runningShare,
    Liquid liquid,
    double volumeFraction,
    double sandDensityKgM3,
    GrainShape shape,
    List<SizeClass> classes,
    double settlingFactor) {
  /** Checks every bound and copies the list. */
  public LaneFeed {
    classes = List.copyOf(classes);
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    if (!(runningShare >= 0 && runningShare <= 1)) {
      throw new IllegalArgumentException(
          "the share of the day lies in 0 to 1 but was " + runningShare);
    }
    if (!(volumeFraction >= 0 && volumeFraction < 1)) {
      throw new IllegalArgumentException(
          "the volume fraction of sand lies in 0 to 1 but was " + volumeFraction);
    }
    if (!(sandDensityKgM3 > liquid.densityKgM3() && Double.isFinite(sandDensityKgM3))) {
      throw new IllegalArgumentException(
          "sand must be denser than its carrier but is "
              + sandDensityKgM3
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    if (!(settlingFactor > 0 && settlingFactor <= 1)) {
      throw new IllegalArgumentException(
          "the settling factor lies in 0 (excluded) to 1 but was " + settlingFactor);
    }
    double sum = classes.stream().mapToDouble(SizeClass::massFraction).sum();
    if (!(Math.abs(sum - 1) < 1e-6)) {
      throw new IllegalArgumentException("mass fractions must sum to 1 but sum to " + sum);
    }
  }

  /**
   * Mean mass flow of sand over the whole day.
   *
   * @return flow, sand and share of the day multiplied [kg/s]
   */
  public double sandKgPs() {
    return flowM3ps * volumeFraction * sandDensityKgM3 * runningShare;
  }

  /**
   * A grain of this sand.
   *
   * @param diameterM its diameter [m]
   * @return the grain
   */
  public Grain grain(double diameterM) {
    return new Grain(diameterM, sandDensityKgM3, shape);
  }
}
