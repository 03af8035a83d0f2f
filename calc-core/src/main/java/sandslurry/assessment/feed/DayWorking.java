package sandslurry.assessment.feed;

import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;

/** The working behind a day of pumping. */
public final class DayWorking {

  private DayWorking() {}

  /**
   * Keeps the steps of every day; that of the design comes first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param result the days as the assessment shows them
   */
  public static void steps(Trace trace, Design design, ServiceResult result) {
    Sheet sheet = Sheet.of(DayWorking.class, trace);
    for (Day day : result.days()) {
      sheet.begin("day of pumping", day.state());
      steps(sheet, design.service().operation().orElseThrow(), point(result, day), day);
    }
  }

  private static Point point(ServiceResult result, Day day) {
    return result.states().stream()
        .filter(s -> s.name().equals(day.state()))
        .findFirst()
        .orElseThrow()
        .point()
        .orElseThrow();
  }

  private static void steps(Sheet sheet, OperationSpec operation, Point point, Day day) {
    double flow = point.flowM3ps();
    sheet.step("running", day.runningS(), operation.dailyVolumeM3().orElseThrow(), flow);
    if (day.startsPs().isPresent()) {
      double batch = operation.batchVolumeM3().orElseThrow();
      sheet.step("starts", day.startsPs().getAsDouble(), flow, batch);
    }
    if (point.power().inputW().isPresent()) {
      sheet.step("energy", day.energyJ(), point.power().inputW().getAsDouble(), day.runningS());
    }
    if (day.energyPerSandJpKg().isPresent()) {
      sheet.step("sand-energy", day.energyPerSandJpKg().getAsDouble(), day.energyJ(), day.sandKg());
    }
  }
}
