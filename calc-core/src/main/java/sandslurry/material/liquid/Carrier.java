package sandslurry.material.liquid;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Bound;

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
 * @param scatter factor, 1 or more, by which the consistency of another liquid of the same
 *     description may be less or more
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
    double scatter,
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
    if (!(scatter >= 1 && Double.isFinite(scatter))) {
      throw new IllegalArgumentException("scatter is a factor of 1 or more but was " + scatter);
    }
    if (totalSolids.isPresent()
        && !(totalSolids.getAsDouble() >= 0 && totalSolids.getAsDouble() < 1)) {
      throw new IllegalArgumentException(
          "total solids lie in 0 to 1 but were " + totalSolids.getAsDouble());
    }
    notes = List.copyOf(notes);
    excesses = List.copyOf(excesses);
  }

  /**
   * A carrier of the same description that is thicker or thinner: one end of the scatter.
   *
   * @param factor every shear stress over that of this carrier
   * @return the carrier, without scatter of its own
   */
  public Carrier thickened(double factor) {
    return new Carrier(
        description,
        temperatureK,
        densityKgM3,
        rheology.thickened(factor),
        vapourPressurePa,
        totalSolids,
        shearRates,
        1,
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
