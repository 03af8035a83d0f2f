package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoublePredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import sandslurry.assessment.line.CarryingFlows;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineWarmths;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.OperatingWindow.Cause;
import sandslurry.assessment.line.OperatingWindow.End;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.numeric.Interruption;

/**
 * Finds the operating window of a line. Of what pipe and pump bear, the flow rate at which the
 * first limit is reached is found by halving: above the flow rate that carries the sand, head,
 * pressure, power and NPSH required all rise with it.
 */
public final class WindowEvaluation {
  private static final double FOUND = 1e-7;

  private final LineModel model;
  private final LineWarmths warmths;
  private final Optional<PumpEvaluation> pump;
  private final Optional<PumpResult> result;
  private final Set<String> npshGiven;

  /** What is held against a limit at a flow rate. */
  private record Check(Cause cause, String element, double actual, double limit) {
    /** Above 1 the limit is exceeded. */
    double ratio() {
      return cause == Cause.NPSH ? limit / Math.max(actual, 1e-9) : actual / limit;
    }

    End at(double flowM3ps, double temperatureK) {
      return new End(flowM3ps, cause, element, actual, limit, temperatureK, Optional.empty());
    }
  }

  /**
   * The window of a line.
   *
   * @param warmths the line with its liquid at each temperature at which sand is judged
   * @param pump the pump as designed, when one is given
   * @param result what came of it
   */
  public WindowEvaluation(
      LineWarmths warmths, Optional<PumpEvaluation> pump, Optional<PumpResult> result) {
    this.model = warmths.asDesigned();
    this.warmths = warmths;
    this.pump = pump;
    this.result = result;
    this.npshGiven =
        model.design().pump().flatMap(PumpSpec::rotodynamic).stream()
            .flatMap(spec -> spec.pumps().stream())
            .filter(p -> p.curve().points().stream().filter(c -> c.npshM().isPresent()).count() > 1)
            .map(RunningPump::name)
            .collect(Collectors.toSet());
  }

  /**
   * Finds the window.
   *
   * @return the flow rates at which the line works, with what sets their ends
   */
  public OperatingWindow window() {
    double designFlow = model.design().oneLine().flow().designM3ps();
    List<Interval> carrying = CarryingFlows.of(warmths.all(), designFlow);
    Optional<End> most = most();
    List<Interval> intervals = new ArrayList<>();
    Optional<End> blocked = Optional.empty();
    for (Interval interval : carrying) {
      double low = Math.max(interval.low().flowM3ps(), model.leastTriedM3ps());
      if (most.isPresent() && most.get().flowM3ps() < low) {
        blocked = blocked.or(() -> most);
        continue;
      }
      double top = Math.min(interval.highM3ps(), most.map(End::flowM3ps).orElse(highestM3ps(low)));
      Optional<End> full = runsFullFrom(low, top);
      Optional<End> over =
          full.filter(end -> end.actual() < end.limit())
              .or(() -> worst(full.map(End::flowM3ps).orElse(low)));
      if (over.isPresent()) {
        blocked = blocked.or(() -> over);
        continue;
      }
      End from = full.orElse(interval.low());
      intervals.add(new Interval(from, highest(interval, Math.max(from.flowM3ps(), low), most)));
    }
    return new OperatingWindow(
        designFlow, intervals, carrying, intervals.isEmpty() ? blocked : Optional.empty());
  }

  private double highestM3ps(double fromM3ps) {
    return Math.max(model.mostTriedM3ps(), fromM3ps);
  }

  /**
   * From where on friction holds the liquid column together at the high points.
   *
   * @return nothing when it holds at the lower flow rate; at the higher one when it breaks even
   *     there
   */
  private Optional<End> runsFullFrom(double fromM3ps, double toM3ps) {
    if (!model.materials().flows(fromM3ps) || holds(leastPressure(fromM3ps))) {
      return Optional.empty();
    }
    boolean ever = holds(leastPressure(toM3ps));
    double from = ever ? edge(fromM3ps, toM3ps, flow -> holds(leastPressure(flow)))[1] : toM3ps;
    return Optional.of(leastPressure(from));
  }

