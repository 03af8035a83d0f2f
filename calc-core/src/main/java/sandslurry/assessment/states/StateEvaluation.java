package sandslurry.assessment.states;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.station.PumpInLiquid;
import sandslurry.assessment.station.PumpResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.DrivingPower;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.PumpedMixture;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.assessment.station.StateResult.WorstRun;
import sandslurry.assessment.station.SuctionEvaluation;
import sandslurry.assessment.stop.FlushWater;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.fact.finding.Severity;
import sandslurry.material.liquid.Carriers;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.pump.rotodynamic.WearIndex;

/** Evaluates the line in one of its states. */
public final class StateEvaluation {
  private static final String TOO_MUCH_SAND = "more sand than flows as a slurry";

  private final StateVariant variant;
  private final Materials asDesigned;
  private final LineModel model;
  private final double flowM3ps;
  private final double sandFraction;
  private final double density;
  private final StateReasons reasons;

  /**
   * A state with what it was computed from.
   *
   * @param result the state as the assessment shows it
   * @param model physics of the line in this state; empty when it could not be computed
   * @param materials liquid, sand and mixture in this state
   * @param group the pumps in this state; empty when none drives the flow
   * @param margin least velocity over required velocity of all runs
   */
  public record Evaluated(
      StateResult result,
      Optional<LineModel> model,
      Materials materials,
      Optional<PumpGroup> group,
      double margin) {
    private static Evaluated failed(String name, boolean named, Materials inside, String why) {
      return new Evaluated(
          new StateResult(name, named, Severity.FAIL, List.of(why), Optional.empty()),
          Optional.empty(),
          inside,
          Optional.empty(),
          0);
    }
  }

  /**
   * A state that runs at a given flow.
   *
   * @param asDesigned the materials of the design, whose sand a flush has to clear
   */
  StateEvaluation(StateVariant variant, Materials asDesigned, LineModel model, double flowM3ps) {
    this.variant = variant;
    this.asDesigned = asDesigned;
    this.model = model;
    this.flowM3ps = flowM3ps;
    this.sandFraction = model.materials().sandFraction(flowM3ps);
    this.density = model.materials().mixtureDensityKgM3(sandFraction);
    this.reasons = new StateReasons(model.design().units());
  }

  /**
   * A state in which the pumps, where there are some, set the flow rate.
   *
   * @param named whether the design asks for it
   * @param line the line as designed, which a state of its pumps alone shares
   */
  static Evaluated of(StateVariant variant, boolean named, LineModel line) {
    Design design = variant.design();
    boolean sameLine =
        design == line.materials().design() && variant.sandFraction().isEmpty() && !variant.flush();
    Materials inside = sameLine ? line.materials() : Materials.of(design);
    if (variant.sandFraction().isPresent()) {
      double fraction = variant.sandFraction().getAsDouble();
      inside = inside.diluted(inside.carrier(), fraction, inside.highestFraction(fraction));
    }
    if (variant.flush()) {
      inside = inside.diluted(Carriers.water(inside.carrier().temperatureK()), 0, 0);
    }
    double flow = designFlow(design);
    if (!inside.flows(flow)) {
      return Evaluated.failed(variant.name(), named, inside, TOO_MUCH_SAND);
    }
    LineModel model = sameLine ? line : new LineModel(inside);
    Optional<PumpEvaluation> pumps = Optional.empty();
    if (design.pump().isPresent()) {
      Optional<RotodynamicSpec> rotodynamic = design.pump().get().rotodynamic();
      if (rotodynamic.isPresent()) {
        RotodynamicSpec spec = rotodynamic.get();
        model =
            model.withSuctionLines(
                spec.station().arrangement() == PumpGroup.Arrangement.PARALLEL
                    ? variant.pumps().pumps().orElseGet(spec::pumps).size()
                    : 1);
      }
      PumpEvaluation evaluation = new PumpEvaluation(model, variant.pumps());
      PumpResult result = evaluation.result();
      if (result.governing().isEmpty()) {
        return Evaluated.failed(
            variant.name(),
            named,
            inside,
            "no stable flow: "
                + result.absence().orElse("they meet only where the flow is not stable"));
      }
      flow = result.governing().get().flowM3ps();
      if (!inside.flows(flow)) {
        return Evaluated.failed(variant.name(), named, inside, TOO_MUCH_SAND);
      }
      pumps = Optional.of(evaluation);
    }
    return new StateEvaluation(variant, line.materials(), model, flow).evaluated(named, pumps);
  }

