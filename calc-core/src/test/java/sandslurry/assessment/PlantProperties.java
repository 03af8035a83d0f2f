package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.fact.step.Step;
import sandslurry.golden.Shipped;
import sandslurry.plant.Stream;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;
import sandslurry.tries.Slow;

/** What must hold of every plant, tried on the example and on plants edited at random. */
class PlantProperties {
  private static final double CONSERVED = 1e-9;

  private static DesignDocument example() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"));
  }

  private static Design design(DesignDocument document) {
    Reading reading = document.read();
    assertThat(reading.problems()).isEmpty();
    return reading.design().orElseThrow();
  }

  private static PlantResult result(DesignDocument document) {
    return Shipped.assessment(document).plant().orElseThrow();
  }

  /** The plant of all kinds of units with sizes and flows drawn at random. */
  private static DesignDocument edited(DesignDocument plant, long seed) {
    Random random = new Random(seed);
    return plant
        .with("/plant/units/1/reaches/0/length", "10 m")
        .with("/plant/units/0/length", spread(random, 3) + " m")
        .with("/plant/units/1/reaches/0/width", spread(random, 2) + " m")
        .with("/plant/units/2/body", spread(random, 250) + " mm")
        .with("/plant/units/2/apex", "25 mm")
        .with("/plant/units/4/fibreCapture", random.nextInt(101) + " %")
        .with("/plant/units/4/finesCapture", random.nextInt(60) + " %")
        .with("/plant/units/6/pumps/0/flow", spread(random, 6) + " m3/h")
        .with("/plant/waters/0/flow", spread(random, 1.5) + " m3/h")
        .with("/plant/pens/0/cows", String.valueOf(50 + random.nextInt(500)));
  }

  private static double spread(Random random, double middle) {
    return middle * Math.pow(2, 2 * random.nextDouble() - 1);
  }

  private static void conserves(Design design, PlantResult result) {
    PlantSpec spec = design.plant().orElseThrow();
    for (ModeResult mode : result.modes()) {
      if (mode.balance().isEmpty()) {
        continue;
      }
      SteadyBalance balance = mode.balance().get();
      Map<String, Stream> streams = balance.streams();
      int count = streams.values().iterator().next().constituents().count();
      for (int i = 0; i < count; i++) {
        double in = 0;
        double out = 0;
        for (PlantSpec.PenSpec pen : spec.pens()) {
          in += streams.get(pen.stream()).kgps(i);
        }
        for (PlantSpec.WaterSpec water : spec.waters()) {
          in += streams.get(water.stream()).kgps(i);
        }
        for (PlantSpec.Product product : spec.products()) {
          out += streams.get(product.stream()).kgps(i);
        }
        for (PitUnit pit : spec.pits()) {
          if (!pit.isPool()) {
            out += streams.get(pit.settled()).kgps(i);
          }
        }
        for (PlantUnit unit : spec.units()) {
          double fed = 0;
          double left = 0;
          for (String inlet : unit.inlets()) {
            fed += streams.get(inlet).kgps(i);
          }
          for (String outlet : unit.outlets()) {
            left += streams.get(outlet).kgps(i);
          }
          if (unit.outlets().isEmpty()) {
            out += fed;
          } else {
            assertThat(left).as(unit.name()).isCloseTo(fed, within(CONSERVED * fed));
          }
        }
        assertThat(out).isCloseTo(in, within(CONSERVED * in));
      }
    }
    for (Day day : result.days().days()) {
      assertThat(day.imbalance()).isLessThan(CONSERVED);
    }
  }

  private static void agreesWithTheLimit(PlantResult result) {
    for (ModeResult mode : result.modes()) {
      if (mode.liquor().isPresent()) {
        LiquorLimit liquor = mode.liquor().get();
        assertThat(liquor.solved()).as("S / (S + W)").isCloseTo(liquor.analytic(), within(1e-8));
      }
    }
  }

  /** What is neither recovered nor lost is what the pits took up in a day that repeats itself. */
  private static void balances(Accounts accounts) {
    double flushed = accounts.sand().flushed().sandKgps();
    double taken = accounts.basis().byDay() ? PlantDay.KEPT : CONSERVED;
    assertThat(accounts.sand().stillInTheLineKgps()).isCloseTo(0, within(taken * flushed));
    assertThat(accounts.capture().base()).isBetween(0.0, 1 + 1e-9);
    double notBought =
        1
            - accounts.circulation().asNew().boughtKgps()
                / accounts.circulation().asNew().beddedKgps();
    assertThat(notBought)
        .isGreaterThanOrEqualTo(accounts.circulation().asNew().recoveryOfNewSand() - 1e-9);
  }

  @Example
  void theExampleConservesEveryConstituentAndMeetsTheAnalyticLimit() throws Exception {
    Design design = design(example());
    PlantResult result = result(example());
    assertThat(result.modes()).hasSize(2).allMatch(mode -> mode.balance().isPresent());
    conserves(design, result);
    agreesWithTheLimit(result);
    balances(result.accounts().orElseThrow());
  }

  @Slow
  @Property(tries = 12, maxDiscardRatio = 50)
  void aPlantEditedAtRandomConservesMeetsTheLimitAndBalancesItsAccounts(@ForAll long seed) {
    Design design =
        design(edited(seed % 2 == 0 ? Documents.plant() : Documents.flushedPlant(), seed));
    Assessment assessment = Evaluation.assess(design);
    PlantResult result = assessment.plant().orElseThrow();
    conserves(design, result);
    agreesWithTheLimit(result);
    result.accounts().ifPresent(PlantProperties::balances);
    String report = new TextView(100).write(DesignReport.everything(assessment));
    assertThat(report).doesNotContain("NaN", "Infinity");
  }

  private static final Pattern GROUP = Pattern.compile("<!-- fields (\\S+) ?(\\S*) -->");
  private static final Pattern ROW =
      Pattern.compile(
          "\\| `([^`]+)` \\|.*\\| (?:a whole number from )?([^|]*) to ([^|]*) \\|[^|]*\\|");

  /** Where the plant of the tests has a unit of each kind, and the groups that belong to one. */
  private static final Map<String, String> UNITS =
      Map.ofEntries(
          Map.entry("/plant/units/0 box", "/plant/units/0"),
          Map.entry("/plant/units/0 lane", "/plant/units/1"),
          Map.entry("/plant/units/0/reaches/0 ", "/plant/units/1/reaches/0"),
          Map.entry("/plant/units/0 cyclone", "/plant/units/2"),
          Map.entry("/plant/units/0 screen", "/plant/units/3"),
          Map.entry("/plant/units/0 fibreSeparator", "/plant/units/4"),
          Map.entry("/plant/units/0/outlets/0 ", "/plant/units/5/outlets/0"),
          Map.entry("/plant/units/0/pumps/0 ", "/plant/units/6/pumps/0"),
          Map.entry("/plant/units/0 pit", "/plant/units/6"),
          Map.entry("/plant/units/0/mixer ", "/plant/units/6/mixer"),
          Map.entry("/plant/units/0 storage", "/plant/units/7"),
          Map.entry("/plant/units/0/months/0 ", "/plant/units/7/months/0"));

  /** Fields of the page on the design file, with the ends of their ranges. */
  private static List<String[]> fields() throws Exception {
    List<String[]> fields = new ArrayList<>();
    String group = "";
    for (String line : Files.readAllLines(Path.of("..", "docs", "design-file.md"))) {
      Matcher head = GROUP.matcher(line);
      if (head.find()) {
        group = UNITS.getOrDefault(head.group(1) + " " + head.group(2), head.group(1));
      }
      Matcher row = ROW.matcher(line);
      if (group.startsWith("/plant") && row.matches()) {
        fields.add(new String[] {group + "/" + row.group(1), row.group(2), row.group(3)});
      }
    }
    return fields;
  }

  @Slow
  @Property(tries = 80, shrinking = ShrinkingMode.OFF)
  void aPlantAtTheEndsOfTheRangesIsJudgedOrRefusedAndNeverBreaks(@ForAll long seed)
      throws Exception {
    Random random = new Random(seed);
    List<String[]> fields = fields();
    assertThat(fields).hasSizeGreaterThan(60);
    // Most are refused, so one is looked for that is not.
    Design plant =
        IntStream.range(0, 200)
            .mapToObj(i -> atTheEnds(random, fields).read().design())
            .flatMap(Optional::stream)
            .findFirst()
            .orElseThrow();
    Assessment assessment = Evaluation.assess(plant);
    assertThat(assessment.findings()).isNotEmpty();
    assertThat(new TextView(100).write(DesignReport.everything(assessment)))
        .doesNotContain("NaN", "Infinity");
    conserves(plant, assessment.plant().orElseThrow());
  }

  /** A plant of which some fields are at an end of their range. */
  private static DesignDocument atTheEnds(Random random, List<String[]> fields) {
    boolean flushed = random.nextInt(4) == 0;
    DesignDocument document =
        (flushed ? Documents.flushedPlant() : Documents.plant())
            .insert("/plant/targets/gradation", 0, "{\"size\": \"0.3 mm\"}");
    for (String price : List.of("sand 1 t", "hauling 1 m3", "electricity 1 kWh", "water 1 m3")) {
      String[] words = price.split(" ", 2);
      document =
          document
              .with("/plant/prices/" + words[0] + "/price", "2")
              .with("/plant/prices/" + words[0] + "/per", words[1]);
    }
    int rarity = 2 + random.nextInt(12);
    for (String[] field : fields) {
      boolean clock = field[0].startsWith("/plant/modes") && !field[0].endsWith("flow");
      clock |= field[0].contains("firstScraping") || field[0].contains("scrape");
      boolean absent = field[0].contains("/flush/") || field[0].contains("/7/pumps");
      if (!clock && (flushed || !absent) && random.nextInt(rarity) == 0) {
        document = document.with(field[0], field[1 + random.nextInt(2)]);
      }
    }
    return document;
  }

  @Example
  void theSamePlantTypedInOtherUnitsHasTheSameNumbers() {
    DesignDocument metric = Documents.plant();
    DesignDocument us =
        metric
            .with("/plant/units/0/length", 3 / 0.3048 + " ft")
            .with("/plant/units/2/body", 250 / 25.4 + " in")
            .with("/plant/pens/0/milk", 36 / 0.45359237 + " lb/d")
            .with("/plant/units/6/capacity", 60 / 0.003785411784 + " gal")
            .with("/plant/units/6/mixer/speed", 200.0 / 60 + " 1/s")
            .with("/carrier/temperature", "59 degF")
            .with("/units", "US");
    List<Step> one = Shipped.assessment(metric).working();
    List<Step> other = Evaluation.assess(design(us)).working();
    assertThat(other).hasSameSizeAs(one);
    for (int i = 0; i < one.size(); i++) {
      double expected = one.get(i).value();
      assertThat(other.get(i).value())
          .as("%s of %s", one.get(i).equation().meaning(), one.get(i).element())
          .isCloseTo(expected, within(1e-6 * Math.max(Math.abs(expected), 1e-3)));
    }
  }

  @Example
  void fromThePitsFullOfWaterTheDaysComeToTheSteadyBalanceOfAPlantWithOneMode() {
    PlantResult result = result(Documents.plant().without("/plant/modes"));
    Day last = result.days().last().orElseThrow();
    double atRest = result.main().balance().orElseThrow().stream("surplus").totalSolids();
    assertThat(last.meanFlows().get("surplus").totalSolids())
        .isCloseTo(atRest, within(0.01 * atRest));
  }

  @Example
  void whatNothingCatchesIsNotThinnedByMoreRecycle() {
    // A press that catches nothing leaves the liquor as thick whatever is recycled, but for what
    // settles with the sand.
    DesignDocument document =
        Documents.plant()
            .without("/plant/modes")
            .with("/plant/units/4/fibreCapture", "0 %")
            .with("/plant/units/4/finesCapture", "0 %");
    PlantResult result = result(document);
    for (PlantResult.Recycling one : result.recycling()) {
      Assume.that(one.liquor().isPresent());
      LiquorLimit liquor = one.liquor().get();
      assertThat(liquor.solved()).isCloseTo(liquor.analytic(), within(1e-8));
    }
    assertThat(result.recycling()).hasSizeGreaterThan(2);
  }

  @Example
  void aLoopWithoutAWayOutSpillsAndFails() {
    // The only way out of the pit is back to the box: what comes in runs over its brim.
    DesignDocument document =
        Documents.plant()
            .without("/plant/units/6/overflow")
            .with("/plant/units/5/outlets/0/share", "100 %")
            .with("/plant/units/5/outlets/1/share", "0 %")
            .with("/plant/units/7/in", "bleed")
            .without("/plant/modes");
    Assessment assessment = Evaluation.assess(design(document));
    assertThat(assessment.verdict()).isEqualTo(Severity.FAIL);
    assertThat(assessment.findings())
        .anyMatch(
            finding ->
                finding.element().equals("Pit")
                    && finding.severity() == Severity.FAIL
                    && finding.id().equals("plant.spills"));
    assertThat(new TextView(100).write(DesignReport.everything(assessment))).doesNotContain("NaN");
  }

  @Example
  void aSmallBoxFailsAndTheAreaThatCuresItReallyDoes() {
    DesignDocument document =
        Documents.plant()
            .without("/plant/modes")
            .with("/plant/units/0/length", "0.3 m")
            .with("/plant/units/0/width", "0.3 m")
            .with("/plant/units/1/reaches/0/length", "1 m")
            .with("/plant/units/1/reaches/0/width", "0.5 m")
            .with("/plant/targets/sandCapture", "93 %");
    Accounts accounts = result(document).accounts().orElseThrow();
    assertThat(accounts.capture().base()).isLessThan(0.93);
    double factor = 1 + accounts.remedies().area().orElseThrow();
    PlantResult cured =
        result(
            document
                .with("/plant/units/0/length", 0.3 * factor + " m")
                .with("/plant/units/1/reaches/0/width", 0.5 * factor + " m"));
    // The area is found to a millionth of itself, each state at rest to a few of its own.
    assertThat(cured.accounts().orElseThrow().capture().base()).isCloseTo(0.93, within(1e-5));
  }

  @Example
  void everyPlantComesWithTheCautionsOfPitsAndStorages() {
    assertThat(Shipped.assessment(Documents.plant()).cautions())
        .extracting(SafetyCaution::title)
        .contains(
            "Manure gas and confined spaces",
            "Sulfates and agitation of a storage",
            "Storage, banks and liner",
            "Stored pressure when clearing a plug");
  }
}
