package sandslurry.plant.climate;

import java.util.List;
import java.util.Optional;

/**
 * What was published of the weather of a place, month by month from January on. A record need not
 * hold all: what it lacks the user gives.
 *
 * @param id its name in files
 * @param place the place, for a person
 * @param airK mean temperature of the air [K]
 * @param rainM rain, snow by its water [m]
 * @param evaporationM evaporation from a free surface of water [m]
 */
public record ClimateRecord(
    String id,
    String place,
    Optional<Series> airK,
    Optional<Series> rainM,
    Optional<Series> evaporationM) {
  /** Months of a year. */
  public static final int MONTHS = 12;

  /**
   * Twelve values with their source.
   *
   * @param values one a month, from January on
   * @param pan whether they are of a class A pan, which evaporates more than a pond
   * @param source where they were published
   */
  public record Series(List<Double> values, boolean pan, String source) {
    /** Copies the list. */
    public Series {
      values = List.copyOf(values);
      if (values.size() != MONTHS) {
        throw new IllegalArgumentException("a year has " + MONTHS + " months");
      }
    }
  }

  /**
   * What the record holds, in words.
   *
   * @return for example "Madison, Wisconsin: temperature"
   */
  public String words() {
    StringBuilder holds = new StringBuilder();
    airK.ifPresent(any -> holds.append(", temperature"));
    rainM.ifPresent(any -> holds.append(", rain"));
    evaporationM.ifPresent(e -> holds.append(e.pan() ? ", pan evaporation" : ", evaporation"));
    return place + ": " + holds.substring(2);
  }
}
