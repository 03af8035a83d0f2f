package sandslurry.separation.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.correlation.Bound;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SizeClass;
import sandslurry.separation.LaneFeed;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;

class SettlingLaneTest {
  private static final Liquid WATER = new Liquid(998.2, 1.002e-3);
  private static final List<SizeClass> SAND =
      List.of(
          new SizeClass(0.075e-3, 0.15e-3, 0.106e-3, 0.10),
          new SizeClass(0.15e-3, 0.30e-3, 0.212e-3, 0.25),
          new SizeClass(0.30e-3, 0.60e-3, 0.424e-3, 0.40),
          new SizeClass(0.60e-3, 1.18e-3, 0.841e-3, 0.25));
  private static final SettlingLane LANE =
      new SettlingLane(
          new OpenChannel(3.6, 0.002, 0.015), 60, OptionalDouble.empty(), 0.15, 0.40, 1);

  static LaneFeed feed(double flow, double fraction) {
    return new LaneFeed(flow, 6.0 / 24, WATER, fraction, 2650, GrainShape.NATURAL, SAND, 1);
  }

  @Test
  void theLaneRunsAtUniformDepthUnlessADepthIsGiven() {
    LaneResult free = LANE.evaluate(feed(0.06, 0.01));
    assertThat(free.depthIsUniform()).isTrue();
    assertThat(free.flow().frictionSlope()).isEqualTo(0.002, within(1e-12));
    LaneResult held =
        new SettlingLane(LANE.channel(), 60, OptionalDouble.of(0.3), 0.15, 0.4, 1)
            .evaluate(feed(0.06, 0.01));
    assertThat(held.depthIsUniform()).isFalse();
    assertThat(held.flow().depthM()).isEqualTo(0.3);
    assertThat(held.residenceTimeS()).isEqualTo(3.6 * 60 * 0.3 / 0.06, within(1e-9));
    assertThat(held.basin().overflowVelocityMps()).isEqualTo(0.06 / 216, within(1e-15));
    assertThat(held.retained().vetter()).isGreaterThan(free.retained().vetter());
  }

  @Test
  void aLevelFloorNeedsADepth() {
    SettlingLane level =
        new SettlingLane(new OpenChannel(3.6, 0, 0.015), 60, OptionalDouble.empty(), 0.15, 0.4, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> level.evaluate(feed(0.06, 0.01)))
        .withMessageContaining("depth");
  }

  @Test
  void grainsFallSlowerAmongNeighboursAndWithACoating() {
    LaneClass alone = LANE.evaluate(feed(0.06, 0)).classes().get(1);
    LaneClass crowded = LANE.evaluate(feed(0.06, 0.05)).classes().get(1);
    assertThat(alone.hinderedVelocityMps()).isEqualTo(alone.settlingVelocityMps(), within(1e-15));
    Grain grain = new Grain(0.212e-3, 2650, GrainShape.NATURAL);
    double reynolds = SettlingVelocities.reynoldsNumber(grain, WATER);
    assertThat(crowded.hinderedVelocityMps())
        .isEqualTo(
            alone.settlingVelocityMps()
                * Math.pow(0.95, new Rowe1987().exponent(reynolds, 0.05).value()),
            within(1e-15));
    LaneFeed coated = new LaneFeed(0.06, 0.25, WATER, 0, 2650, GrainShape.NATURAL, SAND, 0.75);
    assertThat(LANE.evaluate(coated).classes().get(1).settlingVelocityMps())
        .isEqualTo(0.75 * alone.settlingVelocityMps(), within(1e-15));
  }

  @Test
  void stokesPromisesCoarseSandTooMuch() {
    List<LaneClass> classes = LANE.evaluate(feed(0.06, 0)).classes();
    assertThat(classes.get(3).stokesFallTimeS()).isLessThan(0.3 * classes.get(3).fallTimeS());
    // 0.106 mm: 18 mu h / (g d2 drho) by hand with the depth of the lane.
    double depth = LANE.evaluate(feed(0.06, 0)).flow().depthM();
    assertThat(classes.get(0).stokesFallTimeS())
        .isCloseTo(
            depth * 18 * 1.002e-3 / (9.80665 * 1651.8 * 0.106e-3 * 0.106e-3),
            withinPercentage(1e-9));
  }

  @Test
  void aClassThatTheFlowMovesIsCaughtButNotRetained() {
    LaneResult result = LANE.evaluate(feed(0.06, 0.01));
    // At nearly 0.4 m/s in 4 cm of water the flow moves every class of this sand.
    assertThat(result.flow().velocityMps()).isBetween(0.3, 0.4);
    assertThat(result.capture().vetter()).isGreaterThan(0.9);
    assertThat(result.retained()).isEqualTo(CaptureBand.NONE);
    assertThat(result.largestScouredM()).isGreaterThan(0.841e-3);
    assertThat(result.fillTimeS(result.retained().vetter())).isEmpty();

    LaneResult slow =
        new SettlingLane(LANE.channel(), 60, OptionalDouble.of(0.08), 0.15, 0.4, 1)
            .evaluate(feed(0.06, 0.01));
    for (LaneClass one : slow.classes()) {
      assertThat(one.scoured())
          .as(one.toString())
          .isEqualTo(one.size().meanM() < slow.largestScouredM())
          .isEqualTo(
              slow.flow().velocityMps() > Math.min(one.campScourMps(), one.shieldsScourMps()));
    }
    assertThat(slow.classes()).anyMatch(LaneClass::scoured).anyMatch(one -> !one.scoured());
    assertThat(slow.retained().ideal()).isGreaterThan(0).isLessThan(slow.capture().ideal());
  }

