package sandslurry.settling;

import sandslurry.correlation.Physics;
import sandslurry.material.sand.Grain;

/**
 * Whether a liquid <b>at rest</b> holds a grain by its yield stress.
 *
 * <pre>held if τy ≥ Y g d (ρs − ρ)</pre>
 *
 * <p>τy yield stress [Pa]; g gravity [m/s²]; d size [m]; ρs, ρ density of the grain and the liquid
 * [kg/m³]; Y stability constant.
 *
 * <p>For a sphere in a Bingham liquid Beris, Tsamopoulos, Armstrong and Brown (1985), Journal of
 * Fluid Mechanics 158:219-244, computed that it falls only while their yield parameter 2τyπR²/F is
 * below 0.143 (stated in the abstract, which was read); with F the submerged weight of the sphere
 * that is Y = 0.143/3 = 0.0477. Experiments scatter from 0.04 to 0.2 (from memory, unverified),
 * most of them above the theory: yield stresses are measured in other ways than a grain meets them,
 * and grains are not spheres. A grain counts as surely held only by the highest constant.
 *
 * <p><b>This says nothing of flow.</b> Where the liquid is sheared the yield stress is already
 * overcome and holds nothing: see {@link ShearSettling}.
 */
public final class StaticSuspension {
  /** Greatest constant of the experiments: a liquid stronger than this surely holds the grain. */
  public static final double GREATEST_CONSTANT = 0.2;

  /**
   * From this constant on no grain is taken to settle through however long a rest: as far above the
   * greatest constant of the experiments as that is above the least (a choice of this calculator,
   * no source).
   */
  static final double RESTING_CONSTANT = 1;

  /** Least constant of the experiments. */
  private static final double LEAST_CONSTANT = 0.04;

  /** The constant that half of the experiments lie below, taken in the middle by logarithms. */
  static final double MIDDLE_CONSTANT = Math.sqrt(LEAST_CONSTANT * GREATEST_CONSTANT);

  /** Steepness of {@link #fallingShare}: 39 to 1 at both ends of the experiments. */
  private static final double STEEPNESS =
      Math.log(0.975 / 0.025) / Math.log(GREATEST_CONSTANT / MIDDLE_CONSTANT);

  private StaticSuspension() {}

  /**
   * Share of the grains of a size that must be taken to lie on the floor after a long rest, while a
   * line trembles, warms and is thinned: all of them up to the greatest constant of the
   * experiments, then fewer, none from {@link #RESTING_CONSTANT}. It falls as the third power of
   * the logarithm, so that what depends on it has no step.
   *
   * @param grain the grain, denser than the liquid
   * @param yieldStressPa yield stress of the liquid while it flows, not negative [Pa]
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @return the share, 0 to 1
   */
  public static double restingShare(Grain grain, double yieldStressPa, double liquidDensityKgM3) {
    double constant = yieldStressPa / neededYieldStressPa(grain, liquidDensityKgM3, 1);
    double left =
        Math.log(RESTING_CONSTANT / constant) / Math.log(RESTING_CONSTANT / GREATEST_CONSTANT);
    return Math.pow(Math.max(0, Math.min(1, left)), 3);
  }

  /**
   * What the yield stress of a liquid that hardly moves leaves of the fall of a grain, where sand
   * is wanted to settle: half where the grain needs the middle constant of the experiments, 97.5 %
   * at the least of them and 2.5 % at the greatest.
   *
   * <pre>1 / (1 + (τy / (Y g d (ρs − ρ)))ⁿ),   Y = 0.089, n = 4.6</pre>
   *
   * <p>That the experiments scatter so evenly by logarithms is a choice of this calculator. It is
   * no step, so that what depends on it has none either.
   *
   * @param grain the grain, denser than the liquid
   * @param yieldStressPa yield stress of the liquid, not negative [Pa]
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @return the share, above 0 to 1
   */
  public static double fallingShare(Grain grain, double yieldStressPa, double liquidDensityKgM3) {
    if (!(yieldStressPa > 0)) {
      return 1;
    }
    double needed = neededYieldStressPa(grain, liquidDensityKgM3, MIDDLE_CONSTANT);
    return 1 / (1 + Math.pow(yieldStressPa / needed, STEEPNESS));
  }

  /**
   * The yield stress that holds a grain at rest.
   *
   * @param grain the grain, denser than the liquid
   * @param liquidDensityKgM3 density of the liquid [kg/m3]
   * @param constant Y, one of the constants of this class
   * @return yield stress [Pa]
   */
  public static double neededYieldStressPa(Grain grain, double liquidDensityKgM3, double constant) {
    return checked(constant)
        * submergedSpecificWeight(grain.densityKgM3(), liquidDensityKgM3)
        * grain.diameterM();
  }

  private static double checked(double constant) {
    if (!(constant > 0)) {
      throw new IllegalArgumentException("the constant must be > 0 but was " + constant);
    }
    return constant;
  }

  private static double submergedSpecificWeight(double grain, double liquid) {
    if (!(liquid > 0 && grain > liquid)) {
      throw new IllegalArgumentException(
          "the grain must be denser than the liquid but has "
              + grain
              + " kg/m3 in "
              + liquid
              + " kg/m3");
    }
    return Physics.GRAVITY * (grain - liquid);
  }
}
