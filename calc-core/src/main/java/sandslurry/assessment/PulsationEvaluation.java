package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.LineEvaluation.State;
import sandslurry.assessment.PulsationResult.Pulse;
import sandslurry.assessment.PulsationResult.Vessel;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.PulsationSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.pipe.surge.GassyLiquid;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.pump.piston.AirVessel;
import sandslurry.pump.piston.FlowRipple;
import sandslurry.pump.piston.ReliefWindow;
import sandslurry.pump.piston.StrokeDrive;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.units.Measure;

/** The pulsing of a piston pump in its line, behind an air vessel if there is one. */
final class PulsationEvaluation {
  private static final int CYCLE_STEPS = 720;

  private final Design design;
  private final Materials materials;
  private final LineModel model;

  PulsationEvaluation(Design design, Materials materials, LineModel model) {
    this.design = design;
    this.materials = materials;
    this.model = model;
  }

  /** The flow in the line behind an air vessel, if there is one, and the head that speeds it up. */
  Optional<PulsationResult> result(List<State> base) {
    Optional<State> duty = base.stream().filter(s -> s.flowCase() == FlowCase.DUTY).findFirst();
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
            .map(PulsationEvaluation::passed)
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
    OptionalDouble weakest = model.weakestRatingPa();
    List<Pulse> pulses = new ArrayList<>();
    for (RunPoint run : state.runs()) {
      if (run.limitMps().isPresent()) {
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
    double absolute = Math.max(startPressurePa(state), 0) + SuctionEvaluation.airPa(design);
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

  private double startPressurePa(State state) {
    double density = materials.mixtureDensityKgM3(state.sandFraction());
    return density
        * Physics.GRAVITY
        * (model.totalHeadsM(state.runs()).get(0) - state.runs().get(0).velocityHeadM());
  }

  private static double waveMps(RunSpec run, double density) {
    return run.pipe().isPresent()
        ? new Joukowsky1898().waveSpeedMps(run.pipe().get(), density)
        : Math.sqrt(GassyLiquid.WATER_MODULUS_PA / density);
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
        run.toPassMps().orElseThrow());
  }
}
