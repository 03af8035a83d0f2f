package sandslurry.material;

/**
 * One size class of a sand.
 *
 * @param lowM lower sieve [m]
 * @param highM upper sieve [m]
 * @param meanM the size that stands for the class [m]
 * @param massFraction share of the mass of all sand
 */
public record SizeClass(double lowM, double highM, double meanM, double massFraction) {}
