package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.stop.StopResult.Filling;
import sandslurry.assessment.stop.StopResult.FlushNeed;
import sandslurry.assessment.stop.StopResult.Lying;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.Pressures;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.bed.SlidingBed;
import sandslurry.transport.bed.StoppedLine;
import sandslurry.transport.bed.StoppedLine.Restart;

/**
 * The line of a design stopped full of what it carries, at the concentration of its design flow.
 */
public final class StopEvaluation {
  /**
   * Yield stress after a rest over that while the liquid flows, where nobody measured it (common
   * practice, no source; no measurement with sand-laden manure was found).
   */
  private static final double THIXOTROPY = 2;

  /** Volumes of the line that a flush takes (common practice, no source). */
  public static final double FLUSH_LINE_VOLUMES = 2;

  private final LineModel model;
  private final OperationSpec operation;
  private final StoppedMixture mixture;
  private final FlushWater water;

  /**
   * The line of a design stopped at its design flow rate.
   *
   * @param model the physics of its line
   */
  public StopEvaluation(LineModel model) {
    this.model = model;
    this.operation = model.design().service().operation().orElse(OperationSpec.NONE);
    double flow = model.design().oneLine().flow().designM3ps();
    double fraction = model.materials().sandFraction(flow);
    Vehicle vehicle = model.materials().vehicle(1, fraction);
    double density = vehicle.liquid().densityKgM3();
    Rheology rheology =
        model.materials().carrier().rheology().thickened(vehicle.relativeViscosity());
    this.mixture =
        new StoppedMixture(
            model,
            fraction,
            rheology,
            density,
            lying(model.runs(flow, fraction), fraction, rheology, density));
    this.water = FlushWater.of(model.materials(), fraction);
  }

  /** What of the sand lies on the floor of each run, and how stiff the liquid is after the rest. */
  private Lying lying(List<RunPoint> runs, double fraction, Rheology rheology, double density) {
    double held = model.materials().yieldExtrapolated() ? 0 : rheology.yieldStressPa();
    double atRest = 0;
    if (fraction > 0) {
      for (LaminarTransport.Part part : model.materials().parts()) {
        atRest += part.massShare() * StaticSuspension.restingShare(part.grain(), held, density);
      }
    }
    List<Double> running =
        runs.stream().map(run -> run.carriage().map(SandCarriage::lyingShare).orElse(0.0)).toList();
    double thixotropy = operation.thixotropy().orElse(THIXOTROPY);
    return new Lying(running, atRest, thixotropy, thixotropy * rheology.yieldStressPa());
  }

  /**
   * The stopped line: bed, plugs, restart and flush.
   *
   * @param base the line at its flows
   * @return the stopped line; empty without sand in a liquid without yield stress
   */
  public Optional<StopResult> result(List<State> base) {
    double fraction = mixture.fraction();
    if (!(fraction > 0) && !(mixture.rheology().yieldStressPa() > 0)) {
      return Optional.empty();
    }
    double resting = restingPa();
    double available = availablePa();
    List<Plug> plugs = plugs(available - resting);
    return Optional.of(
        new StopResult(
            new Filling(
                fraction,
                mixture
                    .indices()
                    .mapToDouble(
                        i ->
                            mixture
                                .stopped(i, fraction)
                                .sandMassKg(model.materials().sandDensityKgM3()))
                    .sum(),
                model.volumeM3()),
            mixture.lying(),
            base.stream().flatMap(state -> state.runs().stream()).anyMatch(RunPoint::bedMoves),
            runs(),
            plugs,
            new Restart(
                slidingPa(),
                mixture.yieldPa(),
                plugs.stream().mapToDouble(Plug::frictionPa).sum(),
                wedgedPa(plugs)),
            new Pressures(resting, available, model.weakestRatingPa()),
            flushNeed(),
            operation.flush().map(supply -> new FlushEvaluation(mixture, water).result(supply)),
            operation
                .flushVolumeM3()
                .map(v -> OptionalDouble.of(v))
                .orElseGet(OptionalDouble::empty)));
  }

