package sandslurry.settling;

import sandslurry.correlation.Citation;

/**
 * Exponent of hindered settling after Garside and Al-Dibouni.
 *
 * <pre>(5.1 − n) / (n − 2.7) = 0.1 Re^0.9, that is n = (5.1 + 0.27 Re^0.9) / (1 + 0.1 Re^0.9)</pre>
 *
 * <p>Re = w d / ν with w the velocity of one grain falling alone. Limits: 5.1 for creeping flow,
 * 2.7 for turbulent. Its n is 8 to 17 % above that of Richardson and Zaki's measurements, about
 * what irregular sand asks for: it is the slow, careful end of the band. The range of Re is
 * reported up to 1000, the more careful of the figures found; no original was seen.
 */
final class GarsideAlDibouni1977 extends HinderedSettling {
  private static final Citation SOURCE =
      new Citation(
          "Garside and Al-Dibouni",
          1977,
          "Industrial and Engineering Chemistry, Process Design and Development 16:206;"
              + " coefficients as used in open flow codes");

  GarsideAlDibouni1977() {
    super(
        "garside-al-dibouni-1977",
        "Garside and Al-Dibouni",
        SOURCE,
        1000,
        "(5.1 + 0.27 Re_p^0.9) / (1 + 0.1 Re_p^0.9)");
  }

  @Override
  double exponent(double reynoldsNumber) {
    double ratio = 0.1 * Math.pow(reynoldsNumber, 0.9);
    return (5.1 + 2.7 * ratio) / (1 + ratio);
  }
}
