package sandslurry.assessment.states;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.units.Kind;

/**
 * What the states ask of motors, and how far from their best flow the pumps work.
 *
 * @param design the design
 * @param result states and pumps as the assessment shows them
 * @param findings takes what is found
 */
public record PumpLoadFindings(Design design, ServiceResult result, Findings findings)
    implements FindingWriter {
  /** Findings on motor power and on the operating region of each pump. */
  public void all() {
    motor();
    if (result.states().stream().anyMatch(StateResult::named) || stationGiven()) {
      region();
    }
  }

  private boolean stationGiven() {
    return design
        .pump()
        .flatMap(PumpSpec::rotodynamic)
        .map(
            spec ->
                spec.station().minimumFlowM3ps().isPresent() || !spec.station().others().isEmpty())
        .orElse(false);
  }

  private void motor() {
    Optional<PumpInState> most =
        result.pumps().stream()
            .filter(f -> f.pump().motor().isPresent())
            .max(
                Comparator.comparingDouble(
                    f -> f.pump().shaftW() / f.pump().motor().orElseThrow().ratingW()));
    if (most.isEmpty()) {
      return;
    }
    PumpPoint pump = most.get().pump();
    MotorSpec motor = pump.motor().orElseThrow();
    Severity severity = motor.under(pump.shaftW());
    String covers = severity == Severity.PASS ? "motor-covers" : "motor-service-factor";
    found(severity == Severity.FAIL ? "motor-overloaded" : covers, severity, "motor")
        .cure(severity != Severity.PASS, "motor")
        .with("pump", pump.name())
        .with("state", most.get().state().name())
        .with("shaft", Kind.POWER, pump.shaftW())
        .with("rating", Kind.POWER, motor.ratingW())
        .with("factor", Kind.NUMBER, motor.serviceFactor())
        .why("motor")
        .add();
  }

  /** A pump in a state, and its flow rate over that of its best efficiency point. */
  private record Loaded(PumpInState at, OperatingRegion region, double ofBest) {
    static Loaded of(PumpInState at) {
      OperatingRegion region = at.pump().region().orElseThrow();
      return new Loaded(at, region, at.pump().flowM3ps() / region.bestFlowM3ps());
    }

    double flowM3ps() {
      return at.pump().flowM3ps();
    }

    OperatingRegion.Place place() {
      return region.place(flowM3ps());
    }
  }

  private void region() {
    List<Loaded> pumps =
        result.pumps().stream()
            .filter(f -> f.pump().region().isPresent() && f.pump().flowM3ps() > 0)
            .map(Loaded::of)
            .toList();
    if (pumps.isEmpty()) {
      return;
    }
    Loaded least = pumps.stream().min(Comparator.comparingDouble(Loaded::ofBest)).orElseThrow();
    Loaded most = pumps.stream().max(Comparator.comparingDouble(Loaded::ofBest)).orElseThrow();
    boolean preferred = pumps.stream().allMatch(p -> p.place() == OperatingRegion.Place.PREFERRED);
    region(least, most, preferred)
        .with("low", Kind.PERCENT, least.ofBest())
        .with("lowPump", least.at().pump().name())
        .with("lowState", least.at().state().name())
        .with("high", Kind.PERCENT, most.ofBest())
        .with("highPump", most.at().pump().name())
        .with("highState", most.at().state().name())
        .with("preferredLow", Kind.PERCENT, least.region().preferredLow())
        .with("preferredHigh", Kind.PERCENT, least.region().preferredHigh())
        .with("minimum", Kind.FLOW, least.region().minimumFlowM3ps())
        .why("region")
        .add();
  }

  private Found region(Loaded least, Loaded most, boolean preferred) {
    if (!least.place().allowable()) {
      return found("below-minimum-flow", Severity.CAUTION, least.at().pump().name())
          .with("best", Kind.FLOW, least.flowM3ps() / least.region().preferredLow())
          .cure("smaller-pump");
    }
    if (!most.place().allowable()) {
      return found("outside-region", Severity.CAUTION, most.at().pump().name())
          .with("best", Kind.FLOW, most.flowM3ps() / most.region().preferredHigh())
          .cure("larger-pump");
    }
    return preferred
        ? found("preferred-region", Severity.PASS, "pump")
        : found("allowable-region", Severity.NOTE, "pump");
  }
}
