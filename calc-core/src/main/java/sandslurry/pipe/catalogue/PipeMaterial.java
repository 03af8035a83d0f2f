package sandslurry.pipe.catalogue;

/** What a pipe is made of, as far as hydraulics asks. */
public enum PipeMaterial {
  /** Commercial steel; roughness 0.045 mm, the value of Moody (1944), Trans. ASME 66:671-684. */
  STEEL("steel", 4.5e-5, 2.07e11),

  /**
   * Unplasticised polyvinyl chloride; roughness 0.0015 mm, the value of drawn tubing in Moody
   * (1944) and in common use for plastics.
   */
  PVC("PVC", 1.5e-6, 2.76e9),

  /** Polyethylene; roughness as for {@link #PVC}. */
  POLYETHYLENE("polyethylene", 1.5e-6, 1.03e9);

  private final String words;
  private final double newRoughnessM;
  private final double shortTermModulusPa;

  PipeMaterial(String words, double newRoughnessM, double shortTermModulusPa) {
    this.words = words;
    this.newRoughnessM = newRoughnessM;
    this.shortTermModulusPa = shortTermModulusPa;
  }

  /**
   * The material in words.
   *
   * @return for example "PVC"
   */
  String words() {
    return words;
  }

  /**
   * Equivalent sand roughness of the new, clean wall. A line that has carried manure for some time
   * is rougher, whatever it is made of: 0.1 to 0.5 mm (common practice, no source).
   *
   * @return the roughness [m]
   */
  public double newRoughnessM() {
    return newRoughnessM;
  }

  /**
   * Modulus of elasticity for a load of less than seconds, near room temperature: 30 000 000 psi
   * for steel, 400 000 psi for PVC, 150 000 psi for polyethylene (common design values, from
   * memory, unverified).
   *
   * @return the modulus [Pa]
   */
  public double shortTermModulusPa() {
    return shortTermModulusPa;
  }
}
