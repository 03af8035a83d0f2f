package sandslurry.assessment.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.correlation.Physics;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.PumpSpec.RunningPump;
import sandslurry.pump.derating.SolidsDeratings;
import sandslurry.pump.drive.MotorPower;
import sandslurry.pump.piston.PistonPump;
import sandslurry.pump.rotodynamic.DutyPoints;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.PumpGroup;

/**
 * Evaluates the pump of a design on its line. Pump and line meet at the design concentration: with
 * sand fed at a rate, the concentration at the duty point is another, which the state of the line
 * at its duty shows.
 */
public final class PumpEvaluation {
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
  private final PumpInLiquid liquid;
  private final PumpSpec spec;
  private final Change change;
  private Optional<PumpGroup> derated;
  private List<RunningPump> pumps;

  /**
   * What differs from the design.
   *
   * @param pumps the rotodynamic pumps that run; those of the design when empty
   * @param choice which corrections of rotodynamic pumps are believed
   * @param worn share that wear takes, of the head of rotodynamic pumps without a share of their
   *     own and of the flow of a piston pump; empty when nothing is worn
   */
  public record Change(
      Optional<List<RunningPump>> pumps, PumpInLiquid.Choice choice, OptionalDouble worn) {
    /** The pumps as designed. */
    public static final Change NONE =
        new Change(Optional.empty(), PumpInLiquid.Choice.RULE, OptionalDouble.empty());
  }

  /**
   * The pump of a design on its line.
   *
   * @param line the physics of its line
   */
  public PumpEvaluation(LineModel line) {
    this(line, Change.NONE);
  }

  /**
   * The pump of a design on its line, changed.
   *
   * @param line the physics of its line
   * @param change what differs from the design
   */
  public PumpEvaluation(LineModel line, Change change) {
    this.change = change;
    this.line = line;
    this.spec = line.design().pump().orElseThrow();
    double designFlow = line.design().oneLine().flow().designM3ps();
    this.sandFraction = line.materials().sandFraction(designFlow);
    this.mixtureDensity = line.materials().mixtureDensityKgM3(sandFraction);
    this.sandDensity = line.materials().sandDensityKgM3();
    this.liquid = new PumpInLiquid(line.runs(designFlow, sandFraction).get(0));
  }

  /**
   * Duty points, curves and corrections of the pump.
   *
   * @return the pump as its assessment shows it
   */
  public PumpResult result() {
    return spec.match(this::rotodynamic, this::pistonResult);
  }

  /**
   * What liquor and sand take from the pumps.
   *
   * @return the corrections
   */
  public PumpInLiquid liquid() {
    return liquid;
  }

  /**
   * Which corrections are used.
   *
   * @return the choice
   */
  public PumpInLiquid.Choice choice() {
    return change.choice();
  }

  /**
   * The pumps that run.
   *
   * @param pump rotodynamic pumps of the design
   * @return in the order of the design
   */
  public List<RunningPump> pumps(RotodynamicSpec pump) {
    if (pumps == null) {
      pumps = change.pumps().orElseGet(pump::pumps);
    }
    return pumps;
  }

  /**
   * The pumps that run, corrected for liquor, sand and wear.
   *
   * @param pump rotodynamic pumps of the design
   * @return the group; empty when a correction leaves a pump no head or no efficiency
   */
  public Optional<PumpGroup> derated(RotodynamicSpec pump) {
    if (derated == null) {
      derated = group(pump);
    }
    return derated;
  }

  private Optional<PumpGroup> group(RotodynamicSpec pump) {
    List<PumpCurve> curves = new ArrayList<>();
    for (RunningPump each : pumps(pump)) {
      Optional<PumpCurve> curve = liquid.curve(each, change.worn(), change.choice());
      if (curve.isEmpty()) {
        return Optional.empty();
      }
      curves.add(curve.get());
    }
    return PumpGroup.of(pump.station().arrangement(), curves);
  }

  /**
   * Says whether the pumps have a head at a flow rate: no curve is extrapolated.
   *
   * @param flowM3ps the flow rate [m3/s]
   * @return true within the range of their curves
   */
  public boolean reaches(double flowM3ps) {
    return spec.match(
        rotodynamic ->
            derated(rotodynamic)
                .filter(group -> flowM3ps >= group.leastFlowM3ps())
                .filter(group -> flowM3ps <= group.greatestFlowM3ps())
                .isPresent(),
        piston -> true);
  }