  private Optional<FlushNeed> flushNeed() {
    OptionalDouble clearing = water.clearingM3ps();
    OptionalDouble stripping = water.strippingM3ps(mixture.rheology().yieldStressPa());
    return clearing.isPresent() && stripping.isPresent()
        ? Optional.of(
            new FlushNeed(
                clearing.getAsDouble(),
                stripping.getAsDouble(),
                FLUSH_LINE_VOLUMES * model.volumeM3()))
        : Optional.empty();
  }

  private List<StoppedRun> runs() {
    OptionalDouble coarse = fallMps(model.materials().coarse().d85M());
    OptionalDouble finest = fallMps(Gradation.FINES_BOUNDARY_M);
    return mixture.indices().mapToObj(i -> run(i, coarse, finest)).toList();
  }

  private StoppedRun run(int i, OptionalDouble coarseMps, OptionalDouble finestMps) {
    StoppedLine line = mixture.stopped(i);
    double slope = Math.abs(mixture.angleRad(i));
    double packed = mixture.packs(i) ? line.plugLengthM() : 0;
    RunSpec run = mixture.runs().get(i);
    return new StoppedRun(
        run.name(),
        line.bed().depthM(),
        line.bedShare(),
        finestMps,
        finestMps.isEmpty()
            ? finestMps
            : OptionalDouble.of(
                packed > 0
                    ? line.slidingTimeS(finestMps.getAsDouble(), Math.min(slope, Math.PI / 2))
                    : line.settlingTimeS(finestMps.getAsDouble())),
        coarseMps.isEmpty()
            ? coarseMps
            : OptionalDouble.of(line.settlingTimeS(coarseMps.getAsDouble())),
        slope,
        line.slideAngleRad(),
        packed,
        water.clearingMps(run));
  }

  /**
   * Fall of a grain at rest, hindered by the rest of the sand: by as much of the yield stress as is
   * credited to the plug of a line that runs, so that a grain which may settle has a time as long
   * as it does not surely stay.
   *
   * @return velocity; empty without sand, and when the yield stress may hold the grain [m/s]
   */
  private OptionalDouble fallMps(double sizeM) {
    if (!(mixture.lying().atRest() > 0)) {
      return OptionalDouble.empty();
    }
    Grain grain =
        new Grain(sizeM, model.materials().sandDensityKgM3(), model.design().sand().shape());
    Rheology rheology = mixture.rheology();
    if (model.materials().yieldExtrapolated()) {
      rheology = new HerschelBulkley(0, rheology.consistency(), rheology.index());
    }
    double density = mixture.liquidDensityKgM3();
    double alone =
        LaminarTransport.coreFallMps(grain, rheology, density, SettlingVelocities.DEFAULT);
    if (!(alone > 0)) {
      return OptionalDouble.empty();
    }
    double reynolds = density * alone * sizeM / rheology.flowingViscosityPaS(alone / sizeM);
    return OptionalDouble.of(
        alone * HinderedSettlings.DEFAULT.factor(reynolds, mixture.fraction()).value());
  }

  /** What slides the bed of every run from which it has not slid away. */
  private double slidingPa() {
    return mixture
        .indices()
        .filter(i -> Math.abs(mixture.angleRad(i)) <= mixture.stopped(i).slideAngleRad())
        .mapToDouble(
            i ->
                mixture
                    .stopped(i)
                    .slidingBedPa(
                        model.materials().sandDensityKgM3(),
                        mixture.liquidDensityKgM3(),
                        model.materials().coarse().d85M()))
        .sum();
  }

  private static OptionalDouble wedgedPa(List<Plug> plugs) {
    double sum = 0;
    for (Plug plug : plugs) {
      if (plug.wedgedPa().isEmpty()) {
        return OptionalDouble.empty();
      }
      sum += plug.wedgedPa().getAsDouble();
    }
    return OptionalDouble.of(sum);
  }

