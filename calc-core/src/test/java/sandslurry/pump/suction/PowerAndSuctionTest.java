package sandslurry.pump.suction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.correlation.Physics;
import sandslurry.pump.drive.MotorPower;

class PowerAndSuctionTest {
  @Test
  void powerGrowsFromTheLiquidToTheMeter() {
    MotorPower power = MotorPower.of(1100, 0.02, 15, 0.6, 0.9);
    assertThat(power.hydraulicW()).isCloseTo(1100 * 9.80665 * 0.02 * 15, within(1e-9));
    assertThat(power.shaftW()).isCloseTo(power.hydraulicW() / 0.6, within(1e-9));
    assertThat(power.inputW()).isCloseTo(power.shaftW() / 0.9, within(1e-9));
  }

  @Test
  void energyPerSandIsPowerOverMassFlowAndUndefinedWithoutSand() {
    MotorPower power = MotorPower.of(1000, 0.02, 15, 0.5, 0.9);
    assertThat(power.energyPerSandJpKg(0.5)).hasValue(power.inputW() / 0.5);
    assertThat(power.energyPerSandJpKg(0)).isEmpty();
    assertThatThrownBy(() -> power.energyPerSandJpKg(Double.NaN)).hasMessageContaining("NaN");
  }

  @Test
  void anEfficiencyOfZeroIsRefusedInsteadOfGivingInfinity() {
    assertThatThrownBy(() -> MotorPower.of(1000, 0, 20, 0, 0.9)).hasMessageContaining("0.0 (pump)");
    assertThatThrownBy(() -> MotorPower.of(1000, 0, 20, 0.5, Double.NaN))
        .hasMessageContaining("NaN (drive)");
    assertThatThrownBy(() -> MotorPower.of(0, 0, 20, 0.5, 0.9)).hasMessageContaining("density");
  }

  @Test
  void aDenseMixtureHasFewerMetresInOneAtmosphere() {
    double water = SuctionHead.availableM(Physics.ATMOSPHERE_PA, 2339, 998.2, 0, 0);
    double mixture = SuctionHead.availableM(Physics.ATMOSPHERE_PA, 2339, 1200, 0, 0);
    assertThat(mixture / water).isCloseTo(998.2 / 1200, within(1e-12));
  }

  @Test
  void floodRaisesAndLossLowersTheSuctionHeadMetreForMetre() {
    double plain = SuctionHead.availableM(1e5, 2000, 1000, 0, 0);
    assertThat(SuctionHead.availableM(1e5, 2000, 1000, 2, 0.5))
        .isCloseTo(plain + 1.5, within(1e-12));
    assertThat(SuctionHead.availableM(1e5, 2000, 1000, -12, 0)).isNegative();
    assertThatThrownBy(() -> SuctionHead.availableM(1e5, 2000, 1000, 0, -1))
        .hasMessageContaining("-1.0 m");
    assertThatThrownBy(() -> SuctionHead.availableM(Double.NaN, 2000, 1000, 0, 0))
        .hasMessageContaining("NaN");
  }

  @Test
  void airThinsAsOneClimbs() {
    StandardAtmosphere air = new StandardAtmosphere();
    for (double h = -1000; h < 10000; h += 100) {
      assertThat(air.pressurePa(h + 100).value()).isLessThan(air.pressurePa(h).value());
    }
    assertThat(air.pressurePa(0).value()).isEqualTo(Physics.ATMOSPHERE_PA);
    assertThat(air.pressurePa(12000).inRange()).isFalse();
    assertThatThrownBy(() -> air.pressurePa(50000)).hasMessageContaining("50000");
  }
}
