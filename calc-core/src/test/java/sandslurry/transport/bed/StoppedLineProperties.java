package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.pipe.Bore;

class StoppedLineProperties {
  private static final Bore BORE = new Bore(0.154, 1e-4);

  private static StoppedLine line(double fraction) {
    return new StoppedLine(BORE, 90, fraction);
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
    assertThat(much.settlingTimeS(0.03)).isLessThan(little.settlingTimeS(0.03));
    assertThat(much.slidingBedPa(2650, 1010, 1e-3))
        .isGreaterThan(little.slidingBedPa(2650, 1010, 1e-3));
    assertThat(much.slideAngleRad()).isGreaterThan(little.slideAngleRad());
  }

  @Property
  void theEstimatesOfRestartAreInOrder(
      @ForAll @DoubleRange(min = 0, max = 0.6) @Scale(8) double fraction,
      @ForAll @DoubleRange(min = 0, max = 60) @Scale(8) double yield,
      @ForAll @DoubleRange(min = 0, max = 1e5) @Scale(8) double plug,
      @ForAll @DoubleRange(min = 1, max = 100) @Scale(8) double wedging) {
    StoppedLine.Restart restart =
        new StoppedLine.Restart(
            line(fraction).slidingBedPa(2650, 1010, 1e-3),
            line(fraction).yieldPa(yield),
            plug,
            OptionalDouble.of(wedging * plug));
    assertThat(restart.lowPa()).isFinite().isNotNegative();
    assertThat(restart.expectedPa()).isGreaterThanOrEqualTo(restart.lowPa());
    assertThat(restart.highPa().orElseThrow())
        .isFinite()
        .isGreaterThanOrEqualTo(2 * restart.expectedPa() - 1e-9);
  }

  /** By hand: the greatest, the sum, and twice bed and yield with the worse of both plugs. */
  @Example
  void whatARestartMayTakeIsWorkedByHand() {
    StoppedLine.Restart drags = new StoppedLine.Restart(10, 20, 30, OptionalDouble.of(40));
    assertThat(drags.lowPa()).isEqualTo(30);
    assertThat(drags.expectedPa()).isEqualTo(60);
    assertThat(drags.highPa()).hasValue(2 * 30 + 2 * 30);
    StoppedLine.Restart wedges = new StoppedLine.Restart(10, 20, 30, OptionalDouble.of(100));
    assertThat(wedges.highPa()).hasValue(2 * 30 + 100);
    assertThat(new StoppedLine.Restart(50, 20, 30, OptionalDouble.empty()).lowPa()).isEqualTo(50);
    assertThat(new StoppedLine.Restart(5, 40, 30, OptionalDouble.empty()).lowPa()).isEqualTo(40);
    assertThat(new StoppedLine.Restart(5, 4, 3, OptionalDouble.empty()).highPa()).isEmpty();
  }

  @Property
  void theSlideAngleOfAThinBedTendsToThatOfAGrainAndIsContinuous(
      @ForAll @DoubleRange(min = 1e-12, max = 1e-9) @Scale(14) double fraction) {
    assertThat(Math.tan(line(fraction).slideAngleRad())).isCloseTo(0.4, within(1e-5));
  }

  @Example
  void aFullPipeOfSandBearsWithTwiceItsWeight() {
    StoppedLine full = line(0.6);
    assertThat(full.bed().depthShare()).isEqualTo(1);
    assertThat(Math.tan(full.slideAngleRad())).isCloseTo(0.8, within(1e-12));
    assertThat(full.plugLengthM()).isEqualTo(90);
  }

  @Example
  void clearLiquidLeavesNothingAndRestartsAtItsYieldStress() {
    StoppedLine clear = line(0);
    assertThat(clear.sandMassKg(2650)).isZero();
    assertThat(clear.bed().depthM()).isZero();
    assertThat(clear.slidingBedPa(2650, 1010, 1e-3)).isZero();
    assertThat(clear.yieldPa(30)).isCloseTo(4 * 30 / 0.154 * 90, within(1e-9));
    assertThat(clear.yieldPa(0)).isZero();
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> line(0.61)).hasMessageContaining("0.61");
    assertThatThrownBy(() -> line(0.1).settlingTimeS(-1)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> line(0.1).yieldPa(Double.NaN)).hasMessageContaining("NaN");
  }
}
