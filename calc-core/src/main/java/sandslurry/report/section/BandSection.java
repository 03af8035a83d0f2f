package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.station.PumpResult;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.material.liquid.Carrier;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.block.Told;
import sandslurry.units.Kind;

/** The results that depend on how thick the carrier is, with a thinner and a thicker one. */
record BandSection(Assessment assessment, Page page) implements SectionWriter {
  private static final String BETWEEN = " / ";

  void write() {
    // A table by solids is off by a factor; of numbers and readings the findings tell what matters.
    assessment
        .band()
        .filter(band -> band.scatter().source() == Carrier.Source.SOLIDS)
        .ifPresent(this::band);
  }

  /** The results that depend on how thick the carrier is, with a thinner and a thicker one. */
  private void band(Assessment.Band band) {
    heading(1, "Thinner and thicker liquid");
    paragraph(
        "The same design with the thinner and the thicker liquor of which the finding on the"
            + " carrier speaks:");
    List<Assessment> all = List.of(band.thinner(), assessment, band.thicker());
    List<List<String>> rows = new ArrayList<>();
    assessment.line().ifPresent(line -> rows.addAll(rows(line.states(), all)));
    if (assessment.line().isPresent()) {
      rows.add(
          bandRow(
              head("lowest flow rate that carries the sand", Kind.FLOW),
              all,
              a ->
                  a.line().stream()
                      .flatMapToDouble(l -> l.window().carriesFromM3ps().stream())
                      .mapToObj(q -> number(Kind.FLOW, q))
                      .findFirst()));
    }
    if (assessment.pump().isPresent()) {
      rows.add(
          bandRow(
              head("duty point", Kind.FLOW),
              all,
              a ->
                  a.pump()
                      .flatMap(PumpResult::governing)
                      .map(d -> number(Kind.FLOW, d.flowM3ps()))));
    }
    if (assessment.lane().isPresent()) {
      rows.add(
          bandRow(
              "sand kept by the lane, cautious to expected [%]",
              all,
              a ->
                  a.lane()
                      .map(
                          l ->
                              number(Kind.PERCENT, l.cycle().cautious().meanRecovery())
                                  + " to "
                                  + units()
                                      .number(Kind.PERCENT, l.cycle().likely().meanRecovery()))));
    }
    add(new Block.Table(List.of("result", "thinner", "as described", "thicker"), rows));
  }

  /** The flow rates stand beside each other. */
  private List<List<String>> rows(List<LineState> states, List<Assessment> all) {
    List<FlowCase> flows = states.stream().map(LineState::flowCase).toList();
    String at = flows.stream().map(FlowCase::words).collect(Collectors.joining(BETWEEN));
    List<List<String>> rows = new ArrayList<>();
    List<RunSpec> runs = assessment.design().oneLine().route().runs();
    for (int i = 0; i < runs.size(); i++) {
      int run = i;
      // The head of the line says the friction of its only run.
      if (runs.size() > 1) {
        rows.add(
            bandRow(
                head("friction, " + runs.get(i).name() + ", " + at, Kind.PRESSURE),
                all,
                a -> beside(flows, flow -> friction(a, flow, run))));
      }
      rows.add(
          bandRow("sand, " + runs.get(i).name(), all, a -> Optional.of(carried(a, flows, run))));
    }
    rows.add(
        bandRow(
            head("total dynamic head, " + at, Kind.HEAD),
            all,
            a -> beside(flows, flow -> head(a, flow))));
    return rows;
  }

  private static Optional<String> beside(List<FlowCase> flows, Function<FlowCase, String> value) {
    return Optional.of(flows.stream().map(value).collect(Collectors.joining(BETWEEN)));
  }

  private String friction(Assessment its, FlowCase flow, int run) {
    return runAt(its, flow, run).map(r -> number(Kind.PRESSURE, r.friction().pa())).orElse("-");
  }

  /** What becomes of the sand of a run, once where it is the same at every flow rate. */
  private static String carried(Assessment its, List<FlowCase> flows, int run) {
    Told told =
        Told.of(
            flows.stream().map(FlowCase::words).toList(),
            flows.stream()
                .map(flow -> List.of(runAt(its, flow, run).map(BandSection::sand).orElse("-")))
                .toList(),
            "");
    return String.join("; ", told.own().isEmpty() ? told.shared() : told.own(", "));
  }

  private static String sand(RunState run) {
    return run.severity() + ", " + run.carriage().map(c -> c.support().words()).orElse("no sand");
  }

  private String head(Assessment assessment, FlowCase at) {
    return assessment
        .line()
        .flatMap(l -> l.at(at))
        .map(s -> number(Kind.HEAD, s.systemHeadM()))
        .orElse("-");
  }

  private static Optional<RunState> runAt(Assessment assessment, FlowCase at, int run) {
    return assessment.line().flatMap(l -> l.at(at)).map(s -> s.runs().get(run));
  }

  private static List<String> bandRow(
      String what, List<Assessment> all, Function<Assessment, Optional<String>> value) {
    List<String> row = new ArrayList<>();
    row.add(what);
    all.forEach(a -> row.add(value.apply(a).orElse("-")));
    return row;
  }
}
