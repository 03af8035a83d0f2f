package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.GradePoint;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.correlation.Bound;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.material.liquid.Carrier;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;
import sandslurry.report.figure.Column;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.DepositionVelocities;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.transport.friction.NonNewtonianModels;
import sandslurry.units.Kind;

/**
 * The line: velocities against deposition, head loss, pressures, system curve, dilution.
 *
 * @param assessment what came of the design
 * @param all whether correlations are shown that decide nothing
 * @param page the page that it is written on
 */
record LineSection(Assessment assessment, boolean all, Page page) implements SectionWriter {
  /** Far outside their range some correlations give velocities of no meaning near zero. */
  private static final double NEGLIGIBLE_MPS = 1e-4;

  private static final List<Column<RunSpec>> PIPES =
      List.of(
          Column.text("run", RunSpec::name),
          Column.text("pipe", run -> run.pipe().map(p -> p.words()).orElse("given bore")),
          Column.of("mean bore", Kind.BORE, run -> run.meanBoreM()),
          Column.of("largest", Kind.BORE, run -> run.largestBoreM()),
          Column.of("length", Kind.LENGTH, run -> run.lengthM()),
          Column.of("rise", Kind.LENGTH, run -> run.riseM()),
          Column.text("fittings", LineSection::fittings));

  void write() {
    assessment.line().ifPresent(this::line);
    assessment.dilution().ifPresent(this::dilution);
  }

  private void line(LineResult line) {
    heading(1, "Line");
    List<RouteSpec.RunSpec> runs = assessment.design().oneLine().route().runs();
    alikeOf(runs, PIPES);
    paragraph(
        "Friction is computed in the mean bore, deposition in the largest bore that the standard"
            + " allows, where the velocity is lowest."
            + (line.window().intervals().isEmpty()
                ? " No flow rate works; the findings say why."
                : ""));
    if (line.states().isEmpty()) {
      paragraph("The line could not be judged at any flow: see the findings.");
      return;
    }
    tableOf(line.states(), MaterialSection.FLOWS);
    velocities(line, runs);
    deposition(line, runs);
    headLoss(line, runs);
    gradeLine(line);
  }

  private static String fittings(RunSpec run) {
    return run.fittings().isEmpty()
        ? "none"
        : run.fittings().entrySet().stream()
            .map(e -> e.getValue() + " x " + e.getKey().id())
            .collect(Collectors.joining(", "));
  }

  private void velocities(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Actual velocity and deposition velocity");
    alikeOf(RunAt.all(line, runs), RunAt.COLUMNS);
  }

  /**
   * The correlations on a run.
   *
   * @param at where they are compared: at its closest flow rate
   * @param blocks their values
   */
  private record Compared(String at, List<Block> blocks) {}

  /**
   * What comes of the correlations on a run.
   *
   * @param compared their values, which do not depend on the slope
   * @param velocity the deposition velocity of this run; empty where they do not apply
   */
  private record Deposition(Compared compared, String velocity) {}

  /** Runs with the same values share a table; below it stands what comes of them in each. */
  private void deposition(LineResult line, List<RunSpec> runs) {
    Map<Compared, Map<String, List<String>>> alike = new LinkedHashMap<>();
    for (int i = 0; i < runs.size(); i++) {
      String name = runs.get(i).name();
      deposition(line, i)
          .ifPresent(
              one ->
                  alike
                      .computeIfAbsent(one.compared(), c -> new LinkedHashMap<>())
                      .computeIfAbsent(one.velocity(), v -> new ArrayList<>())
                      .add(name));
    }
    alike.forEach(
        (compared, velocities) -> {
          List<String> names = velocities.values().stream().flatMap(List::stream).toList();
          heading(2, "Deposition velocity of " + SectionWriter.few(names) + compared.at());
          compared.blocks().forEach(this::add);
          velocities.forEach(
              (velocity, those) -> {
                if (!velocity.isEmpty()) {
                  paragraph("In " + SectionWriter.few(those) + velocity);
                }
              });
        });
    if (alike.values().stream().anyMatch(each -> !each.keySet().equals(Set.of("")))) {
      paragraph(
          "The rule takes one of the governing correlations and holds that of coarse grains at its"
              + " peak, so it can lie above the table (--working has the steps). Each size counts"
              + " with the concentration of the coarser sand. The table is for a level pipe, and"
              + " leaves no formula out for its range.");
    }
  }

