package sandslurry.assessment;

import java.util.OptionalDouble;
import sandslurry.design.Design;
import sandslurry.design.MixtureSpec;
import sandslurry.material.Carrier;
import sandslurry.material.Gradation;
import sandslurry.material.Liquid;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.units.Measure;

/**
 * The liquid and the sand of a design in plain SI, and the slurry that they make at a flow.
 *
 * @param carrier the liquid without sand
 * @param gradation the whole sand
 * @param coarse the sand without its fines, which belong to the liquid
 * @param finesShare mass of fines over mass of sand
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param fixedFraction volume fraction of sand when it is not that of the design's mixture
 * @param design the design, for shape and mixture
 */
record Materials(
    Carrier carrier,
    Gradation gradation,
    Gradation coarse,
    double finesShare,
    double sandDensityKgM3,
    OptionalDouble fixedFraction,
    Design design) {

  static Materials of(Design design) {
    Gradation gradation = design.sand().gradation();
    return new Materials(
        DesignCarrier.of(design.carrier()),
        gradation,
        gradation.coarserThan(Gradation.FINES_BOUNDARY_M),
        gradation.fractionPassing(Gradation.FINES_BOUNDARY_M),
        Measure.DENSITY.si(design.sand().density()),
        OptionalDouble.empty(),
        design);
  }

  /** The same sand in a carrier every stress of which is multiplied. */
  Materials thickened(double factor) {
    return new Materials(
        carrier.thickened(factor),
        gradation,
        coarse,
        finesShare,
        sandDensityKgM3,
        fixedFraction,
        design);
  }

  /** The same sand in another carrier, at a volume fraction that no longer depends on the flow. */
  Materials diluted(Carrier thinner, double sandFraction) {
    return new Materials(
        thinner,
        gradation,
        coarse,
        finesShare,
        sandDensityKgM3,
        OptionalDouble.of(sandFraction),
        design);
  }

  /**
   * More sand by volume than this is no slurry any more: the correlations end at 40 % or before,
   * and sand lies packed at 60 %.
   */
  static final double THICKEST = 0.40;

  /**
   * Volume fraction of all sand in a flow of mixture; of sand fed at a rate it may be any number,
   * and of light sand by mass more than flows.
   */
  double sandFraction(double flowM3ps) {
    if (fixedFraction.isPresent()) {
      return fixedFraction.getAsDouble();
    }
    MixtureSpec mixture = design.mixture().orElseThrow();
    if (mixture instanceof MixtureSpec.ByVolume volume) {
      return Measure.FRACTION.si(volume.fraction());
    }
    if (mixture instanceof MixtureSpec.ByMass mass) {
      double sand = Measure.FRACTION.si(mass.fraction()) / sandDensityKgM3;
      double liquid = (1 - Measure.FRACTION.si(mass.fraction())) / carrier.densityKgM3();
      return sand / (sand + liquid);
    }
    double rate = Measure.MASS_FLOW.si(((MixtureSpec.ByRate) mixture).rate());
    return rate / (sandDensityKgM3 * flowM3ps);
  }

  /** Says whether the sand of a flow of mixture leaves it a slurry. */
  boolean flows(double flowM3ps) {
    return sandFraction(flowM3ps) <= THICKEST;
  }

  /** The carrier with its fines, at a shear rate. */
  Vehicle vehicle(double shearRatePs, double sandFraction) {
    Liquid clear = carrier.liquidAt(shearRatePs);
    return Vehicle.of(clear, sandDensityKgM3, sandFraction, finesShare);
  }

  /** The slurry that the transport correlations see, in the liquid given. */
  Slurry slurry(Liquid liquid, double coarseFraction) {
    return new Slurry(
        liquid,
        sandDensityKgM3,
        design.sand().shape(),
        coarse.d50M(),
        coarse.d85M(),
        coarseFraction);
  }

  double mixtureDensityKgM3(double sandFraction) {
    return Proportions.mixtureDensityKgM3(sandFraction, carrier.densityKgM3(), sandDensityKgM3);
  }
}