  /** The flow rates next to each other between which something begins to be. */
  private static double[] edge(double notYet, double already, DoublePredicate is) {
    double low = notYet;
    double high = already;
    while (high - low > FOUND * high) {
      Interruption.check();
      double middle = (low + high) / 2;
      if (is.test(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return new double[] {low, high};
  }

  private static boolean holds(End least) {
    return least.actual() >= least.limit();
  }

  /** The least pressure at a flow rate, against that at which the liquid boils. */
  private End leastPressure(double flowM3ps) {
    List<RunPoint> runs = model.runs(flowM3ps, model.materials().sandFraction(flowM3ps));
    List<LineModel.Pressures> pressures = model.pressures(runs);
    double boils = model.materials().carrier().boilsBelowPa();
    return IntStream.range(0, runs.size())
        .mapToObj(
            i ->
                new Check(
                    Cause.COLUMN_BREAKS,
                    runs.get(i).pipe().spec().name(),
                    pressures.get(i).leastPa(),
                    boils))
        .min(Comparator.comparingDouble(Check::actual))
        .orElseThrow()
        .at(flowM3ps, model.materials().carrier().temperatureK());
  }

  private Optional<End> highest(Interval carrying, double from, Optional<End> most) {
    Optional<End> cap =
        most.isPresent() && most.get().flowM3ps() < carrying.highM3ps() ? most : carrying.high();
    double top = cap.map(End::flowM3ps).orElse(highestM3ps(from));
    if (worst(top).isEmpty()) {
      return cap;
    }
    double[] edge = edge(from, top, flow -> worst(flow).isPresent());
    End over = worst(edge[1]).orElseThrow();
    return Optional.of(
        new End(
            edge[0],
            over.cause(),
            over.element(),
            over.actual(),
            over.limit(),
            over.temperatureK(),
            Optional.empty()));
  }

  /** The highest flow rate that the pump drives through the line. */
  private Optional<End> most() {
    if (pump.isEmpty()) {
      return Optional.empty();
    }
    double temperature = model.materials().carrier().temperatureK();
    boolean piston = model.design().pump().orElseThrow().piston().isPresent();
    Optional<PumpResult.Duty> duty = result.orElseThrow().governing();
    if (duty.isPresent()) {
      double flow = duty.get().flowM3ps();
      double head = duty.get().headM();
      return Optional.of(
          new Check(piston ? Cause.STROKES : Cause.PUMP_HEAD, "pump", head, head)
              .at(flow, temperature));
    }
    OptionalDouble flow = pump.get().deliversToM3ps();
    return Optional.of(
        new Check(piston || flow.isEmpty() ? Cause.PUMP_HEAD : Cause.CURVE_END, "pump", 0, 0)
            .at(flow.orElse(0), temperature));
  }

  /** The limit that is exceeded most at a flow rate; nothing when all are kept. */
  private Optional<End> worst(double flowM3ps) {
    if (!model.materials().flows(flowM3ps)) {
      return Optional.empty();
    }
    List<Check> checks = new ArrayList<>();
    List<RunPoint> runs = model.runs(flowM3ps, model.materials().sandFraction(flowM3ps));
    pressures(runs, checks);
    wear(runs, checks);
    if (pump.isPresent() && pump.get().reaches(flowM3ps)) {
      StateEvaluation state =
          new StateEvaluation(
              StateVariant.named("", model.design()), model.materials(), model, flowM3ps);
      state.pumps(pump.get()).forEach(point -> pump(point, checks));
    }
    return checks.stream()
        .filter(check -> !(check.ratio() <= 1))
        .max(Comparator.comparingDouble(Check::ratio))
        .map(check -> check.at(flowM3ps, model.materials().carrier().temperatureK()));
  }

  private void pressures(List<RunPoint> runs, List<Check> checks) {
    List<LineModel.Pressures> pressures = model.pressures(runs);
    for (int i = 0; i < runs.size(); i++) {
      RunSpec run = runs.get(i).pipe().spec();
      OptionalDouble rating = run.ratingPa(model.materials().warmestK());
      if (rating.isPresent()) {
        checks.add(
            new Check(
                Cause.PRESSURE,
                run.name(),
                pressures.get(i).greatestPa(),
                model.design().criteria().allowedPa(rating.getAsDouble())));
      }
    }
  }

  private void wear(List<RunPoint> runs, List<Check> checks) {
    runs.stream()
        .filter(RunPoint::hasSand)
        .map(
            run ->
                new Check(
                    Cause.WEAR,
                    run.pipe().spec().name(),
                    run.velocityMps(),
                    model.design().criteria().wearVelocityMps()))
        .forEach(checks::add);
  }

  private void pump(PumpPoint point, List<Check> checks) {
    double density =
        model.materials().mixtureDensityKgM3(model.materials().sandFraction(point.flowM3ps()));
    model
        .design()
        .pump()
        .flatMap(PumpSpec::piston)
        .ifPresent(
            piston ->
                checks.add(
                    new Check(
                        Cause.PRESSURE_LIMIT,
                        point.name(),
                        point.headM() * density * Physics.GRAVITY,
                        piston.pressureLimitPa())));
    point
        .region()
        .ifPresent(
            region ->
                checks.add(
                    new Check(
                        Cause.REGION,
                        point.name(),
                        point.flowM3ps(),
                        region.allowableHigh() * region.bestFlowM3ps())));
    point
        .motor()
        .ifPresent(
            motor ->
                checks.add(new Check(Cause.MOTOR, point.name(), point.shaftW(), motor.bearsW())));
    point.suction().ifPresent(suction -> npsh(point, suction, checks));
  }

  private void npsh(PumpPoint point, SuctionPoint suction, List<Check> checks) {
    if (suction.requiredM().isPresent()) {
      checks.add(
          new Check(
              Cause.NPSH,
              point.name(),
              suction.availableM(),
              suction.margin().neededM(suction.requiredM().getAsDouble())));
    } else if (npshGiven.contains(point.name())) {
      checks.add(new Check(Cause.NPSH_UNKNOWN, point.name(), Math.nextUp(1.0), 1));
    }
  }
}
