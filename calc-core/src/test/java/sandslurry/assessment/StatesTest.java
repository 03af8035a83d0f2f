package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.golden.Shipped.assess;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.station.StateResult.SuctionPoint;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Step;

/** The states that a line meets, on the example with two pumps and on changes of it. */
class StatesTest {
  private static DesignDocument example;
  private static Assessment assessed;

  @BeforeAll
  static void load() throws Exception {
    example = DesignDocument.load(Path.of("..", "docs", "examples", "two-pumps-six-states.json"));
    assessed = assess(example);
  }

  private static Map<String, StateResult> states(Assessment assessment) {
    return assessment.service().states().stream()
        .collect(Collectors.toMap(StateResult::name, s -> s));
  }

  private static double flow(Assessment assessment, String state) {
    return states(assessment).get(state).point().orElseThrow().flowM3ps();
  }

  private static SuctionPoint suction(Assessment assessment, String state) {
    return states(assessment)
        .get(state)
        .point()
        .orElseThrow()
        .pumps()
        .get(0)
        .suction()
        .orElseThrow();
  }

  private static DesignDocument bare() {
    return example
        .without("/lines/0/pump/others")
        .without("/lines/0/states")
        .without("/lines/0/operation")
        .without("/lines/0/suction");
  }

  @Test
  void theVerdictIsThatOfTheWorstState() {
    Severity worst =
        assessed.service().states().stream()
            .map(StateResult::severity)
            .max(Comparator.naturalOrder())
            .orElseThrow();
    assertThat(assessed.service().governing().orElseThrow().severity()).isEqualTo(worst);
    assertThat(assessed.findings())
        .filteredOn(f -> f.topic() == Topic.STATES)
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(worst);
    assertThat(assessed.verdict()).isEqualTo(worst);
  }

  @Test
  void everyStateThatIsNotAPassSaysWhy() {
    assertThat(assessed.service().states())
        .filteredOn(s -> s.severity().compareTo(Severity.PASS) > 0)
        .isNotEmpty()
        .allMatch(s -> !s.reasons().isEmpty());
  }

  @Test
  void moreWearNeverGivesMoreFlow() {
    double before = flow(assessed, "pump duty");
    for (String share : List.of("5 %", "15 %", "25 %")) {
      double flow = flow(assess(example.with("/lines/0/states/wornHead", share)), "pumps worn");
      assertThat(flow).as(share).isLessThan(before);
      before = flow;
    }
  }

  @Test
  void aLowerPitNeverGivesMoreFlowNorMoreNpsh() {
    double flow = Double.POSITIVE_INFINITY;
    double available = Double.POSITIVE_INFINITY;
    for (String level : List.of("2 m", "1 m", "0 m", "-2 m")) {
      Assessment at = assess(example.with("/lines/0/states/lowSourceLevel", level));
      assertThat(flow(at, "pit at its lowest")).isLessThan(flow);
      assertThat(suction(at, "pit at its lowest").availableM()).isLessThan(available);
      flow = flow(at, "pit at its lowest");
      available = suction(at, "pit at its lowest").availableM();
    }
  }

  @Test
  void npshAvailableIsThatOfTheHandFormula() {
    Point duty = states(assessed).get("pump duty").point().orElseThrow();
    SuctionPoint suction = suction(assessed, "pump duty");
    // Air at 300 m by ISO 2533: 97 773 Pa; vapour of water at 15 degC: 1 706 Pa (IAPWS R7-97).
    double head = (97773 - 1706) / (duty.mixture().densityKgM3() * 9.80665);
    assertThat(suction.availableM()).isCloseTo(head + 2 - suction.lossM(), within(0.005));
  }

  @Test
  void aSuctionLiftTooHighCavitates() {
    Assessment lift =
        assess(
            example
                .with("/lines/0/route/sourceLevel", "-7 m")
                .without("/lines/0/states/highSourceLevel")
                .without("/lines/0/states/lowSourceLevel"));
    assertThat(lift.findings())
        .anyMatch(
            f ->
                f.severity() == Severity.FAIL
                    && f.topic() == Topic.PUMP
                    && f.what().contains("cavitates"));
  }

  @Test
  void twoEqualPumpsInParallelShareTheFlowAndGiveMoreThanOne() {
    Assessment two = assess(bare().with("/lines/0/pump/count", "2"));
    List<PumpPoint> pumps = states(two).get("pump duty").point().orElseThrow().pumps();
    assertThat(pumps).hasSize(2);
    assertThat(pumps.get(0).flowM3ps()).isCloseTo(pumps.get(1).flowM3ps(), within(1e-9));
    assertThat(pumps.get(0).flowM3ps() + pumps.get(1).flowM3ps())
        .isCloseTo(flow(two, "pump duty"), within(1e-9));
    double one = flow(assess(bare()), "pump duty");
    assertThat(flow(two, "without pump 1")).isCloseTo(one, within(1e-6));
    assertThat(flow(two, "pump duty")).isBetween(one, 2 * one);
  }

