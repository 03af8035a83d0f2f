package sandslurry.plant.pen;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.units.InUnit;

/**
 * Manure of a lactating cow by milk yield, the simple equation of ASABE D384.2.
 *
 * <pre>
 * manure = 0.647 M + 43.212
 * </pre>
 *
 * <p>M milk yield [kg/d]; manure in kg/d a cow. Coefficients from memory, unverified. At 22.7 kg of
 * milk it gives 2.3 kg less than Nennich et al., at 56.7 kg 1.2 kg less.
 */
public final class AsabeD384 implements ManureProduction {
  AsabeD384() {}

  @Override
  public String id() {
    return "asabe-d384";
  }

  @Override
  public String name() {
    return "ASABE D384.2";
  }

  @Override
  public String equation() {
    return "manure [kg/d] = 0.647 M + 43.212";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "ASABE",
        2005,
        "Standard D384.2, Manure Production and Characteristics; coefficients from memory,"
            + " unverified");
  }

  @Override
  public Estimate manureKgps(double milkKgps) {
    double milk = ManureProduction.milkKgPerDay(milkKgps);
    return Estimate.checks()
        .check(TABLED_MILK, milkKgps)
        .value(InUnit.ofKilogramsPerDay(0.647 * milk + 43.212));
  }
}
