package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.network.UnitNote.Reason;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.box.BoxSand;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.cyclone.CycloneResult;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.lane.LaneDeposit;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.screen.CakeSeparator;

/**
 * A unit of package separation in a network: what its kernel sends to the sand, the underflow or
 * the cake leaves by the first outlet, the rest by the second.
 *
 * <p>Feed in which nothing can settle, because its liquor is thicker than any whose flow was
 * measured, passes to the second outlet whole, and a note says so.
 *
 * <p>To see all that a kernel finds, such as velocities and what lay outside published ranges, give
 * {@link LiquorModel#settling} the feed of the unit in the balance and ask the kernel itself.
 */
public final class SeparatorUnit implements Unit {
  private final String name;
  private final List<String> inlets;
  private final List<String> outlets;
  private final double runningShare;
  private final Kernel kernel;

  private record Divided(Partition partition, List<UnitNote> notes) {}

  /** What a unit does with a feed that comes in a share of the day. */
  @FunctionalInterface
  private interface Kernel {
    Divided divide(Stream stream, double share);
  }

  /**
   * Where a unit stands in a network.
   *
   * @param name what it is called
   * @param inlets names of the streams in
   * @param solids name of the stream of sand, underflow or cake out
   * @param liquid name of the stream of overflow or liquid out
   * @param runningShare share of the day that it runs, 0 (excluded) to 1
   */
  public record Place(
      String name, List<String> inlets, String solids, String liquid, double runningShare) {
    /** Copies the list and checks the share. */
    public Place {
      inlets = List.copyOf(inlets);
      if (!(runningShare > 0 && runningShare <= 1)) {
        throw new IllegalArgumentException(
            name + ": the share of the day lies in 0 (excluded) to 1 but was " + runningShare);
      }
    }
  }

  private SeparatorUnit(Place place, Kernel kernel) {
    this.name = place.name();
    this.inlets = place.inlets();
    this.outlets = List.of(place.solids(), place.liquid());
    this.runningShare = place.runningShare();
    this.kernel = kernel;
  }

  /**
   * A dilution settling box.
   *
   * @param place where it stands
   * @param box the box
   * @param cleanM3ps clean water among its inlets that rinses the sand [m3/s]
   * @param organic how the fibre settles in water; the liquor slows it
   * @param outlook which relation of the band
   * @param liquor how its liquor flows
   * @param shearRatePs shear rate at which the viscosity counts [1/s]
   * @return the unit
   */
  public static SeparatorUnit box(
      Place place,
      DilutionBox box,
      double cleanM3ps,
      OrganicMatter organic,
      Outlook outlook,
      LiquorModel liquor,
      double shearRatePs) {
    return new SeparatorUnit(
        place,
        (stream, share) -> {
          Optional<Rinsed> rinsed = rinsed(stream, box, cleanM3ps, share, liquor, shearRatePs);
          if (rinsed.isEmpty()) {
            return nothingSettles(place, stream);
          }
          UnitFeed feed = rinsed.get().feed();
          BoxSand sand =
              rinsed.get().box().evaluate(feed, liquor.slowed(organic, feed)).sand(outlook);
          double load = sand.screwLoad().orElse(0);
          return load > 1
              ? divided(sand.partition(), note(place, Reason.SCREW_OVERLOADED, load, 1))
              : divided(sand.partition());
        });
  }

  /**
   * A box with the rinse that it gets, and its feed without that water.
   *
   * @param feed the feed
   * @param box the box
   */
  public record Rinsed(UnitFeed feed, DilutionBox box) {}

  /**
   * Takes the rinse water out of the mixture of all streams into a box. Only clean water that comes
   * for the rinse cleans; water in the slurry does not.
   *
   * @param stream all that flows in, on the average of the day
   * @param box the box
   * @param cleanM3ps clean water in it that rinses, on the average of the day [m3/s]
   * @param share share of the day in which it flows, above 0 to 1
   * @param liquor how the liquor flows
   * @param shearRatePs shear rate at which the viscosity counts [1/s]
   * @return the feed and the box as it is rinsed; empty where nothing settles
   */
  public static Optional<Rinsed> rinsed(
      Stream stream,
      DilutionBox box,
      double cleanM3ps,
      double share,
      LiquorModel liquor,
      double shearRatePs) {
    Optional<UnitFeed> mixed = liquor.settling(stream, share, shearRatePs);
    if (mixed.isEmpty()) {
      return Optional.empty();
    }
    DilutionBox rinsed = box.rinsedWith(mixed.get(), cleanM3ps / share);
    double rinse = rinsed.rinseM3ps(mixed.get()) * share * stream.constituents().waterDensityKgM3();
    double[] flows = stream.toArray();
    flows[Constituents.WATER] = Math.max(0, flows[Constituents.WATER] - rinse);
    return liquor
        .settling(Stream.of(stream.constituents(), flows), share, shearRatePs)
        .map(feed -> new Rinsed(feed, rinsed));
  }

