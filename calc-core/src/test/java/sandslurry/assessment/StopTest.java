package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.service.ServiceResult.Day;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.StopResult.FlushFlow;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.finding.Value;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/** A line that stops, is flushed, pulses, surges and is fed by a screw. */
class StopTest {
  private static final String RUN =
      "{\"name\": \"%s\", \"pipe\": {\"system\": \"ASTM D1785\", \"size\": \"6 in\","
          + " \"class\": \"Sch 80\"}, \"length\": \"%s m\", \"rise\": \"%s m\"}";

  private static DesignDocument flat;

  @BeforeAll
  static void load() throws Exception {
    flat =
        DesignDocument.load(Path.of("..", "docs", "examples", "two-pumps-six-states.json"))
            .without("/lines/0/pump/others")
            .without("/lines/0/states")
            .without("/lines/0/operation/flushFlow")
            .without("/lines/0/operation/flushVolume");
  }

  private static DesignDocument with(DesignDocument document, Object... runs) {
    DesignDocument longer = document;
    for (int i = 0; i < runs.length; i += 3) {
      longer =
          longer.insert(
              "/lines/0/route/runs",
              1 + i / 3,
              String.format(Locale.ROOT, RUN, runs[i], runs[i + 1], runs[i + 2]));
    }
    return longer;
  }

  private static Assessment assess(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    Assessment assessment = Evaluation.assess(document.read().design().orElseThrow());
    assertThat(new TextView(100).write(DesignReport.everything(assessment)))
        .doesNotContain("NaN", "Infinity");
    return assessment;
  }

  private static StopResult stop(DesignDocument document) {
    return assess(document).service().stop().orElseThrow();
  }

  private static List<Finding> of(Assessment assessment, Topic topic, String element) {
    return assessment.findings().stream()
        .filter(f -> f.topic() == topic && f.element().equals(element))
        .toList();
  }

  @Test
  void aFlatLineHasNoPlugAndALowPointHasOneOfBothSides() {
    assertThat(stop(flat).plugs()).isEmpty();
    StopResult stop = stop(with(flat, "Down", 20, -10, "Up", 15, 12));
    Plug plug = stop.plugs().get(0);
    assertThat(stop.plugs()).hasSize(1);
    assertThat(plug.where()).isEqualTo("the low point between Down and Up");
    assertThat(plug.parts().lengthM()).isCloseTo(35 * 0.03 / 0.6, within(1e-9));
    // Weight of the climbing part: 0.75 m of packed sand, 1651 kg/m3 submerged, on 12 in 15.
    assertThat(plug.parts().climbingWeightPa())
        .isCloseTo(0.75 * 0.6 * (2650 - 999.1) * 9.80665 * 0.8, within(30.0));
    assertThat(stop.restart().plugPa()).isEqualTo(plug.frictionPa());
    assertThat(plug.movable()).isFalse();
  }

  @Test
  void runsOfTheSameWayLieOnOneHeapAndALevelRunPartsThem() {
    assertThat(stop(with(flat, "Up", 15, 12, "On", 15, 12)).plugs())
        .extracting(Plug::where)
        .containsExactly("the foot of Up");
    assertThat(stop(with(flat, "Down", 20, -10, "Level", 5, 0, "Up", 15, 12)).plugs())
        .extracting(Plug::where)
        .containsExactly("the foot of Down", "the foot of Up");
  }

  @Test
  void anUprightRiserStandsUnderTheWeightOfItsSandHoweverItLies() {
    StopResult stop = stop(with(flat, "Riser", 10, 10));
    StopResult before = stop(flat);
    // Ten metres of mixture more: sand that has fallen to the foot weighs what it weighed afloat.
    double mixture = 0.03 * 2650 + 0.97 * 999.1;
    assertThat(stop.pressures().staticPa() - before.pressures().staticPa())
        .isCloseTo(10 * mixture * 9.80665, within(100.0));
    // Friction of an upright plug that liquid seeps through: none beyond its weight.
    assertThat(stop.plugs().get(0).frictionPa()).isCloseTo(0, within(1e-6));
    assertThat(stop.plugs().get(0).wedgedPa().orElseThrow()).isGreaterThan(0);
    // The bed of the level part is unchanged: the riser has none.
    assertThat(stop.restart().slidingBedPa())
        .isCloseTo(before.restart().slidingBedPa(), within(1e-6));
    assertThat(stop.runs().get(1).settlingS().orElseThrow())
        .isGreaterThan(10 * stop.runs().get(0).settlingS().orElseThrow());
  }

