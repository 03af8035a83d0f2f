package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.LineEvaluation.State;
import sandslurry.assessment.PulsationResult.Pulse;
import sandslurry.assessment.PulsationResult.Vessel;
import sandslurry.assessment.ServiceResult.Day;
import sandslurry.assessment.ServiceResult.GravityRun;
import sandslurry.assessment.ServiceResult.PenFeed;
import sandslurry.assessment.ServiceResult.Screw;
import sandslurry.assessment.StateResult.Point;
import sandslurry.assessment.StatesEvaluation.Evaluated;
import sandslurry.assessment.SurgeResult.LowWave;
import sandslurry.assessment.SurgeResult.SlowStop;
import sandslurry.circuit.PenLoad;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.PulsationSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.GravityRunSpec;
import sandslurry.design.ServiceSpec.OperationSpec;
import sandslurry.design.ServiceSpec.ScrewSpec;
import sandslurry.material.Liquid;
import sandslurry.material.Vehicle;
import sandslurry.material.Water;
import sandslurry.pipe.GassyLiquid;
import sandslurry.pipe.Joukowsky1898;
import sandslurry.pump.AirVessel;
import sandslurry.pump.DailyDuty;
import sandslurry.pump.FlowRipple;
import sandslurry.pump.ReliefWindow;
import sandslurry.pump.ScrewConveyor;
import sandslurry.pump.StandardAtmosphere;
import sandslurry.pump.StrokeDrive;
import sandslurry.separation.PartFullPipe;
import sandslurry.separation.PartFullPipe.PartFullFlow;
import sandslurry.separation.ScourModels;
import sandslurry.separation.SelfCleansing;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.units.Measure;

/** Evaluates what a line meets in service beside its design state. */
final class ServiceEvaluation {
  private static final int CYCLE_STEPS = 720;
  private static final Joukowsky1898 JOUKOWSKY = new Joukowsky1898();

  private final Design design;
  private final Materials materials;
  private final Optional<StatesEvaluation> states;
  private final Optional<LineModel> model;
  private final ServiceResult result;

  /** A design without a line. */
  ServiceEvaluation(Design design, Materials materials) {
    this.design = design;
    this.materials = materials;
    this.states = Optional.empty();
    this.model = Optional.empty();
    this.result =
        new ServiceResult(
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            List.of(),
            design.service().screw().map(this::screw),
            design.service().gravityRun().map(this::gravityRun));
  }

  ServiceEvaluation(
      Design design,
      Materials materials,
      LineModel model,
      List<State> base,
      Optional<PumpResult> pump,
      boolean everyState) {
    this.design = design;
    this.materials = materials;
    this.model = Optional.of(model);
    StatesEvaluation evaluation =
        new StatesEvaluation(design, materials, model, base, pump, everyState);
    this.states = Optional.of(evaluation);
    List<StateResult> all = evaluation.all().stream().map(Evaluated::result).toList();
    Optional<PulsationResult> pulsation = pulsation(base);
    this.result =
        new ServiceResult(
            all,
            evaluation.band(),
            evaluation.governing().map(Evaluated::result),
            pulsation,
            design.pump().isPresent() ? surges(base, pulsation) : List.of(),
            new StopEvaluation(design, materials, model).result(),
            days(all),
            design.service().screw().map(this::screw),
            design.service().gravityRun().map(this::gravityRun));
  }

  ServiceResult result() {
    return result;
  }

  Optional<StatesEvaluation> states() {
    return states;
  }

  private static Optional<State> duty(List<State> base) {
    return base.stream().filter(s -> s.flowCase() == FlowCase.DUTY).findFirst();
  }

