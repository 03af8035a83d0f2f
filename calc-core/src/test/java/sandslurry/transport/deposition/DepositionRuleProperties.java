package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;

class DepositionRuleProperties {
  @Property
  void noNumberOfAJudgementIsOutOfBoundsAndMoreVelocityIsNeverWorse(
      @ForAll @Scale(6) @DoubleRange(min = 2e-5, max = 5e-3) double d50,
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 10) double spread,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.5) double diameter,
      @ForAll @Scale(6) @DoubleRange(min = 5e-4, max = 0.5) double viscosity,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.4) double fraction,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double velocity,
      @ForAll @Scale(6) @DoubleRange(min = -1.57, max = 1.57) double angle) {
    Slurry slurry =
        new Slurry(
            new Liquid(1010, viscosity), 2650, GrainShape.NATURAL, d50, d50 * spread, fraction);
    Bore bore = new Bore(diameter, 1e-4);
    DepositionRule rule = DepositionRule.DEFAULT;
    DepositionJudgement j = rule.judge(slurry, bore, velocity, angle);
    assertThat(j.limitMps()).isFinite().isPositive();
    assertThat(j.requiredMps()).isGreaterThan(j.limitMps());
    assertThat(j.velocityToPassMps()).isGreaterThanOrEqualTo(j.requiredMps());
    assertThat(j.entries()).hasSize(DepositionVelocities.all().size());
    DepositionJudgement faster = rule.judge(slurry, bore, velocity + 0.5, angle);
    assertThat(faster.outcome()).isGreaterThanOrEqualTo(j.outcome());
    Outcome atPass = rule.judge(slurry, bore, j.velocityToPassMps(), angle).outcome();
    assertThat(atPass).isIn(Outcome.CLEAR, Outcome.OUT_OF_RANGE);
    DepositionJudgement middle =
        new DepositionRule(0.15, 0.3, false, Map.of()).judge(slurry, bore, velocity, angle);
    for (int i = 0; i < j.entries().size(); i++) {
      assertThat(j.entries().get(i).valueMps())
          .isGreaterThanOrEqualTo(middle.entries().get(i).valueMps());
    }
  }
}
