package sandslurry.material.sand;

import java.util.List;
import sandslurry.correlation.Citation;

/**
 * Sands that a standard defines by the least and the most that may pass each sieve.
 *
 * <p>Neither standard was at hand: the limits were read in the secondary sources named, and an
 * edition in force may differ.
 */
public enum StandardSand {
  /** Concrete sand. */
  ASTM_C33_FINE_AGGREGATE(
      "ASTM C33",
      "ASTM C33 fine aggregate (concrete sand), middle of the limits",
      new Citation(
          "ASTM International",
          2018,
          "C33/C33M-18, Standard Specification for Concrete Aggregates (not read; limits as on"
              + " secondary web pages that state no edition, one of which has 25 to 50 % on No. 30"
              + " where 25 to 60 % is taken here)"),
      List.of(
          new Limit(9.5e-3, 1, 1),
          new Limit(4.75e-3, 0.95, 1),
          new Limit(2.36e-3, 0.80, 1),
          new Limit(1.18e-3, 0.50, 0.85),
          new Limit(600e-6, 0.25, 0.60),
          new Limit(300e-6, 0.05, 0.30),
          new Limit(150e-6, 0, 0.10),
          new Limit(75e-6, 0, 0.03))),

  /** Natural sand for masonry mortar. */
  ASTM_C144_NATURAL_MASONRY(
      "ASTM C144",
      "ASTM C144 natural masonry sand, middle of the limits",
      new Citation(
          "ASTM International",
          1993,
          "C144, Standard Specification for Aggregate for Masonry Mortar; No. 4 to No. 100 read in"
              + " Portland Cement Association, \"Trowel Tips: Mortar Sand\", Masonry Magazine,"
              + " August 1993, Table 1, which has no limit of No. 200 for natural sand in the table"
              + " and 1.0 % in the text; 0 to 5 % of No. 200 from memory, unverified"),
      List.of(
          new Limit(4.75e-3, 1, 1),
          new Limit(2.36e-3, 0.95, 1),
          new Limit(1.18e-3, 0.70, 1),
          new Limit(600e-6, 0.40, 0.75),
          new Limit(300e-6, 0.10, 0.35),
          new Limit(150e-6, 0.02, 0.15),
          new Limit(75e-6, 0, 0.05)));

  private final String id;
  private final String label;
  private final Citation citation;
  private final List<Limit> limits;

  StandardSand(String id, String label, Citation citation, List<Limit> limits) {
    this.id = id;
    this.label = label;
    this.citation = citation;
    this.limits = limits;
  }

  /**
   * What a standard allows to pass one sieve.
   *
   * @param sizeM opening of the sieve [m]
   * @param least least mass fraction passing
   * @param most greatest mass fraction passing
   */
  public record Limit(double sizeM, double least, double most) {}

  /**
   * The name shown to people.
   *
   * @return the standard and what is taken of it
   */
  public String label() {
    return label;
  }

  /**
   * The short name used in design files.
   *
   * @return for example "ASTM C33"
   */
  public String id() {
    return id;
  }

  /**
   * The source and how well its numbers are known.
   *
   * @return the standard, with what was really read
   */
  Citation citation() {
    return citation;
  }

  /**
   * The limits.
   *
   * @return one line for each sieve, from the coarsest
   */
  public List<Limit> limits() {
    return limits;
  }

  /**
   * The middle of the limits.
   *
   * @return gradation half way between the least and the most that may pass
   */
  public Gradation middle() {
    return Gradation.of(
        limits.stream()
            .map(limit -> new SievePoint(limit.sizeM(), (limit.least() + limit.most()) / 2))
            .toList());
  }
}
