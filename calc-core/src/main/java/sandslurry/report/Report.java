package sandslurry.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.DilutionCurve;
import sandslurry.assessment.Finding;
import sandslurry.assessment.FlowCase;
import sandslurry.assessment.GradePoint;
import sandslurry.assessment.LineResult;
import sandslurry.assessment.LineState;
import sandslurry.assessment.ModelValue;
import sandslurry.assessment.PumpResult;
import sandslurry.assessment.RunState;
import sandslurry.assessment.SafetyCaution;
import sandslurry.assessment.SettlingResult;
import sandslurry.assessment.Severity;
import sandslurry.assessment.Step;
import sandslurry.correlation.Bound;
import sandslurry.design.Design;
import sandslurry.design.LaneSpec;
import sandslurry.design.RouteSpec;
import sandslurry.material.Gradation;
import sandslurry.material.RheogramFit;
import sandslurry.separation.CaughtSize;
import sandslurry.separation.LaneClass;
import sandslurry.separation.LaneResult;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.transport.DepositionJudgement;
import sandslurry.transport.DepositionJudgement.Entry;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The report of an Assessment, in the units of its design. */
public final class Report {
  /** Far outside their range some correlations give velocities of no meaning near zero. */
  private static final double NEGLIGIBLE_MPS = 1e-4;

  private final Assessment assessment;
  private final Design design;
  private final UnitSystem units;
  private final List<Block> blocks = new ArrayList<>();

  private Report(Assessment assessment) {
    this.assessment = assessment;
    this.design = assessment.design();
    this.units = design.units();
  }

  /**
   * Writes the report.
   *
   * @param assessment the assessment
   * @return the report as data
   */
  public static List<Block> of(Assessment assessment) {
    Report report = new Report(assessment);
    report.summary();
    report.inputs();
    assessment.fit().ifPresent(report::fit);
    report.settling();
    assessment.line().ifPresent(report::line);
    assessment.dilution().ifPresent(report::dilution);
    assessment.pump().ifPresent(report::pump);
    report.blocks.addAll(ServiceSection.of(assessment));
    assessment.lane().ifPresent(report::lane);
    assessment
        .plant()
        .ifPresent(
            plant ->
                report.blocks.addAll(
                    PlantSection.of(plant, report.design.plant().orElseThrow(), report.units)));
    assessment.band().ifPresent(report::band);
    report.safety();
    report.working();
    return List.copyOf(report.blocks);
  }

  /**
   * The part of the report that tells what the line meets in service: its states, each pump, stop
   * and restart, a day.
   *
   * @param assessment the assessment
   * @return that part as data; empty when there is nothing to tell
   */
  public static List<Block> service(Assessment assessment) {
    return List.copyOf(ServiceSection.of(assessment));
  }

  /**
   * The verdict in one line.
   *
   * @param assessment the assessment
   * @return the verdict with the gravest finding
   */
  public static String headline(Assessment assessment) {
    Severity verdict = assessment.verdict();
    if (verdict == Severity.PASS) {
      return "PASS: every criterion is met with its margin";
    }
    Finding gravest = assessment.findings().get(0);
    return verdict + ": " + gravest.element() + ": " + gravest.what();
  }

  private void heading(int level, String text) {
    blocks.add(new Block.Heading(level, text));
  }

  private void paragraph(String text) {
    blocks.add(new Block.Paragraph(text));
  }

  private <Q extends Quantity<Q>> String show(Kind<Q> kind, Quantity<Q> quantity) {
    return units.show(kind, quantity);
  }

  private <Q extends Quantity<Q>> String number(Kind<Q> kind, Quantity<Q> quantity) {
    return units.number(kind, kind.measure().si(quantity));
  }

  private String head(String text, Kind<?> kind) {
    String symbol = kind.symbol(units);
    return symbol.isEmpty() ? text : text + " [" + symbol + "]";
  }

