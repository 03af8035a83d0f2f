package sandslurry.transport.deposition;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;

/**
 * Durand's deposition velocity for coarse sand with the plateau of his French papers.
 *
 * <pre>V = 1.05 √(2 g D (s − 1))</pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of sand over density of
 * carrier. F_L climbs to this value as the sand becomes coarse, so for fine sand the plateau is on
 * the safe side. Range and meaning are those of {@link Durand1953}.
 *
 * <p>The English print of 1953 shows the plateau at 1.34 ({@link DurandEnglishPlateau}); later
 * reviews take that for an error of the drawing and 1.05 for what was measured.
 */
final class DurandFrenchPlateau implements DepositionVelocityModel {
  private static final double FACTOR = 1.05;

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
    return "durand-plateau-french";
  }

  @Override
  public String name() {
    return "Durand, plateau of the French papers";
  }

  @Override
  public String equation() {
    return "V = 1.05 sqrt(2 g D (s - 1))";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "Durand and Condolios",
        1952,
        "Deuxième Journée de l'Hydraulique, Société Hydrotechnique de France, Grenoble;"
            + " plateau from memory, unverified");
  }

  @Override
  public List<Bound> range() {
    return List.of(Durand1953.SIZE, Durand1953.BORE, Durand1953.CONCENTRATION);
  }
}
