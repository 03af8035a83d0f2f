package sandslurry.settling;

import sandslurry.material.sand.Grain;

/**
 * From the size of a sieve to the nominal diameter, which is that of the sphere of equal volume.
 *
 * <p>Derived here, not published: take the grain as an ellipsoid of axes a &gt; b &gt; c with a/b =
 * b/c. Its nominal diameter (abc)^(1/3) is then b, and its Corey shape factor S = c/√(ab) gives c =
 * b S^(2/3). The smallest square hole that lets the ellipse b × c through, turned by 45°, has the
 * side √((b² + c²)/2), so
 *
 * <pre>sieve / nominal = √((1 + S^(4/3)) / 2)</pre>
 *
 * <p>This is 1 for a sphere, as it must be, and 0.900 for S = 0.7: the ratio of 0.9 that handbooks
 * give for natural sand (from memory, unverified).
 */
final class NominalDiameter {
  private NominalDiameter() {}

  /** The same grain with its nominal diameter in the place of its sieve size. */
  static Grain grain(Grain sieved) {
    double flatness = Math.pow(sieved.shape().coreyShapeFactor(), 4.0 / 3);
    double sieveOverNominal = Math.sqrt((1 + flatness) / 2);
    return new Grain(sieved.diameterM() / sieveOverNominal, sieved.densityKgM3(), sieved.shape());
  }
}
