package sandslurry.assessment.plant.profile;

import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.profile.Fall;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.profile.Lift;
import sandslurry.units.Kind;

/**
 * Findings on the hydraulic profile of a plant.
 *
 * @param profile the profile
 * @param findings takes what is found
 */
public record ProfileFindings(HydraulicProfile profile, Findings findings)
    implements FindingWriter {
  /** Static heads that differ by no more than this are the same (a choice of this program) [m]. */
  static final double SAME_HEAD_M = 0.1;

  /**
   * Findings on each stream that runs by gravity, on the platforms and on the heads of the pumps.
   */
  public void all() {
    if (profile.circular()) {
      found("circle", Severity.FAIL, "hydraulic profile").cure("pump-circle").add();
    }
    profile.falls().forEach(this::fall);
    profile.risesM().forEach(this::follows);
    profile.lifts().forEach(this::head);
  }

  private Found stream(String key, Severity severity, String stream, String from, String to) {
    return found(key, severity, "stream \"" + stream + "\"").with("from", from).with("to", to);
  }

  private void fall(Fall fall) {
    boolean known = fall.need().isPresent();
    Found found =
        stream(
                fall.backsUp()
                    ? "backs-up"
                    : !fall.enough() ? "fall-short" : known ? "fall" : "fall-open",
                fall.enough() ? known ? Severity.PASS : Severity.NOTE : Severity.FAIL,
                fall.stream(),
                fall.from(),
                fall.to())
            .with("upstream", Kind.LENGTH, fall.upstreamM())
            .with("downstream", Kind.LENGTH, fall.downstreamM())
            .with("available", Kind.LENGTH, fall.availableM());
    if (known || !fall.enough()) {
      found.why("levels");
    }
    fall.need()
        .ifPresent(
            need ->
                found
                    .with("needed", Kind.LENGTH, need.totalM())
                    .with("along", Kind.LENGTH, need.alongM())
                    .with("ends", Kind.LENGTH, need.endsM())
                    .with("freeboard", Kind.LENGTH, need.freeboardM())
                    .with("spare", Kind.LENGTH, Math.abs(fall.availableM() - need.totalM()))
                    .why(fall.enough() ? "spare" : "short"));
    if (!fall.enough()) {
      rise(found, fall.from());
    }
    found.add();
  }

  /** How much higher a unit must stand, and on what platform. */
  private void rise(Found found, String unit) {
    Double rise = profile.risesM().get(unit);
    if (rise == null) {
      found.cure("pump-it");
      return;
    }
    found
        .with("unit", unit)
        .with("rise", Kind.LENGTH, rise)
        .with("platform", Kind.LENGTH, profile.platformM(unit))
        .cure("higher");
  }

  /** A unit whose own falls are enough, but not once what it feeds has risen. */
  private void follows(String unit, double riseM) {
    if (profile.falls().stream().allMatch(f -> !f.from().equals(unit) || f.enough())) {
      Found found = found("rises", Severity.CAUTION, unit);
      rise(found, unit);
      found.add();
    }
  }

  private void head(Lift lift) {
    if (lift.ofLineM().isEmpty()) {
      return;
    }
    double line = lift.ofLineM().getAsDouble();
    double more = lift.mostM() - line;
    if (Math.abs(more) > SAME_HEAD_M) {
      stream(
              more > 0 ? "head-low" : "head-high",
              more > 0 ? Severity.CAUTION : Severity.NOTE,
              lift.stream(),
              lift.from(),
              lift.to())
          .with("line", Kind.LENGTH, line)
          .with("levels", Kind.LENGTH, lift.mostM())
          .with("difference", Kind.LENGTH, Math.abs(more))
          .why("head")
          .cure("one-head")
          .add();
    }
  }
}
