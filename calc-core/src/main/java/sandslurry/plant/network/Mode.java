package sandslurry.plant.network;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import sandslurry.plant.Stream;

/**
 * A way in which a plant runs for some hours: recycled liquid dilutes, or wash water does.
 *
 * @param name what it is called
 * @param network the units as they are connected in this mode, pits among them
 * @param feeds the streams from outside while it runs
 * @param near a balance of a plant like it, of units of the same names, to look from; empty to
 *     start with pits full of water
 */
public record Mode(
    String name, Network network, Map<String, Stream> feeds, Optional<SteadyBalance> near) {
  /** Copies the map, order kept. */
  public Mode {
    feeds = Collections.unmodifiableMap(new LinkedHashMap<>(feeds));
  }

  /**
   * A mode of which nothing is known yet.
   *
   * @param name what it is called
   * @param network the units as they are connected in this mode, pits among them
   * @param feeds the streams from outside while it runs
   */
  public Mode(String name, Network network, Map<String, Stream> feeds) {
    this(name, network, feeds, Optional.empty());
  }

  /**
   * The balance that this mode comes to if it runs for good.
   *
   * @return the balance, or why there is none
   */
  public SteadyState steadyState() {
    return near.map(this::steadyState).orElseGet(() -> network.solve(feeds));
  }

  /**
   * The same, looked for from a balance of nearly the same feeds on.
   *
   * @param near a balance of the network of this mode
   * @return the balance, or why there is none
   */
  public SteadyState steadyState(SteadyBalance near) {
    return network.solve(feeds, near);
  }
}