  @Test
  void aPlugTooLongIsToldAndNoFlushPassesForIt() {
    DesignDocument valley = with(flat, "Down", 20, -10, "Up", 15, 12);
    Assessment assessed = assess(valley.with("/lines/0/operation/flushFlow", "90 L/s"));
    assertThat(of(assessed, Topic.STOP, "the low point between Down and Up"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.CAUTION);
              assertThat(f.id()).isEqualTo("stop.packs-too-long");
            });
    assertThat(of(assessed, Topic.STOP, "flush"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.CAUTION);
              assertThat(f.id()).isEqualTo("stop.flush-not-plugs");
            });
    assertThat(of(assess(flat.with("/lines/0/operation/flushFlow", "90 L/s")), Topic.STOP, "flush"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.PASS);
  }

  @Test
  void aVeryLongPlugIsBeyondAnyPumpAndTheReportSaysSo() {
    Assessment assessed = assess(with(flat, "Down", 150, -90, "Up", 150, 95));
    StopResult stop = assessed.service().stop().orElseThrow();
    assertThat(stop.restart().highPa()).isEmpty();
    assertThat(new TextView(100).write(DesignReport.everything(assessed)))
        .contains("beyond any pump");
    assertThat(assessed.findings()).anyMatch(f -> f.reasons().contains("restart-beyond"));
  }

  @Test
  void aTankGivesLessOverABedAndLessStillIsNeverMoreThanTheCleanLine() {
    double before = 0;
    for (String level : List.of("10 m", "20 m", "40 m")) {
      FlushFlow supply =
          stop(flat.with("/lines/0/operation/flushLevel", level)).supply().orElseThrow();
      double clean = supply.cleanM3ps().orElseThrow();
      assertThat(supply.loadedM3ps().orElse(0)).isLessThan(clean);
      assertThat(supply.bedM3ps().orElse(0)).isLessThan(clean);
      assertThat(clean).as(level).isGreaterThan(before);
      before = clean;
    }
  }

  @Test
  void theHeadOfATankIsWhatTheCleanLineAsksAtItsFlow() {
    Assessment assessed = assess(flat.with("/lines/0/operation/flushLevel", "20 m"));
    double flow =
        assessed.service().stop().orElseThrow().supply().orElseThrow().cleanM3ps().orElseThrow();
    // The same flow of water through the same line, as a design of its own.
    Assessment water =
        assess(
            flat.without("/lines/0/pump")
                .without("/lines/0/suction")
                .without("/lines/0/operation")
                .with("/lines/0/mixture/volumeFraction", "0 %")
                .with("/lines/0/flow/minimum", flow * 1000 + " L/s")
                .with("/lines/0/flow/design", flow * 1000 + " L/s")
                .with("/lines/0/flow/maximum", flow * 1000 + " L/s"));
    LineState state = water.line().orElseThrow().states().get(0);
    double head = state.systemHeadM();
    // The head of the line is told from the level of its pit, 2 m above its start.
    assertThat(head + 2).isCloseTo(20, within(1e-4));
  }

  @Test
  void theFlushByThePumpIsTheFlowOfItsWaterState() {
    Assessment assessed =
        assess(
            flat.with("/lines/0/operation/flushPump", "yes")
                .with("/lines/0/states/flushWater", "yes"));
    double state =
        assessed.service().states().stream()
            .filter(s -> s.name().equals("flush with water"))
            .findFirst()
            .orElseThrow()
            .point()
            .orElseThrow()
            .flowM3ps();
    FlushFlow supply = assessed.service().stop().orElseThrow().supply().orElseThrow();
    assertThat(supply.cleanM3ps().orElseThrow()).isCloseTo(state, within(1e-6));
    assertThat(of(assessed, Topic.STOP, "flush"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.CAUTION);
  }

  @Test
  void aCurveTooWeakForTheLineGivesNothing() {
    DesignDocument weak =
        flat.insert(
                "/lines/0/operation/flushCurve", 0, "{\"flow\": \"0 L/s\", \"head\": \"2.5 m\"}")
            .insert(
                "/lines/0/operation/flushCurve", 1, "{\"flow\": \"40 L/s\", \"head\": \"1 m\"}");
    FlushFlow supply = stop(weak).supply().orElseThrow();
    assertThat(supply.cleanM3ps()).isEmpty();
    assertThat(supply.loadedM3ps()).isEmpty();
    assertThat(of(assess(weak), Topic.STOP, "flush").get(0).id()).isEqualTo("stop.flush-no-start");
  }

  private static DesignDocument ram(String dwell) {
    return flat.without("/lines/0/pump")
        .with("/lines/0/pump/kind", "piston")
        .with("/lines/0/pump/displacement", "300 L")
        .with("/lines/0/pump/strokeRate", "11 1/min")
        .with("/lines/0/pump/volumetricEfficiency", "95 %")
        .with("/lines/0/pump/pressureLimit", "1500 kPa")
        .with("/lines/0/pump/cylinders", "2")
        .with("/lines/0/pump/cylinderDrive", "hydraulic")
        .with("/lines/0/pump/dwell", dwell);
  }

  @Test
  void aLongDwellIsACautionWithTheTimeToSettleAndAShortOneIsNot() {
    PulsationResult.Pulse pause =
        assess(ram("1.5 s")).service().pulsation().orElseThrow().runs().get(0);
    assertThat(pause.leastMps()).isZero();
    assertThat(pause.longestS()).isBetween(1.5, 1.7);
    assertThat(pause.fallM() / pause.longestS())
        .isCloseTo(pause.boreM() / pause.settlingS().orElseThrow(), within(1e-9));
    assertThat(pause.brief()).isFalse();
    assertThat(of(assess(ram("1.5 s")), Topic.PLUGGING, "Line to separation"))
        .anyMatch(f -> f.severity() == Severity.CAUTION && f.id().equals("stop.pulse-settles"));
    assertThat(
            of(
                assess(ram("0 s").with("/lines/0/pump/changeover", "0.02 s")),
                Topic.PLUGGING,
                "Line to separation"))
        .anyMatch(f -> f.severity() == Severity.NOTE && f.id().equals("stop.pulse-brief"));
  }

  @Test
  void enoughGasTakesThePulseOutAndTooLittleIsACaution() {
    Assessment good = assess(ram("0.5 s").with("/lines/0/pump/vesselGas", "500 L"));
    assertThat(of(good, Topic.PRESSURE, "air vessel"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.PASS);
    assertThat(good.service().pulsation().orElseThrow().passed()).isLessThan(0.05);
    Assessment small = assess(ram("0.5 s").with("/lines/0/pump/vesselGas", "4 L"));
    assertThat(of(small, Topic.PRESSURE, "air vessel"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.severity()).isEqualTo(Severity.CAUTION);
              assertThat(f.id()).isEqualTo("stop.vessel-small");
            });
    assertThat(small.service().pulsation().orElseThrow().passed()).isEqualTo(1);
    assertThat(small.service().pulsation().orElseThrow().peakPa())
        .isGreaterThan(good.service().pulsation().orElseThrow().peakPa());
  }

  /** A swell that fills the vessel leaves no gas to be a spring, however well it would damp. */
  @Test
  void aVesselThatASwellFillsIsCreditedWithNothing() {
    boolean small = false;
    boolean swings = false;
    for (double litres = 1; litres < 500; litres *= 1.5) {
      PulsationResult pulsation =
          assess(ram("0.5 s").with("/lines/0/pump/vesselGas", litres + " L"))
              .service()
              .pulsation()
              .orElseThrow();
      PulsationResult.Vessel vessel = pulsation.vessel().orElseThrow();
      boolean fast = vessel.swellsPs() > Math.sqrt(2) * vessel.ownPs();
      assertThat(vessel.damps()).isEqualTo(fast && vessel.storedM3() < vessel.gasM3());
      assertThat(pulsation.passed() < 1).isEqualTo(vessel.damps());
      small |= fast && !vessel.damps();
      swings |= !fast;
    }
    assertThat(small || swings).isTrue();
  }

  @Test
  void aSlowStopIsThatOfMichaudAndJudgesTheRun() {
    SurgeResult sudden = assess(flat).service().surges().get(0);
    assertThat(sudden.slow()).isEmpty();
    SurgeResult slow =
        assess(flat.with("/lines/0/operation/stopTime", "5 s")).service().surges().get(0);
    double rise = slow.slow().orElseThrow().surgePa();
    double density = 0.03 * 2650 + 0.97 * 999.1;
    assertThat(rise).isCloseTo(2 * density * 160 * slow.velocityMps() / 5, within(300.0));
    assertThat(slow.judgedPa()).isEqualTo(rise);
    SurgeResult quick =
        assess(flat.with("/lines/0/operation/stopTime", "0.1 s")).service().surges().get(0);
    assertThat(quick.judgedPa()).isCloseTo(sudden.surgePa(), within(1e-6));
  }

  @Test
  void theLowHalfOfTheWavePartsTheColumnAtAHighPoint() {
    DesignDocument hill = with(flat, "Over", 20, 8, "Down", 20, -9);
    Assessment assessed = assess(hill);
    SurgeResult over = assessed.service().surges().get(1);
    assertThat(over.lowest().highPoint()).isTrue();
    assertThat(over.lowest().elevationM()).isCloseTo(11, within(1e-9));
    assertThat(over.lowest().parts()).isTrue();
    // Boiling at 15 degC, 1.706 kPa, less the air of 300 m by ISO 2533, 97.773 kPa.
    assertThat(over.lowest().vapourPa()).isCloseTo(1706 - 97773, within(20.0));
    assertThat(of(assessed, Topic.PRESSURE, "Over"))
        .anyMatch(f -> f.severity() == Severity.CAUTION && f.id().equals("stop.column-high"));
    // A flat line is told of, and no more, until a time of stopping is asked for.
    assertThat(of(assess(flat), Topic.PRESSURE, "Line to separation"))
        .anyMatch(f -> f.severity() == Severity.NOTE && f.id().equals("stop.column"));
    assertThat(
            of(
                assess(flat.with("/lines/0/operation/stopTime", "60 s")),
                Topic.PRESSURE,
                "Line to separation"))
        .noneMatch(f -> f.id().startsWith("stop.column"));
  }

  @Test
  void everyDrivenStateHasItsDayAndThePumpIsHeldAgainstItsStarts() {
    Assessment assessed =
        assess(
            flat.with("/lines/0/states/wornHead", "15 %")
                .with("/lines/0/states/coldest", "4 degC")
                .with("/lines/0/states/flushWater", "yes"));
    List<Day> days = assessed.service().days();
    assertThat(days)
        .extracting(Day::state)
        .contains("pump duty", "pump worn", "coldest")
        .anyMatch(name -> name.startsWith("coldest, worn"))
        .doesNotContain("flush with water");
    for (Day day : days) {
      StateResult state =
          assessed.service().states().stream()
              .filter(s -> s.name().equals(day.state()))
              .findFirst()
              .orElseThrow();
      assertThat(state.point().orElseThrow().power().inputW()).as(day.state()).isPresent();
      assertThat(day.energyJ())
          .isCloseTo(
              state.point().orElseThrow().power().inputW().orElseThrow() * day.runningS(),
              within(1.0));
      // A day of liquid without sand has no energy per sand.
      assertThat(day.energyPerSandJpKg().isPresent()).isEqualTo(day.sandKg() > 0);
      day.energyPerSandJpKg()
          .ifPresent(
              perSand -> assertThat(perSand).isCloseTo(day.energyJ() / day.sandKg(), within(1e-6)));
    }
    // 18.5 kW: 15 minutes from start to start.
    assertThat(of(assessed, Topic.DAY, "starts"))
        .singleElement()
        .satisfies(
            f -> {
              assertThat(f.id()).isEqualTo("feed.starts");
              assertThat(f.values().get("limit"))
                  .isEqualTo(new Value.Number(Kind.STARTS, 4 / InUnit.HOUR.si(1)));
            });
    assertThat(
            of(assess(flat.with("/lines/0/operation/mostStartsPerHour", "1")), Topic.DAY, "starts"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.CAUTION);
    assertThat(of(assess(flat.without("/lines/0/pump/motorRating")), Topic.DAY, "starts"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.NOTE);
  }

  @Test
  void aDayTooShortInTheWorstStateOnlyIsACaution() {
    DesignDocument worn = flat.with("/lines/0/states/wornHead", "40 %");
    double duty = assess(worn).service().days().get(0).runningS();
    double longest =
        assess(worn).service().days().stream().mapToDouble(Day::runningS).max().orElseThrow();
    // A volume that the duty just moves in a day.
    double daily = 400 * InUnit.DAY.si(1) / duty * Math.sqrt(duty / longest);
    assertThat(
            of(
                assess(worn.with("/lines/0/operation/dailyVolume", daily + " m3")),
                Topic.DAY,
                "pump"))
        .singleElement()
        .extracting(Finding::severity)
        .isEqualTo(Severity.CAUTION);
  }

  @Test
  void moreSandIsAStateOfEveryLiquidAndALiquidOfItsOwnToo() {
    DesignDocument measured =
        flat.with("/carrier/kind", "measured")
            .with("/carrier/density", "1010 kg/m3")
            .with("/carrier/viscosity", "2 cP")
            .with("/lines/0/states/thickestSand", "8 %")
            .with("/lines/0/states/thinnestSand", "1 %")
            .with("/lines/0/states/coldestCarrier/kind", "measured")
            .with("/lines/0/states/coldestCarrier/temperature", "2 degC")
            .with("/lines/0/states/coldestCarrier/density", "1012 kg/m3")
            .with("/lines/0/states/coldestCarrier/viscosity", "8 cP");
    Assessment assessed = assess(measured);
    assertThat(
            assessed.service().states().stream()
                .filter(s -> s.point().isPresent())
                .collect(
                    Collectors.toMap(
                        StateResult::name, s -> s.point().orElseThrow().mixture().sandFraction())))
        .containsEntry("most sand", 0.08)
        .containsEntry("least sand", 0.01)
        .containsEntry("coldest", 0.03)
        .anySatisfy(
            (name, sand) -> {
              assertThat(name).startsWith("coldest, most sand");
              assertThat(sand).isEqualTo(0.08);
            });
    double cold =
        assessed.service().states().stream()
            .filter(s -> s.name().equals("coldest"))
            .findFirst()
            .orElseThrow()
            .point()
            .orElseThrow()
            .mixture()
            .temperatureK();
    assertThat(cold).isCloseTo(275.15, within(1e-9));
  }

  @Test
  void theScrewTakesTheLoadOfThePensAndALoadTypedTooSmallIsTold() throws Exception {
    DesignDocument dairy =
        DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"))
            .with("/screw/diameter", "24 in")
            .with("/screw/speed", "30 rpm")
            .with("/screw/length", "60 ft")
            .with("/screw/scrapeTime", "2 h");
    Assessment pens = assess(dairy);
    ServiceResult.Screw screw = pens.service().screw().orElseThrow();
    double batch = pens.plant().orElseThrow().total().volumePerBatchM3().high();
    assertThat(screw.typed()).isFalse();
    assertThat(screw.loadM3ps()).isCloseTo(batch / InUnit.HOUR.si(2), within(1e-12));
    assertThat(screw.densityKgM3())
        .isCloseTo(pens.plant().orElseThrow().total().densityKgM3().base(), within(1e-9));
    Assessment typed = assess(dairy.with("/screw/load", "1 L/s"));
    assertThat(of(typed, Topic.FEED, "screw")).anyMatch(f -> f.id().equals("feed.screw-load-less"));
    assertThat(typed.service().screw().orElseThrow().loadM3ps()).isEqualTo(1e-3);
    assertThat(pens.cautions())
        .extracting(SafetyCaution::title)
        .contains("Acid against struvite and scale", "Screw conveyor")
        .doesNotContain("Restart of a stopped or plugged line");
  }

  @Test
  void dangersAppearWithWhatCallsForThem() {
    assertThat(assess(flat.with("/lines/0/operation/flushLevel", "20 m")).cautions())
        .extracting(SafetyCaution::title)
        .contains(
            "Restart of a stopped or plugged line",
            "Flush from a tank or by a pump",
            "Machines that start by themselves")
        .doesNotContain("Piston pump against a closed valve", "Screw conveyor");
    assertThat(assess(ram("0 s").without("/lines/0/operation")).cautions())
        .extracting(SafetyCaution::title)
        .contains("Piston pump against a closed valve")
        .doesNotContain("Machines that start by themselves", "Flush from a tank or by a pump");
  }
}
