package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.material.Slurry;
import sandslurry.pump.DeratingSpread;
import sandslurry.pump.DutyPoints;
import sandslurry.pump.MotorPower;
import sandslurry.pump.PistonPump;
import sandslurry.pump.PumpGroup;
import sandslurry.pump.SolidsDerating;
import sandslurry.pump.SolidsDeratings;
import sandslurry.units.Measure;

/**
 * Evaluates the pump of a design on its line. Pump and line meet at the design concentration: with
 * sand fed at a rate, the concentration at the duty point is another, which the state of the line
 * at its duty shows.
 */
final class PumpEvaluation {
  /**
   * Below this share of the greatest flow of a pump no duty point is looked for: the solids models
   * grow without limit towards zero flow, where they mean nothing.
   */
  private static final double LEAST_SHARE = 0.02;

  private static final int CURVE_POINTS = 40;

  private final LineModel line;
  private final double sandFraction;
  private final double mixtureDensity;
  private final double sandDensity;
  private final double designFlow;
  private final Slurry slurry;
  private final PumpSpec spec;
  private final Change change;

  /**
   * What differs from the design.
   *
   * @param group the pumps that run, in clear water; those of the design when empty
   * @param severest whether the severest derating of the catalogue is taken
   * @param slip share of the flow of a piston pump that wear takes
   */
  record Change(Optional<PumpGroup> group, boolean severest, double slip) {
    static final Change NONE = new Change(Optional.empty(), false, 0);
  }

  PumpEvaluation(Design design, Materials materials, LineModel line) {
    this(design, materials, line, Change.NONE);
  }

  PumpEvaluation(Design design, Materials materials, LineModel line, Change change) {
    this.change = change;
    this.line = line;
    this.spec = design.pump().orElseThrow();
    this.designFlow = Measure.FLOW.si(design.flow().orElseThrow().design());
    this.sandFraction = materials.sandFraction(designFlow);
    this.mixtureDensity = materials.mixtureDensityKgM3(sandFraction);
    this.sandDensity = materials.sandDensityKgM3();
    this.slurry = line.runs(designFlow, sandFraction).get(0).slurry();
  }

  PumpResult result() {
    return spec instanceof RotodynamicSpec rotodynamic
        ? rotodynamic(rotodynamic)
        : piston((PistonSpec) spec);
  }

  SolidsDeratings.Derating derating(RotodynamicSpec pump) {
    return change.severest()
        ? DeratingSpread.of(slurry, impeller(pump)).mostSevere()
        : SolidsDeratings.governing(slurry, impeller(pump));
  }

  /** The pumps that run, with what the sand takes; nothing when it takes all. */
  Optional<PumpGroup> derated(RotodynamicSpec pump) {
    SolidsDeratings.Derating derating = derating(pump);
    double head = derating.headRatio().value();
    double efficiency = derating.efficiencyRatio().value();
    return head > 0 && efficiency > 0
        ? Optional.of(clear(pump).derated(head, efficiency))
        : Optional.empty();
  }

  private PumpGroup clear(RotodynamicSpec pump) {
    return change.group().orElseGet(pump::running);
  }

  private static OptionalDouble impeller(RotodynamicSpec pump) {
    return pump.impeller().isPresent()
        ? OptionalDouble.of(Measure.LENGTH.si(pump.impeller().get()))
        : OptionalDouble.empty();
  }

  private PumpResult rotodynamic(RotodynamicSpec pump) {
    SolidsDeratings.Derating derating = derating(pump);
    double headRatio = derating.headRatio().value();
    double efficiencyRatio = derating.efficiencyRatio().value();
    PumpGroup clear = clear(pump);
    if (!(headRatio > 0 && efficiencyRatio > 0)) {
      return stalled(pump, clear, derating);
    }
    PumpGroup curve = clear.derated(headRatio, efficiencyRatio);
    double greatest = curve.greatestFlowM3ps();
    double least = Math.max(curve.leastFlowM3ps(), LEAST_SHARE * greatest);
    DutyPoints found =
        DutyPoints.find(
            curve::headM, flow -> line.systemHeadM(flow, sandFraction), least, greatest);
    double drive = Measure.FRACTION.si(pump.driveEfficiency());
    List<PumpResult.Duty> duties = new ArrayList<>();
    for (DutyPoints.DutyPoint point : found.points()) {
      double efficiency = efficiency(curve, point.flowM3ps());
      duties.add(duty(point.flowM3ps(), point.headM(), point.meeting(), efficiency, drive));
    }
    List<PumpResult.CurvePoint> shown = new ArrayList<>();
    for (int i = 0; i <= CURVE_POINTS; i++) {
      double from = curve.leastFlowM3ps();
      double flow = Math.min(from + (greatest - from) * i / CURVE_POINTS, greatest);
      shown.add(
          new PumpResult.CurvePoint(Measure.FLOW.of(flow), Measure.LENGTH.of(curve.headM(flow))));
    }
    return new PumpResult(
        duties,
        absence(found, curve),
        shown,
        deratings(pump),
        Measure.FRACTION.of(headRatio),
        Measure.FRACTION.of(efficiencyRatio),
        blockedPressure(clear));
  }

