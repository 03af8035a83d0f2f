package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.station.PumpResult;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;

/** The pump on its line. */
final class PumpSection extends SectionWriter {
  private final Assessment assessment;

  private PumpSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
  }

  static List<Block> of(Assessment assessment) {
    PumpSection section = new PumpSection(assessment);
    assessment.pump().ifPresent(section::pump);
    return section.blocks();
  }

  private void pump(PumpResult pump) {
    heading(1, "Pump");
    if (pump.duties().isEmpty()) {
      paragraph("There is no duty point: " + pump.absence().orElse("no flow is stable") + ".");
    } else {
      List<List<String>> rows = new ArrayList<>();
      for (PumpResult.Duty duty : pump.duties()) {
        rows.add(
            List.of(
                number(Kind.FLOW, duty.flow()),
                number(Kind.HEAD, duty.head()),
                number(Kind.PRESSURE, duty.pressure()),
                number(Kind.PERCENT, duty.efficiency()),
                number(Kind.POWER, duty.shaftPower()),
                number(Kind.POWER, duty.inputPower()),
                duty.sandEnergy().map(e -> number(Kind.SPECIFIC_ENERGY, e)).orElse("-"),
                duty.meeting().words() + (duty.overBed() ? ", over a bed" : "")));
      }
      add(
          new Block.Table(
              List.of(
                  head("flow", Kind.FLOW),
                  head("head", Kind.HEAD),
                  head("pressure", Kind.PRESSURE),
                  "efficiency [%]",
                  head("shaft", Kind.POWER),
                  head("motor input", Kind.POWER),
                  head("energy per sand", Kind.SPECIFIC_ENERGY),
                  "duty"),
              rows));
    }
    if (!pump.deratings().isEmpty()) {
      paragraph(
          "Head ratio for solids: "
              + pump.deratings().stream()
                  .map(
                      m ->
                          m.model().name()
                              + " "
                              + units.number(Kind.NUMBER, m.estimate().value())
                              + (m.estimate().inRange() ? "" : " (outside its range)"))
                  .collect(Collectors.joining("; "))
              + ". Used: head ratio "
              + number(Kind.NUMBER, pump.headRatio())
              + ", efficiency ratio "
              + number(Kind.NUMBER, pump.efficiencyRatio())
              + ". Heads are in metres or feet of slurry.");
    }
    if (pump.viscous().stream().anyMatch(v -> !v.correction().none())) {
      viscous(pump);
    }
    paragraph(
        "Pressure at the start of a blocked line: "
            + show(Kind.PRESSURE, pump.shutOffPressure())
            + ".");
  }

  private void viscous(PumpResult pump) {
    List<List<String>> rows = new ArrayList<>();
    for (PumpResult.Viscous viscous : pump.viscous()) {
      rows.add(
          List.of(
              viscous.which().words(),
              units.number(Kind.VISCOSITY, viscous.viscosityPaS()),
              units.number(Kind.NUMBER, viscous.correction().b()),
              units.number(Kind.NUMBER, viscous.correction().flowRatio()),
              units.number(Kind.NUMBER, viscous.correction().efficiencyRatio()),
              (viscous.believed() ? "used" : "")
                  + (viscous.correction().excesses().isEmpty() ? "" : " (outside its range)")));
    }
    add(
        new Block.Table(
            List.of(
                "viscosity of the liquid",
                head("value", Kind.VISCOSITY),
                "B",
                "head and flow at best",
                "efficiency",
                ""),
            rows));
    paragraph(
        "Ratios to water by ANSI/HI 9.6.7, beside those for sand. That standard is for Newtonian"
            + " liquids. For others no rule is accepted, and the highest viscosity is used. The"
            + " ratios multiply those for sand, which is an assumption.");
  }
}
