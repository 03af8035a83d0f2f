package sandslurry.assessment;

import java.util.Comparator;
import sandslurry.assessment.states.StateCure;
import sandslurry.assessment.states.StateVariants;
import sandslurry.assessment.station.StateResult;
import sandslurry.design.Design;
import sandslurry.design.station.PumpSpec;
import sandslurry.design.station.PumpSpec.OtherPumpSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/** Findings on the line with a pump out and the spare in its place. */
record StandbyFindings(Design design, ServiceEvaluation evaluation, Findings findings)
    implements FindingWriter {
  void all() {
    design.pump().flatMap(PumpSpec::rotodynamic).ifPresent(this::spares);
  }

  private void spares(RotodynamicSpec spec) {
    for (OtherPumpSpec spare : spec.spares()) {
      String name = StateVariants.spareName(spare);
      evaluation.result().states().stream()
          .filter(s -> s.name().startsWith(name))
          .max(Comparator.comparing(StateResult::severity))
          .ifPresent(worst -> spare(spare, worst));
    }
    if (spec.spares().isEmpty() && design.service().states().isPresent()) {
      if (spec.names().size() > 1) {
        found("no-spare-others", Severity.NOTE, "pump").add();
      } else {
        found("no-spare", Severity.NOTE, "pump").add();
      }
    }
  }

  private void spare(OtherPumpSpec spare, StateResult worst) {
    boolean good = worst.severity().compareTo(Severity.PASS) <= 0;
    Found found =
        (good
                ? found("spare-carries", worst.severity(), spare.name())
                : found("spare-short", worst.severity(), spare.name()))
            .with("state", worst.name())
            .with("reasons", units -> String.join("; ", worst.reasons()));
    worst.point().ifPresent(point -> found.with("flow", Kind.FLOW, point.flowM3ps()));
    if (worst.reasons().isEmpty()) {
      found.why(worst.point().isPresent() ? "spare" : "spare-no-flow");
    } else {
      found.why(worst.point().isPresent() ? "spare-reasons" : "spare-no-flow-reasons");
    }
    if (!good) {
      evaluation.states().orElseThrow().all().stream()
          .filter(e -> e.result() == worst)
          .map(e -> StateCure.of(design, e))
          .findFirst()
          .filter(cure -> !cure.isEmpty())
          .ifPresent(cure -> found.with("cure", cure).cure("spare"));
    }
    found.add();
  }
}
