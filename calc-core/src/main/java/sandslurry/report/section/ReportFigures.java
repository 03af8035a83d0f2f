package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.report.figure.Column;
import sandslurry.report.figure.Column.Spread;
import sandslurry.report.figure.ReportFigure;
import sandslurry.units.Kind;

/** The numbers of an assessment, for JSON and CSV. */
public final class ReportFigures {
  private static final String LINE = "line";

  private static final List<Column<LineResult>> WINDOW =
      List.of(
          Column.maybe(
              "lowest flow rate that carries the sand with margin",
              Kind.FLOW,
              line -> line.window().carriesFromM3ps(),
              "lowest-flow-rate"));
  private static final List<Column<StopResult>> STOPPED =
      List.of(
          Column.of("sand in the line", Kind.MASS, stop -> stop.filling().sandKg(), "sand-in-line"),
          Column.spread(
              "pressure to restart the stopped line",
              Kind.PRESSURE,
              ReportFigures::restart,
              "restart-pressure"),
          // A plug that wedges beyond any pump has no greatest pressure.
          Column.maybe(
              "least pressure to restart the stopped line",
              Kind.PRESSURE,
              stop ->
                  stop.mostPa().isPresent()
                      ? OptionalDouble.empty()
                      : OptionalDouble.of(stop.leastPa()),
              "least-restart-pressure"),
          Column.of(
              "pressure available",
              Kind.PRESSURE,
              stop -> stop.pressures().availablePa(),
              "available-pressure"));
  private static final List<Column<FlushNeed>> FLUSH =
      List.of(
          Column.of("flush flow rate", Kind.FLOW, FlushNeed::flowM3ps, "flush-flow-rate"),
          Column.of("flush volume", Kind.VOLUME, FlushNeed::volumeM3, "flush-volume"));
  private static final List<Column<Accounts>> ACCOUNTS =
      List.of(
          Column.spread(
              "sand recovered of the sand flushed",
              Kind.PERCENT,
              accounts -> spread(accounts.capture()),
              "recovery"),
          Column.spread(
              "total solids of the liquor",
              Kind.PERCENT,
              accounts -> spread(accounts.liquor().solids()),
              "liquor-solids"));

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
    assessment.lane().ifPresent(lane -> all.add(lane, LaneSection.FIGURES, "lane", ""));
    assessment.plant().ifPresent(all::plant);
    return List.copyOf(all.figures);
  }

  private <T> void add(T thing, List<Column<T>> columns, String element, String at) {
    figures.addAll(Column.figures(thing, columns, element, at));
  }

  private static Optional<Spread> restart(StopResult stop) {
    return stop.mostPa().stream()
        .mapToObj(most -> new Spread(stop.leastPa(), stop.expectedPa(), most))
        .findFirst();
  }

  private static Optional<Spread> spread(Range range) {
    return Optional.of(new Spread(range.low(), range.base(), range.high()));
  }

  private void line(Assessment assessment, LineResult line) {
    add(line, WINDOW, LINE, "");
    List<RunSpec> runs = assessment.design().oneLine().route().runs();
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
      add(
          state,
          StatesSection.RUN,
          state.point().map(p -> p.worst().run()).orElse(LINE),
          state.name());
      add(state, StatesSection.PUMPS, "pump", state.name());
    }
    for (SurgeResult surge : service.surges()) {
      add(surge, SurgeSection.RUNS, surge.run(), "");
    }
    service.stop().ifPresent(stop -> add(stop, STOPPED, LINE, "stopped"));
    service.stop().flatMap(StopResult::flush).ifPresent(flush -> add(flush, FLUSH, LINE, "flush"));
  }

  private void plant(PlantResult plant) {
    plant
        .accounts()
        .ifPresent(
            accounts -> {
              add(accounts, ACCOUNTS, "plant", "");
              accounts
                  .figures()
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
