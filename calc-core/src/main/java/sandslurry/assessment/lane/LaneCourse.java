package sandslurry.assessment.lane;

import java.util.List;
import sandslurry.separation.lane.KeptClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneTrade;

/**
 * What a settling lane is designed by: its trade against velocity, what it keeps of each grain
 * size, and how it fills.
 *
 * @param trade sand and organic matter kept at each velocity, slowest first, in a clean lane
 * @param own the point of the trade at which the lane runs when it is clean, at critical flow at
 *     most
 * @param organicMatterKnown false when the feed was described without solids, so that the organic
 *     matter of the trade says nothing
 * @param classes what it keeps of each grain size, finest first, at the filling at which the lane
 *     is judged
 * @param filling how it fills from clean to clean-out
 */
public record LaneCourse(
    List<LaneTrade> trade,
    LaneTrade own,
    boolean organicMatterKnown,
    List<KeptClass> classes,
    LaneFilling filling) {
  /** The name of the lane that stands for itself, beside those of a plant. */
  public static final String OWN = "Settling lane";

  /** Copies the lists. */
  public LaneCourse {
    trade = List.copyOf(trade);
    classes = List.copyOf(classes);
  }
}
