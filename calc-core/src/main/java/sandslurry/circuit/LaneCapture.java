package sandslurry.circuit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import sandslurry.material.Carriers;
import sandslurry.material.GrainShape;
import sandslurry.material.Liquid;
import sandslurry.material.Thomas1965;
import sandslurry.separation.CaptureBand;
import sandslurry.separation.ChannelFlow;
import sandslurry.separation.LaneClass;
import sandslurry.separation.LaneFeed;
import sandslurry.separation.SettlingLane;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What a settling lane catches of a feed, with the liquor as thick as the feed makes it.
 *
 * <p>The carrier is manure liquor of the feed's manure total solids at the shear rate 3 V/h of the
 * lane, thickened by the mineral fines (Thomas 1965). Sand is what {@link SettlingLane} retains by
 * the relation chosen. Fibre and fines are caught by the shares given: no published relation is at
 * hand for them.
 *
 * @param lane the lane
 * @param runningShare share of the day that it runs, 0 (excluded) to 1: the feed of a balance is a
 *     mean over the day, the lane sees it in that part of the day
 * @param temperatureK temperature of the liquor [K]
 * @param shape shape of the grains
 * @param settlingFactor what coatings leave of the settling velocity, 0 (excluded) to 1
 * @param scour whether a class that the flow moves counts as lost
 * @param relation which of the three capture relations counts
 * @param fibre share of the fibre that stays with the sand
 * @param fines share of the fines, organic and mineral, that stays with the sand
 */
public record LaneCapture(
    SettlingLane lane,
    double runningShare,
    double temperatureK,
    GrainShape shape,
    double settlingFactor,
    boolean scour,
    Relation relation,
    double fibre,
    double fines)
    implements CaptureLaw {
  /** Which capture relation counts. */
  public enum Relation {
    /** No turbulence: what no lane can beat. */
    IDEAL,
    /** Camp and Dobbins, the best estimate. */
    CAMP_DOBBINS,
    /** Vetter, full mixing: the low end. */
    VETTER;

    double of(CaptureBand band) {
      return switch (this) {
        case IDEAL -> band.ideal();
        case CAMP_DOBBINS -> band.campDobbins();
        case VETTER -> band.vetter();
      };
    }
  }

  private static final Thomas1965 THICKENING = new Thomas1965();

  /** Checks the share of the day; the rest is checked where it is used. */
  public LaneCapture {
    if (!(runningShare > 0 && runningShare <= 1)) {
      throw new IllegalArgumentException(
          "the share of the day lies in 0 (excluded) to 1 but was " + runningShare);
    }
  }

  @Override
  public Captured of(Stream feed) {
    int classes = feed.constituents().sandClasses().size();
    double flow = feed.volumeM3ps() / runningShare;
    if (!(flow > 0)) {
      return new Captured(fibre, fines, fines, Collections.nCopies(classes, 0.0), List.of());
    }
    double solids = feed.manureTotalSolids();
    if (!(solids <= Carriers.HIGHEST_TOTAL_SOLIDS)) {
      return new Captured(
          fibre,
          fines,
          fines,
          Collections.nCopies(classes, 0.0),
          List.of(
              "At "
                  + UnitSystem.METRIC.show(Kind.PERCENT, solids)
                  + " sand-free total solids the liquor of the lane is no liquid whose flow was"
                  + " measured; it is taken to let no sand settle."));
    }
    ChannelFlow channel =
        lane.waterDepthM().isPresent()
            ? lane.channel().flow(flow, lane.waterDepthM().getAsDouble())
            : lane.channel().uniformFlow(flow);
    double shearRate = 3 * channel.velocityMps() / channel.depthM();
    double thickening = THICKENING.relativeViscosity(feed.mineralFinesVolumeShare()).value();
    Liquid liquid =
        new Liquid(
            feed.liquorDensityKgM3(),
            Carriers.manure(solids, temperatureK).liquidAt(shearRate).viscosityPaS() * thickening);
    List<LaneClass> judged =
        lane.evaluate(
                new LaneFeed(
                    flow,
                    runningShare,
                    liquid,
                    feed.sandVolumeShare(),
                    feed.constituents().sandDensityKgM3(),
                    shape,
                    feed.sandClasses(),
                    settlingFactor))
            .classes();
    List<Double> sand = new ArrayList<>();
    for (LaneClass size : judged) {
      sand.add(relation.of(scour ? size.retained() : size.capture()));
    }
    return new Captured(fibre, fines, fines, sand, List.of());
  }
}