  /** The correlations beside each other, at the flow rate that is closest to settling. */
  private Optional<Deposition> deposition(LineResult line, int index) {
    Optional<LineState> worst =
        line.states().stream()
            .filter(s -> s.runs().get(index).deposition().isPresent())
            .max(
                Comparator.comparing((LineState s) -> s.runs().get(index).severity())
                    .thenComparing(
                        s ->
                            -s.runs().get(index).leastVelocityMps()
                                / s.runs()
                                    .get(index)
                                    .deposition()
                                    .orElseThrow()
                                    .velocityToPassMps()));
    if (worst.isEmpty()) {
      return Optional.empty();
    }
    DepositionJudgement judged = worst.get().runs().get(index).deposition().orElseThrow();
    String at =
        " at the "
            + worst.get().flowCase().words()
            + " flow rate, "
            + show(Kind.VELOCITY, judged.velocityMps());
    LineSection part = new LineSection(assessment, all, new Page(units()));
    RunState run = worst.get().runs().get(index);
    part.correlations(run);
    return Optional.of(
        new Deposition(
            new Compared(at, part.page().blocks()),
            run.depositionApplies() ? velocity(judged) : ""));
  }

  private void correlations(RunState run) {
    Regime regime = run.regime();
    if (regime == Regime.LAMINAR) {
      paragraph(
          "The flow is laminar here. The correlations are for turbulent flow and do not apply, so"
              + " none is shown. The finding on this run says what carries the sand, if anything"
              + " does.");
      return;
    }
    depositionModels(
        run.depositionModels().stream()
            .filter(entry -> all || entry.role() != DepositionVelocities.Role.SHOWN)
            .toList());
    if (regime != Regime.TURBULENT) {
      paragraph(
          "The flow is not surely turbulent here, and these correlations are for turbulent flow."
              + " Below their value sand settles all the more. Above it they cannot give a pass.");
    }
  }

  private void depositionModels(List<Entry> entries) {
    List<Bound.Excess> used = shared(entries);
    tableOf(
        entries,
        List.of(
            Column.text("correlation", entry -> entry.model().name()),
            Column.text(
                head("velocity", Kind.VELOCITY),
                entry ->
                    entry.valueMps() < NEGLIGIBLE_MPS
                        ? "0"
                        : number(Kind.VELOCITY, entry.valueMps())),
            Column.of("grain", Kind.GRAIN, Entry::sizeM),
            Column.text("role", entry -> entry.role().name().toLowerCase(Locale.ROOT)),
            Column.text(
                "onset of",
                entry ->
                    entry.model().limit().words().replaceFirst("^(onset of (a )?|.* to )", "")),
            Column.text("published range", entry -> outside(entry, used))));
    if (!used.isEmpty()) {
      paragraph(
          "Used here: "
              + used.stream()
                  .map(e -> e.bound().what() + " " + show(e.bound().kind(), e.value()))
                  .distinct()
                  .collect(Collectors.joining("; "))
              + ".");
    }
  }

  /** What lies outside the same published limits with the same value in several correlations. */
  private static List<Bound.Excess> shared(List<Entry> entries) {
    return entries.stream()
        .flatMap(entry -> entry.estimate().excesses().stream())
        .collect(
            Collectors.groupingBy(e -> e.bound().what(), LinkedHashMap::new, Collectors.toList()))
        .values()
        .stream()
        .filter(those -> those.size() > 1)
        .filter(those -> those.stream().mapToDouble(Bound.Excess::value).distinct().count() == 1)
        .flatMap(List::stream)
        .toList();
  }

