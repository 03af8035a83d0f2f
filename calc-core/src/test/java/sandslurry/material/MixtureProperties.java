package sandslurry.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;

class MixtureProperties {
  private static final Liquid LIQUOR = new Liquid(1015, 0.004);
  private static final double SAND = 2650;

  @Property
  void massAndVolumeFractionsAreInverse(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.599) double volumeFraction,
      @ForAll @Scale(9) @DoubleRange(min = 900, max = 1200) double liquid,
      @ForAll @Scale(9) @DoubleRange(min = 2000, max = 3000) double sand) {
    double mass = Proportions.massFraction(volumeFraction, liquid, sand);
    assertThat(Proportions.volumeFraction(mass, liquid, sand))
        .isEqualTo(volumeFraction, within(1e-12));
    assertThat(mass).isGreaterThanOrEqualTo(volumeFraction);
  }

  @Property
  void sandAndLiquidAddUpToTheMixture(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.599) double volumeFraction,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 1) double mixtureM3ps) {
    double sandKgps = volumeFraction * mixtureM3ps * SAND;
    double liquidM3ps = (1 - volumeFraction) * mixtureM3ps;
    double density = Proportions.mixtureDensityKgM3(volumeFraction, LIQUOR.densityKgM3(), SAND);
    double mass = sandKgps + liquidM3ps * LIQUOR.densityKgM3();
    assertThat(density * mixtureM3ps).isEqualTo(mass, within(1e-12 * mass));
    assertThat(Proportions.massFraction(volumeFraction, LIQUOR.densityKgM3(), SAND) * mass)
        .isEqualTo(sandKgps, within(1e-12 * mass));
    assertThat(Proportions.volumeFractionInMixtureFlow(sandKgps, mixtureM3ps, SAND))
        .isEqualTo(volumeFraction, within(1e-12));
  }

  @Property
  void packedSandIsRefused(
      @ForAll @Scale(9) @DoubleRange(min = 0.6, max = 10) double volumeFraction) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.flowing(volumeFraction))
        .withMessageContaining("packed")
        .withMessageContaining("60.0 %");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Vehicle.of(LIQUOR, SAND, volumeFraction, 0.1));
  }

  @Example
  void nonsenseIsRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.flowing(Double.NaN))
        .withMessageContaining("NaN");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.volumeFractionInMixtureFlow(-1, 1, SAND))
        .withMessageContaining("mass flow of sand");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Proportions.volumeFraction(1.1, 1000, SAND))
        .withMessageContaining("1.1");
    assertThatIllegalArgumentException().isThrownBy(() -> Vehicle.of(LIQUOR, SAND, 0.1, 1.1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Thomas1965().relativeViscosity(-0.1));
  }

  @Property
  void withoutSandTheVehicleIsExactlyTheLiquid(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fines) {
    Vehicle vehicle = Vehicle.of(LIQUOR, SAND, 0, fines);
    assertThat(vehicle.liquid()).isEqualTo(LIQUOR);
    assertThat(vehicle.coarseVolumeFraction()).isZero();
    assertThat(vehicle.relativeViscosity()).isEqualTo(1);
  }

  @Property
  void withoutFinesTheVehicleIsExactlyTheLiquid(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.599) double volumeFraction) {
    Vehicle vehicle = Vehicle.of(LIQUOR, SAND, volumeFraction, 0);
    assertThat(vehicle.liquid()).isEqualTo(LIQUOR);
    assertThat(vehicle.coarseVolumeFraction()).isEqualTo(volumeFraction);
  }

  @Property
  void vehicleAndCoarseSandWeighAsMuchAsLiquidAndAllSand(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.599) double volumeFraction,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double fines) {
    Vehicle vehicle = Vehicle.of(LIQUOR, SAND, volumeFraction, fines);
    double coarse = vehicle.coarseVolumeFraction();
    double whole = Proportions.mixtureDensityKgM3(volumeFraction, LIQUOR.densityKgM3(), SAND);
    double parts = Proportions.mixtureDensityKgM3(coarse, vehicle.liquid().densityKgM3(), SAND);
    assertThat(parts).isEqualTo(whole, within(1e-9));
    assertThat(new Slurry(vehicle.liquid(), SAND, GrainShape.NATURAL, 1e-4, 1e-4, coarse))
        .satisfies(
            slurry -> assertThat(slurry.mixtureDensityKgM3()).isEqualTo(whole, within(1e-9)));
  }

  @Property
  void moreFinesMakeAThickerVehicle(
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.599) double volumeFraction,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.99) double fines) {
    Vehicle less = Vehicle.of(LIQUOR, SAND, volumeFraction, fines);
    Vehicle more = Vehicle.of(LIQUOR, SAND, volumeFraction, fines + 0.01);
    assertThat(more.relativeViscosity()).isGreaterThan(less.relativeViscosity());
    assertThat(more.liquid().densityKgM3()).isGreaterThan(less.liquid().densityKgM3());
    assertThat(more.coarseVolumeFraction()).isLessThan(less.coarseVolumeFraction());
    assertThat(new Thomas1965().relativeViscosity(volumeFraction * fines).inRange()).isTrue();
  }

  @Example
  void aDilutionOfFinesFollowsEinstein() {
    double slope = (new Thomas1965().relativeViscosity(1e-8).value() - 1) / 1e-8;
    assertThat(slope).isEqualTo(2.5 + 0.00273 * 16.6, within(1e-5));
    assertThat(new Thomas1965().relativeViscosity(0.7).inRange()).isFalse();
  }
}
