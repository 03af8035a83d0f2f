package sandslurry.plant.pen;

import java.util.List;

/** The published equations for the manure of lactating cows. */
public final class ManureProductions {
  /** Nennich et al. (2005). */
  public static final Nennich2005 NENNICH = new Nennich2005();

  /** ASABE D384.2. */
  public static final AsabeD384 ASABE = new AsabeD384();

  /** The greater of the two, and the one that the handbook's table follows. */
  public static final ManureProduction DEFAULT = NENNICH;

  private ManureProductions() {}

  /**
   * All of them.
   *
   * @return the equations, the default first
   */
  public static List<ManureProduction> all() {
    return List.of(NENNICH, ASABE);
  }
}
