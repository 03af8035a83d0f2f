package sandslurry.assessment.station;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpResult.Viscous;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.PumpGroup.Arrangement;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the pump on its line. */
public final class PumpFindings extends FindingWriter {
  private static final String ELEMENT = "pump";

  /** Flows closer than this are the same to any flow meter of such a line (common practice). */
  private static final double FLOW_ACCURACY = 0.02;

  /** Viscosities closer than this are the same. */
  private static final double SAME = 1e-6;

  /** Viscosity above which a pump curve for water is no guide (common practice, no source). */
  private static final double THICK_PAS = 0.02;

  private final Design design;
  private final Materials materials;
  private final LineModel line;
  private final PumpResult result;

  /**
   * The pump that is judged.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param line the physics of its line
   * @param result duty points, curves and corrections
   */
  public PumpFindings(Design design, Materials materials, LineModel line, PumpResult result) {
    super(design.units());
    this.design = design;
    this.materials = materials;
    this.line = line;
    this.result = result;
  }

  /**
   * Findings on duty point, blocked line and viscosity.
   *
   * @return the findings
   */
  public List<Finding> all() {
    if (result.governing().isPresent()) {
      duty(result.governing().get());
    } else {
      noDuty();
    }
    several();
    blocked();
    viscous();
    return findings;
  }

  private void add(Severity severity, String what, String why, String cure) {
    add(severity, Topic.PUMP, ELEMENT, what, why, cure);
  }

  private double flow(FlowCase flowCase) {
    return Measure.FLOW.si(
        flowCase == FlowCase.MINIMUM
            ? design.flow().orElseThrow().minimum()
            : flowCase == FlowCase.DESIGN
                ? design.flow().orElseThrow().design()
                : design.flow().orElseThrow().maximum());
  }

  private double head(double flow) {
    return line.systemHeadM(flow, materials.sandFraction(flow));
  }

  private String need(double flow) {
    double fraction = materials.sandFraction(flow);
    double head = head(flow);
    double pressure = head * materials.mixtureDensityKgM3(fraction) * Physics.GRAVITY;
    return show(Kind.HEAD, head)
        + " of slurry ("
        + show(Kind.PRESSURE, pressure)
        + ") at "
        + show(Kind.FLOW, flow);
  }

  private void duty(PumpResult.Duty duty) {
    double flow = Measure.FLOW.si(duty.flow());
    double least = flow(FlowCase.MINIMUM);
    double wanted = flow(FlowCase.DESIGN);
    double most = flow(FlowCase.MAXIMUM);
    String why =
        "The duty point is "
            + show(Kind.FLOW, flow)
            + " and "
            + units.show(Kind.HEAD, duty.head())
            + " of slurry; the design gives "
            + show(Kind.FLOW, least)
            + " to "
            + show(Kind.FLOW, most)
            + ", design "
            + show(Kind.FLOW, wanted)
            + ".";
    if (flow < least * (1 - FLOW_ACCURACY)) {
      add(
          Severity.FAIL,
          "The duty point is below the minimum flow rate.",
          why,
          "Choose a pump that gives " + need(wanted) + ", or a higher speed.");
    } else if (flow < wanted * (1 - FLOW_ACCURACY)) {
      add(
          Severity.CAUTION,
          "The duty point is below the design flow rate.",
          why,
          "Choose a pump that gives " + need(wanted) + ", or a higher speed.");
    } else if (flow > most * (1 + FLOW_ACCURACY)) {
      add(
          Severity.CAUTION,
          "The duty point is above the maximum flow rate.",
          why,
          "Slow the pump down, or raise the maximum flow rate and check wear, power and pit"
              + " level.");
    } else {
      add(Severity.PASS, "The duty point is within the flow rates of the line.", why, "");
    }
  }

  private void noDuty() {
    add(
        Severity.FAIL,
        "There is no duty point: "
            + result.absence().orElse("the curves meet only where the flow is not stable")
            + ".",
        "The line needs " + need(flow(FlowCase.DESIGN)) + ".",
        design.pump().orElseThrow() instanceof PistonSpec piston
            ? "Choose a pump with a pressure limit above that, now "
                + units.show(Kind.PRESSURE, piston.pressureLimit())
                + ", or a larger pipe if its velocity stays above the required velocity."
            : head(flow(FlowCase.DESIGN)) < 0
                ? "Gravity alone gives a higher flow rate: leave the pump out, or throttle the line"
                    + " at its end."
                : "Choose a pump that gives that head, or give more points of the pump curve.");
  }

  private void several() {
    List<PumpResult.Duty> stable =
        result.duties().stream().filter(d -> d.meeting() == Meeting.STABLE).toList();
    Optional<PumpResult.Duty> unstable =
        result.duties().stream().filter(d -> d.meeting() != Meeting.STABLE).findFirst();
    if (stable.size() > 1) {
      add(
          Severity.CAUTION,
          "There is more than one stable duty point. The start decides which one is reached.",
          "They are at "
              + units.show(Kind.FLOW, stable.get(0).flow())
              + " and "
              + units.show(Kind.FLOW, stable.get(stable.size() - 1).flow())
              + "; the line is judged at the higher.",
          "Take a pump with a steeper curve.");
    }
    if (unstable.isPresent()) {
      boolean overBed = unstable.get().overBed();
      add(
          overBed ? Severity.NOTE : Severity.CAUTION,
          "The curves also meet where the flow is "
              + unstable.get().meeting().words()
              + (overBed ? ", over a bed." : "."),
          "That is at "
              + units.show(Kind.FLOW, unstable.get().flow())
              + "; below it the pump cannot clear the bed"
              + (overBed ? ", and no head loss model applies." : "."),
          overBed ? "" : "Take a pump with a steeper curve, or a positive-displacement pump.");
    }
  }

