package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.feed.FeedEvaluation;
import sandslurry.assessment.feed.GravityEvaluation;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.station.GravitySpec;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.plant.profile.Fall;

/** Pipes and channels by gravity: window, fall needed, slope from levels, a stream of a plant. */
class GravityLineTest {
  private static final DesignDocument AUGER =
      load("auger-and-gravity-return.json").with("/gravityRun/slope", "3 %");

  private static DesignDocument load(String name) {
    try {
      return DesignDocument.load(Path.of("..", "docs", "examples", name));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static GravityRun run(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    Design design = document.read().design().orElseThrow();
    return FeedEvaluation.gravityRun(
        Materials.of(design), design.feed().gravityRun().orElseThrow());
  }

  private static GravitySpec pipe(double bore, double length) {
    return new GravitySpec(
        new GravitySpec.Round(bore),
        OptionalDouble.empty(),
        OptionalDouble.of(length),
        0.013,
        0.05);
  }

  /** The window is judged as the pipe itself: inside its ends all passes, outside not. */
  @Test
  void insideItsWindowThePipePassesAndOutsideItDoesNot() {
    GravityRun.Window window = run(AUGER).window().orElseThrow();
    assertThat(at(window.carriesFromM3ps() * 1.02, window.holdsM3ps() * 0.999).passes()).isTrue();
    assertThat(at(window.carriesFromM3ps() * 0.9, window.holdsM3ps() * 0.999).passes()).isFalse();
    assertThat(at(window.carriesFromM3ps() * 1.02, window.holdsM3ps() * 1.02).passes()).isFalse();
  }

  private static GravityRun at(double leastM3ps, double mostM3ps) {
    return run(
        AUGER
            .with("/gravityRun/leastFlow", 1000 * leastM3ps + " L/s")
            .with("/gravityRun/flow", 1000 * mostM3ps + " L/s"));
  }

  @Test
  void moreFlowNeedsMoreFallAndSoDoesMoreLength() {
    GravitySpec spec = pipe(0.2, 20);
    double before = 0;
    for (double flow : new double[] {0.001, 0.005, 0.01, 0.02}) {
      double needed =
          GravityEvaluation.need(spec, spec.section().conduit(0.02, 0.013), flow)
              .map(Fall.Need::totalM)
              .orElseThrow();
      assertThat(needed).isGreaterThan(before);
      before = needed;
    }
    assertThat(
            GravityEvaluation.need(pipe(0.2, 40), spec.section().conduit(0.02, 0.013), 0.02)
                .map(Fall.Need::totalM)
                .orElseThrow())
        .isCloseTo(before + 0.02 * 20, within(1e-9));
  }

  /** The slope that levels leave uses their fall up, and a fall too small leaves none. */
  @Test
  void theSlopeOfTheLevelsUsesTheirFallUp() {
    GravitySpec spec = pipe(0.15, 25);
    double slope = GravityEvaluation.slopeOf(spec, 1.5, 0.005).orElseThrow();
    double needed =
        GravityEvaluation.need(spec, spec.section().conduit(slope, 0.013), 0.005)
            .map(Fall.Need::totalM)
            .orElseThrow();
    assertThat(needed).isBetween(1.5 * 0.97, 1.5);
    assertThat(GravityEvaluation.slopeOf(spec, 2.5, 0.005).orElseThrow()).isGreaterThan(slope);
    assertThat(GravityEvaluation.slopeOf(spec, 0.08, 0.005)).isEmpty();
    assertThat(GravityEvaluation.slopeOf(spec, 0, 0.005)).isEmpty();
    assertThat(GravityEvaluation.slopeOf(spec, -1, 0.005)).isEmpty();
  }

  /** Each cure is what it says: on its slope, and in its size, the pipe passes. */
  @Test
  void aCurePassesWhenItIsTaken() {
    DesignDocument flat = AUGER.with("/gravityRun/slope", "0.2 %");
    GravityRun run = run(flat);
    assertThat(run.passes()).isFalse();
    double slope = run.slopeToPass().orElseThrow();
    assertThat(run(flat.with("/gravityRun/slope", 100 * slope + " %")).passes()).isTrue();
    run.sizeToPass()
        .ifPresent(
            bore -> assertThat(run(flat.with("/gravityRun/bore", bore + " m")).passes()).isTrue());
  }

  @Test
  void aChannelIsJudgedAsAPipeIs() {
    Design design = AUGER.read().design().orElseThrow();
    Materials given = Materials.of(design);
    Materials materials = given.diluted(given.carrier(), 1e-4, 1e-4);
    GravitySpec spec =
        new GravitySpec(
            new GravitySpec.Channel(0.3, 0, 0.3),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            0.013,
            0.05);
    List<GravityEvaluation.Time> times =
        List.of(new GravityEvaluation.Time("at its least", 0.015, materials, true));
    GravityRun flat = GravityEvaluation.run(design, spec, 0.001, times);
    GravityRun steep = GravityEvaluation.run(design, spec, 0.08, times);
    assertThat(flat.worst().orElseThrow().severity()).isEqualTo(Severity.FAIL);
    assertThat(steep.worst().orElseThrow().severity()).isEqualTo(Severity.PASS);
    assertThat(steep.worst().orElseThrow().sand().orElseThrow().sewers()).isEmpty();
  }

  @Test
  void aStreamIsJudgedAtEveryTimeThatItFlows() {
    Assessment assessment = Shipped.assessment("closed-loop-dairy.json");
    GravityRun run = assessment.plant().orElseThrow().gravity().get("pressed");
    assertThat(run.hours())
        .extracting(hour -> hour.when())
        .anyMatch(when -> when.startsWith("in the mode"))
        .anyMatch(when -> when.startsWith("at the minimum flow rate with sand"))
        .anyMatch(when -> when.startsWith("at the maximum flow rate"));
    assertThat(assessment.findings())
        .filteredOn(f -> f.id().equals("profile.fall"))
        .extracting(f -> f.element())
        .containsExactlyInAnyOrder("stream \"pressed\"", "stream \"clear\"");
  }

  @Test
  void aStreamThatNobodyHasIsRefused() {
    DesignDocument wrong =
        load("closed-loop-dairy.json").with("/plant/gravityLines/0/stream", "recycle");
    assertThat(wrong.read().problems())
        .singleElement()
        .satisfies(p -> assertThat(p.field()).isEqualTo("/plant/gravityLines/0/stream"));
    assertThat(AUGER.without("/gravityRun/flow").read().problems()).isNotEmpty();
  }
}
