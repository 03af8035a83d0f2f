package sandslurry.separation.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.capture.CaughtSize;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.settling.Rowe1987;
import sandslurry.settling.SettlingVelocities;

class SettlingLaneTest {
  private static final Liquid WATER = new Liquid(998.2, 1.002e-3);
  private static final OpenChannel CHANNEL = new OpenChannel(3.6, 0.002, 0.015);
  private static final List<GrainRange> SIZES =
      List.of(
          new GrainRange(0.075e-3, 0.15e-3),
          new GrainRange(0.15e-3, 0.30e-3),
          new GrainRange(0.30e-3, 0.60e-3),
          new GrainRange(0.60e-3, 1.18e-3));
  private static final List<Double> SHARES = List.of(0.10, 0.25, 0.40, 0.25);

  private static UnitFeed feed(double flow, double fraction) {
    return feed(flow, fraction, WATER, SIZES, SHARES, 1);
  }

  private static UnitFeed feed(
      double flow,
      double fraction,
      Liquid liquid,
      List<GrainRange> sizes,
      List<Double> shares,
      double factor) {
    double sand = flow * fraction * 2650;
    return new UnitFeed(
        flow * (1 - fraction),
        liquid,
        0,
        0,
        0,
        2650,
        GrainShape.NATURAL,
        sizes,
        shares.stream().map(share -> share * sand).toList(),
        factor,
        0);
  }

  private static LaneReach reach(double level) {
    return new LaneReach(CHANNEL, 60, OptionalDouble.of(level), 0.15, 1);
  }

  private static LaneResult evaluate(LaneReach reach, UnitFeed feed) {
    return new SettlingLane(reach, 0.40).evaluate(feed, OrganicMatter.FEEDLOT, 0.25);
  }

  private static LaneResult uniform(UnitFeed feed) {
    return evaluate(new LaneReach(CHANNEL, 60, OptionalDouble.empty(), 0.15, 1), feed);
  }

  @Test
  void theLaneRunsAtUniformDepthUnlessAWeirHoldsTheWaterHigher() {
    LaneResult free = uniform(feed(0.06, 0.01));
    assertThat(free.flow().frictionSlope()).isEqualTo(0.002, within(1e-12));
    LaneResult held = evaluate(reach(0.3), feed(0.06, 0.01));
    assertThat(held.flow().depthM()).isEqualTo(0.3);
    assertThat(held.residenceTimeS()).isEqualTo(3.6 * 60 * 0.3 / 0.06, within(1e-9));
    assertThat(held.basin().overflowVelocityMps()).isEqualTo(0.06 / 216, within(1e-15));
    assertThat(held.cycle().likely().meanRecovery())
        .isGreaterThan(free.cycle().likely().meanRecovery());
  }

  @Test
  void grainsFallSlowerAmongNeighboursAndWithACoating() {
    LaneClass alone = uniform(feed(0.06, 0)).classes().get(1);
    LaneClass crowded = uniform(feed(0.06, 0.05)).classes().get(1);
    assertThat(alone.hinderedVelocityMps()).isEqualTo(alone.settlingVelocityMps(), within(1e-15));
    Grain grain = new Grain(SIZES.get(1).meanM(), 2650, GrainShape.NATURAL);
    double reynolds = SettlingVelocities.reynoldsNumber(grain, WATER);
    assertThat(crowded.hinderedVelocityMps())
        .isEqualTo(
            alone.settlingVelocityMps()
                * Math.pow(0.95, new Rowe1987().exponent(reynolds, 0.05).value()),
            within(1e-12));
    LaneResult coated = uniform(feed(0.06, 0, WATER, SIZES, SHARES, 0.75));
    assertThat(coated.classes().get(1).settlingVelocityMps())
        .isEqualTo(0.75 * alone.settlingVelocityMps(), within(1e-15));
  }

  @Test
  void stokesPromisesCoarseSandTooMuch() {
    LaneResult result = uniform(feed(0.06, 0));
    LaneClass coarse = result.classes().get(3);
    assertThat(coarse.stokesFallTimeS()).isLessThan(0.3 * coarse.fallTimeS());
    // 18 mu h / (g d2 drho) by hand with the depth of the lane and the mean size.
    assertThat(result.classes().get(0).stokesFallTimeS())
        .isCloseTo(
            result.flow().depthM() * 18 * 1.002e-3 / (9.80665 * 1651.8 * 0.075e-3 * 0.15e-3),
            withinPercentage(1e-9));
  }

