package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.ServiceResult.Day;
import sandslurry.assessment.ServiceResult.GravityRun;
import sandslurry.assessment.ServiceResult.Point;
import sandslurry.assessment.ServiceResult.Pulsation;
import sandslurry.assessment.ServiceResult.Pulse;
import sandslurry.assessment.ServiceResult.PumpPoint;
import sandslurry.assessment.ServiceResult.Screw;
import sandslurry.assessment.ServiceResult.StateResult;
import sandslurry.assessment.ServiceResult.Stop;
import sandslurry.assessment.ServiceResult.StoppedRun;
import sandslurry.assessment.ServiceResult.SuctionPoint;
import sandslurry.assessment.ServiceResult.Surge;
import sandslurry.assessment.StatesEvaluation.Evaluated;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.MotorSpec;
import sandslurry.design.PumpSpec.OtherPumpSpec;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec;
import sandslurry.design.ServiceSpec.GravityRunSpec;
import sandslurry.design.ServiceSpec.ScrewSpec;
import sandslurry.pump.OperatingRegion;
import sandslurry.pump.ReliefWindow;
import sandslurry.pump.ScrewConveyor;
import sandslurry.separation.ChannelFlow;
import sandslurry.separation.PartFullPipe.PartFullFlow;
import sandslurry.separation.SelfCleansing;
import sandslurry.transport.StoppedLine;
import sandslurry.transport.StoppedLine.Flush;
import sandslurry.transport.StoppedLine.Restart;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of a line in service beside its design state. */
final class ServiceFindings extends FindingWriter {
  /** A bed of stopped sand deeper than this share of the section is a caution of its own. */
  private static final double DEEP_BED = 0.3;

  /**
   * Slope below which a line that stops with sand in suspension keeps it where it is, by the order
   * of a handbook chapter on slurry valves (abstract read).
   */
  private static final double FLAT = 0.1;

  /** Share of its depth up to which a gravity pipe is designed (common practice, no source). */
  private static final double GRAVITY_DEPTH = 0.75;

  /** A time up to this is told in seconds. */
  private static final double SHORT_S = 120;

  private final Design design;
  private final ServiceResult result;
  private final Optional<StatesEvaluation> states;

  ServiceFindings(Design design, ServiceEvaluation evaluation) {
    super(design.units());
    this.design = design;
    this.result = evaluation.result();
    this.states = evaluation.states();
  }

  List<Finding> all() {
    states.ifPresent(this::states);
    motor();
    if (result.states().stream().anyMatch(StateResult::asked) || stationGiven()) {
      region();
    }
    suction();
    standby();
    result.pulsation().ifPresent(this::pulsation);
    result.surges().forEach(this::surge);
    result.stop().ifPresent(this::stop);
    result.day().ifPresent(this::day);
    result.screw().ifPresent(this::screw);
    result.gravityRun().ifPresent(this::gravityRun);
    return findings;
  }

  private boolean stationGiven() {
    return design.pump().orElse(null) instanceof RotodynamicSpec spec
        && (spec.station().minimumFlow().isPresent() || !spec.station().others().isEmpty());
  }

  private String duration(double seconds) {
    return seconds < SHORT_S ? show(Kind.TIME, seconds) : show(Kind.MINUTES, seconds);
  }

