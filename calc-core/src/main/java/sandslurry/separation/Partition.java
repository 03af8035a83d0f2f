package sandslurry.separation;

import java.util.Collections;
import java.util.List;

/**
 * How a unit divides what it is fed: the share of each component that goes to the underflow, the
 * deposit or the cake. What does not go there goes to the overflow, so that mass is conserved
 * whatever the shares are.
 *
 * @param sand the share of each size class, in the order of the feed, 0 to 1
 * @param water share of the water, of the feed and of rinse water together, 0 to 1
 * @param fines share of the fines, 0 to 1
 * @param dissolved share of the dissolved matter, 0 to 1
 * @param fibre share of the fibre, 0 to 1
 */
public record Partition(
    List<Double> sand, double water, double fines, double dissolved, double fibre) {
  /** Checks that every share lies in 0 to 1 and copies the list. */
  public Partition {
    sand = List.copyOf(sand);
    sand.forEach(share -> Numbers.share("the share of a class of sand", share));
    Numbers.share("the share of water", water);
    Numbers.share("the share of fines", fines);
    Numbers.share("the share of dissolved matter", dissolved);
    Numbers.share("the share of fibre", fibre);
  }

  /**
   * A unit that captures nothing.
   *
   * @param classes size classes of the sand
   * @return shares of 0
   */
  public static Partition nothing(int classes) {
    return new Partition(Collections.nCopies(classes, 0.0), 0, 0, 0, 0);
  }

  /**
   * Share of all sand that goes to the underflow.
   *
   * @param feed the feed that was divided
   * @return mass of sand in the underflow over mass of sand in the feed; 0 without sand
   */
  public double sandRecovery(UnitFeed feed) {
    double total = feed.sandTotalKgps();
    return total > 0 ? Numbers.rounded(feed.sandKgps(sand) / total) : 0;
  }
}
