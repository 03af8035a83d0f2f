package sandslurry.plant.pen;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.units.InUnit;

/**
 * Manure of a lactating cow by milk yield, Nennich et al. (2005), with the dry matter in it.
 *
 * <pre>
 * manure = 0.616 M + 46.2      dry matter = 0.0874 M + 5.6
 * </pre>
 *
 * <p>M milk yield [kg/d]; manure and dry matter in kg/d a cow. Coefficients from memory,
 * unverified; they give the handbook's table (USDA-NRCS 2008, Agricultural Waste Management Field
 * Handbook, Table 4-5), itself from memory, to half a unit of its last digit.
 */
public final class Nennich2005 implements ManureProduction {
  private static final About ABOUT =
      new About(
          "nennich-2005",
          "Nennich et al.",
          "manure [kg/d] = 0.616 M + 46.2",
          new Citation(
              "Nennich et al.",
              2005,
              "Journal of Dairy Science 88:3721-3733; coefficients from memory, unverified"),
          List.of(TABLED_MILK));

  Nennich2005() {}

  @Override
  public Estimate manureKgps(double milkKgps) {
    double milk = ManureProduction.milkKgPerDay(milkKgps);
    return Estimate.checks()
        .check(TABLED_MILK, milkKgps)
        .value(InUnit.ofKilogramsPerDay(0.616 * milk + 46.2));
  }

  /**
   * Dry matter in the manure of one cow, which both equations for the mass use.
   *
   * @param milkKgps milk yield of the cow [kg/s]
   * @return mass of dry matter [kg/s]
   */
  public static Estimate dryMatterKgps(double milkKgps) {
    double milk = ManureProduction.milkKgPerDay(milkKgps);
    return Estimate.checks()
        .check(TABLED_MILK, milkKgps)
        .value(InUnit.ofKilogramsPerDay(0.0874 * milk + 5.6));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
