package sandslurry.separation.lane;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.channel.OpenChannel;

class SettlingLaneProperties {
  private static final List<ToDoubleFunction<CaptureBand>> BAND =
      List.of(CaptureBand::ideal, CaptureBand::campDobbins, CaptureBand::vetter);

  private static LaneReach lane(double width, double length, double depth) {
    return new LaneReach(
        new OpenChannel(width, 0, 0.015), length, OptionalDouble.of(depth), 0.1, 1);
  }

  private static UnitFeed feed(double flow, double viscosity, double fraction, double... sizes) {
    return new UnitFeed(
        flow * (1 - fraction),
        new Liquid(1000, viscosity),
        0,
        0,
        0,
        2650,
        GrainShape.NATURAL,
        DoubleStream.of(sizes).mapToObj(size -> new GrainRange(size, size)).toList(),
        DoubleStream.of(sizes).mapToObj(size -> flow * fraction * 2650 / sizes.length).toList(),
        1,
        0);
  }

  private static CaptureBand capture(LaneReach lane, UnitFeed feed) {
    return CaptureBand.of(
        lane.basin(lane.flow(feed.mixtureM3ps(), 0)),
        feed.hinderedVelocityMps(feed.sizes().get(0).meanM()).value());
  }

  @Property(tries = 200)
  void aLongerOrWiderLaneAndACoarserSandCatchMore(
      @ForAll @DoubleRange(min = 0.5, max = 10) double width,
      @ForAll @DoubleRange(min = 1, max = 200) double length,
      @ForAll @DoubleRange(min = 0.02, max = 2) double depth,
      @ForAll @Scale(7) @DoubleRange(min = 0.001, max = 2) double flow,
      @ForAll @Scale(7) @DoubleRange(min = 1e-5, max = 3e-3) double size,
      @ForAll @Scale(7) @DoubleRange(min = 0.5e-3, max = 0.05) double viscosity) {
    UnitFeed feed = feed(flow, viscosity, 0.02, size);
    CaptureBand base = capture(lane(width, length, depth), feed);
    CaptureBand longer = capture(lane(width, 1.1 * length, depth), feed);
    CaptureBand wider = capture(lane(1.1 * width, length, depth), feed);
    CaptureBand coarser =
        capture(lane(width, length, depth), feed(flow, viscosity, 0.02, 1.1 * size));
    for (ToDoubleFunction<CaptureBand> relation : BAND) {
      double caught = relation.applyAsDouble(base);
      assertThat(caught).isBetween(0.0, 1.0);
      assertThat(relation.applyAsDouble(longer)).isGreaterThanOrEqualTo(caught - 1e-12);
      assertThat(relation.applyAsDouble(wider)).isGreaterThanOrEqualTo(caught - 1e-12);
      assertThat(relation.applyAsDouble(coarser)).isGreaterThanOrEqualTo(caught - 1e-12);
    }
    assertThat(base.vetter()).isLessThanOrEqualTo(base.campDobbins());
    assertThat(base.campDobbins()).isLessThanOrEqualTo(base.ideal());
  }

  @Property(tries = 60)
  void theOutlooksBoundEachOtherAndTheBandOfASizeIsThatOfItsClasses(
      @ForAll @Scale(7) @DoubleRange(min = 0.005, max = 0.5) double flow,
      @ForAll @Scale(7) @DoubleRange(min = 0.03, max = 1) double depth,
      @ForAll @Scale(7) @DoubleRange(min = 0.7e-3, max = 0.02) double viscosity) {
    UnitFeed single = feed(flow, viscosity, 0.01, 2e-4);
    UnitFeed feed =
        new UnitFeed(
            single.liquidM3ps(),
            single.liquid(),
            0,
            0,
            0,
            2650,
            GrainShape.NATURAL,
            List.of(new GrainRange(1e-4, 2e-4), new GrainRange(2e-4, 1e-3)),
            List.of(flow * 13.25, flow * 13.25),
            1,
            0);
    for (KeptClass kept : KeptClass.of(List.of(lane(3, 40, depth)), List.of(0.0), feed)) {
      assertThat(kept.cautious()).isBetween(0.0, kept.likely() + 1e-9);
      assertThat(kept.likely()).isLessThanOrEqualTo(kept.hopeful() + 1e-9);
      assertThat(kept.hopeful()).isLessThanOrEqualTo(1);
    }
  }

  @Property(tries = 60)
  void everyNumberIsFiniteForLanesOfAnySize(
      @ForAll @DoubleRange(min = -3, max = 4) double logWidth,
      @ForAll @DoubleRange(min = -2, max = 6) double logLength,
      @ForAll @DoubleRange(min = -6, max = 3) double logDepth,
      @ForAll @DoubleRange(min = -7, max = 4) double logFlow,
      @ForAll @DoubleRange(min = -4, max = 2) double logViscosity,
      @ForAll @DoubleRange(min = 0.01, max = 0.5) double fraction) {
    UnitFeed feed =
        feed(Math.pow(10, logFlow), Math.pow(10, logViscosity), fraction, 1e-6, 1e-4, 1e-3, 1e-2);
    LaneResult result =
        new SettlingLane(
                lane(Math.pow(10, logWidth), Math.pow(10, logLength), Math.pow(10, logDepth)), 0.4)
            .evaluate(feed, OrganicMatter.FEEDLOT, 0.5);
    assertThat(
            List.of(
                result.flow().velocityMps(),
                result.flow().froudeNumber(),
                result.flow().shearVelocityMps(),
                result.flow().darcyFrictionFactor(),
                result.flow().frictionSlope(),
                result.reynoldsNumber(),
                result.residenceTimeS(),
                result.basin().overflowVelocityMps(),
                result.caughtHalf().idealM(),
                result.caughtHalf().campDobbinsM(),
                result.caughtHalf().vetterM(),
                result.caughtMost().idealM(),
                result.caughtMost().campDobbinsM(),
                result.caughtMost().vetterM(),
                result.storageKg()))
        .allMatch(value -> Double.isFinite(value) && value > 0);
    for (LaneClass one : result.classes()) {
      assertThat(
              List.of(
                  one.settlingVelocityMps(),
                  one.hinderedVelocityMps(),
                  one.fallTimeS(),
                  one.stokesFallTimeS(),
                  one.suspensionRatio(),
                  one.campScourMps(),
                  one.shieldsScourMps()))
          .allMatch(value -> Double.isFinite(value) && value > 0);
    }
  }
}
