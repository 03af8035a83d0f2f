package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantDay;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.Compared;
import sandslurry.assessment.plant.PlantResult.SieveCheck;
import sandslurry.design.Design;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.plant.PlantSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.plant.Constituents;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.SandCirculation;
import sandslurry.plant.schedule.Day;
import sandslurry.plant.schedule.PitDay;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** The accounts of whole plants. */
class PlantAccountsTest {
  private static DesignDocument dairy() throws Exception {
    return DesignDocument.load(Path.of("..", "docs", "examples", "closed-loop-dairy.json"));
  }

  private static Assessment assess(DesignDocument document) {
    return Shipped.assessment(document);
  }

  private static Accounts accounts(DesignDocument document) {
    return assess(document).plant().orElseThrow().accounts().orElseThrow();
  }

  private static Range figure(Accounts accounts, String group, String what) {
    return accounts.figures().groups().entrySet().stream()
        .filter(entry -> entry.getKey().startsWith(group))
        .flatMap(entry -> entry.getValue().stream())
        .filter(figure -> figure.what().startsWith(what))
        .findFirst()
        .orElseThrow(() -> new AssertionError(group + ": " + what))
        .range();
  }

  /** The dairy with prices and all that may be wanted of its bedding; a fifth stays in stalls. */
  private static DesignDocument most() throws Exception {
    return dairy()
        .with("/plant/sandReachingPlant", "80 %")
        .with("/plant/targets/gradation", "ASTM C33")
        .with("/plant/targets/bedOrganicMatter", "2 %")
        .with("/plant/prices/currency", "crowns")
        .with("/plant/prices/sand/price", "12")
        .with("/plant/prices/sand/per", "1 t")
        .with("/plant/prices/electricity/price/low", "0.1")
        .with("/plant/prices/electricity/price/base", "0.2")
        .with("/plant/prices/electricity/price/high", "0.3")
        .with("/plant/prices/electricity/per", "1 kWh");
  }

  @Test
  void inTheExampleEachClassBeddedIsBoughtOrComesBackThroughTheUnits() throws Exception {
    Accounts accounts = accounts(dairy());
    SandCirculation rest = accounts.circulation().sand().orElseThrow();
    SandAccount account = accounts.circulation().atRest().orElseThrow().account();
    assertThat(rest.converged()).isTrue();
    double all = rest.bedded().massKgps();
    for (int i = Constituents.MINERAL_FINES; i < rest.bedded().constituents().count(); i++) {
      assertThat(rest.bedded().kgps(i))
          .isCloseTo(rest.bought().kgps(i) + rest.rebedded().kgps(i), within(1e-9 * all));
      assertThat(rest.rebedded().kgps(i))
          .isCloseTo(0.95 * account.recovered().kgps(i), within(1e-9 * all));
    }
    // At rest what is bought is what is lost and what is recovered but not bedded again.
    double lost = 0;
    for (Stream stream : account.lost().values()) {
      lost += stream.sandKgps();
    }
    assertThat(rest.bought().sandKgps())
        .isCloseTo(lost + 0.05 * account.recovered().sandKgps(), within(1e-9 * all));
    assertThat(rest.notBought()).isGreaterThan(rest.notBoughtOfNewSand());
    // New sand is finer than that which circulates, and more of it is lost.
    assertThat(accounts.sand().recoveryOfFlushed()).isLessThan(account.recoveryOfFlushed());
  }

