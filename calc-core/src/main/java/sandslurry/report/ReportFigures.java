package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.plant.Figure;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.separation.lane.LaneResult;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.units.Kind;

/** The numbers of an assessment, for JSON and CSV. */
public final class ReportFigures {
  private static final String LINE = "line";

  private final List<ReportFigure> figures = new ArrayList<>();

  private ReportFigures() {}

  /**
   * The numbers.
   *
   * @param assessment what came of a design
   * @return them, in the order of the report
   */
  public static List<ReportFigure> of(Assessment assessment) {
    ReportFigures all = new ReportFigures();
    assessment.line().ifPresent(line -> all.line(assessment, line));
    assessment.pump().flatMap(PumpResult::governing).ifPresent(all::duty);
    all.service(assessment.service());
    assessment.lane().ifPresent(all::lane);
    assessment.plant().ifPresent(all::plant);
    return List.copyOf(all.figures);
  }

  private void add(String id, String label, String element, String at, Kind<?> kind, double si) {
    figures.add(new ReportFigure(id, label, element, at, kind, si, si, si));
  }

  private <Q extends Quantity<Q>> void add(
      String id, String label, String element, String at, Kind<Q> kind, Quantity<Q> quantity) {
    add(id, label, element, at, kind, kind.measure().si(quantity));
  }

  private void line(Assessment assessment, LineResult line) {
    line.window()
        .carriesFromM3ps()
        .ifPresent(
            flow ->
                add(
                    "lowest-flow-rate",
                    "lowest flow rate that carries the sand with margin",
                    LINE,
                    "",
                    Kind.FLOW,
                    flow));
    List<RunSpec> runs = assessment.design().route().orElseThrow().runs();
    for (LineState state : line.states()) {
      String at = state.flowCase().words();
      add("flow-rate", "flow rate", LINE, at, Kind.FLOW, state.flow());
      add("sand-by-volume", "sand by volume", LINE, at, Kind.PERCENT, state.sandFraction());
      add("sand-rate", "sand moved", LINE, at, Kind.MASS_FLOW, state.sandRate());
      add(
          "slurry-density",
          "density of the slurry",
          LINE,
          at,
          Kind.DENSITY,
          state.mixtureDensity());
      add("total-dynamic-head", "total dynamic head", LINE, at, Kind.HEAD, state.systemHead());
      for (int i = 0; i < state.runs().size(); i++) {
        run(state.runs().get(i), runs.get(i).name(), at);
      }
    }
  }

  private void run(RunState run, String name, String at) {
    add("velocity", "actual velocity", name, at, Kind.VELOCITY, run.leastVelocity());
    Optional<DepositionJudgement> judged = run.deposition();
    judged.ifPresent(
        d -> {
          add("deposition-velocity", "deposition velocity", name, at, Kind.VELOCITY, d.limitMps());
          add(
              "required-velocity",
              "required velocity",
              name,
              at,
              Kind.VELOCITY,
              d.velocityToPassMps());
        });
    add("reynolds-number", "Reynolds number", name, at, Kind.NUMBER, run.reynolds());
    add("friction", "friction loss of the run", name, at, Kind.PRESSURE, run.friction());
    add("fittings", "loss in the fittings", name, at, Kind.PRESSURE, run.fittings());
    add("pressure-start", "pressure at the start", name, at, Kind.PRESSURE, run.startPressure());
    add("pressure-end", "pressure at the end", name, at, Kind.PRESSURE, run.endPressure());
  }

  private void duty(PumpResult.Duty duty) {
    add("duty-flow-rate", "flow rate at the duty point", "pump", "duty", Kind.FLOW, duty.flow());
    add("duty-head", "head at the duty point", "pump", "duty", Kind.HEAD, duty.head());
    add(
        "efficiency",
        "pump efficiency with solids",
        "pump",
        "duty",
        Kind.PERCENT,
        duty.efficiency());
    add("shaft-power", "shaft power", "pump", "duty", Kind.POWER, duty.shaftPower());
    add("input-power", "motor input power", "pump", "duty", Kind.POWER, duty.inputPower());
    duty.sandEnergy()
        .ifPresent(
            e ->
                add(
                    "energy-per-sand",
                    "energy per tonne of sand",
                    "pump",
                    "duty",
                    Kind.SPECIFIC_ENERGY,
                    e));
  }

