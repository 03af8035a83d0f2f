package sandslurry.assessment.feed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravityRun.Window;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.design.Design;
import sandslurry.design.station.GravitySpec;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;
import sandslurry.plant.profile.Fall;
import sandslurry.separation.channel.GravityConduit;
import sandslurry.separation.channel.GravityFlow;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.SandLoad;
import sandslurry.transport.deposition.SandLoad.SewerLimit;

/** A pipe or channel in which a mixture runs by gravity, at every time at which something flows. */
public final class GravityEvaluation {
  /** The steepest slope that is tried as a cure. */
  private static final double STEEPEST = 0.30;

  /** A slope is found to this ratio. */
  private static final double SLOPE_STEP = 1.02;

  /** Sizes are tried in steps of this ratio, so many up and down. */
  private static final double SIZE_STEP = 1.1;

  private static final int SIZES = 10;

  /** Depths at which the flow is judged in the search for the window. */
  private static final int DEPTHS = 24;

  private final Design design;
  private final DepositionRule rule;
  private final GravitySpec spec;
  private final List<Time> times;

  /**
   * What flows at one time.
   *
   * @param when the time, in words that follow "as it is"
   * @param flowM3ps flow rate [m3/s]
   * @param materials liquid and sand
   * @param sandKnown whether the share of sand is known; else the worst that may come is taken
   */
  public record Time(String when, double flowM3ps, Materials materials, boolean sandKnown) {}

  private GravityEvaluation(Design design, GravitySpec spec, List<Time> times) {
    this.design = design;
    this.rule = LineModel.rule(design.criteria());
    this.spec = spec;
    this.times = times;
  }

  /**
   * Judges pipe or channel at every time, and looks for its window and for what mends it.
   *
   * @param design the design
   * @param spec pipe or channel
   * @param slope its slope
   * @param times what flows when, one at least
   * @return what comes of it
   */
  public static GravityRun run(Design design, GravitySpec spec, double slope, List<Time> times) {
    GravityEvaluation all = new GravityEvaluation(design, spec, times);
    GravityConduit conduit = spec.section().conduit(slope, spec.manningN());
    List<GravityHour> hours = all.hours(conduit);
    double most = times.stream().mapToDouble(Time::flowM3ps).max().orElseThrow();
    GravityRun run =
        new GravityRun(
            conduit,
            most,
            hours,
            all.window(conduit, hours),
            OptionalDouble.empty(),
            OptionalDouble.empty());
    return run.passes() || !run.mayBeMended()
        ? run
        : new GravityRun(
            conduit, most, hours, run.window(), all.slopeToPass(conduit), all.sizeToPass(conduit));
  }

  /**
   * The fall that pipe or channel needs at a flow rate: it ends above the highest water downstream
   * by its freeboard, and its water enters over a sharp edge.
   *
   * @param spec pipe or channel, its length given
   * @param conduit the same on its slope
   * @param flowM3ps the flow rate [m3/s]
   * @return the fall; empty when the flow does not fit
   */
  public static Optional<Fall.Need> need(
      GravitySpec spec, GravityConduit conduit, double flowM3ps) {
    OptionalDouble depth = conduit.depthShare(flowM3ps);
    if (depth.isEmpty() || spec.lengthM().isEmpty()) {
      return Optional.empty();
    }
    GravityFlow flow = conduit.atDepth(depth.getAsDouble());
    return Optional.of(
        new Fall.Need(
            conduit.slope() * spec.lengthM().getAsDouble(),
            flow.depthM() + flow.entranceHeadM(),
            spec.freeboardM()));
  }

  /**
   * The steepest slope that a fall leaves for pipe or channel at a flow rate.
   *
   * @param spec pipe or channel, its length given
   * @param availableM the fall between its two units [m]
   * @param flowM3ps the flow rate [m3/s]
   * @return the slope; empty when none fits
   */
  public static OptionalDouble slopeOf(GravitySpec spec, double availableM, double flowM3ps) {
    double length = spec.lengthM().orElseThrow();
    // Depth and entrance take some of it, the less the steeper and the more: so from above.
    double steepest = Math.min(STEEPEST, availableM / length);
    return steepest > 0
        ? IntStream.range(0, 400)
            .mapToDouble(step -> steepest * Math.pow(SLOPE_STEP, -step))
            .filter(
                slope ->
                    need(spec, spec.section().conduit(slope, spec.manningN()), flowM3ps)
                        .filter(need -> need.totalM() <= availableM)
                        .isPresent())
            .findFirst()
        : OptionalDouble.empty();
  }

  private List<GravityHour> hours(GravityConduit conduit) {
    return times.stream()
        .flatMap(
            time ->
                conduit.depthShare(time.flowM3ps()).stream()
                    .mapToObj(depth -> hour(time, conduit.atDepth(depth))))
        .toList();
  }

  private boolean passes(GravityConduit conduit) {
    // A cure is refused at the first time that it does not mend.
    return times.stream()
        .allMatch(
            time -> {
              OptionalDouble depth = conduit.depthShare(time.flowM3ps());
              return depth.isPresent()
                  && depth.getAsDouble() <= GravityRun.DEEP
                  && hour(time, conduit.atDepth(depth.getAsDouble())).severity() == Severity.PASS;
            });
  }