  @Test
  void theSizesCaughtAreCaughtByTheShareAsked() {
    LaneResult result = LANE.evaluate(feed(0.3, 0.02));
    for (CaughtSize caught : List.of(result.caughtHalf(), result.caughtMost())) {
      assertThat(captureOf(caught.idealM()).ideal()).isEqualTo(caught.share(), within(1e-9));
      assertThat(captureOf(caught.campDobbinsM()).campDobbins())
          .isEqualTo(caught.share(), within(1e-9));
      assertThat(captureOf(caught.vetterM()).vetter()).isEqualTo(caught.share(), within(1e-9));
      assertThat(caught.idealM()).isLessThan(caught.campDobbinsM());
      assertThat(caught.campDobbinsM()).isLessThan(caught.vetterM());
    }
    assertThat(result.caughtHalf().vetterM()).isLessThan(result.caughtMost().vetterM());
  }

  private static CaptureBand captureOf(double diameterM) {
    List<SizeClass> one = List.of(new SizeClass(diameterM, diameterM, diameterM, 1));
    return LANE.evaluate(new LaneFeed(0.3, 0.25, WATER, 0.02, 2650, GrainShape.NATURAL, one, 1))
        .capture();
  }

  @Test
  void theStorageFillsInTheTimeThatMassAndPorosityGive() {
    LaneResult result = LANE.evaluate(feed(0.06, 0.01));
    // 3.6 x 60 x 0.15 m3, 60 % of it sand.
    assertThat(result.storageKg()).isEqualTo(32.4 * 0.6 * 2650, within(1e-6));
    // 0.06 m3/s with 1 % sand for a quarter of the day.
    assertThat(result.sandKgPs()).isEqualTo(0.06 * 0.01 * 2650 / 4, within(1e-12));
    assertThat(result.fillTimeS(0.5).orElseThrow())
        .isCloseTo(32.4 * 0.6 / (0.06 * 0.01 / 4 * 0.5), withinPercentage(1e-9));
  }

  @Test
  void clearLiquidFillsNothing() {
    LaneResult result = LANE.evaluate(feed(0.06, 0));
    assertThat(result.sandKgPs()).isZero();
    assertThat(result.fillTimeS(result.capture().ideal())).isEmpty();
    assertThat(result.capture().vetter()).isBetween(0.0, 1.0);
  }

  @Test
  void aLaneOfThickLiquidIsReportedAsNotTurbulent() {
    LaneFeed thick =
        new LaneFeed(0.01, 0.25, new Liquid(1010, 0.5), 0.01, 2650, GrainShape.NATURAL, SAND, 1);
    assertThat(LANE.evaluate(thick).excesses())
        .extracting(Bound.Excess::bound)
        .contains(ChannelFlow.TURBULENT);
    assertThat(LANE.evaluate(feed(0.06, 0.01)).excesses()).isEmpty();
  }

  @Test
  void anInletThatSpoilsTheStartCostsArea() {
    SettlingLane spoilt =
        new SettlingLane(LANE.channel(), 60, OptionalDouble.empty(), 0.15, 0.40, 0.7);
    SettlingLane shorter =
        new SettlingLane(LANE.channel(), 42, OptionalDouble.empty(), 0.15, 0.40, 1);
    assertThat(spoilt.evaluate(feed(0.3, 0.01)).capture().campDobbins())
        .isEqualTo(shorter.evaluate(feed(0.3, 0.01)).capture().campDobbins(), within(1e-12));
  }

  @Test
  void nonsenseIsRefusedByNameAndValue() {
    OpenChannel channel = LANE.channel();
    OptionalDouble free = OptionalDouble.empty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingLane(channel, -1, free, 0.1, 0.4, 1))
        .withMessageContaining("length")
        .withMessageContaining("-1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingLane(channel, 60, OptionalDouble.of(0), 0.1, 0.4, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingLane(channel, 60, free, Double.NaN, 0.4, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingLane(channel, 60, free, 0.1, 1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SettlingLane(channel, 60, free, 0.1, 0.4, 0));
    assertThatIllegalArgumentException().isThrownBy(() -> feed(0, 0.01));
    assertThatIllegalArgumentException().isThrownBy(() -> feed(0.1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneFeed(0.1, 1.1, WATER, 0, 2650, GrainShape.NATURAL, SAND, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneFeed(0.1, 1, WATER, 0, 900, GrainShape.NATURAL, SAND, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneFeed(0.1, 1, WATER, 0, 2650, GrainShape.NATURAL, SAND, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new LaneFeed(0.1, 1, WATER, 0, 2650, GrainShape.NATURAL, SAND.subList(0, 2), 1))
        .withMessageContaining("sum to 1");
  }
}
