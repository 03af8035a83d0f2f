package sandslurry.assessment.observed;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedLine.Condition;
import sandslurry.assessment.observed.ObservedResult.Agreement;
import sandslurry.assessment.observed.ObservedResult.Cause;
import sandslurry.assessment.observed.ObservedResult.Clearing;
import sandslurry.assessment.observed.ObservedResult.Explained;
import sandslurry.assessment.observed.ObservedResult.Filling;
import sandslurry.assessment.observed.ObservedResult.LineCheck;
import sandslurry.assessment.observed.ObservedResult.PumpCheck;
import sandslurry.assessment.observed.ObservedResult.Second;
import sandslurry.assessment.observed.ObservedResult.SecondReading;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.stop.FlushWater;
import sandslurry.assessment.stop.StopEvaluation;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.ServiceSpec.ObservedSpec;
import sandslurry.diagnosis.Bracket;
import sandslurry.diagnosis.Hypothesis;
import sandslurry.diagnosis.SiteReading;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Proportions;
import sandslurry.pump.piston.PistonPump;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.transport.bed.OpenSection;

/** Solves each cause of a reading on site for its unknown. */
public final class ObservedEvaluation {
  /** Uncertainty of a calculated friction as a share of it (common practice, no source). */
  public static final double MODEL = 0.10;

  /** Uncertainty of the head of a new pump as a share of it (common practice, no source). */
  public static final double PUMP = 0.05;

  private static final double FLOW_UNCERTAINTY = 0.05;
  private static final double PRESSURE_UNCERTAINTY = 0.03;

  /** Stress of the liquid over that of the design within which it is looked for. */
  private static final double THINNEST = 0.1;

  private static final double THICKEST = 30;

  /** Roughest wall that is looked for, of scale or corrosion (common practice, no source). */
  private static final double ROUGHEST_M = 3e-3;

  private static final double SMOOTHEST_M = 1e-7;
  private static final double ROUGHEST_SHARE = 0.05;
  private static final double HALF = 0.5;

  private final ObservedLine line;
  private final SiteReading reading;

  private ObservedEvaluation(Materials materials, SiteReading reading) {
    this.line = new ObservedLine(materials);
    this.reading = reading;
  }

  /**
   * What the reading of a design says.
   *
   * @param materials its liquid and sand
   * @return the result; nothing when the mixture does not flow at the flow rate read
   */
  public static Optional<ObservedResult> result(Materials materials) {
    ObservedSpec spec = materials.design().service().observed().orElseThrow();
    double pressure = spec.pressurePa();
    SiteReading reading =
        new SiteReading(
            spec.flowM3ps(),
            pressure,
            spec.flowUncertainty().orElse(FLOW_UNCERTAINTY),
            spec.pressureUncertaintyPa().orElse(PRESSURE_UNCERTAINTY * Math.abs(pressure)));
    double least = reading.flowM3ps() * (1 - reading.flowUncertainty());
    return materials.flows(least)
        ? Optional.of(new ObservedEvaluation(materials, reading).result())
        : Optional.empty();
  }

  private ObservedResult result() {
    double flow = reading.flowM3ps();
    LineCheck check =
        new LineCheck(
            flow, reading.pressurePa(), line.pressurePa(Condition.CLEAN, flow), difference());
    List<Explained> explained = new ArrayList<>();
    for (Cause cause : Cause.values()) {
      explained.add(explained(cause, check.agreement()));
    }
    ObservedResult causes =
        new ObservedResult(
            check,
            pump(),
            explained,
            List.of(),
            Optional.empty(),
            Optional.empty(),
            line.runs(Condition.CLEAN, flow).stream()
                .filter(run -> run.severity() == Severity.FAIL)
                .map(run -> run.pipe().spec().name())
                .distinct()
                .toList());
    Optional<Bracket> bed =
        causes.possible().stream()
            .filter(e -> e.cause() == Cause.BED)
            .findFirst()
            .flatMap(Explained::values);
    return new ObservedResult(
        check,
        causes.pump(),
        explained,
        second(causes),
        bed.map(depth -> filling(depth.value())),
        bed.flatMap(depth -> clearing(depth.value())),
        causes.settling());
  }

  private SiteReading.Difference difference() {
    return reading.difference(
        q -> line.pressurePa(Condition.CLEAN, q),
        MODEL,
        line.staticPa(Condition.CLEAN, reading.flowM3ps()));
  }

