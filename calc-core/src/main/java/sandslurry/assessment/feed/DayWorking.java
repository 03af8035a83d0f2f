package sandslurry.assessment.feed;

import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind a day of pumping. */
public final class DayWorking {
  private static final Equations EQUATIONS = Equations.of(DayWorking.class);
  private static final Equation RUNNING = EQUATIONS.of("running", Kind.HOURS);
  private static final Equation STARTS = EQUATIONS.of("starts", Kind.STARTS);
  private static final Equation ENERGY = EQUATIONS.of("energy", Kind.ENERGY);
  private static final Equation SAND_ENERGY = EQUATIONS.of("sand-energy", Kind.SPECIFIC_ENERGY);

  private DayWorking() {}

  /**
   * Keeps the steps of every day; that of the design comes first.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param result the days as the assessment shows them
   */
  public static void tell(Trace trace, Design design, ServiceResult result) {
    for (Day day : result.days()) {
      trace.begin("day of pumping", day.state());
      tell(trace, design.service().operation().orElseThrow(), point(result, day), day);
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

  private static void tell(Trace trace, OperationSpec operation, Point point, Day day) {
    double flow = point.flowM3ps();
    trace.step(
        RUNNING, day.runningS(), Measure.VOLUME.si(operation.dailyVolume().orElseThrow()), flow);
    if (day.startsPs().isPresent()) {
      double batch = Measure.VOLUME.si(operation.batchVolume().orElseThrow());
      trace.step(STARTS, day.startsPs().getAsDouble(), flow, batch);
    }
    if (point.inputW().isPresent()) {
      trace.step(ENERGY, day.energyJ(), point.inputW().getAsDouble(), day.runningS());
    }
    if (day.energyPerSandJpKg().isPresent()) {
      trace.step(SAND_ENERGY, day.energyPerSandJpKg().getAsDouble(), day.energyJ(), day.sandKg());
    }
  }
}
