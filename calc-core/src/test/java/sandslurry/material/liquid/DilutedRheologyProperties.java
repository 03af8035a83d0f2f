package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What dilution does to a measured liquor: exact at one end, water at the other. */
class DilutedRheologyProperties {
  private static final double COLD_K = 278.15;

  private static Carrier measured(Rheology rheology, double solids) {
    return Carriers.measured(
        "measured", COLD_K, 1040, rheology, OptionalDouble.of(solids), Optional.empty(), List.of());
  }

  @Property(tries = 100)
  void noDilutionIsExact(
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index) {
    Carrier carrier = measured(new HerschelBulkley(yield, 2, index), solids);
    assertThat(DilutedRheology.carrier(carrier, solids, 1040)).isSameAs(carrier);
    // And just beside it nothing jumps.
    Rheology beside = DilutedRheology.carrier(carrier, solids * (1 - 1e-9), 1040).rheology();
    for (double rate : new double[] {1, 50, 1000}) {
      double stress = carrier.rheology().shearStressPa(rate);
      assertThat(beside.shearStressPa(rate)).isCloseTo(stress, within(1e-6 * stress));
    }
  }

  @Property(tries = 100)
  void itEndsAtWater(
      @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 0.13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 50) double yield,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 1) double index) {
    Carrier carrier = measured(new HerschelBulkley(yield, 2, index), solids);
    Rheology water = DilutedRheology.carrier(carrier, 0, 1000).rheology();
    double viscosity = Water.viscosityPaS(COLD_K);
    assertThat(water.yieldStressPa()).isZero();
    for (double rate : new double[] {1, 50, 1000}) {
      assertThat(water.apparentViscosityPaS(rate)).isCloseTo(viscosity, within(1e-9 * viscosity));
    }
  }

  @Property(tries = 200)
  void moreDilutionIsNeverThicker(
      @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 0.13) double solids,
      @ForAll @Scale(6) @DoubleRange(min = 0.3, max = 3) double thickness,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.99) double less,
      @ForAll @Scale(6) @DoubleRange(min = 0.05, max = 0.99) double lessStill) {
    Rheology table = Carriers.manure(solids, COLD_K).rheology();
    double k = thickness * table.flowingViscosityPaS(1);
    Carrier carrier = measured(new HerschelBulkley(5, k, table.index()), solids);
    Rheology once = DilutedRheology.carrier(carrier, less * solids, 1020).rheology();
    Rheology twice = DilutedRheology.carrier(carrier, lessStill * less * solids, 1010).rheology();
    assertThat(once.shearStressPa(50)).isLessThan(carrier.rheology().shearStressPa(50));
    assertThat(twice.shearStressPa(50)).isLessThan(once.shearStressPa(50));
    assertThat(twice.yieldStressPa()).isLessThan(once.yieldStressPa());
  }

  @Example
  void aLiquorOfTheTableIsLookedUpAgainWithItsScatterAndARangeOfItsOwn() {
    Carrier thick = Carriers.manure(0.1, COLD_K);
    Carrier thin = DilutedRheology.carrier(thick, 0.05, 1010);
    assertThat(thin.rheology()).isEqualTo(Carriers.manure(0.05, COLD_K).rheology());
    assertThat(thin.scatter().factor()).isEqualTo(Carriers.FARM_SCATTER);
    assertThat(thin.shearRates()).isEqualTo(Carriers.manure(0.05, COLD_K).shearRates());
    assertThat(thin.densityKgM3()).isEqualTo(1010);
  }

  @Example
  void aLiquorOfUnknownSolidsIsRefused() {
    Carrier unknown = Carriers.measured("measured", COLD_K, 1040, new PowerLaw(1, 0.5));
    assertThatThrownBy(() -> DilutedRheology.carrier(unknown, 0.02, 1000))
        .hasMessageContaining("not known");
  }
}
