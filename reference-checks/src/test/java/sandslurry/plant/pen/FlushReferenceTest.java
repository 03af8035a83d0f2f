package sandslurry.plant.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static sandslurry.outside.Ours.ours;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Water;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.unit.LiquorModel;
import sandslurry.plant.unit.SettlingFloor;
import sandslurry.separation.channel.OpenChannel;
import sandslurry.units.Measure;

/** Flushes of alleys, and sand that settles in a pit. */
class FlushReferenceTest {
  private static final double FOOT = Measure.LENGTH.entry("ft").toSi(1);
  private static final double GALLON = Measure.VOLUME.entry("gal").toSi(1);
  private static final Liquid WATER =
      new Liquid(Water.densityKgM3(293.15), Water.viscosityPaS(293.15));

  private static OpenChannel alley(double widthFt, double slope) {
    return new OpenChannel(widthFt * FOOT, slope, Flush.ALLEY_MANNING);
  }

  @ParameterizedTest(name = "{0} ft")
  @CsvSource({
    // University of Missouri Extension WQ313 (read): 5 ft/s and 3 in deep are what a slope of 3 %
    // gives; alleys 7 to 10 ft wide with stalls only, 12 to 16 ft at the feed, holding pens 20 to
    // 30 ft. WQ314 (read): Manning's formula with n = 0.02. Printed to one digit: 3 %.
    "7",
    "10",
    "12",
    "16",
    "20",
    "30"
  })
  void threePerCentGivesTheFlushOfPracticeInAlleysOfEveryWidth(double widthFt) {
    Flush flush = new Flush(alley(widthFt, 0.03), 0.25 * FOOT, 10);
    ours(flush.velocityMps() / FOOT).isCloseTo(5, withinPercentage(3));
    ours(flush.slopeFor(5 * FOOT)).isCloseTo(0.03, withinPercentage(6));
    // WQ308 (read): flushed floors usually slope at 2 to 5 %.
    ours(flush.slopeFor(5 * FOOT)).isBetween(0.02, 0.05);
  }

  @Test
  void aTankLetOutAtTheRateOfPracticeRunsAsDeepAndAsLong() {
    // WQ314 (read): V = 1.49/n (W D/(W + 2 D))^(2/3) S^(1/2). With W = 12 ft, D = 0.25 ft, n =
    // 0.02,
    // S = 0.0302: 4.997 ft/s, so 14.99 ft3/s (6728 gpm) and 149.9 ft3 (1121 gal) in 10 s: worked
    // with its constant 1.49 and four digits.
    Flush flush = Flush.released(alley(12, 0.0302), 1121 * GALLON, 14.99 * FOOT * FOOT * FOOT);
    ours(flush.depthM() / FOOT).isCloseTo(0.25, withinPercentage(0.3));
    ours(flush.velocityMps() / FOOT).isCloseTo(4.997, withinPercentage(0.3));
    ours(flush.durationS()).isCloseTo(10, withinPercentage(0.3));
  }

  @Test
  void theWaveOfATypicalFlushIsAHundredAndFiftyFeetLong() {
    // Animal Image Gallery, image 1115 (caption read): a wave about 150 ft long, 3 in deep, moving
    // about 5 ft/s. So the valve is open for half a minute. Tolerance: 1.49 beside 1.486 and
    // rounding.
    Flush flush = new Flush(alley(12, 0.0302), 0.25 * FOOT, 30);
    ours(flush.waveM() / FOOT).isCloseTo(150, withinPercentage(1));
  }

  @Test
  void aFlushOfPracticeTakesMoreThanFiftyGallonsAFootOfWidthInADay() {
    // Purdue University Extension PIH-95 (read): flushing often requires over 50 gal a foot of
    // gutter width and day. One flush of 5 ft/s, 3 in and 10 s takes 94.
    Flush flush = new Flush(alley(1, 0.03), 0.25 * FOOT, 10);
    double perFoot = flush.alley().widthM() * flush.depthM() * 5 * FOOT * 10 / GALLON;
    assertThat(perFoot).isGreaterThan(50).isCloseTo(93.5, within(0.1));
  }

  @Test
  void theFlushThatRemovedConcreteSandMovesItsCoarsestGrains() {
    // Fulhage (2003), ASAE 701P1203 (abstract read): 5.2 ft/s (1.6 m/s) in the widest alley removed
    // concrete sand acceptably. Coarsest grains of ASTM C33: 9.5 mm. Tolerance: half a digit.
    Flush flush = new Flush(alley(16, 0.03), 0.25 * FOOT, 10);
    OpenChannel steep = alley(16, flush.slopeFor(5.2 * FOOT));
    Flush fast = new Flush(steep, 0.25 * FOOT, 10);
    ours(fast.velocityMps()).isCloseTo(1.6, within(0.05));
    Grain stone = new Grain(9.5e-3, 2650, GrainShape.NATURAL);
    assertThat(fast.stressPa(WATER.densityKgM3()))
        .isGreaterThan(Flush.movingStressPa(stone, WATER));
  }

  @Test
  void theStressThatMovesAPebbleLiesInTheRangeOfEightDecadesOfStudies() {
    // Buffington and Montgomery (1997), Water Resources Research 33:1993 (abstract read): 0.030 to
    // 0.073 by sight, 0.052 to 0.086 by reference transport, in rough flow.
    Grain pebble = new Grain(9.5e-3, 2650, GrainShape.NATURAL);
    double shields =
        Flush.movingStressPa(pebble, WATER)
            / ((2650 - WATER.densityKgM3()) * 9.80665 * pebble.diameterM());
    ours(shields).isBetween(0.030, 0.073);
    ours(shields).isBetween(0.052, 0.086);
  }

  @Test
  void theFallNumberOfAPitIsTheRemovalOfAnIdealBasin() {
    // A problem of environmental engineering with its answer (read on a tutoring page): grains of
    // 0.01 mm and specific gravity 2.65, basin of 900 m2, 80,000 m3/d of water at 20 C: the ideal
    // basin removes 8.7 %. The mixed pit keeps y/(1 + y) of that: 8.0 %. Tolerance: digits.
    Constituents silt =
        new Constituents(998.2, 1450, 2650, List.of(new SizeClass(1e-5, 1e-5, 1e-5, 1)), 0);
    SettlingFloor floor =
        new SettlingFloor(
            "settled", 900, 0.4, new LiquorModel(293.15, GrainShape.NATURAL, 1), Optional.empty());
    double flow = Measure.FLOW.entry("m3/d").toSi(80_000);
    Stream feed = silt.water(998.2 * flow).plus(silt.deliveredSand(1e-6));
    double y = floor.fallingM3ps(feed)[0] / feed.volumeM3ps();
    ours(y).isCloseTo(0.087, within(0.001));
    ours(floor.kept(feed, feed)[Constituents.SAND]).isCloseTo(y / (1 + y), within(1e-6));
    // Hazen (1904), Transactions ASCE 53:45, one basin (from memory, unverified): half is kept when
    // the fall number is 1.
    Stream slow = feed.times(y);
    ours(floor.kept(slow, slow)[Constituents.SAND]).isCloseTo(0.5, within(1e-3));
  }
}
