package sandslurry.separation.pit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.UnitFeed;

/** Mixers with numbers worked by hand. */
class PitByHandTest {
  /** 0.35 · 1100 kg/m3 · 5³ 1/s3 · 0.5⁵ m5 = 1503.906 W. */
  @Test
  void aMixerDrawsThePowerOfItsNumber() {
    Impeller propeller = new Impeller(0.5, 6.6, 0.35);
    assertThat(propeller.powerW(5, 1100)).isCloseTo(1503.90625, within(1e-9));
    assertThat(propeller.powerW(0, 1100)).isZero();
  }

  /** Tables of handbooks of mixing, from memory, unverified. */
  @ParameterizedTest
  @CsvSource({
    "PROPELLER, 6.6, 0.35",
    "PITCHED_BLADE, 5.8, 1.27",
    "FLAT_BLADE, 7.1, 3.0",
    "DISC_TURBINE, 7.5, 5.0"
  })
  void aKindHasTheNumbersOfItsTable(Impeller.Kind kind, double suspension, double power) {
    assertThat(kind.of(0.7)).isEqualTo(new Impeller(0.7, suspension, power));
  }

  /** At half of the speed an eighth of the power holds up; from the speed on all of it. */
  @Test
  void whatThePowerDoesNotHoldUpLies() {
    assertThat(PitMixing.heldDown(2.5, 5)).isCloseTo(0.875, within(1e-12));
    assertThat(PitMixing.heldDown(5, 5)).isZero();
    assertThat(PitMixing.heldDown(0, 0)).isEqualTo(1);
  }

  /**
   * 0.25 kg/s of sand in 10 kg/s of liquor: X = 2.5; S = 6.6, 1 mm2/s, 0.8 mm of 1650 kg/m3: 6.6
   * (1e-6)^0.1 (8e-4)^0.2 (9.80665 · 1.65)^0.45 2.5^0.13/0.5^0.85 = 2.830230 1/s. The pit of 20 m3
   * holds 10.094340 L/s for 1981.308 s. A mixer that runs at just that speed holds the sand up.
   */
  @Test
  void aPitIsMixedByTheSandPerLiquorThatComes() {
    UnitFeed feed =
        new UnitFeed(
            0.01,
            new Liquid(1000, 1e-3),
            0,
            0,
            0,
            2650,
            GrainShape.NATURAL,
            List.of(new GrainRange(0.1e-3, 0.1e-3), new GrainRange(0.8e-3, 0.8e-3)),
            List.of(0.05, 0.2),
            1,
            0);
    Impeller propeller = new Impeller(0.5, 6.6, 0.35);
    PitMixing slow = PitMixing.of(propeller, 2.5, feed, 20);
    double just = slow.speedsRps().get(1).value();
    assertThat(just).isCloseTo(2.830230, within(1e-5));
    assertThat(slow.speedRatio()).isCloseTo(2.5 / just, within(1e-12));
    assertThat(slow.residenceTimeS()).isCloseTo(1981.308, within(1e-2));
    // 1000 + 0.0093456 · 1650 kg/m3, and 2.5³ of its speed.
    assertThat(slow.powerW()).isCloseTo(173.53379, within(1e-4));
    assertThat(slow.leftKgps(feed)).isCloseTo(0.2, within(1e-12));
    assertThat(slow.carriedKgps(feed)).isCloseTo(0.05, within(1e-12));
    Trace trace = Trace.recording();
    slow.steps(propeller, feed, trace);
    assertThat(trace.steps())
        .extracting(Step::value)
        .containsExactly(just, slow.speedRatio(), slow.powerW());
    assertThat(PitMixing.of(propeller, just, feed, 20).suspended()).containsExactly(true, true);
  }

  /** 2^0.2 = 1.148698; 4 1/s of 0.5 m in water of 1e-6 m2/s: a million. */
  @Test
  void coarserGrainsNeedAFasterMixer() {
    assertThat(Zwietering1958.faster(1e-3, 2e-3)).isCloseTo(1.148698, within(1e-6));
    assertThat(Zwietering1958.reynolds(new Impeller(0.5, 1, 1), 4, new Liquid(1000, 1e-3)))
        .isCloseTo(1e6, within(1e-6));
  }
}