  @Test
  void whatTheFlowMovesReachesTheFloorButIsNotKeptInTheCautiousOutlook() {
    LaneResult result = uniform(feed(0.06, 0.01));
    // At nearly 0.4 m/s in 4 cm of water the flow moves every class of this sand.
    assertThat(result.flow().velocityMps()).isBetween(0.3, 0.4);
    assertThat(result.movedShare(result.flow().velocityMps())).isEqualTo(1, within(1e-12));
    for (LaneClass one : result.classes()) {
      assertThat(one.capture().vetter()).isGreaterThan(0.9);
      assertThat(one.kept().cautious()).isZero();
      assertThat(one.kept().hopeful()).isGreaterThan(0.9);
    }
    assertThat(result.cycle().cautious().meanRecovery()).isZero();
    LaneResult slow = evaluate(reach(0.08), feed(0.06, 0.01));
    assertThat(slow.movedShare(slow.flow().velocityMps())).isBetween(0.3, 0.9);
    assertThat(slow.classes().get(3).kept().cautious()).isGreaterThan(0.9);
    assertThat(slow.classes().get(0).kept().cautious()).isZero();
  }

  @Test
  void theSizesCaughtAreCaughtByTheShareAsked() {
    LaneResult result = uniform(feed(0.3, 0.02));
    for (CaughtSize caught : List.of(result.caughtHalf(), result.caughtMost())) {
      assertThat(captureOf(caught.idealM()).ideal()).isEqualTo(caught.share(), within(1e-9));
      assertThat(captureOf(caught.campDobbinsM()).campDobbins())
          .isEqualTo(caught.share(), within(1e-5));
      assertThat(captureOf(caught.vetterM()).vetter()).isEqualTo(caught.share(), within(1e-9));
      assertThat(caught.idealM()).isLessThan(caught.campDobbinsM());
      assertThat(caught.campDobbinsM()).isLessThan(caught.vetterM());
    }
    assertThat(result.caughtHalf().vetterM()).isLessThan(result.caughtMost().vetterM());
  }

  private static CaptureBand captureOf(double diameterM) {
    List<GrainRange> one = List.of(new GrainRange(diameterM, diameterM));
    return uniform(feed(0.3, 0.02, WATER, one, List.of(1.0), 1)).classes().get(0).capture();
  }

  @Test
  void aDeepLaneKeepsTheSameAllTheTimeAndFillsInTheTimeThatMassAndPorosityGive() {
    LaneResult result = evaluate(reach(2), feed(0.06, 0.01));
    // 3.6 x 60 x 0.15 m3, 60 % of it sand.
    assertThat(result.storageKg()).isEqualTo(32.4 * 0.6 * 2650, within(1e-6));
    // 0.06 m3/s with 1 % sand for a quarter of the day.
    assertThat(result.sandKgPs()).isEqualTo(0.06 * 0.01 * 2650 / 4, within(1e-12));
    LaneCycle cycle = result.cycle();
    assertThat(cycle.likely().end()).isEqualTo(LaneFilling.End.FULL);
    assertThat(cycle.likely().intervalS().orElseThrow())
        .isCloseTo(
            32.4 * 0.6 / (0.06 * 0.01 / 4) / cycle.likely().meanRecovery(), withinPercentage(0.1));
    assertThat(cycle.keeps(0.95)).isTrue();
    assertThat(cycle.cautious().meanRecovery())
        .isLessThanOrEqualTo(cycle.likely().meanRecovery() + 1e-9);
  }

  @Test
  void aLaneIsJudgedAtItsWorstToo() {
    LaneCycle cycle = evaluate(reach(0.2), feed(0.06, 0.01)).cycle();
    double last = cycle.likely().lastRecovery();
    assertThat(last).isLessThan(cycle.likely().meanRecovery() - 0.02);
    assertThat(cycle.likely().meanRecovery()).isLessThan(cycle.likely().points().get(0).recovery());
    assertThat(cycle.keeps((last + cycle.likely().meanRecovery()) / 2)).isFalse();
    // Every outlook is cleaned at the same time, or before when it is full.
    double interval = cycle.likely().intervalS().orElseThrow();
    assertThat(cycle.cautious().end()).isEqualTo(LaneFilling.End.ON_SCHEDULE);
    assertThat(cycle.cautious().intervalS().orElseThrow())
        .isCloseTo(interval, withinPercentage(1e-9));
    assertThat(cycle.hopeful().intervalS().orElseThrow())
        .isLessThanOrEqualTo(interval * (1 + 1e-9));
  }

