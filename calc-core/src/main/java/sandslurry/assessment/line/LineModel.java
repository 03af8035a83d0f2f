package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.numeric.Interruption;
import sandslurry.pipe.Bore;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.friction.ClearLiquid;

/** The physics of a whole line as a function of flow, in plain SI. */
public final class LineModel {
  /** Velocities between which a flow that keeps sand moving is looked for. */
  private static final double LEAST_TRIED_MPS = 0.01;

  private static final double MOST_TRIED_MPS = 30;
  private static final double FLOW_STEP = 1.25;
  private static final double FOUND = 1e-11;

  private static final int MIXTURES_KEPT = 64;

  private final RouteSpec route;
  private final double outletHeadM;
  private final double sourceLevelM;
  private final List<PipeRun> pipes;
  private final Optional<PipeRun> suction;
  private final int suctionLines;
  private final FilledRun.Line line;
  private final Map<Double, FilledLine> filled;
  private final Map<Section, OptionalDouble> leastSafe;

  /** What of a run matters to the sand in it: not how long it is. */
  private record Section(Bore mean, Bore largest, double angleRad) {}

  /** The line full of one mixture. */
  private record FilledLine(
      LineMixture mixture,
      List<FilledRun> runs,
      Optional<FilledRun> suction,
      Map<RunSpec, FilledRun> bySpec,
      Map<Double, Double> deliveryHeads,
      Map<Double, Double> suctionLosses) {
    /** A run of the line, or another in its place. */
    FilledRun run(RunSpec spec, FilledRun.Line line) {
      return bySpec.computeIfAbsent(spec, s -> new FilledRun(PipeRun.of(s), mixture, line));
    }
  }

  /**
   * The line of a design filled with its mixture.
   *
   * @param materials its liquid, sand and mixture
   */
  public LineModel(Materials materials) {
    this.route = materials.design().oneLine().route();
    this.outletHeadM = route.outletHeadM();
    this.sourceLevelM = route.sourceLevelM();
    this.pipes = route.runs().stream().map(PipeRun::of).toList();
    this.suction = materials.design().service().suction().map(suction -> PipeRun.of(suction.run()));
    this.suctionLines =
        materials
            .design()
            .pump()
            .flatMap(PumpSpec::rotodynamic)
            .filter(pump -> pump.station().arrangement() == PumpGroup.Arrangement.PARALLEL)
            .map(pump -> pump.names().size())
            .orElse(1);
    this.line =
        new FilledRun.Line(
            materials,
            rule(materials.design().criteria()),
            new PipeLiquids(),
            materials.design().criteria().floorShare(),
            materials.parts());
    this.filled = new HashMap<>();
    this.leastSafe = new HashMap<>();
  }

  private LineModel(LineModel other, int suctionLines) {
    this.route = other.route;
    this.outletHeadM = other.outletHeadM;
    this.sourceLevelM = other.sourceLevelM;
    this.pipes = other.pipes;
    this.suction = other.suction;
    this.suctionLines = suctionLines;
    this.line = other.line;
    this.filled = other.filled;
    this.leastSafe = other.leastSafe;
  }

  /**
   * How sand is judged by the criteria of a design.
   *
   * @param criteria the criteria
   * @return the rule
   */
  public static DepositionRule rule(Criteria criteria) {
    return new DepositionRule(
        criteria.marginFraction(),
        criteria.marginVelocityMps(),
        criteria.gradedSearch(),
        criteria.roles());
  }

  /**
   * The rule that deposition is judged by.
   *
   * @return margins, search and roles of the correlations
   */
  public DepositionRule rule() {
    return line.rule();
  }

  /**
   * The route of the line.
   *
   * @return runs and fittings in the order of flow, with the levels at both ends
   */
  public RouteSpec route() {
    return route;
  }

  /**
   * The design that the line belongs to.
   *
   * @return the design
   */
  public Design design() {
    return materials().design();
  }

  /**
   * Liquid, sand and mixture of the line.
   *
   * @return the materials
   */
  public Materials materials() {
    return line.materials();
  }

  /**
   * The lowest flow rate that is looked at: 0.01 m/s in the narrowest run.
   *
   * @return the flow rate [m3/s]
   */
  public double leastTriedM3ps() {
    return LEAST_TRIED_MPS * narrowestM2();
  }

  /**
   * The highest flow rate that is looked at: 30 m/s in the narrowest run.
   *
   * @return the flow rate [m3/s]
   */
  public double mostTriedM3ps() {
    return MOST_TRIED_MPS * narrowestM2();
  }

  private double narrowestM2() {
    return pipes.stream().mapToDouble(pipe -> pipe.largest().areaM2()).min().orElseThrow();
  }