  /**
   * Evaluates it.
   *
   * @param named whether the design named for it
   * @param driving the pumps, when they set the flow
   */
  Evaluated evaluated(boolean named, Optional<PumpEvaluation> driving) {
    List<RunPoint> runs = model.runs(flowM3ps, sandFraction);
    RunPoint worst = RunPoint.worst(runs);
    reasons.sand(worst);
    double pressure = pressure(runs);
    if (variant.flush()) {
      reasons.flush(
          model.materials().carrier().temperatureK(),
          flowM3ps,
          FlushWater.of(asDesigned, asDesigned.sandFraction(designFlow(model.design())))
              .clearingM3ps());
    }
    List<PumpPoint> pumps = new ArrayList<>();
    Optional<PumpGroup> group = Optional.empty();
    double drive = model.design().pump().map(p -> p.driveEfficiency()).orElse(1.0);
    if (driving.isPresent()) {
      PumpEvaluation evaluation = driving.get();
      pumps.addAll(pumps(evaluation));
      Optional<RotodynamicSpec> rotodynamic = model.design().pump().flatMap(PumpSpec::rotodynamic);
      if (rotodynamic.isPresent()) {
        RotodynamicSpec spec = rotodynamic.get();
        group = evaluation.derated(spec);
        drive = PumpEvaluation.drive(evaluation.pumps(spec), group.orElseThrow().parts(flowM3ps));
      }
      pumps.forEach(reasons::pump);
    }
    double shaft = pumps.stream().mapToDouble(PumpPoint::shaftW).sum();
    boolean driven = driving.isPresent();
    Point point =
        new Point(
            flowM3ps,
            new PumpedMixture(sandFraction, density, model.materials().carrier().temperatureK()),
            group.isPresent()
                ? model.systemHeadM(runs, PumpEvaluation.greatestShareM3ps(group.get(), flowM3ps))
                : model.systemHeadM(runs),
            new WorstRun(
                worst.pipe().spec().name(),
                worst.regime(),
                worst.leastVelocityMps(),
                worst.limitMps(),
                worst.toPassMps()),
            pressure,
            new DrivingPower(
                driven ? OptionalDouble.of(shaft) : OptionalDouble.empty(),
                driven ? OptionalDouble.of(shaft / drive) : OptionalDouble.empty()),
            WearIndex.of(flowM3ps, designFlow(model.design())),
            pumps);
    return new Evaluated(
        new StateResult(
            variant.name(), named, reasons.severity(), reasons.texts(), Optional.of(point)),
        Optional.of(model),
        model.materials(),
        group,
        worst.margin());
  }

  /** The greatest pressure in the line. */
  private double pressure(List<RunPoint> runs) {
    List<LineModel.Pressures> pressures = model.pressures(runs);
    double greatest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < runs.size(); i++) {
      RunSpec run = runs.get(i).pipe().spec();
      double here = pressures.get(i).greatestPa();
      greatest = Math.max(greatest, here);
      run.ratingPa(model.materials().warmestK())
          .ifPresent(rating -> reasons.pressure(run, here, rating, model.design().criteria()));
    }
    return greatest;
  }

  private static double designFlow(Design design) {
    return design.oneLine().flow().designM3ps();
  }

  /** Each pump at the flow rate of the state. */
  List<PumpPoint> pumps(PumpEvaluation evaluation) {
    return model
        .design()
        .pump()
        .orElseThrow()
        .match(
            spec -> rotodynamic(spec, evaluation, evaluation.derated(spec).orElseThrow()),
            spec -> List.of(piston(spec)));
  }

  private List<PumpPoint> rotodynamic(
      RotodynamicSpec spec, PumpEvaluation evaluation, PumpGroup group) {
    List<PumpGroup.Part> parts = group.parts(flowM3ps);
    List<PumpPoint> points = new ArrayList<>();
    boolean series = spec.station().arrangement() == PumpGroup.Arrangement.SERIES;
    List<RunningPump> pumps = evaluation.pumps(spec);
    for (int i = 0; i < parts.size(); i++) {
      PumpGroup.Part part = parts.get(i);
      PumpCurve curve = group.pumps().get(i);
      RunningPump pump = pumps.get(i);
      boolean runs = part.flowM3ps() > 0 && part.efficiency() > 0;
      double shaft =
          runs
              ? density
                  * Physics.GRAVITY
                  * part.flowM3ps()
                  * Math.max(part.headM(), 0)
                  / part.efficiency()
              : 0;
      Optional<BestPoint> best = PumpInLiquid.best(pump);
      // Of pumps in series only the first draws from the pit.
      boolean draws = part.flowM3ps() > 0 && !(series && i > 0);
      Optional<SuctionPoint> suction =
          draws
              ? SuctionEvaluation.at(
                  model,
                  part.flowM3ps(),
                  sandFraction,
                  SuctionEvaluation.Need.of(
                      pump,
                      evaluation
                          .liquid()
                          .viscosity(pump, evaluation.choice())
                          .map(PumpInLiquid.Seen::correction)))
              : Optional.empty();
      points.add(
          new PumpPoint(
              pump.name(),
              part.flowM3ps(),
              part.headM(),
              part.efficiency(),
              curve.headM(curve.leastFlowM3ps()),
              shaft,
              best.map(b -> region(spec, curve, b)),
              pump.motor(),
              suction));
    }
    return points;
  }

  private static OperatingRegion region(RotodynamicSpec spec, PumpCurve curve, BestPoint best) {
    return OperatingRegion.common(curve.bestEfficiencyFlowM3ps(), best.specificSpeed())
        .within(spec.station().minimumFlowM3ps(), spec.station().maximumFlowM3ps());
  }

  private PumpPoint piston(PistonSpec spec) {
    double head = model.systemHeadM(flowM3ps, sandFraction);
    double efficiency =
        spec.mechanicalEfficiency()
            * spec.volumetricEfficiency()
            * (1 - variant.pumps().worn().orElse(0));
    double shaft = density * Physics.GRAVITY * flowM3ps * Math.max(head, 0) / efficiency;
    return new PumpPoint(
        "pump 1",
        flowM3ps,
        head,
        efficiency,
        head,
        shaft,
        Optional.empty(),
        spec.motor(),
        SuctionEvaluation.at(model, flowM3ps, sandFraction, SuctionEvaluation.Need.of(spec)));
  }
}