  /** Static pressure at the start. Sand that lies does not help to push down a slope. */
  private double restingPa() {
    double sandLift = model.route().outletHeadM();
    for (int i = 0; i < mixture.runs().size(); i++) {
      double rise = mixture.runs().get(i).riseM();
      sandLift += rise > 0 ? rise : rise * (1 - mixture.lying().share(i));
    }
    double clear = model.materials().mixtureDensityKgM3(0);
    double lift = model.staticHeadM() + model.route().sourceLevelM();
    return Physics.GRAVITY
        * (clear * lift
            + (model.materials().mixtureDensityKgM3(mixture.fraction()) - clear) * sandLift);
  }

  /** Pressure at the start of the line with the pump against it and nothing flowing. */
  private double availablePa() {
    return model
        .design()
        .pump()
        .map(pump -> pump.match(this::shutOffPa, one -> one.pressureLimitPa()))
        .orElseGet(() -> abovePa(0));
  }

  private double shutOffPa(RotodynamicSpec spec) {
    Optional<PumpGroup> group = new PumpEvaluation(model).derated(spec);
    return abovePa(group.map(g -> g.headM(g.leastFlowM3ps())).orElse(0.0));
  }

  /** Pressure of a head above that of the source. */
  private double abovePa(double headM) {
    return mixture.pressurePa(headM + model.route().sourceLevelM());
  }

  /** Neighbouring runs that fall and then climb lay their sand on one heap between them. */
  private List<Plug> plugs(double leftPa) {
    List<Plug> plugs = new ArrayList<>();
    int i = 0;
    while (i < mixture.runs().size()) {
      if (!mixture.packs(i)) {
        i++;
        continue;
      }
      boolean falls = mixture.angleRad(i) < 0;
      int end = end(i, falls);
      int climbs = falls ? end(end, false) : end;
      plugs.add(plug(i, climbs, end, leftPa));
      i = climbs;
    }
    return plugs;
  }

  /** The first run from one on that does not pack, or slopes the other way. */
  private int end(int from, boolean falls) {
    int end = from;
    while (end < mixture.runs().size()
        && mixture.packs(end)
        && mixture.angleRad(end) < 0 == falls) {
      end++;
    }
    return end;
  }

  private Plug plug(int from, int to, int turn, double leftPa) {
    List<PackedPlug.Part> parts = new ArrayList<>();
    for (int i = from; i < to; i++) {
      parts.add(
          new PackedPlug.Part(
              mixture.runs().get(i).meanBoreM(),
              mixture.stopped(i).plugLengthM(),
              mixture.angleRad(i)));
    }
    double bore = parts.stream().mapToDouble(PackedPlug.Part::diameterM).min().orElseThrow();
    PackedPlug packed =
        new PackedPlug(
            parts,
            Physics.GRAVITY
                * (model.materials().sandDensityKgM3() - mixture.liquidDensityKgM3())
                * SlidingBed.VOLUME_FRACTION,
            SlidingBed.FRICTION,
            PackedPlug.STRESS_RATIO);
    double weight = packed.climbingWeightPa();
    double friction = Math.max(0, packed.seepingPa() - weight);
    OptionalDouble wedged = packed.wedgedPa();
    double steepest = parts.stream().mapToDouble(PackedPlug.Part::angleRad).max().orElseThrow();
    return new Plug(
        place(from, to, turn),
        packed,
        bore,
        friction,
        wedged.isPresent()
            ? OptionalDouble.of(Math.max(friction, wedged.getAsDouble() - weight))
            : wedged,
        model.design().pump().isPresent()
            // The weight of the sand that climbs is in the static pressure already.
            ? packed.longestPushedM(bore, steepest, Math.max(0, leftPa + weight))
            : OptionalDouble.empty());
  }

  private String place(int from, int to, int turn) {
    List<RunSpec> runs = mixture.runs();
    if (turn < to) {
      return "the low point between " + runs.get(turn - 1).name() + " and " + runs.get(turn).name();
    }
    return mixture.angleRad(from) < 0
        ? "the foot of " + runs.get(turn - 1).name()
        : "the foot of " + runs.get(from).name() + (from == 0 ? ", at the start of the line" : "");
  }
}
