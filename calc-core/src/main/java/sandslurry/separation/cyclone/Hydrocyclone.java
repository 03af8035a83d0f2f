package sandslurry.separation.cyclone;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Physics;
import sandslurry.material.Proportions;
import sandslurry.material.sand.GrainRange;
import sandslurry.separation.Numbers;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;

/**
 * A hydrocyclone, or several alike in parallel.
 *
 * <p>The actual partition adds the grains that merely follow the water to those that are sorted:
 *
 * <pre>p(d) = Rf + (1 − Rf) y(d),   Rf = (Rv − C Y)/(1 − C Y)</pre>
 *
 * <p>y corrected partition of the model and Y its mean over the sand fed; Rv share of the volume of
 * the feed in the underflow, by the model; C volume fraction of sand in the feed; Rf share of the
 * water in the underflow. The second equation is the balance of volume (water below = volume below
 * − sand below), solved for Rf; so the shares of sand and of water agree with the split of volume.
 *
 * <p>Where the apex cannot pass the sand, the underflow is packed ({@link
 * Proportions#PACKED_VOLUME_FRACTION}) and what it cannot take goes out above, the same share of
 * every class. Long before, it ropes: see {@link CycloneResult#ropes}.
 *
 * <p>Fines, dissolved matter and fibre are divided as the water. For fibre that is the cautious
 * reading: it is nearly as light as water, and most of it goes out above.
 *
 * @param geometry dimensions of one cyclone
 * @param parallel how many work side by side, 1 or more
 */
public record Hydrocyclone(HydrocycloneGeometry geometry, int parallel) {
  /** Cyclones in sand duty are fed at less, for wear; common practice, no source [Pa]. */
  public static final double USUAL_PA = 200e3;

  /** No slurry pump of one stage gives more; common practice, no source [Pa]. */
  public static final double PUMPED_PA = 600e3;

  /** Checks the number. */
  public Hydrocyclone {
    if (!(parallel >= 1)) {
      throw new IllegalArgumentException("need one cyclone or more but have " + parallel);
    }
  }

  /**
   * Works out what the cyclones do with a feed.
   *
   * @param feed the feed of all of them together
   * @param model the model
   * @return the result
   */
  public CycloneResult evaluate(UnitFeed feed, HydrocycloneModel model) {
    double volume = feed.volumeFraction();
    CycloneFeed each =
        new CycloneFeed(
            feed.mixtureM3ps() / parallel, feed.liquid(), volume, feed.sandDensityKgM3());
    CyclonePerformance performance = model.performance(geometry, each);
    List<Double> corrected = new ArrayList<>();
    for (GrainRange size : feed.sizes()) {
      corrected.add(performance.correctedPartition(size.meanM()));
    }
    double below = performance.underflowShare();
    double total = feed.sandTotalKgps();
    double sorted = total > 0 ? volume * feed.sandKgps(corrected) / total : 0;
    double follow = Math.max(0, (below - sorted) / (1 - sorted));
    double wanted = volume * follow + (1 - follow) * sorted;
    double room = Proportions.PACKED_VOLUME_FRACTION * below;
    double passed = wanted > room ? room / wanted : 1;
    List<Double> sand = new ArrayList<>();
    for (double y : corrected) {
      sand.add(Numbers.rounded(passed * (follow + (1 - follow) * y)));
    }
    double sandVolume = total > 0 ? volume * feed.sandKgps(sand) / total : 0;
    double water = Numbers.rounded((below - sandVolume) / (1 - volume));
    double underflowSand = sandVolume / below;
    double overflowSand = Numbers.rounded((volume - sandVolume) / (1 - below));
    double median = median(feed, sand);
    return new CycloneResult(
        performance,
        each,
        new Partition(sand, water, water, water, water),
        underflowSand,
        overflowSand,
        median,
        Math.min(Roping.plittFlintoffStuffco(median), Roping.mularJull(overflowSand)),
        passed < 1,
        performance.pressureDropPa() * feed.mixtureM3ps(),
        performance.pressureDropPa() / (each.mixtureDensityKgM3() * Physics.GRAVITY));
  }

  /**
   * Whether the feed spins fast enough for a vortex with a core of air: the spin makes the pressure
   * drop, which must be more than the weight of the liquor that stands in the vortex. A cyclone fed
   * more slowly is a tank that drains by its apex, and no model of a cyclone holds for it. Own
   * derivation, no source; cyclones that work have several times as much.
   *
   * @param result what the models say of a feed
   * @return true when the pressure drop, as a head, is at least the height of the free vortex
   */
  public boolean spins(CycloneResult result) {
    return result.headM() >= geometry.freeVortexM();
  }

  /** Size that half of the sand in the underflow is finer than; between classes by their logs. */
  private static double median(UnitFeed feed, List<Double> shares) {
    record Sand(double sizeM, double massKgps) {}
    List<Sand> sands = new ArrayList<>();
    double total = 0;
    for (int i = 0; i < shares.size(); i++) {
      Sand sand = new Sand(feed.sizes().get(i).meanM(), shares.get(i) * feed.sandKgps().get(i));
      sands.add(sand);
      total += sand.massKgps();
    }
    if (!(total > 0)) {
      return 0;
    }
    sands.removeIf(sand -> !(sand.massKgps() > 0));
    sands.sort((a, b) -> Double.compare(a.sizeM(), b.sizeM()));
    double logSize = Math.log(sands.get(0).sizeM());
    double middle = sands.get(0).massKgps() / 2;
    for (int i = 1; i < sands.size() && middle < total / 2; i++) {
      double step = (sands.get(i - 1).massKgps() + sands.get(i).massKgps()) / 2;
      double next = Math.log(sands.get(i).sizeM());
      double part = Math.min(1, (total / 2 - middle) / step);
      logSize += part * (next - logSize);
      middle += step;
    }
    return Math.exp(logSize);
  }
}
