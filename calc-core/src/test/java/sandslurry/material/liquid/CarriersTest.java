package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.correlation.Bound;

class CarriersTest {
  private static final double COLD = 283.15;

  @Test
  void waterIsNewtonianAndBringsNoNotes() {
    Carrier water = Carriers.water(COLD);
    assertThat(water.liquidAt(1)).isEqualTo(Water.at(COLD));
    assertThat(water.liquidAt(1000)).isEqualTo(water.liquidAt(1));
    assertThat(water.vapourPressurePa()).isEqualTo(Water.vapourPressurePa(COLD));
    assertThat(water.notes()).isEmpty();
    assertThat(water.excesses()).isEmpty();
    assertThat(water.totalSolids()).hasValue(0);
  }

  @Test
  void manureWithoutSolidsIsWater() {
    Liquid manure = Carriers.manure(0, COLD).liquidAt(50);
    assertThat(manure.densityKgM3()).isEqualTo(Water.densityKgM3(COLD));
    assertThat(manure.viscosityPaS()).isEqualTo(Water.viscosityPaS(COLD), within(1e-18));
  }

  @Test
  void manureInTheMeasuredRangeIsInRange() {
    assertThat(Carriers.manure(0.025, 308.15).excesses()).isEmpty();
    assertThat(Carriers.manure(0.121, 308.15).excesses()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.0249, 0.125, 0.13})
  void manureThatWasNotMeasuredSaysSo(double totalSolids) {
    Carrier manure = Carriers.manure(totalSolids, 308.15);
    assertThat(manure.excesses())
        .singleElement()
        .satisfies(
            excess -> {
              assertThat(excess.value()).isEqualTo(totalSolids);
              assertThat(excess.bound()).isEqualTo(Carriers.MEASURED_TOTAL_SOLIDS);
            });
    assertThat(manure.notes()).anyMatch(note -> note.contains("measured"));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 0.1301, 0.5, Double.NaN})
  void manureThatIsNoLiquidIsRefused(double totalSolids) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Carriers.manure(totalSolids, 308.15))
        .withMessageContaining("0 %")
        .withMessageContaining("13.0 %");
  }

  @Test
  void frozenManureIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Carriers.manure(0.05, 270))
        .withMessageContaining("freezes");
  }

  @Test
  void coldManureIsThickerByTheRatioOfWater() {
    double ratio = Water.viscosityPaS(COLD) / Water.viscosityPaS(308.15);
    double warm = Carriers.manure(0.06, 308.15).liquidAt(100).viscosityPaS();
    double cold = Carriers.manure(0.06, COLD).liquidAt(100).viscosityPaS();
    assertThat(cold / warm).isEqualTo(ratio, within(1e-12));
    assertThat(Carriers.manure(0.06, COLD).notes())
        .anyMatch(note -> note.contains("multiplied by 1.82"));
    assertThat(Carriers.manure(0.06, 308.15).notes())
        .noneMatch(note -> note.contains("multiplied"));
  }

  /**
   * The widest of both rows of the table of Wu and Chen (2008), whose ends are checked by the
   * viscosities printed beside them in {@code ManureReferenceTest}; from memory, unverified.
   */
  @ParameterizedTest
  @CsvSource({
    "0.01, 226, 702",
    "0.04, 50, 702",
    "0.06, 11, 702",
    "0.08, 11, 399",
    "0.1, 3, 156",
    "0.125, 3, 156"
  })
  void theShearRatesAreThoseOfTheNeighbouringRows(double totalSolids, double low, double high) {
    Bound between = Carriers.manure(totalSolids, 308.15).shearRates().orElseThrow();
    assertThat(between.low()).isEqualTo(low);
    assertThat(between.high()).isEqualTo(high);
  }

  @Test
  void aMeasuredCarrierIsAsEntered() {
    Carrier carrier = Carriers.measured("separated liquid", 293.15, 1012, 0.015);
    assertThat(carrier.liquidAt(5)).isEqualTo(new Liquid(1012, 0.015));
    assertThat(carrier.totalSolids()).isEqualTo(OptionalDouble.empty());
    Carrier thinning = Carriers.measured("liquor", 293.15, 1012, new PowerLaw(0.2, 0.5));
    assertThat(thinning.liquidAt(100).viscosityPaS()).isEqualTo(0.02, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void anApparentViscosityNeedsAShearRate(double shearRatePs) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Carriers.water(COLD).liquidAt(shearRatePs))
        .withMessageContaining("shear rate");
  }

  @Test
  void aCarrierRefusesNonsense() {
    Newtonian law = new Newtonian(0.001);
    assertThatIllegalArgumentException().isThrownBy(() -> Carriers.measured("x", 280, -1, law));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                Carriers.measured(
                    "x", 280, 1000, law, OptionalDouble.of(12.5), Optional.empty(), List.of()));
  }

  /**
   * By hand: 10 Pa at 12 %, half of it 10 · 0.5^5.5 = 0.220971 Pa. What it stands for, from memory,
   * unverified: about none below 4 %, of the order of 1 Pa at 6 to 8 %, 5 to 30 Pa at 10 to 13 %.
   */
  @Test
  void theYieldStressOfManureRisesWithItsSolids() {
    assertThat(Carriers.yieldStressPa(0)).isZero();
    assertThat(Carriers.yieldStressPa(0.12)).isCloseTo(10, within(1e-9));
    assertThat(Carriers.yieldStressPa(0.06)).isCloseTo(0.2209709, within(1e-6));
    assertThat(Carriers.yieldStressPa(0.04)).isLessThan(0.1);
    assertThat(Carriers.yieldStressPa(0.08)).isBetween(0.3, 3.0);
    assertThat(Carriers.FARM_SCATTER * Carriers.yieldStressPa(0.12)).isCloseTo(30, within(1e-9));
    assertThat(Carriers.manure(0.06, 288.15).yieldStressPa())
        .isEqualTo(Carriers.yieldStressPa(0.06));
    assertThat(Carriers.water(288.15).yieldStressPa()).isZero();
  }
}