  private OptionalDouble slopeToPass(GravityConduit conduit) {
    if (!passes(conduit.on(STEEPEST))) {
      return OptionalDouble.empty();
    }
    double low = conduit.slope();
    double high = STEEPEST;
    while (high > low * SLOPE_STEP) {
      double middle = Math.sqrt(low * high);
      if (passes(conduit.on(middle))) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  private OptionalDouble sizeToPass(GravityConduit conduit) {
    return IntStream.rangeClosed(1, SIZES)
        .boxed()
        .flatMapToDouble(
            step -> DoubleStream.of(Math.pow(SIZE_STEP, step), Math.pow(SIZE_STEP, -step)))
        .map(factor -> factor * spec.section().sizeM())
        .filter(
            size -> passes(spec.section().of(size).conduit(conduit.slope(), conduit.manningN())))
        .findFirst();
  }

  /** The flow rates that pass with what flows at the gravest time. */
  private Optional<Window> window(GravityConduit conduit, List<GravityHour> hours) {
    if (hours.isEmpty()) {
      return Optional.empty();
    }
    GravityHour worst = hours.stream().min(GravityHour.GRAVEST).orElseThrow();
    Time time = times.stream().filter(t -> t.when().equals(worst.when())).findFirst().orElseThrow();
    double step = Math.min(GravityRun.DEEP, conduit.fullestShare()) / DEPTHS;
    int lowest = DEPTHS;
    while (lowest > 0 && fine(time, conduit, lowest * step)) {
      lowest--;
    }
    if (lowest == DEPTHS) {
      return Optional.empty();
    }
    double bad = lowest * step;
    double good = bad + step;
    for (int i = 0; i < DEPTHS / 2 && bad > 0; i++) {
      double middle = (bad + good) / 2;
      if (fine(time, conduit, middle)) {
        good = middle;
      } else {
        bad = middle;
      }
    }
    return Optional.of(
        new Window(
            bad > 0 ? conduit.atDepth(good).flowM3ps() : 0,
            conduit.atDepth(DEPTHS * step).flowM3ps()));
  }

  private boolean fine(Time time, GravityConduit conduit, double depthShare) {
    return hour(time, conduit.atDepth(depthShare)).severity() == Severity.PASS;
  }

  /** A flow at the temperature that asks most. */
  private GravityHour hour(Time time, GravityFlow flow) {
    Materials given = time.materials();
    return Stream.concat(Stream.of(given), warmths(given))
        .map(at -> hour(time, at, flow))
        .min(GravityHour.GRAVEST)
        .orElseThrow();
  }

  /** The coldest and the warmest that the line is given, or else its plant. */
  private Stream<Materials> warmths(Materials given) {
    List<Double> range = new ArrayList<>(given.temperatureRangeK());
    design.plant().filter(p -> range.isEmpty()).ifPresent(p -> range.addAll(p.year().seasonsK()));
    return range.stream().map(given::at);
  }

  private GravityHour hour(Time time, Materials materials, GravityFlow flow) {
    double fraction = Math.min(materials.sandFraction(flow.flowM3ps()), Materials.THICKEST);
    Vehicle vehicle =
        materials.vehicle(8 * flow.velocityMps() / (4 * flow.hydraulicRadiusM()), fraction);
    Slurry slurry = materials.slurry(vehicle.liquid(), vehicle.coarseVolumeFraction());
    SandLoad load = materials.load(slurry, fraction);
    Grain coarsest =
        new Grain(
            materials.sizes().coarsestM(), materials.sandDensityKgM3(), design.sand().shape());
    SelfCleansing cleansing = SelfCleansing.of(flow, coarsest, vehicle.liquid());
    return new GravityHour(
        time.when(),
        flow,
        flow.reynoldsNumber(vehicle.liquid()),
        load.highestFraction(),
        time.sandKnown(),
        materials.carrier().totalSolids().orElse(0) >= GravityRun.UNDILUTED_SOLIDS,
        coarsest,
        cleansing,
        // Stress goes with the square of the velocity, and so does its margin.
        Math.pow(1 + rule.marginFraction(), 2) * cleansing.neededStressPa(),
        slurry.volumeFraction() > 0 ? Optional.of(sand(load, flow)) : Optional.empty());
  }

  /**
   * The full pipe is taken as smooth, in which the rule requires most. The relations for sewers
   * were made for round pipes: a channel is judged by the full pipe of its widest hydraulic
   * diameter.
   */
  private GravitySand sand(SandLoad load, GravityFlow flow) {
    DepositionJudgement full =
        rule.judge(
            load,
            new Bore(flow.conduit().widestHydraulicDiameterM(), 0),
            flow.velocityMps(),
            -Math.atan(flow.conduit().slope()));
    Optional<SewerLimit> sewers =
        flow.segment()
            .map((CircularSegment wetted) -> load.sewerLimit(wetted, flow.darcyFrictionFactor()));
    double governing = sewers.map(SewerLimit::governingMps).orElse(full.limitMps());
    return new GravitySand(
        sewers,
        full,
        Math.min(governing, full.limitMps()),
        sewers.isPresent()
            ? Math.min(
                Math.max((1 + rule.marginFraction()) * governing, governing + rule.marginMps()),
                full.velocityToPassMps())
            : full.velocityToPassMps());
  }
}
