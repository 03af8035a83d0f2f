package sandslurry.material.sand;

/**
 * The shape of sand grains, in the three measures that settling correlations use.
 *
 * @param coreyShapeFactor Corey shape factor c/√(ab), 1 for a sphere
 * @param powersRoundness Powers roundness, 0 (very angular) to 6 (perfectly round)
 * @param sphericity Wadell sphericity: surface of the sphere of equal volume over surface of the
 *     grain, 1 for a sphere
 */
public record GrainShape(double coreyShapeFactor, double powersRoundness, double sphericity) {
  /**
   * Natural worn sand: Corey 0.7, roundness 3.5 (the values that Dietrich (1982) names for natural
   * sediment), sphericity 0.8 (common practice, no source).
   */
  public static final GrainShape NATURAL = new GrainShape(0.7, 3.5, 0.8);

  /** A sphere. */
  public static final GrainShape SPHERE = new GrainShape(1, 6, 1);

  /** Checks the bounds of the three definitions. */
  public GrainShape {
    if (!(coreyShapeFactor > 0 && coreyShapeFactor <= 1)
        || !(powersRoundness >= 0 && powersRoundness <= 6)
        || !(sphericity > 0 && sphericity <= 1)) {
      throw new IllegalArgumentException(
          "shape out of bounds: Corey "
              + coreyShapeFactor
              + " (0 to 1), roundness "
              + powersRoundness
              + " (0 to 6), sphericity "
              + sphericity
              + " (0 to 1)");
    }
  }
}
