package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.PulsationResult.Pulse;
import sandslurry.assessment.PulsationResult.Vessel;
import sandslurry.assessment.ServiceResult.Day;
import sandslurry.assessment.ServiceResult.GravityRun;
import sandslurry.assessment.ServiceResult.PenFeed;
import sandslurry.assessment.ServiceResult.Screw;
import sandslurry.assessment.StateResult.Point;
import sandslurry.assessment.StateResult.PumpPoint;
import sandslurry.assessment.StateResult.SuctionPoint;
import sandslurry.assessment.StatesEvaluation.Evaluated;
import sandslurry.assessment.StopResult.FlushFlow;
import sandslurry.assessment.StopResult.OverBed;
import sandslurry.assessment.StopResult.Plug;
import sandslurry.assessment.StopResult.StoppedRun;
import sandslurry.assessment.SurgeResult.LowWave;
import sandslurry.assessment.SurgeResult.SlowStop;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.MotorSpec;
import sandslurry.design.PumpSpec.OtherPumpSpec;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec;
import sandslurry.design.ServiceSpec.GravityRunSpec;
import sandslurry.design.ServiceSpec.ScrewSpec;
import sandslurry.pump.MotorStarts;
import sandslurry.pump.OperatingRegion;
import sandslurry.pump.ReliefWindow;
import sandslurry.pump.ScrewConveyor;
import sandslurry.separation.ChannelFlow;
import sandslurry.separation.PartFullPipe.PartFullFlow;
import sandslurry.separation.SelfCleansing;
import sandslurry.transport.StoppedLine;
import sandslurry.transport.StoppedLine.Flush;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of a line in service beside its design state. */
final class ServiceFindings extends FindingWriter {
  /** A bed of stopped sand deeper than this share of the section is a caution of its own. */
  private static final double DEEP_BED = 0.3;

  /** No line is stopped for less and started again with its sand still up. */
  private static final double SHORTEST_STOP_S = 60;

  /** From here on a time is told in days. */
  private static final double LONG_S = 172_800;

  /**
   * Slope below which a line that stops with sand in suspension keeps it where it is, by the order
   * of a handbook chapter on slurry valves (abstract read).
   */
  private static final double FLAT = 0.1;

  /** Share of its depth up to which a gravity pipe is designed (common practice, no source). */
  private static final double GRAVITY_DEPTH = 0.75;