  private static Condition condition(Cause cause, double unknown) {
    return switch (cause) {
      case BED -> Condition.bed(unknown);
      case LIQUID -> Condition.liquid(unknown);
      case ROUGHNESS -> Condition.rough(unknown);
    };
  }

  private Explained explained(Cause cause, Agreement agreement) {
    // A bed or a rougher wall never lowers what a line takes: there is nothing to solve.
    if (agreement == Agreement.LESS && cause != Cause.LIQUID) {
      return new Explained(cause, Optional.empty(), true);
    }
    Optional<Bracket> values =
        hypothesis(cause)
            .flatMap(
                h -> h.solve(reading, MODEL, line.staticPa(Condition.CLEAN, reading.flowM3ps())));
    boolean enough =
        cause != Cause.BED
            || values.isEmpty()
            || sinceS().isEmpty()
            || leastFillingS(values.get().low()) <= sinceS().getAsDouble();
    return new Explained(cause, values, enough);
  }

  /** The unknown of a cause and its bounds; nothing where there can be none. */
  private Optional<Hypothesis> hypothesis(Cause cause) {
    Hypothesis.Law law = (unknown, flow) -> line.pressurePa(condition(cause, unknown), flow);
    return switch (cause) {
      case BED ->
          fraction() > 0 && flatRuns().size() > 0
              ? Optional.of(new Hypothesis(law, 0, 0, OpenSection.DEEPEST, true))
              : Optional.empty();
      case LIQUID -> Optional.of(new Hypothesis(law, THINNEST, 1, THICKEST, false));
      case ROUGHNESS -> {
        double clean = SMOOTHEST_M;
        double most = ROUGHEST_M;
        for (RunSpec run : runs()) {
          clean = Math.max(clean, run.roughnessM());
          most = Math.min(most, ROUGHEST_SHARE * run.meanBoreM());
        }
        yield clean < most
            ? Optional.of(new Hypothesis(law, clean, clean, most, false))
            : Optional.empty();
      }
    };
  }

  private List<RunSpec> runs() {
    return line.materials().design().oneLine().route().runs();
  }

  private List<RunSpec> flatRuns() {
    return runs().stream().filter(run -> line.open(run, HALF).isPresent()).toList();
  }

  private double fraction() {
    return line.materials()
        .vehicle(1, line.materials().sandFraction(reading.flowM3ps()))
        .coarseVolumeFraction();
  }

  private OptionalDouble sinceS() {
    return line.materials()
        .design()
        .service()
        .observed()
        .orElseThrow()
        .runningSinceCleaningS()
        .map(time -> OptionalDouble.of(time))
        .orElseGet(OptionalDouble::empty);
  }

  /** The pump: what it lacks of its curve, or of its strokes. */
  private Optional<PumpCheck> pump() {
    return line.materials()
        .design()
        .pump()
        .flatMap(pump -> pump.match(this::curve, piston -> Optional.of(strokes(piston))));
  }

  private PumpCheck strokes(PistonSpec piston) {
    double flow = reading.flowM3ps();
    double swept =
        new PistonPump(
                piston.displacementM3(), piston.volumetricEfficiency(), piston.pressureLimitPa())
            .flowM3ps(piston.strokeRatePs());
    double by = Math.hypot(reading.flowUncertainty() * flow / swept, PUMP);
    double wear = 1 - flow / swept;
    return new PumpCheck(new Bracket(wear - by, wear, wear + by), Optional.empty());
  }

  private Optional<PumpCheck> curve(RotodynamicSpec spec) {
    double flow = reading.flowM3ps();
    return new PumpEvaluation(line.clean())
        .derated(spec)
        .filter(group -> flow <= group.greatestFlowM3ps() && flow >= group.leastFlowM3ps())
        .filter(group -> group.headM(flow) > 0)
        .map(this::pump);
  }

