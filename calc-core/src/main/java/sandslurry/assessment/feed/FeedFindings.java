package sandslurry.assessment.feed;

import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.design.Design;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Findings on what feeds the pit: screw conveyor and gravity pipe.
 *
 * @param design the design
 * @param result screw conveyor and gravity pipe as the assessment shows them
 * @param findings takes what is found
 */
public record FeedFindings(Design design, ServiceResult result, Findings findings)
    implements FindingWriter {
  /** Loads that differ by no more than this are the same (a choice of this program). */
  private static final double SAME_LOAD = 0.1;

  /** Findings on the screw conveyor and the gravity pipe. */
  public void all() {
    result.screw().ifPresent(this::screw);
    result
        .gravityRun()
        .ifPresent(run -> new GravityFindings(GravityFindings.PIPE, findings).of(run));
  }

  private Found found(String key, Severity severity, Screw screw) {
    return found(key, severity, "screw").with("load", Kind.FLOW, screw.loadM3ps());
  }

  private void screw(Screw screw) {
    double loading = screw.loading().value();
    boolean outside = !screw.loading().excesses().isEmpty();
    boolean much = loading > ScrewConveyor.ABRASIVE_LOADING;
    Found found =
        (loading > ScrewConveyor.GREATEST_LOADING
                ? found("screw-overloaded", Severity.FAIL, screw)
                : much
                    ? found("screw-full", Severity.CAUTION, screw)
                    : outside
                        ? found("screw-outside", Severity.CAUTION, screw)
                        : found("screw", Severity.PASS, screw))
            .with("loading", Kind.PERCENT, loading)
            .with("usual", Kind.PERCENT, ScrewConveyor.ABRASIVE_LOADING)
            .with("capacity", Kind.FLOW, screw.capacityM3ps())
            .why("screw")
            .why(!screw.typed(), "screw-pens")
            .when(outside, f -> f.with("excesses", units -> excesses(screw, units)).why("outside"));
    if (much) {
      double speed = design.feed().screw().orElseThrow().speedPs();
      found
          .with("speed", Kind.FREQUENCY, speed * loading / ScrewConveyor.ABRASIVE_LOADING)
          .cure("faster");
    }
    found.add();
    screw.pens().ifPresent(pens -> pens(screw, pens));
  }

  private static String excesses(Screw screw, UnitSystem units) {
    return screw.loading().excesses().stream()
        .map(e -> e.describe(units))
        .collect(Collectors.joining(", "));
  }

  /** The load that was typed beside that of the pens. */
  private void pens(Screw screw, PenFeed pens) {
    double ratio = screw.loadM3ps() / pens.loadM3ps();
    boolean less = screw.typed() && ratio < 1 - SAME_LOAD;
    (!screw.typed()
            ? found("screw-load-pens", Severity.NOTE, screw)
            : less
                ? found("screw-load-less", Severity.CAUTION, screw)
                : ratio <= 1 + SAME_LOAD
                    ? found("screw-load-same", Severity.NOTE, screw)
                    : found("screw-load-more", Severity.NOTE, screw))
        .with("batch", Kind.VOLUME, pens.batchM3())
        .with("scrape", Kind.TIME, pens.scrapeS())
        .with("pens", Kind.FLOW, pens.loadM3ps())
        .with("density", Kind.DENSITY, screw.densityKgM3())
        .why("pens")
        .why(screw.typed() ? "typed" : "pens-density")
        .when(
            less,
            f ->
                f.with("longer", Kind.TIME, pens.batchM3() / screw.loadM3ps()).cure("load-of-pens"))
        .add();
  }
}
