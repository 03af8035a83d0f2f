package sandslurry.report.section;

import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** What the report says of the surge of a stop. */
record SurgeSection(List<SurgeResult> surges, Page page) implements SectionWriter {
  /** What is shown of each run. */
  static final List<Column<SurgeResult>> RUNS =
      List.of(
          Column.text("run", SurgeResult::run),
          Column.of("velocity", Kind.VELOCITY, SurgeResult::velocityMps),
          Column.of("wave speed", Kind.VELOCITY, SurgeResult::waveMps, "wave-speed"),
          Column.of("rise, sudden stop", Kind.PRESSURE, SurgeResult::surgePa, "sudden-stop-rise"),
          Column.maybe("rise, stop as given", Kind.PRESSURE, SurgeSection::slowPa),
          Column.of("rise judged", Kind.PRESSURE, SurgeResult::judgedPa, "water-hammer-rise"),
          Column.of("working pressure", Kind.PRESSURE, SurgeResult::workingPa),
          Column.of("maximum", Kind.PRESSURE, s -> s.workingPa() + s.judgedPa()),
          Column.maybe("pressure rating", Kind.PRESSURE, SurgeResult::ratingPa),
          Column.of("minimum", Kind.PRESSURE, s -> s.lowest().minimumPa()),
          Column.text("", s -> s.lowest().parts() ? "column separates" : ""));

  void write() {
    if (surges.isEmpty()) {
      return;
    }
    heading(1, "Water hammer");
    alikeOf(surges, RUNS);
    paragraph(
        "By Joukowsky, for a stop faster than the wave returns, in liquid without gas, with the"
            + " short-term modulus of the pipe. It bounds the rise from a closing valve or a plug."
            + " Column separation and pockets of air can exceed it. A stop in a given time is taken"
            + " as even (Michaud). The minimum is at an end of the run. This is no surge"
            + " analysis.");
  }

  private static OptionalDouble slowPa(SurgeResult surge) {
    return surge.slow().stream().mapToDouble(slow -> slow.surgePa()).findFirst();
  }
}
