package sandslurry.design.material;

import javax.measure.Quantity;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;
import si.uom.quantity.Density;

/**
 * The bedding sand.
 *
 * @param source where the gradation comes from, for the report
 * @param gradation sizes and shares
 * @param density density of the mineral
 * @param shape shape of the grains
 */
public record Sand(
    String source, Gradation gradation, Quantity<Density> density, GrainShape shape) {}
