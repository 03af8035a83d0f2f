package sandslurry.separation.cyclone;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.UnitFeed;

/** What goes into a hydrocyclone comes out of it, above or below. */
class CycloneBalanceTest {
  private static final Liquid WATER = new Liquid(1000, 1e-3);
  private static final List<Double> SIZES = List.of(0.1e-3, 0.2e-3, 0.4e-3, 0.8e-3);
  private static final Hydrocyclone ONE =
      new Hydrocyclone(HydrocycloneGeometry.rietema(0.15, 0.05), 1);

  private static UnitFeed feed(double liquidM3ps, List<Double> sizes, List<Double> sandKgps) {
    return new UnitFeed(
        liquidM3ps,
        WATER,
        0,
        0,
        0,
        2650,
        GrainShape.NATURAL,
        sizes.stream().map(size -> new GrainRange(size, size)).toList(),
        sandKgps,
        1,
        0);
  }

  private static CycloneResult of(Double... sandKgps) {
    return ONE.evaluate(feed(0.005, SIZES, List.of(sandKgps)), HydrocycloneModels.DEFAULT);
  }

  /** 1.2 kg/s of sand of 2650 kg/m3 are 0.45283 L/s, with 5 L/s of water 8.3045 % of the volume. */
  @Test
  void sandAndWaterOfTheFeedLeaveAboveOrBelow() {
    CycloneResult result = of(0.3, 0.3, 0.3, 0.3);
    double sand = 0.45283 / 5.45283;
    double below = result.performance().underflowShare();
    assertThat(result.packed()).isFalse();
    assertThat(result.underflowSand() * below + result.overflowSand() * (1 - below))
        .isCloseTo(sand, within(1e-6));
    assertThat(result.partition().water() * (1 - sand) + result.underflowSand() * below)
        .isCloseTo(below, within(1e-6));
    // What does not go with the water is sorted: the same share of each size, y apart.
    double free = 1 - result.partition().sand().get(0);
    double sorted = 1 - result.performance().correctedPartition(SIZES.get(0));
    for (int i = 1; i < SIZES.size(); i++) {
      assertThat(1 - result.partition().sand().get(i))
          .isCloseTo(
              free / sorted * (1 - result.performance().correctedPartition(SIZES.get(i))),
              within(1e-9));
    }
  }

  /** Mixture of 1000 + 1650 · 0.083045 = 1137.02 kg/m3. */
  @Test
  void thePumpGivesTheFlowItsPressure() {
    CycloneResult result = of(0.3, 0.3, 0.3, 0.3);
    double pressure = result.performance().pressureDropPa();
    assertThat(pressure).isPositive();
    assertThat(result.hydraulicPowerW()).isCloseTo(pressure * 5.45283e-3, withinPercentage(1e-3));
    assertThat(result.headM()).isCloseTo(pressure / (1137.02 * 9.80665), withinPercentage(1e-3));
  }

  @Test
  void twiceAsManyCyclonesDoTheSameWithTwiceTheFeed() {
    CycloneResult one = of(0.3, 0.3, 0.3, 0.3);
    CycloneResult two =
        new Hydrocyclone(ONE.geometry(), 2)
            .evaluate(feed(0.01, SIZES, List.of(0.6, 0.6, 0.6, 0.6)), HydrocycloneModels.DEFAULT);
    assertThat(two.partition()).isEqualTo(one.partition());
    assertThat(two.headM()).isCloseTo(one.headM(), withinPercentage(1e-9));
    assertThat(two.hydraulicPowerW()).isCloseTo(2 * one.hydraulicPowerW(), withinPercentage(1e-9));
  }

  /** Nearly all of this sand is caught: the median of the underflow is that of the feed. */
  @Test
  void theMedianOfTheUnderflowIsWorkedByHand() {
    assertThat(of(0.0, 0.0, 0.0, 0.3).underflowMedianM()).isCloseTo(0.8e-3, within(1e-9));
    // Equal masses of two sizes: midway by their logarithms.
    assertThat(of(0.0, 0.0, 0.3, 0.3).underflowMedianM())
        .isCloseTo(Math.sqrt(0.4 * 0.8) * 1e-3, withinPercentage(1));
    assertThat(of(0.0, 0.1, 0.1, 0.1).underflowMedianM()).isCloseTo(0.4e-3, withinPercentage(3));
    // Half of 0.4 kg/s lies a third of the way from the middle of 0.4 mm to that of 0.8 mm.
    assertThat(of(0.0, 0.1, 0.1, 0.2).underflowMedianM())
        .isCloseTo(Math.cbrt(2) * 0.4e-3, withinPercentage(3));
    assertThat(of(0.0, 0.0, 0.0, 0.0).underflowMedianM()).isZero();
  }

  @Test
  void theOrderInWhichTheSizesAreGivenDoesNotMatter() {
    CycloneResult turned =
        ONE.evaluate(
            feed(0.005, List.of(0.8e-3, 0.2e-3, 0.4e-3), List.of(0.2, 0.1, 0.1)),
            HydrocycloneModels.DEFAULT);
    assertThat(turned.underflowMedianM())
        .isCloseTo(of(0.0, 0.1, 0.1, 0.2).underflowMedianM(), withinPercentage(1e-6));
  }
}
