package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Deposition velocity after Wasp, Kenny and Gandhi, who gave Durand's formula a dependence on grain
 * size over bore.
 *
 * <pre>V = 3.116 C^0.186 (d/D)^(1/6) √(2 g D (s − 1))</pre>
 *
 * <p>V deposition velocity [m/s]; C volume fraction; d grain size d50 [m]; D bore [m]; g gravity
 * [m/s²]; s density of sand over density of carrier.
 *
 * <p>Four pairs of factor and exponent are in print: 3.116 and 0.186; 3.399 and 0.2156; 4.0 and
 * 0.20; 3.8 and 0.25. The first two agree within 5 % at C = 0.1 although they come from separate
 * fits, while 4.0 and 0.20 lies 20 to 25 % higher; the first is used here. All pairs are from
 * memory, unverified.
 *
 * <p>Made for fine and medium sand of narrow grading. The limits given are those within which it is
 * used here, not published ones: below 2 % the power of C drags it towards 0, which no measurement
 * supports.
 */
final class Wasp1977 extends DepositionVelocityModel {

  private static final Citation SOURCE =
      new Citation(
              "Wasp, Kenny and Gandhi",
              1977,
              "Solid-Liquid Flow: Slurry Pipeline Transportation, Trans Tech Publications")
          .fromMemory("coefficients");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Wasp, Kenny and Gandhi",
          "3.116 C^0.186 (d/D)^(1/6) sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          "C, d m, D m, s");

  Wasp1977() {
    super(
        "wasp-1977",
        "Wasp, Kenny and Gandhi",
        Limit.ANY_BED,
        SOURCE,
        Within.OWN.size(0.1e-3, 2e-3).fraction(0.02, 0.3),
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double number =
        3.116
            * Math.pow(slurry.volumeFraction(), 0.186)
            * Math.pow(slurry.d50M() / bore.diameterM(), 1.0 / 6);
    return trace.step(
        V,
        number * VelocityScale.durandMps(slurry, bore),
        slurry.volumeFraction(),
        slurry.d50M(),
        bore.diameterM(),
        slurry.densityRatio());
  }
}
