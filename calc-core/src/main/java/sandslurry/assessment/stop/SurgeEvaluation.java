package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.SuctionEvaluation;
import sandslurry.assessment.stop.SurgeResult.LowWave;
import sandslurry.assessment.stop.SurgeResult.SlowStop;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.material.liquid.Water;
import sandslurry.pipe.surge.Joukowsky1898;
import sandslurry.units.Measure;

/** The surge when the flow through a line stops. */
public final class SurgeEvaluation {
  private static final Joukowsky1898 JOUKOWSKY = new Joukowsky1898();

  private final Design design;
  private final Materials materials;
  private final LineModel model;

  /**
   * The line of a design whose flow may stop.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param model the physics of its line
   */
  public SurgeEvaluation(Design design, Materials materials, LineModel model) {
    this.design = design;
    this.materials = materials;
    this.model = model;
  }

  /**
   * Surge in every run at its greatest velocity: of a sudden stop, and of a stop in the time given.
   *
   * @param base the line at each flow rate that is judged
   * @param pulsation the pulsation; empty without a piston pump
   * @return one result for each run, in the order of flow
   */
  public List<SurgeResult> result(List<State> base, Optional<PulsationResult> pulsation) {
    List<SurgeResult> surges = new ArrayList<>();
    List<RunSpec> runs = model.route().runs();
    Optional<Double> stopS =
        design
            .service()
            .operation()
            .flatMap(OperationSpec::stopTime)
            .map(time -> Measure.TIME.si(time));
    double column = runs.stream().mapToDouble(r -> Measure.LENGTH.si(r.length())).sum();
    double pulse = pulsation.map(p -> pulsePa(base, p)).orElse(0.0);
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
        working =
            Math.max(
                working,
                model.pressures(state.runs()).get(i).greatestPa()
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
              density,
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
   * What a stroke adds to the working pressure of the duty: at the start of the line its peak over
   * the mean, with friction at that flow rate, or no less than what speeds up the line.
   */
  private double pulsePa(List<State> base, PulsationResult pulsation) {
    double accelerating =
        pulsation.accelerationM()
            * Physics.GRAVITY
            * materials.mixtureDensityKgM3(base.get(0).sandFraction());
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
        Water.vapourPressurePa(materials.carrier().temperatureK())
            - SuctionEvaluation.airPa(design);
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
