package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class OpenChannelProperties {
  @Property
  void uniformDepthCarriesTheFlowOverManyDecades(
      @ForAll @DoubleRange(min = -9, max = 6) double logFlow,
      @ForAll @DoubleRange(min = -3, max = 4) double logWidth,
      @ForAll @DoubleRange(min = -8, max = 0) double logSlope,
      @ForAll @Scale(7) @DoubleRange(min = 0.005, max = 0.2) double n) {
    double flow = Math.pow(10, logFlow);
    OpenChannel channel = new OpenChannel(Math.pow(10, logWidth), Math.pow(10, logSlope), n);
    double depth = channel.normalDepthM(flow);
    assertThat(channel.uniformVelocityMps(depth) * channel.widthM() * depth)
        .isCloseTo(flow, withinPercentage(1e-9));
    assertThat(new ChannelFlow(channel, flow, depth).frictionSlope())
        .isCloseTo(channel.slope(), withinPercentage(1e-8));
  }

  @Property
  void moreFlowIsDeeperAndASteeperFloorShallower(
      @ForAll @Scale(7) @DoubleRange(min = 0.001, max = 10) double flow,
      @ForAll @DoubleRange(min = 0.2, max = 20) double width,
      @ForAll @Scale(7) @DoubleRange(min = 1e-5, max = 0.05) double slope) {
    OpenChannel channel = new OpenChannel(width, slope, 0.015);
    double depth = channel.normalDepthM(flow);
    assertThat(channel.normalDepthM(1.1 * flow)).isGreaterThan(depth);
    assertThat(new OpenChannel(width, 1.1 * slope, 0.015).normalDepthM(flow)).isLessThan(depth);
  }
}
