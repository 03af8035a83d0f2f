package sandslurry.separation.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

/** Channels and part-full pipes with values worked by hand, and what they refuse. */
class ChannelByHandTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);
  private static final PartFullPipe PIPE = new PartFullPipe(0.4, 0.01, 0.01);

  /** Half full, R = D/4 = 0.1 m: V = 0.1^(2/3) √0.01/0.01 = 2.154435 m/s. */
  @Test
  void aPipeHalfFull() {
    GravityFlow flow = PIPE.atDepth(0.5);
    assertThat(flow.velocityMps()).isCloseTo(2.154435, within(1e-6));
    // 4 R V/nu with 1e-6 m2/s.
    assertThat(flow.reynoldsNumber(WATER)).isCloseTo(861_774, within(1.0));
    // Velocity head 4.641589/19.6133 m and half of it again for the entrance.
    assertThat(flow.entranceHeadM()).isCloseTo(0.354983, within(1e-6));
    assertThat(PIPE.fullDepthM()).isEqualTo(0.4);
  }

  /**
   * 4 R = D (1 - sin t/t) is greatest where tan t = t, at t = 4.4934: sin t = -0.97612, so 1.21723
   * D, and a little fuller or emptier it is less. Depth there (1 - cos(t/2))/2 = 0.8128 of the
   * bore.
   */
  @Test
  void theHydraulicRadiusIsGreatestAtFourFifths() {
    double widest = PIPE.widestHydraulicDiameterM();
    assertThat(widest).isCloseTo(0.4 * 1.21723, within(1e-5));
    assertThat(4 * PIPE.atDepth(0.8128).hydraulicRadiusM()).isCloseTo(widest, within(1e-8));
    assertThat(4 * PIPE.atDepth(0.78).hydraulicRadiusM()).isLessThan(widest);
    assertThat(4 * PIPE.atDepth(0.84).hydraulicRadiusM()).isLessThan(widest);
  }

  /** 3 t - 5 t cos t + 2 sin t is 0 at t = 5.278107: depth (1 - cos(t/2))/2 of the bore. */
  @Test
  void aPipeCarriesMostAtNineteenTwentieths() {
    assertThat(PIPE.fullestShare()).isCloseTo(0.938181, within(1e-6));
  }

  /** 1 mm of quartz: d* = 1e-3 (9.80665 · 1.65/1e-12)^(1/3) = 25.29307; 0.0095711 + 0.0218335. */
  @Test
  void theShieldsNumberOfAMillimetre() {
    Grain grain = new Grain(1e-3, 2650, GrainShape.NATURAL);
    assertThat(ScourModels.SHIELDS.shieldsNumber(grain, WATER).value())
        .isCloseTo(0.0314046, within(1e-7));
  }

  /** 8 · 0.04/0.03 · 1.65 · 9.80665 · 0.3e-3 = 0.0517791 m2/s2; with 0.06 half as much again. */
  @Test
  void bothEndsOfCampsBetaAreInTheFamily() {
    Grain grain = new Grain(0.3e-3, 2650, GrainShape.NATURAL);
    assertThat(ScourModels.FAMILY.all().stream())
        .filteredOn(model -> model instanceof CampScour1946)
        .extracting(model -> model.velocityMps(grain, WATER, 0.03).value())
        .satisfiesExactly(
            low -> assertThat(low).isCloseTo(0.227550, within(1e-6)),
            high -> assertThat(high).isCloseTo(0.278691, within(1e-6)));
  }

  @Test
  void theStressThatIsNeededIsEnough() {
    assertThat(new SelfCleansing(2, 2, 1).kept()).isTrue();
    assertThat(new SelfCleansing(2, 1, 2).kept()).isTrue();
    assertThat(new SelfCleansing(2, 1, 2.001).kept()).isFalse();
  }

  @Test
  void aGrainAsLightAsItsLiquidIsRefused() {
    Grain light = new Grain(1e-3, 1000, GrainShape.NATURAL);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SelfCleansing.of(PIPE.atDepth(0.5), light, WATER))
        .withMessageContaining("the grain must be denser");
    for (ScourModel model : ScourModels.FAMILY.all()) {
      assertThatIllegalArgumentException()
          .isThrownBy(() -> model.velocityMps(light, WATER, 0.03))
          .withMessageContaining("denser");
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void whatIsNoDepthFlowOrDensityIsRefused(double value) {
    OpenChannel channel = new OpenChannel(1, 0.01, 0.015);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> channel.hydraulicRadiusM(value))
        .withMessageContaining("depth");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaminarChannel(channel, 1e-4).poiseuilleNumber(value))
        .withMessageContaining("depth");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PIPE.depthShare(value))
        .withMessageContaining("the flow must be > 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> PIPE.atDepth(0.5).tractiveStressPa(value))
        .withMessageContaining("density");
  }

  @Test
  void aLevelFloorHasNoDepthOfLaminarFlow() {
    LaminarChannel level = new LaminarChannel(new OpenChannel(1, 0, 0.015), 1e-4);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> level.normalDepthM(0.1))
        .withMessageContaining("level floor");
  }

  /**
   * Floor 0.4 m, walls 1:1 to 0.5 m, 0.3 m deep: A = 0.7 · 0.3 = 0.21 m2, P = 0.4 + 0.6 √2 =
   * 1.248528 m; full A = 0.45 m2, P = 0.4 + √2, 4 R = 0.992165 m.
   */
  @Test
  void aTrapezoidalChannel() {
    TrapezoidalChannel channel = new TrapezoidalChannel(0.4, 1, 0.5, 0.01, 0.015);
    GravityFlow flow = channel.atDepth(0.6);
    assertThat(flow.depthM()).isCloseTo(0.3, within(1e-12));
    assertThat(flow.areaM2()).isCloseTo(0.21, within(1e-12));
    assertThat(flow.wettedPerimeterM()).isCloseTo(1.248528, within(1e-6));
    assertThat(channel.widestHydraulicDiameterM()).isCloseTo(0.992165, within(1e-6));
    assertThat(channel.fullDepthM()).isEqualTo(0.5);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> channel.atDepth(0))
        .withMessageContaining("depth");
  }

  /** V = √(8 theta g (s - 1) d/f) by Camp with 0.04: √(0.32 · 9.80665 · 1.65e-3/0.03), 1 mm. */
  @Test
  void theMoreCautiousCriterionOfScourSpeaks() {
    Grain grain = new Grain(1e-3, 2650, GrainShape.NATURAL);
    assertThat(ScourModels.CAMP.velocityMps(grain, WATER, 0.03).value())
        .isCloseTo(0.415448, within(1e-5));
    assertThat(ScourModels.lowestMps(grain, WATER, 0.03))
        .isPositive()
        .isLessThanOrEqualTo(0.415448)
        .isLessThanOrEqualTo(ScourModels.SHIELDS.velocityMps(grain, WATER, 0.03).value());
    assertThat(new CampScour1946(0.01).about().id()).isNotEqualTo(ScourModels.CAMP.id());
    assertThat(new CampScour1946(1).about().id()).isNotEqualTo(ScourModels.CAMP.id());
    assertThatIllegalArgumentException().isThrownBy(() -> new CampScour1946(1.01));
    assertThatIllegalArgumentException().isThrownBy(() -> new Merritt2009().neededStressPa(0));
  }
}