  private PumpCheck pump(PumpGroup group) {
    double flow = reading.flowM3ps();
    double head = group.headM(flow);
    double wear = 1 - line.headM(reading.pressurePa(), flow) / head;
    double slope =
        (within(group, flow * (1 + reading.flowUncertainty()))
                - within(group, flow * (1 - reading.flowUncertainty())))
            / 2;
    double byPressure =
        line.headM(reading.pressurePa() + reading.uncertaintyPa(), flow)
            - line.headM(reading.pressurePa(), flow);
    double by = Math.hypot(Math.hypot(slope, byPressure) / head, PUMP);
    double closed = group.headM(group.leastFlowM3ps());
    return new PumpCheck(
        new Bracket(wear - by, wear, wear + by),
        Optional.of(
            List.of(line.closedPa(closed, flow), line.closedPa((1 - wear) * closed, flow))));
  }

  private static double within(PumpGroup group, double flowM3ps) {
    return group.headM(
        Math.min(group.greatestFlowM3ps(), Math.max(group.leastFlowM3ps(), flowM3ps)));
  }

  /** What each cause that is possible lets one read a second time. */
  private List<SecondReading> second(ObservedResult causes) {
    List<SecondReading> second = new ArrayList<>();
    if (causes.open().isEmpty()) {
      return second;
    }
    for (Second kind : Second.values()) {
      double flow = reading.flowM3ps() * (kind == Second.HALF_FLOW ? HALF : 1);
      if (!line.materials().flows(flow * (1 - reading.flowUncertainty()))) {
        continue;
      }
      Map<Cause, Bracket> spans = new EnumMap<>(Cause.class);
      for (Explained cause : causes.possible()) {
        spans.put(cause.cause(), read(kind, flow, cause));
      }
      second.add(new SecondReading(kind, flow, spans));
    }
    return second;
  }

  private Bracket read(Second kind, double flowM3ps, Explained cause) {
    Bracket values = cause.values().orElseThrow();
    Bracket low = read(kind, flowM3ps, cause.cause(), values.low());
    Bracket middle = read(kind, flowM3ps, cause.cause(), values.value());
    Bracket high = read(kind, flowM3ps, cause.cause(), values.high());
    return new Bracket(
        Math.min(low.low(), Math.min(middle.low(), high.low())),
        middle.value(),
        Math.max(low.high(), Math.max(middle.high(), high.high())));
  }

  /** What one value lets one read, with the uncertainty of the reading and of the friction. */
  private Bracket read(Second kind, double flowM3ps, Cause cause, double unknown) {
    Condition now = condition(cause, unknown);
    Condition then =
        switch (kind) {
          case HALF_FLOW -> now;
          case WATER -> now.inWater();
          case AFTER_FLUSH -> cause == Cause.BED ? Condition.CLEAN : now;
        };
    double pressure = line.pressurePa(then, flowM3ps);
    double by =
        new SiteReading(flowM3ps, pressure, reading.flowUncertainty(), reading.uncertaintyPa())
            .difference(q -> line.pressurePa(then, q), MODEL, line.staticPa(then, flowM3ps))
            .totalPa();
    return new Bracket(pressure, pressure, pressure).widened(by);
  }

  private double bedM3(double depth) {
    double volume = 0;
    for (RunSpec run : flatRuns()) {
      volume += line.open(run, depth).map(OpenSection::bedAreaM2).orElse(0.0) * run.lengthM();
    }
    return volume;
  }

  /** Time to a depth if all sand that comes stays [s]. */
  private double leastFillingS(double depth) {
    return bedM3(depth) * Proportions.PACKED_VOLUME_FRACTION / (reading.flowM3ps() * fraction());
  }

  private Filling filling(double depth) {
    return new Filling(
        bedM3(depth),
        bedM3(depth) * Proportions.PACKED_VOLUME_FRACTION * line.materials().sandDensityKgM3(),
        leastFillingS(depth),
        new BedGrowth(line, flatRuns(), reading.flowM3ps(), fraction()).timeS(depth, this::bedM3),
        sinceS());
  }

  /** Water that carries the bed off, and the pressure that it takes while the bed is there. */
  private Optional<Clearing> clearing(double depth) {
    OptionalDouble flow =
        FlushWater.of(line.materials(), line.materials().sandFraction(reading.flowM3ps()))
            .clearingM3ps();
    return flow.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Clearing(
                flow.getAsDouble(),
                StopEvaluation.FLUSH_LINE_VOLUMES * line.clean().volumeM3(),
                line.pressurePa(Condition.bed(depth).inWater(), flow.getAsDouble()),
                line.clean().weakestRatingPa()));
  }
}
