package sandslurry.plant.pen;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import sandslurry.plant.Range;
import sandslurry.units.InUnit;

/**
 * A pen, or a barn of pens that are alike.
 *
 * @param name what it is called
 * @param cows number of lactating cows
 * @param milkKgps milk yield a cow [kg/s]
 * @param others heads of other cattle
 * @param manureFactor manure and its dry matter over those of the equations, for a herd that is
 *     known to make more or less: 1 when not known
 * @param stalls number of stalls that are bedded with sand; 0 for a barn without sand
 * @param sandKgps dry sand used a stall, mineral fines included [kg/s]
 * @param waterM3ps wash, drinking and rain water that reaches the manure of this pen, in all [m3/s]
 * @param scrapesPerDay how often it is scraped or flushed
 */
public record Pen(
    String name,
    double cows,
    double milkKgps,
    Map<OtherCattle, Double> others,
    Range manureFactor,
    double stalls,
    Range sandKgps,
    Range waterM3ps,
    double scrapesPerDay) {
  /** Checks every bound and copies the map. */
  public Pen {
    Map<OtherCattle, Double> ordered = new EnumMap<>(OtherCattle.class);
    ordered.putAll(others);
    others = Collections.unmodifiableMap(ordered);
    if (name.isBlank()) {
      throw new IllegalArgumentException("a pen needs a name");
    }
    notNegative(name, "number of cows", cows);
    notNegative(name, "milk yield", milkKgps);
    others.forEach((kind, heads) -> notNegative(name, "number of " + kind.label() + "s", heads));
    notNegative(name, "number of stalls", stalls);
    notNegative(name, "sand of a stall", sandKgps.low());
    notNegative(name, "water", waterM3ps.low());
    if (!(manureFactor.low() > 0)) {
      throw new IllegalArgumentException(
          name + ": the manure factor must be > 0 but was " + manureFactor.low());
    }
    if (!(scrapesPerDay > 0 && Double.isFinite(scrapesPerDay))) {
      throw new IllegalArgumentException(
          name + ": scrapes a day must be > 0 but were " + scrapesPerDay);
    }
  }

  private static void notNegative(String pen, String what, double value) {
    if (!(value >= 0 && Double.isFinite(value))) {
      throw new IllegalArgumentException(pen + ": " + what + " must be >= 0 but was " + value);
    }
  }

  /**
   * The time between two scrapings when they are evenly spaced.
   *
   * @return the interval [s]
   */
  public double scrapingIntervalS() {
    return InUnit.DAY.si(1 / scrapesPerDay);
  }
}
