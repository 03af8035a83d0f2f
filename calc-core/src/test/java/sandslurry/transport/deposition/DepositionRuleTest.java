package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.Map;
import org.junit.jupiter.api.Test;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionVelocities.Role;

class DepositionRuleTest {
  private static final Liquid WATER = new Liquid(998.207, 1.0016e-3);
  private static final Bore PIPE = new Bore(0.15408, 4.5e-5);
  private static final DepositionRule RULE = DepositionRule.DEFAULT;

  private static Slurry graded(Liquid liquid, double d50M, double d85M, double fraction) {
    return new Slurry(liquid, 2650, GrainShape.NATURAL, d50M, d85M, fraction);
  }

  private static Slurry uniform(double sizeM) {
    return graded(WATER, sizeM, sizeM, 0.1);
  }

  private static Entry entry(DepositionJudgement judgement, String id) {
    return judgement.entries().stream()
        .filter(e -> e.model().id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void theLimitIsTheLargerOfTheTwoThatGovern() {
    DepositionJudgement j = RULE.judge(uniform(3e-4), PIPE, 2.0, 0);
    double gillies = entry(j, "gillies-shook-2002").valueMps();
    double wilson = entry(j, "wilson-bounded").valueMps();
    assertThat(j.limitMps()).isEqualTo(Math.max(gillies, wilson));
    assertThat(j.limiting().model()).isInstanceOf(GilliesShook.class);
    assertThat(j.carrierReynolds()).isCloseTo(2.0 * 0.15408 * 998.207 / 1.0016e-3, offset(1.0));
  }

  @Test
  void theMarginIsTheLargerOfTheShareAndTheVelocity() {
    DepositionJudgement wide = RULE.judge(uniform(3e-4), PIPE, 2.0, 0);
    assertThat(wide.requiredMps()).isCloseTo(wide.limitMps() * 1.15, offset(1e-12));
    DepositionJudgement narrow = RULE.judge(uniform(3e-4), new Bore(0.06, 0), 2.0, 0);
    assertThat(narrow.requiredMps()).isCloseTo(narrow.limitMps() + 0.3, offset(1e-12));
  }

  @Test
  void theVerdictClimbsWithTheVelocity() {
    DepositionJudgement at = RULE.judge(uniform(3e-4), PIPE, 0, 0);
    double limit = at.limitMps();
    double required = at.requiredMps();
    assertThat(outcome(limit * 0.999)).isEqualTo(Outcome.BELOW_LIMIT);
    assertThat(outcome(limit * 1.001)).isEqualTo(Outcome.WITHIN_MARGIN);
    assertThat(outcome(required * 0.999)).isEqualTo(Outcome.WITHIN_MARGIN);
    assertThat(outcome(required * 1.001)).isEqualTo(Outcome.CLEAR);
    assertThat(outcome(at.velocityToPassMps())).isEqualTo(Outcome.CLEAR);
    assertThat(outcome(0)).isEqualTo(Outcome.BELOW_LIMIT);
  }

  private static Outcome outcome(double velocityMps) {
    return RULE.judge(uniform(3e-4), PIPE, velocityMps, 0).outcome();
  }

  @Test
  void countedModelsThatAskForMoreAreADisagreement() {
    DepositionRule rule =
        new DepositionRule(0.15, 0.3, true, Map.of("durand-plateau-english", Role.COUNTED));
    DepositionJudgement j = rule.judge(uniform(3e-4), PIPE, 2.9, 0);
    assertThat(j.outcome()).isEqualTo(Outcome.MODELS_DISAGREE);
    assertThat(j.largestCounted())
        .get()
        .extracting(e -> e.model().id())
        .isEqualTo("durand-plateau-english");
    assertThat(j.velocityToPassMps()).isEqualTo(j.largestCounted().orElseThrow().valueMps());
    assertThat(RULE.judge(uniform(3e-4), PIPE, 2.9, 0).outcome()).isEqualTo(Outcome.CLEAR);
  }

  /**
   * Bedding sand in thick liquor: the Archimedes number is below 80 and the carrier is no water.
   */
  @Test
  void outsideEveryGoverningRangeNothingPasses() {
    Slurry slurry = graded(new Liquid(1010, 20e-3), 2e-4, 3e-4, 0.05);
    DepositionJudgement j = RULE.judge(slurry, PIPE, 50, 0);
    assertThat(j.outcome()).isEqualTo(Outcome.OUT_OF_RANGE);
    for (Entry e : j.entries()) {
      if (e.role() != Role.SHOWN) {
        assertThat(j.limitMps()).isGreaterThanOrEqualTo(e.valueMps());
      }
    }
    assertThat(RULE.judge(slurry, PIPE, j.limitMps() * 0.99, 0).outcome())
        .isEqualTo(Outcome.BELOW_LIMIT);
    assertThat(RULE.judge(slurry, PIPE, RULE.velocityToPassMps(slurry, PIPE, 0), 0).outcome())
        .isEqualTo(Outcome.OUT_OF_RANGE);
  }

  @Test
  void theFloorHoldsWhereTheGoverningModelsFallBelowIt() {
    DepositionRule rule =
        new DepositionRule(0, 0, true, Map.of("durand-plateau-english", Role.FLOOR));
    DepositionJudgement j = rule.judge(uniform(3e-4), PIPE, 2.6, 0);
    assertThat(j.limiting().model()).isInstanceOf(DurandEnglishPlateau.class);
    assertThat(j.outcome()).isEqualTo(Outcome.BELOW_LIMIT);
  }

  @Test
  void theWorstSizeBetweenD50AndD85IsFound() {
    // From below to beyond the Murphian size: Wilson's nomograph is worst in between.
    Slurry wide = graded(WATER, 0.2e-3, 1.5e-3, 0.1);
    DepositionJudgement j = RULE.judge(wide, PIPE, 3, 0);
    Entry nomograph = entry(j, "wilson-1986-fit");
    assertThat(nomograph.sizeM()).isBetween(0.4e-3, 0.6e-3);
    assertThat(nomograph.valueMps())
        .isGreaterThan(new Wilson1986Fit().velocityMps(wide, PIPE).value())
        .isGreaterThan(new Wilson1986Fit().velocityMps(uniform(1.5e-3), PIPE).value());
    assertThat(entry(j, "wasp-1977").sizeM()).isEqualTo(1.5e-3);
    assertThat(entry(j, "durand-plateau-french").sizeM()).isEqualTo(0.2e-3);
    DepositionRule d50 = new DepositionRule(0.15, 0.3, false, Map.of());
    assertThat(d50.judge(wide, PIPE, 3, 0).entries()).allMatch(e -> e.sizeM() == 0.2e-3);
  }

  @Test
  void anUpwardSlopeAddsToEveryValueAndADownwardOneNothing() {
    DepositionJudgement level = RULE.judge(uniform(3e-4), PIPE, 2, 0);
    DepositionJudgement up = RULE.judge(uniform(3e-4), PIPE, 2, Math.toRadians(20));
    DepositionJudgement down = RULE.judge(uniform(3e-4), PIPE, 2, Math.toRadians(-20));
    double root = Math.sqrt(2 * 9.80665 * 0.15408 * (2650 / 998.207 - 1));
    assertThat(up.upwardCorrectionMps()).isCloseTo(0.27 * root, offset(1e-9));
    assertThat(up.limitMps()).isCloseTo(level.limitMps() + 0.27 * root, offset(1e-9));
    assertThat(down.limitMps()).isEqualTo(level.limitMps());
    assertThat(up.entries()).isEqualTo(level.entries());
  }

  @Test
  void aSlopeBeyondTheChartNeverPasses() {
    DepositionJudgement j = RULE.judge(uniform(3e-4), PIPE, 50, Math.toRadians(60));
    assertThat(j.outcome()).isEqualTo(Outcome.OUT_OF_RANGE);
    assertThat(j.slope().inRange()).isFalse();
  }

  @Test
  void aTraceOfSandIsJudgedLikeSand() {
    DepositionJudgement j = RULE.judge(graded(WATER, 3e-4, 3e-4, 0), PIPE, 2, 0);
    assertThat(j.outcome()).isEqualTo(Outcome.BELOW_LIMIT);
    assertThat(entry(j, "wasp-1977").estimate().inRange()).isFalse();
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new DepositionRule(-0.1, 0, true, Map.of()))
        .hasMessageContaining("-0.1");
    assertThatThrownBy(() -> new DepositionRule(0, Double.NaN, true, Map.of()))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> new DepositionRule(0, 0, true, Map.of("nobody", Role.SHOWN)))
        .hasMessageContaining("nobody")
        .hasMessageContaining("wasp-1977");
    Map<String, Role> nobodyGoverns =
        Map.of("gillies-shook-2002", Role.SHOWN, "wilson-bounded", Role.SHOWN);
    assertThatThrownBy(() -> new DepositionRule(0, 0, true, nobodyGoverns))
        .hasMessageContaining("govern");
    assertThatThrownBy(() -> RULE.judge(uniform(3e-4), PIPE, -1, 0)).hasMessageContaining("-1");
    assertThatThrownBy(() -> RULE.judge(uniform(3e-4), PIPE, Double.NaN, 0))
        .hasMessageContaining("NaN");
  }
}
