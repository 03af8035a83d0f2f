package sandslurry.plant.unit;

import java.util.List;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.network.UnitNote.Reason;
import sandslurry.separation.Partition;

/**
 * A unit of package separation in a network: what its kernel sends to the sand, the underflow or
 * the cake leaves by the first outlet, the rest by the second.
 *
 * <p>Feed in which nothing can settle, because its liquor is thicker than any whose flow was
 * measured, passes to the second outlet whole, and a note says so.
 */
final class SeparatorUnit implements Unit {
  private final String name;
  private final List<String> inlets;
  private final List<String> outlets;
  private final double runningShare;
  private final Kernel kernel;

  /** Shares that leave by the first outlet, and what is to be said of them. */
  record Divided(Partition partition, List<UnitNote> notes) {}

  /** What a unit does with a feed that comes in a share of the day. */
  @FunctionalInterface
  interface Kernel {
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
  record Place(
      String name, List<String> inlets, String solids, String liquid, double runningShare) {
    /** Copies the list and checks the share. */
    Place {
      inlets = List.copyOf(inlets);
      if (!(runningShare > 0 && runningShare <= 1)) {
        throw new IllegalArgumentException(
            name + ": the share of the day lies in 0 (excluded) to 1 but was " + runningShare);
      }
    }

    UnitNote note(Reason reason, double value, double wanted) {
      return new UnitNote(name, reason, value, wanted);
    }
  }

  SeparatorUnit(Place place, Kernel kernel) {
    this.name = place.name();
    this.inlets = place.inlets();
    this.outlets = List.of(place.solids(), place.liquid());
    this.runningShare = place.runningShare();
    this.kernel = kernel;
  }

  /** What leaves by the first outlet. */
  static Divided divided(Partition partition, UnitNote... notes) {
    return new Divided(partition, List.of(notes));
  }

  /** All passes on; a note says so where the liquor is too thick. */
  static Divided nothingSettles(Place place, Stream stream) {
    double solids = stream.manureTotalSolids();
    return stream.waterKgps() > 0
        ? divided(partition(stream), place.note(Reason.TOO_THICK, solids, solids))
        : nothing(stream);
  }

  /** All passes on. */
  static Divided nothing(Stream stream) {
    return divided(partition(stream));
  }

  private static Partition partition(Stream stream) {
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
