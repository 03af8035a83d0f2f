package sandslurry.plant.pen;

import sandslurry.units.InUnit;

/**
 * Cattle that give no milk: manure as excreted a head, by USDA-NRCS (2008), Agricultural Waste
 * Management Field Handbook, Table 4-5 (from memory, unverified).
 */
public enum OtherCattle {
  /** Dry cow: 85 lb of manure a day with 11 lb of dry matter. */
  DRY_COW("dry cow", 38.56, 4.99),

  /** Heifer of about 970 lb (440 kg): 54 lb of manure a day with 8.3 lb of dry matter. */
  HEIFER("heifer", 24.49, 3.76),

  /** Calf of about 330 lb (150 kg): 27 lb of manure a day with 3.0 lb of dry matter. */
  CALF("calf", 12.25, 1.36);

  private final String label;
  private final double manureKgPerDay;
  private final double dryKgPerDay;

  OtherCattle(String label, double manureKgPerDay, double dryKgPerDay) {
    this.label = label;
    this.manureKgPerDay = manureKgPerDay;
    this.dryKgPerDay = dryKgPerDay;
  }

  /**
   * The name.
   *
   * @return for example "dry cow"
   */
  String label() {
    return label;
  }

  /**
   * Manure of one head.
   *
   * @return mass of manure [kg/s]
   */
  public double manureKgps() {
    return InUnit.KILOGRAM_PER_DAY.si(manureKgPerDay);
  }

  /**
   * Dry matter in the manure of one head.
   *
   * @return mass of dry matter [kg/s]
   */
  public double dryMatterKgps() {
    return InUnit.KILOGRAM_PER_DAY.si(dryKgPerDay);
  }
}
