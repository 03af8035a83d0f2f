package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static sandslurry.golden.Shipped.assess;

import java.util.List;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.OperatingWindow.Cause;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.line.WindowWords;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.RandomDesigns;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;

/** Inside its operating window a line passes, outside it does not: both are judged by one rule. */
class OperatingWindowProperties {
  private static final double HAIR = 1e-5;

  private static DesignDocument odd(long seed) {
    return Documents.parse(RandomDesigns.oddLine(seed, false));
  }

  private static DesignDocument atFlow(DesignDocument document, double flowM3ps) {
    String flow = flowM3ps + " m3/s";
    return document
        .with("/lines/0/flow/minimum", flow)
        .with("/lines/0/flow/design", flow)
        .with("/lines/0/flow/maximum", flow);
  }

  /** What a window is about: grains too large for the bore, or a missing input, are not. */
  private static Severity atFlowRate(Assessment assessment) {
    Severity worst = Severity.PASS;
    List<String> runs =
        assessment.design().oneLine().route().runs().stream().map(r -> r.name()).toList();
    for (Finding finding : assessment.findings()) {
      boolean settles =
          finding.topic() == Topic.PLUGGING
              && runs.contains(finding.element())
              && !finding.id().startsWith("line.grains-");
      boolean presses =
          finding.id().startsWith("line.pressure-") || finding.id().equals("line.column-breaks");
      if (settles || presses || finding.topic() == Topic.WEAR) {
        worst = worst.or(finding.severity());
      }
    }
    return worst;
  }

  private static OperatingWindow window(DesignDocument document) {
    return assess(document).line().orElseThrow().window();
  }

  /** Flow rates that the reader takes, at which the sand is a slurry. */
  private static void assumeTyped(double flowM3ps) {
    Assume.that(flowM3ps > 6e-5 && flowM3ps < 1.9);
  }

  @Property(tries = 120, maxDiscardRatio = 50)
  void aLinePassesInsideItsWindowAndNotOutside(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
    DesignDocument document =
        odd(seed).without("/lines/0/pump").without("/lines/0/suction").without("/lines/0/states");
    OperatingWindow window = window(document);
    Assume.that(!window.intervals().isEmpty());
    for (Interval interval : window.intervals()) {
      double low = Math.max(interval.low().flowM3ps(), 1e-4);
      double high = Math.min(interval.highM3ps(), 20 * low);
      double inside = low * Math.pow(high / low, share);
      assumeTyped(inside);
      assertThat(atFlowRate(assess(atFlow(document, inside))))
          .as("inside, at %s m3/s of %s", inside, interval)
          .isEqualTo(Severity.PASS);
      if (interval.low().flowM3ps() > 1e-4) {
        double below = interval.low().flowM3ps() * (1 - HAIR);
        assertThat(atFlowRate(assess(atFlow(document, below))))
            .as("below, at %s m3/s of %s", below, interval)
            .isGreaterThan(Severity.PASS);
      }
      if (interval.high().isPresent() && interval.high().get().cause() != Cause.WEAR) {
        double above = interval.highM3ps() * (1 + HAIR);
        assumeTyped(above);
        assertThat(atFlowRate(assess(atFlow(document, above))))
            .as("above, at %s m3/s of %s", above, interval)
            .isGreaterThan(Severity.PASS);
      }
    }
  }

  @Property(tries = 40, maxDiscardRatio = 50)
  void sandFasterThanAnyLineIsBuiltForIsACaution(@ForAll long seed) {
    DesignDocument document =
        odd(seed).without("/lines/0/pump").without("/lines/0/suction").without("/lines/0/states");
    LineState state = assess(document).line().orElseThrow().states().get(0);
    double fastest = state.runs().stream().mapToDouble(RunState::velocityMps).max().orElseThrow();
    double flow = 6.1 * state.flowM3ps() / fastest;
    assumeTyped(flow);
    assertThat(assess(atFlow(document, flow)).findings())
        .filteredOn(finding -> finding.id().equals("line.wear-over"))
        .extracting(Finding::severity)
        .contains(Severity.CAUTION);
  }

  @Property(tries = 80, maxDiscardRatio = 50)
  void aLineWithoutAWindowPassesNowhereAndSaysSoFirst(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 1) double share) {
    // At so low a limit for wear few lines have a window.
    DesignDocument document =
        odd(seed)
            .without("/lines/0/pump")
            .without("/lines/0/suction")
            .without("/lines/0/states")
            .with("/criteria/wearVelocity", "0.8 m/s");
    Assessment assessment = assess(document);
    Assume.that(assessment.line().orElseThrow().window().intervals().isEmpty());
    Finding first = assessment.findings().get(0);
    assertThat(first.severity()).isGreaterThanOrEqualTo(Severity.CAUTION);
    assertThat(
            assessment.findings().stream()
                .filter(f -> f.severity() == first.severity())
                .map(Finding::element))
        .contains("operating window");
    double flow = 1e-4 * Math.pow(3000, share);
    assumeTyped(flow);
    assertThat(atFlowRate(assess(atFlow(document, flow))))
        .as("at %s m3/s", flow)
        .isGreaterThan(Severity.PASS);
  }

  @Property(tries = 60, maxDiscardRatio = 50)
  void intervalsAscendAndEachEndHasACause(@ForAll long seed) {
    Design design = Documents.parse(RandomDesigns.extreme(seed)).read().design().orElse(null);
    Assume.that(design != null && design.line().isPresent());
    OperatingWindow window = Evaluation.assess(design).line().orElseThrow().window();
    double last = -1;
    for (Interval interval : window.intervals()) {
      assertThat(interval.low().flowM3ps()).isGreaterThanOrEqualTo(last);
      assertThat(interval.highM3ps()).isGreaterThanOrEqualTo(interval.low().flowM3ps());
      assertThat(new WindowWords(design.units()).below(interval.low()).isEmpty())
          .isEqualTo(interval.low().cause() == Cause.NONE);
      interval
          .high()
          .ifPresent(high -> assertThat(new WindowWords(design.units()).above(high)).isNotEmpty());
      last = interval.highM3ps();
    }
    assertThat(window.main().isPresent()).isEqualTo(!window.intervals().isEmpty());
  }
}
