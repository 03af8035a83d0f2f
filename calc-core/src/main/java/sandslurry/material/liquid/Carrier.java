package sandslurry.material.liquid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Physics;

/**
 * The liquid that carries the sand, free of sand itself: water, or manure liquor with its rheology.
 *
 * @param description what it is, in words
 * @param temperatureK temperature [K]
 * @param densityKgM3 density [kg/m3]
 * @param rheology how it resists shear
 * @param vapourPressurePa absolute pressure at which it boils [Pa]
 * @param totalSolids dry matter over total mass, without sand; empty when not known
 * @param shearRates shear rates between which the rheology was measured; empty when it holds for
 *     all, or nothing is known
 * @param scatter how far another liquid of the same description may be thinner or thicker
 * @param notes what a reader of a result must know of the uncertainty of these values
 * @param excesses what lay outside the range of the measurements behind these values
 */
public record Carrier(
    String description,
    double temperatureK,
    double densityKgM3,
    Rheology rheology,
    double vapourPressurePa,
    OptionalDouble totalSolids,
    Optional<Bound> shearRates,
    Scatter scatter,
    List<String> notes,
    List<Bound.Excess> excesses) {
  /**
   * Checks that the values are positive and copies the lists.
   *
   * @throws IllegalArgumentException if density, temperature or vapour pressure is not a positive
   *     number or total solids is not a fraction
   */
  public Carrier {
    if (!(temperatureK > 0) || !(densityKgM3 > 0) || !(vapourPressurePa > 0)) {
      throw new IllegalArgumentException(
          "a carrier needs a positive temperature, density and vapour pressure but has "
              + temperatureK
              + " K, "
              + densityKgM3
              + " kg/m3 and "
              + vapourPressurePa
              + " Pa");
    }
    if (totalSolids.isPresent()
        && !(totalSolids.getAsDouble() >= 0 && totalSolids.getAsDouble() < 1)) {
      throw new IllegalArgumentException(
          "total solids lie in 0 to 1 but were " + totalSolids.getAsDouble());
    }
    notes = List.copyOf(notes);
    excesses = List.copyOf(excesses);
  }

  /** Where the numbers of a rheology come from, which says how far they may be off. */
  public enum Source {
    /** A substance whose viscosity is known. */
    KNOWN,
    /** A table by the solids of the liquor. */
    SOLIDS,
    /** Numbers typed in by the user. */
    TYPED,
    /** A fit to readings of a viscometer. */
    FITTED
  }

  /**
   * How far another liquid of the same description may be thinner or thicker.
   *
   * @param source where the numbers come from
   * @param factor every stress of the thicker liquid over that of the carrier, 1 or more
   * @param thinner the thinner liquid
   * @param thicker the thicker liquid, with a yield stress that the numbers may hide
   */
  public record Scatter(Source source, double factor, Rheology thinner, Rheology thicker) {
    /** Beyond this a factor is none. */
    private static final double NONE = 1 + 1e-6;

    /** Checks the factor. */
    public Scatter {
      if (!(factor >= 1 && Double.isFinite(factor))) {
        throw new IllegalArgumentException("scatter is a factor of 1 or more but was " + factor);
      }
    }

    /**
     * A liquid that is as it is described.
     *
     * @param rheology the liquid
     * @return no scatter
     */
    static Scatter none(Rheology rheology) {
      return new Scatter(Source.KNOWN, 1, rheology, rheology);
    }

    /**
     * A liquid whose every stress is known to a factor.
     *
     * @param source where the numbers come from
     * @param rheology the liquid
     * @param factor the factor, 1 or more
     * @param hiddenYieldPa yield stress that the thicker liquid may have beside, 0 for none [Pa]
     * @return the scatter
     */
    static Scatter of(Source source, Rheology rheology, double factor, double hiddenYieldPa) {
      Rheology thicker = rheology.thickened(factor);
      return new Scatter(
          source,
          factor,
          rheology.thickened(1 / factor),
          hiddenYieldPa > thicker.yieldStressPa()
              ? new HerschelBulkley(hiddenYieldPa, thicker.consistency(), thicker.index())
              : thicker);
    }

    /**
     * Says whether there is any.
     *
     * @return true when the thinner and the thicker liquid differ from the carrier
     */
    public boolean matters() {
      return factor > NONE;
    }
  }

  /**
   * The yield stress that can hold sand: that of the rheology, else that which manure of these
   * solids has though its table, a power law, does not give it.
   *
   * @return yield stress, 0 where there is none [Pa]
   */
  public double yieldStressPa() {
    return scatter.source() == Source.SOLIDS
        ? Carriers.yieldStressPa(totalSolids.orElse(0))
        : rheology.yieldStressPa();
  }

  /**
   * Gauge pressure below which the liquid boils, at sea level.
   *
   * @return the pressure [Pa]
   */
  public double boilsBelowPa() {
    return vapourPressurePa - Physics.ATMOSPHERE_PA;
  }

  /**
   * A carrier of the same description with another rheology: one end of the scatter.
   *
   * @param other the rheology
   * @return the carrier, without scatter of its own
   */
  public Carrier of(Rheology other) {
    return new Carrier(
        description,
        temperatureK,
        densityKgM3,
        other,
        vapourPressurePa,
        totalSolids,
        shearRates,
        Scatter.none(other),
        notes,
        excesses);
  }

  /**
   * The carrier as a Newtonian correlation sees it.
   *
   * @param shearRatePs shear rate of the case in hand, positive [1/s]
   * @return density, and apparent viscosity at that shear rate
   * @throws IllegalArgumentException if the shear rate is not a positive number
   */
  public Liquid liquidAt(double shearRatePs) {
    if (!(shearRatePs > 0)) {
      throw new IllegalArgumentException("shear rate must be > 0 but was " + shearRatePs + " 1/s");
    }
    return new Liquid(densityKgM3, rheology.apparentViscosityPaS(shearRatePs));
  }
}