  /** The transgressions of a correlation; a value that several have is said below the table. */
  private String outside(Entry entry, List<Bound.Excess> used) {
    List<Bound.Excess> excesses = entry.estimate().excesses();
    return excesses.isEmpty()
        ? "inside"
        : "outside: "
            + excesses.stream()
                .map(
                    e ->
                        used.contains(e)
                            ? e.bound().what()
                                + " "
                                + e.crossed(units())
                                + (e.bound().published() ? "" : " (own limits)")
                            : e.describe(units()))
                .collect(Collectors.joining("; "));
  }

  private String velocity(DepositionJudgement judged) {
    return " the deposition velocity is "
        + show(Kind.VELOCITY, judged.limitMps())
        + (judged.lifting()
            ? ", at which the coarse grains are just lifted"
            : ", by "
                + judged.limiting().model().about().nameWithCaveat()
                + " for grains of "
                + show(Kind.GRAIN, judged.limiting().sizeM()))
        + (judged.slopeMps() > 0
            ? ", with " + show(Kind.VELOCITY, judged.slopeMps()) + " for the upward slope"
            : "")
        + ", at "
        + show(Kind.PERCENT, judged.highestFraction())
        + " sand, the most that comes through."
        + required(judged);
  }

  /** What the margins are added to, so that the required velocity can be had by hand. */
  private String required(DepositionJudgement judged) {
    Criteria criteria = assessment.design().criteria();
    String least = show(Kind.VELOCITY, criteria.marginVelocityMps());
    String most =
        show(
            Kind.PERCENT,
            DepositionRule.marginAtMostSand(criteria.marginFraction()) + judged.widening());
    return " The required velocity is the greatest of three: "
        + show(Kind.VELOCITY, judged.usualMps())
        + " at the usual sand and "
        + show(Kind.PERCENT, criteria.marginFraction() + judged.widening())
        + " more; "
        + show(Kind.VELOCITY, judged.limitMps())
        + " and "
        + most
        + " more; the same and "
        + least
        + " more. It need not exceed that of a slug of sand: "
        + show(Kind.VELOCITY, judged.slugMps())
        + " and the greater of "
        + most
        + " and "
        + least
        + "."
        + (judged.widening() > 0
            ? " The shares are "
                + show(Kind.PERCENT, judged.widening())
                + " wider for the thick liquid or wide bore."
            : "");
  }

  private void headLoss(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Head loss");
    List<Column<RunAt>> columns =
        new ArrayList<>(
            List.of(
                Column.text("run", RunAt::name),
                Column.text("flow rate", RunAt::at),
                Column.text("liquid alone", one -> perHundred(one.run().flow().gradient()))));
    List<ModelValue> models = line.states().get(0).runs().get(0).headLossModels();
    for (int i = 0; i < models.size(); i++) {
      int model = i;
      columns.add(
          Column.text(
              models.get(i).model().name(), one -> starred(one.run().headLossModels().get(model))));
    }
    columns.add(Column.of("friction", Kind.PRESSURE, one -> one.run().friction().pa()));
    columns.add(Column.of("fittings", Kind.PRESSURE, one -> one.run().friction().fittingsPa()));
    boolean overBed =
        line.states().stream().flatMap(s -> s.runs().stream()).anyMatch(RunState::overBed);
    if (overBed) {
      columns.add(Column.text("remark", one -> one.run().overBed() ? "over a bed" : ""));
    }
    alikeOf(RunAt.all(line, runs), columns);
    String length = Kind.LENGTH.symbol(units());
    paragraph(
        "Friction losses are in "
            + length
            + " of liquid per 100 "
            + length
            + " of pipe. The first model"
            + models.get(0).model().citation().caveat().map(c -> " (" + c + ")").orElse("")
            + " decides and the others bracket it: such models differ by 25 % and more. A star"
            + " marks a model outside its published range. Below the deposition velocity a model of"
            + " moving sand means little."
            + (overBed ? " A head loss over a bed is not for design." : "")
            + " The total dynamic head has its range over all of them."
            + (line.states().stream()
                    .flatMap(s -> s.runs().stream())
                    .anyMatch(r -> r.deposition().isPresent() && r.regime() != Regime.TURBULENT)
                ? " Where the flow is not turbulent, friction is at least that of the liquid"
                    + " thickened by its sand."
                : "")
            + friction(line));
  }

