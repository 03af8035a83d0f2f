package sandslurry.plant.unit;

import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.cyclone.HydrocycloneModel;

/**
 * What the units of a plant have in common while they run: the liquor, the flows of a mode of the
 * day, and which end is taken of what is not known.
 *
 * @param liquor how the liquor flows
 * @param organic how the fibre settles in water
 * @param porosity pores over bulk volume of settled sand
 * @param outlook which relation of the band of captures
 * @param cleanness which end of a range that makes recovered sand clean
 * @param areaFactor settling areas over those given
 * @param cyclones the model of all cyclones; empty for the one that each has
 * @param freshM3ps flow rate of a stream of fresh water by its name; 0 for any other [m3/s]
 * @param pumpM3ps flow rate of a pump by its stream and the flow rate given for it [m3/s]
 * @param paced whether it is said elsewhere when units run that batches reach before a pit
 */
public record Conditions(
    LiquorModel liquor,
    OrganicMatter organic,
    double porosity,
    Outlook outlook,
    ToDoubleFunction<Range> cleanness,
    double areaFactor,
    Optional<HydrocycloneModel> cyclones,
    ToDoubleFunction<String> freshM3ps,
    ToDoubleBiFunction<String, Double> pumpM3ps,
    boolean paced) {
  /** The share of the day in which a unit sees its feed. */
  double share(double running) {
    return paced ? 1 : running;
  }

  /** The organic matter as it settles in the liquor of a feed. */
  OrganicMatter organic(UnitFeed feed) {
    return liquor.slowed(organic, feed);
  }

  /** A stream as the feed of a unit that lets sand settle; empty where nothing can. */
  Optional<UnitFeed> settling(Stream stream, double share, double shearRatePs) {
    return liquor.settling(stream, share, shearRatePs);
  }
}
