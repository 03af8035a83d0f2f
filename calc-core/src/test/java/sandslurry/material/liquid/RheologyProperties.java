package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class RheologyProperties {
  @Property(tries = 200)
  void shearRateIsTheInverseOfShearStress(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 10) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1.5) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1000) double rate) {
    for (Rheology liquid :
        List.of(
            new Newtonian(consistency),
            new PowerLaw(consistency, index),
            new Bingham(yield, consistency),
            new HerschelBulkley(yield, consistency, index))) {
      double stress = liquid.shearStressPa(rate);
      // The yield stress is taken from the stress: that many digits of the rest are lost.
      double lost = stress / (stress - liquid.yieldStressPa());
      assertThat(liquid.shearRatePs(stress))
          .isCloseTo(rate, within(rate * 1e-13 * (1 + lost) / index));
      assertThat(liquid.apparentViscosityPaS(rate))
          .isCloseTo(stress / rate, within(1e-14 * stress / rate));
    }
  }

  @Property(tries = 100)
  void theSpecialModelsAreCasesOfTheGeneralOne(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 1e-3, max = 10) double consistency,
      @ForAll @Scale(6) @DoubleRange(min = 0.2, max = 1.5) double index,
      @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1000) double rate) {
    assertThat(new HerschelBulkley(yield, consistency, 1).shearStressPa(rate))
        .isEqualTo(new Bingham(yield, consistency).shearStressPa(rate));
    assertThat(new HerschelBulkley(0, consistency, index).shearStressPa(rate))
        .isEqualTo(new PowerLaw(consistency, index).shearStressPa(rate));
    assertThat(new PowerLaw(consistency, 1).shearStressPa(rate))
        .isEqualTo(new Newtonian(consistency).shearStressPa(rate));
  }

  @Property(tries = 100)
  void aLiquidBelowItsYieldStressDoesNotShear(
      @ForAll @Scale(6) @DoubleRange(min = 1, max = 30) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
    assertThat(new HerschelBulkley(yield, 1, 0.5).shearRatePs(share * yield)).isZero();
  }
}
