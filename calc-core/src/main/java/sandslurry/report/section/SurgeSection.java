package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of the surge of a stop. */
final class SurgeSection extends SectionWriter {
  private SurgeSection(UnitSystem units) {
    super(units);
  }

  static List<Block> of(UnitSystem units, List<SurgeResult> surges) {
    SurgeSection section = new SurgeSection(units);
    section.surges(surges);
    return section.blocks();
  }

  private void surges(List<SurgeResult> surges) {
    if (surges.isEmpty()) {
      return;
    }
    heading(1, "Water hammer");
    List<List<String>> rows = new ArrayList<>();
    for (SurgeResult surge : surges) {
      rows.add(
          List.of(
              surge.run(),
              number(Kind.VELOCITY, surge.velocityMps()),
              number(Kind.VELOCITY, surge.waveMps()),
              number(Kind.PRESSURE, surge.surgePa()),
              surge.slow().map(slow -> number(Kind.PRESSURE, slow.surgePa())).orElse("-"),
              number(Kind.PRESSURE, surge.workingPa()),
              number(Kind.PRESSURE, surge.workingPa() + surge.judgedPa()),
              number(Kind.PRESSURE, surge.ratingPa()),
              number(Kind.PRESSURE, surge.lowest().minimumPa())
                  + (surge.lowest().parts() ? ", column separation" : "")));
    }
    table(
        List.of(
            "run",
            head("velocity", Kind.VELOCITY),
            head("wave speed", Kind.VELOCITY),
            head("rise, sudden stop", Kind.PRESSURE),
            "rise, stop as given",
            "working pressure",
            "maximum",
            "pressure rating",
            "minimum"),
        rows);
    paragraph(
        "By Joukowsky, for a stop faster than the wave returns, in liquid without gas, with the"
            + " short-term modulus of the pipe. It bounds the rise from a closing valve or a plug."
            + " Column separation and pockets of air can exceed it. A stop in a given time is taken"
            + " as even (Michaud). The minimum is at an end of the run; no liquid goes below its"
            + " vapour pressure: there the column separates. This is no surge analysis.");
  }
}