  /** By what a liquid that is not Newtonian is judged where its flow is not laminar. */
  private String friction(LineResult line) {
    boolean asked =
        !assessment.carrier().rheology().isNewtonian()
            && line.states().stream()
                .flatMap(state -> state.runs().stream())
                .anyMatch(run -> run.regime() != Regime.LAMINAR);
    return asked
        ? " Friction of the liquid is by "
            + NonNewtonianModels.TURBULENT.all().get(0).about().nameWithCaveat()
            + "."
        : "";
  }

  private String starred(ModelValue loss) {
    return perHundred(loss.estimate().value()) + (loss.estimate().inRange() ? "" : "*");
  }

  /** A gradient as the loss in a hundred lengths of pipe. */
  private String perHundred(double gradient) {
    return number(Kind.PERCENT, gradient);
  }

  /** A row for each point of the route, a pair of columns for each flow rate. */
  private void gradeLine(LineResult line) {
    heading(2, "Pressure and hydraulic grade line (HGL)");
    List<String> head =
        new ArrayList<>(
            List.of("point", head("station", Kind.LENGTH), head("elevation", Kind.LENGTH)));
    List<List<String>> rows = new ArrayList<>();
    for (LineState state : line.states()) {
      head.add(head("pressure, " + state.flowCase().words(), Kind.PRESSURE));
      head.add(head("HGL, " + state.flowCase().words(), Kind.LENGTH));
      List<GradePoint> points = GradePoint.of(assessment.design().oneLine().route(), state);
      for (int i = 0; i < points.size(); i++) {
        GradePoint point = points.get(i);
        if (rows.size() <= i) {
          rows.add(
              new ArrayList<>(
                  List.of(
                      point.place(),
                      number(Kind.LENGTH, point.stationM()),
                      number(Kind.LENGTH, point.elevationM()))));
        }
        rows.get(i).add(number(Kind.PRESSURE, point.pressurePa()));
        rows.get(i).add(number(Kind.LENGTH, point.gradeLineM()));
      }
    }
    alike(head, rows);
  }

  private void dilution(DilutionCurve curve) {
    heading(1, "What dilution does");
    tableOf(
        curve.points(),
        List.of(
            Column.text("added", point -> String.format(Locale.ROOT, "%.2f", point.ratio())),
            Column.text("solids [%]", point -> number(Kind.PERCENT, point.totalSolids())),
            Column.text("sand [%]", point -> number(Kind.PERCENT, point.sandFraction())),
            Column.of("velocity", Kind.VELOCITY, point -> point.velocityMps()),
            Column.maybe(
                "required",
                Kind.VELOCITY,
                point ->
                    point.turbulentVelocityMps().stream()
                        .mapToDouble(Double::doubleValue)
                        .findFirst()),
            Column.text("flow", point -> point.regime().words()),
            Column.text(
                "sand on the floor [%]",
                point ->
                    point.regime() == Regime.TURBULENT
                        ? "-"
                        : number(Kind.PERCENT, point.floorShare())),
            Column.of("friction", Kind.PRESSURE_GRADIENT, point -> point.pressureGradientPaPm()),
            Column.text("sand", DilutionCurve.Point::fate),
            Column.text("verdict", point -> point.severity().name())));
    paragraph(
        "Added are volumes of liquid with "
            + show(
                Kind.PERCENT, assessment.design().oneLine().dilution().orElseThrow().totalSolids())
            + " solids to one volume of slurry, at unchanged flow rate. Each row is the worst run"
            + " at the worst flow rate. "
            + curve
                .firstPass()
                .map(
                    p ->
                        p.ratio() == 0
                            ? "Undiluted it passes."
                            : "The first that passes is "
                                + String.format(Locale.ROOT, "%.2f", p.ratio())
                                + " to one, with "
                                + show(Kind.PERCENT, p.totalSolids())
                                + " solids.")
                .orElse("None of these dilutions passes at this flow rate.")
            + " A caution in turbulent flow above the required velocity means that the liquid is"
            + " still too thick for the published range of every governing correlation. Between"
            + " thick enough to hold the sand and thin enough to carry it, sand settles. "
            + (assessment.carrier().scatter().source() == Carrier.Source.SOLIDS
                ? "The curve holds for the liquor as described; between farms its viscosity differs"
                    + " by a factor of about "
                    + plain(assessment.carrier().scatter().factor())
                    + ". Measure yours before you rely on a row."
                : "How a measured viscosity falls with dilution is an assumption of this program."
                    + " Measure the diluted liquor before you rely on a row."));
  }

