package sandslurry.assessment.stop;

import java.util.List;
import sandslurry.assessment.stop.SurgeResult.LowWave;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.units.Kind;

/**
 * Findings on water hammer when the flow stops.
 *
 * @param surges the surge in each run
 * @param findings takes what is found
 */
public record SurgeFindings(List<SurgeResult> surges, Findings findings) implements FindingWriter {
  /** Findings on the rise of pressure and on column separation. */
  public void all() {
    for (SurgeResult surge : surges) {
      rise(surge);
      if (surge.lowest().parts()) {
        lowWave(surge);
      }
    }
  }

  private Found found(String key, Severity severity, SurgeResult surge) {
    return found(key, severity, surge.run());
  }

  private void rise(SurgeResult surge) {
    double most = surge.workingPa() + surge.judgedPa();
    boolean rated = surge.ratingPa().isPresent();
    boolean over = most > surge.ratingPa().orElse(Double.POSITIVE_INFINITY);
    Found found =
        (!rated
                ? found("surge-unrated", Severity.NOTE, surge)
                : over
                    ? found("surge-over", Severity.CAUTION, surge)
                    : found("surge-within", Severity.PASS, surge))
            .with("velocity", Kind.VELOCITY, surge.velocityMps())
            .with("surge", Kind.PRESSURE, surge.surgePa())
            .with("wave", Kind.VELOCITY, surge.waveMps())
            .with("working", Kind.PRESSURE, surge.workingPa())
            .with("most", Kind.PRESSURE, most)
            .why("surge");
    surge
        .slow()
        .ifPresent(
            slow ->
                found
                    .with("stop", Kind.TIME, slow.timeS())
                    .with("slow", Kind.PRESSURE, slow.surgePa())
                    .with("return", Kind.TIME, slow.returnS())
                    .why(slow.timeS() > slow.returnS() ? "surge-slow" : "surge-quick"));
    found
        .why("surge-working")
        .when(
            rated,
            f ->
                f.with("rating", Kind.PRESSURE, surge.ratingPa().getAsDouble())
                    .why("surge-rating"));
    if (over && surge.stopS().isPresent()) {
      found.with("stopTime", Kind.TIME, surge.stopS().getAsDouble()).cure("surge-slower");
    } else if (over) {
      found.cure("surge-rated");
    }
    found.add();
  }

  /**
   * Every sudden stop of a pump has a low half of its wave, so it is a caution only where it was
   * asked for by a time, or where columns part in a high point of the line and come together there.
   */
  private void lowWave(SurgeResult surge) {
    LowWave low = surge.lowest();
    found(
            low.highPoint() ? "column-high" : "column",
            surge.slow().isPresent() || low.highPoint() ? Severity.CAUTION : Severity.NOTE,
            surge)
        .with("height", Kind.LENGTH, low.elevationM())
        .with("steady", Kind.PRESSURE, low.steadyPa())
        .with("fall", Kind.PRESSURE, low.steadyPa() - low.lowestPa())
        .with("vapour", Kind.PRESSURE, low.vapourPa())
        .why(low.elevationM() == 0 ? "column-start" : "column")
        .why("column-rejoins")
        .cure("column")
        .add();
  }
}
