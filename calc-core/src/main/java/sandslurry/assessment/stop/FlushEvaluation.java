package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.Lying;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.ServiceSpec.FlushPoint;
import sandslurry.design.station.ServiceSpec.FlushSupply;
import sandslurry.design.station.ServiceSpec.GivenFlush;
import sandslurry.design.station.ServiceSpec.SourceFlush;
import sandslurry.material.liquid.Liquid;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;
import sandslurry.pump.piston.PistonPump;
import sandslurry.pump.rotodynamic.DutyPoints;
import sandslurry.pump.rotodynamic.DutyPoints.DutyPoint;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.transport.bed.StoppedLine;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.Measure;

/**
 * What the supply of a flush gives against what stands in the line.
 *
 * <p><b>Start.</b> Nothing moves before the supply has more than the static pressure of the mixture
 * and 4 τ L/D, with the yield stress after the rest.
 *
 * <p><b>Front.</b> Then water pushes the mixture out: with the front at each joint of the line the
 * runs behind it are full of water and those before it of the mixture, whose friction is that of
 * the line itself. Between joints the head asked at a flow changes evenly, so the least flow is
 * that with the front at one of them.
 *
 * <p><b>Strip.</b> Behind the front a layer stays on the wall for ever where the stress of the
 * water does not reach the yield stress (static wall layers: Allouche, Frigaard and Sona 2000,
 * Journal of Fluid Mechanics 424, and Taghavi and others 2012, Journal of Non-Newtonian Fluid
 * Mechanics 167-168:59, abstracts read), and water runs on through its channel. {@value #STRIPPING}
 * times the yield stress of the flowing liquid is asked for (a choice of this program, no source).
 */
final class FlushEvaluation {
  /** Stress of the water on the wall that strips the liquid, over its yield stress. */
  static final double STRIPPING = 2;

  /** Velocity in the narrowest run at which the search for the flow of a tank ends. */
  private static final double MOST_TRIED_MPS = 30;

  private static final double LEAST_SHARE = 0.02;

  /** A bed that leaves less of the section than this leaves no way for a flush. */
  private static final double LEAST_OPEN = 0.02;

  /** Most roughness of the way over a bed, over its hydraulic diameter. */
  private static final double MOST_ROUGH = 0.1;

  private final Design design;
  private final Materials standing;
  private final Materials materials;
  private final LineModel mixture;
  private final LineModel water;
  private final double fraction;
  private final Lying lying;
  private final double yieldPa;

  /**
   * A flush.
   *
   * @param standing what stands in the line
   * @param materials the same sand in water
   * @param mixture the line with what stands in it
   * @param water the line with water
   * @param fraction volume fraction of sand in what stands in the line
   * @param lying what of it lies on the floor
   * @param yieldPa yield stress of the liquid while it flows [Pa]
   */
  FlushEvaluation(
      Design design,
      Materials standing,
      Materials materials,
      LineModel mixture,
      LineModel water,
      double fraction,
      Lying lying,
      double yieldPa) {
    this.design = design;
    this.standing = standing;
    this.materials = materials;
    this.mixture = mixture;
    this.water = water;
    this.fraction = fraction;
    this.lying = lying;
    this.yieldPa = yieldPa;
  }

  FlushFlow result(FlushSupply supply) {
    double weight = standing.mixtureDensityKgM3(fraction) * Physics.GRAVITY;
    double start =
        weight * (mixture.staticHeadM() + Measure.LENGTH.si(mixture.route().sourceLevel()))
            + startUpPa();
    if (supply instanceof GivenFlush given) {
      double flow = Measure.FLOW.si(given.flow());
      double friction = (cleanHeadM(flow) - staticHeadM()) * waterDensity() * Physics.GRAVITY;
      OptionalDouble as = OptionalDouble.of(flow);
      return new FlushFlow(
          false, start, start - startUpPa() + friction, as, as, as, overBed(as, as));
    }
    OptionalDouble clean = flow(supply, this::cleanHeadM);
    double available = shutOffHeadM(supply) * waterDensity() * Physics.GRAVITY;
    OptionalDouble loaded = start < available ? pushing(supply) : OptionalDouble.empty();
    OptionalDouble bed = lies() ? flow(supply, this::bedHeadM) : clean;
    return new FlushFlow(true, start, available, clean, loaded, bed, overBed(bed, clean));
  }