  private void summary() {
    heading(1, design.title());
    blocks.add(
        new Block.Marked(
            assessment.verdict().name(),
            List.of(headline(assessment).substring(assessment.verdict().name().length() + 2))));
    paragraph(
        "Screening estimate of sand-laden manure hydraulics. A licensed practitioner must review"
            + " the design; local codes come first.");
    heading(1, "Findings");
    for (Finding finding : assessment.findings()) {
      List<String> lines = new ArrayList<>();
      lines.add("[" + finding.topic().word() + "] " + finding.element() + ": " + finding.what());
      if (!finding.why().isEmpty()) {
        lines.add("Why: " + finding.why());
      }
      if (!finding.cure().isEmpty()) {
        lines.add("Cure: " + finding.cure());
      }
      blocks.add(new Block.Marked(finding.severity().name(), lines));
    }
  }

  private void inputs() {
    heading(1, "Sand, carrier and mixture");
    Gradation gradation = design.sand().gradation();
    List<List<String>> rows = new ArrayList<>();
    rows.add(row("sand", design.sand().source()));
    rows.add(row("d50 of the whole sand", units.show(Kind.GRAIN, gradation.d50M())));
    rows.add(row("d85 of the whole sand", units.show(Kind.GRAIN, gradation.d85M())));
    rows.add(
        row(
            "finer than " + units.show(Kind.GRAIN, Gradation.FINES_BOUNDARY_M),
            units.show(Kind.PERCENT, gradation.fractionPassing(Gradation.FINES_BOUNDARY_M))));
    rows.add(row("density of the mineral", show(Kind.DENSITY, design.sand().density())));
    rows.add(row("carrier", assessment.carrier().description()));
    rows.add(row("temperature", units.show(Kind.TEMPERATURE, assessment.carrier().temperatureK())));
    rows.add(
        row(
            "density of the carrier",
            units.show(Kind.DENSITY, assessment.carrier().densityKgM3())));
    rows.add(row("rheology of the carrier", assessment.carrier().rheology().describe()));
    blocks.add(new Block.Table(List.of("what", "value"), rows));
    assessment
        .line()
        .ifPresent(
            line -> {
              if (line.states().isEmpty()) {
                return;
              }
              List<List<String>> mixture = new ArrayList<>();
              for (LineState state : line.states()) {
                mixture.add(
                    List.of(
                        state.flowCase().words(),
                        number(Kind.FLOW, state.flow()),
                        number(Kind.PERCENT, state.sandFraction()),
                        number(Kind.PERCENT, state.massFraction()),
                        number(Kind.MASS_FLOW, state.sandRate()),
                        number(Kind.DENSITY, state.mixtureDensity())));
              }
              blocks.add(
                  new Block.Table(
                      List.of(
                          "flow case",
                          head("flow", Kind.FLOW),
                          "sand by volume [%]",
                          "by mass [%]",
                          head("sand", Kind.MASS_FLOW),
                          head("mixture", Kind.DENSITY)),
                      mixture));
            });
  }

  private static List<String> row(String what, String value) {
    return List.of(what, value);
  }

  private void line(LineResult line) {
    heading(1, "Line");
    List<RouteSpec.RunSpec> runs = design.route().orElseThrow().runs();
    List<List<String>> pipes = new ArrayList<>();
    for (RouteSpec.RunSpec run : runs) {
      String fittings =
          run.fittings().entrySet().stream()
              .map(e -> e.getValue() + " x " + e.getKey().id())
              .collect(Collectors.joining(", "));
      pipes.add(
          List.of(
              run.name(),
              run.pipe().map(p -> p.words()).orElse("given bore"),
              number(Kind.BORE, run.meanBore()),
              number(Kind.BORE, run.largestBore()),
              number(Kind.LENGTH, run.length()),
              number(Kind.LENGTH, run.rise()),
              fittings.isEmpty() ? "none" : fittings));
    }
    blocks.add(
        new Block.Table(
            List.of(
                "run",
                "pipe",
                head("mean bore", Kind.BORE),
                head("largest", Kind.BORE),
                head("length", Kind.LENGTH),
                head("rise", Kind.LENGTH),
                "fittings"),
            pipes));
    paragraph(
        "Friction follows the mean bore; deposition is judged in the largest bore that the standard"
            + " allows, where the velocity is least. "
            + line.leastSafeFlow()
                .map(
                    q ->
                        "Turbulence keeps sand moving with margin in the whole line from "
                            + show(Kind.FLOW, q)
                            + " on.")
                .orElse(
                    "At no flow does turbulence keep sand moving with margin in the whole line."));
    if (line.states().isEmpty()) {
      paragraph("The line could not be judged at any flow: see the findings.");
      return;
    }
    velocities(line, runs);
    for (int i = 0; i < runs.size(); i++) {
      deposition(line, i, runs.get(i).name());
    }
    headLoss(line, runs);
    gradeLine(line);
    systemCurve(line);
  }

