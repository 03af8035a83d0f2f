package sandslurry.assessment.states;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PumpInState;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.design.Design;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * Findings on the suction side: NPSH and the sand in its line.
 *
 * @param design the design
 * @param result states and pumps as the assessment shows them
 * @param findings takes what is found
 */
public record SuctionFindings(Design design, ServiceResult result, Findings findings)
    implements FindingWriter {
  /** Findings on NPSH margin and on sand in the suction line. */
  public void all() {
    List<PumpInState> all =
        result.pumps().stream().filter(f -> f.pump().suction().isPresent()).toList();
    if (!all.isEmpty()) {
      npsh(all);
      sand(all);
    }
  }

  private static SuctionPoint suction(PumpInState at) {
    return at.pump().suction().orElseThrow();
  }

  private void sand(List<PumpInState> all) {
    PumpInState sand =
        all.stream()
            .max(
                Comparator.comparing((PumpInState f) -> suction(f).severity())
                    .thenComparingDouble(
                        f -> suction(f).toPassMps().orElse(0) - suction(f).velocityMps()))
            .orElseThrow();
    if (sand.point().mixture().sandFraction() == 0) {
      return;
    }
    SuctionPoint point = suction(sand);
    double pass = point.toPassMps().orElse(point.velocityMps());
    double bore = design.service().suction().orElseThrow().run().largestBoreM();
    sand(point, pass)
        .with("state", sand.state().name())
        .with("velocity", Kind.VELOCITY, point.velocityMps())
        .with("required", Kind.VELOCITY, pass)
        .with("bore", Kind.BORE, bore * Math.sqrt(point.velocityMps() / pass))
        .why(why(point))
        .add();
  }

  private Found sand(SuctionPoint point, double passMps) {
    if (point.severity() == Severity.PASS) {
      return found("suction-moves", point.severity(), "suction");
    }
    if (point.velocityMps() < passMps) {
      return found("suction-settles", point.severity(), "suction").cure("narrow-suction");
    }
    if (point.toPassMps().isEmpty()) {
      return found("suction-settles", point.severity(), "suction").cure("dilute-suction");
    }
    return found("suction-unknown", point.severity(), "suction").cure("short-suction");
  }

  private static String why(SuctionPoint point) {
    if (point.toPassMps().isEmpty()) {
      return "suction-not-turbulent";
    }
    boolean slow = point.velocityMps() < point.toPassMps().getAsDouble();
    return slow ? "suction-slow" : "suction-fast";
  }

  private void npsh(List<PumpInState> all) {
    List<PumpInState> known = all.stream().filter(f -> suction(f).requiredM().isPresent()).toList();
    Optional<PumpInState> scant =
        known.stream()
            .min(
                Comparator.comparingDouble(
                    f ->
                        suction(f).availableM()
                            - suction(f).margin().neededM(suction(f).requiredM().getAsDouble())));
    all.stream()
        .filter(f -> suction(f).requiredM().isEmpty())
        .findFirst()
        .ifPresent(at -> notGiven(at, scant.isEmpty() ? Severity.NOTE : Severity.CAUTION));
    scant.ifPresent(this::margin);
  }

  private void notGiven(PumpInState at, Severity severity) {
    found("npsh-not-given", severity, at.pump().name())
        .with("state", at.state().name())
        .with("flow", Kind.FLOW, at.pump().flowM3ps())
        .with("available", Kind.HEAD, suction(at).availableM())
        .why("npsh-not-given")
        .cure("npsh-not-given")
        .add();
  }

  private void margin(PumpInState scant) {
    SuctionPoint point = suction(scant);
    String pump = scant.pump().name();
    double required = point.requiredM().getAsDouble();
    double needed = point.margin().neededM(required);
    Found found;
    if (point.availableM() < required) {
      found = found("cavitates", Severity.FAIL, pump).cure("raise-pit");
    } else if (point.availableM() < needed) {
      found = found("npsh-margin-short", Severity.CAUTION, pump).cure("raise-pit");
    } else {
      found = found("npsh-covers", Severity.PASS, pump);
    }
    found
        .with("state", scant.state().name())
        .with("available", Kind.HEAD, point.availableM())
        .with("required", Kind.HEAD, required)
        .with("needed", Kind.HEAD, needed)
        .with("static", Kind.HEAD, point.floodM())
        .with("friction", Kind.HEAD, point.lossM())
        .with("acceleration", Kind.HEAD, point.accelerationM())
        .with("missing", Kind.HEAD, needed - point.availableM())
        .why(point.accelerationM() > 0 ? "npsh-acceleration" : "npsh")
        .add();
  }
}
