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

  /** Every month is as warm as November, with 400 mm of rain. */
  private static DesignDocument wet() {
    return plant(i -> warming(10), 400, share("October", 100));
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
    // A year that is all as November has November's recovery, however much rains on the storage.
    Accounts same = accounts(assess(wet()));
    assertThat(same.year().orElseThrow().months().get(0).capture().getAsDouble())
        .isCloseTo(year.months().get(10).capture().getAsDouble(), within(1e-6));
  }

  // When a storage is emptied changes no recovery, so that a plan of it and what is wanted of the
  // sand are judged in one plant.

  private static double least() {
    return months().year().orElseThrow().least().orElseThrow().capture().getAsDouble();
  }

  private static double mean() {
    return months().capture().base();
  }

  private static Accounts months() {
    return accounts(assess(plant(PlantYearTest::warming, 75, share("October", 100))));
  }

  /** Sand that is recovered in the mean of the year, but not in its coldest month. */
  private static Assessment gaining() {
    return assess(
        plant(PlantYearTest::warming, 75, share("October", 5))
            .with(WANTED, 50 * (least() + mean()) + " %"));
  }

  /** Sand that is recovered in every month. */
  private static Assessment unplanned() {
    return assess(plant(PlantYearTest::warming, 75, "").with(WANTED, 100 * least() - 0.1 + " %"));
  }

  /** Sand that is recovered neither in the mean of the year nor in its coldest month. */
  private static Assessment fitting() {
    String often = share("February", 100) + "," + share("June", 100) + "," + share("October", 100);
    return assess(
        plant(PlantYearTest::warming, 75, often).with(WANTED, 100 * mean() + 0.03 + " %"));
  }

  @Test
  void theColdestMonthJudgesTheRecovery() {
    assertThat(least()).isLessThan(mean() - 5e-4);
    assertThat(found(gaining(), "sand recovery", Severity.FAIL))
        .contains("plant.worst-month-low")
        .doesNotContain("plant.recovery-low");
    assertThat(found(unplanned(), "sand recovery", Severity.PASS)).contains("plant.worst-month");
    assertThat(found(fitting(), "sand recovery", Severity.FAIL))
        .contains("plant.recovery-low")
        .doesNotContain("plant.worst-month-low");
  }

  @Test
  void theFullestMonthJudgesTheStorage() {
    Assessment fits = fitting();
    assertThat(found(fits, "Storage", Severity.PASS)).contains("plant.year-fits");
    StorageYear year = accounts(fits).year().orElseThrow().storages().get("Storage");
    assertThat(year.repeats()).isTrue();
    assertThat(year.months().get(year.highest()).name()).isIn("February", "June", "October");
    assertThat(found(gaining(), "Storage", Severity.FAIL)).contains("plant.year-gains");
    // Not emptied by plan it is told that it runs over, and not judged.
    assertThat(found(unplanned(), "Storage", Severity.FAIL)).isEmpty();
    assertThat(found(unplanned(), "Storage", Severity.NOTE)).contains("plant.runs-over");
    // Nearly five metres of rain a year and one emptying: it rises into its reserve, or runs over.
    assertThat(found(assess(wet()), "Storage", Severity.FAIL))
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
