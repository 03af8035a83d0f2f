package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;

class OpenChannelTest {
  private static final OpenChannel LANE = new OpenChannel(3.5, 0.002, 0.015);

  @Test
  void noFlowNeedsNoDepth() {
    assertThat(LANE.normalDepthM(0)).isZero();
  }

  @Test
  void aLevelFloorHasNoUniformDepthButCarriesAGivenOne() {
    OpenChannel level = new OpenChannel(3.5, 0, 0.015);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> level.normalDepthM(0.1))
        .withMessageContaining("level floor")
        .withMessageContaining("depth of water");
    assertThat(level.flow(0.1, 0.2).velocityMps()).isEqualTo(0.1 / 0.7, within(1e-15));
    assertThat(level.uniformVelocityMps(0.2)).isZero();
  }

  @Test
  void frictionSlopeOfUniformFlowIsTheSlopeOfTheFloor() {
    assertThat(new ChannelFlow(LANE, 0.1, LANE.normalDepthM(0.1)).frictionSlope())
        .isEqualTo(0.002, within(1e-13));
  }

  @Test
  void shearVelocityAndFrictionFactorAreTwoNamesForOneStress() {
    ChannelFlow flow = LANE.flow(0.1, 0.15);
    double u = flow.shearVelocityMps();
    double v = flow.velocityMps();
    assertThat(flow.darcyFrictionFactor()).isEqualTo(8 * u * u / (v * v), within(1e-14));
    assertThat(u * u)
        .isEqualTo(9.80665 * flow.hydraulicRadiusM() * flow.frictionSlope(), within(1e-15));
  }

  @Test
  void reynoldsNumberIsThatOfAPipeOfFourTimesTheHydraulicRadius() {
    ChannelFlow flow = new OpenChannel(1, 0.001, 0.015).flow(0.25, 0.5);
    // R = 0.5/2 = 0.25 m, V = 0.5 m/s, kinematic viscosity 1e-6 m2/s.
    assertThat(flow.reynoldsNumber(new Liquid(1000, 1e-3))).isEqualTo(500_000, within(1e-6));
  }

  @Test
  void nonsenseIsRefusedByNameAndValue() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new OpenChannel(Double.NaN, 0.01, 0.015))
        .withMessageContaining("width")
        .withMessageContaining("NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> new OpenChannel(1, -0.01, 0.015));
    assertThatIllegalArgumentException().isThrownBy(() -> new OpenChannel(1, 0.01, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> LANE.flow(0.1, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> LANE.flow(0, 0.1));
    assertThatIllegalArgumentException().isThrownBy(() -> LANE.normalDepthM(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> LANE.flow(1e300, 1e-300));
  }
}
