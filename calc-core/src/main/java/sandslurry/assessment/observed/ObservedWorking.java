package sandslurry.assessment.observed;

import sandslurry.assessment.observed.ObservedResult.Filling;
import sandslurry.assessment.observed.ObservedResult.LineCheck;
import sandslurry.design.Design;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Proportions;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind a reading on site. */
public final class ObservedWorking {
  private static final Equation CLEAN =
      Equation.search(
          "P",
          "pressure that the clean line takes at the flow rate read",
          "as in the working of the line, at this flow rate",
          Kind.PRESSURE,
          Equation.DEFINITION,
          "Q m3/s");
  private static final Equation DIFFERENCE =
      Equation.of(
          "U",
          "by how much it and the pressure read may differ",
          "(U_P^2 + U_Q^2 + U_f^2)^(1/2)",
          Kind.PRESSURE,
          Equation.COMMON,
          "U_P Pa, U_Q Pa, U_f Pa");
  private static final Equation SAND =
      Equation.of(
          "M",
          "sand in the bed that explains the reading",
          "Cb rho_s V_bed",
          Kind.MASS,
          Equation.COMMON,
          "Cb, rho_s kg/m3, V_bed m3");

  private ObservedWorking() {}

  /**
   * Keeps the steps of the clean line, the uncertainty and the sand of a bed.
   *
   * @param trace where they are kept
   * @param design the design
   * @param result what the reading says
   */
  public static void tell(Trace trace, Design design, ObservedResult result) {
    trace.begin("reading on site", "");
    LineCheck check = result.line();
    trace.step(CLEAN, check.calculatedPa(), check.flowM3ps());
    trace.step(
        DIFFERENCE,
        check.uncertaintyPa(),
        check.difference().readingPa(),
        check.difference().flowPa(),
        check.difference().modelPa());
    result.filling().ifPresent(filling -> filling(trace, design, filling));
  }

  private static void filling(Trace trace, Design design, Filling filling) {
    trace.step(
        SAND,
        filling.sandKg(),
        Proportions.PACKED_VOLUME_FRACTION,
        Measure.DENSITY.si(design.sand().density()),
        filling.bedM3());
  }
}
