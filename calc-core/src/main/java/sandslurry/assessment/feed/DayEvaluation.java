package sandslurry.assessment.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.states.StateVariants;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.pump.drive.DailyDuty;

/** A day of pumping. */
public final class DayEvaluation {
  private DayEvaluation() {}

  /**
   * A day of pumping in every state in which the pumps move the mixture.
   *
   * @param materials its liquid, sand and mixture
   * @param all the states of the line
   * @return one day for each state, or that of the design flow rate when no state has a duty point;
   *     empty without a daily volume
   */
  public static List<Day> days(Materials materials, List<StateResult> all) {
    Optional<OperationSpec> operation = materials.design().service().operation();
    if (operation.isEmpty() || operation.get().dailyVolumeM3().isEmpty()) {
      return List.of();
    }
    List<Day> days = new ArrayList<>();
    for (StateResult state : all) {
      if (state.point().map(Point::driven).orElse(false) && !StateVariants.isFlush(state)) {
        days.add(day(materials, state, operation.get()));
      }
    }
    if (days.isEmpty()) {
      all.stream()
          .filter(s -> s.point().isPresent() && s.name().startsWith(FlowCase.DESIGN.words()))
          .findFirst()
          .ifPresent(held -> days.add(day(materials, held, operation.get())));
    }
    return days;
  }

  private static Day day(Materials materials, StateResult state, OperationSpec operation) {
    Point point = state.point().orElseThrow();
    double daily = operation.dailyVolumeM3().orElseThrow();
    Optional<Double> batch = operation.batchVolumeM3();
    DailyDuty duty = new DailyDuty(daily, batch.orElse(daily), point.flowM3ps());
    double sandPerVolume = point.mixture().sandFraction() * materials.sandDensityKgM3();
    double input = point.power().inputW().orElse(0);
    return new Day(
        state.name(),
        duty.runningS(),
        batch.isPresent() ? OptionalDouble.of(duty.greatestStartRatePs()) : OptionalDouble.empty(),
        duty.energyJ(input),
        daily * sandPerVolume,
        point.power().inputW().isPresent()
            ? duty.energyPerSandJpKg(input, sandPerVolume)
            : OptionalDouble.empty());
  }
}
