package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.DutyRow;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What the report says of the states of the line, and of the duty by every correction. */
record StatesSection(ServiceResult result, Page page) implements SectionWriter {
  /** Velocities of the closest run. */
  static final List<Column<StateResult>> RUN =
      List.of(
          at("velocity", Kind.VELOCITY, p -> p.worst().velocityMps(), "velocity"),
          maybe(
              "deposition velocity",
              Kind.VELOCITY,
              p -> p.worst().limitMps(),
              "deposition-velocity"),
          maybe(
              "required velocity", Kind.VELOCITY, p -> p.worst().toPassMps(), "required-velocity"));

  /** What all pumps do. */
  static final List<Column<StateResult>> PUMPS =
      List.of(
          maybe("shaft power", Kind.POWER, p -> p.power().shaftW(), "shaft-power"),
          maybe("motor input power", Kind.POWER, p -> p.power().inputW(), "input-power"));

  /** What the whole line does. */
  static final List<Column<StateResult>> LINE =
      List.of(
          at("flow rate", Kind.FLOW, Point::flowM3ps, "flow-rate"),
          at("head", Kind.HEAD, Point::headM, "head"),
          at("greatest pressure", Kind.PRESSURE, Point::pressurePa, "greatest-pressure"));

  void write() {
    states();
    dutyBand();
  }

  private static Column<StateResult> at(
      String label, Kind<?> kind, ToDoubleFunction<Point> si, String id) {
    return maybe(label, kind, point -> OptionalDouble.of(si.applyAsDouble(point)), id);
  }

  private static Column<StateResult> maybe(
      String label, Kind<?> kind, Function<Point, OptionalDouble> si, String id) {
    return Column.maybe(
        label, kind, state -> state.point().map(si).orElse(OptionalDouble.empty()), id);
  }

  private void states() {
    if (result.states().stream().noneMatch(StateResult::named)) {
      return;
    }
    heading(1, "States");
    List<Column<StateResult>> columns = new ArrayList<>();
    columns.add(Column.text("state", StateResult::name));
    columns.addAll(LINE);
    columns.addAll(RUN);
    columns.addAll(PUMPS);
    columns.add(Column.text("wear", state -> state.point().map(p -> wear(p.wear())).orElse("-")));
    columns.add(Column.text("verdict", state -> state.severity().name()));
    // A state without a flow rate is said below the table.
    tableOf(
        result.states().stream()
            .filter(state -> state.point().isPresent() || state.reasons().isEmpty())
            .toList(),
        columns);
    paragraph(
        "Velocities are those of the closest run. A dash under deposition velocity means no sand or"
            + " no turbulent flow; one under motor input means a given flow rate. Power is that of"
            + " all motors. Wear is relative to the design flow rate, to the power 2 to 3.5"
            + " (Wiedenroth 1984). \"Held by control\" is a given flow rate, whatever the pump does"
            + " by itself. Each state changes one thing of the design. "
            + result
                .governing()
                .map(g -> "The governing state is: " + g.name() + " (" + g.severity() + ").")
                .orElse(""));
    for (StateResult state : result.states()) {
      // The findings say what is amiss in the governing state.
      if (!state.reasons().isEmpty() && result.governing().filter(state::equals).isEmpty()) {
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
    heading(1, "Duty point by the deratings for sand and viscosity");
    DutyRow least = result.leastDuty().orElseThrow();
    Optional<DutyRow> most =
        result.dutyBand().stream()
            .max(Comparator.comparingDouble(row -> row.flowM3ps().orElse(-1)));
    List<DutyRow> ends =
        result.dutyBand().stream()
            .filter(row -> row == least || row.believed() || row == most.orElseThrow())
            .toList();
    tableOf(
        ends,
        List.of(
            Column.text("sand", row -> row.solids().orElse("-")),
            Column.text(
                "liquid",
                row ->
                    row.viscousRatio() == 1 && row.viscousEfficiencyRatio() == 1
                        ? "as water"
                        : row.viscosity().map(v -> v.words()).orElse("-")),
            Column.of("head", Kind.NUMBER, row -> row.headRatio() * row.viscousRatio()),
            Column.maybe("flow rate", Kind.FLOW, DutyRow::flowM3ps),
            Column.maybe("velocity", Kind.VELOCITY, DutyRow::velocityMps),
            Column.maybe("required", Kind.VELOCITY, DutyRow::toPassMps),
            Column.text("verdict", row -> row.severity().name()),
            Column.text(
                "", row -> (row.believed() ? "used" : "") + (row == least ? " least" : ""))));
    paragraph(
        "The pumps as designed, with each of "
            + result.dutyBand().size()
            + " deratings in turn: the least, the one used and the greatest flow rate. Head is the"
            + " ratio to clear water of the first pump at its BEP. Velocity is that of the closest"
            + " run."
            + (result.states().stream().anyMatch(s -> s.name().equals(ServiceResult.LEAST_STATE))
                ? " The least is one of the states above."
                : ""));
  }

  private static String wear(WearIndex wear) {
    return UnitSystem.span(
        String.format(Locale.ROOT, "%.2f", wear.low()),
        String.format(Locale.ROOT, "%.2f", wear.high()));
  }
}
