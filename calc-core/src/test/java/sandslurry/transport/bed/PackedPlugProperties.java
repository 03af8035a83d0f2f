package sandslurry.transport.bed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.pipe.Bore;

class PackedPlugProperties {
  private static final double BORE = 0.154;
  private static final double WEIGHT = 9.80665 * 1650 * 0.6;

  private static PackedPlug plug(double lengthM, double angleRad) {
    return new PackedPlug(
        List.of(new PackedPlug.Part(BORE, lengthM, angleRad)),
        WEIGHT,
        0.4,
        PackedPlug.STRESS_RATIO);
  }

  @Property
  void aWedgedPlugNeedsAtLeastWhatASeepingOneNeedsAndALongerOneMore(
      @ForAll @DoubleRange(min = 0.001, max = 1.2) @Scale(10) double length,
      @ForAll @DoubleRange(min = -0.5, max = 1.57) @Scale(10) double angle) {
    double wedged = plug(length, angle).wedgedPa().orElseThrow();
    assertThat(wedged).isGreaterThan(plug(length, angle).seepingPa());
    // Twice the length takes more than twice the pressure: that is what wedging means.
    assertThat(plug(2 * length, angle).wedgedPa().orElseThrow()).isGreaterThan(2 * wedged);
    assertThat(plug(2 * length, angle).seepingPa())
        .isCloseTo(2 * plug(length, angle).seepingPa(), within(1e-6));
  }

  @Property
  void aShortPlugTendsToTheSeepingOne(
      @ForAll @DoubleRange(min = 1e-9, max = 1e-6) @Scale(10) double length,
      @ForAll @DoubleRange(min = 0, max = 1.57) @Scale(10) double angle) {
    assertThat(plug(length, angle).wedgedPa().orElseThrow() / plug(length, angle).seepingPa())
        .isCloseTo(1, within(1e-5));
  }

  @Property
  void theLongestThatAPressureMovesTakesThatPressure(
      @ForAll @DoubleRange(min = 1, max = 5e6) @Scale(10) double pressure,
      @ForAll @DoubleRange(min = 0, max = 1.57) @Scale(10) double angle) {
    double length = plug(0, angle).longestPushedM(BORE, angle, pressure).orElseThrow();
    assertThat(plug(length, angle).wedgedPa().orElseThrow())
        .isCloseTo(pressure, within(1e-6 * pressure));
  }

  @Property
  void theBalanceHoldsWhenTheEquationIsSteppedThrough(
      @ForAll @DoubleRange(min = 0.05, max = 0.5) @Scale(10) double falling,
      @ForAll @DoubleRange(min = 0.05, max = 0.5) @Scale(10) double climbing) {
    PackedPlug valley =
        new PackedPlug(
            List.of(
                new PackedPlug.Part(0.2, falling, -0.5), new PackedPlug.Part(0.15, climbing, 1.2)),
            WEIGHT,
            0.4,
            0.5);
    double stress = 0;
    int steps = 20000;
    for (double[] part : new double[][] {{0.15, climbing, 1.2}, {0.2, falling, -0.5}}) {
      double dx = part[1] / steps;
      for (int i = 0; i < steps; i++) {
        stress +=
            dx
                * (4 * 0.4 * 0.5 / part[0] * stress
                    + WEIGHT * (0.8 * Math.cos(part[2]) + Math.sin(part[2])));
      }
    }
    assertThat(valley.wedgedPa().orElseThrow()).isCloseTo(stress, within(1e-3 * stress));
  }

  @Example
  void anUprightPlugBearsItsWeightAndALevelOneItsFriction() {
    assertThat(plug(2, Math.PI / 2).seepingPa()).isCloseTo(2 * WEIGHT, within(1e-6));
    assertThat(plug(2, Math.PI / 2).climbingWeightPa()).isCloseTo(2 * WEIGHT, within(1e-6));
    assertThat(plug(2, 0).seepingPa()).isCloseTo(2 * 0.8 * WEIGHT, within(1e-6));
    assertThat(plug(2, 0).climbingWeightPa()).isZero();
    StoppedLine full = new StoppedLine(new Bore(BORE, 1e-4), 2, 0.6);
    assertThat(plug(2, 0).seepingPa()).isCloseTo(full.slidingBedPa(2650, 1000, 1e-3), within(1e-6));
  }

  @Example
  void noSandTakesNothingAndAVeryLongPlugIsBeyondAnyPump() {
    assertThat(plug(0, 1).wedgedPa()).hasValue(0);
    assertThat(plug(0, 1).seepingPa()).isZero();
    assertThat(plug(1e5, 1).wedgedPa()).isEmpty();
    assertThat(plug(2, 1).wedgedPa().orElseThrow()).isGreaterThan(1e6);
  }

  @Example
  void aHundredKilopascalMovesLessThanAMetreOfPlugInAPipeOfSixInches() {
    assertThat(plug(0, 0).longestPushedM(0.15, 0, 1e5).orElseThrow()).isCloseTo(0.8, within(0.01));
  }

  /** Half a bore of 300 mm, pushed up however steep a pipe like a cork: what counts as no plug. */
  @Example
  void halfABoreOfSandMovesAtLessThanThreeKilopascal() {
    for (double angle = 0; angle <= Math.PI / 2; angle += 0.05) {
      PackedPlug heap =
          new PackedPlug(List.of(new PackedPlug.Part(0.3, 0.15, angle)), WEIGHT, 0.4, 0.5);
      assertThat(heap.wedgedPa().orElseThrow()).isBetween(1000.0, 3000.0);
    }
  }

  @Example
  void aPlugOnASlopeThatThrowsItDownNeedsNothing() {
    assertThat(plug(2, -Math.PI / 2).seepingPa()).isZero();
    assertThat(plug(2, -Math.PI / 2).wedgedPa()).hasValue(0);
    assertThat(plug(2, 0).longestPushedM(BORE, -Math.PI / 2, 1e5)).isEmpty();
  }

  @Example
  void sandReachesTheFootSoonerInASlopingPipeThanInAnUprightOne() {
    StoppedLine line = new StoppedLine(new Bore(BORE, 1e-4), 30, 0.06);
    double upright = line.slidingTimeS(0.03, Math.PI / 2);
    assertThat(upright).isCloseTo(0.9 * 30 / 0.03, within(1e-9));
    assertThat(line.slidingTimeS(0.03, 1)).isLessThan(upright / 20);
    assertThatThrownBy(() -> line.slidingTimeS(0, 1)).hasMessageContaining("0.0 m/s");
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> plug(-1, 0)).hasMessageContaining("-1.0");
    assertThatThrownBy(() -> plug(1, 2)).hasMessageContaining("2.0");
    assertThatThrownBy(() -> new PackedPlug(List.of(), 1, 1, 1)).hasMessageContaining("0 parts");
    assertThatThrownBy(() -> plug(1, 0).longestPushedM(BORE, 0, Double.NaN))
        .hasMessageContaining("NaN");
  }
}
