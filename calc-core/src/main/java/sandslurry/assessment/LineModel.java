package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Physics;
import sandslurry.design.Criteria;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Measure;

/** The physics of a whole line as a function of flow, in plain SI. */
final class LineModel {
  /** Velocities between which a flow that keeps sand moving is looked for. */
  private static final double LEAST_TRIED_MPS = 0.01;

  private static final double MOST_TRIED_MPS = 30;
  private static final double FLOW_STEP = 1.25;

  private final RouteSpec route;
  private final Optional<RunSpec> suction;
  private final int suctionLines;
  private final Materials materials;
  private final DepositionRule rule;
  private final double toleratedShare;
  private final PipeLiquids liquids;

  LineModel(Design design, Materials materials) {
    this.route = design.route().orElseThrow();
    this.materials = materials;
    this.suction = design.service().suction().map(ServiceSpec.SuctionSpec::run);
    this.suctionLines =
        design.pump().orElse(null) instanceof RotodynamicSpec pump
                && pump.station().arrangement() == PumpGroup.Arrangement.PARALLEL
            ? pump.names().size()
            : 1;
    this.rule = rule(design.criteria());
    this.toleratedShare = Measure.FRACTION.si(design.criteria().floorShare());
    this.liquids = new PipeLiquids();
  }

  private LineModel(LineModel other, int suctionLines) {
    this.route = other.route;
    this.materials = other.materials;
    this.suction = other.suction;
    this.suctionLines = suctionLines;
    this.rule = other.rule;
    this.toleratedShare = other.toleratedShare;
    this.liquids = other.liquids;
  }

  private static DepositionRule rule(Criteria criteria) {
    return new DepositionRule(
        Measure.FRACTION.si(criteria.marginFraction()),
        Measure.SPEED.si(criteria.marginVelocity()),
        criteria.gradedSearch(),
        criteria.roles());
  }

  DepositionRule rule() {
    return rule;
  }

  RouteSpec route() {
    return route;
  }

  /** One run of the line, or another in its place, at a flow. */
  RunPoint run(RunSpec run, double flowM3ps, double sandFraction) {
    return run(run, flowM3ps, sandFraction, floorShare(List.of(run), flowM3ps, sandFraction));
  }

  List<RunPoint> runs(double flowM3ps, double sandFraction) {
    List<RunPoint> points = new ArrayList<>();
    double floorShare = floorShare(route.runs(), flowM3ps, sandFraction);
    for (RunSpec run : route.runs()) {
      points.add(run(run, flowM3ps, sandFraction, floorShare));
    }
    return points;
  }

  private RunPoint run(RunSpec run, double flowM3ps, double sandFraction, double lineFloorShare) {
    return RunPoint.of(
        run,
        new RunPoint.Context(materials, rule, liquids, lineFloorShare, toleratedShare),
        flowM3ps,
        sandFraction);
  }

  /**
   * Share of the sand that would reach the floor before the outlet if no eddy lifted it and all of
   * the liquid were sheared.
   */
  private double floorShare(List<RunSpec> line, double flowM3ps, double sandFraction) {
    Vehicle vehicle = materials.vehicle(1, sandFraction);
    Rheology rheology = materials.carrier().rheology().thickened(vehicle.relativeViscosity());
    List<LaminarTransport.Run> stretches = new ArrayList<>();
    for (RunSpec run : line) {
      double length = Measure.LENGTH.si(run.length());
      double rise = Measure.LENGTH.si(run.rise());
      stretches.add(
          new LaminarTransport.Run(
              new Bore(Measure.LENGTH.si(run.largestBore()), Measure.LENGTH.si(run.roughness())),
              Math.sqrt(length * length - rise * rise)));
    }
    List<LaminarTransport.RunDeposit> deposits =
        LaminarTransport.alongLine(
            materials.settlingGrain(),
            vehicle.coarseVolumeFraction(),
            rheology,
            vehicle.liquid().densityKgM3(),
            flowM3ps,
            stretches,
            SettlingVelocities.DEFAULT,
            HinderedSettlings.DEFAULT);
    return deposits.get(deposits.size() - 1).shareOfInflow();
  }

  /** Total heads along the line, in metres of mixture above its start: first, joints, outlet. */
  List<Double> totalHeadsM(List<RunPoint> runs) {
    double elevation = runs.stream().mapToDouble(RunPoint::riseM).sum();
    double head =
        elevation
            + Measure.LENGTH.si(route.outletHead())
            + runs.get(runs.size() - 1).velocityHeadM();
    List<Double> heads = new ArrayList<>();
    heads.add(head);
    for (int i = runs.size() - 1; i >= 0; i--) {
      head += runs.get(i).lossM();
      heads.add(0, head);
    }
    return heads;
  }

