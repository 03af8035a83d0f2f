package sandslurry.design.station;

import java.util.Optional;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;

/**
 * What feeds a pit or drains it, beside the lines.
 *
 * @param screw a screw conveyor that feeds the pit
 * @param gravityRun a gravity pipe that runs part full
 */
public record FeedSpec(Optional<ScrewSpec> screw, Optional<GravityRunSpec> gravityRun) {
  /** Nothing given. */
  public static final FeedSpec NONE = new FeedSpec(Optional.empty(), Optional.empty());
}
