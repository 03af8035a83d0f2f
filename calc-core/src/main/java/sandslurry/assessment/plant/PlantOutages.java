package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantResult.Outage;
import sandslurry.plant.Stream;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.DayRun;
import sandslurry.plant.schedule.DaySchedule;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.PlantUnit.Part;
import sandslurry.units.InUnit;

/**
 * A week without one separator or pump, by the schedule: the decision which spare parts to keep.
 *
 * <p>It begins at the end of the last day of the plant as it should be; manure comes evenly. A
 * separator that is out lets all that comes pass on with its liquid; a pump that is out stands. A
 * box whose screw is out fills with sand, and what is said of it is how soon. Whether the plant
 * comes back afterwards is looked for where it has a second steady state; else it does.
 *
 * @param model the plant
 * @param days its days by schedule
 * @param twoStates whether a mode has a second steady state
 */
public record PlantOutages(PlantModel model, DayRun days, boolean twoStates) {
  /** No step of a schedule is longer [s]. */
  public static final double LONGEST_STEP_S = 7200;

  private static final int WEEK = 7;
  private static final int MONTH = 30;

  /** A recovery this near to what it was is back (own choice). */
  private static final double BACK = 0.01;

  /** Of pits that are equally full but for what steps agree to, the first is named. */
  private static final double AS_FULL = 1e-3;

  /**
   * The week as it should be, and the week without each separator and pump.
   *
   * @return the weeks, the undisturbed first; none when no day by schedule was completed
   */
  public List<Outage> all() {
    List<Outage> outages = new ArrayList<>();
    if (days.last().isEmpty() || days.stopped().isPresent()) {
      return outages;
    }
    Day last = days.last().get();
    Optional<Outage> whole = of("", Part.NONE);
    if (whole.isEmpty()) {
      return outages;
    }
    outages.add(whole.get());
    for (PlantUnit unit : model.spec().units()) {
      unit.parts()
          .forEach(
              (name, part) -> {
                if (part == Part.LANE_OF_SEVERAL) {
                  outages.add(whole.get().of(name, part, OptionalDouble.empty()));
                } else if (part == Part.SCREW) {
                  outages.add(whole.get().of(name, part, fullAfterS(unit, last)));
                } else {
                  of(name, part).ifPresent(outages::add);
                }
              });
    }
    return outages;
  }

  private Optional<Outage> of(String out, Part kind) {
    DayRun week = schedule(out).after(days.last().orElseThrow(), WEEK, LONGEST_STEP_S);
    return week.stopped().isPresent() || week.days().isEmpty()
        ? Optional.empty()
        : Optional.of(outage(out, kind, week.days()));
  }

  private DaySchedule schedule(String out) {
    return model.day(mode -> model.without(mode, out), Map.of());
  }

  private Outage outage(String out, Part kind, List<Day> week) {
    double flushed = 0;
    double recovered = 0;
    double spilled = 0;
    Stream stored = model.constituents().water(0);
    PitDay fullest = null;
    double share = 0;
    for (int d = 0; d < WEEK; d++) {
      // A day that repeats itself stands for all that follow.
      Day day = week.get(Math.min(d, week.size() - 1));
      Map<String, Stream> flows = day.meanFlows();
      double came = model.totals().sum(flows, model.totals().feeds()).sandKgps();
      flushed += came;
      recovered += came * model.totals().capture(flows);
      stored = stored.plus(model.totals().sum(flows, stored()).times(InUnit.DAY.si(1)));
      for (PitDay pit : day.pits().values()) {
        spilled += pit.spilledM3();
        double here = pit.mostM3() / capacityM3(pit.name());
        if (fullest == null || here > share * (1 + AS_FULL)) {
          fullest = pit;
          share = here;
        }
      }
    }
    return new Outage(
        out,
        kind,
        flushed > 0 ? recovered / flushed : 0,
        liquor(week.get(week.size() - 1)),
        spilled,
        stored.volumeM3ps(),
        stored.sandKgps(),
        fullest == null ? "" : fullest.name(),
        share,
        OptionalDouble.empty(),
        kind == Part.NONE || comesBack(week.get(week.size() - 1)));
  }

  /** The streams into the storages; what leaves for good where there is none. */
  private List<String> stored() {
    return model.spec().storages().isEmpty()
        ? model.totals().surplus()
        : model.spec().storages().stream().flatMap(storage -> storage.inlets().stream()).toList();
  }

  /** What leaves for good, or what the pits hold where nothing leaves. */
  private double liquor(Day day) {
    Stream leaves = model.totals().sum(day.meanFlows(), model.totals().surplus());
    return leaves.volumeM3ps() > 0
        ? leaves.totalSolids()
        : Stream.mix(
                model.constituents(),
                day.pits().values().stream().map(PitDay::endContents).toList())
            .totalSolids();
  }

  /** Whether a month with the unit running again brings the recovery back. */
  private boolean comesBack(Day after) {
    double before = model.totals().capture(days.last().orElseThrow().meanFlows());
    if (!twoStates) {
      return true;
    }
    DayRun month = schedule("").after(after, MONTH, LONGEST_STEP_S);
    return month
        .last()
        .filter(day -> month.stopped().isEmpty())
        .map(day -> model.totals().capture(day.meanFlows()) > before - BACK)
        .orElse(false);
  }

  private double capacityM3(String pit) {
    return model.spec().pits().stream()
        .filter(one -> one.name().equals(pit))
        .mapToDouble(one -> one.pit().capacityM3())
        .findFirst()
        .orElseThrow();
  }

  /** Time in which the sand that settles fills the water of a box. */
  private static OptionalDouble fullAfterS(PlantUnit unit, Day day) {
    return day.units().containsKey(unit.name())
        ? unit.fullAfterS(day.meanFlows().get(unit.outlets().get(0)))
        : OptionalDouble.empty();
  }
}
