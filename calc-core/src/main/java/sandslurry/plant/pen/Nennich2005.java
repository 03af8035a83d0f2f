package sandslurry.plant.pen;

import java.util.List;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

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
public final class Nennich2005 extends Published implements ManureProduction {
  private static final Citation SOURCE =
      new Citation("Nennich et al.", 2005, "Journal of Dairy Science 88:3721-3733")
          .fromMemory("coefficients");
  private static final Equation MANURE =
      SOURCE.equation(
          "m_m", "manure of a cow", "(0.616 M[kg/d] + 46.2) / 86400", Kind.MASS_PER_HEAD, "M kg/s");
  private static final Equation DRY =
      SOURCE.equation(
          "m_d",
          "dry matter in the manure of a cow",
          "(0.0874 M[kg/d] + 5.6) / 86400",
          Kind.MASS_PER_HEAD,
          "M kg/s");

  Nennich2005() {
    super("nennich-2005", "Nennich et al.", SOURCE, List.of(TABLED_MILK), MANURE);
  }

  @Override
  public Estimate manureKgps(double milkKgps, Trace trace) {
    double milk = ManureProduction.milkKgPerDay(milkKgps);
    return Estimate.checks()
        .check(TABLED_MILK, milkKgps)
        .value(trace.step(MANURE, InUnit.KILOGRAM_PER_DAY.si(0.616 * milk + 46.2), milkKgps));
  }

  /**
   * Dry matter in the manure of one cow, which both equations for the mass use.
   *
   * @param milkKgps milk yield of the cow [kg/s]
   * @return mass of dry matter [kg/s]
   */
  public static Estimate dryMatterKgps(double milkKgps) {
    return dryMatterKgps(milkKgps, Trace.NONE);
  }

  /**
   * The same with its step.
   *
   * @param milkKgps milk yield of the cow [kg/s]
   * @param trace what keeps the step
   * @return mass of dry matter [kg/s]
   */
  public static Estimate dryMatterKgps(double milkKgps, Trace trace) {
    double milk = ManureProduction.milkKgPerDay(milkKgps);
    return Estimate.checks()
        .check(TABLED_MILK, milkKgps)
        .value(trace.step(DRY, InUnit.KILOGRAM_PER_DAY.si(0.0874 * milk + 5.6), milkKgps));
  }
}
