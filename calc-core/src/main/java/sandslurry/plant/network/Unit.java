package sandslurry.plant.network;

import java.util.List;
import java.util.Optional;
import sandslurry.plant.Stream;

/**
 * One step of a plant: it mixes the streams that flow in and divides the mixture among the streams
 * that flow out. Streams are known by name; a network connects equal names.
 *
 * <p>How a unit divides may depend on what is fed to it: thick liquor settles less sand.
 */
public interface Unit {
  /**
   * What the unit is called.
   *
   * @return a name that no other unit of the network has
   */
  String name();

  /**
   * The streams that flow in.
   *
   * @return their names
   */
  List<String> inlets();

  /**
   * The streams that flow out.
   *
   * @return their names, in the order of the shares of {@link #split}
   */
  List<String> outlets();

  /**
   * This unit where it is a pit, which holds what comes.
   *
   * @return the pit
   */
  default Optional<Pit> asPit() {
    return Optional.empty();
  }

  /**
   * How the unit divides a feed. Asked of any feed, an empty one too.
   *
   * @param feed all inlets, mixed
   * @return shares by outlet and constituent
   */
  Split split(Stream feed);

  /**
   * How the unit divides a feed that comes in a share of the time only.
   *
   * @param feed all inlets, mixed, on the average of the time
   * @param duty share of the time in which it comes, above 0 to 1
   * @return shares by outlet and constituent
   */
  default Split split(Stream feed, double duty) {
    return split(feed.times(1 / duty));
  }
}
