package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.DilutionCurve;
import sandslurry.assessment.line.GradePoint;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.ui.ChartData.Band;
import sandslurry.ui.ChartData.Bar;
import sandslurry.ui.ChartData.Level;
import sandslurry.ui.ChartData.Point;
import sandslurry.ui.ChartData.Series;
import sandslurry.ui.ChartData.Style;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The charts of an assessment, in the units of its design. */
final class Charts {
  private final Assessment assessment;
  private final Design design;
  private final UnitSystem units;

  Charts(Assessment assessment) {
    this.assessment = assessment;
    this.design = assessment.design();
    this.units = design.units();
  }

  private String axis(String text, Kind<?> kind) {
    return text + " [" + kind.symbol(units) + "]";
  }

  private double number(Kind<?> kind, double si) {
    return kind.number(units, si);
  }

  /** Head asked by the line and given by the pump, against flow. */
  Optional<ChartData> systemCurve() {
    if (assessment.line().isEmpty() || assessment.line().get().systemCurve().isEmpty()) {
      return Optional.empty();
    }
    List<Series> series = new ArrayList<>();
    LineResult line = assessment.line().get();
    List<Point> moving = new ArrayList<>();
    List<Point> overBed = new ArrayList<>();
    List<Point> liquid = new ArrayList<>();
    for (LineResult.SystemPoint point : line.systemCurve()) {
      double flow = number(Kind.FLOW, point.flowM3ps());
      Point mixture = new Point(flow, number(Kind.HEAD, point.headM()));
      (point.overBed() ? overBed : moving).add(mixture);
      liquid.add(new Point(flow, number(Kind.HEAD, point.liquidHeadM())));
    }
    series.add(new Series("line with sand", Style.SOLID, moving));
    series.add(new Series("line over a bed, not for design", Style.DOTTED, overBed));
    series.add(new Series("liquid alone, in head of liquid", Style.DASHED, liquid));
    addPump(series, assessment.pump());
    series.add(new Series("flow rates judged", Style.POINTS, judged(line)));
    series.add(new Series("states that fail", Style.POINTS, states(s -> s == Severity.FAIL)));
    series.add(new Series("other states judged", Style.POINTS, states(s -> s != Severity.FAIL)));
    double worthwhile =
        series.stream()
            .filter(s -> s.points() != overBed)
            .flatMap(s -> s.points().stream())
            .mapToDouble(Point::y)
            .max()
            .orElse(0);
    return Optional.of(
        ChartData.lines(
                "System curve and pump",
                axis("Flow rate of slurry", Kind.FLOW),
                axis("Head of slurry", Kind.HEAD),
                false,
                series)
            .withTop(1.1 * worthwhile));
  }

  /** Where pump and line run in the states of some verdicts, beside the flows of every line. */
  private List<Point> states(Predicate<Severity> wanted) {
    return assessment.service().states().stream()
        .filter(StateResult::named)
        .filter(state -> wanted.test(state.severity()))
        .flatMap(state -> state.point().stream())
        .map(p -> new Point(number(Kind.FLOW, p.flowM3ps()), Kind.HEAD.number(units, p.headM())))
        .toList();
  }

  /**
   * The velocity in every state as a share of the one that it needs: the state that fails falls
   * short of 100 %.
   */
  Optional<ChartData> states() {
    List<Bar> bars = new ArrayList<>();
    for (StateResult state : assessment.service().states()) {
      if (state.point().isPresent() && state.point().get().worst().toPassMps().isPresent()) {
        StateResult.Point point = state.point().get();
        bars.add(
            new Bar(
                state.severity().name(),
                colour(state.severity()),
                state.name() + ", " + point.worst().run(),
                number(
                    Kind.PERCENT,
                    point.worst().velocityMps() / point.worst().toPassMps().getAsDouble())));
      }
    }
    return bars.isEmpty()
        ? Optional.empty()
        : Optional.of(
            ChartData.bars(
                "Velocity in every state, in the run that is closest to plugging",
                "State",
                axis("Actual velocity over required velocity", Kind.PERCENT),
                bars,
                List.of(new Level("required", number(Kind.PERCENT, 1)))));
  }

  private void addPump(List<Series> series, Optional<PumpResult> pump) {
    series.add(
        new Series(
            "pump with sand",
            Style.DASH_DOT,
            pump.stream()
                .flatMap(p -> p.curve().stream())
                .map(p -> new Point(number(Kind.FLOW, p.flowM3ps()), number(Kind.HEAD, p.headM())))
                .toList()));
    series.add(
        new Series(
            "duty",
            Style.POINTS,
            pump.stream()
                .flatMap(p -> p.duties().stream())
                .map(d -> new Point(number(Kind.FLOW, d.flowM3ps()), number(Kind.HEAD, d.headM())))
                .toList()));
  }

  private List<Point> judged(LineResult line) {
    return line.states().stream()
        .map(s -> new Point(number(Kind.FLOW, s.flowM3ps()), number(Kind.HEAD, s.systemHeadM())))
        .toList();
  }

