package sandslurry.assessment.plant.judged;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.plant.Figure;
import sandslurry.assessment.plant.PlantModel;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.assessment.plant.PlantTotals;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Range;
import sandslurry.plant.account.StorageAccount;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is to be said of the storages of a plant: how long they last and when sand fills them. */
final class PlantStorageFindings extends PlantFindingWriter {
  /**
   * Sand that fills a tenth of a storage, or cuts into its reserves, sooner than this is worth a
   * caution (common practice, no source).
   */
  private static final double FEW_YEARS = 10;

  PlantStorageFindings(PlantModel model, PlantResult result, UnitSystem units) {
    super(model, result, units);
  }

  @Override
  List<Finding> all() {
    result.accounts().ifPresent(accounts -> accounts.storages().forEach(this::storage));
    return findings;
  }

  private void storage(String name, StorageAccount account) {
    spec.targets().storageDays().ifPresent(wanted -> wanted(name, account, wanted));
    account
        .worstToTheBrim()
        .filter(brim -> brim.days() < PlantTotals.YEAR_D)
        .ifPresent(
            brim ->
                add(
                    Severity.NOTE,
                    name,
                    "Unless it is emptied, the storage runs over.",
                    "Emptied at the start of "
                        + account.months().get(brim.startMonth()).name()
                        + " it is full to the brim, freeboard and the room of the storm used up, "
                        + show(Kind.DAYS, InUnit.ofDays(brim.days()))
                        + " later, in "
                        + account.months().get(brim.month()).name()
                        + ".",
                    ""));
    found(name, "years until sand takes a tenth").ifPresent(years -> sand(name, years));
  }

  /** Sand that settles in the storage. */
  private void sand(String name, Figure years) {
    boolean soon = years.range().base() < FEW_YEARS;
    add(
        soon ? Severity.CAUTION : Severity.NOTE,
        name,
        "Sand that is not caught settles in the storage and takes its volume.",
        "It rises "
            + figure(name, "rise of the sand in a year")
            + " a year, "
            + figure(name, "sand that settles in a year, in bulk")
            + " in bulk, and takes a tenth of the volume in "
            + (years.range().base() >= PlantTotals.MANY_YEARS
                ? Math.round(PlantTotals.MANY_YEARS) + " years or more"
                : years.shown(units) + " years")
            + " (sooner than "
            + Math.round(FEW_YEARS)
            + " is a caution by common practice, no source).",
        soon
            ? "Plan to dig it out within "
                + least(years).strip()
                + " years, or catch more sand before it."
            : "");
  }

  /** A figure of the storage with its range. */
  private String figure(String storage, String what) {
    return found(storage, what).orElseThrow().shown(units);
  }

  private Optional<Figure> found(String storage, String what) {
    return result.accounts().flatMap(accounts -> accounts.figure("Storage: " + storage, what));
  }

  private Optional<Range> lasts(String storage) {
    return found(storage, "days of storage").map(Figure::range);
  }

  private void wanted(String name, StorageAccount account, double wanted) {
    Optional<StorageAccount.Filling> filling = account.worstFilling();
    boolean enough = filling.isEmpty() || filling.get().days() >= wanted;
    double shortM3 = account.roomNeededM3(wanted) - account.roomM3();
    boolean surely = enough && lasts(name).map(r -> r.low() >= InUnit.ofDays(wanted)).orElse(true);
    add(
        surely ? Severity.PASS : enough ? Severity.CAUTION : Severity.FAIL,
        name,
        surely
            ? "The storage lasts as many days as are wanted."
            : enough
                ? "The storage lasts as many days as are wanted as expected, not over the whole"
                    + " range."
                : "The storage does not last as many days as are wanted.",
        filling
            .map(
                worst ->
                    "It lasts "
                        + figure(name, "days of storage")
                        + " from the start of "
                        + account.months().get(worst.startMonth()).name()
                        + " on, the worst month, and is full in "
                        + account.months().get(worst.month()).name()
                        + ", below freeboard and storm and above the sand there now; wanted are "
                        + show(Kind.DAYS, InUnit.ofDays(wanted))
                        + ".")
            .orElse(
                "It never fills, because the year evaporates what comes in; wanted are "
                    + show(Kind.DAYS, InUnit.ofDays(wanted))
                    + "."),
        enough
            ? ""
            : "Find room for "
                + show(Kind.VOLUME, Math.max(0, shortM3))
                + " more, dig the sand out, or bring less water.");
    OptionalDouble years = account.yearsUntilShortOf(wanted);
    if (!enough || years.isEmpty()) {
      return;
    }
    boolean soon = years.getAsDouble() < FEW_YEARS;
    boolean never = years.getAsDouble() > PlantTotals.MANY_YEARS;
    add(
        soon ? Severity.CAUTION : Severity.NOTE,
        name,
        never
            ? "In "
                + Math.round(PlantTotals.MANY_YEARS)
                + " years settled sand does not cut into the"
                + " room of storm and freeboard."
            : "Settled sand cuts into the room of storm and freeboard in year "
                + (int) (Math.floor(years.getAsDouble()) + 1)
                + ".",
        "The days wanted ask for "
            + show(Kind.VOLUME, account.roomNeededM3(wanted))
            + " of "
            + show(Kind.VOLUME, account.roomM3())
            + "; sand takes "
            + figure(name, "sand that settles in a year, in bulk")
            + " a year, as much as new sand loses.",
        soon ? "Plan to dig it out before that year." : "");
  }
}