  /**
   * A run of the line at a flow rate, and what is shown of it.
   *
   * @param name the name of the run
   * @param at the flow rate in words
   * @param run the run
   */
  record RunAt(String name, String at, RunState run) {
    /** Velocities, regime and verdict. */
    static final List<Column<RunAt>> COLUMNS =
        List.of(
            Column.text("run", RunAt::name),
            Column.text("flow rate", RunAt::at),
            Column.of(
                "actual velocity", Kind.VELOCITY, one -> one.run().leastVelocityMps(), "velocity"),
            judged("deposition velocity", DepositionJudgement::limitMps, "deposition-velocity"),
            judged(
                "required velocity", DepositionJudgement::velocityToPassMps, "required-velocity"),
            Column.of(
                "Reynolds number",
                Kind.NUMBER,
                one -> one.run().flow().reynolds(),
                "reynolds-number"),
            Column.text("flow regime", one -> one.run().regime().words()),
            Column.text(
                "sand",
                one -> one.run().carriage().map(c -> c.support().words()).orElse("no sand")),
            Column.text("verdict", one -> one.run().severity().name()));

    /** Losses and pressures. */
    static final List<Column<RunAt>> PRESSURES =
        List.of(
            Column.of(
                "friction loss of the run",
                Kind.PRESSURE,
                one -> one.run().friction().pa(),
                "friction"),
            Column.of(
                "loss in the fittings",
                Kind.PRESSURE,
                one -> one.run().friction().fittingsPa(),
                "fittings"),
            Column.of(
                "pressure at the start",
                Kind.PRESSURE,
                one -> one.run().pressures().startPa(),
                "pressure-start"),
            Column.of(
                "pressure at the end",
                Kind.PRESSURE,
                one -> one.run().pressures().endPa(),
                "pressure-end"));

    static List<RunAt> all(LineResult line, List<RunSpec> runs) {
      List<RunAt> all = new ArrayList<>();
      for (LineState state : line.states()) {
        for (int i = 0; i < runs.size(); i++) {
          all.add(new RunAt(runs.get(i).name(), state.flowCase().words(), state.runs().get(i)));
        }
      }
      return all;
    }

    /** The deposition velocity judges turbulent flow only. */
    private static Column<RunAt> judged(
        String label, ToDoubleFunction<DepositionJudgement> velocity, String id) {
      return Column.maybe(
          label,
          Kind.VELOCITY,
          one -> {
            Optional<DepositionJudgement> judged =
                one.run().deposition().filter(d -> one.run().regime() == Regime.TURBULENT);
            return judged.isPresent()
                ? OptionalDouble.of(velocity.applyAsDouble(judged.get()))
                : OptionalDouble.empty();
          },
          id);
    }
  }
}
