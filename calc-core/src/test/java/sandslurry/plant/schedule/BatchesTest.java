package sandslurry.plant.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import sandslurry.plant.Plant;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Pit;
import sandslurry.plant.schedule.DaySchedule.Period;

class BatchesTest {
  private static final double DAY = 86400;

  @Property
  void whateverTheBatchesTheDayHasItsMass(
      @ForAll @IntRange(min = 1, max = 24) int perDay,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.999) double first,
      @ForAll @Scale(9) @DoubleRange(min = 0.001, max = 1) double part,
      @ForAll @IntRange(min = 1, max = 200) int steps) {
    double interval = DAY / perDay;
    Batches batches = new Batches(first * DAY, interval, part * interval);
    double sum = 0;
    for (int i = 0; i < steps; i++) {
      sum += batches.factor(DAY * i / steps, DAY * (i + 1) / steps) / steps;
    }
    assertThat(sum).isEqualTo(1, within(1e-9));
    assertThat(batches.perDay()).isEqualTo(perDay);
    assertThat(batches.peakFactor()).isEqualTo(1 / part, within(1e-9 / part));
  }

  @Property(tries = 60)
  void aDayOfBatchesHasTheTotalsOfADayOfEvenFeed(
      @ForAll @IntRange(min = 1, max = 6) int perDay,
      @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.99) double first,
      @ForAll @Scale(9) @DoubleRange(min = 0.02, max = 1) double part) {
    Mode mode =
        new Mode("only", Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3), Plant.feeds(0.1));
    double interval = DAY / perDay;
    Batches batches = new Batches(first * DAY, interval, part * interval);
    Day even = Plant.always(mode).run(1, Map.of(), 3600).last().orElseThrow();
    DayRun run =
        DaySchedule.of(List.of(new Period(mode, 0, DAY)), Map.of("manure", batches))
            .run(1, Map.of(), 3600);
    assertThat(run.stopped()).isEmpty();
    Day day = run.last().orElseThrow();
    for (int i = 0; i < THREE.count(); i++) {
      double fed = even.meanFlows().get("manure").kgps(i);
      assertThat(day.meanFlows().get("manure").kgps(i)).isEqualTo(fed, within(1e-9 * fed));
    }
    assertThat(day.imbalance()).isLessThan(1e-9);
    UnitDay box = day.units().get("box");
    assertThat(box.peakFeed().volumeM3ps()).isGreaterThanOrEqualTo(box.meanM3ps() * (1 - 1e-9));
    assertThat(even.units().get("box").peakOverMean()).isEqualTo(1, within(1e-6));
  }

  @Example
  void aBatchOverMidnightCountsOnBothSides() {
    Batches late = new Batches(23.5 * 3600, DAY, 3600);
    assertThat(late.factor(0, 1800)).isEqualTo(24, within(1e-9));
    assertThat(late.factor(1800, 3600)).isZero();
    assertThat(late.factor(23.5 * 3600, DAY)).isEqualTo(24, within(1e-9));
    assertThat(late.edgesS()).containsExactlyInAnyOrder(1800.0, 23.5 * 3600);
  }

  @Example
  void whatIsNoScheduleIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Batches(0, 7 * 3600, 60));
    assertThatIllegalArgumentException().isThrownBy(() -> new Batches(DAY, DAY, 60));
    assertThatIllegalArgumentException().isThrownBy(() -> new Batches(0, DAY, DAY + 1));
    assertThatIllegalArgumentException().isThrownBy(() -> new Batches(Double.NaN, DAY, 60));
    assertThatIllegalArgumentException().isThrownBy(() -> new Batches(0, 3600, 60).factor(5, 5));
  }

  @Example
  void aPumpInBatchesTakesItsMeanAndTheBatchFillsThePit() {
    Pit pit = new Pit("sump", List.of("in"), Map.of("out", 1e-3), Optional.empty(), 80, 100, 50);
    Mode mode =
        new Mode(
            "only",
            Network.of(List.of(pit), List.of("in"), pit.outlets()),
            Map.of("in", THREE.water(998e-3)));
    Day day =
        DaySchedule.of(
                List.of(new Period(mode, 0, DAY)),
                Map.of("out", new Batches(0, DAY / 4, 600), "in", new Batches(7200, DAY / 4, 1200)))
            .run(1, Map.of(), 3600)
            .last()
            .orElseThrow();
    assertThat(day.meanFlows().get("out").volumeM3ps()).isEqualTo(1e-3, within(1e-12));
    PitDay sump = day.pits().get("sump");
    // Each of the four batches takes, and later brings, 21.6 m3.
    assertThat(sump.leastM3()).isEqualTo(50 - 21.6, within(1e-6));
    assertThat(sump.mostM3()).isEqualTo(50, within(1e-6));
    assertThat(sump.endContents().volumeM3ps()).isEqualTo(50, within(1e-6));
  }
}
