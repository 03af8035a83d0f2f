package sandslurry.separation.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SizeClass;
import sandslurry.separation.LaneFeed;
import sandslurry.separation.capture.CaptureBand;
import sandslurry.separation.channel.OpenChannel;

class SettlingLaneProperties {
  private static final List<ToDoubleFunction<CaptureBand>> BAND =
      List.of(CaptureBand::ideal, CaptureBand::campDobbins, CaptureBand::vetter);

  private static SettlingLane lane(double width, double length, double depth) {
    return new SettlingLane(
        new OpenChannel(width, 0.002, 0.015), length, OptionalDouble.of(depth), 0.1, 0.4, 1);
  }

  private static LaneFeed feed(double flow, double viscosity, double fraction, double... sizes) {
    List<SizeClass> classes = new ArrayList<>();
    for (double size : sizes) {
      classes.add(new SizeClass(size, size, size, 1.0 / sizes.length));
    }
    return new LaneFeed(
        flow, 0.5, new Liquid(1000, viscosity), fraction, 2650, GrainShape.NATURAL, classes, 1);
  }

  @Property
  void sandCaughtClassByClassIsTheSandCaught(
      @ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = 0.01, max = 1) Double> weights,
      @ForAll @Scale(7) @DoubleRange(min = 0.001, max = 2) double flow,
      @ForAll @DoubleRange(min = 0, max = 0.3) double fraction) {
    double sum = weights.stream().mapToDouble(Double::doubleValue).sum();
    List<SizeClass> classes = new ArrayList<>();
    double size = 0.05e-3;
    for (double weight : weights) {
      classes.add(new SizeClass(size, 1.5 * size, 1.2 * size, weight / sum));
      size *= 1.5;
    }
    LaneFeed feed =
        new LaneFeed(
            flow, 0.3, new Liquid(1005, 2e-3), fraction, 2650, GrainShape.NATURAL, classes, 1);
    LaneResult result = lane(3, 40, 0.3).evaluate(feed);
    double scale = result.sandKgPs() + 1e-300;
    double sand = result.classes().stream().mapToDouble(LaneClass::sandKgPs).sum();
    assertThat(sand / scale).isEqualTo(result.sandKgPs() / scale, within(1e-12));
    for (ToDoubleFunction<CaptureBand> relation : BAND) {
      double caught =
          result.classes().stream()
              .mapToDouble(c -> c.sandKgPs() * relation.applyAsDouble(c.capture()))
              .sum();
      double kept =
          result.classes().stream()
              .mapToDouble(c -> c.sandKgPs() * relation.applyAsDouble(c.retained()))
              .sum();
      assertThat(caught / scale)
          .isEqualTo(
              result.depositedKgPs(relation.applyAsDouble(result.capture())) / scale,
              within(1e-12));
      assertThat(kept / scale)
          .isEqualTo(
              result.depositedKgPs(relation.applyAsDouble(result.retained())) / scale,
              within(1e-12));
      assertThat(kept).isLessThanOrEqualTo(caught);
    }
  }

  @Property
  void aLongerOrWiderLaneAndACoarserSandCatchMore(
      @ForAll @DoubleRange(min = 0.5, max = 10) double width,
      @ForAll @DoubleRange(min = 1, max = 200) double length,
      @ForAll @DoubleRange(min = 0.02, max = 2) double depth,
      @ForAll @Scale(7) @DoubleRange(min = 0.001, max = 2) double flow,
      @ForAll @Scale(7) @DoubleRange(min = 1e-5, max = 3e-3) double size,
      @ForAll @Scale(7) @DoubleRange(min = 0.5e-3, max = 0.05) double viscosity) {
    LaneFeed feed = feed(flow, viscosity, 0.02, size);
    CaptureBand base = lane(width, length, depth).evaluate(feed).capture();
    CaptureBand longer = lane(width, 1.1 * length, depth).evaluate(feed).capture();
    CaptureBand wider = lane(1.1 * width, length, depth).evaluate(feed).capture();
    CaptureBand coarser =
        lane(width, length, depth).evaluate(feed(flow, viscosity, 0.02, 1.1 * size)).capture();
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

  @Property
  void everyNumberIsFiniteForLanesOfAnySize(
      @ForAll @DoubleRange(min = -3, max = 4) double logWidth,
      @ForAll @DoubleRange(min = -2, max = 6) double logLength,
      @ForAll @DoubleRange(min = -6, max = 3) double logDepth,
      @ForAll @DoubleRange(min = -7, max = 4) double logFlow,
      @ForAll @DoubleRange(min = -4, max = 2) double logViscosity,
      @ForAll @DoubleRange(min = 0, max = 0.5) double fraction) {
    LaneFeed feed =
        feed(Math.pow(10, logFlow), Math.pow(10, logViscosity), fraction, 1e-6, 1e-4, 1e-3, 1e-2);
    LaneResult result =
        lane(Math.pow(10, logWidth), Math.pow(10, logLength), Math.pow(10, logDepth))
            .evaluate(feed);
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
                result.largestScouredM(),
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
