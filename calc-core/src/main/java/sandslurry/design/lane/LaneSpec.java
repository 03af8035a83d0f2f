package sandslurry.design.lane;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A settling lane with a level cross-section and an even slope.
 *
 * @param lengthM length in the direction of flow
 * @param widthM clear width
 * @param slope fall over length
 * @param manning Manning's roughness n
 * @param flowM3ps flow of mixture through the lane
 * @param depthM depth of flow when an outlet weir sets it; absent means normal depth by Manning
 * @param sandFraction volume of sand over volume of mixture that enters; absent means that of the
 *     line at its design flow
 * @param sandStorageDepthM depth of sand that the lane may hold before it is emptied
 * @param runningTimeS time that the lane runs each day
 * @param coatingFactor settling velocity of coated grains over that of clean ones
 */
public record LaneSpec(
    double lengthM,
    double widthM,
    double slope,
    double manning,
    double flowM3ps,
    OptionalDouble depthM,
    Optional<Double> sandFraction,
    double sandStorageDepthM,
    double runningTimeS,
    double coatingFactor) {}
