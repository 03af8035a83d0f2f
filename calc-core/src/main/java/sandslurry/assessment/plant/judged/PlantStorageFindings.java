package sandslurry.assessment.plant.judged;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Figure;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.account.StorageAccount.Filling;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The storages of a plant: how long they last and when sand fills them. */
record PlantStorageFindings(PlantModel model, PlantResult result, Findings findings)
    implements PlantFindingWriter {
  /**
   * Sand that fills a tenth of a storage, or cuts into its reserves, sooner than this is worth a
   * caution (common practice, no source).
   */
  private static final double FEW_YEARS = 10;

  @Override
  public void all() {
    result.accounts().ifPresent(accounts -> accounts.storages().forEach(this::storage));
  }

  private Optional<Figure> figure(String storage, String what) {
    return result
        .accounts()
        .flatMap(accounts -> accounts.figures().of("Storage: " + storage, what));
  }

  private void storage(String name, StorageAccount account) {
    model.spec().targets().storageDays().ifPresent(wanted -> wanted(name, account, wanted));
    account
        .worstToTheBrim()
        .filter(brim -> brim.days() < PlantTotals.YEAR_D)
        .filter(brim -> model.spec().year().emptyings(name).isEmpty())
        // Where days are wanted, that they fit or do not says all of it.
        .filter(brim -> model.spec().targets().storageDays().isEmpty())
        .ifPresent(
            brim ->
                found("runs-over", Severity.NOTE, name)
                    .with("start", account.months().get(brim.startMonth()).name())
                    .with("days", Kind.DAYS, InUnit.DAY.si(brim.days()))
                    .with("month", account.months().get(brim.month()).name())
                    .why("runs-over")
                    .add());
    // What comes later than anybody plans for stands in the account alone.
    figure(name, "years until sand takes a tenth")
        .filter(years -> years.range().low() < PlantTotals.MANY_YEARS)
        .ifPresent(years -> sand(name, years));
  }

  /** Sand that settles in the storage. */
  private void sand(String name, Figure years) {
    boolean soon = years.range().base() < FEW_YEARS;
    Found found = found("sand-settles", soon ? Severity.CAUTION : Severity.NOTE, name);
    with(found, "rise", figure(name, "rise of the sand in a year").orElseThrow());
    with(found, "volume", figure(name, "sand that settles in a year, in bulk").orElseThrow());
    with(found, "years", years)
        .count("few", FEW_YEARS)
        .count("many", PlantTotals.MANY_YEARS)
        .why("sand-rises")
        .why(years.range().base() >= PlantTotals.MANY_YEARS ? "tenth-late" : "tenth");
    found.with("within", shown -> time(shown, years.range().low()));
    found.cure(soon, "dig-storage").add();
  }

  /** Days where there are few years. */
  private static String time(UnitSystem shown, double years) {
    return years < 1
        ? shown.show(Kind.DAYS, InUnit.DAY.si(years * PlantTotals.YEAR_D))
        : shown.number(Kind.YEARS, years) + " years";
  }

  private void wanted(String name, StorageAccount account, double wantedDays) {
    Optional<Filling> filling = account.worstFilling();
    Optional<Figure> lasts = figure(name, "days of storage");
    boolean enough = filling.isEmpty() || filling.get().days() >= wantedDays;
    boolean surely =
        enough && lasts.map(f -> f.range().low() >= InUnit.DAY.si(wantedDays)).orElse(true);
    Found found =
        (surely
                ? found("lasts", Severity.PASS, name)
                : enough
                    ? found("lasts-maybe", Severity.CAUTION, name)
                    : found("lasts-too-short", Severity.FAIL, name))
            .with("wanted", Kind.DAYS, InUnit.DAY.si(wantedDays));
    if (filling.isPresent() && lasts.isPresent()) {
      with(found, "days", lasts.get())
          .with("start", account.months().get(filling.get().startMonth()).name())
          .with("month", account.months().get(filling.get().month()).name())
          .why("lasts");
    } else {
      found.why("never-fills");
    }
    found
        .when(
            !enough,
            f ->
                f.with(
                        "room",
                        Kind.VOLUME,
                        Math.max(0, account.roomNeededM3(wantedDays) - account.roomM3()))
                    .cure("more-room"))
        .add();
    if (enough) {
      cutsIn(name, account, wantedDays);
    }
  }

  /** When settled sand takes room that the days wanted need. */
  private void cutsIn(String name, StorageAccount account, double wantedDays) {
    OptionalDouble years = account.yearsUntilShortOf(wantedDays);
    if (years.isEmpty() || years.getAsDouble() > PlantTotals.MANY_YEARS) {
      return;
    }
    boolean soon = years.getAsDouble() < FEW_YEARS;
    Found found = found("sand-cuts-in", soon ? Severity.CAUTION : Severity.NOTE, name);
    with(found, "volume", figure(name, "sand that settles in a year, in bulk").orElseThrow())
        .count("year", Math.floor(years.getAsDouble()) + 1)
        .with("needed", Kind.VOLUME, account.roomNeededM3(wantedDays))
        .with("room", Kind.VOLUME, account.roomM3())
        .why("room-for-days");
    found.cure(soon, "dig-before").add();
  }
}