  /** The line full of sand at a concentration; a curve asks for the same one many times. */
  private FilledLine filled(double sandFraction) {
    Interruption.check();
    FilledLine found = filled.get(sandFraction);
    if (found == null) {
      if (filled.size() >= MIXTURES_KEPT) {
        filled.clear();
      }
      LineMixture mixture = LineMixture.of(line.materials(), sandFraction);
      List<FilledRun> runs =
          pipes.stream().map(pipe -> new FilledRun(pipe, mixture, line)).toList();
      found =
          new FilledLine(
              mixture,
              runs,
              suction.map(pipe -> new FilledRun(pipe, mixture, line)),
              new IdentityHashMap<>(),
              new HashMap<>(),
              new HashMap<>());
      for (FilledRun run : runs) {
        found.bySpec().put(run.pipe().spec(), run);
      }
      filled.put(sandFraction, found);
    }
    return found;
  }

  /**
   * One run of the line, or another in its place, at one flow rate.
   *
   * @param run the run of pipe
   * @param flowM3ps flow rate of mixture [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return the run at this flow rate
   */
  public RunPoint run(RunSpec run, double flowM3ps, double sandFraction) {
    return alone(filled(sandFraction).run(run, line), flowM3ps);
  }

  private RunPoint alone(FilledRun run, double flowM3ps) {
    return run.at(flowM3ps, new FloorShare(List.of(run), flowM3ps));
  }

  /**
   * All runs of the line at one flow rate.
   *
   * @param flowM3ps flow rate of mixture [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return one for each run, in the order of flow
   */
  public List<RunPoint> runs(double flowM3ps, double sandFraction) {
    List<FilledRun> runs = filled(sandFraction).runs();
    FloorShare floorShare = new FloorShare(runs, flowM3ps);
    List<RunPoint> points = new ArrayList<>(runs.size());
    for (FilledRun run : runs) {
      points.add(run.at(flowM3ps, floorShare));
    }
    return points;
  }

  /**
   * Total heads along the line, above its start.
   *
   * @param runs its runs in the order of flow, all at one flow rate
   * @return heads at the start, the joints and the outlet [m of mixture]
   */
  public List<Double> totalHeadsM(List<RunPoint> runs) {
    double head = outletTotalHeadM(runs);
    List<Double> heads = new ArrayList<>();
    heads.add(head);
    for (int i = runs.size() - 1; i >= 0; i--) {
      head += runs.get(i).lossM();
      heads.add(0, head);
    }
    return heads;
  }

  /**
   * Gauge pressures at the ends of a run.
   *
   * @param startPa at its start [Pa]
   * @param endPa at its end [Pa]
   */
  public record Pressures(double startPa, double endPa) {
    /**
     * The greater of both.
     *
     * @return gauge pressure [Pa]
     */
    public double greatestPa() {
      return Math.max(startPa, endPa);
    }

    /**
     * The smaller of both.
     *
     * @return gauge pressure [Pa]
     */
    public double leastPa() {
      return Math.min(startPa, endPa);
    }
  }

  /**
   * Gauge pressures in the runs.
   *
   * @param runs the runs at one flow rate
   * @return the pressures at their ends, in the same order
   */
  public List<Pressures> pressures(List<RunPoint> runs) {
    double weight = runs.get(0).mixture().densityKgM3() * Physics.GRAVITY;
    List<Double> heads = totalHeadsM(runs);
    List<Pressures> pressures = new ArrayList<>();
    double elevation = 0;
    for (int i = 0; i < runs.size(); i++) {
      RunPoint run = runs.get(i);
      double start = heads.get(i) - elevation - run.velocityHeadM();
      elevation += run.pipe().spec().riseM();
      boolean outlet = i == runs.size() - 1;
      double end = outlet ? outletHeadM : heads.get(i + 1) - elevation - run.velocityHeadM();
      pressures.add(new Pressures(weight * start, weight * end));
    }
    return pressures;
  }

  private double outletTotalHeadM(List<RunPoint> runs) {
    double elevation = 0;
    for (RunPoint run : runs) {
      elevation += run.pipe().spec().riseM();
    }
    return elevation + outletHeadM + runs.get(runs.size() - 1).velocityHeadM();
  }

  private double startTotalHeadM(List<RunPoint> runs) {
    double head = outletTotalHeadM(runs);
    for (int i = runs.size() - 1; i >= 0; i--) {
      head += runs.get(i).lossM();
    }
    return head;
  }

  /**
   * Head that the pumps must give: static head, losses and velocity head at the outlet. Of pumps in
   * parallel each has a suction line with an equal share of the flow rate.
   *
   * @param runs its runs in the order of flow, all at one flow rate
   * @return head above the level of the source [m of mixture]
   */
  public double systemHeadM(List<RunPoint> runs) {
    RunPoint first = runs.get(0);
    double flow = first.velocityMps() * first.pipe().mean().areaM2() / suctionLines;
    return systemHeadM(runs, flow);
  }

