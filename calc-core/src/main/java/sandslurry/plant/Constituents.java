package sandslurry.plant;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.SizeClass;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What the streams of a plant are made of: water, dissolved solids (salts among them), fibre,
 * organic fines, mineral fines, then the sand by size class. All streams of a network share one
 * object of this kind.
 *
 * <p>Fibre is organic matter that a screen can hold; organic fines pass. Mineral fines are grains
 * below {@link Gradation#FINES_BOUNDARY_M}, which came with the sand and thicken the liquor; sand
 * is what is coarser. Volumes add up: dissolved solids, fibre and organic fines with the density of
 * dry manure solids, mineral fines and sand with that of the mineral.
 */
public final class Constituents {
  /** Index of water. */
  public static final int WATER = 0;

  /** Index of dissolved solids. */
  public static final int DISSOLVED = 1;

  /** Index of fibre. */
  public static final int FIBRE = 2;

  /** Index of organic fines. */
  public static final int ORGANIC_FINES = 3;

  /** Index of mineral fines. */
  public static final int MINERAL_FINES = 4;

  /** Index of the finest class of the sand. */
  public static final int SAND = 5;

  private final double waterDensityKgM3;
  private final double manureSolidsDensityKgM3;
  private final double sandDensityKgM3;
  private final List<SizeClass> sandClasses;
  private final List<GrainRange> grains;
  private final double mineralFinesShare;
  private final double[] densitiesKgM3;

  /**
   * Checks every bound and copies the list.
   *
   * @param waterDensityKgM3 density of water [kg/m3]
   * @param manureSolidsDensityKgM3 density of dry manure solids [kg/m3]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @param sandClasses the classes of the sand in ascending order; mass fractions that sum to 1
   * @param mineralFinesShare mass of mineral fines over mass of all bedding sand as it is delivered
   */
  public Constituents(
      double waterDensityKgM3,
      double manureSolidsDensityKgM3,
      double sandDensityKgM3,
      List<SizeClass> sandClasses,
      double mineralFinesShare) {
    this.waterDensityKgM3 = waterDensityKgM3;
    this.manureSolidsDensityKgM3 = manureSolidsDensityKgM3;
    this.sandDensityKgM3 = sandDensityKgM3;
    this.sandClasses = List.copyOf(sandClasses);
    this.grains = sandClasses.stream().map(SizeClass::range).toList();
    this.mineralFinesShare = mineralFinesShare;
    if (!(waterDensityKgM3 > 0)
        || !(manureSolidsDensityKgM3 > 0)
        || !(sandDensityKgM3 > waterDensityKgM3)
        || !Double.isFinite(manureSolidsDensityKgM3)
        || !Double.isFinite(sandDensityKgM3)) {
      throw new IllegalArgumentException(
          "densities must be positive and sand denser than water but were "
              + waterDensityKgM3
              + ", "
              + manureSolidsDensityKgM3
              + " and "
              + sandDensityKgM3
              + " kg/m3");
    }
    if (!(mineralFinesShare >= 0 && mineralFinesShare < 1)) {
      throw new IllegalArgumentException(
          "the share of mineral fines lies in 0 to 1 but was " + mineralFinesShare);
    }
    this.densitiesKgM3 = new double[count()];
    Arrays.fill(densitiesKgM3, manureSolidsDensityKgM3);
    densitiesKgM3[WATER] = waterDensityKgM3;
    Arrays.fill(densitiesKgM3, MINERAL_FINES, densitiesKgM3.length, sandDensityKgM3);
    double sum = sandClasses.stream().mapToDouble(SizeClass::massFraction).sum();
    if (!(Math.abs(sum - 1) < 1e-6)) {
      throw new IllegalArgumentException("mass fractions must sum to 1 but sum to " + sum);
    }
  }

  /**
   * Density of water.
   *
   * @return density [kg/m3]
   */
  public double waterDensityKgM3() {
    return waterDensityKgM3;
  }

  /**
   * Density of the mineral.
   *
   * @return density [kg/m3]
   */
  public double sandDensityKgM3() {
    return sandDensityKgM3;
  }

  /**
   * The classes of the sand.
   *
   * @return in ascending order; mass fractions that sum to 1
   */
  public List<SizeClass> sandClasses() {
    return sandClasses;
  }

  /**
   * The sizes of each class of the sand, which every unit asks for in every step.
   *
   * @return in ascending order
   */
  public List<GrainRange> grains() {
    return grains;
  }

  /**
   * Mineral fines of the bedding sand.
   *
   * @return mass over that of all bedding sand as it is delivered
   */
  public double mineralFinesShare() {
    return mineralFinesShare;
  }

  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Constituents same
            && waterDensityKgM3 == same.waterDensityKgM3
            && manureSolidsDensityKgM3 == same.manureSolidsDensityKgM3
            && sandDensityKgM3 == same.sandDensityKgM3
            && sandClasses.equals(same.sandClasses)
            && mineralFinesShare == same.mineralFinesShare;
  }

  @Override
  public int hashCode() {
    return Objects.hash(
        waterDensityKgM3, manureSolidsDensityKgM3, sandDensityKgM3, sandClasses, mineralFinesShare);
  }

  /**
   * The constituents of a plant that is bedded with a sand.
   *
   * @param bedding gradation of the sand as delivered; what passes 75 um becomes mineral fines
   * @param waterDensityKgM3 density of water [kg/m3]
   * @param sandDensityKgM3 density of the mineral [kg/m3]
   * @return the constituents, with the density of dry manure solids that carriers are made with
   * @throws IllegalArgumentException if no grain is coarser than 75 um
   */
  public static Constituents of(
      Gradation bedding, double waterDensityKgM3, double sandDensityKgM3) {
    return new Constituents(
        waterDensityKgM3,
        Carriers.MANURE_SOLIDS_KG_M3,
        sandDensityKgM3,
        bedding.withoutFines().classes(),
        bedding.fractionPassing(Gradation.FINES_BOUNDARY_M));
  }

  /**
   * How many there are.
   *
   * @return the number of constituents, sand classes included
   */
  public int count() {
    return SAND + sandClasses.size();
  }

  /**
   * The name of one.
   *
   * @param index its index
   * @return for example "organic fines" or "sand 0.250 mm to 0.354 mm"
   */
  public String name(int index) {
    return switch (index) {
      case WATER -> "water";
      case DISSOLVED -> "dissolved solids";
      case FIBRE -> "fibre";
      case ORGANIC_FINES -> "organic fines";
      case MINERAL_FINES -> "mineral fines";
      default -> {
        SizeClass size = sandClasses.get(index - SAND);
        yield "sand "
            + UnitSystem.METRIC.show(Kind.GRAIN, size.lowM())
            + " to "
            + UnitSystem.METRIC.show(Kind.GRAIN, size.highM());
      }
    };
  }

  /**
   * The density of one.
   *
   * @param index its index
   * @return density [kg/m3]
   */
  public double densityKgM3(int index) {
    return densitiesKgM3[index];
  }

  /**
   * A stream of clean water.
   *
   * @param waterKgps mass flow [kg/s]
   * @return the stream
   */
  public Stream water(double waterKgps) {
    double[] flows = new double[count()];
    flows[WATER] = waterKgps;
    return new Stream(this, flows);
  }

  /**
   * A stream of sand as delivered, with its mineral fines.
   *
   * @param sandKgps mass flow of dry sand, mineral fines included [kg/s]
   * @return the stream
   */
  public Stream deliveredSand(double sandKgps) {
    double[] flows = new double[count()];
    flows[MINERAL_FINES] = sandKgps * mineralFinesShare;
    for (int k = 0; k < sandClasses.size(); k++) {
      flows[SAND + k] = sandKgps * (1 - mineralFinesShare) * sandClasses.get(k).massFraction();
    }
    return new Stream(this, flows);
  }
}