  @Test
  void theDayRepeatsItselfAndItsMassIsThatOfItsPits() throws Exception {
    Assessment assessment = assess(dairy());
    PlantResult plant = assessment.plant().orElseThrow();
    PlantSpec spec = assessment.design().plant().orElseThrow();
    Accounts accounts = plant.accounts().orElseThrow();
    assertThat(accounts.basis().byDay()).isTrue();
    assertThat(accounts.basis().change()).isLessThan(PlantDay.REPEATS);
    List<Day> days = plant.days().days();
    Day last = days.get(days.size() - 1);
    Day before = days.get(days.size() - 2);
    int count = last.meanFlows().values().iterator().next().constituents().count();
    for (int i = 0; i < count; i++) {
      double in = 0;
      double out = 0;
      for (PlantSpec.PenSpec pen : spec.pens()) {
        in += last.meanFlows().get(pen.stream()).kgps(i) * 86_400;
      }
      for (PlantSpec.WaterSpec water : spec.waters()) {
        in += last.meanFlows().get(water.stream()).kgps(i) * 86_400;
      }
      for (PlantSpec.Product product : spec.products()) {
        out += last.meanFlows().get(product.stream()).kgps(i) * 86_400;
      }
      for (PitUnit pit : spec.pits()) {
        if (!pit.isPool()) {
          out += last.meanFlows().get(pit.settled()).kgps(i) * 86_400;
        }
      }
      for (PlantUnit unit : spec.units()) {
        for (String inlet : unit.outlets().isEmpty() ? unit.inlets() : List.<String>of()) {
          out += last.meanFlows().get(inlet).kgps(i) * 86_400;
        }
      }
      double pits = 0;
      for (PitDay pit : last.pits().values()) {
        assertThat(pit.overflowed()).isFalse();
        pits += pit.endContents().kgps(i);
      }
      for (PitDay pit : before.pits().values()) {
        pits -= pit.endContents().kgps(i);
      }
      assertThat(in - out).as("constituent %d", i).isCloseTo(pits, within(1e-9 * in));
    }
    // The schedule is not the mean of its modes: the pits carry one into the other.
    Compared solids =
        accounts.basis().compared().stream()
            .filter(one -> one.what().equals("solids of the surplus"))
            .findFirst()
            .orElseThrow();
    assertThat(Math.abs(solids.byDay() / solids.atRest() - 1)).isGreaterThan(0.02);
    assertThat(accounts.sand().recovered().sandKgps())
        .isEqualTo(last.meanFlows().get("sand").sandKgps());
  }

  @Test
  void aPlantOfOneModeHasTheDayOfItsRestAndOneWhoseDayDoesNotRepeatSaysSo() {
    Accounts one = accounts(Documents.plant().without("/plant/modes"));
    assertThat(one.basis().byDay()).isTrue();
    assertThat(one.basis().compared())
        .isNotEmpty()
        .allSatisfy(
            both ->
                assertThat(both.byDay())
                    .as(both.what())
                    .isCloseTo(both.atRest(), within(0.01 * Math.abs(both.atRest()))));
    DesignDocument slow =
        Documents.plant()
            .with("/plant/units/6/capacity", "30000 m3")
            .with("/plant/units/6/weirVolume", "29000 m3");
    Assessment assessment = assess(slow);
    assertThat(assessment.plant().orElseThrow().accounts().orElseThrow().basis().byDay()).isFalse();
    assertThat(assessment.findings()).anyMatch(f -> f.id().equals("plant.modes-at-rest"));
  }

  @Test
  void sandThatNeverReachesThePlantIsNeitherFlushedNorRecoveredButBought() {
    DesignDocument all = Documents.plant().without("/plant/modes");
    Accounts before = accounts(all);
    DesignDocument less = all.with("/plant/sandReachingPlant", "80 %");
    Accounts after = accounts(less);
    assertThat(after.sand().bedded().sandKgps())
        .isCloseTo(before.sand().bedded().sandKgps(), within(1e-12));
    assertThat(after.sand().flushed().sandKgps())
        .isCloseTo(0.8 * before.sand().flushed().sandKgps(), within(1e-12));
    assertThat(figure(after, "Sand, all", "stays in stalls").base())
        .isCloseTo(0.2 * before.sand().bedded().sandKgps(), within(1e-12));
    assertThat(after.sand().recoveryOfFlushed()).isGreaterThan(after.sand().recoveryOfBedded());
    assertThat(after.circulation().sand().orElseThrow().bought().massKgps())
        .isGreaterThan(0.2 * after.sand().bedded().sandKgps());
    Accounts range =
        accounts(
            all.with("/plant/sandReachingPlant/low", "70 %")
                .with("/plant/sandReachingPlant/base", "80 %")
                .with("/plant/sandReachingPlant/high", "90 %"));
    Range bought = figure(range, "Sand to buy", "in a month");
    assertThat(bought.low()).isLessThan(bought.base());
    assertThat(bought.base()).isLessThan(bought.high());
    assertThat(assess(less).plant().orElseThrow().loads().get(0).sandPerDayKg().base())
        .isCloseTo(
            0.8 * assess(all).plant().orElseThrow().loads().get(0).sandPerDayKg().base(),
            within(1e-6));
  }

