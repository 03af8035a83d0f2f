package sandslurry.separation.box;

import java.util.OptionalDouble;
import sandslurry.separation.Partition;

/**
 * The sand that a settling box gives, at one edge of its band of captures.
 *
 * @param partition shares of the feed that leave with the sand; that of water is of feed and rinse
 *     together
 * @param sandKgps dry sand raked out [kg/s]
 * @param moisture liquor with the sand over the mass of both; 0 without sand
 * @param foreignMatter dry matter that is not sand (settled fibre, fines and dissolved matter of
 *     the liquor) over all dry matter; 0 when nothing leaves
 * @param bulkM3ps bulk volume to be lifted [m3/s]
 * @param screwLoad bulk volume over the capacity of the screw, above 1 when it is too small: what
 *     it cannot lift fills the box and then leaves over the weir; empty when no capacity is given
 */
public record BoxSand(
    Partition partition,
    double sandKgps,
    double moisture,
    double foreignMatter,
    double bulkM3ps,
    OptionalDouble screwLoad) {}