  private void velocities(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Velocity against deposition");
    List<List<String>> rows = new ArrayList<>();
    for (LineState state : line.states()) {
      for (int i = 0; i < runs.size(); i++) {
        RunState run = state.runs().get(i);
        // The deposition velocity judges turbulent flow only.
        Optional<DepositionJudgement> judged =
            run.deposition().filter(d -> run.regime() == Regime.TURBULENT);
        rows.add(
            List.of(
                runs.get(i).name(),
                state.flowCase().words(),
                number(Kind.VELOCITY, run.leastVelocity()),
                judged.map(d -> units.number(Kind.VELOCITY, d.limitMps())).orElse("-"),
                judged.map(d -> units.number(Kind.VELOCITY, d.requiredMps())).orElse("-"),
                judged.map(d -> units.number(Kind.VELOCITY, d.velocityToPassMps())).orElse("-"),
                number(Kind.NUMBER, run.reynolds()),
                run.regime().words(),
                run.carriage().map(c -> c.support().words()).orElse("no sand"),
                run.severity().name()));
      }
    }
    blocks.add(
        new Block.Table(
            List.of(
                "run",
                "flow case",
                head("velocity", Kind.VELOCITY),
                "limit",
                "with margin",
                "to pass",
                "Reynolds number",
                "carrier flows",
                "the sand is",
                "verdict"),
            rows));
  }

