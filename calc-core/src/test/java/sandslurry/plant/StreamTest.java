package sandslurry.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.Water;

class StreamTest {
  @Test
  void liquorHasTheDensityOfTheCarrierOfTheSameSolids() {
    double water = Water.at(293.15).densityKgM3();
    Constituents constituents = new Constituents(water, 1450, 2650, THREE.sandClasses(), 0);
    Stream liquor = Stream.liquor(constituents, 2, 0.06, ManureSolids.FRESH);
    assertThat(liquor.densityKgM3())
        .isEqualTo(Carriers.manure(0.06, 293.15).densityKgM3(), within(1e-9));
    assertThat(liquor.totalSolids()).isEqualTo(0.06, within(1e-15));
  }

  @Test
  void theThreeSharesOfSandAreNotTheSame() {
    Stream stream = THREE.water(998).plus(Stream.of(THREE, 0, 0, 0, 0, 0, 0, 265, 0));
    assertThat(stream.sandMassShare()).isEqualTo(265 / 1263.0, within(1e-12));
    assertThat(stream.sandVolumeShare()).isEqualTo(0.1 / 1.1, within(1e-12));
    assertThat(stream.sandBulkShare(0.5)).isEqualTo(0.2 / 1.2, within(1e-12));
    assertThat(stream.volumeM3ps()).isEqualTo(1.1, within(1e-12));
  }

  @Test
  void sandDoesNotCountInSandFreeSolidsButFinesDo() {
    Stream liquor = Stream.liquor(THREE, 1, 0.1, ManureSolids.FRESH);
    Stream laden = liquor.plus(THREE.deliveredSand(1));
    assertThat(laden.manureTotalSolids()).isEqualTo(0.1, within(1e-12));
    assertThat(laden.totalSolids()).isEqualTo(0.13 / 1.03, within(1e-12));
    assertThat(Plant.totalSolidsWithSand(laden)).isEqualTo(1.1 / 2, within(1e-12));
    assertThat(laden.sandKgps()).isEqualTo(0.97, within(1e-12));
    assertThat(laden.finesKgps()).isEqualTo(0.026 + 0.03, within(1e-12));
  }

  @Test
  void nothingHasDefinedProperties() {
    Stream nothing = THREE.water(0);
    assertThat(nothing.densityKgM3()).isEqualTo(998);
    assertThat(nothing.totalSolids()).isZero();
    assertThat(nothing.sandVolumeShare()).isZero();
    assertThat(nothing.sandClasses()).isEqualTo(THREE.sandClasses());
  }

  @Test
  void aStreamCannotBeChangedFromOutside() {
    double[] flows = new double[THREE.count()];
    Stream stream = Stream.of(THREE, flows);
    flows[0] = 1;
    stream.toArray()[0] = 2;
    assertThat(stream.massKgps()).isZero();
  }

  @Test
  void nonsenseIsRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Stream.of(THREE, 1, 0, 0, 0, 0, 0, Double.NaN, 0))
        .withMessageContaining("sand 0.150 mm to 0.600 mm")
        .withMessageContaining("NaN");
    assertThatIllegalArgumentException().isThrownBy(() -> THREE.water(1).times(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> Stream.of(THREE, 1));
    Constituents other = new Constituents(1000, 1450, 2650, THREE.sandClasses(), 0);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Stream.mix(THREE, List.of(THREE.water(1), other.water(1))));
  }
}