  private void states(StatesEvaluation evaluation) {
    if (result.states().stream().noneMatch(StateResult::asked)) {
      return;
    }
    Evaluated governing = evaluation.governing().orElseThrow();
    StateResult worst = governing.result();
    String where =
        worst
            .point()
            .map(
                p ->
                    " It runs at "
                        + show(Kind.FLOW, p.flowM3ps())
                        + " and "
                        + show(Kind.VELOCITY, p.velocityMps())
                        + " in "
                        + p.run()
                        + (p.toPassMps().isPresent()
                            ? ", which needs "
                                + show(Kind.VELOCITY, p.toPassMps().getAsDouble())
                                + " to pass"
                            : "")
                        + ".")
            .orElse("");
    String others =
        result.states().stream()
            .filter(s -> s.severity().compareTo(Severity.PASS) > 0 && s != worst)
            .map(s -> s.name() + " (" + s.severity() + ")")
            .collect(Collectors.joining("; "));
    int count = result.states().size();
    boolean good = worst.severity().compareTo(Severity.PASS) <= 0;
    add(
        worst.severity(),
        Topic.STATES,
        good ? "states" : worst.name(),
        good
            ? "The line passes in all of its "
                + count
                + " states; the closest is: "
                + worst.name()
                + "."
            : "This state governs, of "
                + count
                + (worst.reasons().isEmpty() ? "." : ": " + worst.reasons().get(0) + "."),
        (worst.reasons().size() > 1
                ? "Also: "
                    + String.join("; ", worst.reasons().subList(1, worst.reasons().size()))
                    + "."
                : "")
            + where
            + (others.isEmpty() ? "" : " Other states that do not pass: " + others + "."),
        evaluation.cure(governing));
  }

  private record Found<T>(StateResult state, Point point, PumpPoint pump, T value) {}

  private List<Found<PumpPoint>> pumps() {
    List<Found<PumpPoint>> found = new ArrayList<>();
    for (StateResult state : result.states()) {
      state
          .point()
          .ifPresent(p -> p.pumps().forEach(pump -> found.add(new Found<>(state, p, pump, pump))));
    }
    return found;
  }

  private void motor() {
    Optional<MotorSpec> motor = design.pump().flatMap(p -> p.motor());
    Optional<Found<PumpPoint>> most =
        pumps().stream().max(Comparator.comparingDouble(f -> f.pump().shaftW()));
    if (motor.isEmpty() || most.isEmpty()) {
      return;
    }
    double asked = most.get().pump().shaftW();
    double rating = Measure.POWER.si(motor.get().rating());
    double factor = Measure.FRACTION.si(motor.get().serviceFactor());
    String why =
        "The most is asked of "
            + most.get().pump().name()
            + " in the state \""
            + most.get().state().name()
            + "\": "
            + show(Kind.POWER, asked)
            + " at the shaft; the motor is rated "
            + show(Kind.POWER, rating)
            + " with a service factor of "
            + show(Kind.NUMBER, factor)
            + ".";
    if (asked > rating) {
      boolean over = asked > rating * factor;
      add(
          over ? Severity.FAIL : Severity.CAUTION,
          Topic.PUMP,
          "motor",
          over
              ? "The motor is overloaded in its worst state."
              : "The motor works in its service factor in its worst state.",
          why,
          "Fit a motor of " + show(Kind.POWER, asked) + " or more at the shaft.");
    } else {
      add(Severity.PASS, Topic.PUMP, "motor", "The motor carries its worst state.", why, "");
    }
  }

  private void region() {
    record Ratio(Found<PumpPoint> at, double ofBest) {}
    List<Ratio> ratios =
        pumps().stream()
            .filter(f -> f.pump().region().isPresent() && f.pump().flowM3ps() > 0)
            .map(
                f ->
                    new Ratio(
                        f, f.pump().flowM3ps() / f.pump().region().orElseThrow().bestFlowM3ps()))
            .toList();
    if (ratios.isEmpty()) {
      return;
    }
    Ratio least = ratios.stream().min(Comparator.comparingDouble(Ratio::ofBest)).orElseThrow();
    Ratio most = ratios.stream().max(Comparator.comparingDouble(Ratio::ofBest)).orElseThrow();
    OperatingRegion region = least.at().pump().region().orElseThrow();
    boolean below = !region.place(least.at().pump().flowM3ps()).allowable();
    boolean above =
        !most.at().pump().region().orElseThrow().place(most.at().pump().flowM3ps()).allowable();
    boolean preferred =
        ratios.stream()
            .allMatch(
                r ->
                    r.at().pump().region().orElseThrow().place(r.at().pump().flowM3ps())
                        == OperatingRegion.Place.PREFERRED);
    String why =
        "In shares of the flow at best efficiency the pumps work from "
            + show(Kind.PERCENT, least.ofBest())
            + " ("
            + least.at().pump().name()
            + ", "
            + least.at().state().name()
            + ") to "
            + show(Kind.PERCENT, most.ofBest())
            + " ("
            + most.at().pump().name()
            + ", "
            + most.at().state().name()
            + "); preferred is "
            + show(Kind.PERCENT, region.preferredLow())
            + " to "
            + show(Kind.PERCENT, region.preferredHigh())
            + ", the least flow is "
            + show(Kind.FLOW, region.minimumFlowM3ps())
            + ".";
    if (below || above) {
      add(
          Severity.CAUTION,
          Topic.PUMP,
          (below ? least : most).at().pump().name(),
          below
              ? "In some state a pump runs below its minimum flow: it heats up, shakes and wears."
              : "In some state a pump runs beyond its allowable region: it may cavitate and shake.",
          why,
          below
              ? "Choose a pump whose best flow is "
                  + show(Kind.FLOW, least.at().pump().flowM3ps() / region.preferredLow())
                  + " or less, or let fewer pumps run at once."
              : "Choose a pump whose best flow is "
                  + show(
                      Kind.FLOW,
                      most.at().pump().flowM3ps()
                          / most.at().pump().region().orElseThrow().preferredHigh())
                  + " or more, or slow it down in that state.");
    } else {
      add(
          preferred ? Severity.PASS : Severity.NOTE,
          Topic.PUMP,
          "pump",
          preferred
              ? "The pumps work in their preferred region in every state."
              : "The pumps stay in their allowable region, but not always in the preferred one.",
          why,
          "");
    }
  }

