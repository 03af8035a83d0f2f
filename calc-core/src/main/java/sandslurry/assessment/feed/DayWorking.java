package sandslurry.assessment.feed;

import static sandslurry.correlation.Working.DEFINITION;
import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.fact.step.Step;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind a day of pumping. */
public final class DayWorking {
  private DayWorking() {}

  public static List<Step> steps(Design design, ServiceResult result, Day day) {
    Working w = new Working(day == result.days().get(0) ? "day" : "day: " + day.state());
    Point point =
        result.states().stream()
            .filter(s -> s.name().equals(day.state()))
            .findFirst()
            .orElseThrow()
            .point()
            .orElseThrow();
    double volume =
        Measure.VOLUME.si(design.service().operation().orElseThrow().dailyVolume().orElseThrow());
    w.step(
        "t",
        "time that the pumps run in a day",
        "t = D / Q",
        Kind.HOURS,
        day.runningS(),
        DEFINITION,
        in("D", Kind.VOLUME, volume),
        in("Q", Kind.FLOW, point.flowM3ps()));
    day.startsPs()
        .ifPresent(
            starts ->
                w.step(
                    "n",
                    "most frequent starts",
                    "n = Q / (4 B)",
                    Kind.STARTS,
                    starts,
                    "sump filling at half the flow; from memory, unverified, and derived",
                    in("Q", Kind.FLOW, point.flowM3ps()),
                    in(
                        "B",
                        Kind.VOLUME,
                        Measure.VOLUME.si(
                            design
                                .service()
                                .operation()
                                .orElseThrow()
                                .batchVolume()
                                .orElseThrow()))));
    if (point.inputW().isPresent()) {
      w.step(
          "E",
          "energy drawn in a day",
          "E = P_in t",
          Kind.ENERGY,
          day.energyJ(),
          DEFINITION,
          in("P_in", Kind.POWER, point.inputW().getAsDouble()),
          in("t", Kind.TIME, day.runningS()));
    }
    day.energyPerSandJpKg()
        .ifPresent(
            energy ->
                w.step(
                    "e",
                    "energy drawn per mass of sand",
                    "e = E / m",
                    Kind.SPECIFIC_ENERGY,
                    energy,
                    DEFINITION,
                    in("E", Kind.ENERGY, day.energyJ()),
                    in("m", Kind.MASS, day.sandKg())));
    return w.steps();
  }
}
