package sandslurry.report.section;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.PumpResult.Duty;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;

/** The pump on its line. */
record PumpSection(Assessment assessment, Page page) implements SectionWriter {
  /** What is shown of each duty point. */
  static final List<Column<Duty>> DUTIES =
      List.of(
          Column.of("flow rate", Kind.FLOW, Duty::flowM3ps, "duty-flow-rate"),
          Column.of("head", Kind.HEAD, Duty::headM, "duty-head"),
          Column.of("pressure", Kind.PRESSURE, Duty::pressurePa, "duty-pressure"),
          Column.of("efficiency", Kind.PERCENT, Duty::efficiency, "efficiency"),
          Column.of("shaft power", Kind.POWER, Duty::shaftW, "shaft-power"),
          Column.of("motor input power", Kind.POWER, Duty::inputW, "input-power"),
          Column.maybe(
              "energy per sand", Kind.SPECIFIC_ENERGY, Duty::sandEnergyJpKg, "energy-per-sand"),
          Column.text(
              "duty", duty -> duty.meeting().words() + (duty.overBed() ? ", over a bed" : "")));

  void write() {
    assessment.pump().ifPresent(this::pump);
  }

  private void pump(PumpResult pump) {
    heading(1, "Pump");
    if (pump.duties().isEmpty()) {
      paragraph("There is no duty point: " + pump.absence().orElse("no flow is stable") + ".");
    } else {
      tableOf(pump.duties(), DUTIES);
    }
    if (!pump.deratings().isEmpty()) {
      paragraph(
          "Head ratio for solids: "
              + pump.deratings().stream()
                  .map(
                      m ->
                          m.model().name()
                              + " "
                              + number(Kind.NUMBER, m.estimate().value())
                              + (m.estimate().inRange() ? "" : " (outside its range)"))
                  .collect(Collectors.joining("; "))
              + ". Used: "
              + pump.deratedBy().map(by -> by.about().nameWithCaveat() + ", ").orElse("")
              + "head ratio "
              + number(Kind.NUMBER, pump.headRatio())
              + ", efficiency ratio "
              + number(Kind.NUMBER, pump.efficiencyRatio())
              + ". Heads are of slurry. "
              + blocked(pump));
    }
    if (pump.viscous().stream().anyMatch(v -> !v.correction().none())) {
      viscous(pump);
    }
    if (pump.deratings().isEmpty()) {
      paragraph(blocked(pump));
    }
  }

  private String blocked(PumpResult pump) {
    return "Pressure at the start of a blocked line: "
        + show(Kind.PRESSURE, pump.shutOffPa())
        + ".";
  }

  private void viscous(PumpResult pump) {
    tableOf(
        pump.viscous(),
        List.of(
            Column.text("viscosity of the liquid", viscous -> viscous.which().words()),
            Column.of("value", Kind.VISCOSITY, PumpResult.Viscous::viscosityPaS),
            Column.of("B", Kind.NUMBER, viscous -> viscous.correction().b()),
            Column.of(
                "head and flow at best", Kind.NUMBER, viscous -> viscous.correction().flowRatio()),
            Column.of("efficiency", Kind.NUMBER, viscous -> viscous.correction().efficiencyRatio()),
            Column.text(
                "",
                viscous ->
                    (viscous.believed() ? "used" : "")
                        + (viscous.correction().excesses().isEmpty()
                            ? ""
                            : " (outside its range)"))));
    paragraph(
        "Ratios to water by ANSI/HI 9.6.7, beside those for sand. That standard is for Newtonian"
            + " liquids. For others no rule is accepted, and the highest viscosity is used. The"
            + " ratios multiply those for sand, which is an assumption.");
  }
}
