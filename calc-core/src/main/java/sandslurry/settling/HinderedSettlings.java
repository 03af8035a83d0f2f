package sandslurry.settling;

import sandslurry.correlation.Family;

/** The catalogue of hindered-settling correlations. */
public final class HinderedSettlings {
  /** The correlation used unless another is asked for: smooth, and true to the measurements. */
  public static final HinderedSettling DEFAULT = new Rowe1987();

  /** Every correlation of the family. */
  public static final Family<HinderedSettling> FAMILY =
      Family.of("hindered settling", DEFAULT, new RichardsonZaki1954(), new GarsideAlDibouni1977());

  private HinderedSettlings() {}
}