  private static Optional<Found<SuctionPoint>> least(
      List<Found<SuctionPoint>> all, ToDoubleFunction<Found<SuctionPoint>> by) {
    return all.stream().min(Comparator.comparingDouble(by));
  }

  private void suction() {
    List<Found<SuctionPoint>> all = new ArrayList<>();
    for (Found<PumpPoint> found : pumps()) {
      found
          .pump()
          .suction()
          .ifPresent(s -> all.add(new Found<>(found.state(), found.point(), found.pump(), s)));
    }
    if (all.isEmpty()) {
      return;
    }
    npsh(all);
    Found<SuctionPoint> sand =
        all.stream()
            .max(
                Comparator.comparing((Found<SuctionPoint> f) -> f.value().severity())
                    .thenComparingDouble(
                        f -> f.value().toPassMps().orElse(0) - f.value().velocityMps()))
            .orElseThrow();
    if (sand.point().sandFraction() > 0) {
      SuctionPoint point = sand.value();
      boolean good = point.severity() == Severity.PASS;
      double pass = point.toPassMps().orElse(point.velocityMps());
      boolean slow = point.velocityMps() < pass;
      double bore = Measure.LENGTH.si(design.service().suction().orElseThrow().run().largestBore());
      add(
          point.severity(),
          Topic.PLUGGING,
          "suction",
          good
              ? "Sand stays in motion in the suction line in every state."
              : slow || point.toPassMps().isEmpty()
                  ? "Sand may settle in the suction line."
                  : "Whether sand stays in motion in the suction line is not known: its bore, slope or"
                      + " sand lies outside what the governing correlations were published for.",
          "In the state \""
              + sand.state().name()
              + "\" the velocity is "
              + show(Kind.VELOCITY, point.velocityMps())
              + (point.toPassMps().isPresent()
                  ? (slow ? "; to pass it needs " : "; the correlations ask for up to ")
                      + show(Kind.VELOCITY, pass)
                  : ", and the flow is not turbulent")
              + ".",
          good
              ? ""
              : slow
                  ? "Take a bore of about "
                      + show(Kind.BORE, bore * Math.sqrt(point.velocityMps() / pass))
                      + " or less, and check the NPSH again, or keep the line short and steep"
                      + " towards the pump."
                  : point.toPassMps().isPresent()
                      ? "Keep the suction short and let it fall towards the pump."
                      : "Keep the suction short, and dilute before the pump.");
    }
  }