  /**
   * Head that the pumps must give where one suction line has a flow rate of its own.
   *
   * @param runs its runs in the order of flow, all at one flow rate
   * @param suctionFlowM3ps flow rate in that suction line [m3/s]
   * @return head above the level of the source [m of mixture]
   */
  public double systemHeadM(List<RunPoint> runs, double suctionFlowM3ps) {
    return deliveryHeadM(runs)
        + suctionLineLossM(suctionFlowM3ps, runs.get(0).mixture().sandFraction());
  }

  /**
   * Head that the pumps must give, without the loss in their suction lines.
   *
   * @param runs its runs in the order of flow, all at one flow rate
   * @return head above the level of the source [m of mixture]
   */
  double deliveryHeadM(List<RunPoint> runs) {
    return startTotalHeadM(runs) - sourceLevelM;
  }

  /**
   * The same at a flow rate, kept: pumps of different wear or derating meet the line at the same
   * ones.
   *
   * @param flowM3ps flow rate of mixture [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return head above the level of the source [m of mixture]
   */
  public double deliveryHeadM(double flowM3ps, double sandFraction) {
    return filled(sandFraction)
        .deliveryHeads()
        .computeIfAbsent(flowM3ps, flow -> deliveryHeadM(runs(flow, sandFraction)));
  }

  /**
   * Whether the design gives a suction line.
   *
   * @return true when it does
   */
  public boolean hasSuction() {
    return suction.isPresent();
  }

  /**
   * Head lost in the suction line of one pump.
   *
   * @param flowM3ps flow rate of this pump [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return head [m of mixture]; 0 without a suction line
   */
  public double suctionLineLossM(double flowM3ps, double sandFraction) {
    return filled(sandFraction)
        .suctionLosses()
        .computeIfAbsent(
            flowM3ps, flow -> suction(flow, sandFraction).map(RunPoint::lossM).orElse(0.0));
  }

  /**
   * Head that liquid without sand loses in the suction line of each pump.
   *
   * @param flowM3ps flow rate of all pumps together [m3/s]
   * @return head [m of liquid]; 0 without a suction line
   */
  public double suctionLossM(double flowM3ps) {
    return suction(flowM3ps / suctionLines, 0).map(RunPoint::lossM).orElse(0.0);
  }

  /**
   * The suction line of one pump at its flow rate.
   *
   * @param flowM3ps flow rate of this pump [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return the suction line; empty when the design gives none
   */
  public Optional<RunPoint> suction(double flowM3ps, double sandFraction) {
    return filled(sandFraction).suction().map(run -> alone(run, flowM3ps));
  }

  /**
   * The same line fed by another number of pumps in parallel.
   *
   * @param lines number of pumps with a suction line of their own
   * @return the line; it shares all that does not depend on the number
   */
  public LineModel withSuctionLines(int lines) {
    return new LineModel(this, lines);
  }

  /**
   * Head that the pumps must give at a flow rate.
   *
   * @param flowM3ps flow rate of mixture [m3/s]
   * @param sandFraction volume fraction of all sand
   * @return head above the level of the source [m of mixture]
   */
  public double systemHeadM(double flowM3ps, double sandFraction) {
    return systemHeadM(runs(flowM3ps, sandFraction));
  }

  /** The head that the carrier alone would ask, in metres of carrier. */
  double liquidHeadM(double flowM3ps) {
    return systemHeadM(flowM3ps, 0);
  }

  /**
   * Static head: what the pumps must give at no flow.
   *
   * @return outlet and rise of the runs above the level of the source [m]
   */
  public double staticHeadM() {
    return pipes.stream().mapToDouble(pipe -> pipe.spec().riseM()).sum()
        + outletHeadM
        - sourceLevelM;
  }

  /**
   * Whether the velocity is below the deposition velocity in any run.
   *
   * @param runs its runs in the order of flow, all at one flow rate
   * @return true when it is; the head loss is then that of a line with a bed
   */
  public boolean overBed(List<RunPoint> runs) {
    return runs.stream().anyMatch(RunPoint::overBed);
  }

  /**
   * Gauge pressure at the start of a blocked line while its pump runs.
   *
   * @param headM head of the pump at no flow [m of mixture]
   * @param mixtureDensityKgM3 density of the mixture [kg/m3]
   * @return gauge pressure [Pa]
   */
  public double blockedPressurePa(double headM, double mixtureDensityKgM3) {
    return mixtureDensityKgM3 * Physics.GRAVITY * (headM + sourceLevelM);
  }

