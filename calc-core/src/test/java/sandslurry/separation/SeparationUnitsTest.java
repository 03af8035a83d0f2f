package sandslurry.separation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.box.BoxResult;
import sandslurry.separation.box.BoxSand;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.box.SandStack;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.separation.cyclone.Arterburn1982;
import sandslurry.separation.cyclone.Bradley1965;
import sandslurry.separation.cyclone.CycloneFeed;
import sandslurry.separation.cyclone.CyclonePerformance;
import sandslurry.separation.cyclone.CycloneResult;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneGeometry;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.cyclone.HydrocycloneModels;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.lane.LaneTurn;
import sandslurry.separation.screen.CakeSeparator;

class SeparationUnitsTest {
  private static final List<Double> SIZES = List.of(0.1e-3, 0.2e-3, 0.4e-3, 0.8e-3);
  private static final Liquid WATER = new Liquid(1000, 1e-3);

  private static UnitFeed feed(double liquidM3ps, Liquid liquid, double... sand) {
    return new UnitFeed(
        liquidM3ps,
        liquid,
        0.01,
        0.01,
        0.1,
        2650,
        GrainShape.NATURAL,
        SIZES.stream().map(size -> new GrainRange(size, size)).toList(),
        List.of(sand[0], sand[1], sand[2], sand[3]),
        1,
        0);
  }

  private static DilutionBox box(double area) {
    return new DilutionBox(area, 1.5, 1, 0.2, 0, 0.5, OptionalDouble.of(1e-3), 0.4);
  }

  @Test
  void boxWashesOutWhatRisesFasterThanItFalls() {
    // 15 mm/s: 0.1 mm falls at 7.5 mm/s, 0.2 mm at 23 mm/s.
    BoxResult result =
        box(2).evaluate(feed(0.03, WATER, 0.01, 0.01, 0.01, 0.01), OrganicMatter.FEEDLOT);
    assertThat(result.overflowVelocityMps()).isEqualTo(0.015, within(1e-4));
    List<Double> ideal = result.sand(Outlook.HOPEFUL).partition().sand();
    assertThat(ideal.get(0)).isEqualTo(0.5, within(0.05));
    assertThat(ideal.subList(1, 4)).containsOnly(1.0);
    // Organic matter at 3 mm/s is washed out: a fifth of the settleable part at the most.
    assertThat(result.sand(Outlook.HOPEFUL).partition().fibre()).isEqualTo(0.11, within(0.001));
    assertThat(result.sand(Outlook.CAUTIOUS).moisture()).isEqualTo(0.2, within(1e-12));
  }

  @Test
  void thickLiquorLosesFineSandThatThinLiquorKeeps() {
    double thin =
        box(2)
            .evaluate(feed(0.03, WATER, 0.01, 0.01, 0.01, 0.01), OrganicMatter.FEEDLOT)
            .sand(Outlook.LIKELY)
            .sandKgps();
    double thick =
        box(2)
            .evaluate(
                feed(0.03, new Liquid(1015, 0.02), 0.01, 0.01, 0.01, 0.01), OrganicMatter.FEEDLOT)
            .sand(Outlook.LIKELY)
            .sandKgps();
    assertThat(thick).isLessThan(0.75 * thin);
  }

  @Test
  void screwTooSmallForTheSandSaysSo() {
    // 3.18 kg/s of sand is 2 L/s of bulk at a porosity of 0.4.
    BoxSand sand =
        box(1000)
            .evaluate(feed(0.03, WATER, 0, 0, 0, 3.18), OrganicMatter.FEEDLOT)
            .sand(Outlook.HOPEFUL);
    assertThat(sand.screwLoad().getAsDouble()).isEqualTo(2, within(1e-9));
  }

  @Test
  void boxFedDrierThanItsSandGivesAllTheLiquorThereIs() {
    UnitFeed dry = feed(0.001, WATER, 0, 0, 0, 10);
    BoxSand sand = box(1000).evaluate(dry, OrganicMatter.FEEDLOT).sand(Outlook.HOPEFUL);
    assertThat(sand.partition().water()).isEqualTo(1);
    double water = dry.liquidKgps() * (1 - dry.liquorSolids());
    double all = dry.liquidKgps() + 10 + sand.partition().fibre() * dry.fibreKgps();
    assertThat(sand.moisture()).isEqualTo(water / all, within(1e-12));
  }

