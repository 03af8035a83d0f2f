package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.report.block.Block;
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
    List<List<String>> rows = new ArrayList<>();
    for (GravityHour hour : run.hours()) {
      Optional<GravitySand> sand = hour.sand();
      rows.add(
          List.of(
              number(Kind.FLOW, hour.flow().flowM3ps()),
              number(Kind.PERCENT, hour.flow().wetted().depthShare()),
              number(Kind.NUMBER, hour.reynolds()),
              number(Kind.PERCENT, hour.sandFraction()),
              number(Kind.VELOCITY, hour.flow().velocityMps()),
              sand.map(s -> number(Kind.VELOCITY, s.limitMps())).orElse("-"),
              sand.map(s -> number(Kind.VELOCITY, s.requiredMps())).orElse("-"),
              sand.map(s -> spread(s.sewers())).orElse("-"),
              number(Kind.STRESS, hour.cleansing().stressPa()),
              number(Kind.STRESS, hour.stressWithMarginPa())));
    }
    if (!rows.isEmpty()) {
      table(
          List.of(
              head("flow rate", Kind.FLOW),
              "depth over bore [%]",
              "Reynolds number",
              "sand [%]",
              head("velocity", Kind.VELOCITY),
              head("deposition velocity", Kind.VELOCITY),
              head("required velocity", Kind.VELOCITY),
              head("relations for sewers", Kind.VELOCITY),
              head("stress on the wall", Kind.STRESS),
              head("needed with margin", Kind.STRESS)),
          rows);
    }
  }

  private String spread(SandLoad.SewerLimit sewers) {
    return number(Kind.VELOCITY, sewers.leastMps())
        + " to "
        + number(Kind.VELOCITY, sewers.governingMps());
  }
}
