package sandslurry.separation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.material.sand.SizeClass;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;

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
 * @param sizesM the size that stands for each class [m]
 * @param sandKgps mass flow of each class, 0 or more [kg/s]
 * @param settlingFactor what coatings of organic matter leave of the settling velocity of a clean
 *     grain, 1 for clean sand
 */
public record UnitFeed(
    double liquidM3ps,
    Liquid liquid,
    double finesFraction,
    double dissolvedFraction,
    double fibreKgps,
    double sandDensityKgM3,
    GrainShape shape,
    List<Double> sizesM,
    List<Double> sandKgps,
    double settlingFactor) {
  /** Checks every bound and copies the lists. */
  public UnitFeed {
    sizesM = List.copyOf(sizesM);
    sandKgps = List.copyOf(sandKgps);
    Numbers.positive("the flow of liquor", liquidM3ps, "m3/s");
    Numbers.share("the share of fines", finesFraction);
    Numbers.share("the share of dissolved matter", dissolvedFraction);
    Numbers.share("the share of dry matter in the liquor", finesFraction + dissolvedFraction);
    Numbers.notNegative("the flow of fibre", fibreKgps, "kg/s");
    Numbers.positive("the settling factor", settlingFactor, "");
    if (!(sandDensityKgM3 > liquid.densityKgM3() && Double.isFinite(sandDensityKgM3))) {
      throw new IllegalArgumentException(
          "sand must be denser than its carrier but is "
              + sandDensityKgM3
              + " kg/m3 in "
              + liquid.densityKgM3()
              + " kg/m3");
    }
    if (sizesM.isEmpty() || sizesM.size() != sandKgps.size()) {
      throw new IllegalArgumentException(
          "need as many sizes as mass flows, at least one, but have "
              + sizesM.size()
              + " and "
              + sandKgps.size());
    }
    sizesM.forEach(size -> Numbers.positive("the size of a class", size, "m"));
    sandKgps.forEach(flow -> Numbers.notNegative("the flow of sand", flow, "kg/s"));
  }

  /**
   * Mass flow of all sand.
   *
   * @return the sum of the classes [kg/s]
   */
  public double sandTotalKgps() {
    return sandKgps.stream().mapToDouble(Double::doubleValue).sum();
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
    return sandTotalKgps() / sandDensityKgM3 / mixtureM3ps();
  }

  /**
   * The same feed with other mass flows of sand.
   *
   * @param kgps mass flow of each class [kg/s]
   * @return the feed
   */
  public UnitFeed withSand(List<Double> kgps) {
    return new UnitFeed(
        liquidM3ps,
        liquid,
        finesFraction,
        dissolvedFraction,
        fibreKgps,
        sandDensityKgM3,
        shape,
        sizesM,
        kgps,
        settlingFactor);
  }

  /**
   * The feed as a settling lane takes it.
   *
   * @param runningShare share of the day that the lane runs, 0 to 1
   * @return the feed; without sand, the classes have equal shares of nothing
   */
  public LaneFeed laneFeed(double runningShare) {
    double total = sandTotalKgps();
    List<SizeClass> classes = new ArrayList<>();
    for (int i = 0; i < sizesM.size(); i++) {
      double share = total > 0 ? sandKgps.get(i) / total : 1.0 / sizesM.size();
      classes.add(new SizeClass(sizesM.get(i), sizesM.get(i), sizesM.get(i), share));
    }
    return new LaneFeed(
        mixtureM3ps(),
        runningShare,
        liquid,
        volumeFraction(),
        sandDensityKgM3,
        shape,
        classes,
        settlingFactor);
  }

  /**
   * Settling velocity of a coated grain among its neighbours.
   *
   * @param sizeM grain size [m]
   * @return the velocity [m/s], and what lay outside the published ranges
   */
  public Estimate hinderedVelocityMps(double sizeM) {
    Grain grain = new Grain(sizeM, sandDensityKgM3, shape);
    Estimate alone = SettlingVelocities.DEFAULT.velocityMps(grain, liquid);
    double coated = alone.value() * settlingFactor;
    double reynolds = coated * sizeM / liquid.kinematicViscosityM2ps();
    Estimate factor = HinderedSettlings.DEFAULT.factor(reynolds, volumeFraction());
    List<Bound.Excess> excesses = new ArrayList<>(alone.excesses());
    excesses.addAll(factor.excesses());
    return new Estimate(coated * factor.value(), excesses);
  }

  /** A share for every class. */
  public List<Double> forEachClass(double share) {
    return Collections.nCopies(sizesM.size(), share);
  }

  /** Mass flow of the part of each class that a list of shares names. */
  public double sandKgps(List<Double> shares) {
    double sum = 0;
    for (int i = 0; i < shares.size(); i++) {
      sum += shares.get(i) * sandKgps.get(i);
    }
    return sum;
  }
}
