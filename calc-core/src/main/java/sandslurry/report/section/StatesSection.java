package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sandslurry.assessment.ServiceResult;
import sandslurry.assessment.ServiceResult.DutyRow;
import sandslurry.assessment.StateResult;
import sandslurry.assessment.StateResult.Point;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of the states of the line, and of the duty by every correction. */
final class StatesSection extends SectionWriter {
  private final ServiceResult result;

  private StatesSection(UnitSystem units, ServiceResult result) {
    super(units);
    this.result = result;
  }

  static List<Block> of(UnitSystem units, ServiceResult result) {
    StatesSection section = new StatesSection(units, result);
    section.states();
    section.dutyBand();
    return section.blocks();
  }

  private void states() {
    if (result.states().stream().noneMatch(StateResult::asked)) {
      return;
    }
    heading(1, "States");
    List<List<String>> rows = new ArrayList<>();
    for (StateResult state : result.states()) {
      if (state.point().isEmpty()) {
        rows.add(List.of(state.name(), "-", "-", "-", "-", "-", "-", "-", state.severity().name()));
        continue;
      }
      Point point = state.point().get();
      rows.add(
          List.of(
              state.name(),
              number(Kind.FLOW, point.flowM3ps()),
              number(Kind.VELOCITY, point.velocityMps()),
              number(Kind.VELOCITY, point.limitMps()),
              number(Kind.VELOCITY, point.toPassMps()),
              number(Kind.PRESSURE, point.pressurePa()),
              number(Kind.POWER, point.inputW()),
              wear(point.wear()),
              state.severity().name()));
    }
    table(
        List.of(
            "state",
            head("flow", Kind.FLOW),
            head("velocity", Kind.VELOCITY),
            "limit",
            "to pass",
            head("pressure", Kind.PRESSURE),
            head("drawn", Kind.POWER),
            "wear",
            "verdict"),
        rows);
    paragraph(
        "Velocity, limit and velocity to pass are those of the run that stands worst in that state;"
            + " a dash under limit means that there is no sand or that the flow is not turbulent,"
            + " one under drawn that the flow is given and no pump is asked. Pressure is the"
            + " greatest in the line, power that of all drives, wear relative to the design flow as"
            + " flow to the power 2 to 3.5. \"Held by control\" means that the flow is given,"
            + " whatever the pump drives by itself. Each state changes one thing of the design"
            + " unless it says otherwise. "
            + result
                .governing()
                .map(g -> "The governing state is: " + g.name() + " (" + g.severity() + ").")
                .orElse(""));
    for (StateResult state : result.states()) {
      if (!state.reasons().isEmpty()) {
        add(
            new Block.Marked(
                state.severity().name(),
                List.of(state.name() + ": " + String.join("; ", state.reasons()) + ".")));
      }
    }
  }

  private void dutyBand() {
    if (result.dutyBand().isEmpty()) {
      return;
    }
    heading(1, "Duty by every correction for sand and liquid");
    DutyRow least = result.leastDuty().orElseThrow();
    List<List<String>> rows = new ArrayList<>();
    for (DutyRow row : result.dutyBand()) {
      rows.add(
          List.of(
              row.solids().orElse("-"),
              row.viscousRatio() == 1 && row.viscousEfficiencyRatio() == 1
                  ? "as water"
                  : row.viscosity().map(v -> v.words()).orElse("-"),
              number(Kind.NUMBER, row.headRatio() * row.viscousRatio()),
              number(Kind.FLOW, row.flowM3ps()),
              number(Kind.VELOCITY, row.velocityMps()),
              number(Kind.VELOCITY, row.toPassMps()),
              row.severity().name(),
              (row.believed() ? "used" : "") + (row == least ? " least" : "")));
    }
    table(
        List.of(
            "sand",
            "liquid",
            "head",
            head("flow", Kind.FLOW),
            head("velocity", Kind.VELOCITY),
            "to pass",
            "sand stands",
            ""),
        rows);
    paragraph(
        "The pumps as designed, their curve corrected by every published way that can be asked:"
            + " head is the ratio of the first pump to clear water at its best point, velocity that"
            + " of the run that stands worst."
            + (result.states().stream().anyMatch(s -> s.name().equals(ServiceResult.LEAST_STATE))
                ? " The least is one of the states above."
                : ""));
  }

  static String wear(WearIndex wear) {
    String low = String.format(Locale.ROOT, "%.2f", wear.low());
    String high = String.format(Locale.ROOT, "%.2f", wear.high());
    return low.equals(high) ? low : low + " to " + high;
  }
}
