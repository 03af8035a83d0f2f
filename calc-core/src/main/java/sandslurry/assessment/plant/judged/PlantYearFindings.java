package sandslurry.assessment.plant.judged;

import java.util.List;
import java.util.stream.Collectors;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantResult.Accounts;
import sandslurry.assessment.plant.PlantResult.MonthResult;
import sandslurry.assessment.plant.PlantResult.Year;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.StorageYear;
import sandslurry.plant.account.StorageYear.Course;
import sandslurry.units.Kind;

/** The months of the year: the worst of them judges recovery, the fullest the storages. */
record PlantYearFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  private static final String RECOVERY = "sand recovery";

  @Override
  public void all() {
    result.accounts().ifPresent(accounts -> accounts.year().ifPresent(y -> year(accounts, y)));
  }

  private void year(Accounts accounts, Year year) {
    List<MonthResult> unsettled =
        year.months().stream().filter(month -> month.capture().isEmpty()).toList();
    if (!unsettled.isEmpty()) {
      found("months-unsettled", Severity.CAUTION, RECOVERY)
          .with(
              "months",
              unsettled.stream().map(one -> one.month().name()).collect(Collectors.joining(", ")))
          .why("months-unsettled")
          .cure("measure-cases")
          .add();
    }
    // Where the mean day already recovers too little, that is said of it.
    if (accounts.capture().base() >= model.spec().targets().sandCapture()) {
      year.least().ifPresent(least -> worst(least, unsettled.isEmpty()));
    }
    year.storages()
        .forEach(
            (name, course) -> {
              if (!model.spec().year().emptyings(name).isEmpty()) {
                storage(name, course, accounts.storages().get(name));
              }
            });
  }

  private void worst(MonthResult least, boolean all) {
    double recovered = least.capture().getAsDouble();
    boolean enough = recovered >= model.spec().targets().sandCapture();
    if (enough && !all) {
      return;
    }
    found("worst-month", "worst-month-low", enough, Severity.FAIL, RECOVERY)
        .with("month", least.month().name())
        .with("temperature", Kind.TEMPERATURE, least.month().liquorK())
        .with("recovered", Kind.PERCENT, recovered)
        .with("wanted", Kind.PERCENT, model.spec().targets().sandCapture())
        .why("worst-month")
        .cure(!enough, "worst-month")
        .add();
  }

  private void storage(String name, StorageYear year, StorageAccount account) {
    Course highest = year.months().get(year.highest());
    Course wettest = year.months().get(year.wettest());
    if (!year.repeats()) {
      year.over()
          .ifPresent(
              over ->
                  found("year-gains", Severity.FAIL, name)
                      .with("gain", Kind.VOLUME, year.gainM3())
                      .with("month", year.months().get(over.month()).name())
                      .count("year", over.year())
                      .why("year-gains")
                      .cure("empty-more")
                      .add());
    } else {
      boolean fits = year.full().isEmpty();
      Found found =
          found("year-fits", "year-reserve", fits, Severity.FAIL, name)
              .with("month", highest.name())
              .with("most", Kind.VOLUME, highest.mostM3())
              .with("room", Kind.VOLUME, account.roomM3())
              .with("freeboard", Kind.HEAD, highest.freeboardM())
              .with("wettest", wettest.name())
              .with("net", Kind.VOLUME, wettest.water().netM3())
              .why("year-level");
      year.full()
          .ifPresent(
              full ->
                  found
                      .count("day", Math.floor(full.day()) + 1)
                      .with("from", year.months().get(full.month()).name())
                      .with("excess", Kind.VOLUME, highest.mostM3() - account.roomM3())
                      .why("year-full")
                      .cure("empty-sooner"));
      found.add();
    }
    double missing = year.months().stream().mapToDouble(m -> m.water().missingM3()).sum();
    if (missing > 0) {
      found("emptying-short", Severity.NOTE, name)
          .with("missing", Kind.VOLUME, missing)
          .why("emptying-short")
          .add();
    }
  }
}