  /** Pipe and hydraulic grade lines along the line. */
  Optional<ChartData> gradeLine() {
    if (assessment.line().isEmpty()) {
      return Optional.empty();
    }
    List<Series> series = new ArrayList<>();
    Style[] styles = {Style.DASHED, Style.MARKED, Style.DOTTED, Style.DASH_DOT};
    for (LineState state : assessment.line().get().states()) {
      List<Point> pipe = new ArrayList<>();
      List<Point> grade = new ArrayList<>();
      for (GradePoint point : GradePoint.of(design.oneLine().route(), state)) {
        double station = number(Kind.LENGTH, point.stationM());
        pipe.add(new Point(station, number(Kind.LENGTH, point.elevationM())));
        grade.add(new Point(station, number(Kind.LENGTH, point.gradeLineM())));
      }
      if (series.isEmpty()) {
        series.add(new Series("pipe", Style.SOLID, pipe));
      }
      Style style = styles[(series.size() - 1) % styles.length];
      series.add(new Series("HGL at " + state.flowCase().words() + " flow rate", style, grade));
    }
    return Optional.of(
        ChartData.lines(
            "Hydraulic grade line (HGL)",
            axis("Length along the line", Kind.LENGTH),
            axis("Height above start", Kind.LENGTH),
            false,
            series));
  }

  /** The deposition velocity of one run at one flow, by every correlation. */
  Optional<ChartData> deposition(int run, int state) {
    Optional<LineState> at =
        assessment.line().filter(l -> state < l.states().size()).map(l -> l.states().get(state));
    Optional<RunState> found = at.filter(s -> run < s.runs().size()).map(s -> s.runs().get(run));
    Optional<DepositionJudgement> judged =
        found.filter(RunState::depositionApplies).flatMap(RunState::deposition);
    if (judged.isEmpty()) {
      return Optional.empty();
    }
    List<Bar> bars = new ArrayList<>();
    for (DepositionJudgement.Entry entry : found.get().depositionModels()) {
      boolean inside = entry.estimate().inRange();
      String group = entry.role().name().toLowerCase(Locale.ROOT);
      bars.add(
          new Bar(
              entry.role() == Role.SHOWN || inside ? group : group + ChartData.HATCHED,
              entry.role().ordinal(),
              entry.model().name(),
              velocity(entry.valueMps())));
    }
    List<Level> levels =
        List.of(
            level("actual velocity", judged.get().velocityMps()),
            level("deposition velocity", judged.get().limitMps()),
            level("required velocity", judged.get().velocityToPassMps()));
    return Optional.of(
        ChartData.bars(
            "Deposition velocity in "
                + design.oneLine().route().runs().get(run).name()
                + " at "
                + at.orElseThrow().flowCase().words()
                + " flow rate",
            "Correlation",
            axis("Velocity", Kind.VELOCITY),
            bars,
            levels));
  }

  /** The colours of bars by verdict: blue, orange and vermilion, which all can tell apart. */
  private static int colour(Severity severity) {
    return switch (severity) {
      case NOTE -> 5;
      case PASS -> 0;
      case CAUTION -> 2;
      case FAIL -> 6;
    };
  }

  private Level level(String name, double velocityMps) {
    return new Level(name + " " + units.show(Kind.VELOCITY, velocityMps), velocity(velocityMps));
  }

  private double velocity(double velocityMps) {
    return number(Kind.VELOCITY, velocityMps);
  }

  /** The velocity in the line and the one that it needs, against dilution. */
  Optional<ChartData> dilution() {
    if (assessment.dilution().isEmpty()) {
      return Optional.empty();
    }
    List<Point> velocity = new ArrayList<>();
    List<Point> needed = new ArrayList<>();
    List<Point> passes = new ArrayList<>();
    for (DilutionCurve.Point point : assessment.dilution().get().points()) {
      Point there = new Point(1 + point.ratio(), number(Kind.VELOCITY, point.velocityMps()));
      velocity.add(there);
      point
          .turbulentVelocityMps()
          .ifPresent(v -> needed.add(new Point(1 + point.ratio(), number(Kind.VELOCITY, v))));
      if (point.severity() == Severity.PASS) {
        passes.add(there);
      }
    }
    return Optional.of(
        ChartData.lines(
                "What dilution does",
                "Volume after dilution [to one before]",
                axis("Velocity", Kind.VELOCITY),
                true,
                List.of(
                    new Series("velocity in the line", Style.SOLID, velocity),
                    new Series("velocity from which turbulence carries it", Style.DASHED, needed),
                    new Series("passes", Style.POINTS, passes)))
            .withBands(verdicts(assessment.dilution().get())));
  }

  /** Stretches of equal verdict and equal support of the sand, met half way between points. */
  private static List<Band> verdicts(DilutionCurve curve) {
    List<Band> bands = new ArrayList<>();
    List<DilutionCurve.Point> points = curve.points();
    for (int i = 0; i < points.size(); i++) {
      DilutionCurve.Point point = points.get(i);
      double here = 1 + point.ratio();
      double from = i == 0 ? here : (1 + points.get(i - 1).ratio() + here) / 2;
      double to = i == points.size() - 1 ? here : (here + 1 + points.get(i + 1).ratio()) / 2;
      String name = point.severity() + ": " + point.fate();
      Band last = bands.isEmpty() ? null : bands.get(bands.size() - 1);
      if (last != null && last.name().equals(name)) {
        bands.set(bands.size() - 1, new Band(name, point.severity(), last.from(), to));
      } else {
        bands.add(new Band(name, point.severity(), from, to));
      }
    }
    return bands;
  }
}
