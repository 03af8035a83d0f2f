package sandslurry.pipe.catalogue;

import java.util.OptionalDouble;

/** A standard by which pipes are made. */
public enum PipeSystem {
  /**
   * Welded and seamless wrought steel pipe, sized by inches (NPS). The wall is the nominal one; its
   * tolerance, commonly -12.5 %, is set by the pipe specification. There is no rating: the standard
   * gives dimensions only, so the allowable pressure comes from the piping code, the steel grade
   * and the joints.
   */
  ASME_B36_10M("ASME B36.10M", PipeMaterial.STEEL, true, TemperatureFactors.NONE),

  /**
   * PVC pipe of Schedules 40 and 80, sized by inches (NPS). The wall is the least of the standard;
   * the mean wall is half the tolerance thicker, the larger of 12 % and 0.020 in. Ratings are those
   * of PVC 1120, unthreaded, with water at 73 degF (23 degC); derated when warmer, not for use
   * above 140 degF (60 degC).
   */
  ASTM_D1785("ASTM D1785", PipeMaterial.PVC, true, TemperatureFactors.PVC),

  /**
   * Pressure-rated PVC pipe of standard dimension ratio, outside diameter as steel pipe; walls and
   * ratings as for {@link #ASTM_D1785}.
   */
  ASTM_D2241("ASTM D2241", PipeMaterial.PVC, true, TemperatureFactors.PVC),

  /**
   * Polyethylene pipe of dimension ratio, outside diameter as steel pipe. The least wall is outside
   * diameter over dimension ratio; the mean wall is 6 % thicker, half the tolerance of 12 %.
   * Ratings are those of PE 4710 with a hydrostatic design stress of 1000 psi and water at 73 degF
   * (23 degC); derated above 80 degF (27 degC), no factor known above 100 degF (38 degC).
   */
  ASTM_F714("ASTM F714", PipeMaterial.POLYETHYLENE, true, TemperatureFactors.POLYETHYLENE),

  /**
   * Polyethylene pipe of metric outside diameter. The least wall is that of ISO 4065; the mean wall
   * lies halfway to the greatest of ISO 11922-1 grade V. Ratings are the PN of PE 100 with design
   * coefficient 1.25 and water at 20 degC; derated when warmer, no factor known above 40 degC.
   */
  ISO_4427("ISO 4427", PipeMaterial.POLYETHYLENE, false, TemperatureFactors.POLYETHYLENE_ISO);

  private final String standard;
  private final PipeMaterial material;
  private final boolean sizedByInches;
  private final TemperatureFactors factors;

  PipeSystem(
      String standard, PipeMaterial material, boolean sizedByInches, TemperatureFactors factors) {
    this.standard = standard;
    this.material = material;
    this.sizedByInches = sizedByInches;
    this.factors = factors;
  }

  /**
   * The standard, as it is written in files.
   *
   * @return for example "ASTM D1785"
   */
  public String standard() {
    return standard;
  }

  /**
   * What the pipes are made of.
   *
   * @return the material
   */
  public PipeMaterial material() {
    return material;
  }

  /**
   * Material and standard in words.
   *
   * @return for example "PVC, ASTM D1785"
   */
  public String words() {
    return material.words() + ", " + standard;
  }

  /**
   * The share of its pressure rating that a pipe keeps when it is warm.
   *
   * @param temperatureK temperature of wall and liquid [K]
   * @return 1 up to the temperature of rating, less above; nothing above the last temperature for
   *     which a factor is known, and nothing for a standard without ratings
   */
  public OptionalDouble ratingFactor(double temperatureK) {
    return factors.at(temperatureK);
  }

  boolean sizedByInches() {
    return sizedByInches;
  }
}
