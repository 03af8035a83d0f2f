package sandslurry.settling;

import java.util.List;
import sandslurry.correlation.Physics;
import sandslurry.material.Grain;
import sandslurry.material.Liquid;

/** The catalogue of settling-velocity correlations. */
public final class SettlingVelocities {
  /** The correlation used where one grain size has one velocity: natural sand, any viscosity. */
  public static final SettlingVelocityModel DEFAULT = new FergusonChurch2004();

  private SettlingVelocities() {}

  /**
   * Every correlation of the family.
   *
   * @return the correlations, the default first
   */
  public static List<SettlingVelocityModel> all() {
    return List.of(DEFAULT);
  }

  /**
   * Drag coefficient that belongs to the settling velocity of the default correlation.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return C_D = 4 g d (s − 1) / (3 w²)
   */
  public static double dragCoefficient(Grain grain, Liquid liquid) {
    double velocity = DEFAULT.velocityMps(grain, liquid).value();
    double buoyancy = grain.densityKgM3() / liquid.densityKgM3() - 1;
    return 4 * Physics.GRAVITY * grain.diameterM() * buoyancy / (3 * velocity * velocity);
  }

  /**
   * Reynolds number of a grain falling at the velocity of the default correlation.
   *
   * @param grain the grain
   * @param liquid the liquid
   * @return w d / ν
   */
  public static double reynoldsNumber(Grain grain, Liquid liquid) {
    return DEFAULT.velocityMps(grain, liquid).value()
        * grain.diameterM()
        / liquid.kinematicViscosityM2ps();
  }
}