  /** The flow in the line behind an air vessel, if there is one, and the head that speeds it up. */
  private Optional<PulsationResult> pulsation(List<State> base) {
    Optional<State> duty = duty(base);
    if (duty.isEmpty()
        || !(design.pump().orElse(null) instanceof PistonSpec spec)
        || spec.pulsation().isEmpty()) {
      return Optional.empty();
    }
    PulsationSpec pulsation = spec.pulsation().get();
    StrokeDrive drive = pulsation.drive(spec.strokeRate());
    double rate = Measure.FREQUENCY.si(spec.strokeRate());
    State state = duty.get();
    Optional<Vessel> vessel =
        pulsation.vesselGas().map(gas -> vessel(Measure.VOLUME.si(gas), state, drive, rate));
    double passed =
        vessel
            .map(ServiceEvaluation::passed)
            .orElseGet(() -> Measure.FRACTION.si(pulsation.passed()));
    FlowRipple ripple = drive.ripple().damped(passed);
    double density = materials.mixtureDensityKgM3(state.sandFraction());
    double acceleration = 0;
    for (RunPoint run : state.runs()) {
      acceleration +=
          passed
              * drive.accelerationHeadM(
                  Measure.LENGTH.si(run.run().length()), run.velocityMps(), rate);
    }
    RunPoint first = state.runs().get(0);
    // No column takes more than the pressure wave of the whole swing.
    double swing = (ripple.greatestRatio() - ripple.leastRatio()) * first.velocityMps();
    acceleration = Math.min(acceleration, waveMps(first.run(), density) * swing / Physics.GRAVITY);
    double mean = startPressurePa(state);
    double peak = mean + density * Physics.GRAVITY * acceleration;
    OptionalDouble weakest =
        model.orElseThrow().route().runs().stream()
            .map(run -> run.ratingPa(materials.carrier().temperatureK()))
            .filter(OptionalDouble::isPresent)
            .mapToDouble(OptionalDouble::getAsDouble)
            .min();
    List<Pulse> pulses = new ArrayList<>();
    for (RunPoint run : state.runs()) {
      if (run.deposition().isPresent() && run.regime() == Regime.TURBULENT) {
        pulses.add(pulse(run, drive, passed, rate));
      }
    }
    return Optional.of(
        new PulsationResult(
            ripple,
            acceleration,
            peak,
            weakest,
            weakest.isPresent()
                ? ReliefWindow.of(Math.max(peak, 0), weakest.getAsDouble())
                : Optional.empty(),
            pulses,
            passed,
            vessel));
  }

  private Vessel vessel(double gas, State state, StrokeDrive drive, double rate) {
    double density = materials.mixtureDensityKgM3(state.sandFraction());
    double inertance = 0;
    for (RunPoint run : state.runs()) {
      inertance += density * Measure.LENGTH.si(run.run().length()) / run.mean().areaM2();
    }
    // A line that runs by itself may start below the air: then the gas is at the pressure of that.
    double absolute = Math.max(startPressurePa(state), 0) + airPa();
    AirVessel vessel = new AirVessel(gas, absolute, AirVessel.FAST);
    double swells = drive.pulsesPerCycle() * rate;
    return new Vessel(
        gas,
        absolute,
        inertance,
        swells,
        vessel.ownFrequencyPs(inertance),
        vessel.passedShare(inertance, swells).isPresent(),
        drive.surplusShare() * state.flowM3ps() / rate,
        AirVessel.gasForM3(absolute, AirVessel.FAST, inertance, swells, Vessel.GOOD_SHARE));
  }

  /** A vessel that does not damp is taken to let all through; its finding says that it is worse. */
  private static double passed(Vessel vessel) {
    return new AirVessel(vessel.gasM3(), vessel.absolutePa(), AirVessel.FAST)
        .passedShare(vessel.inertanceKgM4(), vessel.swellsPs())
        .orElse(1);
  }

  private double airPa() {
    double altitude =
        design.service().suction().map(s -> Measure.LENGTH.si(s.altitude())).orElse(0.0);
    return new StandardAtmosphere().pressurePa(altitude).value();
  }

  private double startPressurePa(State state) {
    LineModel line = model.orElseThrow();
    double density = materials.mixtureDensityKgM3(state.sandFraction());
    return density
        * Physics.GRAVITY
        * (line.totalHeadsM(state.runs()).get(0) - state.runs().get(0).velocityHeadM());
  }

  private static double waveMps(RunSpec run, double density) {
    return run.pipe().isPresent()
        ? JOUKOWSKY.waveSpeedMps(run.pipe().get(), density)
        : Math.sqrt(GassyLiquid.WATER_MODULUS_PA / density);
  }

  private static Pulse pulse(RunPoint run, StrokeDrive drive, double passed, double rate) {
    double limit = run.deposition().orElseThrow().limitMps();
    FlowRipple ripple = drive.ripple().damped(passed);
    int below = 0;
    int streak = 0;
    int longest = 0;
    // Twice around, so that a pause over the start of the cycle counts as one.
    for (int i = 0; i < 2 * CYCLE_STEPS; i++) {
      double angle = 2 * Math.PI * i / CYCLE_STEPS;
      double flow = 1 + passed * (drive.relativeFlow(angle) - 1);
      if (flow * run.leastVelocityMps() < limit) {
        streak++;
        below += i < CYCLE_STEPS ? 1 : 0;
      } else {
        streak = 0;
      }
      longest = Math.max(longest, Math.min(streak, CYCLE_STEPS));
    }
    double pause = (double) longest / CYCLE_STEPS / rate;
    double fall =
        ShearSettling.atRest(
                run.slurry().d85Grain(),
                run.rheology(),
                run.slurry().liquid().densityKgM3(),
                SettlingVelocities.DEFAULT)
            .value();
    return new Pulse(
        run.run().name(),
        ripple.leastVelocityMps(run.leastVelocityMps()),
        limit,
        (double) below / CYCLE_STEPS,
        pause,
        fall * pause,
        run.largest().diameterM(),
        fall > 0 ? OptionalDouble.of(run.largest().diameterM() / fall) : OptionalDouble.empty(),
        ripple.greatestVelocityMps(run.leastVelocityMps()),
        run.deposition().orElseThrow().velocityToPassMps());
  }

