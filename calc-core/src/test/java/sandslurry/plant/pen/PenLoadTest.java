package sandslurry.plant.pen;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.units.InUnit;

class PenLoadTest {
  private static Pen pen(Range sandKgPerDay, double scrapes) {
    return new Pen(
        "pen",
        100,
        InUnit.KILOGRAM_PER_DAY.si(35),
        Map.of(),
        Range.of(1),
        100,
        sandKgPerDay.map(InUnit.KILOGRAM_PER_DAY::si),
        Range.of(0),
        scrapes);
  }

  private static PenLoad load(Pen pen) {
    return PenLoad.of(pen, ManureProductions.DEFAULT, ManureSolids.FRESH, THREE);
  }

  @Test
  void batchesAddUpToTheDay() {
    PenLoad load = load(pen(new Range(12, 23, 30), 3));
    assertThat(3 * load.volumePerBatchM3().base())
        .isEqualTo(load.volumePerDayM3().base(), within(1e-12));
    assertThat(3 * load.massPerBatchKg().high())
        .isEqualTo(load.massPerDayKg().high(), within(1e-9));
    assertThat(load.massPerDayKg().base()).isEqualTo(100 * (0.616 * 35 + 46.2 + 23), within(1e-6));
    assertThat(load.sandPerDayKg().base()).isEqualTo(2300 * 0.97, within(1e-6));
  }

  @Test
  void moreSandMakesItDenserButNotThicker() {
    PenLoad load = load(pen(new Range(12, 23, 30), 3));
    assertThat(load.densityKgM3().low()).isLessThan(load.densityKgM3().base());
    assertThat(load.densityKgM3().high()).isGreaterThan(load.densityKgM3().base());
    Range solids = load.range(Stream::manureTotalSolids);
    assertThat(solids.high() - solids.low()).isLessThan(1e-12);
    assertThat(load.sandMassShare().base()).isGreaterThan(load.sandBulkShare(0.4).base());
    assertThat(load.sandBulkShare(0.4).base()).isGreaterThan(load.sandVolumeShare().base());
  }

  @Test
  void aBarnWithoutSandAddsLiquorOnly() {
    PenLoad sandy = load(pen(Range.of(23), 3));
    PenLoad plain = load(pen(Range.of(0), 2));
    PenLoad both = PenLoad.sum("both", List.of(sandy, plain));
    assertThat(plain.sandMassShare().base()).isZero();
    assertThat(both.sandPerDayKg().base()).isEqualTo(sandy.sandPerDayKg().base(), within(1e-9));
    assertThat(both.massPerDayKg().base())
        .isEqualTo(sandy.massPerDayKg().base() + plain.massPerDayKg().base(), within(1e-6));
    assertThat(both.massPerBatchKg().base())
        .isEqualTo(both.massPerDayKg().base() / 2, within(1e-6));
  }

  @Test
  void washWaterWidensTheRangeOfSolids() {
    Pen wet =
        new Pen(
            "wet",
            100,
            InUnit.KILOGRAM_PER_DAY.si(35),
            Map.of(OtherCattle.DRY_COW, 10.0),
            new Range(0.9, 1, 1.1),
            100,
            Range.of(InUnit.KILOGRAM_PER_DAY.si(23)),
            new Range(1e-5, 2e-5, 2e-4),
            2);
    PenLoad load = load(wet);
    assertThat(load.totalSolids().low()).isLessThan(0.6 * load.totalSolids().base());
    assertThat(load.totalSolids().high()).isGreaterThan(load.totalSolids().base());
    assertThat(wet.scrapingIntervalS()).isEqualTo(43200);
  }

  @Test
  void aMilkYieldOutsideTheTableIsReported() {
    Pen extreme =
        new Pen(
            "low",
            10,
            InUnit.KILOGRAM_PER_DAY.si(10),
            Map.of(),
            Range.of(1),
            10,
            Range.of(0),
            Range.of(0),
            2);
    assertThat(load(extreme).excesses()).isNotEmpty();
    assertThat(load(pen(Range.of(20), 2)).excesses()).isEmpty();
  }

  @Test
  void nonsenseIsRefusedByName() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> pen(Range.of(-1), 3))
        .withMessageContaining("pen: sand of a stall");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> pen(Range.of(1), 0))
        .withMessageContaining("scrapes");
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(2, 1, 3));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, 2, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ManureProductions.ASABE.manureKgps(Double.NaN));
  }
}
