package sandslurry.separation.capture;

import java.util.List;

/** The catalogue of capture relations. */
public final class CaptureRelations {
  /** Upper bound: no turbulence. */
  public static final CaptureRelation IDEAL = new HazenIdeal1904();

  /** Best estimate: the turbulence of the lane itself. */
  public static final CaptureRelation TURBULENT = new CampDobbins1946();

  /** Lower bound: turbulence without limit. */
  public static final CaptureRelation MIXED = new Vetter1940();

  private CaptureRelations() {}

  /**
   * Every relation of the family.
   *
   * @return the relations, the three of the band first, then basins with short-circuits
   */
  public static List<CaptureRelation> all() {
    return List.of(
        IDEAL, TURBULENT, MIXED, HazenBasins.ofReciprocal(0.17), HazenBasins.ofReciprocal(0.5));
  }
}
