package sandslurry.design.criteria;

import java.util.Map;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.deposition.DepositionVelocities.Role;

/**
 * The margins by which a design is judged; every one can be changed.
 *
 * @param marginFraction margin of velocity over the governing deposition velocity, as a share of it
 * @param marginVelocityMps the same as a velocity; the larger of the two counts
 * @param roles roles of deposition correlations that differ from the default, by their id
 * @param gradedSearch whether the size of the sand that asks the highest velocity governs;
 *     otherwise d50 does
 * @param wearVelocityMps velocity above which wear is a caution
 * @param pressureShare share of the pressure rating that the working pressure may use
 * @param sandCapture share of the sand that the lane must catch for a pass
 * @param floorShare share of the coarse sand that may reach the floor of a line in laminar flow
 */
public record Criteria(
    double marginFraction,
    double marginVelocityMps,
    Map<String, Role> roles,
    boolean gradedSearch,
    double wearVelocityMps,
    double pressureShare,
    double sandCapture,
    double floorShare) {
  /** Copies the map. */
  public Criteria {
    roles = Map.copyOf(roles);
  }

  /**
   * The working pressure that a pipe may have.
   *
   * @param ratingPa its pressure rating [Pa]
   * @return the pressure [Pa]
   */
  public double allowedPa(double ratingPa) {
    return pressureShare * ratingPa;
  }

  /**
   * How a pipe bears a working pressure.
   *
   * @param pressurePa the pressure [Pa]
   * @param ratingPa its pressure rating [Pa]
   * @return a fail above the rating, a caution above what is allowed of it
   */
  public Severity pressure(double pressurePa, double ratingPa) {
    return pressurePa > ratingPa
        ? Severity.FAIL
        : pressurePa > allowedPa(ratingPa) ? Severity.CAUTION : Severity.PASS;
  }
}
