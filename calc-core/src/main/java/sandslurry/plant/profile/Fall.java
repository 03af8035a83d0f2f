package sandslurry.plant.profile;

import java.util.Optional;

/**
 * The fall of a stream that runs by gravity from one unit to another.
 *
 * @param stream its name
 * @param from the unit that it leaves
 * @param to the unit that it flows into
 * @param upstreamM lowest level from which it leaves [m]
 * @param downstreamM highest water against which it arrives [m]
 * @param need what fall it needs at its greatest flow rate; empty when its pipe is not known
 */
public record Fall(
    String stream,
    String from,
    String to,
    double upstreamM,
    double downstreamM,
    Optional<Need> need) {
  /** Levels are sums: what is less than this is no difference [m]. */
  static final double ROUNDING_M = 1e-9;

  /**
   * What fall a pipe or channel needs.
   *
   * @param alongM friction along it, or slope times length of one that runs part full [m]
   * @param endsM what entrance, fittings and exit take, and the depth in one that runs part full
   *     [m]
   * @param freeboardM how far it ends above the water that it flows into [m]
   */
  public record Need(double alongM, double endsM, double freeboardM) {
    /** Checks that nothing is below zero. */
    public Need {
      if (!(alongM >= 0 && endsM >= 0 && freeboardM >= 0)
          || !Double.isFinite(alongM + endsM + freeboardM)) {
        throw new IllegalArgumentException(
            "a fall that is needed is finite and not below 0 but was "
                + alongM
                + ", "
                + endsM
                + " and "
                + freeboardM
                + " m");
      }
    }

    /**
     * The fall needed.
     *
     * @return the sum of the three [m]
     */
    public double totalM() {
      return alongM + endsM + freeboardM;
    }
  }

  /**
   * The fall available.
   *
   * @return upstream less downstream level, at the worst [m]
   */
  public double availableM() {
    return upstreamM - downstreamM;
  }

  /**
   * The fall needed.
   *
   * @return that of the pipe; 0 where nobody knows it, for water needs some fall at least [m]
   */
  public double neededM() {
    return need.map(Need::totalM).orElse(0.0);
  }

  /**
   * Whether the water downstream reaches the outlet upstream.
   *
   * @return true when the unit upstream backs up
   */
  public boolean backsUp() {
    return availableM() <= 0;
  }

  /**
   * Whether the fall is enough.
   *
   * @return true when there is some and no less than is needed
   */
  public boolean enough() {
    return !backsUp() && availableM() >= neededM() - ROUNDING_M;
  }
}
