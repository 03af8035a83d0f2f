package sandslurry.transport.deposition;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;

/**
 * Durand's deposition velocity for coarse sand with the plateau of the English print of 1953.
 *
 * <pre>V = 1.34 √(2 g D (s − 1))</pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of sand over density of
 * carrier. This is the figure that many handbooks copy. It lies about 1.3 times above the French
 * papers on the same measurements ({@link DurandFrenchPlateau}), which reviews explain as an error
 * of the drawing; it is kept so that a reader who knows the handbook figure finds it. Range and
 * meaning are those of {@link Durand1953}.
 */
final class DurandEnglishPlateau implements DepositionVelocityModel {
  private static final double FACTOR = 1.34;

  @Override
  public Estimate velocityMps(Slurry slurry, Bore bore) {
    return Estimate.checks()
        .check(Durand1953.SIZE, slurry.d50M())
        .check(Durand1953.BORE, bore.diameterM())
        .check(Durand1953.CONCENTRATION, slurry.volumeFraction())
        .value(FACTOR * VelocityScale.durandMps(slurry, bore));
  }

  @Override
  public Limit limit() {
    return Limit.ANY_BED;
  }

  @Override
  public String id() {
    return "durand-plateau-english";
  }

  @Override
  public String name() {
    return "Durand, plateau of the English print";
  }

  @Override
  public String equation() {
    return "V = 1.34 sqrt(2 g D (s - 1))";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "Durand",
        1953,
        "Proceedings of the Minnesota International Hydraulics Convention, 89-103; plateau from"
            + " memory, unverified");
  }

  @Override
  public List<Bound> range() {
    return List.of(Durand1953.SIZE, Durand1953.BORE, Durand1953.CONCENTRATION);
  }
}