  /** Loads that differ by no more than this are the same (a choice of this program). */
  private static final double SAME_LOAD = 0.1;

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
    findings.addAll(new StationFindings(design, result).all());
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
    if (seconds < SHORT_S) {
      return show(Kind.TIME, seconds);
    }
    return seconds < LONG_S ? show(Kind.MINUTES, seconds) : show(Kind.DAYS, seconds);
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
    Optional<Found<PumpPoint>> most =
        pumps().stream()
            .filter(f -> f.pump().motor().isPresent())
            .max(
                Comparator.comparingDouble(
                    f ->
                        f.pump().shaftW()
                            / Measure.POWER.si(f.pump().motor().orElseThrow().rating())));
    if (most.isEmpty()) {
      return;
    }
    Optional<MotorSpec> motor = most.get().pump().motor();
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
                    - f.value().margin().neededM(f.value().requiredM().getAsDouble()));
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
    double needed = point.margin().neededM(required);
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

  private void pulse(Pulse pulse) {
    boolean settles = pulse.settles();
    boolean brief = pulse.brief();
    add(
        !settles ? Severity.PASS : brief ? Severity.NOTE : Severity.CAUTION,
        Topic.PLUGGING,
        pulse.run(),
        !settles
            ? "The flow pulses, but stays above the deposition limit."
            : brief
                ? "The flow pulses, but its pauses are too short for a bed."
                : "The flow pulses: in its pauses the sand of this run settles.",
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
                    + (pulse.settlingS().isPresent()
                        ? ", through the whole bore in " + duration(pulse.settlingS().getAsDouble())
                        : "")
                    + ". The stroke that follows reaches "
                    + show(Kind.VELOCITY, pulse.greatestMps())
                    + (pulse.greatestMps() >= pulse.toPassMps()
                        ? ", enough to lift"
                        : ", not enough to lift with margin")
                    + " what has sunk ("
                    + show(Kind.VELOCITY, pulse.toPassMps())
                    + ")"
                : "")
            + ".",
        settles && !brief
            ? "Fit an air vessel near the pump that lets less of the swing through, shorten the"
                + " pauses, or take a pump with more cylinders."
            : "");
  }

  private void vessel(Vessel vessel, PulsationResult pulsation) {
    String why =
        "With "
            + show(Kind.VOLUME, vessel.gasM3())
            + " of gas at "
            + show(Kind.PRESSURE, vessel.absolutePa())
            + " absolute, gas and line swing "
            + show(Kind.FREQUENCY, vessel.ownPs())
            + " by themselves; the flow swells "
            + show(Kind.FREQUENCY, vessel.swellsPs())
            + ", by "
            + show(Kind.VOLUME, vessel.storedM3())
            + " at a time. ";
    boolean room = vessel.storedM3() < vessel.gasM3();
    boolean good = vessel.damps() && room && pulsation.passed() <= Vessel.GOOD_SHARE;
    add(
        good ? Severity.PASS : Severity.CAUTION,
        Topic.PRESSURE,
        "air vessel",
        good
            ? "The air vessel takes the pulse out of the line while its gas lasts."
            : vessel.damps() && room
                ? "The air vessel leaves much of the pulse in the line."
                : "The air vessel does not damp: gas and line swing with the pump or against it.",
        why
            + (vessel.damps()
                ? "It lets " + show(Kind.PERCENT, pulsation.passed()) + " of the swing through."
                : "No damping is credited; the swing may be greater than without it."),
        good
            ? ""
            : "Take "
                + show(
                    Kind.VOLUME,
                    Math.max(vessel.goodGasM3(), vessel.storedM3() / Vessel.GOOD_SHARE))
                + " of gas at that pressure, check it every day, and have it made and set by its"
                + " maker: an air vessel is a pressure vessel.");
  }

  private void pulsation(PulsationResult pulsation) {
    pulsation.runs().forEach(this::pulse);
    pulsation.vessel().ifPresent(vessel -> vessel(vessel, pulsation));
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

  private void surge(SurgeResult surge) {
    String why =
        "Stopped at once from "
            + show(Kind.VELOCITY, surge.velocityMps())
            + " the pressure rises by "
            + show(Kind.PRESSURE, surge.surgePa())
            + " (wave speed "
            + show(Kind.VELOCITY, surge.waveMps())
            + ", no gas)"
            + surge.slow().map(this::slow).orElse("")
            + " over "
            + show(Kind.PRESSURE, surge.workingPa())
            + (surge.ratingPa().isPresent()
                ? "; the rating is " + show(Kind.PRESSURE, surge.ratingPa().getAsDouble())
                : "; no rating is known")
            + ".";
    String stop = surge.slow().isPresent() ? "stop in the time given" : "sudden stop";
    if (surge.ratingPa().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PRESSURE,
          surge.run(),
          "The surge of a " + stop + " could not be judged.",
          why,
          "");
    } else {
      boolean over = surge.workingPa() + surge.judgedPa() > surge.ratingPa().getAsDouble();
      add(
          over ? Severity.CAUTION : Severity.PASS,
          Topic.PRESSURE,
          surge.run(),
          over
              ? "The surge of a " + stop + " can exceed the rating of this pipe."
              : "The surge of a " + stop + " stays within the rating.",
          why,
          over
              ? (surge.stopS().isPresent()
                      ? "Stop the flow evenly over "
                          + show(Kind.TIME, surge.stopS().getAsDouble())
                          + " or more; or fit"
                      : "Fit")
                  + " a class rated "
                  + show(Kind.PRESSURE, surge.workingPa() + surge.judgedPa())
                  + " or more; have the surge analysed with the check valve and the trip of the"
                  + " pump."
              : "");
    }
    lowWave(surge);
  }

  private String slow(SlowStop slow) {
    return ", in "
        + show(Kind.TIME, slow.timeS())
        + " evenly by "
        + show(Kind.PRESSURE, slow.surgePa())
        + (slow.timeS() > slow.returnS()
            ? " (Michaud's rule)"
            : " as well, for the wave takes " + show(Kind.TIME, slow.returnS()) + " to return")
        + ",";
  }

  /**
   * Every sudden stop of a pump has a low half of its wave, so it is a caution only where it was
   * asked for by a time, or where columns part in a high point of the line and come together there.
   */
  private void lowWave(SurgeResult surge) {
    LowWave low = surge.lowest();
    if (!low.parts()) {
      return;
    }
    boolean asked = surge.slow().isPresent();
    add(
        asked || low.highPoint() ? Severity.CAUTION : Severity.NOTE,
        Topic.PRESSURE,
        surge.run(),
        low.highPoint()
            ? "When the flow is cut off the column of liquid can part at a high point of the line."
            : "When the flow is cut off the column of liquid can part.",
        "At "
            + show(Kind.LENGTH, low.elevationM())
            + " above the start the pressure is "
            + show(Kind.PRESSURE, low.steadyPa())
            + "; the low half of the wave of "
            + (asked ? "a stop in the time given" : "a sudden stop")
            + " would take it to "
            + show(Kind.PRESSURE, low.lowestPa())
            + ", and the liquid boils at "
            + show(Kind.PRESSURE, low.vapourPa())
            + ". Columns that come together again strike harder than the stop, and a vacuum can"
            + " flatten a thin pipe or suck in a gasket.",
        "Slow the stop down (flywheel, slow valve), keep high points out of the line or vent them"
            + " with a valve that manure does not clog, fit pipe that bears full vacuum, and have"
            + " the surge analysed.");
  }

  private void stop(StopResult stop) {
    StoppedRun deepest =
        stop.runs().stream().max(Comparator.comparingDouble(StoppedRun::bedShare)).orElseThrow();
    Optional<Double> settled =
        stop.runs().stream()
            .filter(r -> r.settlingS().isPresent())
            .map(r -> r.settlingS().getAsDouble())
            .max(Comparator.naturalOrder());
    Optional<Double> coarse =
        stop.runs().stream()
            .filter(r -> r.coarseS().isPresent())
            .map(r -> r.coarseS().getAsDouble())
            .min(Comparator.naturalOrder());
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
                ? (settled.get() > coarse.get()
                        ? "; what is coarse lies within "
                            + duration(coarse.get())
                            + ", all of it within "
                            + duration(settled.get())
                        : "; what the liquid does not surely hold may lie within "
                            + duration(coarse.get()))
                    + ", in a bed "
                    + show(Kind.BORE, deepest.bedM())
                    + " deep, "
                    + show(Kind.PERCENT, deepest.bedShare())
                    + " of the section"
                : "")
            + ".",
        settled.isPresent()
            ? coarse.get() < SHORTEST_STOP_S
                ? "Flush before every stop."
                : "Flush before every stop that lasts longer than "
                    + duration(coarse.get())
                    + ": the coarse sand makes the bed."
            : "Flush before a long stop all the same: a liquor that warms or is thinned loses its"
                + " yield stress.");
    stop.runs().forEach(this::rising);
    stop.plugs().forEach(this::plug);
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
              + " of its bore full at the foot, within "
              + duration(run.settlingS().getAsDouble())
              + " or more.",
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

  private void plug(Plug plug) {
    boolean moves = plug.movable();
    add(
        Severity.CAUTION,
        Topic.STOP,
        plug.where(),
        moves
            ? "Stopped full, the sand packs here over the whole section."
            : "Stopped full, the sand packs here to a plug longer than the pressure there is can be"
                + " counted on to move.",
        "The plug is "
            + show(Kind.LENGTH, plug.parts().lengthM())
            + " long, "
            + Math.round(plug.parts().lengthM() / plug.boreM())
            + " bores. Beside its weight it takes "
            + show(Kind.PRESSURE, plug.frictionPa())
            + " when liquid seeps through it, and "
            + (plug.wedgedPa().isPresent()
                ? show(Kind.PRESSURE, plug.wedgedPa().getAsDouble())
                : "more than any pump has")
            + " when it is pushed like a cork and wedges itself, the face sealed by fibre"
            + (plug.movableM().isPresent()
                ? "; pushed like that the pressure left for it moves "
                    + show(Kind.LENGTH, plug.movableM().getAsDouble())
                : "")
            + ". Both are balances of forces; nobody measured plugs of manured sand. Pushing harder"
            + " on a plug that is too long only wedges it.",
        "Flush before every stop, and fit a drain and a clean-out here.");
  }

  private void restart(StopResult stop) {
    boolean pump = design.pump().isPresent();
    double low = stop.staticPa() + stop.restart().lowPa();
    OptionalDouble friction = stop.restart().highPa();
    double high =
        friction.isPresent() ? stop.staticPa() + friction.getAsDouble() : Double.POSITIVE_INFINITY;
    boolean enough = stop.availablePa() >= high;
    boolean never = pump && stop.availablePa() < low;
    boolean burst = pump && stop.weakestPa().isPresent() && high > stop.weakestPa().getAsDouble();
    boolean wedges = pump && stop.plugs().stream().anyMatch(plug -> !plug.movable());
    add(
        never || burst || wedges ? Severity.CAUTION : Severity.NOTE,
        Topic.STOP,
        "line",
        !pump
            ? "No pump is given that could be held against the pressure that restarting takes."
            : never
                ? "Stopped full and settled, the line cannot be started again by what drives it."
                : wedges
                    ? "Stopped full and settled, the line may be lost to pumping: a plug may wedge."
                    : enough
                        ? burst
                            ? "To restart the settled line may take more than its pipe is rated for."
                            : "What drives the line can be expected to move its settled bed."
                        : "Whether what drives the line moves its settled bed is uncertain.",
        "To start it may take "
            + show(Kind.PRESSURE, low)
            + (friction.isPresent()
                ? " to " + show(Kind.PRESSURE, high)
                : " or, with a plug that wedges, more than any pump has")
            + ", static pressure included (sliding bed "
            + show(Kind.PRESSURE, stop.restart().slidingBedPa())
            + ", yield "
            + show(Kind.PRESSURE, stop.restart().yieldPa())
            + ", plug "
            + show(Kind.PRESSURE, stop.restart().plugPa())
            + (stop.plugs().isEmpty() || stop.restart().wedgedPa().isEmpty()
                ? ""
                : " seeping to "
                    + show(Kind.PRESSURE, stop.restart().wedgedPa().getAsDouble())
                    + " wedged")
            + "; known to a factor of about 2 at best)"
            + (pump ? "; there is " + show(Kind.PRESSURE, stop.availablePa()) : "")
            + (stop.weakestPa().isPresent()
                ? ", and the weakest pipe is rated "
                    + show(Kind.PRESSURE, stop.weakestPa().getAsDouble())
                : "")
            + ".",
        enough && !burst && !wedges
            ? ""
            : "Never stop it full: flush first, and have a second way to flush when the power fails.");
  }

  private void flush(StopResult stop) {
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
    if (stop.supply().isEmpty()) {
      add(
          Severity.NOTE,
          Topic.STOP,
          "flush",
          "Before every stop flush the line with sand-free water.",
          need + ".",
          "");
      return;
    }
    FlushFlow supply = stop.supply().get();
    double volume = stop.supplyVolumeM3().orElse(flush.volumeM3());
    boolean before = flush.givenBy(supply.loadedM3ps().orElse(0), volume);
    boolean bed = before && supply.wearsBedOff();
    boolean lies = stop.runs().stream().anyMatch(run -> run.settlingS().isPresent());
    boolean all = bed && stop.plugs().isEmpty() || before && !lies;
    add(
        all ? Severity.PASS : Severity.CAUTION,
        Topic.STOP,
        "flush",
        all
            ? "The supply of the flush can clear the line."
            : before
                ? stop.plugs().isEmpty()
                    ? "The supply can flush the line before a stop, but not the bed that a stop"
                        + " without a flush leaves."
                    : "The supply can flush the line before a stop, but no flush clears the sand"
                        + " that a stop without one packs full."
                : "The supply of the flush cannot clear the line.",
        need + "; " + gives(supply) + held(stop, volume) + ".",
        all
            ? ""
            : before
                ? "Flush before every stop, by power of its own when the mains fail, and fit drains"
                    + " and clean-outs where the sand packs."
                : "Provide "
                    + show(Kind.FLOW, flush.flowM3ps())
                    + " and "
                    + show(Kind.VOLUME, flush.volumeM3())
                    + ", with an air gap or an approved backflow preventer.");
  }

  private String held(StopResult stop, double volume) {
    if (stop.supplyVolumeM3().isEmpty()) {
      return "";
    }
    double loaded = stop.supply().orElseThrow().loadedM3ps().orElse(0);
    return ". It holds "
        + show(Kind.VOLUME, volume)
        + (loaded > 0 ? ", which lasts " + duration(volume / loaded) : "");
  }

  private String gives(FlushFlow supply) {
    OverBed slowest =
        supply.runs().stream()
            .min(
                Comparator.comparingDouble(
                    run -> run.velocityMps() / run.clearingMps().orElse(Double.MAX_VALUE)))
            .orElseThrow();
    String bed =
        slowest.velocityMps() > 0
            ? "over the settled bed it runs at "
                + show(Kind.VELOCITY, slowest.velocityMps())
                + " in "
                + slowest.run()
                + (slowest.clearingMps().isPresent()
                    ? ", where the empty pipe needs "
                        + show(Kind.VELOCITY, slowest.clearingMps().getAsDouble())
                    : "")
            : "over the settled bed nothing flows";
    if (!supply.solved()) {
      return "the supply gives "
          + show(Kind.FLOW, supply.cleanM3ps().orElse(0))
          + ", taken as given against the line; "
          + bed;
    }
    return "the supply gives "
        + given(supply.cleanM3ps())
        + " into the clean line, "
        + given(supply.loadedM3ps())
        + " while the line is full of this sand and "
        + given(supply.bedM3ps())
        + " with the sand settled; "
        + bed;
  }

  private String given(OptionalDouble flow) {
    return flow.isPresent() ? show(Kind.FLOW, flow.getAsDouble()) : "nothing";
  }

  private void day(Day day) {
    double most = InUnit.ofDays(1);
    boolean fits = day.runningS() <= most;
    Day longest =
        result.days().stream().max(Comparator.comparingDouble(Day::runningS)).orElseThrow();
    boolean allFit = longest.runningS() <= most;
    add(
        allFit ? Severity.PASS : fits ? Severity.CAUTION : Severity.FAIL,
        Topic.DAY,
        "pump",
        allFit
            ? "The day's volume is moved within a day."
            : fits
                ? "In its worst state the pump does not move the day's volume within a day."
                : "A day is too short for its volume.",
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
            + (longest == day
                ? ""
                : ". Longest it takes in the state \""
                    + longest.state()
                    + "\": "
                    + show(Kind.HOURS, longest.runningS())
                    + " and "
                    + show(Kind.ENERGY, longest.energyJ()))
            + ".",
        allFit
            ? ""
            : "Pump " + show(Kind.PERCENT, longest.runningS() / most) + " of its flow there.");
    starts();
  }

  /** The fullest flow starts most often. */
  private void starts() {
    Optional<Day> often =
        result.days().stream()
            .filter(d -> d.startsPs().isPresent())
            .max(Comparator.comparingDouble(d -> d.startsPs().getAsDouble()));
    if (often.isEmpty()) {
      return;
    }
    double starts = often.get().startsPs().getAsDouble();
    OptionalInt typed = design.service().operation().orElseThrow().mostStartsPerHour();
    Optional<MotorSpec> motor = design.pump().flatMap(p -> p.motor());
    OptionalDouble limit =
        typed.isPresent()
            ? OptionalDouble.of(typed.getAsInt() / InUnit.ofHours(1))
            : motor.isPresent()
                ? MotorStarts.mostPs(Measure.POWER.si(motor.get().rating()))
                : OptionalDouble.empty();
    String why =
        "At an inflow of half its flow, in the state \""
            + often.get().state()
            + "\", the pump starts at a rate of "
            + show(Kind.STARTS, starts)
            + "; ";
    if (limit.isEmpty()) {
      add(
          Severity.NOTE,
          Topic.DAY,
          "starts",
          "The starts of the pump were not judged.",
          why + "how many motor and starter bear is not given, nor a rating that would tell.",
          "");
      return;
    }
    boolean many = starts > limit.getAsDouble();
    double batch =
        Measure.VOLUME.si(design.service().operation().orElseThrow().batchVolume().orElseThrow());
    add(
        many ? Severity.CAUTION : Severity.PASS,
        Topic.DAY,
        "starts",
        many
            ? "The pump may start more often than motor and starter bear."
            : "The pump starts no more often than motor and starter bear.",
        why
            + show(Kind.STARTS, limit.getAsDouble())
            + (typed.isPresent()
                ? " is given as the most."
                : " is the most by the table for its motor (U.S. Army EI 11C201, 1997); the maker's"
                    + " figure comes first."),
        many
            ? "Take a batch of "
                + show(Kind.VOLUME, batch * starts / limit.getAsDouble())
                + " or more between start and stop."
            : "");
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
            + show(Kind.FLOW, screw.loadM3ps())
            + (screw.typed() ? "" : ", that of the pens,")
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
    screw.pens().ifPresent(pens -> pens(screw, pens));
  }

  /** The load that was typed beside that of the pens. */
  private void pens(Screw screw, PenFeed pens) {
    String why =
        "All pens scraped at once bring "
            + show(Kind.VOLUME, pens.batchM3())
            + " at most; in "
            + duration(pens.scrapeS())
            + " that is "
            + show(Kind.FLOW, pens.loadM3ps());
    if (!screw.typed()) {
      add(
          Severity.NOTE,
          Topic.FEED,
          "screw",
          "The load of the screw is that of the pens.",
          why + ", at " + show(Kind.DENSITY, screw.densityKgM3()) + ".",
          "");
      return;
    }
    double ratio = screw.loadM3ps() / pens.loadM3ps();
    boolean less = ratio < 1 - SAME_LOAD;
    boolean same = Math.abs(ratio - 1) <= SAME_LOAD;
    add(
        less ? Severity.CAUTION : Severity.NOTE,
        Topic.FEED,
        "screw",
        less
            ? "The load typed for the screw is less than the pens bring."
            : same
                ? "The load typed for the screw is that of the pens."
                : "The load typed for the screw is more than the pens bring.",
        why + "; " + show(Kind.FLOW, screw.loadM3ps()) + " was typed.",
        less
            ? "Leave the load out, and it is that of the pens; or scrape over "
                + duration(pens.batchM3() / screw.loadM3ps())
                + "."
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
