package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.List;
import sandslurry.separation.Numbers;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;

/**
 * What a lane of one or more reaches does with a feed at one moment, at given thicknesses of
 * deposit.
 *
 * @param flows the flow in each reach, from the inlet on
 * @param keptKgps sand that comes to rest in each reach while the lane runs, by class [kg/s]
 * @param partition shares of the feed that stay: sand, fibre, and the liquor in the pores of the
 *     deposit
 * @param foreignMatter dry matter that is not sand (settled fibre, fines and dissolved matter of
 *     the pore liquor) over all dry matter of the deposit; 0 when nothing stays
 */
public record LaneDeposit(
    List<ChannelFlow> flows,
    List<List<Double>> keptKgps,
    Partition partition,
    double foreignMatter) {
  /** Copies the lists. */
  public LaneDeposit {
    flows = List.copyOf(flows);
    keptKgps = keptKgps.stream().map(List::copyOf).toList();
  }

  /**
   * Works out a moment.
   *
   * @param reaches the reaches, from the inlet on
   * @param depositsM thickness of the deposit in each [m]; a reach that is filled to its storage
   *     depth keeps nothing more
   * @param feed what enters the first
   * @param organic how the fibre settles
   * @param porosity share of the deposit that is not sand, 0 to below 1
   * @param outlook which relation of the band
   * @return the result
   */
  public static LaneDeposit of(
      List<LaneReach> reaches,
      List<Double> depositsM,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity,
      Outlook outlook) {
    return of(reaches, depositsM, feed, GrainCurves.of(feed), organic, porosity, outlook);
  }

  static LaneDeposit of(
      List<LaneReach> reaches,
      List<Double> depositsM,
      UnitFeed feed,
      GrainCurves grains,
      OrganicMatter organic,
      double porosity,
      Outlook outlook) {
    if (reaches.isEmpty() || reaches.size() != depositsM.size()) {
      throw new IllegalArgumentException(
          "need one reach or more and a deposit for each but have "
              + reaches.size()
              + " and "
              + depositsM.size());
    }
    if (!(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException("porosity lies in 0 to below 1 but was " + porosity);
    }
    List<ChannelFlow> flows = new ArrayList<>();
    List<List<Double>> kept = new ArrayList<>();
    UnitFeed passing = feed;
    double fibrePassing = 1;
    for (int i = 0; i < reaches.size(); i++) {
      LaneReach reach = reaches.get(i);
      // The flow of the feed runs through all reaches: what settles hardly lessens it.
      ChannelFlow flow = reach.flow(feed.mixtureM3ps(), depositsM.get(i));
      flows.add(flow);
      boolean full = depositsM.get(i) >= reach.storageDepthM();
      List<Double> shares =
          full
              ? feed.forEachClass(0)
              : reach.retained(passing, i == 0 ? grains : grains.with(passing), flow, outlook);
      List<Double> keptHere = new ArrayList<>();
      List<Double> onward = new ArrayList<>();
      for (int k = 0; k < shares.size(); k++) {
        double arriving = passing.sandKgps().get(k);
        keptHere.add(arriving * shares.get(k));
        onward.add(arriving * (1 - shares.get(k)));
      }
      kept.add(keptHere);
      passing = passing.withSand(onward);
      if (!full) {
        // What never settles in one reach does not in the next: the rest alone passes on.
        double settleable = organic.settleableShare();
        double share =
            settleable > 0 ? reach.retainedFibre(organic, flow, outlook) / settleable : 0;
        fibrePassing *= 1 - Numbers.rounded(share);
      }
    }
    double fibre = Numbers.rounded(organic.settleableShare() * (1 - fibrePassing));
    return result(feed, flows, kept, passing, fibre, porosity);
  }

  private static LaneDeposit result(
      UnitFeed feed,
      List<ChannelFlow> flows,
      List<List<Double>> kept,
      UnitFeed passing,
      double fibre,
      double porosity) {
    List<Double> sand = new ArrayList<>();
    for (int k = 0; k < feed.sizes().size(); k++) {
      double fed = feed.sandKgps().get(k);
      sand.add(fed > 0 ? Numbers.rounded(1 - passing.sandKgps().get(k) / fed) : 0);
    }
    double sandKgps = feed.sandKgps(sand);
    double poresM3ps = sandKgps / feed.sandDensityKgM3() * porosity / (1 - porosity);
    double liquor = Numbers.rounded(poresM3ps / feed.liquidM3ps());
    double foreign = fibre * feed.fibreKgps() + liquor * feed.liquorSolids() * feed.liquidKgps();
    return new LaneDeposit(
        flows,
        kept,
        new Partition(sand, liquor, liquor, liquor, fibre),
        sandKgps + foreign > 0 ? foreign / (sandKgps + foreign) : 0);
  }

  /**
   * Share of all sand that comes to rest.
   *
   * @param feed the feed
   * @return the share, 0 without sand
   */
  public double sandRecovery(UnitFeed feed) {
    return partition.sandRecovery(feed);
  }
}
