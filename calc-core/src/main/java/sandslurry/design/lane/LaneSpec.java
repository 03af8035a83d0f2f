package sandslurry.design.lane;

import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Time;
import si.uom.quantity.VolumetricFlowRate;

/**
 * A settling lane with a level cross-section and an even slope.
 *
 * @param length length in the direction of flow
 * @param width clear width
 * @param slope fall over length
 * @param manning Manning's roughness n
 * @param flow flow of mixture through the lane
 * @param depth depth of flow when an outlet weir sets it; absent means normal depth by Manning
 * @param sandFraction volume of sand over volume of mixture that enters; absent means that of the
 *     line at its design flow
 * @param sandStorageDepth depth of sand that the lane may hold before it is emptied
 * @param runningTime time that the lane runs each day
 * @param coatingFactor settling velocity of coated grains over that of clean ones
 */
public record LaneSpec(
    Quantity<Length> length,
    Quantity<Length> width,
    Quantity<Dimensionless> slope,
    Quantity<Dimensionless> manning,
    Quantity<VolumetricFlowRate> flow,
    Optional<Quantity<Length>> depth,
    Optional<Quantity<Dimensionless>> sandFraction,
    Quantity<Length> sandStorageDepth,
    Quantity<Time> runningTime,
    Quantity<Dimensionless> coatingFactor) {}
