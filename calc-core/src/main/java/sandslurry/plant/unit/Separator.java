package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.network.UnitNote;
import sandslurry.plant.network.UnitNote.Reason;
import sandslurry.separation.Partition;

/**
 * A unit that parts solids from liquor: what its kernel sends to the sand, the underflow or the
 * cake leaves by the first outlet, the rest by the second.
 *
 * <p>Feed in which nothing can settle, because its liquor is thicker than any whose flow was
 * measured, passes to the second outlet whole, and a note says so.
 */
public sealed interface Separator extends PlantUnit
    permits BoxUnit, LaneUnit, CycloneUnit, CakeUnit {
  /**
   * Where a separator stands in its plant.
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
    public Place {
      inlets = List.copyOf(inlets);
      if (!(runningShare > 0 && runningShare <= 1)) {
        throw new IllegalArgumentException(
            name + ": the share of the day lies in 0 (excluded) to 1 but was " + runningShare);
      }
    }
  }

  /**
   * What becomes of a feed.
   *
   * @param partition shares that leave by the first outlet
   * @param notes what is to be said of the feed
   */
  record Divided(Partition partition, List<UnitNote> notes) {}

  /**
   * The kinds of separator that a plant is built of, by their fields.
   *
   * @return the fields of each, in the order in which they are offered
   */
  static List<UnitFields> fields() {
    return List.of(
        new BoxUnit.BoxFields(),
        new LaneUnit.LaneUnitFields(),
        new CycloneUnit.CycloneFields(),
        new CakeUnit.CakeFields("screen", "coarse screen", "2 %", "0 %", "20 %"),
        new CakeUnit.CakeFields("fibreSeparator", "fibre separator", "50 %", "10 %", "26 %"));
  }

  /**
   * Where it stands.
   *
   * @return its name, its streams and the share of the day that it runs
   */
  Place place();

  /**
   * How it divides a feed.
   *
   * @param c the conditions under which it runs
   * @param stream what flows in, on the average of the day
   * @param share share of the day in which it flows, above 0 to 1
   * @return what its kernel makes of it; empty when nothing can settle
   */
  Optional<Divided> divide(Conditions c, Stream stream, double share);

  @Override
  default String name() {
    return place().name();
  }

  @Override
  default List<String> inlets() {
    return place().inlets();
  }

  @Override
  default List<String> outlets() {
    return List.of(place().solids(), place().liquid());
  }

  @Override
  default List<String> byGravity() {
    return List.of(place().liquid());
  }

  @Override
  default Unit built(Conditions c) {
    return new Built(this, c);
  }

  @Override
  default double seen(SteadyBalance balance) {
    return Math.min(balance.duties().get(name()), place().runningShare());
  }

  @Override
  default double seen(Conditions c) {
    return c.share(place().runningShare());
  }

  /**
   * What leaves by the first outlet.
   *
   * @param partition shares of the feed
   * @return that, with nothing to say of the feed
   */
  default Divided divided(Partition partition) {
    return new Divided(partition, List.of());
  }

  /**
   * What leaves by the first outlet, with something to say of the feed.
   *
   * @param partition shares of the feed
   * @param reason what is the matter
   * @param value the number that shows it
   * @param wanted what was wanted instead
   * @return that, with a note
   */
  default Divided divided(Partition partition, Reason reason, double value, double wanted) {
    return new Divided(partition, List.of(new UnitNote(name(), reason, value, wanted)));
  }

  /**
   * A separator in a network.
   *
   * @param of the separator
   * @param c the conditions under which it runs
   */
  record Built(Separator of, Conditions c) implements Unit {
    @Override
    public String name() {
      return of.name();
    }

    @Override
    public List<String> inlets() {
      return of.inlets();
    }

    @Override
    public List<String> outlets() {
      return of.outlets();
    }

    @Override
    public Split split(Stream feed) {
      return split(feed, 1);
    }

    @Override
    public Split split(Stream feed, double duty) {
      double share = Math.min(duty, of.seen(c));
      Divided divided = of.divide(c, feed, share).orElseGet(() -> passed(feed));
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

    /** All passes on; a note says so where the liquor is too thick to settle in. */
    private Divided passed(Stream stream) {
      Partition nothing = Partition.nothing(stream.constituents().sandClasses().size());
      double solids = stream.manureTotalSolids();
      return stream.waterKgps() > 0 && of.role() != Role.SCREENS
          ? of.divided(nothing, Reason.TOO_THICK, solids, solids)
          : of.divided(nothing);
    }
  }
}
