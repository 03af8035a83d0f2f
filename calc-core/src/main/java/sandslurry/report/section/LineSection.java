package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.GradePoint;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.line.WindowWords;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec;
import sandslurry.material.liquid.Carrier;
import sandslurry.report.block.Block;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The line: velocities against deposition, head loss, pressures, system curve, dilution. */
final class LineSection extends SectionWriter {
  /** Far outside their range some correlations give velocities of no meaning near zero. */
  private static final double NEGLIGIBLE_MPS = 1e-4;

  private final Assessment assessment;
  private final Design design;

  private LineSection(Assessment assessment) {
    super(assessment.design().units());
    this.assessment = assessment;
    this.design = assessment.design();
  }

  static List<Block> of(Assessment assessment) {
    LineSection section = new LineSection(assessment);
    assessment.line().ifPresent(section::line);
    assessment.dilution().ifPresent(section::dilution);
    return section.blocks();
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
    add(
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
        "Friction is computed in the mean bore, deposition in the largest bore that the standard"
            + " allows, where the velocity is lowest. "
            + window(line.window()));
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
  }

  private String window(OperatingWindow window) {
    WindowWords words = new WindowWords(units);
    if (window.intervals().isEmpty()) {
      return "No flow rate works; the findings say why.";
    }
    return window.intervals().stream()
        .map(
            interval ->
                "Operating window: "
                    + words.range(interval)
                    + interval.high().map(high -> "; above it: " + words.above(high)).orElse("")
                    + ".")
        .collect(Collectors.joining(" "));
  }

  private void velocities(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Actual velocity and deposition velocity");
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
                judged.map(d -> units.number(Kind.VELOCITY, d.velocityToPassMps())).orElse("-"),
                number(Kind.NUMBER, run.reynolds()),
                run.regime().words(),
                run.carriage().map(c -> c.support().words()).orElse("no sand"),
                run.severity().name()));
      }
    }
    add(
        new Block.Table(
            List.of(
                "run",
                "flow rate",
                head("velocity", Kind.VELOCITY),
                "deposition velocity",
                "required",
                "Reynolds number",
                "flow regime",
                "sand",
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
            + " flow rate, "
            + units.show(Kind.VELOCITY, judged.velocityMps()));
    Regime regime = worst.get().runs().get(index).regime();
    if (regime == Regime.LAMINAR) {
      paragraph(
          "The flow is laminar here. The correlations are for turbulent flow and do not apply, so"
              + " none is shown. The finding on this run says what carries the sand, if anything"
              + " does.");
      return;
    }
    depositionModels(worst.get().runs().get(index).depositionModels());
    if (regime != Regime.TURBULENT) {
      paragraph(
          "The flow is not surely turbulent here, and these correlations are for turbulent flow."
              + " Below their value sand settles all the more. Above it they cannot give a pass.");
    }
    depositionVelocity(judged);
  }

  private void depositionModels(List<Entry> entries) {
    List<List<String>> rows = new ArrayList<>();
    for (Entry entry : entries) {
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
    add(
        new Block.Table(
            List.of(
                "correlation",
                head("velocity", Kind.VELOCITY),
                head("grain", Kind.GRAIN),
                "role",
                "meaning of the value",
                "published range"),
            rows));
  }

  private void depositionVelocity(DepositionJudgement judged) {
    paragraph(
        "The deposition velocity here is "
            + units.show(Kind.VELOCITY, judged.limitMps())
            + (judged.lifting()
                ? ", at which the coarse grains are just lifted"
                : ", by "
                    + judged.limiting().model().name()
                    + " for grains of "
                    + units.show(Kind.GRAIN, judged.limiting().sizeM()))
            + (judged.slopeMps() > 0
                ? ", with " + units.show(Kind.VELOCITY, judged.slopeMps()) + " for the upward slope"
                : "")
            + ", at "
            + units.show(Kind.PERCENT, judged.highestFraction())
            + " sand, the most that comes through. Each size counts with the concentration of the"
            + " sand coarser than it; values are for a level pipe. No formula is left out because"
            + " it is used outside its range. The theory page on the deposition velocity has the"
            + " rule.");
  }

  private void headLoss(LineResult line, List<RouteSpec.RunSpec> runs) {
    heading(2, "Head loss");
    List<String> head = new ArrayList<>();
    head.add("run");
    head.add("flow rate");
    head.add("liquid alone");
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
        row.add(run.overBed() ? "over a bed: not for design" : "");
        rows.add(row);
      }
    }
    add(new Block.Table(head, rows));
    paragraph(
        "Gradients are in metres of liquid per metre of pipe (feet per foot). The first model"
            + " decides and the others bracket it: such models differ by 25 % and more. A star"
            + " marks a model outside its published range. Below the deposition velocity a model of"
            + " moving sand means little."
            + (line.states().stream()
                    .flatMap(s -> s.runs().stream())
                    .anyMatch(r -> r.deposition().isPresent() && r.regime() != Regime.TURBULENT)
                ? " Where the flow is not turbulent, friction is at least that of the liquid"
                    + " thickened by its sand."
                : ""));
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
      List<GradePoint> points = GradePoint.of(design.route().orElseThrow(), state);
      for (int i = 0; i < points.size(); i++) {
        GradePoint point = points.get(i);
        if (rows.size() <= i) {
          rows.add(
              new ArrayList<>(
                  List.of(
                      point.place(),
                      number(Kind.LENGTH, point.station()),
                      number(Kind.LENGTH, point.elevation()))));
        }
        rows.get(i).add(number(Kind.PRESSURE, point.pressure()));
        rows.get(i).add(number(Kind.LENGTH, point.gradeLine()));
      }
    }
    table(head, rows);
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
    add(
        new Block.Table(
            List.of(
                "added",
                "solids [%]",
                "sand [%]",
                head("velocity", Kind.VELOCITY),
                head("required", Kind.VELOCITY),
                "flow",
                "sand on the floor [%]",
                head("friction", Kind.PRESSURE_GRADIENT),
                "sand",
                "verdict"),
            rows));
    paragraph(
        "Added are volumes of liquid with "
            + show(Kind.PERCENT, design.dilution().orElseThrow().totalSolids())
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
}