  /** Every run at its fastest, stopped at once, and in the time given. */
  private List<SurgeResult> surges(List<State> base, Optional<PulsationResult> pulsation) {
    List<SurgeResult> surges = new ArrayList<>();
    List<RunSpec> runs = model.orElseThrow().route().runs();
    Optional<Double> stopS =
        design
            .service()
            .operation()
            .flatMap(OperationSpec::stopTime)
            .map(time -> Measure.TIME.si(time));
    double column = runs.stream().mapToDouble(r -> Measure.LENGTH.si(r.length())).sum();
    double pulse =
        pulsation
            .map(
                p ->
                    p.accelerationM()
                        * Physics.GRAVITY
                        * materials.mixtureDensityKgM3(base.get(0).sandFraction()))
            .orElse(0.0);
    double ripple = pulsation.map(p -> p.ripple().greatestRatio()).orElse(1.0);
    for (int i = 0; i < runs.size(); i++) {
      RunSpec run = runs.get(i);
      if (run.pipe().isEmpty()) {
        continue;
      }
      double velocity = 0;
      double density = 0;
      double working = 0;
      for (State state : base) {
        double here = materials.mixtureDensityKgM3(state.sandFraction());
        double factor = state.flowCase() == FlowCase.DUTY ? ripple : 1;
        velocity = Math.max(velocity, state.runs().get(i).velocityMps() * factor);
        density = Math.max(density, here);
        RunState shown =
            LineEvaluation.at(
                    design, materials, model.orElseThrow(), state.flowCase(), state.flowM3ps())
                .runs()
                .get(i);
        working =
            Math.max(
                working,
                Math.max(
                        Measure.PRESSURE.si(shown.startPressure()),
                        Measure.PRESSURE.si(shown.endPressure()))
                    + (state.flowCase() == FlowCase.DUTY ? pulse : 0));
      }
      double surge = JOUKOWSKY.surgePa(run.pipe().get(), density, velocity);
      double wave = JOUKOWSKY.waveSpeedMps(run.pipe().get(), density);
      Optional<SlowStop> slow = Optional.empty();
      if (stopS.isPresent()) {
        slow =
            Optional.of(
                new SlowStop(
                    stopS.get(),
                    JOUKOWSKY.returnTimeS(column, wave),
                    JOUKOWSKY.stopPa(density, wave, velocity, column, stopS.get())));
      }
      double judged = slow.map(SlowStop::surgePa).orElse(surge);
      OptionalDouble rating = run.ratingPa(materials.carrier().temperatureK());
      OptionalDouble stop = OptionalDouble.empty();
      if (rating.isPresent() && working + judged > rating.getAsDouble()) {
        double room = rating.getAsDouble() - working;
        stop =
            room > 0
                ? OptionalDouble.of(2 * density * column * velocity / room)
                : OptionalDouble.empty();
      }
      surges.add(
          new SurgeResult(
              run.name(),
              wave,
              velocity,
              surge,
              working,
              rating,
              stop,
              slow,
              low(base, i, velocity > 0 ? judged / velocity : 0)));
    }
    return surges;
  }

  /**
   * The low half of the wave at the worse of the ends of a run. The outlet keeps its pressure.
   *
   * @param perVelocity pressure lost for each m/s stopped [Pa s/m]
   */
  private LowWave low(List<State> base, int index, double perVelocity) {
    List<RunSpec> runs = model.orElseThrow().route().runs();
    double vapour = Water.vapourPressurePa(materials.carrier().temperatureK()) - airPa();
    LowWave lowest = null;
    for (int joint = index; joint <= index + 1 && joint < runs.size(); joint++) {
      double elevation = 0;
      for (int i = 0; i < joint; i++) {
        elevation += Measure.LENGTH.si(runs.get(i).rise());
      }
      boolean high =
          joint > 0
              && Measure.LENGTH.si(runs.get(joint - 1).rise()) > 0
              && Measure.LENGTH.si(runs.get(joint).rise()) < 0;
      for (State state : base) {
        RunPoint run = state.runs().get(joint);
        double steady =
            materials.mixtureDensityKgM3(state.sandFraction())
                * Physics.GRAVITY
                * (model.orElseThrow().totalHeadsM(state.runs()).get(joint)
                    - elevation
                    - run.velocityHeadM());
        double drop = perVelocity * state.runs().get(index).velocityMps();
        if (lowest == null || steady - drop < lowest.lowestPa()) {
          lowest = new LowWave(elevation, high, steady, steady - drop, vapour);
        }
      }
    }
    return lowest;
  }

