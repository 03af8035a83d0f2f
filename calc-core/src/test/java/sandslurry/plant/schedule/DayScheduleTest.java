package sandslurry.plant.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.plant.Plant.THREE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sandslurry.plant.Constituents;
import sandslurry.plant.Plant;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.DaySchedule.Period;
import sandslurry.plant.unit.Liquor;
import sandslurry.units.InUnit;

class DayScheduleTest {
  private static final double HOUR = 3600;

  private static Mode sump(double inM3ps, double outM3ps, Optional<String> weir) {
    Pit pit = new Pit("sump", List.of("in"), Map.of("out", outM3ps), weir, 80, 100, 50);
    return new Mode(
        "only",
        Network.of(List.of(pit), List.of("in"), pit.outlets()),
        Map.of("in", THREE.water(998 * inM3ps)));
  }

  private static Day day(Mode mode) {
    return Plant.always(mode).run(1, Map.of(), 600).last().orElseThrow();
  }

  @Test
  void aPitFillsByWhatComesLessWhatGoes() {
    PitDay pit = day(sump(3e-4, 1e-4, Optional.empty())).pits().get("sump");
    assertThat(pit.endContents().volumeM3ps()).isEqualTo(50 + 2e-4 * 86400, within(1e-9));
    assertThat(pit.overflowed()).isFalse();
    assertThat(pit.leastM3()).isEqualTo(50, within(1e-9));
  }

  @Test
  void whatDoesNotFitIsSpilledAndCounted() {
    Day day = day(sump(1e-3, 1e-4, Optional.empty()));
    PitDay pit = day.pits().get("sump");
    assertThat(pit.overflowed()).isTrue();
    assertThat(pit.spilledM3()).isEqualTo(50 + 9e-4 * 86400 - 100, within(1e-6));
    assertThat(pit.mostM3()).isEqualTo(100, within(1e-9));
    assertThat(day.meanFlows().get("spilled from sump").volumeM3ps() * 86400)
        .isEqualTo(pit.spilledM3(), within(1e-9));
    assertThat(day.imbalance()).isLessThan(1e-12);
  }

  @Test
  void aWeirKeepsItFromSpilling() {
    Day day = day(sump(1e-3, 1e-4, Optional.of("weir")));
    PitDay pit = day.pits().get("sump");
    assertThat(pit.overflowed()).isFalse();
    assertThat(pit.mostM3()).isLessThan(80 + 1e-9);
    assertThat(day.meanFlows().get("weir").volumeM3ps() * 86400)
        .isEqualTo(50 + 9e-4 * 86400 - pit.endContents().volumeM3ps(), within(1e-6));
  }

  @Test
  void aPumpThatIsLargerThanWhatComesInStopsByTheLevel() {
    PitDay pit = day(sump(1e-4, 1e-3, Optional.empty())).pits().get("sump");
    // It pumps down to the stop level, a fifth of 80 m3, and then what comes in.
    assertThat(pit.endContents().volumeM3ps()).isEqualTo(16, within(1e-9));
    double pumped = 50 + 1e-4 * 86400 - 16;
    assertThat(pit.running().get("out")).isEqualTo(pumped / 86.4, within(1e-9));
    assertThat(pit.overflowed()).isFalse();
  }

  @Test
  void theLoopApproachesTheBalanceOfItsMode() {
    Network loop = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3);
    Mode mode = new Mode("recycle", loop, Plant.feeds(0.1));
    SteadyBalance rest = (SteadyBalance) mode.steadyState();
    DayRun run = Plant.always(mode).run(25, Map.of(), 1800);
    assertThat(run.stopped()).isEmpty();
    assertThat(run.days()).allMatch(day -> day.imbalance() < 1e-9);
    double limit = rest.stream("recycle").dissolvedShare();
    double end = run.last().orElseThrow().pits().get("pit").endContents().dissolvedShare();
    assertThat(end).isEqualTo(limit, within(5e-4 * limit));
    // The mixed loop: what the pit holds at rest over what is not caught.
    double held = Plant.pit(1e-3).atRest(rest).kgps(Constituents.DISSOLVED);
    double purge = rest.stream("surplus").kgps(Constituents.DISSOLVED);
    double tau = Liquor.timeConstantS(held, purge);
    double rests = InUnit.DAY.of(Liquor.restsInS(tau));
    int day =
        run.settledBy(d -> d.pits().get("pit").endContents().dissolvedShare(), limit, 0.05)
            .orElseThrow();
    assertThat((double) day).isBetween(0.5 * rests, 1.5 * rests + 1);
  }

  /** A pool that is brought on is after six days where its days lead. */
  @Test
  void aPoolIsBroughtOnToWhereItsDaysLead() {
    Network loop = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3);
    Mode mode = new Mode("recycle", loop, Plant.feeds(0.002));
    SteadyBalance rest = (SteadyBalance) mode.steadyState();
    double limit = rest.stream("recycle").dissolvedShare();
    Map<String, Stream> pool = Map.of("pit", rest.stream("recycle").constituents().water(1));
    DayRun brought = Plant.always(mode).run(10, pool, 1800);

    double fifth = after(brought.days().get(4));
    assertThat(fifth).isLessThan(0.99 * limit);
    assertThat(after(brought.days().get(5)))
        .isCloseTo(limit, within(0.02 * Math.abs(limit - fifth)));
    assertThat(brought.days()).allMatch(day -> day.imbalance() < 1e-9);
  }

  private static double after(Day day) {
    return day.pits().get("pit").endContents().dissolvedShare();
  }

  @Test
  void washWaterForSomeHoursThinsTheLoop() {
    Network recycle = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 1e-3);
    Network wash = Plant.loop(Plant.sandOnly(0.5, 0.9, 1), 0.5, 0);
    Mode first = new Mode("recycle", recycle, Plant.feeds(0.05));
    Mode second = new Mode("wash", wash, Plant.feeds(1.05));
    DayRun always = Plant.always(first).run(20, Map.of(), 1800);
    DayRun mixed =
        DaySchedule.of(
                List.of(new Period(second, 18 * HOUR, 24 * HOUR), new Period(first, 0, 18 * HOUR)),
                Map.of())
            .run(20, Map.of(), 1800);
    assertThat(mixed.last().orElseThrow().pits().get("pit").endContents().totalSolids())
        .isLessThan(
            0.8 * always.last().orElseThrow().pits().get("pit").endContents().totalSolids());
    assertThat(mixed.days()).allMatch(day -> day.imbalance() < 1e-9);
    assertThat(mixed.last().orElseThrow().meanFlows().get("wash").waterKgps())
        .isEqualTo(0.25 * 1.05 + 0.75 * 0.05, within(1e-9));
  }

  @Test
  void gapsOverlapsAndStrangePitsAreToldAtOnce() {
    Mode a = sump(1e-4, 1e-4, Optional.empty());
    Pit other = new Pit("tank", List.of("in"), Map.of("out", 1e-4), Optional.empty(), 1, 1, 1);
    Mode b =
        new Mode(
            "other",
            Network.of(List.of(other), List.of("in"), other.outlets()),
            Map.of("in", THREE.water(1)));
    assertThat(
            DaySchedule.problems(
                List.of(new Period(a, HOUR, 10 * HOUR), new Period(b, 9 * HOUR, 23 * HOUR))))
        .hasSize(4);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> DaySchedule.of(List.of(new Period(a, 0, HOUR)), Map.of()))
        .withMessageContaining("86400");
  }
}
