package sandslurry.assessment.observed;

import sandslurry.assessment.observed.ObservedResult.Filling;
import sandslurry.assessment.observed.ObservedResult.LineCheck;
import sandslurry.design.Design;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.material.Proportions;

/** The working behind a reading on site. */
public final class ObservedWorking {
  private ObservedWorking() {}

  /**
   * Keeps the steps of the clean line, the uncertainty and the sand of a bed.
   *
   * @param trace where they are kept
   * @param design the design
   * @param result what the reading says
   */
  public static void steps(Trace trace, Design design, ObservedResult result) {
    Sheet sheet = Sheet.of(ObservedWorking.class, trace);
    sheet.begin("reading on site", "");
    LineCheck check = result.line();
    sheet.step("clean", check.calculatedPa(), check.flowM3ps());
    sheet.step(
        "difference",
        check.uncertaintyPa(),
        check.difference().readingPa(),
        check.difference().flowPa(),
        check.difference().modelPa());
    result.filling().ifPresent(filling -> filling(sheet, design, filling));
  }

  private static void filling(Sheet sheet, Design design, Filling filling) {
    sheet.step(
        "sand",
        filling.sandKg(),
        Proportions.PACKED_VOLUME_FRACTION,
        design.sand().densityKgM3(),
        filling.bedM3());
  }
}