  /**
   * The flow rate to which pumps without a duty point deliver.
   *
   * @return where their curve ends with more head than the line needs, or the flow rate of the
   *     strokes; empty when they have less head than the line needs [m3/s]
   */
  public OptionalDouble deliversToM3ps() {
    return spec.match(this::curveEndM3ps, piston -> OptionalDouble.of(strokes(piston)));
  }

  private OptionalDouble curveEndM3ps(RotodynamicSpec rotodynamic) {
    Optional<PumpGroup> group = derated(rotodynamic);
    if (group.isEmpty()) {
      return OptionalDouble.empty();
    }
    double end = group.get().greatestFlowM3ps();
    double head = group.get().headM(end);
    return head > systemHead(group.get(), end, head)
        ? OptionalDouble.of(end)
        : OptionalDouble.empty();
  }

  /** Head asked of the pumps at a flow and the head of theirs. */
  private double systemHead(PumpGroup group, double flow, double groupHead) {
    double delivery = line.deliveryHeadM(flow, sandFraction);
    return line.hasSuction()
        ? delivery + line.suctionLineLossM(group.greatestShareM3ps(flow, groupHead), sandFraction)
        : delivery;
  }

  /**
   * Flow rate of the pump that takes most. The loss of its suction line is taken for all: exact for
   * equal pumps and for one alone, on the safe side for unequal ones, of which the others lose
   * less.
   *
   * @param group the pumps
   * @param flowM3ps flow rate of all pumps together [m3/s]
   * @return flow rate of one pump [m3/s]
   */
  public static double greatestShareM3ps(PumpGroup group, double flowM3ps) {
    return group.greatestShareM3ps(flowM3ps, group.headM(flowM3ps));
  }

  private PumpResult rotodynamic(RotodynamicSpec pump) {
    SolidsDeratings.Derating derating = liquid.derating(pumps(pump).get(0), change.choice());
    Optional<PumpGroup> corrected = derated(pump);
    if (corrected.isEmpty()) {
      return stalled(pump, derating);
    }
    PumpGroup curve = corrected.get();
    double greatest = curve.greatestFlowM3ps();
    double least = Math.max(curve.leastFlowM3ps(), LEAST_SHARE * greatest);
    DutyPoints found =
        DutyPoints.find(
            curve::headM, (flow, head) -> systemHead(curve, flow, head), least, greatest);
    List<PumpResult.Duty> duties = new ArrayList<>();
    for (DutyPoints.DutyPoint point : found.points()) {
      double efficiency = efficiency(curve, point.flowM3ps());
      double drive = drive(pumps(pump), curve.parts(point.flowM3ps()));
      duties.add(duty(point.flowM3ps(), point.headM(), point.meeting(), efficiency, drive));
    }
    List<PumpResult.CurvePoint> shown = new ArrayList<>();
    for (int i = 0; i <= CURVE_POINTS; i++) {
      double from = curve.leastFlowM3ps();
      double flow = Math.min(from + (greatest - from) * i / CURVE_POINTS, greatest);
      shown.add(new PumpResult.CurvePoint(flow, curve.headM(flow)));
    }
    return new PumpResult(
        duties,
        absence(found, curve),
        shown,
        deratings(pump),
        Optional.of(derating.model()),
        derating.headRatio().value(),
        derating.efficiencyRatio().value(),
        viscous(pump),
        blockedPressure(pump));
  }

  /**
   * Efficiency of all drives together: shaft power over motor input power.
   *
   * @param pumps the pumps that run
   * @param parts what each gives
   * @return efficiency; that of the first drive when no pump gives power
   */
  public static double drive(List<RunningPump> pumps, List<PumpGroup.Part> parts) {
    double shaft = 0;
    double drawn = 0;
    for (int i = 0; i < parts.size(); i++) {
      PumpGroup.Part part = parts.get(i);
      if (part.flowM3ps() > 0 && part.efficiency() > 0) {
        double share = part.flowM3ps() * Math.max(part.headM(), 0) / part.efficiency();
        shaft += share;
        drawn += share / pumps.get(i).driveEfficiency();
      }
    }
    return drawn > 0 ? shaft / drawn : pumps.get(0).driveEfficiency();
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
            && curve.headM(end) > systemHead(curve, end, curve.headM(end));
    return beyond
        ? Optional.of(
            "where its curve ends the pump still has more head than the line needs: the stable flow"
                + " lies beyond the points given")
        : found.absence().map(DutyPoints.Absence::words);
  }

