package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.material.Thomas1965;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Water;
import sandslurry.material.sand.GrainShape;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;

/**
 * How a stream looks to the kernels of separation: here the build-up of fines in a loop feeds back
 * into settling.
 *
 * <p>Viscosity is that of manure of the stream's manure total solids, fibre included, at a shear
 * rate ({@link Carriers#manure}), times the thickening by mineral fines ({@link Thomas1965}).
 * Liquor from which fibre was taken is thinner than manure of equal solids, so for it the viscosity
 * is too high, which is cautious for settling. Its yield stress ({@link Carriers#yieldStressPa})
 * holds fine grains. Density is that of the liquor without fibre.
 *
 * @param temperatureK temperature [K]
 * @param shape shape of the grains
 * @param settlingFactor what coatings leave of the settling velocity, 0 (excluded) to 1
 * @param thickness what manure adds to the viscosity of water, over what the table of manure adds,
 *     and its yield stress over the usual one: {@link Carriers#FARM_SCATTER} and its inverse
 *     between farms
 */
public record LiquorModel(
    double temperatureK, GrainShape shape, double settlingFactor, double thickness) {
  private static final Thomas1965 THICKENING = new Thomas1965();

  /** Checks that water is liquid and that the factor is a share. */
  public LiquorModel {
    Water.at(temperatureK);
    if (!(settlingFactor > 0 && settlingFactor <= 1)) {
      throw new IllegalArgumentException(
          "the settling factor lies in 0 (excluded) to 1 but was " + settlingFactor);
    }
    if (!(thickness > 0 && Double.isFinite(thickness))) {
      throw new IllegalArgumentException("the thickness must be > 0 but was " + thickness);
    }
  }

  /**
   * Liquor as thick as the table of manure has it.
   *
   * @param temperatureK temperature [K]
   * @param shape shape of the grains
   * @param settlingFactor what coatings leave of the settling velocity, 0 (excluded) to 1
   */
  public LiquorModel(double temperatureK, GrainShape shape, double settlingFactor) {
    this(temperatureK, shape, settlingFactor, 1);
  }

  /**
   * A stream as the feed of a unit that lets sand settle.
   *
   * @param stream the stream
   * @param runningShare share of the day that the unit runs, 0 (excluded) to 1: the unit sees the
   *     mean flow in that part of the day
   * @param shearRatePs shear rate at which the viscosity counts [1/s]
   * @return the feed; empty when there is no liquor, or when it is thicker than any whose flow was
   *     measured
   */
  public Optional<UnitFeed> settling(Stream stream, double runningShare, double shearRatePs) {
    double solids = stream.manureTotalSolids();
    if (!(solids <= Carriers.HIGHEST_TOTAL_SOLIDS)) {
      return Optional.empty();
    }
    double water = Water.viscosityPaS(temperatureK);
    double tabled = Carriers.manureRheologyIn(water, solids).apparentViscosityPaS(shearRatePs);
    double viscosity = water + thickness * Math.max(0, tabled - water);
    double thickening = THICKENING.relativeViscosity(stream.mineralFinesVolumeShare()).value();
    return feed(
        stream, runningShare, viscosity * thickening, thickness * Carriers.yieldStressPa(solids));
  }

  /**
   * A stream as the feed of a unit in which nothing settles, such as a screen: the viscosity is
   * that of water and plays no part.
   *
   * @param stream the stream
   * @param runningShare share of the day that the unit runs, 0 (excluded) to 1
   * @return the feed; empty when there is no liquor
   */
  public Optional<UnitFeed> screening(Stream stream, double runningShare) {
    return feed(stream, runningShare, Water.viscosityPaS(temperatureK), 0);
  }

  /**
   * Organic matter as it settles in the liquor of a feed.
   *
   * @param organic how it settles in water
   * @param feed the feed
   * @return slowed by the viscosity of its liquor
   */
  public OrganicMatter slowed(OrganicMatter organic, UnitFeed feed) {
    return organic.in(feed.liquid().viscosityPaS() / Water.viscosityPaS(temperatureK));
  }

  private Optional<UnitFeed> feed(
      Stream stream, double runningShare, double viscosityPaS, double yieldStressPa) {
    if (!(runningShare > 0 && runningShare <= 1)) {
      throw new IllegalArgumentException(
          "the share of the day lies in 0 (excluded) to 1 but was " + runningShare);
    }
    Constituents constituents = stream.constituents();
    double mass = 0;
    double volume = 0;
    for (int i = 0; i < Constituents.SAND; i++) {
      if (i != Constituents.FIBRE) {
        mass += stream.kgps(i);
        volume += stream.kgps(i) / constituents.densityKgM3(i);
      }
    }
    boolean mud = volume > 0 && !(mass / volume < constituents.sandDensityKgM3() * (1 - 1e-9));
    if (!(stream.waterKgps() > 0) || mud) {
      return Optional.empty();
    }
    Double[] sand = new Double[constituents.grains().size()];
    for (int k = 0; k < sand.length; k++) {
      sand[k] = stream.sandKgps(k) / runningShare;
    }
    UnitFeed feed =
        new UnitFeed(
            volume / runningShare,
            new Liquid(mass / volume, viscosityPaS),
            stream.finesKgps() / mass,
            stream.kgps(Constituents.DISSOLVED) / mass,
            stream.kgps(Constituents.FIBRE) / runningShare,
            constituents.sandDensityKgM3(),
            shape,
            constituents.grains(),
            List.of(sand),
            settlingFactor,
            yieldStressPa);
    // So little liquor that it does not show in the volume of the sand is none.
    return feed.volumeFraction() < 1 ? Optional.of(feed) : Optional.empty();
  }
}
