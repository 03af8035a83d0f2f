package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.MonthResult;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.design.Documents;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.golden.Shipped;
import sandslurry.plant.account.StorageYear;

/** A plant in the months of a year. */
class PlantYearTest {
  private static final String STORAGE = "/plant/units/7";
  private static final String WANTED = "/plant/targets/sandCapture";
  private static final List<String> MONTHS =
      List.of(
          "January",
          "February",
          "March",
          "April",
          "May",
          "June",
          "July",
          "August",
          "September",
          "October",
          "November",
          "December");

  /** The plant of the tests with a year in place of the months of its storage. */
  private static DesignDocument plant(
      IntFunction<String> temperature, double rainMm, String emptyings) {
    String months =
        IntStream.range(0, 12)
            .mapToObj(
                i ->
                    String.format(
                        Locale.ROOT,
                        "{\"month\":\"%s\",\"temperature\":\"%s\",\"rain\":\"%.1f mm\","
                            + "\"evaporation\":\"50 mm\"}",
                        MONTHS.get(i),
                        temperature.apply(i),
                        rainMm))
            .collect(Collectors.joining(","));
    return Documents.plant()
        .without("/plant/modes")
        .without(STORAGE + "/months")
        .withPart("/plant/year", "{\"months\":[" + months + "],\"emptyings\":[" + emptyings + "]}");
  }

  private static String warming(int month) {
    return -6 + 3 * month + " degC";
  }

  private static String share(String month, int percent) {
    return "{\"storage\":\"Storage\",\"month\":\"" + month + "\",\"share\":\"" + percent + " %\"}";
  }

  private static Assessment assess(DesignDocument document) {
    return Shipped.assessment(document);
  }

  private static Accounts accounts(Assessment assessment) {
    return assessment.plant().orElseThrow().accounts().orElseThrow();
  }

  private static List<String> found(Assessment assessment, String element, Severity severity) {
    return assessment.findings().stream()
        .filter(f -> f.element().equals(element) && f.severity() == severity)
        .map(Finding::id)
        .toList();
  }

  @Test
  void eachMonthIsThePlantAtItsLiquorWhateverMonthsStandBesideIt() {
    Assessment assessment = assess(plant(PlantYearTest::warming, 75, share("October", 100)));
    Accounts accounts = accounts(assessment);
    Year year = accounts.year().orElseThrow();
    // August has the temperature of the design: it is the mean day, but for what the day by
    // schedule makes of it.
    assertThat(year.months().get(7).capture().getAsDouble())
        .isCloseTo(accounts.capture().base(), within(1e-5));
    // Below 1 degC the liquor is taken at that: January to March are one month thrice.
    MonthResult january = year.months().get(0);
    assertThat(january.month().liquorK()).isCloseTo(274.15, within(1e-9));
    assertThat(january.month().airK()).isCloseTo(267.15, within(1e-9));
    assertThat(year.months().get(2).capture()).isEqualTo(january.capture());
    assertThat(year.coldest()).isEqualTo(january);
    assertThat(year.least().orElseThrow()).isEqualTo(january);
    for (int i = 1; i < 12; i++) {
      assertThat(year.months().get(i).capture().getAsDouble())
          .isGreaterThanOrEqualTo(year.months().get(i - 1).capture().getAsDouble() - 1e-9);
    }
    assertThat(accounts.capture().low()).isLessThanOrEqualTo(january.capture().getAsDouble());
    // A year that is all as November has November's recovery.
    Accounts same = accounts(assess(plant(i -> warming(10), 75, share("October", 100))));
    assertThat(same.year().orElseThrow().months().get(0).capture().getAsDouble())
        .isCloseTo(year.months().get(10).capture().getAsDouble(), within(1e-6));
  }

  @Test
  void theColdestMonthJudgesTheRecovery() {
    DesignDocument document = plant(PlantYearTest::warming, 75, share("October", 100));
    Accounts accounts = accounts(assess(document));
    double least = accounts.year().orElseThrow().least().orElseThrow().capture().getAsDouble();
    double mean = accounts.capture().base();
    assertThat(least).isLessThan(mean - 5e-4);
    Assessment between = assess(document.with(WANTED, 50 * (least + mean) + " %"));
    assertThat(found(between, "sand recovery", Severity.FAIL))
        .contains("plant.worst-month-low")
        .doesNotContain("plant.recovery-low");
    Assessment below = assess(document.with(WANTED, 100 * least - 0.1 + " %"));
    assertThat(found(below, "sand recovery", Severity.PASS)).contains("plant.worst-month");
    Assessment above = assess(document.with(WANTED, 100 * mean + 0.03 + " %"));
    assertThat(found(above, "sand recovery", Severity.FAIL))
        .contains("plant.recovery-low")
        .doesNotContain("plant.worst-month-low");
  }

  @Test
  void theFullestMonthJudgesTheStorage() {
    Assessment fits =
        assess(
            plant(
                PlantYearTest::warming,
                75,
                share("February", 100) + "," + share("June", 100) + "," + share("October", 100)));
    assertThat(found(fits, "Storage", Severity.PASS)).contains("plant.year-fits");
    StorageYear year = accounts(fits).year().orElseThrow().storages().get("Storage");
    assertThat(year.repeats()).isTrue();
    assertThat(year.months().get(year.highest()).name()).isIn("February", "June", "October");
    Assessment gains = assess(plant(PlantYearTest::warming, 75, share("October", 5)));
    assertThat(found(gains, "Storage", Severity.FAIL)).contains("plant.year-gains");
    // Not emptied by plan it is told that it runs over, and not judged.
    Assessment unplanned = assess(plant(PlantYearTest::warming, 75, ""));
    assertThat(found(unplanned, "Storage", Severity.FAIL)).isEmpty();
    assertThat(found(unplanned, "Storage", Severity.NOTE)).contains("plant.runs-over");
    // Three metres of rain a year and one emptying: it rises into its reserve, or runs over.
    Assessment wet = assess(plant(PlantYearTest::warming, 400, share("October", 100)));
    assertThat(found(wet, "Storage", Severity.FAIL))
        .containsAnyOf("plant.year-reserve", "plant.year-gains");
  }

  @Test
  void aYearThatContradictsTheStoragesOrItselfIsRefused() {
    DesignDocument good = plant(PlantYearTest::warming, 75, share("October", 100));
    String month = "{\"name\":\"year\",\"length\":\"365 d\"}";
    assertThat(problems(good.insert(STORAGE + "/months", 0, month)))
        .containsExactly(STORAGE + "/months");
    assertThat(problems(good.with("/plant/coldest", "4 degC"))).containsExactly("/plant/coldest");
    assertThat(problems(good.with("/plant/year/emptyings/0/storage", "Barn")))
        .containsExactly("/plant/year/emptyings/0/storage");
    assertThat(problems(good.with("/plant/year/emptyings/0/volume", "5 m3"))).isNotEmpty();
    assertThat(problems(good.with("/plant/year/months/3/month", "May")))
        .contains("/plant/year/months/4/month");
    assertThat(problems(good.without("/plant/year/months/3/rain")))
        .containsExactly("/plant/year/months");
    assertThat(problems(good.without("/plant/year"))).containsExactly(STORAGE + "/months");
    // A record gives what it holds: then only the rest is needed.
    assertThat(
            problems(
                good.without("/plant/year/months/3/temperature")
                    .with("/plant/year/climate", "madison-wisconsin")))
        .isEmpty();
  }

  private static List<String> problems(DesignDocument document) {
    return document.read().problems().stream().map(Problem::field).toList();
  }
}
