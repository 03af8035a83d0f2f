package sandslurry.plant;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.material.sand.SizeClass;
import sandslurry.plant.account.BedQuality;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCycle;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.WaterAccount;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.unit.Liquor;

class AccountsProperties {
  private static final List<SizeClass> SAND = THREE.sandClasses();

  @Property
  void sandThatCirculatesIsCoarserThanSandBoughtAndEachClassIsMadeUp(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.9) double fine,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.099) double gain) {
    List<Double> recovery = List.of(fine, fine + gain / 2, fine + gain);
    SandCycle cycle = SandCycle.of(SAND, recovery, 2);
    double sum = 0;
    for (int k = 0; k < 3; k++) {
      double bedded = 2 * cycle.bedded().get(k).massFraction();
      double bought = cycle.boughtKgps() * SAND.get(k).massFraction();
      assertThat(bedded).isEqualTo(bought + recovery.get(k) * bedded, within(1e-12));
      sum += bedded;
    }
    assertThat(sum).isEqualTo(2, within(1e-12));
    assertThat(cycle.bedded().get(0).massFraction())
        .isLessThanOrEqualTo(SAND.get(0).massFraction() + 1e-12);
    assertThat(1 - cycle.boughtKgps() / cycle.beddedKgps())
        .isGreaterThanOrEqualTo(cycle.recoveryOfNewSand() - 1e-12);
  }

  @Property(tries = 100)
  void circulatingSandIsWhereRepeatedUseEnds(
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.8) double fine,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.95) double coarse) {
    double[] eta = {fine, 0.5 * (fine + coarse), coarse};
    double[] bed = {0.2, 0.5, 0.3};
    for (int round = 0; round < 2000; round++) {
      double lost = 0;
      for (int k = 0; k < 3; k++) {
        bed[k] *= eta[k];
        lost += bed[k];
      }
      for (int k = 0; k < 3; k++) {
        bed[k] += (1 - lost) * SAND.get(k).massFraction();
      }
    }
    SandCycle cycle = SandCycle.of(SAND, List.of(eta[0], eta[1], eta[2]), 1);
    for (int k = 0; k < 3; k++) {
      assertThat(cycle.bedded().get(k).massFraction()).isEqualTo(bed[k], within(1e-9));
    }
  }

  @Example
  void aClassThatComesBackWhollyIsAllThatCirculates() {
    SandCycle cycle = SandCycle.of(SAND, List.of(0.5, 0.9, 1.0), 1);
    assertThat(cycle.boughtKgps()).isZero();
    assertThat(cycle.bedded().get(2).massFraction()).isEqualTo(1);
    SandCycle nearly = SandCycle.of(SAND, List.of(0.5, 0.9, 1 - 1e-9), 1);
    assertThat(nearly.bedded().get(2).massFraction()).isEqualTo(1, within(1e-6));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SandCycle.of(SAND, List.of(0.5, 0.9, Double.NaN), 1));
    assertThatIllegalArgumentException().isThrownBy(() -> SandCycle.of(SAND, List.of(0.5), 1));
  }

  @Example
  void recoveryDependsOnWhatItIsOf() {
    SteadyBalance balance =
        Plant.balance(Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3), Plant.feeds(0.1));
    SandAccount account =
        new SandAccount(
            THREE.deliveredSand(0.15),
            Plant.MANURE,
            balance.stream("sand"),
            0.9,
            Map.of("storage", balance.stream("surplus"), "fibre", balance.stream("cake")));
    // The box passes on what its overflow carries, and the loop brings it back: more than one pass.
    assertThat(account.recoveryOfFlushed(0)).isGreaterThan(0.5).isLessThan(1);
    assertThat(account.recoveryOfFlushed(2)).isEqualTo(1, within(1e-9));
    assertThat(account.recoveryOfBedded())
        .isEqualTo(account.recoveryOfFlushed() * 0.13 / 0.15, within(1e-12));
    assertThat(account.notBought()).isEqualTo(0.9 * account.recoveryOfBedded(), within(1e-12));
    assertThat(account.recoveryAsWeighed()).isGreaterThan(account.recoveryOfFlushed());
    assertThat(account.stillInTheLineKgps()).isEqualTo(0, within(1e-12));
    assertThat(account.lost().get("storage").sandKgps()).isPositive();
    BedQuality quality = BedQuality.of(balance.stream("sand"));
    // The box is set to discharge 15 % water in all that it discharges.
    assertThat(quality.moisture()).isCloseTo(0.15, within(1e-9));
    assertThat(quality.organicMatter()).isBetween(0.001, 0.05);
    assertThat(quality.meanSizeM()).isBetween(0.3e-3, 0.5e-3);
    assertThatIllegalArgumentException().isThrownBy(() -> BedQuality.of(THREE.water(1)));
  }

  @Property
  void aPondHoldsBetweenItsFloorAndItsTopTimesDepth(
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 200) double length,
      @ForAll @Scale(9) @DoubleRange(min = 1, max = 200) double width,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 4) double slope,
      @ForAll @Scale(9) @DoubleRange(min = 0.1, max = 6) double depth,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 1) double part) {
    Pond pond = new Pond(length, width, slope, depth);
    assertThat(pond.volumeM3())
        .isBetween(length * width * depth * (1 - 1e-12), pond.areaM2(depth) * depth * (1 + 1e-12));
    double held = part * pond.volumeM3();
    assertThat(pond.volumeM3(pond.depthForM(held))).isEqualTo(held, within(1e-9 * pond.volumeM3()));
    // The surface is the slope of the volume.
    double step = 1e-5 * depth;
    assertThat((pond.volumeM3(depth) - pond.volumeM3(depth - step)) / step)
        .isEqualTo(pond.areaM2(depth - step / 2), within(1e-5 * pond.areaM2(depth)));
  }

  private static StorageAccount storage(double flow, double rain, double sandKgps, double settled) {
    List<StorageAccount.Month> months = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      months.add(new StorageAccount.Month("month " + i, 30, flow, rain * (i % 2), 0));
    }
    return new StorageAccount(
        new Pond(50, 20, 0, 4), months, 0.1, 0.3, settled, sandKgps, 2650, 0.4, 0);
  }

  @Example
  void storageLastsAsLongAsItsRoom() {
    StorageAccount box = storage(1e-3, 0, 0, 0);
    assertThat(box.stormVolumeM3()).isEqualTo(100, within(1e-9));
    assertThat(box.freeboardVolumeM3()).isEqualTo(300, within(1e-9));
    assertThat(box.roomM3()).isEqualTo(3600, within(1e-9));
    assertThat(box.daysOfStorage().orElseThrow()).isEqualTo(3600 / 86.4, within(1e-9));
    // Rain in every other month: the worst start is a wet month.
    StorageAccount wet = storage(1e-3, 0.5, 0, 0);
    assertThat(wet.netInflowM3(1)).isEqualTo(86.4 * 30 + 500, within(1e-6));
    assertThat(wet.daysOfStorage().orElseThrow())
        .isEqualTo(30 + (3600 - 86.4 * 30 - 500) / 86.4, within(1e-6));
    assertThat(storage(0, 0, 0, 0).daysOfStorage()).isEmpty();
    assertThat(storage(1e-3, 0, 0, 4000).daysOfStorage()).hasValue(0);
  }

  @Example
  void sandFillsTheStorage() {
    StorageAccount sanded = storage(1e-3, 0, 0.01, 0);
    double year = 0.01 * 86400 * 365 / (2650 * 0.6);
    assertThat(sanded.sandPerYearM3()).isEqualTo(year, within(1e-9));
    assertThat(sanded.sandRisePerYearM()).isEqualTo(year / 1000, within(1e-9));
    assertThat(sanded.yearsToTenth().orElseThrow()).isEqualTo(400 / year, within(1e-9));
    assertThat(storage(1e-3, 0, 0, 0).yearsToTenth()).isEmpty();
    assertThat(storage(1e-3, 0, 0.01, 500).yearsToTenth()).hasValue(0);
  }

  @Example
  void waterAndEnergyAreSummed() {
    WaterAccount water = new WaterAccount(THREE.water(0.998), THREE.water(2.994));
    assertThat(water.freshPerDayM3()).isEqualTo(86.4, within(1e-9));
    assertThat(water.recycledShare()).isEqualTo(0.75, within(1e-12));
    Range total =
        EnergyUse.totalPerDayJ(
            List.of(
                new EnergyUse("pump", new Range(1000, 1500, 2000), 0.5),
                new EnergyUse("screw", Range.of(500), 1)));
    assertThat(total.base()).isEqualTo(1250 * 86400, within(1e-3));
    assertThat(total.high()).isEqualTo(1500 * 86400, within(1e-3));
  }

  @Property
  void liquorLimitAndItsInversesAgree(
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 10) double solids,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 100) double water,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 0.2) double target) {
    assertThat(Liquor.limit(solids, Liquor.waterFor(solids, target)))
        .isEqualTo(target, within(1e-12));
    double capture = Liquor.captureFor(solids, water, target);
    double reached = Liquor.limit(solids * (1 - capture), water);
    if (capture > 0) {
      assertThat(reached).isEqualTo(target, within(1e-9));
    } else {
      assertThat(reached).isLessThanOrEqualTo(target + 1e-12);
    }
  }

  @Example
  void threeTimeConstantsAreNinetyFivePerCent() {
    assertThat(Liquor.restsInS(1)).isEqualTo(2.9957, within(1e-4));
    assertThatIllegalArgumentException().isThrownBy(() -> Liquor.limit(-1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> Liquor.timeConstantS(1, 0));
  }
}