  @Test
  void classesCutInHalfKeepTheSameAndCaptureMovesEvenlyWithVelocity() {
    List<GrainRange> halves = new ArrayList<>();
    List<Double> shares = new ArrayList<>();
    for (int i = 0; i < SIZES.size(); i++) {
      GrainRange size = SIZES.get(i);
      halves.add(new GrainRange(size.lowM(), size.meanM()));
      halves.add(new GrainRange(size.meanM(), size.highM()));
      shares.add(SHARES.get(i) / 2);
      shares.add(SHARES.get(i) / 2);
    }
    for (Outlook outlook : Outlook.values()) {
      double before = 2;
      for (double level = 1; level > 0.06; level *= 0.98) {
        double whole = clean(level, feed(0.06, 0.01), outlook);
        double halved = clean(level, feed(0.06, 0.01, WATER, halves, shares, 1), outlook);
        // Half a point is the most that a division may be worth.
        assertThat(halved).isEqualTo(whole, within(0.003));
        if (before <= 1) {
          assertThat(before - whole).as("at %s m", level).isBetween(-1e-9, 0.06);
        }
        before = whole;
      }
    }
  }

  private static double clean(double level, UnitFeed feed, Outlook outlook) {
    return LaneDeposit.of(
            List.of(reach(level)), List.of(0.0), feed, OrganicMatter.FEEDLOT, 0.4, outlook)
        .sandRecovery(feed);
  }

  @Test
  void theMeanOfAClassIsThatOfManyGrainsOfOneSize() {
    UnitFeed feed = feed(0.06, 0.01);
    for (double level : new double[] {0.08, 0.15, 0.4}) {
      ChannelFlow flow = reach(level).flow(feed.mixtureM3ps(), 0);
      List<Double> shares = reach(level).retained(feed, GrainCurves.of(feed), flow, Outlook.LIKELY);
      for (int i = 0; i < SIZES.size(); i++) {
        int parts = 2000;
        List<GrainRange> grains = new ArrayList<>();
        List<Double> equal = new ArrayList<>();
        double ratio = SIZES.get(i).highM() / SIZES.get(i).lowM();
        for (int k = 0; k < parts; k++) {
          double size = SIZES.get(i).lowM() * Math.pow(ratio, (k + 0.5) / parts);
          grains.add(new GrainRange(size, size));
          equal.add(1.0 / parts);
        }
        UnitFeed fine = feed(0.06, 0.01, WATER, grains, equal, 1);
        double mean =
            reach(level).retained(fine, GrainCurves.of(fine), flow, Outlook.LIKELY).stream()
                .mapToDouble(Double::doubleValue)
                .average()
                .orElseThrow();
        assertThat(shares.get(i)).isEqualTo(mean, within(0.003));
      }
    }
  }

  @Test
  void clearLiquidFillsNothing() {
    LaneResult result = uniform(feed(0.06, 0));
    assertThat(result.sandKgPs()).isZero();
    assertThat(result.cycle().likely().intervalS()).isEmpty();
  }

  @Test
  void aLaneOfThickLiquidIsReportedAsNotTurbulent() {
    UnitFeed thick = feed(0.01, 0.01, new Liquid(1010, 0.5), SIZES, SHARES, 1);
    // The finding on the lane asks this bound of the Reynolds number.
    assertThat(uniform(thick).reynoldsNumber()).isLessThan(ChannelFlow.TURBULENT.low());
    assertThat(uniform(feed(0.06, 0.01)).reynoldsNumber())
        .isGreaterThan(ChannelFlow.TURBULENT.low());
    assertThat(uniform(feed(0.06, 0.01)).excesses()).isEmpty();
  }

  @Test
  void anInletThatSpoilsTheStartCostsArea() {
    LaneReach spoilt = new LaneReach(CHANNEL, 60, OptionalDouble.empty(), 0.15, 0.7);
    LaneReach shorter = new LaneReach(CHANNEL, 42, OptionalDouble.empty(), 0.15, 1);
    UnitFeed feed = feed(0.3, 0.01);
    assertThat(evaluate(spoilt, feed).classes().get(0).capture().campDobbins())
        .isEqualTo(evaluate(shorter, feed).classes().get(0).capture().campDobbins(), within(1e-12));
  }

  @Test
  void nonsenseIsRefusedByNameAndValue() {
    OptionalDouble free = OptionalDouble.empty();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneReach(CHANNEL, -1, free, 0.1, 1))
        .withMessageContaining("length")
        .withMessageContaining("-1");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneReach(CHANNEL, 60, OptionalDouble.of(0), 0.1, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneReach(CHANNEL, 60, free, Double.NaN, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new LaneReach(CHANNEL, 60, free, 0.1, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new LaneReach(new OpenChannel(3.6, 0, 0.015), 60, free, 0.1, 1))
        .withMessageContaining("level floor");
    assertThatIllegalArgumentException().isThrownBy(() -> new GrainRange(2e-3, 1e-3));
    assertThatIllegalArgumentException().isThrownBy(() -> new GrainRange(0, 1e-3));
  }
}
