package sandslurry.assessment.stop;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.SlidingBed;
import sandslurry.transport.bed.StoppedLine;

/**
 * The line stopped full.
 *
 * @param filling what it is full of
 * @param lying what of the sand lies on the floor, and the liquid after the rest
 * @param bedMoves whether a run moves its sand as a sliding bed while the line runs
 * @param runs each run
 * @param plugs what packs at low points and feet of steep runs
 * @param restart what friction, yield and plugs hold it with
 * @param pressures what there is to restart it with and against
 * @param flush what a flush with water takes; empty when no flow clears the line
 * @param supply what the supply of the flush gives, when there is one
 * @param supplyVolumeM3 volume of the supply, when given [m3]
 */
public record StopResult(
    Filling filling,
    Lying lying,
    boolean bedMoves,
    List<StoppedRun> runs,
    List<Plug> plugs,
    StoppedLine.Restart restart,
    Pressures pressures,
    Optional<FlushNeed> flush,
    Optional<FlushFlow> supply,
    OptionalDouble supplyVolumeM3) {
  /** Copies the lists. */
  public StopResult {
    runs = List.copyOf(runs);
    plugs = List.copyOf(plugs);
  }

  /**
   * What a line is full of.
   *
   * @param sandFraction volume fraction of sand in it
   * @param sandKg sand in it [kg]
   * @param volumeM3 its volume [m3]
   */
  public record Filling(double sandFraction, double sandKg, double volumeM3) {}

  /**
   * Pressures at the start of a line that stands.
   *
   * @param staticPa static pressure, with the sand of climbing runs; that of falling ones is not
   *     taken to help [Pa]
   * @param availablePa what the pump, or without one the pit, has [Pa]
   * @param weakestPa rating of the weakest run; empty when none is known [Pa]
   */
  public record Pressures(double staticPa, double availablePa, OptionalDouble weakestPa) {}

  /**
   * What restarting is expected to take over what there is: above 1 it cannot be counted on.
   *
   * @return static pressure, bed, rested yield stress and seeping plugs over the pressure available
   */
  public double restartDemand() {
    return demand(expectedPa(), pressures.availablePa());
  }

  /**
   * The pressure that restarting is expected to take.
   *
   * @return at the start of the line, static pressure included; 0 or more [Pa]
   */
  public double expectedPa() {
    return Math.max(0, pressures.staticPa() + restart.expectedPa());
  }

  /** Whether the pump can start the line again. */
  public enum Start {
    /** Even the most that restarting may take. */
    SURE,
    /** What it is expected to take or less, but not the most. */
    UNCERTAIN,
    /** Not even the least that it can take, or not the bed on which the line runs. */
    NEVER
  }

  /**
   * Whether what drives the line can start it again.
   *
   * @return never also where the line runs on a sliding bed and the expected pressure is not there
   */
  public Start start() {
    if (pressures.availablePa() < leastPa() || bedMoves && restartDemand() > 1) {
      return Start.NEVER;
    }
    return pressures.availablePa() >= mostPa().orElse(Double.POSITIVE_INFINITY)
        ? Start.SURE
        : Start.UNCERTAIN;
  }

  /**
   * The least pressure that restarting can take.
   *
   * @return at the start of the line, static pressure included; 0 where the line falls so far that
   *     it starts by itself [Pa]
   */
  public double leastPa() {
    return Math.max(0, pressures.staticPa() + restart.lowPa());
  }

  /**
   * The most pressure that restarting may take.
   *
   * @return at the start of the line, static pressure included; empty when a plug that wedges is
   *     beyond any pump [Pa]
   */
  public OptionalDouble mostPa() {
    OptionalDouble high = restart.highPa();
    return high.isPresent()
        ? OptionalDouble.of(Math.max(0, pressures.staticPa() + high.getAsDouble()))
        : high;
  }

  /**
   * Whether sand lies on the floor of some run once the line has stopped.
   *
   * @return true if there is a bed
   */
  public boolean lies() {
    return runs.stream().anyMatch(run -> run.bedShare() > 0);
  }

  private static double demand(double neededPa, double availablePa) {
    return neededPa <= 0 ? 0 : availablePa > 0 ? neededPa / availablePa : Double.MAX_VALUE;
  }

  /**
   * What of the sand of a stopped line lies on the floor.
   *
   * @param running share of the sand that lay on the floor of each run while the line ran
   * @param atRest share of the sand that was afloat which settles in a long rest
   * @param thixotropy yield stress after the rest over that while the liquid flows
   * @param restedYieldPa yield stress after the rest [Pa]
   */
  public record Lying(
      List<Double> running, double atRest, double thixotropy, double restedYieldPa) {
    /** Copies the list. */
    public Lying {
      running = List.copyOf(running);
    }

    /**
     * Yield stress while the liquid flows.
     *
     * @return the yield stress [Pa]
     */
    double flowingYieldPa() {
      return restedYieldPa / thixotropy;
    }

    /**
     * Share of the sand of a run that lies.
     *
     * @param run the run, from 0
     * @return the share, 0 to 1
     */
    double share(int run) {
      return running.get(run) + (1 - running.get(run)) * atRest;
    }

    /**
     * Volume of sand that lies over volume of the run: what lay while the line ran moved at part of
     * its velocity, so there is more of it.
     *
     * @param sandFraction volume fraction of sand in what the line carries
     * @param run the run, from 0
     * @return the fraction, at most that of a bed that nearly fills the pipe
     */
    double fraction(double sandFraction, int run) {
      double bed =
          SlidingBed.formedShare(running.get(run), sandFraction)
              + (1 - running.get(run)) * atRest * sandFraction / SlidingBed.VOLUME_FRACTION;
      return Math.min(bed, SlidingBed.MOST_SHARE) * SlidingBed.VOLUME_FRACTION;
    }
  }

  /**
   * Sand packed full at a low point, or at the foot of a run.
   *
   * @param where where it lies
   * @param parts the plug, in the order of flow
   * @param boreM the least bore that it fills [m]
   * @param frictionPa pressure beyond its weight that moves it when liquid seeps through [Pa]
   * @param wedgedPa the same when it is pushed like a cork; empty when beyond any pump [Pa]
   * @param movableM length beyond which the pressure left for it does not move it like a cork;
   *     empty without a pump, or where it slides by itself [m]
   */
  public record Plug(
      String where,
      PackedPlug parts,
      double boreM,
      double frictionPa,
      OptionalDouble wedgedPa,
      OptionalDouble movableM) {
    /**
     * Least length over bore of a plug that counts as one: a shorter heap in a bend stays below the
     * crown, and even pushed like a cork it moves at less than 3 kPa in a bore of 300 mm (a choice
     * of this program, no source).
     */
    private static final double LEAST_BORES = 0.5;

    /**
     * Says whether it fills the section.
     *
     * @return true from a length of half a bore on
     */
    boolean fills() {
      return parts.lengthM() >= LEAST_BORES * boreM;
    }

    /**
     * Says whether the pressure left for it moves it however it is pushed.
     *
     * @return false when it is longer than that pressure moves like a cork
     */
    public boolean movable() {
      return movableM.isEmpty() || parts.lengthM() <= movableM.getAsDouble();
    }
  }

  /**
   * What a flush with water takes.
   *
   * @param clearingM3ps flow rate that carries off a bed in every run; 0 without sand [m3/s]
   * @param strippingM3ps flow rate at which water strips the liquid off the wall of every run; 0
   *     without yield stress [m3/s]
   * @param volumeM3 volume of water [m3]
   */
  public record FlushNeed(double clearingM3ps, double strippingM3ps, double volumeM3) {
    /**
     * The flow rate that does both.
     *
     * @return the greater of the two [m3/s]
     */
    public double flowM3ps() {
      return Math.max(clearingM3ps, strippingM3ps);
    }

    /**
     * How long the flush takes.
     *
     * @return volume over flow rate [s]
     */
    public double timeS() {
      return volumeM3 / flowM3ps();
    }

    /**
     * Says whether a supply flows, carries off a bed and lasts.
     *
     * @param supplyM3ps flow rate that the supply gives against the line [m3/s]
     * @param supplyVolumeM3 volume that it holds [m3]
     * @return true if both suffice; false for NaN
     */
    boolean givenBy(double supplyM3ps, double supplyVolumeM3) {
      return supplyM3ps > 0 && supplyM3ps >= clearingM3ps && supplyVolumeM3 >= volumeM3;
    }
  }

  /**
   * What the supply of a flush gives against what stands in the line.
   *
   * @param solved whether it was worked out against the line, and not taken as given
   * @param startPa pressure that starts the standing liquid: static, and its rested yield stress
   *     along the line [Pa]
   * @param startAvailablePa pressure that the supply has while nothing flows; of a given flow what
   *     it takes to drive it through the clean line [Pa]
   * @param cleanM3ps flow into the clean line; empty when none [m3/s]
   * @param loadedM3ps least flow while the water pushes out what stood in the line; empty when none
   *     [m3/s]
   * @param bedM3ps flow over the settled bed; empty when none [m3/s]
   * @param runs the way over the bed in each run, and the stress of the water on its wall
   */
  public record FlushFlow(
      boolean solved,
      double startPa,
      double startAvailablePa,
      OptionalDouble cleanM3ps,
      OptionalDouble loadedM3ps,
      OptionalDouble bedM3ps,
      List<OverBed> runs) {
    /** Copies the list. */
    public FlushFlow {
      runs = List.copyOf(runs);
    }

    /**
     * What starting the standing liquid takes over what the supply has.
     *
     * @return the ratio; above 1 nothing moves
     */
    public double startDemand() {
      return demand(startPa, startAvailablePa);
    }

    /**
     * Stress that strips the liquid off the wall over that of the water, in the worst run.
     *
     * @return the ratio; above 1 water channels through what stays on the wall
     */
    public double stripDemand() {
      return runs.stream().mapToDouble(OverBed::stripDemand).max().orElse(0);
    }

    /**
     * Says whether the water over the bed is as fast in every run as it must be in the empty pipe.
     *
     * @return true if it is
     */
    boolean wearsBedOff() {
      return runs.stream()
          .allMatch(
              run ->
                  run.clearingMps().isPresent()
                      && run.velocityMps() >= run.clearingMps().getAsDouble());
    }
  }

  /**
   * The way of a flush through a run.
   *
   * @param run its name
   * @param velocityMps velocity in the section that the bed leaves; 0 when nothing flows [m/s]
   * @param clearingMps velocity that carries off a bed; empty when none was found [m/s]
   * @param wallStressPa stress of the water on the wall of the clean run; 0 when nothing flows [Pa]
   * @param strippingPa stress that strips the liquid off the wall; 0 without yield stress [Pa]
   */
  public record OverBed(
      String run,
      double velocityMps,
      OptionalDouble clearingMps,
      double wallStressPa,
      double strippingPa) {
    double stripDemand() {
      return demand(strippingPa, wallStressPa);
    }
  }

  /**
   * A run that has stopped.
   *
   * @param run its name
   * @param bedM depth of the bed [m]
   * @param bedShare share of the section that it takes
   * @param finestMps settling velocity of the finest sand at rest, hindered; empty where it need
   *     not settle [m/s]
   * @param settlingS time until the finest sand lies, on the floor or, where it slides, at the
   *     foot; empty when its yield stress may hold it [s]
   * @param coarseS time in which sand of d85 lies on the floor; empty when a yield stress may hold
   *     it [s]
   * @param slopeRad slope of the run, without sign [rad]
   * @param slideRad slope above which the bed slides [rad]
   * @param plugM length packed full at the foot, 0 when nothing slides [m]
   * @param clearingMps velocity of water that carries the bed off; empty when none was found [m/s]
   */
  public record StoppedRun(
      String run,
      double bedM,
      double bedShare,
      OptionalDouble finestMps,
      OptionalDouble settlingS,
      OptionalDouble coarseS,
      double slopeRad,
      double slideRad,
      double plugM,
      OptionalDouble clearingMps) {}
}
