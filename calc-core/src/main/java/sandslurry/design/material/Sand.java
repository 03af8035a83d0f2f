package sandslurry.design.material;

import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainShape;

/**
 * The bedding sand.
 *
 * @param source where the gradation comes from, for the report
 * @param gradation sizes and shares
 * @param densityKgM3 density of the mineral
 * @param shape shape of the grains
 */
public record Sand(String source, Gradation gradation, double densityKgM3, GrainShape shape) {}
