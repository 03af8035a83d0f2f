package sandslurry.plant.pen;

import sandslurry.correlation.Family;

/** The published equations for the manure of lactating cows. */
public final class ManureProductions {
  /** Nennich et al. (2005). */
  public static final Nennich2005 NENNICH = new Nennich2005();

  /** ASABE D384.2. */
  public static final AsabeD384 ASABE = new AsabeD384();

  /** The greater of the two, and the one that the handbook's table follows. */
  public static final ManureProduction DEFAULT = NENNICH;

  /** Every correlation of the family. */
  public static final Family<ManureProduction> FAMILY =
      Family.of("manure of a cow", NENNICH, ASABE);

  private ManureProductions() {}
}
