package sandslurry.separation.screen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.UnitFeed;

/** A screen with its balance worked by hand. */
class CakeByHandTest {
  private static final double FINE = 0.1e-3;
  private static final double COARSE = 0.8e-3;

  /** 10 kg/s of liquor, 1 % each of fines and dissolved matter, 0.1 kg/s of fibre, two sands. */
  private static UnitFeed feed(double liquidKgps) {
    return new UnitFeed(
        liquidKgps / 1000,
        new Liquid(1000, 1e-3),
        0.01,
        0.01,
        0.1,
        2650,
        GrainShape.NATURAL,
        List.of(new GrainRange(FINE, FINE), new GrainRange(COARSE, COARSE)),
        List.of(0.05, 0.2),
        1,
        0);
  }

  private static final CakeSeparator SCREEN =
      new CakeSeparator(OptionalDouble.of(0.5e-3), 0.4, 0.1, 0.25);

  /**
   * Caught D = 0.04 of fibre, 0.01 of fines, 0.2 of sand; with F = 0.05 of fine sand and L = 9.99
   * of liquor that holds 0.19 the share x of both that wets the cake is 0.25 · 0.75/(0.25 · 10.04 −
   * 0.05 − 0.19) = 0.0825991.
   */
  @Test
  void theCakeIsAsDryAsItIsToBe() {
    CakeSeparator.CakeResult result = SCREEN.evaluate(feed(10));
    double x = 0.1875 / 2.27;
    assertThat(result.partition().water()).isCloseTo(x, within(1e-12));
    assertThat(result.partition().dissolved()).isCloseTo(x, within(1e-12));
    assertThat(result.partition().fines()).isCloseTo(0.1 + 0.9 * x, within(1e-12));
    assertThat(result.partition().fibre()).isEqualTo(0.4);
    assertThat(result.partition().sand().get(0)).isCloseTo(x, within(1e-12));
    assertThat(result.partition().sand().get(1)).isEqualTo(1);
    assertThat(result.cakeKgps()).isCloseTo(0.25 + x * 10.04, within(1e-12));
    assertThat(result.solids()).isCloseTo(0.25, within(1e-12));
    assertThat(result.asAsked()).isTrue();
  }

  /**
   * 0.2 kg/s of liquor is less than 0.25 kg/s of dry matter take: all of it stays, and the fibre.
   */
  @Test
  void aFeedThickerThanTheCakeStaysWhole() {
    CakeSeparator.CakeResult result = SCREEN.evaluate(feed(0.2));
    assertThat(result.partition().water()).isEqualTo(1);
    assertThat(result.partition().fibre()).isEqualTo(1);
    assertThat(result.partition().sand()).containsExactly(1.0, 1.0);
    assertThat(result.cakeKgps()).isCloseTo(0.2 + 0.1 + 0.25, within(1e-12));
    assertThat(result.solids()).isCloseTo((0.004 + 0.35) / 0.55, within(1e-12));
    assertThat(result.asAsked()).isFalse();
  }

  @Test
  void aGrainAsWideAsTheOpeningPasses() {
    CakeSeparator screen = new CakeSeparator(OptionalDouble.of(COARSE), 0, 0, 0.25);
    CakeSeparator.CakeResult none = screen.evaluate(feed(10));
    assertThat(none.partition().sand()).containsOnly(0.0);
    assertThat(none.cakeKgps()).isZero();
    assertThat(none.asAsked()).isTrue();
    CakeSeparator without = new CakeSeparator(OptionalDouble.empty(), 0, 0, 0.25);
    assertThat(without.evaluate(feed(10)).partition().sand()).containsOnly(0.0);
  }
}
