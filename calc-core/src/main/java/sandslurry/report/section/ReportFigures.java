package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.plant.Figure;
import sandslurry.report.figure.Column;
import sandslurry.report.figure.ReportFigure;
import sandslurry.separation.lane.LaneResult;
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
    assessment
        .lines()
        .forEach((name, line) -> of(line).forEach(figure -> all.figures.add(figure.of(name))));
    assessment.line().ifPresent(line -> all.line(assessment, line));
    assessment
        .pump()
        .flatMap(PumpResult::governing)
        .ifPresent(duty -> all.add(duty, PumpSection.DUTIES, "pump", "duty"));
    all.service(assessment.service());
    assessment.lane().ifPresent(all::lane);
    assessment.plant().ifPresent(all::plant);
    return List.copyOf(all.figures);
  }

  private <T> void add(T thing, List<Column<T>> columns, String element, String at) {
    figures.addAll(Column.figures(thing, columns, element, at));
  }

  private void add(String id, String label, String element, String at, Kind<?> kind, double si) {
    figures.add(new ReportFigure(id, label, element, at, kind, si, si, si));
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
      add(state, MaterialSection.FLOWS, LINE, state.flowCase().words());
    }
    for (LineSection.RunAt run : LineSection.RunAt.all(line, runs)) {
      add(run, LineSection.RunAt.COLUMNS, run.name(), run.at());
      add(run, LineSection.RunAt.PRESSURES, run.name(), run.at());
    }
  }

  private void service(ServiceResult service) {
    for (StateResult state : service.states()) {
      add(state, StatesSection.LINE, LINE, state.name());
      add(state, StatesSection.RUN, state.point().map(p -> p.run()).orElse(LINE), state.name());
      add(state, StatesSection.PUMPS, "pump", state.name());
    }
    for (SurgeResult surge : service.surges()) {
      add(surge, SurgeSection.RUNS, surge.run(), "");
    }
    service.stop().ifPresent(this::stop);
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
              accounts.year().ifPresent(this::year);
            });
    plant
        .profile()
        .ifPresent(
            profile ->
                profile
                    .falls()
                    .forEach(fall -> add(fall, ProfileSection.FALLS, fall.stream(), "")));
    plant.units().forEach((unit, figures) -> figures.forEach(f -> plantFigure(unit, f)));
  }

  private void year(Year year) {
    year.months()
        .forEach(one -> add(one, PlantAccountsSection.MONTHS, "plant", one.month().name()));
    year.storages()
        .forEach(
            (name, course) ->
                course
                    .months()
                    .forEach(one -> add(one, PlantAccountsSection.COURSE, name, one.name())));
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
