package sandslurry.report.section;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of each pump in each state, and of its suction. */
final class PumpsInStatesSection extends SectionWriter {
  private PumpsInStatesSection(UnitSystem units) {
    super(units);
  }

  static List<Block> of(Design design, ServiceResult result) {
    PumpsInStatesSection section = new PumpsInStatesSection(design.units());
    List<PumpInState> pumps = result.pumps();
    boolean told =
        design.service().suction().isPresent()
            || result.states().stream().anyMatch(StateResult::asked)
            || pumps.stream().anyMatch(at -> at.point().pumps().size() > 1);
    if (told && !pumps.isEmpty()) {
      section.pumps(pumps);
    }
    return section.blocks();
  }

  private void pumps(List<PumpInState> pumps) {
    List<List<String>> rows = new ArrayList<>();
    List<List<String>> suctions = new ArrayList<>();
    for (PumpInState at : pumps) {
      PumpPoint pump = at.pump();
      rows.add(
          List.of(
              at.state().name(),
              pump.name(),
              number(Kind.FLOW, pump.flowM3ps()),
              number(Kind.HEAD, pump.headM()),
              number(Kind.PERCENT, pump.efficiency()),
              number(Kind.POWER, pump.shaftW()),
              pump.region()
                  .map(r -> number(Kind.PERCENT, pump.flowM3ps() / r.bestFlowM3ps()))
                  .orElse("-"),
              pump.flowM3ps() == 0
                  ? "shut"
                  : pump.region().map(r -> r.place(pump.flowM3ps()).words()).orElse("-")));
      pump.suction().ifPresent(s -> suctions.add(suction(at, s)));
    }
    heading(1, "Each pump in each state");
    table(
        List.of(
            "state",
            "pump",
            head("flow", Kind.FLOW),
            head("head", Kind.HEAD),
            "efficiency [%]",
            head("shaft", Kind.POWER),
            "of BEP flow [%]",
            "region"),
        rows);
    if (!suctions.isEmpty()) {
      heading(1, "Suction");
      table(
          List.of(
              "state",
              "pump",
              head("static suction head", Kind.HEAD),
              "friction",
              "acceleration",
              "NPSH available",
              "required",
              head("velocity", Kind.VELOCITY),
              "required velocity",
              "sand"),
          suctions);
      paragraph(
          "Heads are in metres or feet of slurry. NPSH required is the maker's. The design needs"
              + " the greater of 1.5 times that and that plus "
              + units.show(Kind.HEAD, 1)
              + ", because of sand and gas (from memory, unverified), or more at high suction"
              + " energy."
              + suctionSpeeds(pumps));
    }
  }

  private String suctionSpeeds(List<PumpInState> pumps) {
    Map<String, String> speeds = new LinkedHashMap<>();
    for (PumpInState at : pumps) {
      at.pump()
          .suction()
          .flatMap(SuctionPoint::inlet)
          .ifPresent(
              inlet ->
                  speeds.putIfAbsent(
                      at.pump().name(),
                      at.pump().name()
                          + " "
                          + units.show(Kind.NUMBER, inlet.specificSpeed())
                          + ", suction energy "
                          + inlet.energy().grade().words()));
    }
    return speeds.isEmpty()
        ? ""
        : " Suction specific speed at the best point, metric: "
            + String.join("; ", speeds.values())
            + ".";
  }

  private List<String> suction(PumpInState at, SuctionPoint suction) {
    return List.of(
        at.state().name(),
        at.pump().name(),
        number(Kind.HEAD, suction.floodM()),
        number(Kind.HEAD, suction.lossM()),
        number(Kind.HEAD, suction.accelerationM()),
        number(Kind.HEAD, suction.availableM()),
        number(Kind.HEAD, suction.requiredM()),
        number(Kind.VELOCITY, suction.velocityMps()),
        number(Kind.VELOCITY, suction.toPassMps()),
        suction.severity().name());
  }
}
