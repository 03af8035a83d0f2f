package sandslurry.separation.box;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.separation.Numbers;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.CaptureRelation;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.separation.capture.HazenBasins;
import sandslurry.separation.capture.HazenIdeal1904;
import sandslurry.separation.capture.Outlook;

/**
 * A dilution settling box: diluted manure rises to a weir, sand sinks to a screw that rakes it out.
 *
 * <p>A grain is caught when it falls faster than the liquor rises, more or less sharply by how well
 * the box is mixed: the ideal basin of {@link HazenIdeal1904} is the upper bound, one fully stirred
 * basin ({@link HazenBasins}, N = 1) the lower, three in a row, "average" in Hazen's rating, the
 * estimate. The rising flow is that of the whole mixture and the rinse water, so the little that
 * leaves with the sand is counted as rising: cautious.
 *
 * <p>With sand and settled fibre so much liquor leaves that its water is the moisture of all that
 * leaves. The dry matter of that liquor, less what a rinse displaces, is the organic matter and
 * fines that stay in the sand, beside the fibre.
 *
 * <pre>
 * liquor = (sand + fibre) · m / (1 − s − m)        residual of its dry matter = (1 − E)^N
 * </pre>
 *
 * <p>m water over all that leaves; s dry matter of the liquor after the rinse; E share displaced by
 * one pore volume of rinse and N the pore volumes: the displacement-washing relation of Choudhury
 * and Dahlstrom (1957), AIChE Journal 3:433, with E of 0.35 to 0.86 for filter cakes (from memory,
 * unverified).
 *
 * @param areaM2 plan area of the water surface [m2]
 * @param waterDepthM depth of water above the screw [m]
 * @param effectiveShare share of the plan area that works, above 0 to 1
 * @param sandMoisture water with the raked sand over all its mass, 0 to below 1; 0.15 to 0.20 for
 *     sand freshly dug (from memory, unverified)
 * @param rinsePoreVolumes rinse water in pore volumes of all the sand fed; 0 for none
 * @param rinseEfficiency share of the pore liquor that one pore volume displaces, 0 to below 1
 * @param screwCapacityM3ps bulk volume of sand that the screw can lift; empty when not known [m3/s]
 * @param depositPorosity share of the raked bulk that is not sand, 0 to below 1
 */
