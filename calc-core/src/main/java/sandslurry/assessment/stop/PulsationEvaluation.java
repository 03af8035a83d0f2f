package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.SuctionEvaluation;
import sandslurry.assessment.stop.PulsationResult.Peak;
import sandslurry.assessment.stop.PulsationResult.Pulse;
import sandslurry.assessment.stop.PulsationResult.Strained;
import sandslurry.assessment.stop.PulsationResult.Vessel;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.PulsationSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.pump.piston.AirVessel;
import sandslurry.pump.piston.FlowRipple;
import sandslurry.pump.piston.ReliefWindow;
import sandslurry.pump.piston.StrokeDrive;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * The pulsing of a piston pump in its line, behind an air vessel if there is one.
 *
 * @param model the physics of its line
 */
public record PulsationEvaluation(LineModel model) {
  private static final int CYCLE_STEPS = 720;

  /** Flows above the mean at which the line is worked out; between them the pressure is a curve. */
  private static final int PRESSURE_POINTS = 12;

  /** Flow over the mean flow below which the liquid is taken to lose no less. */
  private static final double LEAST_RATIO = 0.01;

  /**
   * Flow and pressure in the line behind a piston pump and its air vessel.
   *
   * @param base the line at each flow rate that is judged
   * @return the pulsation; empty without a piston pump, its strokes or a duty point
   */
  public Optional<PulsationResult> result(List<State> base) {
    Optional<State> duty = base.stream().filter(s -> s.flowCase() == FlowCase.DUTY).findFirst();
    Optional<PistonSpec> piston =
        model.design().pump().flatMap(PumpSpec::piston).filter(one -> one.pulsation().isPresent());
    if (duty.isEmpty() || piston.isEmpty()) {
      return Optional.empty();
    }
    PistonSpec spec = piston.get();
    PulsationSpec pulsation = spec.pulsation().get();
    StrokeDrive drive = pulsation.drive(spec.strokeRatePs());
    double rate = spec.strokeRatePs();
    State state = duty.get();
    Optional<Vessel> vessel = pulsation.vesselGasM3().map(gas -> vessel(gas, state, drive, rate));
    double passed = vessel.map(PulsationEvaluation::passed).orElseGet(() -> pulsation.passed());
    FlowRipple ripple = drive.ripple().damped(passed);
    double density = model.materials().mixtureDensityKgM3(state.sandFraction());
    RunPoint first = state.runs().get(0);
    // No column takes more than the pressure wave of the whole swing.
    double swing = (ripple.greatestRatio() - ripple.leastRatio()) * first.velocityMps();
    double wave = waveMps(first.pipe().spec(), density) * swing / Physics.GRAVITY;
    double acceleration = 0;
    for (RunPoint run : state.runs()) {
      acceleration +=
          passed * drive.accelerationHeadM(run.pipe().spec().lengthM(), run.velocityMps(), rate);
    }
    acceleration = Math.min(acceleration, wave);
    Peak worst = peak(state, drive, passed, rate, wave);
    double peak = worst.pressurePa();
    OptionalDouble weakest = model.weakestRatingPa();
    List<Pulse> pulses = new ArrayList<>();
    for (RunPoint run : state.runs()) {
      // A run that never reaches the limit settles without any pulse.
      if (run.limitMps().isPresent()
          && ripple.greatestVelocityMps(run.leastVelocityMps()) >= run.limitMps().getAsDouble()) {
        pulses.add(pulse(run, drive, passed, rate));
      }
    }
    return Optional.of(
        new PulsationResult(
            ripple,
            acceleration,
            startPressurePa(state),
            worst,
            weakest,
            weakest.isPresent()
                ? ReliefWindow.of(Math.max(peak, 0), weakest.getAsDouble())
                : Optional.empty(),
            pulses,
            strained(state, ripple),
            passed,
            vessel));
  }

  /** Runs that the yield stress carries at the mean flow and not at the greatest of a stroke. */
  private List<Strained> strained(State state, FlowRipple ripple) {
    if (state.runs().stream().noneMatch(PulsationEvaluation::carriedByYield)
        || !(ripple.greatestRatio() > 1)) {
      return List.of();
    }
    List<RunPoint> fastest = at(state, ripple.greatestRatio(), state.sandFraction()).runs();
    List<Strained> strained = new ArrayList<>();
    for (int i = 0; i < fastest.size(); i++) {
      RunPoint fast = fastest.get(i);
      if (carriedByYield(state.runs().get(i)) && fast.severity() != Severity.PASS) {
        SandCarriage carriage = fast.carriage().orElseThrow();
        strained.add(
            new Strained(
                fast.pipe().spec().name(),
                fast.leastVelocityMps(),
                1 - carriage.outsidePlugShare(),
                carriage.support()));
      }
    }
    return strained;
  }

  private static boolean carriedByYield(RunPoint run) {
    return run.severity() == Severity.PASS
        && run.regime() != Regime.TURBULENT
        && run.carriage().isPresent();
  }

