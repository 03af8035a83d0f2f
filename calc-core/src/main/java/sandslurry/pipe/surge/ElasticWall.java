package sandslurry.pipe.surge;

import sandslurry.pipe.catalogue.PipeMaterial;

/**
 * The wall of a pipe as a pressure wave meets it.
 *
 * @param boreM D, inside diameter [m]
 * @param wallM t, thickness of the wall [m]
 * @param modulusPa E, short-term modulus of elasticity; see {@link PipeMaterial} [Pa]
 * @param restraintFactor ψ, what holds the pipe lengthwise, see {@link Restraint}; 1 is the common
 *     and the softest
 */
public record ElasticWall(double boreM, double wallM, double modulusPa, double restraintFactor) {
  /** Checks that all values are positive. */
  public ElasticWall {
    if (!(boreM > 0) || !(wallM > 0) || !(modulusPa > 0) || !(restraintFactor > 0)) {
      throw new IllegalArgumentException(
          "an elastic wall needs a bore, a wall, a modulus and a factor > 0 but has "
              + boreM
              + " m, "
              + wallM
              + " m, "
              + modulusPa
              + " Pa, "
              + restraintFactor);
    }
  }

  /**
   * The softness of the wall, which adds to that of the liquid.
   *
   * @return ψ D / (E t) [1/Pa]
   */
  public double compliancePerPa() {
    return restraintFactor * boreM / (modulusPa * wallM);
  }

  /**
   * What holds a thin-walled pipe lengthwise, with the factor that belongs to it: those of the
   * theory of thin walls, as quoted with Korteweg's formula in the manual of a general-purpose
   * finite-element program (read) and as in Wylie and Streeter (1993).
   */
  public enum Restraint {
    /** Expansion joints throughout: no stress lengthwise; 1. */
    EXPANSION_JOINTS,
    /** Anchored at the upstream end only; 1 − ν/2. */
    ANCHORED_UPSTREAM,
    /** Held against any movement lengthwise, as when buried; 1 − ν². */
    ANCHORED_THROUGHOUT;

    /**
     * The factor.
     *
     * @param poissonRatio ν of the wall, 0 to 0.5
     * @return ψ
     */
    public double factor(double poissonRatio) {
      if (!(poissonRatio >= 0 && poissonRatio <= 0.5)) {
        throw new IllegalArgumentException(
            "Poisson's ratio lies in 0 to 0.5 but was " + poissonRatio);
      }
      return switch (this) {
        case EXPANSION_JOINTS -> 1;
        case ANCHORED_UPSTREAM -> 1 - poissonRatio / 2;
        case ANCHORED_THROUGHOUT -> 1 - poissonRatio * poissonRatio;
      };
    }
  }
}
