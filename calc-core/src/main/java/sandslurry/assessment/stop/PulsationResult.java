package sandslurry.assessment.stop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.pump.piston.FlowRipple;
import sandslurry.pump.piston.ReliefWindow;
import sandslurry.transport.bed.SandCarriage;

/**
 * The pulsing of a piston pump.
 *
 * @param ripple flow in the line over the mean flow
 * @param accelerationM greatest head that speeds up the line, in metres of mixture [m]
 * @param meanPa pressure at the start of the line at the mean flow [Pa]
 * @param peak the moment of the greatest pressure
 * @param weakestPa rating of the weakest run; empty when none is known [Pa]
 * @param relief where the relief may be set; empty when no setting fits, or no rating is known
 * @param runs each run in which sand settles in the pauses of a stroke or could
 * @param strained each run whose sand the yield stress carries at the mean flow but not surely at
 *     the greatest of a stroke
 * @param passed share of the swing of the pump that enters the line
 * @param vessel the air vessel, when its gas is given
 */
public record PulsationResult(
    FlowRipple ripple,
    double accelerationM,
    double meanPa,
    Peak peak,
    OptionalDouble weakestPa,
    Optional<ReliefWindow> relief,
    List<Pulse> runs,
    List<Strained> strained,
    double passed,
    Optional<Vessel> vessel) {
  /** Copies the lists. */
  public PulsationResult {
    runs = List.copyOf(runs);
    strained = List.copyOf(strained);
  }

  /**
   * Greatest pressure at the start of the line within a cycle.
   *
   * @return the pressure [Pa]
   */
  public double peakPa() {
    return peak.pressurePa();
  }

  /**
   * The moment of a cycle at which static pressure, friction at the flow of that moment and inertia
   * together are greatest.
   *
   * @param flowRatio flow in the line over the mean flow
   * @param steadyPa pressure at the start of the line if that flow were steady [Pa]
   * @param accelerationM head that speeds up the line at that moment, in metres of mixture [m]
   * @param pressurePa both together [Pa]
   */
  public record Peak(double flowRatio, double steadyPa, double accelerationM, double pressurePa) {}

  /**
   * An air vessel.
   *
   * @param gasM3 its gas at the pressure of the line [m3]
   * @param absolutePa that pressure [Pa]
   * @param inertanceKgM4 inertance of the line [kg/m4]
   * @param swellsPs swells of the flow per second [1/s]
   * @param ownPs frequency of gas and line [1/s]
   * @param damps whether it damps at all; not where a swell fills it
   * @param storedM3 volume of a swell above the mean [m3]
   * @param goodGasM3 gas that would let {@value #GOOD_SHARE} of the swing through and bear a swell
   *     [m3]
   */
  public record Vessel(
      double gasM3,
      double absolutePa,
      double inertanceKgM4,
      double swellsPs,
      double ownPs,
      boolean damps,
      double storedM3,
      double goodGasM3) {
    /** Share of the swing that a good vessel leaves (common practice, no source). */
    static final double GOOD_SHARE = 0.05;

    /**
     * Whether a swell fills it with liquid.
     *
     * @return true when the swell is as large as the gas
     */
    boolean fills() {
      return storedM3 >= gasM3;
    }
  }

  /**
   * A run of thick liquid whose plug the greatest flow of a stroke breaks.
   *
   * @param run its name
   * @param greatestMps greatest velocity within a cycle [m/s]
   * @param plugShare share of that flow that is not sheared
   * @param support what carries the sand there
   */
  public record Strained(
      String run, double greatestMps, double plugShare, SandCarriage.Support support) {}

  /**
   * A run whose flow pulses.
   *
   * @param run its name
   * @param leastMps least velocity within a cycle [m/s]
   * @param limitMps deposition limit [m/s]
   * @param belowShare share of the cycle below the limit
   * @param longestS the longest time without a break below the limit [s]
   * @param fallM how far the coarse sand falls in that time in still liquid [m]
   * @param boreM the bore [m]
   * @param settlingS time in which the coarse sand falls through the bore; empty when it does not
   *     [s]
   * @param greatestMps greatest velocity within a cycle, which must lift again what has settled
   *     [m/s]
   * @param toPassMps velocity that keeps sand moving with margin [m/s]
   */
  public record Pulse(
      String run,
      double leastMps,
      double limitMps,
      double belowShare,
      double longestS,
      double fallM,
      double boreM,
      OptionalDouble settlingS,
      double greatestMps,
      double toPassMps) {
    /** A fall up to this share of the bore lays no bed (a choice of this program, no source). */
    static final double SHORT_FALL = 0.05;

    /**
     * Says whether sand settles in the pauses.
     *
     * @return true when the velocity falls below the limit
     */
    boolean settles() {
      return leastMps < limitMps;
    }

    /**
     * Says whether the pauses are so short that no bed forms and the stroke lifts what has sunk.
     *
     * @return true when both hold
     */
    public boolean brief() {
      return fallM <= SHORT_FALL * boreM && greatestMps >= toPassMps;
    }
  }
}
