package sandslurry.circuit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A way in which a plant runs for some hours: recycled liquid dilutes, or wash water does.
 *
 * @param name what it is called
 * @param network the units as they are connected in this mode, pits among them
 * @param feeds the streams from outside while it runs
 */
public record Mode(String name, Network network, Map<String, Stream> feeds) {
  /** Copies the map, order kept. */
  public Mode {
    feeds = Collections.unmodifiableMap(new LinkedHashMap<>(feeds));
  }

  /**
   * The balance that this mode would come to if it ran for good.
   *
   * @return the balance, or why there is none
   */
  public SteadyState steadyState() {
    return network.solve(feeds);
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