  @Test
  void modelsOfACycloneOfUsualProportionsAgreeWithinAFactorOfTwo() {
    HydrocycloneGeometry geometry = HydrocycloneGeometry.rietema(0.15, 0.03);
    CycloneFeed feed = new CycloneFeed(0.005, WATER, 0.02, 2650);
    double first = HydrocycloneModels.DEFAULT.performance(geometry, feed).cutSizeM();
    for (HydrocycloneModel model : HydrocycloneModels.FAMILY.all()) {
      CyclonePerformance one = model.performance(geometry, feed);
      assertThat(one.cutSizeM() / first).isBetween(0.5, 2.0);
      assertThat(HydrocycloneModels.FAMILY.find(model.id()).orElseThrow()).isSameAs(model);
    }
    assertThat(new Arterburn1982().cutSizeM(0.15, feed, 70e3).value() / first).isBetween(0.5, 2.0);
    // Bradley's own, narrower cyclones cut finer.
    assertThat(new Bradley1965().cutSizeM(0.15, feed, 70e3).value() / first).isBetween(0.3, 1.0);
  }

  @Test
  void cycloneRopesAndThenPacksAsItsApexIsClosed() {
    UnitFeed feed = feed(0.005, WATER, 0.3, 0.3, 0.3, 0.3);
    CycloneResult wide =
        new Hydrocyclone(HydrocycloneGeometry.rietema(0.15, 0.05), 1)
            .evaluate(feed, HydrocycloneModels.DEFAULT);
    CycloneResult narrow =
        new Hydrocyclone(HydrocycloneGeometry.rietema(0.15, 0.015), 1)
            .evaluate(feed, HydrocycloneModels.DEFAULT);
    assertThat(wide.ropes()).isFalse();
    assertThat(narrow.ropes()).isTrue();
    assertThat(narrow.packed()).isTrue();
    assertThat(narrow.underflowSand()).isEqualTo(0.6, within(1e-9));
    assertThat(narrow.partition().sandRecovery(feed)).isLessThan(0.5);
    assertThat(wide.partition().sandRecovery(feed)).isGreaterThan(0.9);
  }

  @Test
  void grainsOfTheCutSizeDivideAsHalfOfWhatDoesNotFollowTheWater() {
    UnitFeed feed = feed(0.005, WATER, 0, 0, 0, 0);
    CycloneResult clear =
        new Hydrocyclone(HydrocycloneGeometry.rietema(0.15, 0.05), 1)
            .evaluate(feed, HydrocycloneModels.DEFAULT);
    assertThat(clear.performance().correctedPartition(clear.performance().cutSizeM()))
        .isEqualTo(0.5, within(1e-12));
    assertThat(clear.partition().water())
        .isEqualTo(clear.performance().underflowShare(), within(1e-12));
    assertThat(clear.ropes()).isFalse();
  }

  @Test
  void fibreSeparatorSplitsABalanceKnownByHand() {
    // 100 kg/s of liquor with 1 % fines and 1 % dissolved, 4 kg/s of fibre, half of it caught in a
    // cake
    // of 26 % dry matter: m = 2 (1 - 0.26)/(0.26 - 0.02) = 6.1667 kg/s of liquor.
    UnitFeed feed =
        new UnitFeed(
            0.1,
            WATER,
            0.01,
            0.01,
            4,
            2650,
            GrainShape.NATURAL,
            List.of(new GrainRange(1e-4, 1e-4)),
            List.of(0.0),
            1,
            0);
    CakeSeparator.CakeResult result =
        new CakeSeparator(OptionalDouble.empty(), 0.5, 0, 0.26).evaluate(feed);
    assertThat(result.cakeKgps()).isEqualTo(2 + 2 * 0.74 / 0.24, within(1e-9));
    assertThat(result.partition().water()).isEqualTo(2 * 0.74 / 0.24 / 100, within(1e-12));
    assertThat(result.asAsked()).isTrue();
  }

