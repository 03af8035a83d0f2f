package sandslurry.report.section;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.units.Kind;

/**
 * What the report says of a day of pumping, and of screw conveyor and gravity pipe.
 *
 * @param page takes its blocks
 */
record FeedSection(Page page) implements SectionWriter {
  void of(ServiceResult result) {
    days(result.days());
    result.screw().ifPresent(this::screw);
    result.gravityRun().ifPresent(run -> gravityRun(1, "Gravity pipe", run));
  }

  /** The lines by gravity of a plant, by their streams. */
  void gravity(Map<String, GravityRun> lines) {
    lines.forEach((stream, run) -> gravityRun(2, "Gravity line \"" + stream + "\"", run));
  }

  private void screw(Screw screw) {
    heading(1, "Screw conveyor");
    facts(
        screw,
        List.of(
            Column.of(screw.typed() ? "load" : "load from the pens", Kind.FLOW, Screw::loadM3ps),
            Column.of("filling of the trough", Kind.PERCENT, s -> s.loading().value()),
            Column.of("capacity at 15 %, for abrasive material", Kind.FLOW, Screw::capacityM3ps),
            Column.of("shaft power", Kind.POWER, Screw::powerW)));
  }

  private void gravityRun(int level, String title, GravityRun run) {
    heading(level, title);
    paragraph(
        "It carries "
            + show(Kind.FLOW, run.conduit().greatestFlowM3ps())
            + " at most without pressure or spilling, on a slope of "
            + show(Kind.PERCENT, run.conduit().slope())
            + ". "
            + run.window()
                .map(
                    window ->
                        "With the stream at its worst it works from "
                            + units()
                                .showSpan(Kind.FLOW, window.carriesFromM3ps(), window.holdsM3ps())
                            + ": below, sand settles or its margin is lost; above, it is over "
                            + show(Kind.PERCENT, GravityRun.DEEP)
                            + " full.")
                .orElse("With the stream at its worst no flow rate works."));
    if (!run.hours().isEmpty()) {
      tableOf(
          run.hours(),
          List.of(
              Column.text("time", GravityHour::when),
              Column.of("flow rate", Kind.FLOW, hour -> hour.flow().flowM3ps()),
              Column.of("depth over bore or walls", Kind.PERCENT, h -> h.flow().depthShare()),
              Column.of("Reynolds number", Kind.NUMBER, GravityHour::reynolds),
              Column.of("sand", Kind.PERCENT, GravityHour::sandFraction),
              Column.of("velocity", Kind.VELOCITY, hour -> hour.flow().velocityMps()),
              Column.text(
                  "deposition velocity",
                  h -> h.sand().map(s -> number(Kind.VELOCITY, s.limitMps())).orElse("-")),
              Column.text(
                  "required velocity",
                  h -> h.sand().map(s -> number(Kind.VELOCITY, s.requiredMps())).orElse("-")),
              Column.text(
                  "relations for sewers",
                  h -> h.sand().flatMap(s -> s.sewers()).map(this::spread).orElse("-")),
              Column.of("stress on the wall", Kind.STRESS, h -> h.cleansing().stressPa()),
              Column.of("needed with margin", Kind.STRESS, GravityHour::stressWithMarginPa),
              Column.text("", h -> h.severity().name())));
    }
  }

  private String spread(SandLoad.SewerLimit sewers) {
    return units().span(Kind.VELOCITY, sewers.leastMps(), sewers.governingMps());
  }

  private static OptionalDouble energyJ(Day day) {
    return day.energyJ() > 0 ? OptionalDouble.of(day.energyJ()) : OptionalDouble.empty();
  }

  private void days(List<Day> days) {
    if (days.isEmpty()) {
      return;
    }
    heading(1, "A day of pumping");
    Comparator<Day> longest = Comparator.comparingDouble(Day::runningS);
    Comparator<Day> costliest = Comparator.comparingDouble(Day::energyJ);
    List<Day> shown =
        Stream.of(
                days.get(0),
                Collections.min(days, longest),
                Collections.max(days, longest),
                Collections.max(days, costliest))
            .distinct()
            .toList();
    tableOf(
        shown,
        List.of(
            Column.text("state", Day::state),
            Column.of("running", Kind.HOURS, Day::runningS),
            Column.maybe("starts", Kind.STARTS, Day::startsPs),
            Column.maybe("energy", Kind.ENERGY, FeedSection::energyJ),
            Column.of("sand", Kind.MASS, Day::sandKg),
            Column.maybe("energy per sand", Kind.SPECIFIC_ENERGY, Day::energyPerSandJpKg)));
    paragraph(
        "Each state is taken to last all day."
            + (shown.size() < days.size()
                ? " Shown are the first state, that of the shortest and the longest day, and that"
                    + " of the most energy."
                : "")
            + " Starts are the most frequent, at an inflow of half"
            + " the flow rate.");
  }
}
