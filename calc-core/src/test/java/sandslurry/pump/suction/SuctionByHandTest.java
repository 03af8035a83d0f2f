package sandslurry.pump.suction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.units.Measure;

/** Suction of a pump, with numbers worked by hand, and what lies on a limit. */
class SuctionByHandTest {
  /**
   * 1000 gal/min at 1750 1/min and 10 ft: S = 1750 √1000 / 10^0.75 = 9841; through a nozzle of 8 in
   * at a specific gravity of 1.1: 0.9 · 8 · 1750 · 9841 · 1.1 = 136.4 million.
   */
  @Test
  void theSuctionEnergyIsThatWorkedByHand() {
    BestPoint best = new BestPoint(Measure.FLOW.entry("gal/min").toSi(1000), 20, 1750.0 / 60);
    double needed = Measure.LENGTH.entry("ft").toSi(10);
    double nozzle = Measure.LENGTH.entry("in").toSi(8);
    assertThat(SuctionEnergy.of(nozzle, best, needed, 1.1).value())
        .isCloseTo(136.4e6, withinPercentage(0.03));
  }

  @ParameterizedTest
  @CsvSource({"159.9e6, low", "160e6, high", "239.9e6, high", "240e6, very high"})
  void aLimitOfTheSuctionEnergyBelongsToTheHigherGrade(double energy, String words) {
    assertThat(new SuctionEnergy(energy).grade().words()).isEqualTo(words);
  }

  @Test
  void aMarginGrowsAboveItsLimitNotOnIt() {
    assertThat(SuctionMargin.of(145, SuctionEnergy.Grade.LOW)).isEqualTo(SuctionMargin.WASTEWATER);
    assertThat(SuctionMargin.of(145.1, SuctionEnergy.Grade.LOW))
        .isEqualTo(SuctionMargin.WASTEWATER_HIGH_SUCTION_SPEED);
    // 1.1 times 10 m is more than 0.6 m over it, and of 2 m it is less.
    assertThat(SuctionMargin.WASTEWATER.neededM(10)).isCloseTo(11, withinPercentage(1e-9));
    assertThat(SuctionMargin.WASTEWATER.neededM(2)).isCloseTo(2.6, withinPercentage(1e-9));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void whatIsNoHeadOrRatioIsRefused(double value) {
    RequiredSuctionHead curve =
        RequiredSuctionHead.through(
            List.of(new RequiredSuctionHead.Point(0, 2), new RequiredSuctionHead.Point(0.01, 3)));
    assertThatThrownBy(() -> SuctionMargin.WASTEWATER.neededM(value)).hasMessageContaining("NPSH");
    assertThatThrownBy(() -> curve.atSpeed(value)).hasMessageContaining("speed ratio");
    assertThatThrownBy(() -> SuctionHead.availableM(value < 0 ? value : 0, 0, 1000, 0, 0))
        .hasMessageContaining("air pressure");
  }

  /** (100 000 − 0) / (1000 · 9.80665) = 10.19716 m: a liquid without vapour, without a loss. */
  @Test
  void aLiquidWithoutVapourHasAllOfTheAir() {
    assertThat(SuctionHead.availableM(1e5, 0, 1000, 0, 0))
        .isCloseTo(10.19716, withinPercentage(1e-4));
    assertThatThrownBy(() -> SuctionHead.availableM(1e5, 0, 0, 0, 0))
        .hasMessageContaining("density");
    assertThatThrownBy(() -> SuctionHead.availableM(1e5, 0, 1000, Double.POSITIVE_INFINITY, 0))
        .hasMessageContaining("Infinity");
    assertThatThrownBy(() -> SuctionHead.availableM(1e5, 0, 1000, Double.NaN, 0))
        .hasMessageContaining("NaN");
  }

  @Test
  void theStandardAtmosphereEndsWhereItIsAbsolutelyCold() {
    StandardAtmosphere air = new StandardAtmosphere();
    assertThat(air.name()).isEqualTo("Standard atmosphere");
    assertThatThrownBy(() -> air.pressurePa(Double.NEGATIVE_INFINITY))
        .hasMessageContaining("Infinity");
    // ISO 2533: 89 874.6 Pa at 1000 m of geopotential altitude (from memory, unverified).
    assertThat(air.pressurePa(1000).value()).isCloseTo(89_874.6, withinPercentage(0.001));
  }

  /** At 0.8 of the speed 0.008 m3/s stand for 0.01: 0.64 of 3 m; and 0.5 after 0.8 is 0.4. */
  @Test
  void theHeadRequiredFollowsTheSquareOfTheSpeed() {
    RequiredSuctionHead curve =
        RequiredSuctionHead.through(
            List.of(new RequiredSuctionHead.Point(0.01, 3), new RequiredSuctionHead.Point(0, 2)));
    assertThat(curve.requiredM(0.01)).isCloseTo(3, withinPercentage(1e-9));
    assertThat(curve.atSpeed(0.8).requiredM(0.008)).isCloseTo(1.92, withinPercentage(1e-9));
    assertThat(curve.atSpeed(0.8).atSpeed(0.5).requiredM(0.004))
        .isCloseTo(0.16 * 3, withinPercentage(1e-9));
  }

  /**
   * Sea level, 101 325 Pa (ISO 2533), water at 20 °C of 2339 Pa (IAPWS, as in any steam table): 98
   * 986/(1100 · 9.80665) + 1.5 - 0.4 = 10.2762 m. The vapour formula is good to 0.5 %.
   */
  @Test
  void theHeadOfASite() {
    assertThat(SuctionHead.atSiteM(0, 293.15, 1100, 1.5, 0.4).value())
        .isCloseTo(10.2762, withinPercentage(0.02));
  }
}