public record DilutionBox(
    double areaM2,
    double waterDepthM,
    double effectiveShare,
    double sandMoisture,
    double rinsePoreVolumes,
    double rinseEfficiency,
    OptionalDouble screwCapacityM3ps,
    double depositPorosity) {
  /** Mixed basins in a row, "average" in Hazen's rating. */
  public static final double AVERAGE_BASINS = 3;

  private static final CaptureRelation STIRRED = new HazenBasins(1);
  private static final CaptureRelation AVERAGE = new HazenBasins(AVERAGE_BASINS);

  /** Checks every bound. */
  public DilutionBox {
    Numbers.positive("the area", areaM2, "m2");
    Numbers.positive("the depth of water", waterDepthM, "m");
    if (!(effectiveShare > 0 && effectiveShare <= 1)) {
      throw new IllegalArgumentException(
          "the effective share lies in 0 (excluded) to 1 but was " + effectiveShare);
    }
    below1("the moisture of the sand", sandMoisture);
    Numbers.notNegative("the rinse", rinsePoreVolumes, "pore volumes");
    below1("the efficiency of the rinse", rinseEfficiency);
    screwCapacityM3ps.ifPresent(
        capacity -> Numbers.positive("the capacity of the screw", capacity, "m3/s"));
    below1("porosity", depositPorosity);
  }

  private static void below1(String what, double value) {
    if (!(value >= 0 && value < 1)) {
      throw new IllegalArgumentException(what + " lies in 0 to below 1 but was " + value);
    }
  }

  /**
   * Rinse water that the box takes besides its feed.
   *
   * @param feed the diluted feed
   * @return pore volumes times the pore water of all sand fed [m3/s]
   */
  public double rinseM3ps(UnitFeed feed) {
    return rinsePoreVolumes * liquorPerSand() * feed.sandTotalKgps() / feed.liquid().densityKgM3();
  }

  /**
   * The same box with as much rinse as there is clean water for.
   *
   * @param feed the feed, without rinse water
   * @param cleanM3ps clean water that comes for the rinse [m3/s]
   * @return the box with no more pore volumes of rinse than that water makes
   */
  public DilutionBox rinsedWith(UnitFeed feed, double cleanM3ps) {
    double wanted = rinseM3ps(feed);
    double share = wanted > cleanM3ps ? Math.max(0, cleanM3ps) / wanted : 1;
    return new DilutionBox(
        areaM2,
        waterDepthM,
        effectiveShare,
        sandMoisture,
        rinsePoreVolumes * share,
        rinseEfficiency,
        screwCapacityM3ps,
        depositPorosity);
  }

  /** Mass of liquor that leaves with a unit mass of sand. */
  private double liquorPerSand() {
    return sandMoisture / (1 - sandMoisture);
  }

  /**
   * Works out what the box does with a feed.
   *
   * @param feed the feed with its dilution liquor already in it, without the rinse water
   * @param organic how the fibre settles
   * @return the result
   */
  public BoxResult evaluate(UnitFeed feed, OrganicMatter organic) {
    double rinse = rinseM3ps(feed);
    BasinFlow flow = flow(feed, rinse);
    List<Estimate> velocities = feed.hinderedVelocitiesMps();
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    velocities.forEach(velocity -> excesses.addAll(velocity.excesses()));
    List<BoxSand> sands = new ArrayList<>();
    for (Outlook outlook : Outlook.values()) {
      sands.add(sand(feed, rinse, flow, velocities, organic, outlook));
    }
    return new BoxResult(
        flow.overflowVelocityMps(),
        areaM2 * waterDepthM / (feed.mixtureM3ps() + rinse),
        rinse,
        velocities.stream().map(Estimate::value).toList(),
        sands,
        List.copyOf(excesses));
  }

  /**
   * What leaves with the sand at one edge of the band, all that a balance asks for.
   *
   * @param feed the feed with its dilution liquor already in it, without the rinse water
   * @param organic how the fibre settles
   * @param outlook the edge
   * @return the sand
   */
  public BoxSand sand(UnitFeed feed, OrganicMatter organic, Outlook outlook) {
    double rinse = rinseM3ps(feed);
    return sand(feed, rinse, flow(feed, rinse), feed.hinderedVelocitiesMps(), organic, outlook);
  }

  private BasinFlow flow(UnitFeed feed, double rinseM3ps) {
    return new BasinFlow((feed.mixtureM3ps() + rinseM3ps) / (areaM2 * effectiveShare), 0);
  }

  private BoxSand sand(
      UnitFeed feed,
      double rinse,
      BasinFlow flow,
      List<Estimate> velocities,
      OrganicMatter organic,
      Outlook outlook) {
    CaptureRelation relation = relation(outlook);
    List<Double> caught = new ArrayList<>(velocities.size());
    for (Estimate velocity : velocities) {
      caught.add(relation.fraction(flow, velocity.value()).value());
    }
    double fibre =
        organic.settleableShare() * relation.fraction(flow, organic.settlingVelocityMps()).value();
    return sand(feed, rinse, caught, fibre);
  }

  private static CaptureRelation relation(Outlook outlook) {
    return switch (outlook) {
      case CAUTIOUS -> STIRRED;
      case LIKELY -> AVERAGE;
      case HOPEFUL -> CaptureRelations.IDEAL;
    };
  }

  /** What leaves with the sand when the shares caught are known. */
  private BoxSand sand(UnitFeed feed, double rinse, List<Double> caught, double fibreShare) {
    double sandKgps = feed.sandKgps(caught);
    double liquidKgps = feed.liquidKgps() + rinse * feed.liquid().densityKgM3();
    double residual = Math.pow(1 - rinseEfficiency, rinsePoreVolumes);
    double solids = feed.liquorSolids() * residual;
    double dryKgps = sandKgps + fibreShare * feed.fibreKgps();
    // Liquor whose water is the moisture of all that leaves; no more than there is.
    double room = 1 - solids - sandMoisture;
    double withSandKgps =
        room > 0 ? Math.min(liquidKgps, dryKgps * sandMoisture / room) : liquidKgps;
    double allWaterKgps = liquidKgps - feed.liquorSolids() * feed.liquidKgps();
    double water = Math.min(1, withSandKgps * (1 - solids) / allWaterKgps);
    double waterKgps = water * allWaterKgps;
    double matter = Math.min(1, Numbers.rounded(withSandKgps / feed.liquidKgps()) * residual);
    Partition partition = new Partition(caught, water, matter, matter, fibreShare);
    double dryMatterKgps =
        fibreShare * feed.fibreKgps() + matter * feed.liquorSolids() * feed.liquidKgps();
    double bulkM3ps = sandKgps / feed.sandDensityKgM3() / (1 - depositPorosity);
    double wetKgps = sandKgps + dryMatterKgps + waterKgps;
    return new BoxSand(
        partition,
        sandKgps,
        wetKgps > 0 ? waterKgps / wetKgps : 0,
        sandKgps + dryMatterKgps > 0 ? dryMatterKgps / (sandKgps + dryMatterKgps) : 0,
        bulkM3ps,
        screwCapacityM3ps.isPresent()
            ? OptionalDouble.of(bulkM3ps / screwCapacityM3ps.getAsDouble())
            : OptionalDouble.empty());
  }
}