  /** Where no pump has head left, no power is given, and that of the best pump stands for all. */
  private static double efficiency(PumpGroup curve, double flow) {
    double together = curve.efficiency(flow);
    return together > 0
        ? together
        : curve.parts(flow).stream().mapToDouble(PumpGroup.Part::efficiency).max().orElseThrow();
  }

  /** Why there is no stable duty point; nothing when there is one. */
  private Optional<String> absence(DutyPoints found, PumpGroup curve) {
    double end = curve.greatestFlowM3ps();
    boolean beyond =
        found.stable().isEmpty()
            && !found.points().isEmpty()
            && curve.headM(end) > line.systemHeadM(end, sandFraction);
    return beyond
        ? Optional.of(
            "where its curve ends the pump still has more head than the line needs: the stable flow"
                + " lies beyond the points given")
        : found.absence().map(DutyPoints.Absence::words);
  }

  /** A pump of which the derating, far out of its range, leaves no head or no efficiency. */
  private PumpResult stalled(
      RotodynamicSpec pump, PumpGroup clear, SolidsDeratings.Derating derating) {
    return new PumpResult(
        List.of(),
        Optional.of(
            "by "
                + derating.model().name()
                + " this sand, at this concentration, takes all of the head or efficiency of the"
                + " pump"),
        List.of(),
        deratings(pump),
        Measure.FRACTION.of(Math.max(0, derating.headRatio().value())),
        Measure.FRACTION.of(Math.max(0, derating.efficiencyRatio().value())),
        blockedPressure(clear));
  }

  private List<ModelValue> deratings(RotodynamicSpec pump) {
    List<ModelValue> deratings = new ArrayList<>();
    for (SolidsDerating model : SolidsDeratings.all()) {
      if (!model.needsImpellerDiameter() || pump.impeller().isPresent()) {
        deratings.add(new ModelValue(model, model.headRatio(slurry, impeller(pump))));
      }
    }
    return deratings;
  }

  private Quantity<Pressure> blockedPressure(PumpGroup clear) {
    return Measure.PRESSURE.of(
        line.blockedPressurePa(clear.headM(clear.leastFlowM3ps()), mixtureDensity));
  }

  private PumpResult piston(PistonSpec spec) {
    PistonPump pump =
        new PistonPump(
            Measure.VOLUME.si(spec.displacement()),
            Measure.FRACTION.si(spec.volumetricEfficiency()),
            Measure.PRESSURE.si(spec.pressureLimit()));
    double flow = pump.flowM3ps(Measure.FREQUENCY.si(spec.strokeRate())) * (1 - change.slip());
    double head = line.systemHeadM(flow, sandFraction);
    double efficiency =
        Measure.FRACTION.si(spec.mechanicalEfficiency())
            * Measure.FRACTION.si(spec.volumetricEfficiency())
            * (1 - change.slip());
    PumpResult.Duty duty =
        duty(
            flow,
            head,
            DutyPoints.Meeting.STABLE,
            efficiency,
            Measure.FRACTION.si(spec.driveEfficiency()));
    boolean within = pump.allows(Math.max(0, Measure.PRESSURE.si(duty.pressure())));
    return new PumpResult(
        within ? List.of(duty) : List.of(),
        within
            ? Optional.empty()
            : Optional.of(
                "the line asks for more pressure than the limit of the pump at the flow of its"
                    + " strokes"),
        List.of(),
        List.of(),
        Measure.FRACTION.of(1),
        Measure.FRACTION.of(1),
        spec.pressureLimit());
  }

  private PumpResult.Duty duty(
      double flow, double head, DutyPoints.Meeting meeting, double efficiency, double drive) {
    // A line that runs down to its outlet by itself asks nothing of the pump.
    double asked = Math.max(head, 0);
    MotorPower power = MotorPower.of(mixtureDensity, flow, asked, efficiency, drive);
    OptionalDouble energy = power.energyPerSandJpKg(sandFraction * flow * sandDensity);
    return new PumpResult.Duty(
        Measure.FLOW.of(flow),
        Measure.LENGTH.of(head),
        Measure.PRESSURE.of(head * mixtureDensity * Physics.GRAVITY),
        meeting,
        line.overBed(line.runs(flow, sandFraction)),
        Measure.FRACTION.of(efficiency),
        Measure.POWER.of(power.shaftW()),
        Measure.POWER.of(power.inputW()),
        energy.isPresent()
            ? Optional.of(Measure.SPECIFIC_ENERGY.of(energy.getAsDouble()))
            : Optional.empty());
  }
}