  /**
   * A settling lane at given thicknesses of deposit.
   *
   * @param place where it stands
   * @param reaches the reaches, from the inlet on
   * @param depositsM thickness of the deposit in each [m]
   * @param organic how the fibre settles in water; the liquor slows it
   * @param porosity porosity of the deposit
   * @param outlook which relation of the band
   * @param liquor how its liquor flows; its viscosity is taken at the shear rate 3 V/h of the first
   *     reach
   * @return the unit
   */
  public static SeparatorUnit lane(
      Place place,
      List<LaneReach> reaches,
      List<Double> depositsM,
      OrganicMatter organic,
      double porosity,
      Outlook outlook,
      LiquorModel liquor) {
    return new SeparatorUnit(
        place,
        (stream, share) -> {
          double flow = stream.volumeM3ps() / share;
          if (!(flow > 0)) {
            return nothingSettles(place, stream);
          }
          ChannelFlow channel = reaches.get(0).flow(flow, depositsM.get(0));
          double shearRate = 3 * channel.velocityMps() / channel.depthM();
          return liquor
              .settling(stream, share, shearRate)
              .map(
                  feed ->
                      divided(
                          LaneDeposit.of(
                                  reaches,
                                  depositsM,
                                  feed,
                                  liquor.slowed(organic, feed),
                                  porosity,
                                  outlook)
                              .partition()))
              .orElseGet(() -> nothingSettles(place, stream));
        });
  }

  /**
   * A settling lane that fills and is cleaned again and again, with what it keeps meant from clean
   * to clean-out.
   *
   * @param place where it stands
   * @param reaches the reaches, from the inlet on
   * @param leastRecovery share of the sand kept below which it is cleaned, above 0 to 1
   * @param organic how the fibre settles in water; the liquor slows it
   * @param porosity porosity of the deposit
   * @param outlook which relation of the band
   * @param liquor how its liquor flows; its viscosity is taken at the shear rate 3 V/h of the first
   *     reach filled by half
   * @return the unit
   */
  public static SeparatorUnit fillingLane(
      Place place,
      List<LaneReach> reaches,
      double leastRecovery,
      OrganicMatter organic,
      double porosity,
      Outlook outlook,
      LiquorModel liquor) {
    return new SeparatorUnit(
        place,
        (stream, share) -> {
          double flow = stream.volumeM3ps() / share;
          if (!(flow > 0)) {
            return nothingSettles(place, stream);
          }
          ChannelFlow channel = reaches.get(0).flow(flow, reaches.get(0).storageDepthM() / 2);
          double shearRate = 3 * channel.velocityMps() / channel.depthM();
          return liquor
              .settling(stream, share, shearRate)
              .map(
                  feed ->
                      divided(
                          LaneFilling.mean(
                              reaches,
                              feed,
                              liquor.slowed(organic, feed),
                              porosity,
                              outlook,
                              leastRecovery)))
              .orElseGet(() -> nothingSettles(place, stream));
        });
  }

  /**
   * Hydrocyclones side by side.
   *
   * @param place where they stand; the first outlet is the underflow
   * @param cyclone the cyclones
   * @param model the model
   * @param liquor how the liquor flows
   * @param shearRatePs shear rate at which the viscosity counts [1/s]
   * @return the unit
   */
  public static SeparatorUnit cyclone(
      Place place,
      Hydrocyclone cyclone,
      HydrocycloneModel model,
      LiquorModel liquor,
      double shearRatePs) {
    return new SeparatorUnit(
        place,
        (stream, share) -> {
          Optional<UnitFeed> feed = liquor.settling(stream, share, shearRatePs);
          if (feed.isEmpty()) {
            return nothingSettles(place, stream);
          }
          CycloneResult result = cyclone.evaluate(feed.get(), model);
          return result.ropes()
              ? divided(
                  result.partition(),
                  note(place, Reason.ROPES, result.underflowSand(), result.ropingLimit()))
              : divided(result.partition());
        });
  }

  /**
   * A coarse screen or fibre separator.
   *
   * @param place where it stands
   * @param separator the separator
   * @param liquor of which only the temperature counts
   * @return the unit
   */
  public static SeparatorUnit cake(Place place, CakeSeparator separator, LiquorModel liquor) {
    return new SeparatorUnit(
        place,
        (stream, share) ->
            liquor
                .screening(stream, share)
                .map(separator::evaluate)
                .map(
                    result ->
                        result.asAsked()
                            ? divided(result.partition())
                            : divided(
                                result.partition(),
                                note(
                                    place,
                                    Reason.CAKE_DRIER,
                                    result.solids(),
                                    result.solidsAsked())))
                .orElseGet(() -> divided(nothing(stream))));
  }

  private static UnitNote note(Place place, Reason reason, double value, double wanted) {
    return new UnitNote(place.name(), reason, value, wanted);
  }

  private static Divided divided(Partition partition, UnitNote... notes) {
    return new Divided(partition, List.of(notes));
  }

  private static Divided nothingSettles(Place place, Stream stream) {
    double solids = stream.manureTotalSolids();
    return stream.waterKgps() > 0
        ? divided(nothing(stream), note(place, Reason.TOO_THICK, solids, solids))
        : divided(nothing(stream));
  }

  private static Partition nothing(Stream stream) {
    return new Partition(
        stream.constituents().sandClasses().stream().map(size -> 0.0).toList(), 0, 0, 0, 0);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public List<String> inlets() {
    return inlets;
  }

  @Override
  public List<String> outlets() {
    return outlets;
  }

  @Override
  public Split split(Stream feed) {
    return split(feed, 1);
  }

  @Override
  public Split split(Stream feed, double duty) {
    Divided divided = kernel.divide(feed, Math.min(duty, runningShare));
    Partition partition = divided.partition();
    double[] first = new double[feed.constituents().count()];
    first[Constituents.WATER] = partition.water();
    first[Constituents.DISSOLVED] = partition.dissolved();
    first[Constituents.FIBRE] = partition.fibre();
    first[Constituents.ORGANIC_FINES] = partition.fines();
    first[Constituents.MINERAL_FINES] = partition.fines();
    for (int k = 0; k < partition.sand().size(); k++) {
      first[Constituents.SAND + k] = partition.sand().get(k);
    }
    return Split.two(first, divided.notes());
  }
}
