package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Pipes and channels that run by gravity: what a steeper slope, more flow and a wall do. */
class GravityConduitProperties {
  private static TrapezoidalChannel channel(double run, double slope) {
    return new TrapezoidalChannel(0.4, run, 0.5, slope, 0.015);
  }

  private static GravityFlow at(GravityConduit conduit, double flow) {
    return conduit.atDepth(conduit.depthShare(flow).orElseThrow());
  }

  @Property
  void theDepthThatIsFoundCarriesTheFlow(
      @ForAll @DoubleRange(min = 1e-7, max = 1) @Scale(10) double share,
      @ForAll @DoubleRange(min = 0, max = 3) double run) {
    TrapezoidalChannel channel = channel(run, 0.01);
    double flow = share * channel.greatestFlowM3ps();
    assertThat(at(channel, flow).flowM3ps()).isCloseTo(flow, within(1e-9 * flow));
  }

  @Property
  void aSteeperConduitRunsFasterAndShallower(
      @ForAll @DoubleRange(min = 0.01, max = 0.9) double share,
      @ForAll @DoubleRange(min = 1.01, max = 20) double steeper) {
    for (GravityConduit conduit :
        new GravityConduit[] {new PartFullPipe(0.3, 0.005, 0.013), channel(1, 0.005)}) {
      double flow = share * conduit.greatestFlowM3ps();
      GravityFlow flat = at(conduit, flow);
      GravityFlow steep = at(conduit.on(steeper * conduit.slope()), flow);
      assertThat(steep.velocityMps()).isGreaterThan(flat.velocityMps());
      assertThat(steep.depthM()).isLessThan(flat.depthM());
    }
  }

  @Property
  void moreFlowStandsDeeperAndTakesMoreToEnter(
      @ForAll @DoubleRange(min = 0.01, max = 0.6) double share,
      @ForAll @DoubleRange(min = 1.01, max = 1.5) double more) {
    for (GravityConduit conduit :
        new GravityConduit[] {new PartFullPipe(0.3, 0.005, 0.013), channel(0.5, 0.005)}) {
      double flow = share * conduit.greatestFlowM3ps();
      GravityFlow little = at(conduit, flow);
      GravityFlow much = at(conduit, more * flow);
      assertThat(much.depthM()).isGreaterThan(little.depthM());
      assertThat(much.entranceHeadM()).isGreaterThan(little.entranceHeadM());
    }
  }

  @Property
  void withUprightWallsItIsTheOpenChannel(
      @ForAll @DoubleRange(min = 0.01, max = 1) double depthShare) {
    GravityFlow flow = channel(0, 0.008).atDepth(depthShare);
    OpenChannel open = new OpenChannel(0.4, 0.008, 0.015);
    assertThat(flow.hydraulicRadiusM())
        .isCloseTo(open.hydraulicRadiusM(flow.depthM()), within(1e-12));
    assertThat(open.normalDepthM(flow.flowM3ps())).isCloseTo(flow.depthM(), within(1e-9));
  }

  @Property
  void theStressIsThatOfTheFriction(@ForAll @DoubleRange(min = 0.01, max = 1) double depthShare) {
    GravityFlow flow = channel(2, 0.01).atDepth(depthShare);
    double friction =
        flow.darcyFrictionFactor() / 8 * 1005 * flow.velocityMps() * flow.velocityMps();
    assertThat(flow.tractiveStressPa(1005)).isCloseTo(friction, within(1e-9 * friction));
  }

  @Example
  void aChannelHoldsNoMoreThanToItsBrim() {
    TrapezoidalChannel channel = channel(1, 0.01);
    assertThat(channel.depthShare(1.001 * channel.greatestFlowM3ps())).isEmpty();
    assertThat(channel.depthShare(channel.greatestFlowM3ps()).orElseThrow())
        .isCloseTo(1, within(1e-9));
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> channel(-1, 0.01)).hasMessageContaining("-1");
    assertThatThrownBy(() -> channel(1, 0)).hasMessageContaining("0.0");
    assertThatThrownBy(() -> channel(1, 0.01).atDepth(1.1)).hasMessageContaining("1.1");
    assertThatThrownBy(() -> channel(1, 0.01).depthShare(0)).hasMessageContaining("0.0");
  }
}