  @Test
  void laneFillsAndKeepsLessAsItFills() {
    LaneReach reach =
        new LaneReach(new OpenChannel(3.6, 0.002, 0.018), 60, OptionalDouble.of(0.45), 0.4, 0.8);
    UnitFeed feed = feed(0.06, WATER, 0.2, 0.4, 0.6, 0.6);
    LaneFilling filling =
        LaneFilling.of(
            List.of(reach), feed, OrganicMatter.FEEDLOT, 0.25, 0.4, Outlook.CAUTIOUS, 0.5);
    List<LaneFilling.Point> points = filling.points();
    assertThat(filling.end()).isEqualTo(LaneFilling.End.KEEPS_TOO_LITTLE);
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).recovery()).isLessThanOrEqualTo(points.get(i - 1).recovery() + 1e-9);
      assertThat(points.get(i).velocitiesMps().get(0))
          .isGreaterThan(points.get(i - 1).velocitiesMps().get(0));
    }
    assertThat(filling.meanRecovery()).isBetween(0.9, 1.0);
    // The clean lane alone would promise a longer interval than the filling one has.
    double clean = 3.6 * 60 * 0.4 * 0.6 * 2650 / (1.8 * 0.25 * points.get(0).recovery());
    assertThat(filling.intervalS().getAsDouble()).isLessThan(clean);
  }

  @Test
  void deepLaneFillsInTheTimeItsVolumeTakes() {
    // All sand is caught to the end, so the interval is storage over feed: 60 m2 x 0.1 m x 0.6 x
    // 2650
    // kg/m3 over 0.5 kg/s for a quarter of the day.
    LaneReach reach = new LaneReach(new OpenChannel(3, 0, 0.018), 20, OptionalDouble.of(2), 0.1, 1);
    LaneFilling filling =
        LaneFilling.of(
            List.of(reach),
            feed(0.01, WATER, 0, 0, 0, 0.5),
            OrganicMatter.FEEDLOT,
            0.25,
            0.4,
            Outlook.LIKELY,
            0.5);
    assertThat(filling.end()).isEqualTo(LaneFilling.End.FULL);
    assertThat(filling.intervalS().getAsDouble())
        .isEqualTo(60 * 0.1 * 0.6 * 2650 / (0.5 * 0.25), within(1.0));
  }

  @Test
  void laneWithoutSandHasNoInterval() {
    LaneReach reach = new LaneReach(new OpenChannel(3, 0, 0.018), 20, OptionalDouble.of(1), 0.1, 1);
    LaneFilling filling =
        LaneFilling.of(
            List.of(reach),
            feed(0.01, WATER, 0, 0, 0, 0),
            OrganicMatter.FEEDLOT,
            1,
            0.4,
            Outlook.LIKELY,
            0.5);
    assertThat(filling.intervalS()).isEmpty();
    assertThat(filling.end()).isEqualTo(LaneFilling.End.NO_SAND);
    assertThat(filling.meanRecovery()).isZero();
  }

  @Test
  void aTraceOfSandThatFillsNoLaneIsKeptAsALittleIs() {
    LaneReach reach = new LaneReach(new OpenChannel(3, 0, 0.018), 20, OptionalDouble.of(1), 0.1, 1);
    List<Partition> kept =
        DoubleStream.of(1e-9, 1e-320)
            .mapToObj(
                sand ->
                    LaneFilling.mean(
                        List.of(reach),
                        feed(0.01, WATER, 0, 0, 0, sand),
                        OrganicMatter.FEEDLOT,
                        0.4,
                        Outlook.LIKELY,
                        0.5))
            .toList();
    assertThat(kept.get(1).sand().get(0)).isCloseTo(kept.get(0).sand().get(0), within(1e-3));
  }

  @Test
  void sandPassesAFullReachAndFillsTheNext() {
    LaneReach first = new LaneReach(new OpenChannel(3, 0, 0.018), 10, OptionalDouble.of(1), 0.1, 1);
    LaneFilling filling =
        LaneFilling.of(
            List.of(first, first),
            feed(0.01, WATER, 0, 0, 0, 0.5),
            OrganicMatter.FEEDLOT,
            1,
            0.4,
            Outlook.LIKELY,
            0.5);
    assertThat(filling.points().get(50).depositsM().get(0)).isEqualTo(0.05, within(1e-3));
    assertThat(filling.points().get(50).depositsM().get(1)).isLessThan(1e-3);
    assertThat(filling.end()).isEqualTo(LaneFilling.End.FULL);
  }

  @Test
  void waterOverADepositThatReachesTheWeirRunsAtItsOwnDepth() {
    LaneReach sloping =
        new LaneReach(new OpenChannel(3, 0.002, 0.018), 20, OptionalDouble.of(0.3), 0.4, 1);
    assertThat(sloping.flow(0.05, 0.3).depthM())
        .isEqualTo(sloping.channel().normalDepthM(0.05), within(1e-12));
    LaneReach level =
        new LaneReach(new OpenChannel(3, 0, 0.018), 20, OptionalDouble.of(0.3), 0.4, 1);
    assertThat(level.flow(0.05, 0.3).froudeNumber()).isEqualTo(1, within(1e-9));
  }

  @Test
  void twoLanesSufficeWhenDrainingAndDiggingTakeNoLongerThanFilling() {
    LaneTurn turn = new LaneTurn(100, 60, 40);
    assertThat(turn.lanesNeeded()).isEqualTo(2);
    assertThat(turn.waitS(2)).isZero();
    assertThat(new LaneTurn(100, 60, 41).lanesNeeded()).isEqualTo(3);
    assertThat(new LaneTurn(100, 60, 41).waitS(2)).isEqualTo(-1);
    assertThat(turn.idleShare(2)).isZero();
    // One lane: it fills for 100 s of each 200 s.
    assertThat(turn.idleShare(1)).isEqualTo(0.5);
  }

  @Test
  void windrowOfAStackHoldsItsSand() {
    SandStack stack = new SandStack(100_000, 2650, 0.4);
    double height = 1.5;
    double slope = Math.tan(SandStack.DRY_SAND_RAD);
    double volume =
        stack.windrowLengthM(height) * height * height / slope
            + Math.PI * height * height * height / (3 * slope * slope);
    assertThat(volume).isEqualTo(stack.volumeM3(), within(1e-9));
    assertThat(stack.windrowLengthM(2 * stack.coneHeightM())).isZero();
    // Finer sand drains more slowly, by the square of its size.
    assertThat(
            SandStack.permeabilityMps(0.4e-3).value() / SandStack.permeabilityMps(0.2e-3).value())
        .isEqualTo(4, within(1e-9));
    assertThat(SandStack.leastDrainTimeS(2, 0.25, 4e-4)).isEqualTo(1250, within(1e-9));
  }

  @Test
  void inputsOutOfBoundsAreNamed() {
    assertThatThrownBy(() -> feed(Double.NaN, WATER, 0, 0, 0, 0))
        .hasMessageContaining("flow of liquor");
    assertThatThrownBy(() -> feed(1, WATER, 0, -1, 0, 0)).hasMessageContaining("flow of sand");
    assertThatThrownBy(() -> new HydrocycloneGeometry(0.1, 0.2, 0.03, 0.02, 0.5))
        .hasMessageContaining("inlet");
    assertThatThrownBy(
            () -> new LaneReach(new OpenChannel(3, 0, 0.018), 20, OptionalDouble.empty(), 0.4, 1))
        .hasMessageContaining("level floor");
    assertThatThrownBy(() -> new CakeSeparator(OptionalDouble.of(0.01), 0.1, 0, 0))
        .hasMessageContaining("cake");
  }

  @Test
  void theMeanOfAFewStepsIsThatOfAHundredAndMovesEvenlyWithTheFeed() {
    LaneReach reach =
        new LaneReach(new OpenChannel(3, 0, 0.015), 40, OptionalDouble.of(0.4), 0.2, 1);
    double before = 0;
    // Fourteen times the flow, up to where the clean lane hardly keeps the half that it must.
    for (double flow = 0.02; flow < 0.29; flow *= 1.05) {
      UnitFeed feed = feed(flow, WATER, 0, 0.2, 0.4, 0.3);
      Partition mean =
          LaneFilling.mean(List.of(reach), feed, OrganicMatter.FEEDLOT, 0.4, Outlook.CAUTIOUS, 0.5);
      LaneFilling fine =
          LaneFilling.of(
              List.of(reach), feed, OrganicMatter.FEEDLOT, 1, 0.4, Outlook.CAUTIOUS, 0.5);
      double few = mean.sandRecovery(feed);
      double clean = fine.points().get(0).recovery();
      assertThat(few).isCloseTo(fine.meanRecovery(), within(0.06)).isLessThan(clean + 1e-9);
      assertThat(fine.lastRecovery()).isLessThan(clean + 1e-12);
      if (before > 0) {
        assertThat(Math.abs(few - before)).as("step at %s m3/s", flow).isLessThan(0.07);
      }
      before = few;
    }
  }

  @Test
  void aWindrowCoversItsRidgeAndTwoHalfCones() {
    SandStack stack = new SandStack(200_000, 2650, 0.4);
    double height = 1.5;
    double slope = Math.tan(SandStack.DRY_SAND_RAD);
    assertThat(stack.footWidthM(height)).isCloseTo(2 * height / slope, within(1e-9));
    double ridge = stack.footLengthM(height) - stack.footWidthM(height);
    double volume =
        ridge * height * height / slope + Math.PI * Math.pow(height, 3) / (3 * slope * slope);
    assertThat(volume).isCloseTo(stack.volumeM3(), within(1e-6));
    // A little sand is a cone, however high the windrow was to be.
    SandStack little = new SandStack(500, 2650, 0.4);
    assertThat(little.footLengthM(height)).isCloseTo(little.coneDiameterM(), within(1e-9));
  }
}
