package sandslurry.assessment.materials;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.design.Design;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.deposition.SandLoad;

/**
 * The liquid and the sand of a design in plain SI, and the slurry that they make at a flow.
 *
 * @param carrier the liquid without sand
 * @param gradation the whole sand
 * @param coarse the sand without its fines, which belong to the liquid
 * @param sizes the sizes for which its deposition is judged
 * @param finesShare mass of fines over mass of sand
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param fixedFraction volume fraction of sand when it is not that of the design's mixture
 * @param fixedHighest the highest volume fraction of sand when it is not that of the design
 * @param design the design, for shape and mixture
 */
public record Materials(
    Carrier carrier,
    Gradation gradation,
    Gradation coarse,
    SandLoad.Sizes sizes,
    double finesShare,
    double sandDensityKgM3,
    OptionalDouble fixedFraction,
    OptionalDouble fixedHighest,
    Design design) {

  /**
   * Liquid and sand of a design.
   *
   * @param design the design
   * @return as designed
   */
  public static Materials of(Design design) {
    Gradation gradation = design.sand().gradation();
    Gradation coarse = gradation.withoutFines();
    return new Materials(
        DesignCarrier.of(design.carrier()),
        gradation,
        coarse,
        SandLoad.Sizes.of(coarse),
        gradation.fractionPassing(Gradation.FINES_BOUNDARY_M),
        design.sand().densityKgM3(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        design);
  }

  /**
   * The same sand with the liquid at another temperature.
   *
   * @param temperatureK temperature [K]
   * @return liquid and sand
   */
  public Materials at(double temperatureK) {
    return in(DesignCarrier.at(design.carrier(), carrier, temperatureK));
  }

  /**
   * Coldest and warmest temperature of the line, beside that of the carrier.
   *
   * @return temperatures [K]; empty when the design gives none
   */
  public List<Double> temperatureRangeK() {
    return temperatureRangeK(design);
  }

  private static List<Double> temperatureRangeK(Design design) {
    return design.line().stream()
        .map(line -> line.flow().extremes())
        .flatMap(extremes -> Stream.of(extremes.coldestK(), extremes.warmestK()))
        .flatMap(Optional::stream)
        .toList();
  }

  /**
   * The warmest that the liquid comes, at which plastic pipe bears least.
   *
   * @return temperature [K]
   */
  public double warmestK() {
    return warmestK(design, carrier);
  }

  /**
   * The warmest that the liquid of a design comes.
   *
   * @param design the design
   * @param carrier its liquid
   * @return temperature [K]
   */
  public static double warmestK(Design design, Carrier carrier) {
    return temperatureRangeK(design).stream()
        .mapToDouble(Double::doubleValue)
        .reduce(carrier.temperatureK(), Math::max);
  }

  /**
   * The same sand in another carrier.
   *
   * @param other the carrier
   * @return liquid and sand
   */
  public Materials in(Carrier other) {
    return new Materials(
        other,
        gradation,
        coarse,
        sizes,
        finesShare,
        sandDensityKgM3,
        fixedFraction,
        fixedHighest,
        design);
  }

  /**
   * The same sand in another carrier, at volume fractions that no longer depend on the flow rate.
   *
   * @param thinner the carrier
   * @param sandFraction volume fraction of sand
   * @param highestFraction highest volume fraction of sand
   * @return liquid and sand
   */
  public Materials diluted(Carrier thinner, double sandFraction, double highestFraction) {
    return new Materials(
        thinner,
        gradation,
        coarse,
        sizes,
        finesShare,
        sandDensityKgM3,
        OptionalDouble.of(sandFraction),
        OptionalDouble.of(highestFraction),
        design);
  }

  /**
   * More sand by volume than this is no slurry any more: the correlations end at 40 % or before,
   * and sand lies packed at 60 %.
   */
  public static final double THICKEST = 0.40;

  /**
   * A line that is said to carry so much sand carries so many times as much at its sandiest moment:
   * stirring, the first of a pit, a pen scraped at once (common practice, no source).
   */
  public static final double PEAK = 1.5;

  /** At so much sand by volume, or before, every deposition velocity is at its greatest. */
  public static final double BED_FRACTION = 0.30;

  private static final double MOST_NOT_HELD = 0.01;

  /**
   * A yield stress counts as seen when the least stress measured is at most so many times as large:
   * a choice of this calculator, no source.
   */
  private static final double YIELD_SEEN = 2;

  /**
   * Volume fraction of all sand at a flow rate. Sand fed at a rate may come to any fraction, and
   * light sand by mass to more than flows.
   *
   * @param flowM3ps flow rate of mixture [m3/s]
   * @return volume of sand over volume of mixture
   */
  public double sandFraction(double flowM3ps) {
    if (fixedFraction.isPresent()) {
      return fixedFraction.getAsDouble();
    }
    return design
        .oneLine()
        .mixture()
        .match(
            volume -> volume.fraction(),
            mass ->
                Proportions.volumeFraction(mass.fraction(), carrier.densityKgM3(), sandDensityKgM3),
            byRate ->
                Proportions.volumeFractionInMixtureFlow(
                    byRate.rateKgps(), flowM3ps, sandDensityKgM3),
            stream -> {
              throw new IllegalStateException(
                  "a stream must have been looked up in the plant before");
            });
  }

  /**
   * The highest volume fraction of sand beside a usual one: as the design gives it, or {@link
   * #PEAK} times the usual one.
   *
   * @param usualFraction volume fraction of sand as it usually comes
   * @return volume fraction, at most {@link #THICKEST} unless the usual one is higher
   */
  public double highestFraction(double usualFraction) {
    if (fixedHighest.isPresent()) {
      return Math.max(usualFraction, fixedHighest.getAsDouble());
    }
    double highest =
        design
            .line()
            .flatMap(line -> line.flow().extremes().highestSand())
            .orElse(PEAK * usualFraction);
    return Math.max(usualFraction, Math.min(highest, THICKEST));
  }

  /**
   * The same sand in water that carries a bed of it off, which may come at any concentration.
   *
   * @param sandFraction volume fraction of all sand
   * @return liquid and sand
   */
  public Materials inFlushWater(double sandFraction) {
    return diluted(Carriers.water(carrier.temperatureK()), sandFraction, BED_FRACTION);
  }

  /**
   * What a line must carry of a slurry.
   *
   * @param slurry the slurry at its usual concentration
   * @param usualFraction volume fraction of sand as it usually comes
   * @return slurry, highest volume fraction and sizes
   */
  public SandLoad load(Slurry slurry, double usualFraction) {
    double peak = usualFraction > 0 ? highestFraction(usualFraction) / usualFraction : 1;
    return new SandLoad(slurry, Math.min(peak * slurry.volumeFraction(), THICKEST), sizes);
  }

  /**
   * Whether the mixture is a slurry at a flow rate.
   *
   * @param flowM3ps flow rate of mixture [m3/s]
   * @return false above {@link #THICKEST}
   */
  public boolean flows(double flowM3ps) {
    return sandFraction(flowM3ps) <= THICKEST;
  }

  /**
   * The carrier with its fines at a shear rate.
   *
   * @param shearRatePs shear rate at the wall [1/s]
   * @param sandFraction volume fraction of all sand
   * @return density and viscosity of the vehicle
   */
  public Vehicle vehicle(double shearRatePs, double sandFraction) {
    Liquid clear = carrier.liquidAt(shearRatePs);
    return Vehicle.of(clear, sandDensityKgM3, sandFraction, finesShare);
  }

  /**
   * The slurry that the transport correlations see.
   *
   * @param liquid carrier with its fines
   * @param coarseFraction volume fraction of the sand without its fines
   * @return the slurry
   */
  public Slurry slurry(Liquid liquid, double coarseFraction) {
    return new Slurry(
        liquid,
        sandDensityKgM3,
        design.sand().shape(),
        coarse.d50M(),
        coarse.d85M(),
        coarseFraction);
  }

  /**
   * The coarsest grain that a yield stress must hold. Coarser grains sink through a plug, so no
   * more may be left out than is tolerated on the floor, and never more than a hundredth: d85 would
   * leave out fifteen.
   *
   * @param toleratedShare share of the sand that may settle on the floor
   * @return the grain
   */
  public Grain coarsestHeld(double toleratedShare) {
    return grain(coarse.sizePassingM(1 - Math.min(toleratedShare, MOST_NOT_HELD)));
  }

  /**
   * The size classes of the sand without its fines.
   *
   * @return grain and mass fraction of each class
   */
  public List<LaminarTransport.Part> parts() {
    return coarse.classes().stream()
        .map(c -> new LaminarTransport.Part(grain(c.meanM()), c.massFraction()))
        .toList();
  }

  private Grain grain(double sizeM) {
    return new Grain(sizeM, sandDensityKgM3, design.sand().shape());
  }

  /**
   * Whether a fitted yield stress is far below all that was measured: then it may belong to the
   * curve and not to the liquid, and no sand may be hung on it.
   *
   * @return true when the least stress measured is over twice the yield stress
   */
  public boolean yieldExtrapolated() {
    double yield = carrier.rheology().yieldStressPa();
    return yield > 0
        && carrier
            .shearRates()
            .map(rates -> carrier.rheology().shearStressPa(rates.low()) > YIELD_SEEN * yield)
            .orElse(false);
  }

  /**
   * Density of the mixture.
   *
   * @param sandFraction volume fraction of all sand
   * @return density [kg/m3]
   */
  public double mixtureDensityKgM3(double sandFraction) {
    return Proportions.mixtureDensityKgM3(sandFraction, carrier.densityKgM3(), sandDensityKgM3);
  }
}
