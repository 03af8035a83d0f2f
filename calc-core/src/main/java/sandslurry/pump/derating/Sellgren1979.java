package sandslurry.pump.derating;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;

/**
 * Derating of centrifugal pumps by solids, after Sellgren.
 *
 * <pre>HR = 1 − 0.32 Cw^0.7 (S − 1)^0.7 C_D^−0.25</pre>
 *
 * <p>HR head ratio; Cw mass fraction of solids in the mixture; S relative density of the solids;
 * C_D drag coefficient of a grain of size d50 falling at its terminal velocity, here that of {@link
 * SettlingVelocities#DEFAULT}. The efficiency ratio is taken equal to the head ratio.
 *
 * <p>The only form in which the viscosity of the carrier appears: in a thicker liquid the drag
 * coefficient is larger and the derating smaller.
 */
final class Sellgren1979 extends Published implements SolidsDerating {
  private static final Citation SOURCE =
      new Citation(
              "Sellgren",
              1979,
              "Performance of a centrifugal pump when pumping ores and industrial minerals,"
                  + " Hydrotransport 6")
          .fromMemory("coefficients");
  private static final Equation HEAD_RATIO =
      SOURCE.equation(
          "HR_S",
          "head with sand over head without",
          "1 - 0.32 C_w^0.7 (s - 1)^0.7 C_D^-0.25",
          Kind.NUMBER,
          "C_w, s, C_D");

  Sellgren1979() {
    super("sellgren-1979", "Sellgren", SOURCE, List.of(), HEAD_RATIO);
  }

  @Override
  public Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    double drag = SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid(), trace);
    double mass = SolidsDeratings.massFraction(slurry, trace);
    double reduction =
        0.32
            * Math.pow(mass, 0.7)
            * Math.pow(slurry.densityRatio() - 1, 0.7)
            * Math.pow(drag, -0.25);
    return Estimate.checks()
        .value(trace.step(HEAD_RATIO, 1 - reduction, mass, slurry.densityRatio(), drag));
  }
}
