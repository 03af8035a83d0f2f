package sandslurry.design.plant;

import java.util.List;
import sandslurry.plant.account.StorageYear;

/**
 * The year of a plant. Without months, only its seasons are known.
 *
 * @param seasonsK coldest and warmest liquor in a year, where they are given [K]
 * @param months the twelve months from January on, or none
 * @param sources where temperature, rain and evaporation were published; empty for the user's own
 * @param emptyings when the storages are emptied
 */
public record YearSpec(
    List<Double> seasonsK,
    List<MonthSpec> months,
    List<String> sources,
    List<EmptyingSpec> emptyings) {
  /** Copies the lists. */
  public YearSpec {
    seasonsK = List.copyOf(seasonsK);
    months = List.copyOf(months);
    sources = List.copyOf(sources);
    emptyings = List.copyOf(emptyings);
  }

  static YearSpec ofSeasons(List<Double> seasonsK) {
    return new YearSpec(seasonsK, List.of(), List.of(), List.of());
  }

  /**
   * When a storage is emptied.
   *
   * @param storage its name
   * @return its emptyings, in the order given
   */
  public List<StorageYear.Emptying> emptyings(String storage) {
    return emptyings.stream()
        .filter(one -> one.storage().equals(storage))
        .map(EmptyingSpec::emptying)
        .toList();
  }

  /**
   * A month.
   *
   * @param name its name
   * @param days its length
   * @param airK mean temperature of the air [K]
   * @param liquorK temperature of the liquor [K]
   * @param rainM rain [m]
   * @param evaporationM evaporation of a storage [m]
   */
  public record MonthSpec(
      String name, double days, double airK, double liquorK, double rainM, double evaporationM) {}

  /**
   * An emptying of a storage.
   *
   * @param storage name of the storage
   * @param emptying when, and how much
   */
  public record EmptyingSpec(String storage, StorageYear.Emptying emptying) {}
}