  @Test
  void thePartsOfTheSandToBuySumToIt() throws Exception {
    Accounts accounts = accounts(most());
    List<Figure> budget = accounts.figures().groups().get("Sand to buy");
    double parts =
        budget.stream()
            .skip(2)
            .filter(figure -> !figure.what().startsWith("one point"))
            .mapToDouble(figure -> figure.range().base())
            .sum();
    double year = budget.get(1).range().base();
    assertThat(budget.get(0).range().base() * 12).isCloseTo(year, withinPercentage(1e-9));
    assertThat(parts).isCloseTo(year, withinPercentage(1e-3));
    assertThat(budget.get(2).range().base())
        .isCloseTo(
            0.2 * accounts.circulation().sand().orElseThrow().bedded().sandKgps() * 365 * 86400,
            withinPercentage(0.01));
  }

  @Test
  void aSinkOfSettledSandIsLossOfItsOwnInTheAccount() {
    DesignDocument document =
        Documents.plant().without("/plant/modes").with("/plant/products/1/use", "settled");
    Accounts accounts = accounts(document);
    assertThat(accounts.sand().lost()).containsKey("settled");
    assertThat(figure(accounts, "Sand, all", "settled in channel").base()).isPositive();
    assertThat(accounts.sand().stillInTheLineKgps())
        // A day that repeats itself may still keep a little in its pits.
        .isCloseTo(0, within(1e-6 * accounts.sand().flushed().sandKgps()));
  }

  @Test
  void theBeddingIsJudgedOnEverySieveOfTheGradationWanted() throws Exception {
    Accounts accounts = accounts(most());
    assertThat(accounts.bedding().sieves()).hasSize(8);
    for (SieveCheck sieve : accounts.bedding().sieves()) {
      // The middle of the standard is bought; fines are lost, so less passes each finer sieve.
      assertThat(sieve.outside(sieve.bought())).isZero();
      assertThat(sieve.recovered()).isLessThanOrEqualTo(sieve.bought() + 1e-12);
      assertThat(sieve.circulating()).isLessThanOrEqualTo(sieve.bought() + 1e-12);
    }
    Assessment strict = assess(unrinsed());
    assertThat(strict.findings())
        .anyMatch(
            f ->
                f.element().contains("bedding on 0.300 mm")
                    && f.id().equals("plant.sieve-coarser"));
    assertThat(new TextView(110).write(DesignReport.everything(strict))).contains("too little");
  }

  /** Sand out of a box without rinsing, one sieve of it asked for. */
  private static DesignDocument unrinsed() throws Exception {
    return dairy()
        .without("/plant/units/0/rinsePoreVolumes")
        .insert(
            "/plant/targets/gradation",
            0,
            "{\"size\": \"0.3 mm\", \"least\": \"20 %\", \"most\": \"40 %\"}");
  }

