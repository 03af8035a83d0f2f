package sandslurry.separation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.StaticSuspension;

/**
 * What flows into a unit that separates sand: a liquor, the fibre in it and sand by size class.
 *
 * @param liquidM3ps volume flow of the liquor: water with its fines and dissolved matter [m3/s]
 * @param liquid density and viscosity of the liquor
 * @param finesFraction mass of fines over mass of liquor
 * @param dissolvedFraction mass of dissolved matter over mass of liquor
 * @param fibreKgps dry fibre: organic matter that a screen or a floor can catch; its volume is left
 *     out of the balance of volume [kg/s]
 * @param sandDensityKgM3 density of the mineral [kg/m3]
 * @param shape shape of the grains
 * @param sizes the sizes of each class
 * @param sandKgps mass flow of each class, 0 or more [kg/s]
 * @param settlingFactor what coatings of organic matter leave of the settling velocity of a clean
 *     grain, 1 for clean sand
 * @param yieldStressPa yield stress of the liquor, which holds fine grains; 0 for none [Pa]
 */
// More than ten components: one feed is asked by every kernel for most of them.
public record UnitFeed(
    double liquidM3ps,
    Liquid liquid,
    double finesFraction,
    double dissolvedFraction,
    double fibreKgps,
    double sandDensityKgM3,
    GrainShape shape,
    List<GrainRange> sizes,
    List<Double> sandKgps,
    double settlingFactor,
    double yieldStressPa) {
  /** Less sand held than this is not spoken of (own choice, no source). */
  public static final double MUCH_HELD = 0.1;

  /** Checks every bound and copies the lists. */
  public UnitFeed {
    sizes = List.copyOf(sizes);
    sandKgps = List.copyOf(sandKgps);
    Numbers.positive("the flow of liquor", liquidM3ps, "m3/s");
    Numbers.share("the share of fines", finesFraction);
    Numbers.share("the share of dissolved matter", dissolvedFraction);
    Numbers.share("the share of dry matter in the liquor", finesFraction + dissolvedFraction);
    Numbers.notNegative("the flow of fibre", fibreKgps, "kg/s");
    Numbers.positive("the settling factor", settlingFactor, "");
    Numbers.notNegative("the yield stress", yieldStressPa, "Pa");
    if (!(sandDensityKgM3 > liquid.densityKgM3() && Double.isFinite(sandDensityKgM3))) {
      throw new IllegalArgumentException(
          "sand must be denser than its carrier but is "
              + sandDensityKgM3
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    if (sizes.isEmpty() || sizes.size() != sandKgps.size()) {
      throw new IllegalArgumentException(
          "need as many sizes as mass flows, at least one, but have "
              + sizes.size()
              + " and "
              + sandKgps.size());
    }
    sandKgps.forEach(flow -> Numbers.notNegative("the flow of sand", flow, "kg/s"));
  }

  /**
   * The size that stands for each class.
   *
   * @return the geometric means of the classes [m]
   */
  public List<Double> sizesM() {
    return sizes.stream().map(GrainRange::meanM).toList();
  }

  /**
   * Mass flow of all sand.
   *
   * @return the sum of the classes [kg/s]
   */
  public double sandTotalKgps() {
    // Asked for every class of every unit in every step: a stream would cost more than the sum.
    double total = 0;
    for (double kgps : sandKgps) {
      total += kgps;
    }
    return total;
  }

  /**
   * Mass flow of the liquor.
   *
   * @return volume flow times density [kg/s]
   */
  public double liquidKgps() {
    return liquidM3ps * liquid.densityKgM3();
  }

  /**
   * Dry matter of the liquor, fibre not counted.
   *
   * @return mass of fines and dissolved matter over mass of liquor
   */
  public double liquorSolids() {
    return finesFraction + dissolvedFraction;
  }

  /**
   * Volume flow of liquor and sand together.
   *
   * @return the flow [m3/s]
   */
  public double mixtureM3ps() {
    return liquidM3ps + sandTotalKgps() / sandDensityKgM3;
  }

  /**
   * Delivered volume fraction of sand.
   *
   * @return volume of sand over volume of mixture, 0 to below 1
   */
  public double volumeFraction() {
    double sandM3ps = sandTotalKgps() / sandDensityKgM3;
    return sandM3ps / (liquidM3ps + sandM3ps);
  }

  /**
   * The same feed with other mass flows of sand.
   *
   * @param kgps mass flow of each class [kg/s]
   * @return the feed
   */
  public UnitFeed withSand(List<Double> kgps) {
    return with(kgps, yieldStressPa);
  }

  /**
   * The same feed where it is stirred: its yield stress holds nothing.
   *
   * @return the feed
   */
  public UnitFeed stirred() {
    return with(sandKgps, 0);
  }

  private UnitFeed with(List<Double> kgps, double yieldPa) {
    return new UnitFeed(
        liquidM3ps,
        liquid,
        finesFraction,
        dissolvedFraction,
        fibreKgps,
        sandDensityKgM3,
        shape,
        sizes,
        kgps,
        settlingFactor,
        yieldPa);
  }

  /**
   * What the yield stress of the liquor leaves of the fall of a grain.
   *
   * @param sizeM grain size [m]
   * @return the share by {@link StaticSuspension#fallingShare}, 1 without a yield stress
   */
  public double fallingShare(double sizeM) {
    return StaticSuspension.fallingShare(
        new Grain(sizeM, sandDensityKgM3, shape), yieldStressPa, liquid.densityKgM3());
  }

  /**
   * How much of the sand the yield stress of the liquor holds.
   *
   * @return mean of 1 less {@link #fallingShare} over the sand, 0 without sand
   */
  public double heldShare() {
    double held = 0;
    for (int i = 0; i < sizes.size(); i++) {
      held += sandKgps.get(i) * (1 - fallingShare(sizes.get(i).meanM()));
    }
    double all = sandTotalKgps();
    return all > 0 ? held / all : 0;
  }

  /**
   * Settling velocity of a coated grain that falls alone, as far as the liquor lets it.
   *
   * @param sizeM grain size [m]
   * @return the velocity [m/s], and what lay outside the published range
   */
  public Estimate coatedVelocityMps(double sizeM) {
    Estimate clean =
        SettlingVelocities.DEFAULT.velocityMps(new Grain(sizeM, sandDensityKgM3, shape), liquid);
    return new Estimate(clean.value() * settlingFactor * fallingShare(sizeM), clean.excesses());
  }

  /**
   * Settling velocity of a coated grain among its neighbours.
   *
   * @param sizeM grain size [m]
   * @return the velocity [m/s], and what lay outside the published ranges
   */
  public Estimate hinderedVelocityMps(double sizeM) {
    return hinderedVelocityMps(sizeM, volumeFraction());
  }

  /**
   * The same for the size that stands for each class.
   *
   * @return the velocities [m/s], and what lay outside the published ranges
   */
  public List<Estimate> hinderedVelocitiesMps() {
    double crowd = volumeFraction();
    List<Estimate> velocities = new ArrayList<>(sizes.size());
    for (GrainRange size : sizes) {
      velocities.add(hinderedVelocityMps(size.meanM(), crowd));
    }
    return velocities;
  }

  private Estimate hinderedVelocityMps(double sizeM, double volumeFraction) {
    Estimate coated = coatedVelocityMps(sizeM);
    double reynolds = coated.value() * sizeM / liquid.kinematicViscosityM2ps();
    Estimate factor = HinderedSettlings.DEFAULT.factor(reynolds, volumeFraction);
    return new Estimate(coated.value() * factor.value(), both(coated, factor));
  }

  private static List<Bound.Excess> both(Estimate one, Estimate other) {
    if (one.inRange() || other.inRange()) {
      return one.inRange() ? other.excesses() : one.excesses();
    }
    List<Bound.Excess> excesses = new ArrayList<>(one.excesses());
    excesses.addAll(other.excesses());
    return excesses;
  }

  /**
   * One share for every size class.
   *
   * @param share the share
   * @return a list as long as the size classes
   */
  public List<Double> forEachClass(double share) {
    return Collections.nCopies(sizes.size(), share);
  }

  /**
   * Mass flow of a share of each size class.
   *
   * @param shares share of each class
   * @return mass flow [kg/s]
   */
  public double sandKgps(List<Double> shares) {
    double sum = 0;
    for (int i = 0; i < shares.size(); i++) {
      sum += shares.get(i) * sandKgps.get(i);
    }
    return sum;
  }
}
