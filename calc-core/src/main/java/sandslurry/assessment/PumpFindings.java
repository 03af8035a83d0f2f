package sandslurry.assessment;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.PumpResult.Viscous;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.PumpGroup.Arrangement;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the pump on its line. */
final class PumpFindings extends FindingWriter {
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

  PumpFindings(Design design, Materials materials, LineModel line, PumpResult result) {
    super(design.units());
    this.design = design;
    this.materials = materials;
    this.line = line;
    this.result = result;
  }

  List<Finding> all() {
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
        + " of mixture ("
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
        "Pump and line meet at "
            + show(Kind.FLOW, flow)
            + " and "
            + units.show(Kind.HEAD, duty.head())
            + " of mixture; the line is to run at "
            + show(Kind.FLOW, least)
            + " to "
            + show(Kind.FLOW, most)
            + ", designed for "
            + show(Kind.FLOW, wanted)
            + ".";
    if (flow < least * (1 - FLOW_ACCURACY)) {
      add(
          Severity.FAIL,
          "The pump drives less than the minimum flow through this line.",
          why,
          "Choose a pump that gives " + need(wanted) + ", or a higher speed.");
    } else if (flow < wanted * (1 - FLOW_ACCURACY)) {
      add(
          Severity.CAUTION,
          "The pump drives less than the design flow through this line.",
          why,
          "Choose a pump that gives " + need(wanted) + ", or a higher speed.");
    } else if (flow > most * (1 + FLOW_ACCURACY)) {
      add(
          Severity.CAUTION,
          "The pump drives more than the maximum flow through this line.",
          why,
          "Slow the pump down or set the maximum flow to what it drives, and check wear, power and"
              + " the pit level.");
    } else {
      add(Severity.PASS, "The pump drives a flow within the range of the line.", why, "");
    }
  }

  private void noDuty() {
    add(
        Severity.FAIL,
        "Pump and line do not meet: "
            + result.absence().orElse("they meet only where the flow is not stable")
            + ".",
        "The line asks for " + need(flow(FlowCase.DESIGN)) + ".",
        design.pump().orElseThrow() instanceof PistonSpec piston
            ? "Choose a pump with a pressure limit above that, now "
                + units.show(Kind.PRESSURE, piston.pressureLimit())
                + ", or a larger pipe if its velocity stays above the deposition limit."
            : head(flow(FlowCase.DESIGN)) < 0
                ? "Gravity drives more than that flow by itself: leave the pump out, or hold the"
                      + " line back with a valve at its end."
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
          "There is more than one stable duty point: which one is reached depends on how the line"
              + " is started.",
          "They lie at "
              + units.show(Kind.FLOW, stable.get(0).flow())
              + " and "
              + units.show(Kind.FLOW, stable.get(stable.size() - 1).flow())
              + "; the line is judged at the greater.",
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
              + "; below it the pump cannot clear the bed: the head of the solids rises as the flow"
              + " falls"
              + (overBed ? ", and the models are no guide to the head." : "."),
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
                        "A blocked line can be raised above the rating of this pipe.",
                        (piston
                                ? "The pressure limit of the pump is "
                                : "Against a closed line the pump reaches ")
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
          "The liquid takes head and efficiency from the pump beside the sand: its curve for water"
              + " is corrected, and the correction is uncertain.",
          "A viscosity of "
              + show(Kind.VISCOSITY, believed.viscosityPaS())
              + (spread ? " (" + believed.which().words() + ")" : "")
              + " makes B = "
              + show(Kind.NUMBER, correction.b())
              + " and leaves "
              + show(Kind.PERCENT, correction.flowRatio())
              + " of flow and head at the best point and "
              + show(Kind.PERCENT, correction.efficiencyRatio())
              + " of the efficiency."
              + (spread ? others(believed) : "")
              + correction.excesses().stream()
                  .map(e -> " Out of the published range: " + e.describe(units) + ".")
                  .collect(Collectors.joining()),
          thick || outside
              ? "Ask the maker for a curve with this liquid, or thin it to some "
                  + show(
                      Kind.VISCOSITY, believed.viscosityPaS() / (correction.b() * correction.b()))
                  + ", at which this pump works as in water."
              : "");
    }
    yieldStress();
  }

  private String others(Viscous believed) {
    return " No rule says which viscosity counts in a pump; the thickest is believed. Else: "
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
        "A liquor with a yield stress may take much more head from the pump at low flow than is"
            + " reckoned here.",
        "Its yield stress is "
            + show(Kind.STRESS, stress)
            + ". Walker and Goulas (1984) measured a large drop of head at low flow with such"
            + " slurries, which makes the curve unstable; no rule tells how large."
            + " The head at no flow, and the start against a full line, are those of the curve for"
            + " water.",
        low
            ? "Keep the flow above "
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
