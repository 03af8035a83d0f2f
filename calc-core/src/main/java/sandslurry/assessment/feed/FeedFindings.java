package sandslurry.assessment.feed;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.PenFeed;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Findings on what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedFindings extends FindingWriter {
  /** Loads that differ by no more than this are the same (a choice of this program). */
  private static final double SAME_LOAD = 0.1;

  private final Design design;
  private final ServiceResult result;

  /**
   * The feed of the pit that is judged.
   *
   * @param design the design
   * @param result screw conveyor and gravity pipe as the assessment shows them
   */
  public FeedFindings(Design design, ServiceResult result) {
    super(design.units());
    this.design = design;
    this.result = result;
  }

  /**
   * Findings on the screw conveyor and the gravity pipe.
   *
   * @return the findings; empty when the design has neither
   */
  public List<Finding> all() {
    result.screw().ifPresent(this::screw);
    result
        .gravityRun()
        .ifPresent(
            run -> findings.addAll(new GravityFindings(units, GravityFindings.PIPE).of(run)));
    return findings;
  }

  private Found found(String key, Severity severity, Screw screw) {
    return found(key, severity, "screw").with("load", Kind.FLOW, screw.loadM3ps());
  }

  private void screw(Screw screw) {
    double loading = screw.loading().value();
    boolean outside = !screw.loading().excesses().isEmpty();
    boolean much = loading > ScrewConveyor.ABRASIVE_LOADING;
    Found found =
        loading > ScrewConveyor.GREATEST_LOADING
            ? found("screw-overloaded", Severity.FAIL, screw)
            : much
                ? found("screw-full", Severity.CAUTION, screw)
                : outside
                    ? found("screw-outside", Severity.CAUTION, screw)
                    : found("screw", Severity.PASS, screw);
    found
        .with("loading", Kind.PERCENT, loading)
        .with("usual", Kind.PERCENT, ScrewConveyor.ABRASIVE_LOADING)
        .with("capacity", Kind.FLOW, screw.capacityM3ps())
        .why("screw");
    if (!screw.typed()) {
      found.why("screw-pens");
    }
    if (outside) {
      found.with("excesses", units -> excesses(screw, units)).why("outside");
    }
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
    Found found =
        !screw.typed()
            ? found("screw-load-pens", Severity.NOTE, screw)
            : less
                ? found("screw-load-less", Severity.CAUTION, screw)
                : ratio <= 1 + SAME_LOAD
                    ? found("screw-load-same", Severity.NOTE, screw)
                    : found("screw-load-more", Severity.NOTE, screw);
    found
        .with("batch", Kind.VOLUME, pens.batchM3())
        .with("scrape", Kind.TIME, pens.scrapeS())
        .with("pens", Kind.FLOW, pens.loadM3ps())
        .with("density", Kind.DENSITY, screw.densityKgM3())
        .why("pens")
        .why(screw.typed() ? "typed" : "pens-density");
    if (less) {
      found.with("longer", Kind.TIME, pens.batchM3() / screw.loadM3ps()).cure("load-of-pens");
    }
    found.add();
  }
}