  @Test
  void costsFollowFromTheUsersPricesAndWhatIsMissingIsNamed() throws Exception {
    Accounts none = accounts(dairy());
    assertThat(none.figures().missingPrices())
        .containsExactly("sand", "hauling", "electricity", "water");
    Accounts accounts = accounts(most());
    assertThat(accounts.figures().missingPrices()).containsExactly("hauling", "water");
    String group = "What reaches";
    double monthKg = figure(accounts, "Sand to buy", "in a month").base();
    // One point of the recovery of what is flushed, 95 % of it bedded again, at 12 crowns a tonne.
    double flushedKg =
        accounts.circulation().atRest().orElseThrow().account().flushed().sandKgps() * 365 * 86400;
    assertThat(figure(accounts, "Sand to buy", "one point of recovery is worth").base())
        .isCloseTo(0.01 * flushedKg * 0.95 * 12 / 1000, withinPercentage(1e-6));
    assertThat(figure(accounts, group, "sand bought, in crowns").base())
        .isCloseTo(12 * monthKg * 12 / 1000, withinPercentage(1e-6));
    Range kilowattHours = figure(accounts, "Energy", "all of them in a day").map(j -> j / 3.6e6);
    Range electricity = figure(accounts, group, "electricity, in crowns");
    assertThat(electricity.low())
        .isCloseTo(0.1 * 365 * kilowattHours.low(), withinPercentage(1e-6));
    assertThat(electricity.high())
        .isCloseTo(0.3 * 365 * kilowattHours.high(), withinPercentage(1e-6));
    assertThat(figure(accounts, group, "all of these that have a price").base())
        .isCloseTo(
            electricity.base() + figure(accounts, group, "sand bought").base(),
            withinPercentage(1e-6));
    assertThat(sandPerKg(most().with("/plant/prices/sand/per", "1 ton")))
        .isCloseTo(sandPerKg(most()) / 0.90718474, withinPercentage(1e-6));
  }

  private static double sandPerKg(DesignDocument document) {
    return document
        .read()
        .design()
        .flatMap(Design::plant)
        .flatMap(plant -> plant.accounting().prices().sandPerKg())
        .orElseThrow()
        .base();
  }

  @Test
  void theEnergyOfALineWithThePlantIsCountedAndPumpsWithoutHeadAreNamed() throws Exception {
    Accounts alone = accounts(Documents.plant());
    assertThat(alone.figures().notCounted()).containsExactly("pump of \"recycle\"");
    Accounts named =
        accounts(
            Documents.plant()
                .insert(
                    "/plant/machines",
                    1,
                    "{\"name\": \"recycle pump\", \"power\": \"2 kW\", \"runningTime\": \"12"
                        + " h\"}"));
    assertThat(named.figures().notCounted()).isEmpty();
    assertThat(
            figure(named, "Energy", "all of them in a day").base()
                - figure(alone, "Energy", "all of them in a day").base())
        .isCloseTo(24 * 3.6e6, within(1.0));
    DesignDocument both =
        DesignDocument.load(Path.of("..", "docs", "examples", "parlor-line.json"))
            .withPart("/plant", Documents.plant().json("/plant"));
    assertThat(assess(both).pump().orElseThrow().governing()).isPresent();
    Accounts line = accounts(both);
    assertThat(figure(line, "Energy", "pumps of the line").base()).isPositive();
    double cows = 300;
    assertThat(figure(line, "Energy", "a lactating cow").base())
        .isCloseTo(figure(line, "Energy", "all of them in a day").base() / cows, within(1e-3));
  }

  @Test
  void dirtierFibreAndPoorerRinsingMakeTheRangeOfTheOrganicMatter() throws Exception {
    Accounts accounts = accounts(dairy());
    Range organic = accounts.bedding().quality().orElseThrow().organicMatter();
    assertThat(organic.low()).isLessThan(organic.base());
    assertThat(organic.base()).isLessThan(organic.high());
    Accounts fast = accounts(dairy().with("/plant/organicSettlingVelocity", "30 mm/s"));
    assertThat(fast.bedding().quality().orElseThrow().organicMatter().base())
        .isGreaterThan(2 * organic.base());
    assertThat(accounts(unrinsed()).bedding().quality().orElseThrow().organicMatter().base())
        .isGreaterThan(organic.base());
    assertThat(assess(most()).findings())
        .anyMatch(
            f ->
                f.element().startsWith("organic matter")
                    && f.severity() == Severity.CAUTION
                    && f.id().equals("plant.organic-maybe"));
  }
}