  /** The correlations beside each other, at the case that stands worst. */
  private void deposition(LineResult line, int index, String name) {
    Optional<LineState> worst =
        line.states().stream()
            .filter(s -> s.runs().get(index).deposition().isPresent())
            .max(
                Comparator.comparing((LineState s) -> s.runs().get(index).severity())
                    .thenComparing(
                        s ->
                            -Measure.SPEED.si(s.runs().get(index).leastVelocity())
                                / s.runs()
                                    .get(index)
                                    .deposition()
                                    .orElseThrow()
                                    .velocityToPassMps()));
    if (worst.isEmpty()) {
      return;
    }
    DepositionJudgement judged = worst.get().runs().get(index).deposition().orElseThrow();
    heading(
        2,
        "Deposition velocity of "
            + name
            + " at the "
            + worst.get().flowCase().words()
            + " flow, "
            + units.show(Kind.VELOCITY, judged.velocityMps()));
    Regime regime = worst.get().runs().get(index).regime();
    if (regime == Regime.LAMINAR) {
      paragraph(
          "The carrier flows laminar here. The correlations are for turbulent flow and tell nothing"
              + " of this case, so none is shown: the finding on this run tells what carries the"
              + " sand, or that nothing does.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (Entry entry : judged.entries()) {
      rows.add(
          List.of(
              entry.model().name(),
              entry.valueMps() < NEGLIGIBLE_MPS
                  ? "0"
                  : units.number(Kind.VELOCITY, entry.valueMps()),
              units.number(Kind.GRAIN, entry.sizeM()),
              entry.role().name().toLowerCase(Locale.ROOT),
              entry.model().limit().words(),
              range(entry.estimate().excesses())));
    }
    blocks.add(
        new Block.Table(
            List.of(
                "correlation",
                head("velocity", Kind.VELOCITY),
                head("grain", Kind.GRAIN),
                "role",
                "limit meant",
                "published range"),
            rows));
    if (regime != Regime.TURBULENT) {
      paragraph(
          "The flow is not surely turbulent here, and these correlations are for turbulent flow."
              + " Below their limit sand settles all the more; above it they cannot give a pass.");
    }
    paragraph(
        "The limit is the larger of the governing correlations within their range, never less than"
            + " the floor"
            + (judged.upwardCorrectionMps() > 0
                ? ", raised by "
                    + units.show(Kind.VELOCITY, judged.upwardCorrectionMps())
                    + " for the upward slope"
                : "")
            + ". Counted correlations within their range can turn a pass into a caution; those"
            + " shown only decide nothing (the theory page on deposition velocity says why).");
  }

  private String range(List<Bound.Excess> excesses) {
    return excesses.isEmpty()
        ? "inside"
        : "outside: "
            + excesses.stream().map(e -> e.describe(units)).collect(Collectors.joining("; "));
  }

  private void headLoss(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Head loss");
    List<String> head = new ArrayList<>();
    head.add("run");
    head.add("flow case");
    head.add("carrier alone");
    RunState any = line.states().get(0).runs().get(0);
    any.headLossModels().forEach(m -> head.add(m.model().name()));
    head.add(head("friction", Kind.PRESSURE));
    head.add(head("fittings", Kind.PRESSURE));
    head.add("remark");
    List<List<String>> rows = new ArrayList<>();
    for (LineState state : line.states()) {
      for (int i = 0; i < runs.size(); i++) {
        RunState run = state.runs().get(i);
        List<String> row = new ArrayList<>();
        row.add(runs.get(i).name());
        row.add(state.flowCase().words());
        row.add(number(Kind.NUMBER, run.liquidGradient()));
        for (ModelValue loss : run.headLossModels()) {
          row.add(
              units.number(Kind.NUMBER, loss.estimate().value())
                  + (loss.estimate().inRange() ? "" : "*"));
        }
        row.add(number(Kind.PRESSURE, run.friction()));
        row.add(number(Kind.PRESSURE, run.fittings()));
        row.add(run.overBed() ? "over a bed, not for design" : "");
        rows.add(row);
      }
    }
    blocks.add(new Block.Table(head, rows));
    paragraph(
        "Gradients are in metres of carrier per metre of pipe (feet per foot). The first model"
            + " decides; the others bracket it: such models differ by 25 % and more, and none is"
            + " better than that. A star marks a model outside its published range. Below the"
            + " deposition limit a model of moving sand means little."
            + (line.states().stream()
                    .flatMap(s -> s.runs().stream())
                    .anyMatch(r -> r.deposition().isPresent() && r.regime() != Regime.TURBULENT)
                ? " Where the flow is not turbulent the friction is never less than that of the"
                    + " carrier thickened by its sand, and where the yield stress carries the sand"
                    + " it is just that."
                : ""));
  }

  private void gradeLine(LineResult line) {
    heading(2, "Pressure and hydraulic grade line");
    List<List<String>> rows = new ArrayList<>();
    for (LineState state : line.states()) {
      for (GradePoint point : GradePoint.of(design.route().orElseThrow(), state)) {
        rows.add(
            List.of(
                state.flowCase().words(),
                point.place(),
                number(Kind.LENGTH, point.station()),
                number(Kind.LENGTH, point.elevation()),
                number(Kind.PRESSURE, point.pressure()),
                number(Kind.LENGTH, point.gradeLine())));
      }
    }
    blocks.add(
        new Block.Table(
            List.of(
                "flow case",
                "point",
                head("station", Kind.LENGTH),
                head("elevation", Kind.LENGTH),
                head("pressure", Kind.PRESSURE),
                head("grade line", Kind.LENGTH)),
            rows));
  }

  private void systemCurve(LineResult line) {
    if (line.systemCurve().isEmpty()) {
      return;
    }
    heading(2, "System curve");
    List<List<String>> rows = new ArrayList<>();
    for (int i = 3; i < line.systemCurve().size(); i += 4) {
      LineResult.SystemPoint point = line.systemCurve().get(i);
      rows.add(
          List.of(
              number(Kind.FLOW, point.flow()),
              number(Kind.HEAD, point.head()),
              number(Kind.HEAD, point.liquidHead()),
              point.overBed() ? "over a bed, not for design" : ""));
    }
    blocks.add(
        new Block.Table(
            List.of(
                head("flow", Kind.FLOW),
                head("head of mixture", Kind.HEAD),
                head("carrier alone", Kind.HEAD),
                "remark"),
            rows));
    paragraph(
        "At the design concentration, from the level of the source, velocity head at the outlet"
            + " included. Heads with sand are in metres (feet) of mixture, those of the carrier"
            + " alone in metres (feet) of carrier.");
  }

  private void settling() {
    heading(2, "Settling of one grain in the carrier at rest");
    List<List<String>> rows = new ArrayList<>();
    List<List<String>> crowd = new ArrayList<>();
    for (SettlingResult.OfSize size : assessment.settling().sizes()) {
      String name = size.name() + ", " + units.show(Kind.GRAIN, size.sizeM());
      if (size.chosen().isEmpty()) {
        rows.add(List.of(name, "held by the yield stress", "0", "at rest only"));
        continue;
      }
      SettlingResult.Chosen chosen = size.chosen().get();
      for (ModelValue value : size.velocities()) {
        boolean applies = value.model().id().equals(chosen.model().id());
        rows.add(
            List.of(
                name,
                value.model().name() + (applies ? " (applies)" : ""),
                units.number(Kind.FALL, value.estimate().value()),
                range(value.estimate().excesses())));
      }
      for (int i = 0; i < size.hinderedExponents().size(); i++) {
        ModelValue value = size.hinderedExponents().get(i);
        crowd.add(
            List.of(
                name,
                value.model().name() + (i == 0 ? " (used)" : ""),
                units.number(Kind.NUMBER, value.estimate().value()),
                i == 0 ? units.number(Kind.NUMBER, size.hinderedFactor()) : "",
                range(value.estimate().excesses())));
      }
    }
    blocks.add(
        new Block.Table(
            List.of("grain", "correlation", head("settles", Kind.FALL), "published range"), rows));
    if (!crowd.isEmpty()) {
      blocks.add(
          new Block.Table(
              List.of("grain", "hindered settling", "exponent", "(1 - C)^n", "published range"),
              crowd));
    }
  }

  private void fit(RheogramFit fit) {
    heading(2, "Fit of the viscometer readings");
    List<List<String>> rows = new ArrayList<>();
    for (RheogramFit.Candidate candidate : fit.candidates()) {
      String parameters =
          candidate.parameters().stream()
              .map(
                  p ->
                      String.format(
                          Locale.ROOT,
                          "%s = %.4g +/- %.2g %s",
                          p.symbol(),
                          p.value(),
                          p.standardError(),
                          p.unit()))
              .map(String::strip)
              .collect(Collectors.joining(", "));
      rows.add(
          List.of(
              candidate.model(),
              candidate.rheology().isPresent()
                  ? String.format(Locale.ROOT, "%.3g", candidate.rmsePa())
                  : "-",
              candidate.rheology().isPresent()
                  ? String.format(Locale.ROOT, "%.3g", candidate.criterion())
                  : "-",
              candidate.rheology().isPresent() ? parameters : candidate.remark()));
    }
    blocks.add(
        new Block.Table(
            List.of("law", "residual [Pa]", "criterion", "parameters with standard error"), rows));
    List<List<String>> residuals = new ArrayList<>();
    for (int i = 0; i < fit.readings().size(); i++) {
      residuals.add(
          List.of(
              units.number(Kind.SHEAR_RATE, fit.readings().get(i).shearRatePs()),
              units.number(Kind.STRESS, fit.readings().get(i).shearStressPa()),
              String.format(Locale.ROOT, "%.3g", fit.best().residualsPa().get(i))));
    }
    blocks.add(
        new Block.Table(
            List.of(
                head("shear rate", Kind.SHEAR_RATE),
                head("shear stress", Kind.STRESS),
                "measured less fitted [Pa]"),
            residuals));
    paragraph(
        "The law of the least criterion is taken unless the design names another. Standard errors"
            + " tell the scatter of these readings, not that between days or farms.");
  }

  private void dilution(DilutionCurve curve) {
    heading(1, "What dilution does");
    List<List<String>> rows = new ArrayList<>();
    for (DilutionCurve.Point point : curve.points()) {
      rows.add(
          List.of(
              String.format(Locale.ROOT, "%.2f", point.ratio()),
              number(Kind.PERCENT, point.totalSolids()),
              number(Kind.PERCENT, point.sandFraction()),
              number(Kind.VELOCITY, point.velocity()),
              point.turbulentVelocity().map(v -> number(Kind.VELOCITY, v)).orElse("-"),
              point.regime().words(),
              point.regime() == Regime.TURBULENT ? "-" : number(Kind.PERCENT, point.floorShare()),
              number(Kind.PRESSURE_GRADIENT, point.pressureGradient()),
              point.fate(),
              point.severity().name()));
    }
    blocks.add(
        new Block.Table(
            List.of(
                "added",
                "solids [%]",
                "sand [%]",
                head("velocity", Kind.VELOCITY),
                head("to carry it", Kind.VELOCITY),
                "flow",
                "on the floor [%]",
                head("friction", Kind.PRESSURE_GRADIENT),
                "the sand is",
                "verdict"),
            rows));
    paragraph(
        "Added: volumes of liquid with "
            + show(Kind.PERCENT, design.dilution().orElseThrow().totalSolids())
            + " solids to one volume of mixture, at unchanged flow in the line. Each row is the"
            + " worst run at the worst flow. "
            + curve
                .firstPass()
                .map(
                    p ->
                        p.ratio() == 0
                            ? "Undiluted it passes."
                            : "The first to pass is "
                                + String.format(Locale.ROOT, "%.2f", p.ratio())
                                + " to one, with "
                                + show(Kind.PERCENT, p.totalSolids())
                                + " solids.")
                .orElse("None of these dilutions passes at this flow.")
            + " A caution of a turbulent line that is fast enough to carry its sand means that the"
            + " liquid is still too thick for the published range of every governing correlation."
            + " Between thick enough to hold the sand and thin and fast enough to carry it, sand"
            + " settles. "
            + (assessment.carrier().scatter() > 1
                ? "The curve follows the liquor as described; between farms its thickness differs by"
                    + " a factor of about "
                    + plain(assessment.carrier().scatter())
                    + ", and the valley lies elsewhere with another liquor: measure yours before"
                    + " you rely on a row."
                : "How a measured thickness falls with dilution is an assumption of this program:"
                    + " measure the diluted liquor before you rely on a row."));
  }

  /** The results that depend on how thick the carrier is, with a thinner and a thicker one. */
  private void band(Assessment.Band band) {
    heading(1, "Band of the carrier");
    paragraph(
        "Liquors of the same solids differ between farms by a factor of about "
            + plain(band.factor())
            + " either way in thickness (from memory, unverified). The same design with the thinner"
            + " and the thicker liquor:");
    List<Assessment> all = List.of(band.thinner(), assessment, band.thicker());
    List<List<String>> rows = new ArrayList<>();
    assessment
        .line()
        .ifPresent(
            line -> {
              for (LineState state : line.states()) {
                FlowCase at = state.flowCase();
                for (int i = 0; i < state.runs().size(); i++) {
                  int run = i;
                  String of = design.route().orElseThrow().runs().get(i).name() + ", " + at.words();
                  rows.add(
                      bandRow(
                          head("friction, " + of, Kind.PRESSURE),
                          all,
                          a -> runAt(a, at, run).map(r -> number(Kind.PRESSURE, r.friction()))));
                  rows.add(
                      bandRow(
                          "sand, " + of,
                          all,
                          a ->
                              runAt(a, at, run)
                                  .map(
                                      r ->
                                          r.severity()
                                              + ", "
                                              + r.carriage()
                                                  .map(c -> c.support().words())
                                                  .orElse("no sand"))));
                }
                rows.add(
                    bandRow(
                        head("head asked of the pump, " + at.words(), Kind.HEAD),
                        all,
                        a ->
                            a.line()
                                .flatMap(l -> l.at(at))
                                .map(s -> number(Kind.HEAD, s.systemHead()))));
              }
            });
    if (assessment.line().isPresent()) {
      rows.add(
          bandRow(
              head("least flow at which turbulence keeps sand moving", Kind.FLOW),
              all,
              a -> a.line().flatMap(LineResult::leastSafeFlow).map(q -> number(Kind.FLOW, q))));
    }
    if (assessment.pump().isPresent()) {
      rows.add(
          bandRow(
              head("pump duty", Kind.FLOW),
              all,
              a -> a.pump().flatMap(PumpResult::governing).map(d -> number(Kind.FLOW, d.flow()))));
    }
    if (assessment.lane().isPresent()) {
      rows.add(
          bandRow(
              "lane keeps, mixed to turbulent [%]",
              all,
              a ->
                  a.lane()
                      .map(
                          l ->
                              units.number(Kind.PERCENT, l.retained().vetter())
                                  + " to "
                                  + units.number(Kind.PERCENT, l.retained().campDobbins()))));
    }
    blocks.add(new Block.Table(List.of("result", "thinner", "as described", "thicker"), rows));
  }

  private static String plain(double factor) {
    return String.format(Locale.ROOT, "%.2g", factor);
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
      blocks.add(
          new Block.Table(
              List.of(
                  head("flow", Kind.FLOW),
                  head("head", Kind.HEAD),
                  head("pressure", Kind.PRESSURE),
                  "efficiency [%]",
                  head("shaft", Kind.POWER),
                  head("drawn", Kind.POWER),
                  head("per sand", Kind.SPECIFIC_ENERGY),
                  "duty"),
              rows));
    }
    if (!pump.deratings().isEmpty()) {
      paragraph(
          "Solids derating of the head: "
              + pump.deratings().stream()
                  .map(
                      m ->
                          m.model().name()
                              + " "
                              + units.number(Kind.NUMBER, m.estimate().value())
                              + (m.estimate().inRange() ? "" : " (outside its range)"))
                  .collect(Collectors.joining("; "))
              + ". Used: head "
              + number(Kind.NUMBER, pump.headRatio())
              + ", efficiency "
              + number(Kind.NUMBER, pump.efficiencyRatio())
              + ". Heads are in metres or feet of mixture.");
    }
    paragraph(
        "Pressure at the start of a blocked line: "
            + show(Kind.PRESSURE, pump.shutOffPressure())
            + ".");
  }

