package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.List;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;

/**
 * What a lane keeps of one size class.
 *
 * @param sizeM the size that stands for the class [m]
 * @param cautious share kept where every grain that the flow moves is lost again
 * @param likely share kept where what turbulence holds up is lost again
 * @param hopeful share kept where nothing is lost again
 */
public record KeptClass(double sizeM, double cautious, double likely, double hopeful) {
  /**
   * Every class of a feed, at given thicknesses of deposit.
   *
   * @param reaches the reaches, from the inlet on
   * @param depositsM thickness of the deposit in each [m]
   * @param feed what enters the first
   * @return one for each class, in the order of the feed
   */
  public static List<KeptClass> of(List<LaneReach> reaches, List<Double> depositsM, UnitFeed feed) {
    List<List<Double>> kept = new ArrayList<>();
    for (Outlook outlook : Outlook.values()) {
      kept.add(
          LaneDeposit.of(reaches, depositsM, feed, OrganicMatter.FEEDLOT, 0, outlook)
              .partition()
              .sand());
    }
    List<KeptClass> classes = new ArrayList<>();
    for (int i = 0; i < feed.sizes().size(); i++) {
      classes.add(
          new KeptClass(
              feed.sizes().get(i).meanM(),
              kept.get(Outlook.CAUTIOUS.ordinal()).get(i),
              kept.get(Outlook.LIKELY.ordinal()).get(i),
              kept.get(Outlook.HOPEFUL.ordinal()).get(i)));
    }
    return List.copyOf(classes);
  }
}
