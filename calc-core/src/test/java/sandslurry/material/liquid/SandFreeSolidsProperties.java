package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Sand in a sample does not change what the laboratory value says of the manure. */
class SandFreeSolidsProperties {
  @Property(tries = 200)
  void sandAddedToASampleNeverChangesTheResult(
      @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 0.13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 3) double sandKgPerKg) {
    // One kilogram of manure without sand, weighed again with the sand.
    double sample = 1 + sandKgPerKg;
    double total = (solids + sandKgPerKg) / sample;
    assertThat(SandFreeSolids.fromSand(total, sandKgPerKg / sample))
        .isCloseTo(solids, within(1e-12));
    double volatileSolids = SandFreeSolids.VOLATILE_SHARE * solids / sample;
    assertThat(SandFreeSolids.fromVolatileSolids(total, volatileSolids))
        .isCloseTo(solids, within(1e-12));
  }

  @Property(tries = 100)
  void dryMatterWaterAndSandAddUpToTheSample(
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 0.6) double total,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double shareOfSand) {
    double sand = shareOfSand * total;
    double free = SandFreeSolids.fromSand(total, sand);
    double water = 1 - total;
    assertThat(free).isBetween(0.0, total + 1e-15);
    assertThat(free * (1 - sand) + sand + water).isCloseTo(1, within(1e-12));
  }

  @Example
  void aWholeSampleOfExcretedManureWithAThirdOfItsMassInSand() {
    // 148 lb of manure with 19 lb of dry matter and 50 lb of sand, weighed together.
    assertThat(SandFreeSolids.fromSand(69.0 / 198, 50.0 / 198))
        .isCloseTo(19.0 / 148, within(1e-12));
  }

  @Example
  void moreSandThanDryMatterOrMoreVolatileThanManureHasIsRefused() {
    assertThatThrownBy(() -> SandFreeSolids.fromSand(0.2, 0.21))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SandFreeSolids.fromSand(1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SandFreeSolids.fromSand(Double.NaN, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> SandFreeSolids.fromVolatileSolids(0.1, 0.086))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