  /** Pumps of which the corrections, far out of their range, leave no head or no efficiency. */
  private PumpResult stalled(RotodynamicSpec pump, SolidsDeratings.Derating derating) {
    boolean bySand = !(derating.headRatio().value() > 0 && derating.efficiencyRatio().value() > 0);
    return new PumpResult(
        List.of(),
        Optional.of(
            bySand
                ? "by "
                    + derating.model().name()
                    + " this sand, at this concentration, takes all of the head or efficiency of"
                    + " the pump"
                : "what sand and liquid take leaves a pump no head or no efficiency, or the pumps"
                    + " no flow in common"),
        List.of(),
        deratings(pump),
        Optional.of(derating.model()),
        Math.max(0, derating.headRatio().value()),
        Math.max(0, derating.efficiencyRatio().value()),
        viscous(pump),
        blockedPressure(pump));
  }

  private List<ModelValue> deratings(RotodynamicSpec pump) {
    RunningPump first = pumps(pump).get(0);
    return liquid.deratings(List.of(first)).stream()
        .map(model -> new ModelValue(model, model.headRatio(liquid.slurry(), first.impellerM())))
        .toList();
  }

  private List<PumpResult.Viscous> viscous(RotodynamicSpec pump) {
    RunningPump first = pumps(pump).get(0);
    Optional<PumpInLiquid.Seen> believed = liquid.viscosity(first, change.choice());
    return liquid.viscosities(first).stream()
        .map(
            seen ->
                new PumpResult.Viscous(
                    seen.which(),
                    seen.viscosityPaS(),
                    seen.correction(),
                    believed.map(b -> b.which() == seen.which()).orElse(false)))
        .toList();
  }

  private double blockedPressure(RotodynamicSpec pump) {
    PumpGroup clear = pump.clear(pumps(pump));
    return line.blockedPressurePa(clear.headM(clear.leastFlowM3ps()), mixtureDensity);
  }

  private static PistonPump piston(PistonSpec spec) {
    return new PistonPump(
        spec.displacementM3(), spec.volumetricEfficiency(), spec.pressureLimitPa());
  }

  private double strokes(PistonSpec spec) {
    return piston(spec).flowM3ps(spec.strokeRatePs()) * (1 - change.worn().orElse(0));
  }

  private PumpResult pistonResult(PistonSpec spec) {
    PistonPump pump = piston(spec);
    double flow = strokes(spec);
    double head = line.systemHeadM(flow, sandFraction);
    double efficiency =
        spec.mechanicalEfficiency() * spec.volumetricEfficiency() * (1 - change.worn().orElse(0));
    PumpResult.Duty duty =
        duty(flow, head, DutyPoints.Meeting.STABLE, efficiency, spec.driveEfficiency());
    boolean within = pump.allows(Math.max(0, duty.pressurePa()));
    return new PumpResult(
        within ? List.of(duty) : List.of(),
        within
            ? Optional.empty()
            : Optional.of(
                "the line needs more pressure than the limit of the pump at the flow of its"
                    + " strokes"),
        List.of(),
        List.of(),
        Optional.empty(),
        1,
        1,
        List.of(),
        spec.pressureLimitPa());
  }

  private PumpResult.Duty duty(
      double flow, double head, DutyPoints.Meeting meeting, double efficiency, double drive) {
    // A line that runs down to its outlet by itself asks nothing of the pump.
    double needed = Math.max(head, 0);
    MotorPower power = MotorPower.of(mixtureDensity, flow, needed, efficiency, drive);
    return new PumpResult.Duty(
        flow,
        head,
        head * mixtureDensity * Physics.GRAVITY,
        meeting,
        line.overBed(line.runs(flow, sandFraction)),
        efficiency,
        power.shaftW(),
        power.inputW(),
        power.energyPerSandJpKg(sandFraction * flow * sandDensity));
  }
}
