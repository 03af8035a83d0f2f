package sandslurry.design.material;

/**
 * A liquid with which the mixture of a line might be diluted.
 *
 * @param totalSolids dry solids of that liquid over its mass; 0 for water
 * @param mostRatio the greatest volume of it to be looked at, over the volume of undiluted mixture
 */
public record DilutionSpec(double totalSolids, double mostRatio) {}