  /** What breaks the yield stress of the rested liquid all along the line. */
  private double startUpPa() {
    double sum = 0;
    for (RunSpec run : mixture.route().runs()) {
      sum +=
          4
              * lying.restedYieldPa()
              / Measure.LENGTH.si(run.meanBore())
              * Measure.LENGTH.si(run.length());
    }
    return sum;
  }

  /** The least flow with the front of the water at the start or at a joint. */
  private OptionalDouble pushing(FlushSupply supply) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < mixture.route().runs().size(); i++) {
      int behind = i;
      OptionalDouble flow = flow(supply, q -> frontHeadM(q, behind));
      if (flow.isEmpty()) {
        return flow;
      }
      least = Math.min(least, flow.getAsDouble());
    }
    return OptionalDouble.of(least);
  }

  private boolean lies() {
    return IntStream.range(0, lying.running().size()).anyMatch(i -> lying.share(i) > 0);
  }

  private double waterDensity() {
    return materials.carrier().densityKgM3();
  }

  /** Lift of water from the start of the line to its outlet, in metres of water. */
  private double staticHeadM() {
    return water.staticHeadM() + Measure.LENGTH.si(water.route().sourceLevel());
  }

  /** Heads asked at the start of the line, in metres of water. */
  private double cleanHeadM(double flow) {
    return water.totalHeadsM(water.runs(flow, 0)).get(0);
  }

  /** The head with some runs full of water and the others of what stood in the line. */
  private double frontHeadM(double flow, int behind) {
    List<RunPoint> clean = water.runs(flow, 0);
    List<RunPoint> full = mixture.runs(flow, fraction);
    double ratio = standing.mixtureDensityKgM3(fraction) / waterDensity();
    double head =
        ratio
            * (Measure.LENGTH.si(water.route().outletHead())
                + full.get(full.size() - 1).velocityHeadM());
    for (int i = 0; i < full.size(); i++) {
      RunPoint run = i < behind ? clean.get(i) : full.get(i);
      head += (run.riseM() + run.lossM()) * (i < behind ? 1 : ratio);
    }
    return head;
  }

  /** Head of the supply while nothing flows, in metres of water above the start of the line. */
  private double shutOffHeadM(FlushSupply supply) {
    if (supply instanceof SourceFlush source) {
      return Measure.LENGTH.si(source.level())
          + source.curve().stream()
              .mapToDouble(point -> Measure.LENGTH.si(point.head()))
              .max()
              .orElse(0);
    }
    double level = Measure.LENGTH.si(water.route().sourceLevel());
    if (design.pump().orElseThrow() instanceof RotodynamicSpec spec) {
      PumpGroup group = spec.running();
      return level + group.headM(group.leastFlowM3ps());
    }
    return level
        + Measure.PRESSURE.si(((PistonSpec) design.pump().orElseThrow()).pressureLimit())
            / (waterDensity() * Physics.GRAVITY);
  }

  /** Water alone over a bed that stays where it is and takes its part of the section. */
  private double bedHeadM(double flow) {
    double head = 0;
    List<RunPoint> clean = water.runs(flow, 0);
    for (int i = 0; i < clean.size(); i++) {
      RunSpec run = clean.get(i).run();
      CircularSegment bed = StopEvaluation.stopped(run, lying.fraction(fraction, i)).bed();
      double open = openM2(run, bed);
      double velocity = flow / open;
      double perimeter = Math.PI * bed.diameterM() - bed.wettedPerimeterM() + bed.surfaceWidthM();
      double hydraulic = 4 * open / perimeter;
      double roughness =
          Math.min(
              Math.max(Measure.LENGTH.si(run.roughness()), materials.coarse().d85M()),
              MOST_ROUGH * hydraulic);
      Liquid liquid = materials.carrier().liquidAt(8 * velocity / hydraulic);
      double gradient = ClearLiquid.of(liquid, new Bore(hydraulic, roughness), velocity).gradient();
      double kinetic = velocity * velocity / (2 * Physics.GRAVITY);
      head +=
          Measure.LENGTH.si(run.rise())
              + gradient * Measure.LENGTH.si(run.length())
              + clean.get(i).fittingCoefficient() * kinetic
              + (i == clean.size() - 1 ? kinetic : 0);
    }
    return head + Measure.LENGTH.si(water.route().outletHead());
  }

  private static double openM2(RunSpec run, CircularSegment bed) {
    double bore = Measure.LENGTH.si(run.meanBore());
    return Math.PI * bore * bore / 4 - bed.areaM2();
  }

  private boolean open() {
    return IntStream.range(0, lying.running().size())
        .allMatch(
            i -> lying.fraction(fraction, i) / StoppedLine.BED_VOLUME_FRACTION <= 1 - LEAST_OPEN);
  }

  private List<OverBed> overBed(OptionalDouble flow, OptionalDouble clean) {
    List<OverBed> over = new ArrayList<>();
    List<RunPoint> points = clean.isPresent() ? water.runs(clean.getAsDouble(), 0) : List.of();
    for (int i = 0; i < water.route().runs().size(); i++) {
      RunSpec run = water.route().runs().get(i);
      double velocity = 0;
      if (flow.isPresent() && open()) {
        double settled = lying.fraction(fraction, i);
        velocity = flow.getAsDouble() / openM2(run, StopEvaluation.stopped(run, settled).bed());
      }
      double stress = 0;
      if (clean.isPresent()) {
        RunPoint point = points.get(i);
        stress =
            point.liquidGradient()
                * waterDensity()
                * Physics.GRAVITY
                * point.mean().diameterM()
                / 4;
      }
      over.add(
          new OverBed(
              run.name(),
              velocity,
              StopEvaluation.clearingMps(water, run),
              stress,
              STRIPPING * yieldPa));
    }
    return over;
  }

  /** The flow at which supply and line meet; at least the last of a curve that ends before. */
  private OptionalDouble flow(FlushSupply supply, DoubleUnaryOperator line) {
    if (lies() && !open()) {
      return OptionalDouble.empty();
    }
    if (supply instanceof SourceFlush source) {
      double level = Measure.LENGTH.si(source.level());
      if (source.curve().isEmpty()) {
        return meet(flow -> level, line, 0, greatestTried());
      }
      MonotoneCurve curve =
          new MonotoneCurve(
              source.curve().stream().map(FlushPoint::flow).mapToDouble(Measure.FLOW::si).toArray(),
              source.curve().stream()
                  .map(FlushPoint::head)
                  .mapToDouble(Measure.LENGTH::si)
                  .toArray());
      return meet(flow -> level + curve.at(flow), line, curve.from(), curve.to());
    }
    double level = Measure.LENGTH.si(water.route().sourceLevel());
    if (design.pump().orElseThrow() instanceof RotodynamicSpec spec) {
      PumpGroup group = spec.running();
      return meet(
          flow -> level + group.headM(flow) - suctionLossM(flow),
          line,
          group.leastFlowM3ps(),
          group.greatestFlowM3ps());
    }
    PistonSpec spec = (PistonSpec) design.pump().orElseThrow();
    PistonPump pump =
        new PistonPump(
            Measure.VOLUME.si(spec.displacement()),
            Measure.FRACTION.si(spec.volumetricEfficiency()),
            Measure.PRESSURE.si(spec.pressureLimit()));
    double flow = pump.flowM3ps(Measure.FREQUENCY.si(spec.strokeRate()));
    double rise =
        (line.applyAsDouble(flow) + suctionLossM(flow) - level) * waterDensity() * Physics.GRAVITY;
    return pump.allows(rise) ? OptionalDouble.of(flow) : OptionalDouble.empty();
  }

  private double suctionLossM(double flow) {
    return water.suctionLossM(flow);
  }

  private double greatestTried() {
    return water.route().runs().stream()
        .mapToDouble(run -> Measure.LENGTH.si(run.meanBore()))
        .map(bore -> MOST_TRIED_MPS * Math.PI / 4 * bore * bore)
        .min()
        .orElseThrow();
  }

  private static OptionalDouble meet(
      DoubleUnaryOperator supply, DoubleUnaryOperator line, double from, double greatest) {
    double least = Math.max(from, LEAST_SHARE * greatest);
    if (supply.applyAsDouble(greatest) >= line.applyAsDouble(greatest)) {
      return OptionalDouble.of(greatest);
    }
    return DutyPoints.find(supply, line, least, greatest).points().stream()
        .filter(p -> p.meeting() == Meeting.STABLE || p.meeting() == Meeting.JUMP)
        .mapToDouble(DutyPoint::flowM3ps)
        .max();
  }
}
