package sandslurry.plant.profile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

/** Levels and falls: what follows from the balance of levels alone. */
class HydraulicProfileProperties {
  private static final double ROUNDING = 1e-9;

  private static Levels at(double level) {
    return new Levels(OptionalDouble.of(level - 2), level - 1, level, level);
  }

  private static String unit(int place) {
    return "unit " + place;
  }

  private static Map<String, Levels> units(List<Double> levels, double datum) {
    Map<String, Levels> units = new LinkedHashMap<>();
    for (double level : levels) {
      units.put(unit(units.size()), at(level + datum));
    }
    return units;
  }

  /** Each unit flows into the next, and the first into the last besides. */
  private static HydraulicProfile chain(Map<String, Levels> units, double yard, double need) {
    List<Fall> falls = new ArrayList<>();
    for (int i = 1; i < units.size(); i++) {
      falls.add(fall(units, i - 1, i, need));
    }
    falls.add(fall(units, 0, units.size() - 1, need));
    return HydraulicProfile.of(new SiteLevels(yard, units), falls, List.of());
  }

  private static Fall fall(Map<String, Levels> units, int from, int to, double need) {
    return new Fall(
        from + " to " + to,
        unit(from),
        unit(to),
        units.get(unit(from)).overflowM(),
        units.get(unit(to)).highestM(),
        Optional.of(new Fall.Need(need, 0, 0)));
  }

  private static Map<String, Levels> raised(HydraulicProfile profile) {
    Map<String, Levels> raised = new LinkedHashMap<>();
    profile
        .levels()
        .units()
        .forEach(
            (name, levels) ->
                raised.put(name, raised(levels, profile.risesM().getOrDefault(name, 0.0))));
    return raised;
  }

  private static Levels raised(Levels levels, double riseM) {
    return new Levels(
        levels.floorM().isPresent()
            ? OptionalDouble.of(levels.floorM().getAsDouble() + riseM)
            : levels.floorM(),
        levels.lowestM() + riseM,
        levels.highestM() + riseM,
        levels.overflowM() + riseM);
  }

  @Property
  void onThePlatformsThatAreFoundEveryFallIsEnoughAndNoneStandsHigherThanItMust(
      @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = -5, max = 5) Double> levels,
      @ForAll @DoubleRange(min = 0.01, max = 2) double need) {
    HydraulicProfile found = chain(units(levels, 0), 0, need);
    HydraulicProfile mended = chain(raised(found), 0, need);
    assertThat(mended.falls())
        .allSatisfy(f -> assertThat(f.availableM()).isGreaterThanOrEqualTo(need - ROUNDING));
    found
        .risesM()
        .keySet()
        .forEach(
            unit ->
                assertThat(
                        mended.falls().stream()
                            .filter(f -> f.from().equals(unit))
                            .mapToDouble(Fall::availableM)
                            .min()
                            .orElseThrow())
                    .isCloseTo(need, within(ROUNDING)));
  }

  @Property
  void nothingChangesWhenTheDatumIsShifted(
      @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = -5, max = 5) Double> levels,
      @ForAll @DoubleRange(min = -400, max = 4000) double datum) {
    HydraulicProfile here = chain(units(levels, 0), 0, 0.3);
    HydraulicProfile there = chain(units(levels, datum), datum, 0.3);
    assertThat(there.risesM().keySet()).isEqualTo(here.risesM().keySet());
    for (String unit : here.levels().units().keySet()) {
      assertThat(there.platformM(unit)).isCloseTo(here.platformM(unit), within(1e-8));
    }
    for (int i = 0; i < here.falls().size(); i++) {
      assertThat(there.falls().get(i).availableM())
          .isCloseTo(here.falls().get(i).availableM(), within(1e-8));
    }
  }

  @Property
  void aHigherPlatformNeverMakesWhatLeavesItTooSmall(
      @ForAll @DoubleRange(min = -5, max = 5) double level,
      @ForAll @DoubleRange(min = 0, max = 2) double need,
      @ForAll @DoubleRange(min = 0, max = 5) double higher) {
    Fall low = fall(units(List.of(level, 0.0), 0), 0, 1, need);
    Fall high = fall(units(List.of(level + higher, 0.0), 0), 0, 1, need);
    if (low.enough()) {
      assertThat(high.enough()).isTrue();
    }
    assertThat(high.availableM()).isGreaterThanOrEqualTo(low.availableM());
  }

  @Property
  void moreFallNeededNeverAsksForLowerPlatforms(
      @ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = -5, max = 5) Double> levels,
      @ForAll @DoubleRange(min = 0, max = 1) double need,
      @ForAll @DoubleRange(min = 0, max = 1) double more) {
    Map<String, Levels> units = units(levels, 0);
    HydraulicProfile little = chain(units, 0, need);
    HydraulicProfile much = chain(units, 0, need + more);
    for (String unit : units.keySet()) {
      assertThat(much.platformM(unit)).isGreaterThanOrEqualTo(little.platformM(unit) - ROUNDING);
    }
  }

  @Example
  void equalLevelsBackUp() {
    Fall level = fall(units(List.of(1.0, 1.0), 0), 0, 1, 0);
    assertThat(level.backsUp()).isTrue();
    assertThat(level.enough()).isFalse();
  }

  /** Down from 3 m: 1.5 m above 1 m needs 0.8 m, and 1 m above 0.5 m needs 0.8 m too. */
  @Example
  void aChainByHand() {
    Map<String, Levels> units = units(List.of(1.5, 1.0, 0.5), 0);
    HydraulicProfile profile =
        HydraulicProfile.of(
            new SiteLevels(-1, units),
            List.of(fall(units, 0, 1, 0.8), fall(units, 1, 2, 0.8)),
            List.of());
    assertThat(profile.risesM().get(unit(1))).isCloseTo(0.3, within(ROUNDING));
    assertThat(profile.risesM().get(unit(0))).isCloseTo(0.6, within(ROUNDING));
    // Its floor stood 2 m below its water at 1.5 m; the yard is at -1 m.
    assertThat(profile.platformM(unit(0))).isCloseTo(1.5 - 2 + 0.6 + 1, within(ROUNDING));
    assertThat(profile.circular()).isFalse();
  }

  @Example
  void noPlatformHelpsACircle() {
    Map<String, Levels> units = units(List.of(1.0, 0.0), 0);
    HydraulicProfile profile =
        HydraulicProfile.of(
            new SiteLevels(0, units),
            List.of(fall(units, 0, 1, 0.1), fall(units, 1, 0, 0.1)),
            List.of());
    assertThat(profile.circular()).isTrue();
    assertThat(profile.risesM()).isEmpty();
  }

  @Example
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Levels(OptionalDouble.empty(), 2, 1, 1)).hasMessageContaining("2");
    assertThatThrownBy(() -> new Levels(OptionalDouble.empty(), 0, Double.NaN, 1))
        .hasMessageContaining("NaN");
    assertThatThrownBy(() -> new Fall.Need(-1, 0, 0)).hasMessageContaining("-1");
  }
}
