package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.pipe.Bore;

class StoppedLineProperties {
  private static final Bore BORE = new Bore(0.154, 1e-4);

  private static StoppedLine line(double fraction) {
    return new StoppedLine(BORE, 90, fraction, 0.6);
  }

  @Property
  void theBedHoldsExactlyTheSandThatWasAfloat(
      @ForAll @DoubleRange(min = 0, max = 0.6) @Scale(8) double fraction) {
    StoppedLine line = line(fraction);
    double inBed = line.bed().areaM2() * 90 * 0.6 * 2650;
    assertThat(inBed).isCloseTo(line.sandMassKg(2650), within(1e-7 * 90 * 50));
  }

  @Property
  void moreSandLiesHigherSettlesSoonerOnItsBedAndTakesMorePressure(
      @ForAll @DoubleRange(min = 1e-4, max = 0.29) @Scale(8) double fraction) {
    StoppedLine little = line(fraction);
    StoppedLine much = line(2 * fraction);
    assertThat(much.bed().depthM()).isGreaterThan(little.bed().depthM());
    assertThat(much.settlingTimeS(0.03).orElseThrow())
        .isLessThan(little.settlingTimeS(0.03).orElseThrow());
    assertThat(much.restart(2650, 1010, 1e-3, 0, 0).slidingBedPa())
        .isGreaterThan(little.restart(2650, 1010, 1e-3, 0, 0).slidingBedPa());
    assertThat(much.slideAngleRad(0.4)).isGreaterThan(little.slideAngleRad(0.4));
  }

  @Property
  void theEstimatesOfRestartAreInOrder(
      @ForAll @DoubleRange(min = 0, max = 0.6) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 0, max = 60) @Scale(8) double yield,
      @ForAll @DoubleRange(min = 0, max = 90) @Scale(8) double plug) {
    StoppedLine.Restart restart = line(fraction).restart(2650, 1010, 1e-3, yield, plug);
    assertThat(restart.lowPa()).isFinite().isNotNegative();
    // A long plug may wedge beyond any pump; where it does not, the ends are in order.
    assertThat(restart.highPa().orElse(1e12))
        .isFinite()
        .isGreaterThanOrEqualTo(2 * restart.lowPa());
  }

  @Property
  void theSlideAngleOfAThinBedTendsToThatOfAGrainAndIsContinuous(
      @ForAll @DoubleRange(min = 1e-12, max = 1e-9) @Scale(14) double fraction) {
    assertThat(Math.tan(line(fraction).slideAngleRad(0.4))).isCloseTo(0.4, within(1e-5));
  }

  @Example
  void aFullPipeOfSandBearsWithTwiceItsWeight() {
    StoppedLine full = line(0.6);
    assertThat(full.bed().depthShare()).isEqualTo(1);
    assertThat(Math.tan(full.slideAngleRad(0.4))).isCloseTo(0.8, within(1e-12));
    assertThat(full.restart(2650, 1010, 1e-3, 0, 90).plugPa())
        .isCloseTo(full.restart(2650, 1010, 1e-3, 0, 0).slidingBedPa(), within(1e-6));
    assertThat(full.plugLengthM(12)).isEqualTo(12);
  }

  @Example
  void clearLiquidLeavesNothingAndRestartsAtItsYieldStress() {
    StoppedLine clear = line(0);
    assertThat(clear.sandMassKg(2650)).isZero();
    assertThat(clear.bed().depthM()).isZero();
    StoppedLine.Restart restart = clear.restart(2650, 1010, 1e-3, 30, 0);
    assertThat(restart.slidingBedPa()).isZero();
    assertThat(restart.yieldPa()).isCloseTo(4 * 30 / 0.154 * 90, within(1e-9));
    assertThat(clear.settlingTimeS(0)).isEmpty();
  }

  @Example
  void aFlushTakesItsVolumesAtTheClearingVelocity() {
    StoppedLine.Flush flush = line(0.1).flush(2, 3);
    assertThat(flush.volumeM3()).isCloseTo(3 * line(0.1).lineVolumeM3(), within(1e-12));
    assertThat(flush.timeS()).isCloseTo(3 * 90 / 2.0, within(1e-9));
    assertThat(flush.givenBy(flush.flowM3ps(), flush.volumeM3())).isTrue();
    assertThat(flush.givenBy(0.9 * flush.flowM3ps(), flush.volumeM3())).isFalse();
    assertThat(flush.givenBy(flush.flowM3ps(), 0.9 * flush.volumeM3())).isFalse();
    assertThat(flush.givenBy(Double.NaN, 1e9)).isFalse();
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> line(0.61)).hasMessageContaining("0.61");
    assertThatThrownBy(() -> line(0.1).settlingTimeS(-1)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> line(0.1).restart(2650, 1010, 1e-3, 0, 91))
        .hasMessageContaining("91.0");
    assertThatThrownBy(() -> line(0.1).flush(0, 2)).hasMessageContaining("0.0 m/s");
  }
}
