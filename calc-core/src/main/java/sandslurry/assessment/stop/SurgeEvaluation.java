package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.SuctionEvaluation;
import sandslurry.assessment.stop.SurgeResult.LowWave;
import sandslurry.assessment.stop.SurgeResult.SlowStop;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.material.liquid.Water;
import sandslurry.pipe.surge.Joukowsky1898;

/**
 * The surge when the flow through a line stops.
 *
 * @param model the physics of its line
 */
public record SurgeEvaluation(LineModel model) {
  private static final Joukowsky1898 JOUKOWSKY = new Joukowsky1898();

  /**
   * Surge in every run at its greatest velocity: of a sudden stop, and of a stop in the time given.
   *
   * @param base the line at each flow rate that is judged
   * @param pulsation the pulsation; empty without a piston pump
   * @return one result for each run, in the order of flow
   */
  public List<SurgeResult> result(List<State> base, Optional<PulsationResult> pulsation) {
    List<SurgeResult> surges = new ArrayList<>();
    for (int i = 0; i < model.route().runs().size(); i++) {
      if (model.route().runs().get(i).pipe().isPresent()) {
        surges.add(surge(base, i, fastest(base, i, pulsation)));
      }
    }
    return surges;
  }

  /**
   * A run at its worst.
   *
   * @param velocityMps greatest velocity [m/s]
   * @param densityKgM3 greatest density of the mixture [kg/m3]
   * @param workingPa greatest working pressure, with the pulse of the pump [Pa]
   */
  private record Fastest(double velocityMps, double densityKgM3, double workingPa) {}

  private Fastest fastest(List<State> base, int run, Optional<PulsationResult> pulsation) {
    double pulse = pulsation.map(p -> pulsePa(base, p)).orElse(0.0);
    double ripple = pulsation.map(p -> p.ripple().greatestRatio()).orElse(1.0);
    double velocity = 0;
    double density = 0;
    double working = 0;
    for (State state : base) {
      boolean duty = state.flowCase() == FlowCase.DUTY;
      velocity = Math.max(velocity, state.runs().get(run).velocityMps() * (duty ? ripple : 1));
      density = Math.max(density, model.materials().mixtureDensityKgM3(state.sandFraction()));
      working =
          Math.max(
              working, model.pressures(state.runs()).get(run).greatestPa() + (duty ? pulse : 0));
    }
    return new Fastest(velocity, density, working);
  }

  private SurgeResult surge(List<State> base, int index, Fastest fastest) {
    RunSpec run = model.route().runs().get(index);
    double velocity = fastest.velocityMps();
    double density = fastest.densityKgM3();
    double column = model.route().runs().stream().mapToDouble(r -> r.lengthM()).sum();
    double surge = JOUKOWSKY.surgePa(run.pipe().orElseThrow(), density, velocity);
    double wave = JOUKOWSKY.waveSpeedMps(run.pipe().orElseThrow(), density);
    Optional<SlowStop> slow =
        model
            .design()
            .service()
            .operation()
            .flatMap(OperationSpec::stopTimeS)
            .map(
                time ->
                    new SlowStop(
                        time,
                        JOUKOWSKY.returnTimeS(column, wave),
                        JOUKOWSKY.stopPa(density, wave, velocity, column, time)));
    double judged = slow.map(SlowStop::surgePa).orElse(surge);
    OptionalDouble rating = run.ratingPa(model.materials().warmestK());
    double room = rating.orElse(Double.POSITIVE_INFINITY) - fastest.workingPa();
    return new SurgeResult(
        run.name(),
        density,
        wave,
        velocity,
        surge,
        fastest.workingPa(),
        rating,
        room > 0 && judged > room
            ? OptionalDouble.of(2 * density * column * velocity / room)
            : OptionalDouble.empty(),
        slow,
        low(base, index, velocity > 0 ? judged / velocity : 0));
  }

  /**
   * What a stroke adds to the working pressure of the duty: at the start of the line its peak over
   * the mean, with friction at that flow rate, or no less than what speeds up the line.
   */
  private double pulsePa(List<State> base, PulsationResult pulsation) {
    double accelerating =
        pulsation.accelerationM()
            * Physics.GRAVITY
            * model.materials().mixtureDensityKgM3(base.get(0).sandFraction());
    return Math.max(accelerating, pulsation.peakPa() - pulsation.meanPa());
  }

  /**
   * The low half of the wave at the worse of the ends of a run. The outlet keeps its pressure.
   *
   * @param perVelocity pressure lost for each m/s stopped [Pa s/m]
   */
  private LowWave low(List<State> base, int index, double perVelocity) {
    List<RunSpec> runs = model.route().runs();
    double vapour =
        Water.vapourPressurePa(model.materials().carrier().temperatureK())
            - SuctionEvaluation.airPa(model.design());
    LowWave lowest = null;
    for (int joint = index; joint <= index + 1 && joint < runs.size(); joint++) {
      double elevation = 0;
      for (int i = 0; i < joint; i++) {
        elevation += runs.get(i).riseM();
      }
      boolean high = joint > 0 && runs.get(joint - 1).riseM() > 0 && runs.get(joint).riseM() < 0;
      for (State state : base) {
        RunPoint run = state.runs().get(joint);
        double steady =
            model.materials().mixtureDensityKgM3(state.sandFraction())
                * Physics.GRAVITY
                * (model.totalHeadsM(state.runs()).get(joint) - elevation - run.velocityHeadM());
        double drop = perVelocity * state.runs().get(index).velocityMps();
        if (lowest == null || steady - drop < lowest.lowestPa()) {
          lowest = new LowWave(elevation, high, steady, steady - drop, vapour);
        }
      }
    }
    return lowest;
  }
}