  /**
   * Volume of the line, without its suction line.
   *
   * @return volume inside the mean bores [m3]
   */
  public double volumeM3() {
    return pipes.stream().mapToDouble(pipe -> pipe.mean().areaM2() * pipe.spec().lengthM()).sum();
  }

  /**
   * The least flow from which a run lacks no margin against deposition, found by trial of rising
   * flows: the viscosity of the carrier and, of sand fed at a rate, its concentration change with
   * the flow.
   *
   * @param run the run
   * @return the flow, or nothing when no flow up to 30 m/s is enough
   */
  public OptionalDouble leastSafeFlowM3ps(RunSpec run) {
    PipeRun pipe = PipeRun.of(run);
    Section section = new Section(pipe.mean(), pipe.largest(), pipe.angleRad());
    OptionalDouble known = leastSafe.get(section);
    if (known == null) {
      known = searchedLeastSafeFlowM3ps(run, pipe.largest().areaM2());
      leastSafe.put(section, known);
    }
    return known;
  }

  private OptionalDouble searchedLeastSafeFlowM3ps(RunSpec run, double area) {
    double low = LEAST_TRIED_MPS * area / FLOW_STEP;
    double atLow = Double.NaN;
    double most = MOST_TRIED_MPS * area;
    while (low < most) {
      double high = Math.min(low * FLOW_STEP, most);
      double atHigh = excessMps(run, high);
      if (atHigh >= 0) {
        return OptionalDouble.of(lowestBetweenM3ps(run, low, atLow, high, atHigh));
      }
      low = high;
      atLow = atHigh;
    }
    return OptionalDouble.empty();
  }

  /**
   * Lowest flow rate at which every run carries its sand with margin.
   *
   * @return flow rate [m3/s]; empty when no velocity up to 30 m/s is enough in some run
   */
  public OptionalDouble leastSafeFlowM3ps() {
    double most = 0;
    for (RunSpec run : route.runs()) {
      OptionalDouble least = leastSafeFlowM3ps(run);
      if (least.isEmpty()) {
        return least;
      }
      most = Math.max(most, least.getAsDouble());
    }
    return OptionalDouble.of(most);
  }

  /**
   * Lowest pressure rating of the runs when the liquid is warmest.
   *
   * @return gauge pressure [Pa]; empty when no rating is known
   */
  public OptionalDouble weakestRatingPa() {
    return route.runs().stream()
        .map(run -> run.ratingPa(line.materials().warmestK()))
        .flatMapToDouble(OptionalDouble::stream)
        .min();
  }

  /**
   * Where the excess of velocity becomes 0 or more: by regula falsi with halved weights (Illinois)
   * where it is known at both ends, by halving where the flow turns turbulent in between.
   */
  private double lowestBetweenM3ps(
      RunSpec run, double from, double atFrom, double to, double atTo) {
    double low = from;
    double high = to;
    double atLow = atFrom;
    double atHigh = atTo;
    boolean highMoved = false;
    boolean lowMoved = false;
    while (high - low > FOUND * high) {
      double share = -atLow / (atHigh - atLow);
      // Where the line leads to an end itself the root lies hard by: both ends close in on it.
      double least = Math.min(0.5, 0.4 * FOUND * high / (high - low));
      double middle =
          share > 0 && share < 1
              ? low + (high - low) * Math.min(Math.max(share, least), 1 - least)
              : (low + high) / 2;
      double excess = excessMps(run, middle);
      if (excess >= 0) {
        high = middle;
        atHigh = excess;
        atLow = highMoved ? atLow / 2 : atLow;
        highMoved = true;
        lowMoved = false;
      } else {
        low = middle;
        atLow = excess;
        atHigh = lowMoved ? atHigh / 2 : atHigh;
        lowMoved = true;
        highMoved = false;
      }
    }
    return high;
  }

  /**
   * Velocity over that which passes; NaN where the flow is not turbulent or too thick to flow, and
   * infinite without sand.
   */
  private double excessMps(RunSpec run, double flowM3ps) {
    if (!line.materials().flows(flowM3ps)) {
      return Double.NaN;
    }
    FilledRun here = filled(line.materials().sandFraction(flowM3ps)).run(run, line);
    if (!(here.mixture().coarseFraction() > 0)) {
      return Double.POSITIVE_INFINITY;
    }
    // Asked before the friction: the search begins far below the flow rates that are turbulent.
    double velocity = here.pipe().largest().velocityMps(flowM3ps);
    return here.regime(velocity) == ClearLiquid.Regime.TURBULENT
        ? velocity - alone(here, flowM3ps).deposition().orElseThrow().velocityToPassMps()
        : Double.NaN;
  }
}
