package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.profile.ProfileEvaluation;
import sandslurry.assessment.plant.profile.ProfileEvaluation.StreamLine;
import sandslurry.assessment.plant.profile.ProfileFindings;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.profile.Fall;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.profile.Levels;
import sandslurry.plant.profile.Lift;
import sandslurry.units.UnitSystem;

/** Levels of the units of an example, and what they make of its streams. */
class PlantLevelsTest {
  private static final DesignDocument BASE = base();

  private static DesignDocument base() {
    try {
      return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"));
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static PlantSpec plant(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    return document.read().design().orElseThrow().plant().orElseThrow();
  }

  private static HydraulicProfile profile(DesignDocument document, Map<String, StreamLine> lines) {
    return ProfileEvaluation.of(plant(document), lines).orElseThrow();
  }

  private static List<Finding> findings(HydraulicProfile profile) {
    Findings findings = new Findings(UnitSystem.METRIC);
    new ProfileFindings(profile, findings).all();
    return findings.all();
  }

  private static String unit(String name) {
    for (int i = 0; ; i++) {
      if (BASE.text("/plant/units/" + i + "/name").equals(name)) {
        return "/plant/units/" + i;
      }
    }
  }

  /** Floor at -2.4 m, 3 m to the brim at 120 m3: a weir at 80 m3 stands 2 m over the floor. */
  @Test
  void theLevelsOfAPitFollowFromItsFloor() {
    Levels pit = plant(BASE).levels().units().get("Reception pit");
    assertThat(pit.overflowM()).isCloseTo(-0.4, within(1e-9));
    assertThat(pit.highestM()).isCloseTo(-0.4, within(1e-9));
    // Its pumps stop at a fifth of the volume to the weir.
    assertThat(pit.lowestM()).isCloseTo(-2.0, within(1e-9));
    Levels storage = plant(BASE).levels().units().get("First cell");
    assertThat(storage.highestM()).isCloseTo(-5.7 + 4.5 - 0.3, within(1e-9));
  }

  @Test
  void pumpedStreamsLiftAndTheOthersFall() {
    HydraulicProfile profile = profile(BASE, Map.of());
    assertThat(profile.lifts())
        .extracting(Lift::stream)
        .containsExactlyInAnyOrder("recycle", "to press", "screened");
    assertThat(profile.falls())
        .extracting(Fall::stream)
        .contains("box overflow", "clear", "pressed", "surplus")
        .doesNotContain("sand", "fibre", "to press");
    assertThat(findings(profile)).allMatch(f -> f.severity() == Severity.NOTE);
  }

  @Test
  void aPitThatStandsTooHighBacksUpWhatFlowsIntoIt() {
    DesignDocument high = BASE.with(unit("Reception pit") + "/floorLevel", "0.1 m");
    HydraulicProfile profile = profile(high, Map.of());
    assertThat(findings(profile))
        .filteredOn(f -> f.severity() == Severity.FAIL)
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.id()).isEqualTo("profile.backs-up");
              assertThat(f.element()).contains("clear");
            });
    assertThat(profile.risesM().get("Polishing box")).isCloseTo(0.2, within(1e-9));
  }

  @Test
  void aPipeThatNeedsMoreFallThanThereIsFails() {
    StreamLine pipe =
        new StreamLine(false, OptionalDouble.empty(), Optional.of(new Fall.Need(2.2, 0.15, 0.05)));
    HydraulicProfile profile = profile(BASE, Map.of("clear", pipe));
    assertThat(findings(profile))
        .filteredOn(f -> f.id().equals("profile.fall-short"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.FAIL));
    assertThat(profile.risesM().get("Polishing box")).isCloseTo(0.1, within(1e-9));
  }

  @Test
  void aLineWithAnotherStaticHeadThanTheLevelsIsTold() {
    HydraulicProfile low =
        profile(
            BASE, Map.of("to press", new StreamLine(true, OptionalDouble.of(4), Optional.empty())));
    assertThat(findings(low))
        .filteredOn(f -> f.id().equals("profile.head-low"))
        .singleElement()
        .satisfies(f -> assertThat(f.severity()).isEqualTo(Severity.CAUTION));
    // From the stop level of the pit, -2 m, to the separator at 3.6 m.
    HydraulicProfile right =
        profile(
            BASE,
            Map.of("to press", new StreamLine(true, OptionalDouble.of(5.6), Optional.empty())));
    assertThat(findings(right)).noneMatch(f -> f.id().startsWith("profile.head"));
  }

  @Test
  void withoutLevelsThereIsNoProfile() {
    DesignDocument none = BASE;
    for (int i = 0; i < 10; i++) {
      for (String level : List.of("floorLevel", "waterLevel", "overflowLevel")) {
        none = none.without("/plant/units/" + i + "/" + level);
      }
    }
    assertThat(ProfileEvaluation.of(plant(none), Map.of())).isEmpty();
  }

  @Test
  void waterBelowTheFloorIsRefused() {
    assertThat(BASE.with(unit("Box") + "/overflowLevel", "1 m").read().problems())
        .singleElement()
        .satisfies(p -> assertThat(p.toString()).contains("below the floor"));
  }
}