  private void npsh(List<Found<SuctionPoint>> all) {
    List<Found<SuctionPoint>> known =
        all.stream().filter(f -> f.value().requiredM().isPresent()).toList();
    Optional<Found<SuctionPoint>> scant =
        least(
            known,
            f ->
                f.value().availableM()
                    - StatesEvaluation.MARGIN.neededM(f.value().requiredM().getAsDouble()));
    if (known.size() < all.size()) {
      Found<SuctionPoint> unknown =
          all.stream().filter(f -> f.value().requiredM().isEmpty()).findFirst().orElseThrow();
      add(
          scant.isEmpty() ? Severity.NOTE : Severity.CAUTION,
          Topic.PUMP,
          unknown.pump().name(),
          "NPSH is not judged in every state: no points of the NPSH required reach its flow.",
          "In the state \""
              + unknown.state().name()
              + "\" the pump takes "
              + show(Kind.FLOW, unknown.pump().flowM3ps())
              + " and has "
              + show(Kind.HEAD, unknown.value().availableM())
              + " available.",
          "Give the NPSH required up to that flow.");
    }
    if (scant.isEmpty()) {
      return;
    }
    SuctionPoint point = scant.get().value();
    double required = point.requiredM().getAsDouble();
    double needed = StatesEvaluation.MARGIN.neededM(required);
    Severity severity =
        point.availableM() < required
            ? Severity.FAIL
            : point.availableM() < needed ? Severity.CAUTION : Severity.PASS;
    add(
        severity,
        Topic.PUMP,
        scant.get().pump().name(),
        severity == Severity.FAIL
            ? "The pump cavitates: less NPSH is available than it requires."
            : severity == Severity.CAUTION
                ? "The NPSH available lacks the margin for liquor with sand and gas."
                : "NPSH is available with its margin in every state.",
        "In the state \""
            + scant.get().state().name()
            + "\" "
            + show(Kind.HEAD, point.availableM())
            + " is available, "
            + show(Kind.HEAD, required)
            + " required, and with the margin "
            + show(Kind.HEAD, needed)
            + " needed (pit "
            + show(Kind.HEAD, point.floodM())
            + " above the pump, "
            + show(Kind.HEAD, point.lossM())
            + " lost"
            + (point.accelerationM() > 0
                ? ", " + show(Kind.HEAD, point.accelerationM()) + " for the pulse"
                : "")
            + ").",
        severity == Severity.PASS
            ? ""
            : "Keep the pit "
                + show(Kind.HEAD, needed - point.availableM())
                + " higher above the pump, or cut the losses of the suction line by that.");
  }

  private void standby() {
    if (!(design.pump().orElse(null) instanceof RotodynamicSpec spec)) {
      return;
    }
    for (OtherPumpSpec spare : spec.spares()) {
      String name = StatesEvaluation.spareName(spare);
      Optional<StateResult> worst =
          result.states().stream()
              .filter(s -> s.name().startsWith(name))
              .max(Comparator.comparing(StateResult::severity));
      worst.ifPresent(
          state -> {
            boolean good = state.severity().compareTo(Severity.PASS) <= 0;
            add(
                state.severity(),
                Topic.PUMP,
                spare.name(),
                good
                    ? "With the first pump out the spare carries every state it was tried in."
                    : "With the first pump out the spare does not carry the worst state.",
                "State \""
                    + state.name()
                    + "\": "
                    + state.point().map(p -> show(Kind.FLOW, p.flowM3ps())).orElse("no flow")
                    + (state.reasons().isEmpty() ? "" : "; " + String.join("; ", state.reasons()))
                    + ".",
                good
                    ? ""
                    : states.orElseThrow().all().stream()
                        .filter(e -> e.result() == state)
                        .map(e -> states.orElseThrow().cure(e))
                        .findFirst()
                        .orElse(""));
          });
    }
    if (spec.spares().isEmpty() && design.service().states().isPresent()) {
      add(
          Severity.NOTE,
          Topic.PUMP,
          "pump",
          "The design names no spare pump: with a pump out "
              + (spec.names().size() > 1
                  ? "the others run alone, a state that is in the table."
                  : "nothing flows."),
          "",
          "");
    }
  }

