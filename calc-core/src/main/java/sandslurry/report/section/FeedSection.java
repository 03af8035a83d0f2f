package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.report.block.Block;
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
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of("greatest flow rate without pressure", units.show(Kind.FLOW, run.greatestM3ps())));
    run.flow()
        .ifPresent(
            flow -> {
              rows.add(
                  List.of("depth over bore", units.show(Kind.PERCENT, flow.wetted().depthShare())));
              rows.add(List.of("velocity", units.show(Kind.VELOCITY, flow.velocityMps())));
              rows.add(List.of("Reynolds number", units.show(Kind.NUMBER, run.reynolds())));
            });
    run.cleansing()
        .ifPresent(
            c -> {
              rows.add(List.of("tractive stress", units.show(Kind.STRESS, c.stressPa())));
              rows.add(
                  List.of("tractive stress needed", units.show(Kind.STRESS, c.neededStressPa())));
            });
    table(List.of("what", "value"), rows);
  }
}