  @Test
  void theSpeedNamedAsCureRestoresTheVelocity() {
    String cure =
        assessed.findings().stream()
            .filter(f -> f.topic() == Topic.STATES)
            .findFirst()
            .orElseThrow()
            .cure();
    String speed = cure.replaceAll("(?s).*a speed of (\\S+) rpm.*", "$1");
    DesignDocument faster =
        example
            .with("/lines/0/pump/speed", Double.parseDouble(speed) + 1 + " rpm")
            .with("/lines/0/pump/others/0/speed", Double.parseDouble(speed) + 1 + " rpm");
    Point point = states(assess(faster)).get("without pump 1").point().orElseThrow();
    assertThat(point.worst().velocityMps())
        .isGreaterThanOrEqualTo(point.worst().toPassMps().orElseThrow());
    assertThat(point.worst().velocityMps())
        .isLessThan(1.01 * point.worst().toPassMps().orElseThrow());
  }

  @Test
  void aMotorTooSmallForItsWorstStateFails() {
    Assessment small = assess(example.with("/lines/0/pump/motorRating", "5 kW"));
    assertThat(small.findings())
        .anyMatch(f -> f.element().equals("motor") && f.severity() == Severity.FAIL);
    assertThat(assessed.findings())
        .anyMatch(f -> f.element().equals("motor") && f.severity() == Severity.PASS);
  }

  @Test
  void aFlushSupplyThatIsTooSlowIsACaution() {
    Assessment slow = assess(example.with("/lines/0/operation/flushFlow", "20 L/s"));
    assertThat(slow.findings())
        .anyMatch(f -> f.element().equals("flush") && f.severity() == Severity.CAUTION);
    assertThat(assessed.findings())
        .anyMatch(f -> f.element().equals("flush") && f.severity() == Severity.PASS);
  }

  @Test
  void theDayIsVolumeOverFlow() {
    double flow = flow(assessed, "pump duty");
    ServiceResult.Day day = assessed.service().day().orElseThrow();
    assertThat(day.runningS()).isCloseTo(400 / flow, within(1e-6 * day.runningS()));
    assertThat(day.startsPs().orElseThrow()).isCloseTo(flow / 80, within(1e-12));
    Assessment tooMuch = assess(example.with("/lines/0/operation/dailyVolume", "9000 m3"));
    assertThat(tooMuch.findings())
        .anyMatch(f -> f.topic() == Topic.DAY && f.severity() == Severity.FAIL);
  }

  @Test
  void aPulsingLineSettlesInItsPausesUnlessAVesselDampsIt() throws Exception {
    DesignDocument piston =
        example
            .without("/lines/0/pump")
            .without("/lines/0/states/wornHead")
            .with("/lines/0/pump/kind", "piston")
            .with("/lines/0/pump/displacement", "60 L")
            .with("/lines/0/pump/strokeRate", "60 1/min")
            .with("/lines/0/pump/volumetricEfficiency", "95 %")
            .with("/lines/0/pump/pressureLimit", "1500 kPa")
            .with("/lines/0/pump/cylinders", "1");
    Assessment pulsing = assess(piston);
    PulsationResult pulsation = pulsing.service().pulsation().orElseThrow();
    assertThat(pulsation.ripple().leastRatio()).isZero();
    assertThat(pulsing.findings())
        .anyMatch(f -> f.severity() == Severity.CAUTION && f.id().equals("stop.pulse-settles"));
    Assessment damped = assess(piston.with("/lines/0/pump/pulsationPassed", "2 %"));
    assertThat(damped.findings())
        .anyMatch(f -> f.severity() == Severity.PASS && f.what().contains("stays above"));
    assertThat(damped.service().pulsation().orElseThrow().accelerationM())
        .isLessThan(pulsation.accelerationM());
  }

  @Test
  void aScrewAndAGravityPipeAreJudged() {
    Assessment both =
        assess(
            bare()
                .with("/screw/diameter", "400 mm")
                .with("/screw/speed", "30 rpm")
                .with("/screw/length", "10 m")
                .with("/screw/load", "20 L/s")
                .with("/screw/bulkDensity", "1200 kg/m3")
                .with("/gravityRun/bore", "300 mm")
                .with("/gravityRun/slope", "0.05 %")
                .with("/gravityRun/flow", "10 L/s"));
    // Swept pi/4 0.4^2 0.4 0.5 = 25.1 L/s, so the load fills it to 80 %.
    assertThat(both.service().screw().orElseThrow().loading().value())
        .isCloseTo(20 / 25.13, within(1e-3));
    assertThat(both.findings())
        .filteredOn(f -> f.topic() == Topic.FEED)
        .extracting(Finding::severity)
        .containsExactly(Severity.FAIL, Severity.FAIL);
  }

  @Test
  void aDesignWithoutStatesHasNoFindingOfThem() {
    assertThat(assess(bare()).findings()).noneMatch(f -> f.topic() == Topic.STATES);
  }

  @Test
  void everyNumberOfServiceHasItsWorking() {
    assertThat(assessed.working())
        .extracting(Step::element)
        .contains("stop and restart", "day of pumping", "surge", "line in service");
    assertThat(assessed.working())
        .extracting(Step::symbol)
        .contains("NPSHa", "NPSH", "p_low", "W_1");
  }
}
