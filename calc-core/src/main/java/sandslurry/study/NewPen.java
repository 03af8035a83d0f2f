package sandslurry.study;

import java.util.ArrayList;
import java.util.List;
import sandslurry.design.document.DesignDocument;
import sandslurry.material.liquid.Carriers;
import sandslurry.plant.pen.ManureProductions;
import sandslurry.plant.pen.Nennich2005;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The line from a new pen, before more of it is known: what is scraped goes to a pit, where water
 * or recycled liquor thins the manure, and is pumped away before the next scraping.
 *
 * @param cows lactating cows
 * @param milkKgps milk yield of a cow, which the manure follows [kg/s]
 * @param sandKgps dry bedding sand used for a cow [kg/s]
 * @param intervalS time between two scrapings [s]
 * @param lengthM length of the line [m]
 * @param riseM height of its end above its start [m]
 * @param totalSolids sand-free total solids to which the manure is thinned
 * @param temperatureK temperature of the liquor [K]
 */
public record NewPen(
    double cows,
    double milkKgps,
    double sandKgps,
    double intervalS,
    double lengthM,
    double riseM,
    double totalSolids,
    double temperatureK) {
  private static final double SAND_DENSITY_KG_M3 = 2650;
  private static final int MOST_COWS = 100_000;
  private static final double MOST_KGPS = InUnit.KILOGRAM_PER_DAY.si(1000);
  private static final double MOST_LENGTH_M = 20_000;

  /** What is more is not repeated: in another unit it may be no number. */
  private static final double BEYOND_ALL = 1e12;

  /** Checks that the numbers can be those of a pen, and tells all that cannot. */
  public NewPen {
    List<String> wrong = new ArrayList<>();
    need(
        wrong,
        cows > 0 && cows <= MOST_COWS,
        "cows above 0 and at most " + MOST_COWS,
        cows,
        Kind.NUMBER);
    need(
        wrong,
        milkKgps >= 0 && milkKgps <= MOST_KGPS,
        "milk of 0 to 1000 kg/d a cow",
        milkKgps,
        Kind.MASS_PER_HEAD);
    need(
        wrong,
        sandKgps > 0 && sandKgps <= MOST_KGPS,
        "sand above 0 and at most 1000 kg/d a cow",
        sandKgps,
        Kind.MASS_PER_HEAD);
    need(
        wrong,
        intervalS > 0 && intervalS <= InUnit.DAY.si(7),
        "an interval above 0 and at most 7 d",
        intervalS,
        Kind.HOURS);
    need(
        wrong,
        lengthM > 0 && lengthM <= MOST_LENGTH_M,
        "a length above 0 and at most 20 km",
        lengthM,
        Kind.LENGTH);
    need(wrong, Math.abs(riseM) <= lengthM, "a rise of at most the length", riseM, Kind.LENGTH);
    need(
        wrong,
        totalSolids > 0 && totalSolids <= Carriers.HIGHEST_TOTAL_SOLIDS,
        "liquor of more than 0 % and at most "
            + UnitSystem.METRIC.show(Kind.PERCENT, Carriers.HIGHEST_TOTAL_SOLIDS)
            + " solids",
        totalSolids,
        Kind.PERCENT);
    need(
        wrong,
        temperatureK > 0 && Double.isFinite(temperatureK),
        "a temperature",
        temperatureK,
        Kind.TEMPERATURE);
    if (!wrong.isEmpty()) {
      throw new IllegalArgumentException("a pen needs " + String.join("; ", wrong));
    }
  }

  private static void need(List<String> wrong, boolean met, String what, double has, Kind<?> kind) {
    if (!met) {
      boolean told = Math.abs(has) < BEYOND_ALL;
      wrong.add(what + (told ? " but has " + UnitSystem.METRIC.show(kind, has) : ""));
    }
  }

  /** Manure of all cows [kg/s]. */
  private double manureKgps() {
    return cows * ManureProductions.DEFAULT.manureKgps(milkKgps).value();
  }

  /** Liquor without sand: as much as gives the solids wanted, and no less than the manure. */
  private double liquorKgps() {
    double dry = cows * Nennich2005.dryMatterKgps(milkKgps).value();
    return Math.max(manureKgps(), dry / totalSolids);
  }

  /**
   * Solids of the liquor.
   *
   * @return those wanted, or those of the manure when it is thinner
   */
  public double liquorSolids() {
    return cows * Nennich2005.dryMatterKgps(milkKgps).value() / liquorKgps();
  }

  /**
   * Water or recycled liquor to add, taken as free of solids.
   *
   * @return volume in a day [m3]
   */
  public double dilutionM3() {
    double water = Carriers.water(temperatureK).densityKgM3();
    return (liquorKgps() - manureKgps()) / water * InUnit.DAY.si(1);
  }

  private double liquorM3ps() {
    return liquorKgps() / Carriers.manure(liquorSolids(), temperatureK).densityKgM3();
  }

  private double sandM3ps() {
    return cows * sandKgps / SAND_DENSITY_KG_M3;
  }

  /**
   * What is pumped in a day.
   *
   * @return liquor and sand [m3]
   */
  public double dailyM3() {
    return (liquorM3ps() + sandM3ps()) * InUnit.DAY.si(1);
  }

  /**
   * The line as a design: one run without a pipe, which {@link Sizing#withFlow} gives pipe and flow
   * rate.
   *
   * @param units the units it is written in
   * @param gradation the name of a standard sand, such as "ASTM C33"
   * @return the design; its flow rates are only a start
   */
  public DesignDocument design(UnitSystem units, String gradation) {
    String batch = units.show(Kind.VOLUME, dailyM3() * intervalS / InUnit.DAY.si(1));
    double sand = sandM3ps() / (liquorM3ps() + sandM3ps());
    return DesignDocument.empty()
        .with("/title", "Line from a new pen")
        .with("/units", units == UnitSystem.US ? "US" : "metric")
        .with("/sand/gradation", gradation)
        .with("/carrier/kind", "manure")
        .with("/carrier/temperature", units.show(Kind.TEMPERATURE, temperatureK))
        .with("/carrier/totalSolids", units.showAtLeast(Kind.PERCENT, liquorSolids()))
        .with("/lines/0/mixture/volumeFraction", units.showAtLeast(Kind.PERCENT, sand))
        .with("/lines/0/flow/design", "20 L/s")
        .with("/lines/0/route/runs/0/name", "Line from the pen")
        .with("/lines/0/route/runs/0/length", units.show(Kind.LENGTH, lengthM))
        .with("/lines/0/route/runs/0/rise", units.show(Kind.LENGTH, riseM))
        .with("/lines/0/operation/dailyVolume", units.show(Kind.VOLUME, dailyM3()))
        .with("/lines/0/operation/batchVolume", batch);
  }
}
