package sandslurry.material.sand;

/**
 * The grains between two sizes.
 *
 * @param lowM the lower size [m]
 * @param highM the upper size [m]
 * @param meanM geometric mean of both, the size that stands for the class [m]
 * @param massFraction mass of the class over mass of all sand
 */
public record SizeClass(double lowM, double highM, double meanM, double massFraction) {
  /**
   * The sizes without the mass.
   *
   * @return from the lower to the upper size
   */
  public GrainRange range() {
    return new GrainRange(lowM, highM);
  }
}