  /** A day in every state in which the pumps move the mixture; their duty stands for all. */
  private List<Day> days(List<StateResult> all) {
    Optional<OperationSpec> operation = design.service().operation();
    if (operation.isEmpty() || operation.get().dailyVolume().isEmpty()) {
      return List.of();
    }
    List<Day> days = new ArrayList<>();
    for (StateResult state : all) {
      if (state.point().map(Point::driven).orElse(false) && !StatesEvaluation.isFlush(state)) {
        days.add(day(state, operation.get()));
      }
    }
    if (days.isEmpty()) {
      all.stream()
          .filter(s -> s.point().isPresent() && s.name().startsWith(FlowCase.DESIGN.words()))
          .findFirst()
          .ifPresent(held -> days.add(day(held, operation.get())));
    }
    return days;
  }

  private Day day(StateResult state, OperationSpec operation) {
    Point point = state.point().orElseThrow();
    double daily = Measure.VOLUME.si(operation.dailyVolume().orElseThrow());
    Optional<Double> batch = operation.batchVolume().map(Measure.VOLUME::si);
    DailyDuty duty = new DailyDuty(daily, batch.orElse(daily), point.flowM3ps());
    double sandPerVolume = point.sandFraction() * materials.sandDensityKgM3();
    double input = point.inputW().orElse(0);
    return new Day(
        state.name(),
        duty.runningS(),
        batch.isPresent() ? OptionalDouble.of(duty.greatestStartRatePs()) : OptionalDouble.empty(),
        duty.energyJ(input),
        daily * sandPerVolume,
        point.inputW().isPresent()
            ? duty.energyPerSandJpKg(input, sandPerVolume)
            : OptionalDouble.empty(),
        point.wear());
  }

  private Screw screw(ScrewSpec spec) {
    ScrewConveyor screw =
        new ScrewConveyor(
            Measure.LENGTH.si(spec.diameter()),
            Measure.LENGTH.si(spec.shaft()),
            Measure.LENGTH.si(spec.pitch()),
            Math.atan(Measure.FRACTION.si(spec.slope())));
    double turns = Measure.FREQUENCY.si(spec.speed());
    Optional<PenFeed> pens = spec.scrapeTime().map(time -> pens(Measure.TIME.si(time)));
    double load =
        spec.load().map(l -> Measure.FLOW.si(l)).orElseGet(() -> pens.orElseThrow().loadM3ps());
    double bulk =
        spec.bulkDensity()
            .map(d -> Measure.DENSITY.si(d))
            .orElseGet(() -> pens.orElseThrow().densityKgM3());
    Estimate loading = screw.loading(load, turns);
    return new Screw(
        loading,
        screw.capacityM3ps(turns, ScrewConveyor.ABRASIVE_LOADING).value(),
        screw.powerW(
            load * bulk, Measure.LENGTH.si(spec.length()), ScrewConveyor.ABRASIVE_RESISTANCE),
        load,
        bulk,
        spec.load().isPresent(),
        pens);
  }

  /** All pens scraped at once: the most that the screw can be asked for. */
  private PenFeed pens(double scrapeS) {
    PlantModel plant = new PlantModel(design);
    PenLoad load = PenLoad.sum("all pens", plant.spec().pens().stream().map(plant::load).toList());
    return new PenFeed(load.volumePerBatchM3().high(), scrapeS, load.densityKgM3().base());
  }

  private GravityRun gravityRun(GravityRunSpec spec) {
    PartFullPipe pipe =
        new PartFullPipe(
            Measure.LENGTH.si(spec.bore()),
            Measure.FRACTION.si(spec.slope()),
            Measure.FRACTION.si(spec.manning()));
    OptionalDouble depth = pipe.depthShare(Measure.FLOW.si(spec.flow()));
    if (depth.isEmpty()) {
      return new GravityRun(pipe.greatestFlowM3ps(), Optional.empty(), Optional.empty(), 0);
    }
    PartFullFlow flow = pipe.atDepth(depth.getAsDouble());
    Vehicle vehicle = materials.vehicle(8 * flow.velocityMps() / (4 * flow.hydraulicRadiusM()), 0);
    Liquid liquid = vehicle.liquid();
    return new GravityRun(
        pipe.greatestFlowM3ps(),
        Optional.of(flow),
        Optional.of(
            SelfCleansing.of(
                flow, materials.slurry(liquid, 0).d85Grain(), liquid, ScourModels.SHIELDS)),
        flow.reynoldsNumber(liquid));
  }
}