  /**
   * Head asked of a pump, in metres of mixture, from the level of the source. Of pumps in parallel
   * each has a suction line with an equal share of the flow.
   */
  double systemHeadM(List<RunPoint> runs) {
    RunPoint first = runs.get(0);
    double flow = first.velocityMps() * first.mean().areaM2() / suctionLines;
    return systemHeadM(runs, flow);
  }

  /** The same where one suction line has a flow of its own. */
  double systemHeadM(List<RunPoint> runs, double suctionFlowM3ps) {
    return deliveryHeadM(runs) + suctionLineLossM(suctionFlowM3ps, runs.get(0).sandFraction());
  }

  /** Head asked of a pump but for the loss in its suction line. */
  double deliveryHeadM(List<RunPoint> runs) {
    return totalHeadsM(runs).get(0) - Measure.LENGTH.si(route.sourceLevel());
  }

  boolean hasSuction() {
    return suction.isPresent();
  }

  /** Head lost in the suction line of one pump, 0 without one. */
  double suctionLineLossM(double flowM3ps, double sandFraction) {
    return suction(flowM3ps, sandFraction).map(RunPoint::lossM).orElse(0.0);
  }

  /** Head that clear liquid at a flow of all pumps loses in the suction line of each. */
  double suctionLossM(double flowM3ps) {
    return suction(flowM3ps / suctionLines, 0).map(RunPoint::lossM).orElse(0.0);
  }

  /** The suction line of one pump at its flow. */
  Optional<RunPoint> suction(double flowM3ps, double sandFraction) {
    return suction.map(run -> run(run, flowM3ps, sandFraction));
  }

  /** The same line fed by another number of pumps side by side. */
  LineModel withSuctionLines(int lines) {
    return new LineModel(this, lines);
  }

  double systemHeadM(double flowM3ps, double sandFraction) {
    return systemHeadM(runs(flowM3ps, sandFraction));
  }

  /** The head that the carrier alone would ask, in metres of carrier. */
  double liquidHeadM(double flowM3ps) {
    return systemHeadM(flowM3ps, 0);
  }

  /** Head asked at no flow: the lift alone. */
  double staticHeadM() {
    return route.runs().stream().mapToDouble(r -> Measure.LENGTH.si(r.rise())).sum()
        + Measure.LENGTH.si(route.outletHead())
        - Measure.LENGTH.si(route.sourceLevel());
  }

  boolean overBed(List<RunPoint> runs) {
    return runs.stream().anyMatch(RunPoint::overBed);
  }

  /** Gauge pressure at the start of the line when no flow leaves it and a pump adds a head. */
  double blockedPressurePa(double headM, double mixtureDensityKgM3) {
    return mixtureDensityKgM3 * Physics.GRAVITY * (headM + Measure.LENGTH.si(route.sourceLevel()));
  }

  double volumeM3() {
    return route.runs().stream()
        .mapToDouble(
            run -> {
              double bore = Measure.LENGTH.si(run.meanBore());
              return Math.PI * bore * bore / 4 * Measure.LENGTH.si(run.length());
            })
        .sum();
  }

  /**
   * The least flow from which a run lacks no margin against deposition, found by trial of rising
   * flows: the viscosity of the carrier and, of sand fed at a rate, its concentration change with
   * the flow.
   *
   * @param run the run
   * @return the flow, or nothing when no flow up to 30 m/s is enough
   */
  OptionalDouble leastSafeFlowM3ps(RunSpec run) {
    double bore = Measure.LENGTH.si(run.largestBore());
    double area = Math.PI * bore * bore / 4;
    double high = LEAST_TRIED_MPS * area;
    while (!fastEnough(run, high)) {
      high *= FLOW_STEP;
      if (high > MOST_TRIED_MPS * area) {
        return OptionalDouble.empty();
      }
    }
    double low = high / FLOW_STEP;
    while (high - low > 1e-9 * high) {
      double middle = (low + high) / 2;
      if (fastEnough(run, middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return OptionalDouble.of(high);
  }

  /** The least flow at which every run keeps its sand moving; empty when in some run none does. */
  OptionalDouble leastSafeFlowM3ps() {
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

  /** Rating of the weakest run as warm as the liquid; empty when none is known. */
  OptionalDouble weakestRatingPa() {
    return route.runs().stream()
        .map(run -> run.ratingPa(materials.carrier().temperatureK()))
        .flatMapToDouble(OptionalDouble::stream)
        .min();
  }

  private boolean fastEnough(RunSpec run, double flowM3ps) {
    if (!materials.flows(flowM3ps)) {
      return false;
    }
    RunPoint point = run(run, flowM3ps, materials.sandFraction(flowM3ps));
    return point
        .deposition()
        .map(
            d ->
                point.leastVelocityMps() >= d.velocityToPassMps()
                    && point.regime() == ClearLiquid.Regime.TURBULENT)
        .orElse(true);
  }
}
