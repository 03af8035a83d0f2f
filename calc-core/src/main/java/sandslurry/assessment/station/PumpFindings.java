package sandslurry.assessment.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpResult.Viscous;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.DutyPoints.Meeting;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.PumpGroup.Arrangement;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Findings on the pump on its line.
 *
 * @param line the physics of its line
 * @param result duty points, curves and corrections
 * @param findings takes what is found
 */
public record PumpFindings(LineModel line, PumpResult result, Findings findings)
    implements FindingWriter {
  /** The id of the finding on a duty point that is not the design flow rate. */
  public static final String DIFFERS = "station.duty-differs";

  /** The id of that finding where sand settles at the duty point. */
  public static final String SETTLES = "station.duty-settles";

  private static final String ELEMENT = "pump";

  /** Viscosities closer than this are the same. */
  private static final double SAME = 1e-6;

  /** Viscosity above which a pump curve for water is no guide (common practice, no source). */
  private static final double THICK_PAS = 0.02;

  /** Findings on duty point, blocked line and viscosity, the duty point first. */
  public void all() {
    if (result.governing().isPresent()) {
      duty(result.governing().get());
    } else {
      noDuty();
    }
    several();
    blocked();
    viscous();
  }

  private Found found(String key, Severity severity) {
    return found(key, severity, ELEMENT);
  }

  private double designFlow() {
    return line.design().oneLine().flow().designM3ps();
  }

  private Found needing(Found found) {
    double flow = designFlow();
    double fraction = line.materials().sandFraction(flow);
    double head = line.systemHeadM(flow, fraction);
    return found
        .with("design", Kind.FLOW, flow)
        .with("needHead", Kind.HEAD, head)
        .with(
            "needPressure",
            Kind.PRESSURE,
            head * line.materials().mixtureDensityKgM3(fraction) * Physics.GRAVITY);
  }

  /** The line runs where pump and line meet; the flow rates typed are wishes. */
  private void duty(PumpResult.Duty duty) {
    double flow = duty.flowM3ps();
    double apart = Math.abs(flow / designFlow() - 1);
    boolean flows = line.materials().flows(flow);
    RunPoint worst =
        RunPoint.worst(
            line.runs(flow, flows ? line.materials().sandFraction(flow) : Materials.THICKEST));
    boolean differs = apart > LineResult.SAME_FLOW;
    boolean settles = differs && (!flows || worst.severity() == Severity.FAIL);
    Found found =
        settles
            ? found("duty-settles", Severity.FAIL)
            : differs ? found("duty-differs", Severity.CAUTION) : found("duty", Severity.PASS);
    needing(found)
        .with("duty", Kind.FLOW, flow)
        .with("head", Kind.HEAD, duty.headM())
        .with("difference", Kind.PERCENT, apart)
        .why("duty");
    found
        .when(
            settles && worst.limitMps().isPresent(),
            f ->
                f.with("run", worst.pipe().spec().name())
                    .with("velocity", Kind.VELOCITY, worst.leastVelocityMps())
                    .with("limit", Kind.VELOCITY, worst.limitMps().getAsDouble())
                    .why("settles"))
        .cure(differs, settles ? "more-pump" : flow < designFlow() ? "take-duty" : "less-pump")
        .add();
  }

  private void noDuty() {
    Found found =
        needing(found("no-duty", Severity.FAIL))
            .with(
                "absence",
                result.absence().orElse("the curves meet only where the flow is not stable"))
            .why("need");
    double flow = designFlow();
    line.design()
        .pump()
        .orElseThrow()
        .match(
            pumps ->
                found.cure(
                    line.systemHeadM(flow, line.materials().sandFraction(flow)) < 0
                        ? "gravity"
                        : "more-head"),
            piston ->
                found
                    .with("pressureLimit", Kind.PRESSURE, piston.pressureLimitPa())
                    .cure("more-pressure"))
        .add();
  }

  private void several() {
    List<PumpResult.Duty> stable =
        result.duties().stream().filter(d -> d.meeting() == Meeting.STABLE).toList();
    Optional<PumpResult.Duty> unstable =
        result.duties().stream().filter(d -> d.meeting() != Meeting.STABLE).findFirst();
    if (stable.size() > 1) {
      found("several-duties", Severity.CAUTION)
          .with("lower", Kind.FLOW, stable.get(0).flowM3ps())
          .with("upper", Kind.FLOW, stable.get(stable.size() - 1).flowM3ps())
          .why("several-duties")
          .cure("steeper")
          .add();
    }
    if (unstable.isPresent()) {
      boolean overBed = unstable.get().overBed();
      (overBed ? found("unstable-over-bed", Severity.NOTE) : found("unstable", Severity.CAUTION))
          .with("meeting", unstable.get().meeting().words())
          .with("unstable", Kind.FLOW, unstable.get().flowM3ps())
          .why("unstable")
          .cure(!overBed, "steeper-or-piston")
          .add();
    }
  }

  private void blocked() {
    double pressure = result.shutOffPa();
    boolean piston = line.design().pump().orElseThrow().piston().isPresent();
    for (RunSpec run : line.design().oneLine().route().runs()) {
      OptionalDouble rating = run.ratingPa(line.materials().warmestK());
      if (rating.isPresent() && rating.getAsDouble() < pressure) {
        found("blocked-line", piston ? Severity.FAIL : Severity.CAUTION, run.name())
            .with("blocked", Kind.PRESSURE, pressure)
            .with("rating", Kind.PRESSURE, rating.getAsDouble())
            .why(piston ? "blocked-piston" : "blocked")
            .cure("relief")
            .add();
      }
    }
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
      found("viscous", thick || outside ? Severity.CAUTION : Severity.NOTE)
          .with("viscosity", Kind.VISCOSITY, believed.viscosityPaS())
          .with("which", believed.which().words())
          .with("b", Kind.NUMBER, correction.b())
          .with("flowRatio", Kind.PERCENT, correction.flowRatio())
          .with("efficiencyRatio", Kind.PERCENT, correction.efficiencyRatio())
          .with("thin", Kind.VISCOSITY, believed.viscosityPaS() / (correction.b() * correction.b()))
          .why(spread ? "viscous-which" : "viscous")
          .when(
              spread, f -> f.with("others", units -> others(believed, units)).why("viscous-others"))
          .when(
              outside,
              f ->
                  f.with(
                          "excesses",
                          units ->
                              correction.excesses().stream()
                                  .map(e -> e.describe(units))
                                  .collect(Collectors.joining(", ")))
                      .why("viscous-outside"))
          .cure(thick || outside, "viscous-curve")
          .add();
    }
    yieldStress();
  }

  private String others(Viscous believed, UnitSystem units) {
    return result.viscous().stream()
        .filter(v -> v != believed)
        .map(
            v ->
                v.which().words()
                    + " "
                    + units.show(Kind.VISCOSITY, v.viscosityPaS())
                    + ", "
                    + units.show(Kind.PERCENT, v.correction().flowRatio())
                    + " and "
                    + units.show(Kind.PERCENT, v.correction().efficiencyRatio()))
        .collect(Collectors.joining("; "));
  }

  /** Below the preferred region a yield stress may take head that no correction gives. */
  private void yieldStress() {
    double flow = designFlow();
    double stress =
        line.runs(flow, line.materials().sandFraction(flow))
            .get(0)
            .mixture()
            .rheology()
            .yieldStressPa();
    Optional<RotodynamicSpec> spec = line.design().pump().flatMap(PumpSpec::rotodynamic);
    if (!(stress > 0) || spec.isEmpty()) {
      return;
    }
    double edge = OperatingRegion.PREFERRED_LOW * bestFlow(spec.get());
    boolean low = result.governing().map(duty -> duty.flowM3ps() < edge).orElse(true);
    found("yield-stress", low ? Severity.CAUTION : Severity.NOTE)
        .with("yield", Kind.STRESS, stress)
        .with("edge", Kind.FLOW, edge)
        .why("yield-stress")
        .cure(low, "keep-above")
        .add();
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
