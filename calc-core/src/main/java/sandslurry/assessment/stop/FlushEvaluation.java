package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.OverBed;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.ServiceSpec.FlushPoint;
import sandslurry.design.station.ServiceSpec.FlushSupply;
import sandslurry.design.station.ServiceSpec.GivenFlush;
import sandslurry.design.station.ServiceSpec.SourceFlush;
import sandslurry.material.liquid.Liquid;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.pipe.Bore;
import sandslurry.pump.piston.PistonPump;
import sandslurry.pump.rotodynamic.DutyPoints;
import sandslurry.pump.rotodynamic.DutyPoints.DutyPoint;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.transport.bed.OpenSection;
import sandslurry.transport.friction.ClearLiquid;

/**
 * What the supply of a flush gives against what stands in the line.
 *
 * <p><b>Start.</b> Nothing moves before the supply has more than the static pressure of the mixture
 * and 4 τ L/D, with the yield stress after the rest.
 *
 * <p><b>Front.</b> Then water pushes the mixture out: with the front at each joint of the line the
 * runs behind it are full of water and those before it of the mixture, whose friction is that of
 * the line itself. Between joints the head asked at a flow changes evenly, so the least flow is
 * that with the front at one of them, or at the outlet.
 *
 * <p><b>Strip.</b> Behind the front a layer stays on the wall for ever where the stress of the
 * water does not reach the yield stress (static wall layers: Allouche, Frigaard and Sona 2000,
 * Journal of Fluid Mechanics 424, and Taghavi and others 2012, Journal of Non-Newtonian Fluid
 * Mechanics 167-168:59, abstracts read), and water runs on through its channel. {@link
 * FlushWater#STRIPPING} times the yield stress of the flowing liquid is asked for (a choice of this
 * program, no source).
 *
 * @param standing what stands in the line
 * @param water the line with water
 */
record FlushEvaluation(StoppedMixture standing, FlushWater water) {
  private static final double LEAST_SHARE = 0.02;

  FlushFlow result(FlushSupply supply) {
    double lift = standing.model().staticHeadM() + sourceLevelM();
    double start = standing.pressurePa(lift) + standing.yieldPa();
    if (supply instanceof GivenFlush given) {
      double flow = given.flowM3ps();
      OptionalDouble as = OptionalDouble.of(flow);
      double friction =
          water.pressurePa(cleanHeadM(flow) - water.model().staticHeadM() - sourceLevelM());
      return new FlushFlow(
          false, start, standing.pressurePa(lift) + friction, as, as, as, overBed(as, as));
    }
    OptionalDouble clean = flow(supply, this::cleanHeadM);
    double available = water.pressurePa(shutOffHeadM(supply));
    OptionalDouble loaded =
        start < available && clean.isPresent()
            ? pushing(supply, clean.getAsDouble())
            : OptionalDouble.empty();
    OptionalDouble bed =
        standing.indices().anyMatch(i -> standing.lying().share(i) > 0)
            ? flow(supply, this::bedHeadM)
            : clean;
    return new FlushFlow(true, start, available, clean, loaded, bed, overBed(bed, clean));
  }

  private double sourceLevelM() {
    return water.model().route().sourceLevelM();
  }

  /**
   * The least flow with the front of the water at the start, at a joint or at the outlet: where a
   * line falls, water drives itself through it with less than the mixture does.
   */
  private OptionalDouble pushing(FlushSupply supply, double cleanM3ps) {
    double least = cleanM3ps;
    // The search asks for the same flows at every place of the front.
    Map<Double, double[]> heads = new HashMap<>();
    Optional<Curve> curve = curve(supply);
    for (int i = 0; i <= standing.runs().size(); i++) {
      int behind = i;
      DoubleUnaryOperator needed = q -> heads.computeIfAbsent(q, this::frontHeadsM)[behind];
      if (curve.isPresent() && curve.get().above(needed, least)) {
        // What the supply has left there drives more than that.
        continue;
      }
      OptionalDouble flow = flow(supply, needed);
      if (flow.isEmpty()) {
        return flow;
      }
      least = Math.min(least, flow.getAsDouble());
    }
    return OptionalDouble.of(least);
  }

  /** Head asked at the start of the line, in metres of water. */
  private double cleanHeadM(double flow) {
    return water.model().totalHeadsM(water.runs(flow)).get(0);
  }

  /**
   * The heads with so many runs, from none to all, full of water and the others of what stood in
   * the line.
   */
  private double[] frontHeadsM(double flow) {
    List<RunPoint> clean = water.runs(flow);
    List<RunPoint> full = standing.model().runs(flow, standing.fraction());
    double ratio =
        standing.model().materials().mixtureDensityKgM3(standing.fraction()) / water.densityKgM3();
    int runs = full.size();
    double[] heads = new double[runs + 1];
    heads[0] = ratio * (water.model().route().outletHeadM() + full.get(runs - 1).velocityHeadM());
    for (RunPoint run : full) {
      heads[0] += ratio * (run.pipe().spec().riseM() + run.lossM());
    }
    for (int i = 0; i < runs; i++) {
      heads[i + 1] =
          heads[i]
              + (clean.get(i).pipe().spec().riseM() + clean.get(i).lossM())
              - ratio * (full.get(i).pipe().spec().riseM() + full.get(i).lossM());
    }
    return heads;
  }

