package sandslurry.report.section;

import java.util.List;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.report.block.Block;
import sandslurry.report.figure.Column;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of what feeds the pit: screw conveyor and gravity pipe. */
final class FeedSection extends SectionWriter {
  private FeedSection(UnitSystem units) {
    super(units);
  }

  static List<Block> of(UnitSystem units, ServiceResult result) {
    FeedSection section = new FeedSection(units);
    result.screw().ifPresent(section::screw);
    result.gravityRun().ifPresent(section::gravityRun);
    return section.blocks();
  }

  private void screw(Screw screw) {
    heading(1, "Screw conveyor");
    table(
        List.of("what", "value"),
        List.of(
            List.of(
                screw.typed() ? "load" : "load from the pens",
                units.show(Kind.FLOW, screw.loadM3ps())),
            List.of("filling of the trough", units.show(Kind.PERCENT, screw.loading().value())),
            List.of(
                "capacity at 15 %, for abrasive material",
                units.show(Kind.FLOW, screw.capacityM3ps())),
            List.of("shaft power", units.show(Kind.POWER, screw.powerW()))));
  }

  private void gravityRun(GravityRun run) {
    heading(1, "Gravity pipe");
    paragraph(
        "It carries "
            + units.show(Kind.FLOW, run.greatestM3ps())
            + " without pressure. Its sand is judged in the least hour and at the full flow rate.");
    if (!run.hours().isEmpty()) {
      tableOf(
          run.hours(),
          List.of(
              Column.of("flow rate", Kind.FLOW, hour -> hour.flow().flowM3ps()),
              Column.of("depth over bore", Kind.PERCENT, h -> h.flow().wetted().depthShare()),
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
                  "relations for sewers", h -> h.sand().map(s -> spread(s.sewers())).orElse("-")),
              Column.of("stress on the wall", Kind.STRESS, h -> h.cleansing().stressPa()),
              Column.of("needed with margin", Kind.STRESS, GravityHour::stressWithMarginPa)));
    }
  }

  private String spread(SandLoad.SewerLimit sewers) {
    return number(Kind.VELOCITY, sewers.leastMps())
        + " to "
        + number(Kind.VELOCITY, sewers.governingMps());
  }
}