  /**
   * The moment at which static pressure, friction at the flow of that moment and the inertia of the
   * line together are greatest. The flow is followed step by step round the cycle; what speeds up
   * the line is its slope, at most the pressure wave of the whole swing.
   */
  private Peak peak(State state, StrokeDrive drive, double passed, double rate, double wave) {
    double density = model.materials().mixtureDensityKgM3(state.sandFraction());
    double[] ratio = new double[CYCLE_STEPS];
    for (int i = 0; i < CYCLE_STEPS; i++) {
      double angle = 2 * Math.PI * i / CYCLE_STEPS;
      ratio[i] = 1 + passed * (drive.relativeFlow(angle) - 1);
    }
    DoubleUnaryOperator steady =
        steadyPa(
            state,
            Arrays.stream(ratio).min().orElseThrow(),
            Arrays.stream(ratio).max().orElseThrow());
    double column = 0;
    for (RunPoint run : state.runs()) {
      column += run.pipe().spec().lengthM() * run.velocityMps() / Physics.GRAVITY;
    }
    double step = 1 / (rate * CYCLE_STEPS);
    Peak worst = new Peak(1, startPressurePa(state), 0, startPressurePa(state));
    for (int i = 0; i < CYCLE_STEPS; i++) {
      double next = ratio[(i + 1) % CYCLE_STEPS];
      double before = ratio[(i + CYCLE_STEPS - 1) % CYCLE_STEPS];
      // A corner of the motion speeds up the line by the steeper of its sides.
      double slope = Math.max(next - ratio[i], ratio[i] - before) / step;
      double head = Math.min(wave, column * slope);
      double alone = steady.applyAsDouble(ratio[i]);
      Peak here = new Peak(ratio[i], alone, head, alone + density * Physics.GRAVITY * head);
      worst = here.pressurePa() > worst.pressurePa() ? here : worst;
    }
    return worst;
  }

  /**
   * Pressure at the start of the line at a share of the mean flow. Above the mean it is that of the
   * line at that flow; below, the liquid alone loses less, while the sand rubs as at the mean: no
   * bed forms within a stroke.
   */
  private DoubleUnaryOperator steadyPa(State state, double leastRatio, double greatestRatio) {
    double mean = startPressurePa(state);
    if (!(greatestRatio > 1) || !(leastRatio < 1)) {
      return ratio -> mean;
    }
    double liquid = startPressurePa(at(state, 1, 0));
    MonotoneCurve above =
        curve(1, greatestRatio, ratio -> startPressurePa(at(state, ratio, state.sandFraction())));
    double from = Math.max(leastRatio, LEAST_RATIO);
    MonotoneCurve below =
        curve(from, 1, ratio -> mean - liquid + startPressurePa(at(state, ratio, 0)));
    return ratio -> ratio >= 1 ? above.at(ratio) : below.at(Math.max(from, ratio));
  }

  private static MonotoneCurve curve(double from, double to, DoubleUnaryOperator pressurePa) {
    double[] ratios = new double[PRESSURE_POINTS + 1];
    double[] pressures = new double[PRESSURE_POINTS + 1];
    for (int i = 0; i <= PRESSURE_POINTS; i++) {
      ratios[i] = i == PRESSURE_POINTS ? to : from + (to - from) * i / PRESSURE_POINTS;
      pressures[i] = pressurePa.applyAsDouble(ratios[i]);
    }
    return new MonotoneCurve(ratios, pressures);
  }

  private State at(State state, double ratio, double sandFraction) {
    double flow = ratio * state.flowM3ps();
    return new State(state.flowCase(), flow, sandFraction, model.runs(flow, sandFraction));
  }

  private Vessel vessel(double gas, State state, StrokeDrive drive, double rate) {
    double density = model.materials().mixtureDensityKgM3(state.sandFraction());
    double inertance = 0;
    for (RunPoint run : state.runs()) {
      inertance += density * run.pipe().spec().lengthM() / run.pipe().mean().areaM2();
    }
    // A line that runs by itself may start below the air: then the gas is at the pressure of that.
    double absolute = Math.max(startPressurePa(state), 0) + SuctionEvaluation.airPa(model.design());
    AirVessel vessel = new AirVessel(gas, absolute, AirVessel.FAST);
    double swells = drive.pulsesPerCycle() * rate;
    double stored = drive.surplusShare() * state.flowM3ps() / rate;
    return new Vessel(
        gas,
        absolute,
        inertance,
        swells,
        vessel.ownFrequencyPs(inertance),
        // A swell that fills the vessel leaves no spring: the balance of small swings is none.
        stored < gas && vessel.passedShare(inertance, swells).isPresent(),
        stored,
        Math.max(
            AirVessel.gasForM3(absolute, AirVessel.FAST, inertance, swells, Vessel.GOOD_SHARE),
            stored / Vessel.GOOD_SHARE));
  }

  /** A vessel that does not damp is taken to let all through; its finding says that it is worse. */
  private static double passed(Vessel vessel) {
    return vessel.damps()
        ? new AirVessel(vessel.gasM3(), vessel.absolutePa(), AirVessel.FAST)
            .passedShare(vessel.inertanceKgM4(), vessel.swellsPs())
            .orElseThrow()
        : 1;
  }

  private double startPressurePa(State state) {
    double density = model.materials().mixtureDensityKgM3(state.sandFraction());
    return density
        * Physics.GRAVITY
        * (model.totalHeadsM(state.runs()).get(0) - state.runs().get(0).velocityHeadM());
  }

  private static double waveMps(RunSpec run, double density) {
    return run.pipe().isPresent()
        ? new Joukowsky1898().waveSpeedMps(run.pipe().get(), density)
        : Math.sqrt(Joukowsky1898.WATER_MODULUS_PA / density);
  }

  private static Pulse pulse(RunPoint run, StrokeDrive drive, double passed, double rate) {
    double limit = run.limitMps().orElseThrow();
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
                run.mixture().rheology(),
                run.slurry().liquid().densityKgM3(),
                SettlingVelocities.DEFAULT)
            .value();
    return new Pulse(
        run.pipe().spec().name(),
        ripple.leastVelocityMps(run.leastVelocityMps()),
        limit,
        (double) below / CYCLE_STEPS,
        pause,
        fall * pause,
        run.pipe().largest().diameterM(),
        fall > 0
            ? OptionalDouble.of(run.pipe().largest().diameterM() / fall)
            : OptionalDouble.empty(),
        ripple.greatestVelocityMps(run.leastVelocityMps()),
        run.toPassMps().orElseThrow());
  }
}
