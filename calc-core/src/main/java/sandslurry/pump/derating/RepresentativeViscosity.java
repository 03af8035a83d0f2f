package sandslurry.pump.derating;

import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.liquid.Rheology;
import sandslurry.units.Kind;

/**
 * The one viscosity by which a liquid whose viscosity changes with shear is put into a correction
 * for Newtonian liquids.
 *
 * <p>No rule is generally accepted (Heywood and Alderman 2011, abstract read). Kalombo, Haldenwang,
 * Chhabra and Fester (2014, Journal of Fluids Engineering 136:031302, abstract read) found the head
 * better predicted with an apparent viscosity and the efficiency better with the plastic one. So
 * all are asked, their spread is the measure of what is not known, and the most viscous is
 * believed.
 */
public enum RepresentativeViscosity {
  /**
   * Plastic viscosity: the slope of the rheogram from {@value #LOW_SHEAR_PS} to {@value
   * #HIGH_SHEAR_PS} 1/s, the shear that Walker and Goulas found to stand for flows near the best.
   */
  PLASTIC(
      "plastic, at high shear",
      "Walker and Goulas (1984), Proceedings of the Institution of Mechanical Engineers A"
          + " 198:41-49; the range of shear by the abstract of Sery, Kabamba and Slatter"
          + " (2006), read") {
    @Override
    public double viscosityPaS(Rheology rheology, double speedPs, double wallShearRatePs) {
      return (rheology.shearStressPa(HIGH_SHEAR_PS) - rheology.shearStressPa(LOW_SHEAR_PS))
          / (HIGH_SHEAR_PS - LOW_SHEAR_PS);
    }
  },
  /** Apparent viscosity at twice the angular speed of the impeller. */
  IMPELLER(
      "apparent at the impeller",
      "Walker and Goulas (1984), for low flows; by the abstract of Sery, Kabamba and"
          + " Slatter (2006), Paste and Thickened Tailings 9:403-412, read") {
    @Override
    public double viscosityPaS(Rheology rheology, double speedPs, double wallShearRatePs) {
      return rheology.apparentViscosityPaS(4 * Math.PI * speedPs);
    }
  },
  /**
   * Apparent viscosity at the wall of the line. A pump shears more than its line, so of a liquid
   * that thins with shear this is an upper bound.
   */
  PIPE_WALL(
      "apparent at the wall of the line",
      "an upper bound, for the pump shears more than the line; common practice, no source") {
    @Override
    public double viscosityPaS(Rheology rheology, double speedPs, double wallShearRatePs) {
      return rheology.apparentViscosityPaS(wallShearRatePs);
    }
  };

  /** Least shear rate of the plastic viscosity [1/s]. */
  static final double LOW_SHEAR_PS = 100;

  /** Greatest shear rate of the plastic viscosity [1/s]. */
  static final double HIGH_SHEAR_PS = 1500;

  private final String words;
  private final String source;

  RepresentativeViscosity(String words, String source) {
    this.words = words;
    this.source = source;
  }

  /**
   * The viscosity.
   *
   * @param rheology the liquid with its fines
   * @param speedPs turns of the impeller per second, positive [1/s]
   * @param wallShearRatePs shear rate at the wall of the line, positive [1/s]
   * @return the viscosity, positive [Pa.s]
   */
  public abstract double viscosityPaS(Rheology rheology, double speedPs, double wallShearRatePs);

  /**
   * Which viscosity it is.
   *
   * @return in words
   */
  public String words() {
    return words;
  }

  /**
   * Keeps the steps of the viscosity.
   *
   * @param trace what keeps the steps
   * @param rheology the liquid
   * @param speedPs speed of the pump [1/s]
   * @param wallShearRatePs shear rate at the wall of the line [1/s]
   * @return the viscosity [Pa.s]
   */
  public double steps(Trace trace, Rheology rheology, double speedPs, double wallShearRatePs) {
    double viscosity = viscosityPaS(rheology, speedPs, wallShearRatePs);
    boolean plastic = this == PLASTIC;
    double low = plastic ? LOW_SHEAR_PS : 0;
    double high =
        plastic ? HIGH_SHEAR_PS : this == IMPELLER ? 4 * Math.PI * speedPs : wallShearRatePs;
    Equation stress =
        Equation.lookup(
            "tau_2",
            "shear stress of the liquid at a shear rate, " + words,
            "rheology of the liquid at G_2",
            Kind.STRESS,
            source,
            "G_2 1/s");
    double atHigh = trace.step(stress, rheology.shearStressPa(high), high);
    double atLow = plastic ? rheology.shearStressPa(low) : 0;
    if (plastic) {
      trace.step(stress.as("tau_1"), atLow, low);
    }
    Equation slope =
        Equation.of(
            "mu_p",
            "viscosity of the liquid in the pump, " + words,
            "(tau_2 - tau_1)/(G_2 - G_1)",
            Kind.VISCOSITY,
            source,
            "tau_2 Pa, tau_1 Pa, G_2 1/s, G_1 1/s");
    return trace.step(slope, viscosity, atHigh, atLow, high, low);
  }
}
