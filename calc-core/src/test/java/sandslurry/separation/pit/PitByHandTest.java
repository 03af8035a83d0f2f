package sandslurry.separation.pit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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
}
