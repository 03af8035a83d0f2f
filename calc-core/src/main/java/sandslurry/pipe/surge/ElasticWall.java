package sandslurry.pipe.surge;

import sandslurry.pipe.catalogue.PipeMaterial;

/**
 * The wall of a pipe as a pressure wave meets it.
 *
 * @param boreM D, inside diameter [m]
 * @param wallM t, thickness of the wall [m]
 * @param modulusPa E, short-term modulus of elasticity; see {@link PipeMaterial} [Pa]
 * @param restraintFactor ψ, what holds the pipe lengthwise: 1 with expansion joints throughout, the
 *     common and the softest; 1 − ν/2 anchored at the upstream end only; 1 − ν² held throughout, as
 *     when buried, with Poisson's ratio ν (thin walls, Wylie and Streeter 1993; as quoted with
 *     Korteweg's formula in the manual of a general-purpose finite-element program, read)
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
  double compliancePerPa() {
    return restraintFactor * boreM / (modulusPa * wallM);
  }
}
