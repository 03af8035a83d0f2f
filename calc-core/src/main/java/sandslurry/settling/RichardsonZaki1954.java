package sandslurry.settling;

import sandslurry.correlation.Citation;

/**
 * Exponent of hindered settling of uniform spheres by regime, after Richardson and Zaki.
 *
 * <pre>
 * n = 4.65              Re ≤ 0.2
 * n = 4.35 Re^−0.03     0.2 &lt; Re ≤ 1
 * n = 4.45 Re^−0.1      1 &lt; Re ≤ 500
 * n = 2.39              Re &gt; 500
 * </pre>
 *
 * <p>Re = w d / ν with w the velocity of one grain falling alone. The terms with the diameter of
 * the vessel D are left out: pipes, lanes and basins are wide against sand. At d/D = 0.01 they
 * would add 0.2 to n.
 *
 * <p>The regimes do not join: n falls by 1.8 % at Re = 0.2 and rises by 2.3 % at Re = 1. {@link
 * Rowe1987} is one smooth curve through them. The paper states Re from 0.0002 to 7000; creeping
 * flow does not depend on Re, so no lower limit is reported. Irregular grains have an n that is 10
 * to 20 % higher (common practice, no source).
 */
final class RichardsonZaki1954 extends HinderedSettling {
  private static final Citation SOURCE =
      new Citation(
          "Richardson and Zaki",
          1954,
          "Transactions of the Institution of Chemical Engineers 32:35");

  RichardsonZaki1954() {
    super(
        "richardson-zaki-1954",
        "Richardson and Zaki",
        SOURCE,
        7000,
        "4.65 for Re_p <= 0.2; 4.35 Re_p^-0.03 for Re_p <= 1; 4.45 Re_p^-0.1 for Re_p <= 500;"
            + " else 2.39");
  }

  @Override
  double exponent(double reynoldsNumber) {
    if (reynoldsNumber <= 0.2) {
      return 4.65;
    }
    if (reynoldsNumber <= 1) {
      return 4.35 * Math.pow(reynoldsNumber, -0.03);
    }
    if (reynoldsNumber <= 500) {
      return 4.45 * Math.pow(reynoldsNumber, -0.1);
    }
    return 2.39;
  }
}
