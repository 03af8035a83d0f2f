package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Durand's deposition velocity with his chart of F_L put in closed form by Schiller and Herbich.
 *
 * <pre>
 * V = F_L √(2 g D (s − 1)),  F_L = 1.3 C^0.125 [1 − exp(−6.9 d)]
 * </pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of sand over density of
 * carrier; C volume fraction; d grain size d50 in <b>millimetres</b>. For coarse sand and C between
 * 10 and 20 % the closed form returns the plateau of Durand's French papers ({@link
 * DurandPlateau}), not that of the English print.
 *
 * <p>Measured with sand and gravel of 0.18 to 22.5 mm in pipes of 40 to 580 mm at 2 to 22 % by
 * volume, in water. At C = 0 the closed form gives 0, which is outside its range: a trace of sand
 * settles too. The viscosity does not enter.
 *
 * <p>Durand's limit is the appearance of a deposit; the literature reads it as the onset of any
 * bed.
 */
final class Durand1953 extends DepositionVelocityModel {
  static final Within WITHIN =
      Within.PUBLISHED.size(0.18e-3, 22.5e-3).bore(0.04, 0.58).fraction(0.02, 0.22);

  private static final Citation SOURCE =
      new Citation(
          "Durand",
          1953,
          "Proceedings of the Minnesota International Hydraulics Convention, 89-103; closed form of"
              + " F_L by Schiller and Herbich (1991) in Handbook of Dredging Engineering,"
              + " McGraw-Hill, coefficients seen in an open notebook that works an example of"
              + " Abulnaga (2002)");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity by Durand",
          "1.3 C^0.125 (1 - exp(-6.9 d[mm])) sqrt(2 g D (s - 1))",
          Kind.VELOCITY,
          "C, d m, D m, s");

  Durand1953() {
    super("durand-1953", "Durand, curve by Schiller and Herbich", Limit.ANY_BED, SOURCE, WITHIN, V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double factor =
        1.3
            * Math.pow(slurry.volumeFraction(), 0.125)
            * -Math.expm1(-6.9 * InUnit.MILLIMETRE.of(slurry.d50M()));
    return trace.step(
        V,
        factor * VelocityScale.durandMps(slurry, bore),
        slurry.volumeFraction(),
        slurry.d50M(),
        bore.diameterM(),
        slurry.densityRatio());
  }
}
