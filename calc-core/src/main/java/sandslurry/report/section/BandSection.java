package sandslurry.report.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.station.PumpResult;
import sandslurry.material.liquid.Carrier;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.units.Kind;

/** The results that depend on how thick the carrier is, with a thinner and a thicker one. */
record BandSection(Assessment assessment, Page page) implements SectionWriter {

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
    assessment.line().ifPresent(line -> line.states().forEach(s -> rows.addAll(rows(s, all))));
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

  private List<List<String>> rows(LineState state, List<Assessment> all) {
    List<List<String>> rows = new ArrayList<>();
    FlowCase at = state.flowCase();
    for (int i = 0; i < state.runs().size(); i++) {
      int run = i;
      String of =
          assessment.design().route().orElseThrow().runs().get(i).name() + ", " + at.words();
      // The head of the line says the friction of its only run.
      if (state.runs().size() > 1) {
        rows.add(
            bandRow(
                head("friction, " + of, Kind.PRESSURE),
                all,
                a -> runAt(a, at, run).map(r -> number(Kind.PRESSURE, r.frictionPa()))));
      }
      rows.add(
          bandRow(
              state.runs().size() > 1
                  ? "sand, " + of
                  : "sand and total dynamic head ["
                      + Kind.HEAD.symbol(units())
                      + "], "
                      + at.words(),
              all,
              a ->
                  runAt(a, at, run)
                      .map(r -> sand(r) + (state.runs().size() > 1 ? "" : ", " + head(a, at)))));
    }
    if (state.runs().size() > 1) {
      rows.add(
          bandRow(
              head("total dynamic head, " + at.words(), Kind.HEAD),
              all,
              a -> Optional.of(head(a, at))));
    }
    return rows;
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
