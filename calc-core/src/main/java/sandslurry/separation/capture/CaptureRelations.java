package sandslurry.separation.capture;

import sandslurry.correlation.Family;

/** The catalogue of capture relations. */
public final class CaptureRelations {
  /** Upper bound: no turbulence. */
  public static final CaptureRelation IDEAL = new HazenIdeal1904();

  /** Best estimate: the turbulence of the lane itself. */
  public static final CaptureRelation TURBULENT = new CampDobbins1946();

  /** Lower bound: turbulence without limit. */
  public static final CaptureRelation MIXED = new Vetter1940();

  /** Every correlation of the family. */
  public static final Family<CaptureRelation> FAMILY =
      Family.of(
          "share of the sand that reaches the floor",
          IDEAL,
          TURBULENT,
          MIXED,
          HazenBasins.ofReciprocal(0.17),
          HazenBasins.ofReciprocal(0.5));

  private CaptureRelations() {}
}