  private void service(ServiceResult service) {
    for (StateResult state : service.states()) {
      state.point().ifPresent(point -> state(state.name(), point));
    }
    for (SurgeResult surge : service.surges()) {
      add(
          "water-hammer-rise",
          "water hammer rise",
          surge.run(),
          "",
          Kind.PRESSURE,
          surge.judgedPa());
      add("wave-speed", "wave speed", surge.run(), "", Kind.VELOCITY, surge.waveMps());
    }
    service.stop().ifPresent(this::stop);
  }

  private void state(String name, StateResult.Point point) {
    add("flow-rate", "flow rate", LINE, name, Kind.FLOW, point.flowM3ps());
    add("velocity", "actual velocity", point.run(), name, Kind.VELOCITY, point.velocityMps());
    point
        .toPassMps()
        .ifPresent(
            v ->
                add("required-velocity", "required velocity", point.run(), name, Kind.VELOCITY, v));
    add("head", "head of slurry", LINE, name, Kind.HEAD, point.headM());
    point.shaftW().ifPresent(w -> add("shaft-power", "shaft power", "pump", name, Kind.POWER, w));
  }

  private void stop(StopResult stop) {
    add("sand-in-line", "sand in the line", LINE, "stopped", Kind.MASS, stop.sandKg());
    // A plug that wedges beyond any pump has no greatest pressure.
    stop.mostPa()
        .ifPresentOrElse(
            most ->
                figures.add(
                    new ReportFigure(
                        "restart-pressure",
                        "pressure to restart the stopped line",
                        LINE,
                        "stopped",
                        Kind.PRESSURE,
                        stop.leastPa(),
                        stop.expectedPa(),
                        most)),
            () ->
                add(
                    "least-restart-pressure",
                    "least pressure to restart the stopped line",
                    LINE,
                    "stopped",
                    Kind.PRESSURE,
                    stop.leastPa()));
    add(
        "available-pressure",
        "pressure available",
        LINE,
        "stopped",
        Kind.PRESSURE,
        stop.availablePa());
    stop.flush()
        .ifPresent(
            flush -> {
              add("flush-flow-rate", "flush flow rate", LINE, "flush", Kind.FLOW, flush.flowM3ps());
              add("flush-volume", "flush volume", LINE, "flush", Kind.VOLUME, flush.volumeM3());
            });
  }

  private void lane(LaneResult lane) {
    figures.add(
        new ReportFigure(
            "sand-kept",
            "sand kept, average over one cleaning cycle",
            "lane",
            "",
            Kind.PERCENT,
            lane.cycle().cautious().meanRecovery(),
            lane.cycle().likely().meanRecovery(),
            lane.cycle().hopeful().meanRecovery()));
    add(
        "overflow-rate",
        "overflow rate",
        "lane",
        "",
        Kind.FALL,
        lane.basin().overflowVelocityMps());
    add("detention-time", "detention time", "lane", "", Kind.TIME, lane.residenceTimeS());
  }

  private void plant(PlantResult plant) {
    plant
        .accounts()
        .ifPresent(
            accounts -> {
              range("recovery", "sand recovered of the sand flushed", "plant", accounts.capture());
              range("liquor-solids", "total solids of the liquor", "plant", accounts.liquor());
              accounts
                  .groups()
                  .forEach((group, figures) -> figures.forEach(f -> plantFigure(group, f)));
            });
    plant.units().forEach((unit, figures) -> figures.forEach(f -> plantFigure(unit, f)));
  }

  private void range(String id, String label, String element, sandslurry.plant.Range range) {
    figures.add(
        new ReportFigure(
            id, label, element, "", Kind.PERCENT, range.low(), range.base(), range.high()));
  }

  private void plantFigure(String element, Figure figure) {
    figures.add(
        new ReportFigure(
            figure.what().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-"),
            figure.what(),
            element,
            "",
            figure.kind(),
            figure.range().low(),
            figure.range().base(),
            figure.range().high()));
  }
}