  private void blocked() {
    double pressure = Measure.PRESSURE.si(result.shutOffPressure());
    boolean piston = design.pump().orElseThrow() instanceof PistonSpec;
    design.route().orElseThrow().runs().stream()
        .filter(run -> run.ratingPa(materials.carrier().temperatureK()).isPresent())
        .filter(run -> run.ratingPa(materials.carrier().temperatureK()).getAsDouble() < pressure)
        .forEach(
            run ->
                findings.add(
                    new Finding(
                        piston ? Severity.FAIL : Severity.CAUTION,
                        Topic.PRESSURE,
                        run.name(),
                        "Against a blocked line the pump exceeds the pressure rating of this pipe.",
                        (piston
                                ? "The pressure limit of the pump is "
                                : "At zero flow the pump gives ")
                            + show(Kind.PRESSURE, pressure)
                            + "; the pipe is rated "
                            + show(
                                Kind.PRESSURE,
                                run.ratingPa(materials.carrier().temperatureK()).getAsDouble())
                            + ".",
                        "Set a relief below the rating, or fit a class rated "
                            + show(Kind.PRESSURE, pressure)
                            + " or more.")));
  }

  private void viscous() {
    if (result.believed().isEmpty()) {
      return;
    }
    Viscous believed = result.believed().get();
    ViscousCorrection correction = believed.correction();
    boolean thick = believed.viscosityPaS() > THICK_PAS;
    boolean outside = !correction.excesses().isEmpty();
    if (!correction.none()) {
      boolean spread =
          result.viscous().stream()
              .anyMatch(v -> v.viscosityPaS() < believed.viscosityPaS() * (1 - SAME));
      add(
          thick || outside ? Severity.CAUTION : Severity.NOTE,
          "The viscosity of the liquid derates the pump beside the sand, by an uncertain amount.",
          "A viscosity of "
              + show(Kind.VISCOSITY, believed.viscosityPaS())
              + (spread ? " (" + believed.which().words() + ")" : "")
              + " gives B = "
              + show(Kind.NUMBER, correction.b())
              + ", which leaves "
              + show(Kind.PERCENT, correction.flowRatio())
              + " of flow and head at the BEP and "
              + show(Kind.PERCENT, correction.efficiencyRatio())
              + " of the efficiency."
              + (spread ? others(believed) : "")
              + correction.excesses().stream()
                  .map(e -> " Outside the published range: " + e.describe(units) + ".")
                  .collect(Collectors.joining()),
          thick || outside
              ? "Ask the maker for a curve with this liquid, or dilute it to about "
                  + show(
                      Kind.VISCOSITY, believed.viscosityPaS() / (correction.b() * correction.b()))
                  + ", at which this pump works as in water."
              : "");
    }
    yieldStress();
  }

  private String others(Viscous believed) {
    return " No rule says which viscosity applies in a pump; the highest is used. Others: "
        + result.viscous().stream()
            .filter(v -> v != believed)
            .map(
                v ->
                    v.which().words()
                        + " "
                        + show(Kind.VISCOSITY, v.viscosityPaS())
                        + ", "
                        + show(Kind.PERCENT, v.correction().flowRatio())
                        + " and "
                        + show(Kind.PERCENT, v.correction().efficiencyRatio()))
            .collect(Collectors.joining("; "))
        + ".";
  }

  /** Below the preferred region a yield stress may take head that no correction tells. */
  private void yieldStress() {
    double flow = flow(FlowCase.DESIGN);
    double stress = line.runs(flow, materials.sandFraction(flow)).get(0).rheology().yieldStressPa();
    if (!(stress > 0) || !(design.pump().orElseThrow() instanceof RotodynamicSpec spec)) {
      return;
    }
    double best = bestFlow(spec);
    double edge = OperatingRegion.PREFERRED_LOW * best;
    boolean low = result.governing().map(duty -> Measure.FLOW.si(duty.flow()) < edge).orElse(true);
    add(
        low ? Severity.CAUTION : Severity.NOTE,
        "At low flow a yield stress may cost the pump much more head than computed here.",
        "Its yield stress is "
            + show(Kind.STRESS, stress)
            + ". Walker and Goulas (1984) measured a large drop of head at low flow with such"
            + " slurries, which makes the curve unstable; no rule gives its size. Head at zero flow"
            + " and the start against a full line are taken from the curve for water.",
        low
            ? "Keep the flow rate above "
                + show(Kind.FLOW, edge)
                + ", or ask the maker for a curve with this liquid."
            : "");
  }

  /** Best flow of the pumps in this liquid: the sum side by side, the least one after the other. */
  private double bestFlow(RotodynamicSpec spec) {
    double ratio = result.believed().map(v -> v.correction().flowRatio()).orElse(1.0);
    DoubleStream flows =
        spec.pumps().stream().mapToDouble(p -> ratio * p.clear().bestEfficiencyFlowM3ps());
    return spec.station().arrangement() == Arrangement.PARALLEL
        ? flows.sum()
        : flows.min().orElseThrow();
  }
}
