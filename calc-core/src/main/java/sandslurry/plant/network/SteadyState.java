package sandslurry.plant.network;

import java.util.Optional;

/** What the search for a steady balance of a network ended with. */
public sealed interface SteadyState permits SteadyBalance, NoSteadyState {
  /**
   * The balance.
   *
   * @return empty where none was found
   */
  default Optional<SteadyBalance> balance() {
    return Optional.empty();
  }

  /**
   * Why there is none.
   *
   * @return empty where a balance was found
   */
  default Optional<NoSteadyState> failure() {
    return Optional.empty();
  }
}
