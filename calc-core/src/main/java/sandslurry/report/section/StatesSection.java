package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
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
            "deposition velocity",
            "required",
            head("pressure", Kind.PRESSURE),
            head("motor input", Kind.POWER),
            "wear",
            "verdict"),
        rows);
    paragraph(
        "Velocities are those of the closest run in that state. A dash under deposition velocity"
            + " means no sand or no turbulent flow; one under motor input means a given flow rate."
            + " Pressure is the greatest in the line, power that of all motors. Wear is relative to"
            + " the design flow rate, to the power 2 to 3.5. \"Held by control\" is a given flow"
            + " rate, whatever the pump does by itself. Each state changes one thing of the design."
            + " "
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
    heading(1, "Duty point by every derating for sand and viscosity");
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
            "required",
            "verdict",
            ""),
        rows);
    paragraph(
        "The pumps as designed, with each derating in turn. Head is the ratio to clear water of the"
            + " first pump at its BEP. Velocity is that of the closest run."
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