  private void pulsation(Pulsation pulsation) {
    for (Pulse pulse : pulsation.runs()) {
      boolean settles = pulse.leastMps() < pulse.limitMps();
      add(
          settles ? Severity.CAUTION : Severity.PASS,
          Topic.PLUGGING,
          pulse.run(),
          settles
              ? "The flow pulses: in its pauses the sand of this run settles."
              : "The flow pulses, but stays above the deposition limit.",
          "Within a stroke the velocity falls to "
              + show(Kind.VELOCITY, pulse.leastMps())
              + "; the limit is "
              + show(Kind.VELOCITY, pulse.limitMps())
              + (settles
                  ? ", and it is below that for "
                      + show(Kind.PERCENT, pulse.belowShare())
                      + " of the time, up to "
                      + show(Kind.TIME, pulse.longestS())
                      + " on end, in which the coarse sand would fall "
                      + show(Kind.BORE, pulse.fallM())
                      + " in still liquid"
                  : "")
              + ".",
          settles
              ? "Fit an air vessel near the pump that lets less of the swing through, or take a pump"
                  + " with more cylinders."
              : "");
    }
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    double limit = Measure.PRESSURE.si(spec.pressureLimit());
    String why =
        "With "
            + show(Kind.HEAD, pulsation.accelerationM())
            + " of mixture to speed up the line the pressure peaks at "
            + show(Kind.PRESSURE, pulsation.peakPa())
            + "; the relief opens at "
            + show(Kind.PRESSURE, limit)
            + (pulsation.weakestPa().isPresent()
                ? " and the weakest pipe is rated "
                    + show(Kind.PRESSURE, pulsation.weakestPa().getAsDouble())
                : "")
            + ".";
    if (pulsation.weakestPa().isEmpty()) {
      add(
          pulsation.peakPa() > limit ? Severity.CAUTION : Severity.NOTE,
          Topic.PRESSURE,
          "pump",
          pulsation.peakPa() > limit
              ? "The pulses open the relief."
              : "No rating is known against which the relief could be judged.",
          why,
          "");
      return;
    }
    Optional<ReliefWindow> window = pulsation.relief();
    boolean fits =
        window.isPresent() && limit >= window.get().leastPa() && limit <= window.get().greatestPa();
    add(
        fits ? Severity.PASS : Severity.CAUTION,
        Topic.PRESSURE,
        "pump",
        fits
            ? "The relief stands between the peaks of the pump and the rating of the pipe."
            : window.isEmpty()
                ? "No setting of the relief stays clear of both the peaks and the rating."
                : "The relief does not stand between the peaks of the pump and the rating.",
        why,
        fits
            ? ""
            : window.isPresent()
                ? "Set it between "
                    + show(Kind.PRESSURE, window.get().leastPa())
                    + " and "
                    + show(Kind.PRESSURE, window.get().greatestPa())
                    + "; codes come first."
                : "Fit an air vessel near the pump, or pipe of a rating of "
                    + show(
                        Kind.PRESSURE,
                        ReliefWindow.MARGIN * ReliefWindow.MARGIN * Math.max(pulsation.peakPa(), 0))
                    + " or more.");
  }

