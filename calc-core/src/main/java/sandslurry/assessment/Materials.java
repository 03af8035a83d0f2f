package sandslurry.assessment;

import java.util.OptionalDouble;
import sandslurry.design.Design;
import sandslurry.design.MixtureSpec;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
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
    return in(carrier.thickened(factor));
  }

  /** The same sand in another carrier. */
  Materials in(Carrier other) {
    return new Materials(
        other, gradation, coarse, finesShare, sandDensityKgM3, fixedFraction, design);
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

  private static final double MOST_NOT_HELD = 0.01;

  /**
   * A yield stress counts as seen when the least stress measured is at most so many times as large:
   * a choice of this calculator, no source.
   */
  private static final double YIELD_SEEN = 2;

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
    if (mixture instanceof MixtureSpec.ByRate byRate) {
      return Measure.MASS_FLOW.si(byRate.rate()) / (sandDensityKgM3 * flowM3ps);
    }
    throw new IllegalStateException("a stream must have been looked up in the plant before");
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

  /**
   * The coarsest grain that a yield stress must hold. What is coarser sinks through a plug however
   * stiff it is to the rest, so no more may be left out than is tolerated on the floor, and never
   * more than a hundredth: d85 would leave out fifteen.
   */
  Grain coarsestHeld(double toleratedShare) {
    return grain(coarse.sizePassingM(1 - Math.min(toleratedShare, MOST_NOT_HELD)));
  }

  /**
   * The grain whose share on the floor stands for that of all sand: d85, or in a very wide sand the
   * root mean square size, as the share of the fine and of the coarse grows with the square.
   */
  Grain settlingGrain() {
    double squares =
        coarse.classes().stream().mapToDouble(c -> c.massFraction() * c.meanM() * c.meanM()).sum();
    return grain(Math.max(coarse.d85M(), Math.sqrt(squares)));
  }

  private Grain grain(double sizeM) {
    return new Grain(sizeM, sandDensityKgM3, design.sand().shape());
  }

  /**
   * Says whether a fitted yield stress lies far below all that was measured: then it is a trait of
   * the curve and perhaps none of the liquid, and no sand may be hung on it.
   */
  boolean yieldExtrapolated() {
    double yield = carrier.rheology().yieldStressPa();
    return yield > 0
        && carrier
            .shearRates()
            .map(rates -> carrier.rheology().shearStressPa(rates.low()) > YIELD_SEEN * yield)
            .orElse(false);
  }

  double mixtureDensityKgM3(double sandFraction) {
    return Proportions.mixtureDensityKgM3(sandFraction, carrier.densityKgM3(), sandDensityKgM3);
  }
}