  /** Head of the supply while nothing flows, in metres of water above the start of the line. */
  private double shutOffHeadM(FlushSupply supply) {
    if (supply instanceof SourceFlush source) {
      return source.levelM()
          + source.curve().stream().mapToDouble(point -> point.headM()).max().orElse(0);
    }
    return sourceLevelM()
        + pump()
            .match(
                spec -> spec.running().headM(spec.running().leastFlowM3ps()),
                spec -> spec.pressureLimitPa() / (water.densityKgM3() * Physics.GRAVITY));
  }

  private PumpSpec pump() {
    return standing.model().design().pump().orElseThrow();
  }

  /** Water alone over a bed that stays where it is and takes its part of the section. */
  private double bedHeadM(double flow) {
    double head = 0;
    List<RunPoint> clean = water.runs(flow);
    for (int i = 0; i < clean.size(); i++) {
      RunSpec run = clean.get(i).pipe().spec();
      OpenSection open = standing.open(i);
      Bore way = open.roughest();
      double velocity = flow / open.areaM2();
      Liquid liquid = water.model().materials().carrier().liquidAt(8 * velocity / way.diameterM());
      double gradient = ClearLiquid.of(liquid, way, velocity).gradient();
      double kinetic = velocity * velocity / (2 * Physics.GRAVITY);
      head +=
          run.riseM()
              + gradient * run.lengthM()
              + clean.get(i).friction().fittingCoefficient() * kinetic
              + (i == clean.size() - 1 ? kinetic : 0);
    }
    return head + water.model().route().outletHeadM();
  }

  private boolean open() {
    return standing
        .indices()
        .allMatch(i -> standing.stopped(i).bed().depthShare() <= OpenSection.DEEPEST);
  }

  private List<OverBed> overBed(OptionalDouble flow, OptionalDouble clean) {
    List<RunPoint> points = clean.isPresent() ? water.runs(clean.getAsDouble()) : List.of();
    List<OverBed> over = new ArrayList<>();
    for (int i = 0; i < standing.runs().size(); i++) {
      RunSpec run = standing.runs().get(i);
      over.add(
          new OverBed(
              run.name(),
              flow.isPresent() && open() ? flow.getAsDouble() / standing.open(i).areaM2() : 0,
              water.clearingMps(run),
              points.isEmpty() ? 0 : water.wallStressPa(points.get(i)),
              FlushWater.STRIPPING * standing.rheology().yieldStressPa()));
    }
    return over;
  }

  /**
   * A supply by its head, in metres of water above the start of the line, between two flows.
   *
   * @param headM the head at a flow
   * @param leastM3ps least flow [m3/s]
   * @param greatestM3ps greatest flow [m3/s]
   */
  private record Curve(DoubleUnaryOperator headM, double leastM3ps, double greatestM3ps) {
    /** The flow at which it meets a line; the greatest where a curve ends before. */
    OptionalDouble meets(DoubleUnaryOperator needed) {
      if (above(needed, greatestM3ps)) {
        return OptionalDouble.of(greatestM3ps);
      }
      double least = Math.max(leastM3ps, LEAST_SHARE * greatestM3ps);
      return DutyPoints.find(headM, needed, least, greatestM3ps).points().stream()
          .filter(p -> p.meeting() == Meeting.STABLE || p.meeting() == Meeting.JUMP)
          .mapToDouble(DutyPoint::flowM3ps)
          .max();
    }

    boolean above(DoubleUnaryOperator needed, double flow) {
      return headM.applyAsDouble(flow) >= needed.applyAsDouble(flow);
    }
  }

  /** The flow at which supply and line meet. */
  private OptionalDouble flow(FlushSupply supply, DoubleUnaryOperator needed) {
    if (!open()) {
      return OptionalDouble.empty();
    }
    Optional<Curve> curve = curve(supply);
    return curve.isPresent()
        ? curve.get().meets(needed)
        : pump().match(spec -> OptionalDouble.empty(), spec -> strokes(spec, needed));
  }

  /** The curve of a supply; a piston pump has none. */
  private Optional<Curve> curve(FlushSupply supply) {
    if (supply instanceof SourceFlush source) {
      double level = source.levelM();
      if (source.curve().isEmpty()) {
        return Optional.of(new Curve(flow -> level, 0, water.mostTriedM3ps()));
      }
      MonotoneCurve curve =
          new MonotoneCurve(
              source.curve().stream().mapToDouble(FlushPoint::flowM3ps).toArray(),
              source.curve().stream().mapToDouble(FlushPoint::headM).toArray());
      return Optional.of(new Curve(flow -> level + curve.at(flow), curve.from(), curve.to()));
    }
    return pump().match(spec -> Optional.of(curve(spec.running())), spec -> Optional.empty());
  }

  private Curve curve(PumpGroup group) {
    return new Curve(
        flow -> sourceLevelM() + group.headM(flow) - water.model().suctionLossM(flow),
        group.leastFlowM3ps(),
        group.greatestFlowM3ps());
  }

  private OptionalDouble strokes(PistonSpec spec, DoubleUnaryOperator needed) {
    PistonPump pump =
        new PistonPump(spec.displacementM3(), spec.volumetricEfficiency(), spec.pressureLimitPa());
    double flow = pump.flowM3ps(spec.strokeRatePs());
    double rise =
        water.pressurePa(
            needed.applyAsDouble(flow) + water.model().suctionLossM(flow) - sourceLevelM());
    return pump.allows(rise) ? OptionalDouble.of(flow) : OptionalDouble.empty();
  }
}