  private void lane(LaneResult lane) {
    heading(1, "Settling lane");
    LaneSpec spec = design.lane().orElseThrow();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        row(
            "length by width",
            show(Kind.LENGTH, spec.length()) + " by " + show(Kind.LENGTH, spec.width())));
    rows.add(row("flow", show(Kind.FLOW, spec.flow())));
    rows.add(
        row(
            "depth" + (lane.depthIsUniform() ? ", uniform flow by Manning" : ", as given"),
            units.show(Kind.BORE, lane.flow().depthM())));
    rows.add(row("mean velocity", units.show(Kind.VELOCITY, lane.flow().velocityMps())));
    rows.add(row("Froude number", units.show(Kind.NUMBER, lane.flow().froudeNumber())));
    rows.add(row("Reynolds number", units.show(Kind.NUMBER, lane.reynoldsNumber())));
    rows.add(row("residence time", units.show(Kind.TIME, lane.residenceTimeS())));
    rows.add(
        row("surface overflow rate", units.show(Kind.FALL, lane.basin().overflowVelocityMps())));
    rows.add(row("shear velocity", units.show(Kind.FALL, lane.flow().shearVelocityMps())));
    rows.add(row("half is caught of", caught(lane.caughtHalf())));
    rows.add(row("95 % is caught of", caught(lane.caughtMost())));
    rows.add(
        row("largest grain that the flow moves", units.show(Kind.GRAIN, lane.largestScouredM())));
    rows.add(row("sand entering", units.show(Kind.MASS_PER_DAY, lane.sandKgPs())));
    rows.add(row("sand that the storage depth holds", units.show(Kind.MASS, lane.storageKg())));
    rows.add(
        row(
            "days to fill, by the turbulent estimate",
            lane.fillTimeS(lane.retained().campDobbins()).isPresent()
                ? units.show(Kind.DAYS, lane.fillTimeS(lane.retained().campDobbins()).getAsDouble())
                : "never"));
    blocks.add(new Block.Table(List.of("what", "value"), rows));
    heading(2, "Capture by size class");
    List<List<String>> classes = new ArrayList<>();
    for (LaneClass grains : lane.classes()) {
      classes.add(
          List.of(
              units.number(Kind.GRAIN, grains.size().meanM()),
              units.number(Kind.PERCENT, grains.size().massFraction()),
              units.number(Kind.FALL, grains.hinderedVelocityMps()),
              units.number(Kind.TIME, grains.fallTimeS()),
              units.number(Kind.TIME, grains.stokesFallTimeS()),
              units.number(Kind.PERCENT, grains.capture().ideal()),
              units.number(Kind.PERCENT, grains.capture().campDobbins()),
              units.number(Kind.PERCENT, grains.capture().vetter()),
              units.number(
                  Kind.VELOCITY, Math.min(grains.campScourMps(), grains.shieldsScourMps())),
              grains.scoured() ? "scoured" : "at rest",
              grains.suspension().words()));
    }
    classes.add(
        List.of(
            "all",
            "",
            "",
            "",
            "",
            units.number(Kind.PERCENT, lane.capture().ideal()),
            units.number(Kind.PERCENT, lane.capture().campDobbins()),
            units.number(Kind.PERCENT, lane.capture().vetter()),
            "",
            "caught",
            ""));
    classes.add(
        List.of(
            "all",
            "",
            "",
            "",
            "",
            units.number(Kind.PERCENT, lane.retained().ideal()),
            units.number(Kind.PERCENT, lane.retained().campDobbins()),
            units.number(Kind.PERCENT, lane.retained().vetter()),
            "",
            "kept, not scoured",
            ""));
    blocks.add(
        new Block.Table(
            List.of(
                head("grain", Kind.GRAIN),
                "share [%]",
                head("settles", Kind.FALL),
                head("in", Kind.TIME),
                "Stokes",
                "ideal [%]",
                "turbulent [%]",
                "mixed [%]",
                head("scour", Kind.VELOCITY),
                "on the floor",
                "in the water"),
            classes));
    paragraph(
        "Ideal: plug flow (Hazen), an upper bound. Turbulent: Camp and Dobbins. Mixed: Vetter, a"
            + " lower bound. Stokes' law gives times that are too short for sand and is shown to"
            + " say so.");
  }

  private String caught(CaughtSize size) {
    return "grains of "
        + units.show(Kind.GRAIN, size.campDobbinsM())
        + " (ideal "
        + units.show(Kind.GRAIN, size.idealM())
        + ", mixed "
        + units.show(Kind.GRAIN, size.vetterM())
        + ")";
  }

  private void safety() {
    heading(1, "Safety");
    for (SafetyCaution caution : assessment.cautions()) {
      blocks.add(
          new Block.Marked(
              "SAFETY",
              List.of(caution.title() + ". " + caution.text(), "(" + caution.source() + ")")));
    }
  }

  private void working() {
    heading(1, "Working");
    paragraph(
        "Equations and the values put in are in SI, because the equations are; results follow in"
            + " the units of the report. Gravity is 9.80665 m/s2.");
    Map<String, List<Step>> byElement =
        assessment.working().stream()
            .collect(Collectors.groupingBy(Step::element, LinkedHashMap::new, Collectors.toList()));
    byElement.forEach(
        (element, steps) -> {
          heading(2, "Working of " + element);
          for (Step step : steps) {
            List<String> lines = new ArrayList<>();
            lines.add(step.meaning() + ": " + step.equation());
            if (!step.inputs().isEmpty()) {
              lines.add("with " + step.substituted());
            }
            lines.add("gives " + step.symbol() + " = " + step.result(units));
            lines.add("(" + step.source() + ")");
            blocks.add(new Block.Marked(step.symbol(), lines));
          }
        });
  }
}