  private void surge(Surge surge) {
    String why =
        "Stopped at once from "
            + show(Kind.VELOCITY, surge.velocityMps())
            + " the pressure rises by "
            + show(Kind.PRESSURE, surge.surgePa())
            + " (wave speed "
            + show(Kind.VELOCITY, surge.waveMps())
            + ", no gas) over "
            + show(Kind.PRESSURE, surge.workingPa())
            + (surge.ratingPa().isPresent()
                ? "; the rating is " + show(Kind.PRESSURE, surge.ratingPa().getAsDouble())
                : "; no rating is known")
            + ".";
    if (surge.ratingPa().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PRESSURE,
          surge.run(),
          "The surge of a sudden stop could not be judged.",
          why,
          "");
      return;
    }
    boolean over = surge.workingPa() + surge.surgePa() > surge.ratingPa().getAsDouble();
    add(
        over ? Severity.CAUTION : Severity.PASS,
        Topic.PRESSURE,
        surge.run(),
        over
            ? "The surge of a sudden stop can exceed the rating of this pipe."
            : "The surge of a sudden stop stays within the rating.",
        why,
        over
            ? (surge.stopS().isPresent()
                    ? "Stop the flow evenly over "
                        + show(Kind.TIME, surge.stopS().getAsDouble())
                        + " or more; or fit"
                    : "Fit")
                + " a class rated "
                + show(Kind.PRESSURE, surge.workingPa() + surge.surgePa())
                + " or more; have the surge analysed with the check valve and the trip of the"
                + " pump."
            : "");
  }

  private void stop(Stop stop) {
    StoppedRun deepest =
        stop.runs().stream().max(Comparator.comparingDouble(StoppedRun::bedShare)).orElseThrow();
    Optional<Double> settled =
        stop.runs().stream()
            .filter(r -> r.settlingS().isPresent())
            .map(r -> r.settlingS().getAsDouble())
            .max(Comparator.naturalOrder());
    add(
        settled.isPresent() && deepest.bedShare() > DEEP_BED ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        "line",
        settled.isPresent()
            ? "Stopped full, the line lays its sand on the floor, and it may not start again."
            : "Stopped full, the line holds its sand where it is, by the yield stress of the liquid.",
        "It holds "
            + show(Kind.MASS, stop.sandKg())
            + " of sand"
            + (settled.isPresent()
                ? ", which settles within "
                    + duration(settled.get())
                    + " to a bed "
                    + show(Kind.BORE, deepest.bedM())
                    + " deep, "
                    + show(Kind.PERCENT, deepest.bedShare())
                    + " of the section"
                : "")
            + ".",
        "Flush before every stop that lasts longer than that.");
    stop.runs().forEach(this::rising);
    restart(stop);
    flush(stop);
  }

  private void rising(StoppedRun run) {
    if (run.settlingS().isEmpty()) {
      return;
    }
    long slope = Math.round(Math.toDegrees(run.slopeRad()));
    if (run.plugM() > 0) {
      RouteSpec.RunSpec spec =
          design.route().orElseThrow().runs().stream()
              .filter(r -> r.name().equals(run.run()))
              .findFirst()
              .orElseThrow();
      double bores = run.plugM() / Measure.LENGTH.si(spec.meanBore());
      add(
          Severity.CAUTION,
          Topic.PLUGGING,
          run.run(),
          (Measure.LENGTH.si(spec.rise()) > 0
                  ? "This run climbs so steeply that settled sand slides back to its foot when the"
                  : "This run falls so steeply that settled sand slides to its foot when the")
              + " line stops.",
          "It slopes at "
              + slope
              + " degrees; a settled bed slides above "
              + Math.round(Math.toDegrees(run.slideRad()))
              + " degrees by the balance of forces, on slippery pipe above about "
              + Math.round(Math.toDegrees(RunPoint.SLIDES_RAD))
              + " (common practice, no source), and packs "
              + show(Kind.LENGTH, run.plugM())
              + " at the foot, "
              + Math.round(bores)
              + " bores"
              + (bores > Restart.PUMPABLE_PLUG_BORES
                  ? ", more than any pump can be counted on to push out"
                  : "")
              + ".",
          "Flush before stopping and fit a drain and clean-out at the foot.");
    } else if (Math.tan(run.slopeRad()) > FLAT) {
      add(
          Severity.NOTE,
          Topic.PLUGGING,
          run.run(),
          "On this slope the slurry may run to the foot before its sand has settled.",
          "It slopes at "
              + slope
              + " degrees; a handbook keeps below about "
              + Math.round(Math.toDegrees(Math.atan(FLAT)))
              + ". The settled bed itself slides above "
              + Math.round(Math.toDegrees(run.slideRad()))
              + " degrees.",
          "");
    }
  }

  private void restart(Stop stop) {
    boolean pump = design.pump().isPresent();
    double low = stop.staticPa() + stop.restart().lowPa();
    double high = stop.staticPa() + stop.restart().highPa();
    boolean enough = stop.availablePa() >= high;
    boolean never = pump && stop.availablePa() < low;
    boolean burst = pump && stop.weakestPa().isPresent() && high > stop.weakestPa().getAsDouble();
    add(
        never || burst ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        "line",
        !pump
            ? "No pump is given that could be held against the pressure that restarting takes."
            : never
                ? "Stopped full and settled, the line cannot be started again by what drives it."
                : enough
                    ? burst
                        ? "To restart the settled line may take more than its pipe is rated for."
                        : "What drives the line can be expected to move its settled bed."
                    : "Whether what drives the line moves its settled bed is uncertain.",
        "To start it may take "
            + show(Kind.PRESSURE, low)
            + " to "
            + show(Kind.PRESSURE, high)
            + ", static pressure included (sliding bed "
            + show(Kind.PRESSURE, stop.restart().slidingBedPa())
            + ", yield "
            + show(Kind.PRESSURE, stop.restart().yieldPa())
            + ", plug "
            + show(Kind.PRESSURE, stop.restart().plugPa())
            + "; known to a factor of about 2 at best)"
            + (pump ? "; there is " + show(Kind.PRESSURE, stop.availablePa()) : "")
            + (stop.weakestPa().isPresent()
                ? ", and the weakest pipe is rated "
                    + show(Kind.PRESSURE, stop.weakestPa().getAsDouble())
                : "")
            + ".",
        enough && !burst
            ? ""
            : "Never stop it full: flush first, and have a second way to flush when the power fails.");
  }

  private void flush(Stop stop) {
    if (stop.flush().isEmpty()) {
      add(
          Severity.CAUTION,
          Topic.STOP,
          "line",
          "No flow of water up to the limits of the search carries off a bed of this sand.",
          "",
          "Shorten the stops, or fit clean-outs.");
      return;
    }
    Flush flush = stop.flush().get();
    String need =
        "To carry off the bed water must flow at "
            + show(Kind.FLOW, flush.flowM3ps())
            + " or more, for "
            + duration(flush.timeS())
            + ": "
            + show(Kind.VOLUME, flush.volumeM3())
            + ", "
            + Math.round(StoppedLine.FLUSH_LINE_VOLUMES)
            + " volumes of the line (common practice, no source)";
    OptionalDouble supply = stop.supplyFlowM3ps();
    if (supply.isEmpty()) {
      add(
          Severity.NOTE,
          Topic.STOP,
          "flush",
          "Before every stop flush the line with sand-free water.",
          need + ".",
          "");
      return;
    }
    double volume = stop.supplyVolumeM3().orElse(flush.volumeM3());
    boolean given = flush.givenBy(supply.getAsDouble(), volume);
    add(
        given ? Severity.PASS : Severity.CAUTION,
        Topic.STOP,
        "flush",
        given
            ? "The supply of the flush can clear the line."
            : "The supply of the flush cannot clear the line.",
        need
            + "; the supply gives "
            + show(Kind.FLOW, supply.getAsDouble())
            + (stop.supplyVolumeM3().isPresent() ? " and holds " + show(Kind.VOLUME, volume) : "")
            + ". That the supply gives its flow against the line is taken as given.",
        given
            ? ""
            : "Provide "
                + show(Kind.FLOW, flush.flowM3ps())
                + " and "
                + show(Kind.VOLUME, flush.volumeM3())
                + ", with an air gap or an approved backflow preventer.");
  }

  private void day(Day day) {
    double most = InUnit.ofDays(1);
    boolean fits = day.runningS() <= most;
    add(
        fits ? Severity.PASS : Severity.FAIL,
        Topic.DAY,
        "pump",
        fits ? "The day's volume is moved within a day." : "A day is too short for its volume.",
        "In the state \""
            + day.state()
            + "\" it takes "
            + show(Kind.HOURS, day.runningS())
            + (day.startsPs().isPresent()
                ? " with up to "
                    + show(Kind.STARTS, day.startsPs().getAsDouble())
                    + " starts (at an inflow of half the flow)"
                : "")
            + " and "
            + show(Kind.ENERGY, day.energyJ())
            + " a day"
            + (day.energyPerSandJpKg().isPresent()
                ? ", "
                    + show(Kind.SPECIFIC_ENERGY, day.energyPerSandJpKg().getAsDouble())
                    + " of sand"
                : "")
            + ".",
        fits ? "" : "Pump " + show(Kind.PERCENT, day.runningS() / most) + " of this flow.");
  }

  private void screw(Screw screw) {
    ScrewSpec spec = design.service().screw().orElseThrow();
    double loading = screw.loading().value();
    boolean fails = loading > ScrewConveyor.GREATEST_LOADING;
    boolean much = loading > ScrewConveyor.ABRASIVE_LOADING;
    String outside =
        screw.loading().excesses().stream()
            .map(e -> e.describe(units))
            .collect(Collectors.joining(", "));
    boolean unsure = !outside.isEmpty();
    add(
        fails ? Severity.FAIL : much || unsure ? Severity.CAUTION : Severity.PASS,
        Topic.FEED,
        "screw",
        fails
            ? "The screw cannot carry its load."
            : much
                ? "The screw runs fuller than is usual for abrasive material."
                : unsure
                    ? "The screw lies outside the range of the relation for its capacity."
                    : "The screw carries its load.",
        "The load of "
            + show(Kind.FLOW, Measure.FLOW.si(spec.load()))
            + " fills its trough to "
            + show(Kind.PERCENT, loading)
            + "; for abrasive material "
            + show(Kind.PERCENT, ScrewConveyor.ABRASIVE_LOADING)
            + " is usual, "
            + show(Kind.FLOW, screw.capacityM3ps())
            + (unsure ? "; outside the range: " + outside : "")
            + ". Manure that flows runs back over the flights: this is a check of what stands in a"
            + " heap.",
        fails || much
            ? "Take "
                + show(
                    Kind.FREQUENCY,
                    Measure.FREQUENCY.si(spec.speed()) * loading / ScrewConveyor.ABRASIVE_LOADING)
                + " (wear grows with speed) or a larger screw."
            : "");
  }

  private void gravityRun(GravityRun run) {
    GravityRunSpec spec = design.service().gravityRun().orElseThrow();
    double wanted = Measure.FLOW.si(spec.flow());
    if (run.flow().isEmpty()) {
      add(
          Severity.FAIL,
          Topic.FEED,
          "gravity pipe",
          "The gravity pipe cannot carry its flow without pressure.",
          "It is to carry "
              + show(Kind.FLOW, wanted)
              + " and carries "
              + show(Kind.FLOW, run.greatestM3ps())
              + " at most.",
          "Take a slope of "
              + show(
                  Kind.PERCENT,
                  Measure.FRACTION.si(spec.slope()) * Math.pow(wanted / run.greatestM3ps(), 2))
              + " or more, or a larger bore.");
      return;
    }
    PartFullFlow flow = run.flow().get();
    SelfCleansing cleansing = run.cleansing().orElseThrow();
    boolean deep = flow.wetted().depthShare() > GRAVITY_DEPTH;
    boolean turbulent = run.reynolds() >= ChannelFlow.TURBULENT.low();
    boolean clean = cleansing.kept();
    add(
        !clean ? Severity.FAIL : deep || !turbulent ? Severity.CAUTION : Severity.PASS,
        Topic.FEED,
        "gravity pipe",
        !clean
            ? "The gravity pipe does not clean itself: sand stays on its floor."
            : !turbulent
                ? "The liquid is too thick for Manning's formula to hold in the gravity pipe."
                : deep
                    ? "The gravity pipe runs fuller than is usual."
                    : "The gravity pipe carries its flow and moves single grains on a clean floor.",
        "It runs "
            + show(Kind.PERCENT, flow.wetted().depthShare())
            + " full at "
            + show(Kind.VELOCITY, flow.velocityMps())
            + "; the stress on the wall is "
            + show(Kind.STRESS, cleansing.stressPa())
            + ", to move the coarse sand it takes "
            + show(Kind.STRESS, cleansing.neededStressPa())
            + ". Published advice is that gravity transfer of manure does not work with sand"
            + " bedding.",
        clean
            ? ""
            : "Take a slope of about "
                + show(
                    Kind.PERCENT,
                    Measure.FRACTION.si(spec.slope())
                        * cleansing.neededStressPa()
                        / cleansing.stressPa())
                + " or more.");
  }
}
