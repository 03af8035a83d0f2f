package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class CarriersProperties {
  @Property
  void moreSolidsMakeThickerAndDenserManure(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.1299) double totalSolids,
      @ForAll @Scale(9) @DoubleRange(min = 273.15, max = 323.15) double temperatureK,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 10_000) double shearRatePs) {
    Liquid thin = Carriers.manure(totalSolids, temperatureK).liquidAt(shearRatePs);
    Liquid thick = Carriers.manure(totalSolids + 1e-4, temperatureK).liquidAt(shearRatePs);
    assertThat(thick.viscosityPaS()).isGreaterThan(thin.viscosityPaS());
    assertThat(thick.densityKgM3()).isGreaterThan(thin.densityKgM3());
    assertThat(thin.viscosityPaS())
        .isGreaterThanOrEqualTo(Water.viscosityPaS(temperatureK) * (1 - 1e-12));
  }

  @Property
  void manureDoesNotJumpFromRowToRow(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.12999) double totalSolids,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 1000) double shearRatePs) {
    double here = Carriers.manure(totalSolids, 293.15).liquidAt(shearRatePs).viscosityPaS();
    double there = Carriers.manure(totalSolids + 1e-9, 293.15).liquidAt(shearRatePs).viscosityPaS();
    assertThat(there).isEqualTo(here, within(1e-5 * here));
  }
}
