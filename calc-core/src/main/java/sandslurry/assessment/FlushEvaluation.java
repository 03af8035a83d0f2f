package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.assessment.StopResult.FlushFlow;
import sandslurry.assessment.StopResult.OverBed;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.FlushPoint;
import sandslurry.design.ServiceSpec.FlushSupply;
import sandslurry.design.ServiceSpec.GivenFlush;
import sandslurry.design.ServiceSpec.SourceFlush;
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
 * What the supply of a flush gives against the line: clean, full of the sand that is to be flushed
 * out, and with that sand settled on its floor.
 */
final class FlushEvaluation {
  /** Velocity in the narrowest run at which the search for the flow of a tank ends. */
  private static final double MOST_TRIED_MPS = 30;

  private static final double LEAST_SHARE = 0.02;

  /** A bed that leaves less of the section than this leaves no way for a flush. */
  private static final double LEAST_OPEN = 0.02;

  /** Most roughness of the way over a bed, over its hydraulic diameter. */
  private static final double MOST_ROUGH = 0.1;

  private final Design design;
  private final Materials materials;
  private final LineModel water;
  private final double fraction;
  private final boolean lies;

  FlushEvaluation(
      Design design, Materials materials, LineModel water, double fraction, boolean lies) {
    this.design = design;
    this.materials = materials;
    this.water = water;
    this.fraction = fraction;
    this.lies = lies;
  }

  FlushFlow result(FlushSupply supply) {
    if (supply instanceof GivenFlush given) {
      OptionalDouble flow = OptionalDouble.of(Measure.FLOW.si(given.flow()));
      return new FlushFlow(false, flow, flow, flow, overBed(flow));
    }
    OptionalDouble clean = flow(supply, this::cleanHeadM);
    OptionalDouble loaded = flow(supply, this::loadedHeadM);
    OptionalDouble bed = lies ? flow(supply, this::bedHeadM) : clean;
    return new FlushFlow(true, clean, loaded, bed, overBed(bed));
  }

  private double waterDensity() {
    return materials.carrier().densityKgM3();
  }

  /** Heads asked at the start of the line, in metres of water. */
  private double cleanHeadM(double flow) {
    return water.totalHeadsM(water.runs(flow, 0)).get(0);
  }

  private double loadedHeadM(double flow) {
    return water.totalHeadsM(water.runs(flow, fraction)).get(0)
        * materials.mixtureDensityKgM3(fraction)
        / waterDensity();
  }

  /** Water alone over a bed that stays where it is and takes its part of the section. */
  private double bedHeadM(double flow) {
    double head = 0;
    List<RunPoint> clean = water.runs(flow, 0);
    for (int i = 0; i < clean.size(); i++) {
      RunSpec run = clean.get(i).run();
      CircularSegment bed = StopEvaluation.stopped(run, fraction).bed();
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
    return fraction / StoppedLine.BED_VOLUME_FRACTION <= 1 - LEAST_OPEN;
  }

  private List<OverBed> overBed(OptionalDouble flow) {
    List<OverBed> over = new ArrayList<>();
    for (RunSpec run : water.route().runs()) {
      OptionalDouble clearing = StopEvaluation.clearingMps(water, run);
      double velocity = 0;
      if (flow.isPresent() && open()) {
        velocity =
            flow.getAsDouble()
                / openM2(run, StopEvaluation.stopped(run, lies ? fraction : 0).bed());
      }
      over.add(new OverBed(run.name(), velocity, clearing));
    }
    return over;
  }

  /** The flow at which supply and line meet; at least the last of a curve that ends before. */
  private OptionalDouble flow(FlushSupply supply, DoubleUnaryOperator line) {
    if (lies && !open()) {
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
