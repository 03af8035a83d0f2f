package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;

class PartFullPipeProperties {
  private static final Liquid LIQUID = new Liquid(1005, 1.3e-3);
  private final PartFullPipe pipe = new PartFullPipe(0.3, 0.01, 0.013);

  @Property
  void theDepthThatIsFoundCarriesTheFlow(
      @ForAll @DoubleRange(min = 1e-9, max = 1) @Scale(12) double share) {
    double flow = share * pipe.greatestFlowM3ps();
    double depth = pipe.depthShare(flow).orElseThrow();
    assertThat(pipe.atDepth(depth).flowM3ps()).isCloseTo(flow, within(1e-9 * flow));
  }

  @Property
  void moreFlowStandsHigherUpToTheGreatest(
      @ForAll @DoubleRange(min = 1e-3, max = 0.99) @Scale(8) double share) {
    double flow = share * pipe.greatestFlowM3ps();
    assertThat(pipe.depthShare(flow * 1.005).orElseThrow())
        .isGreaterThan(pipe.depthShare(flow).orElseThrow());
  }

  @Property
  void noDepthCarriesMoreThanTheGreatestFlow(
      @ForAll @DoubleRange(min = 0.001, max = 1) @Scale(8) double depth) {
    assertThat(pipe.atDepth(depth).flowM3ps())
        .isLessThanOrEqualTo(pipe.greatestFlowM3ps() * (1 + 1e-12));
  }

  @Property
  void theTractiveStressIsThatOfTheFriction(
      @ForAll @DoubleRange(min = 0.01, max = 1) @Scale(8) double depth) {
    PartFullFlow flow = pipe.atDepth(depth);
    double velocity = flow.velocityMps();
    double friction = flow.darcyFrictionFactor() / 8 * 1005 * velocity * velocity;
    assertThat(flow.tractiveStressPa(1005)).isCloseTo(friction, within(1e-9 * friction));
  }

  @Example
  void aFlowBeyondTheGreatestDoesNotFit() {
    assertThat(pipe.depthShare(1.0001 * pipe.greatestFlowM3ps())).isEmpty();
  }

  @Example
  void aSteeperPipeMovesCoarserSand() {
    Grain coarse = new Grain(3e-3, 2650, GrainShape.NATURAL);
    PartFullFlow flat = new PartFullPipe(0.3, 0.001, 0.013).atDepth(0.3);
    PartFullFlow steep = new PartFullPipe(0.3, 0.02, 0.013).atDepth(0.3);
    assertThat(SelfCleansing.of(flat, coarse, LIQUID).kept()).isFalse();
    assertThat(SelfCleansing.of(steep, coarse, LIQUID).kept()).isTrue();
    assertThat(new Merritt2009().neededStressPa(2e-2).inRange()).isFalse();
  }

  @Example
  void theScourStressIsThatOfTheScourVelocity() {
    Grain grain = new Grain(5e-4, 2650, GrainShape.NATURAL);
    PartFullFlow flow = pipe.atDepth(0.4);
    double f = flow.darcyFrictionFactor();
    double velocity = ScourModels.SHIELDS.velocityMps(grain, LIQUID, f).value();
    SelfCleansing judged = SelfCleansing.of(flow, grain, LIQUID);
    double stress = f / 8 * 1005 * velocity * velocity;
    assertThat(judged.scourStressPa()).isCloseTo(stress, within(1e-9));
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new PartFullPipe(0.3, 0, 0.013)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> pipe.atDepth(0)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> pipe.atDepth(1.1)).hasMessageContaining("1.1");
    assertThatThrownBy(() -> pipe.depthShare(Double.NaN)).hasMessageContaining("NaN");
  }
}
