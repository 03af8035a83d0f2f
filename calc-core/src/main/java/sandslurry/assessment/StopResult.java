package sandslurry.assessment;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.StoppedLine;

/**
 * The line stopped full.
 *
 * @param sandFraction volume fraction of sand in the line
 * @param sandKg sand in the line [kg]
 * @param volumeM3 volume of the line [m3]
 * @param runs each run
 * @param plugs what packs at low points and feet of steep runs
 * @param restart what friction, yield and plugs hold it with
 * @param staticPa static pressure at its start, with the sand of climbing runs; that of falling
 *     ones is not taken to help [Pa]
 * @param availablePa pressure that the pump, or without one the pit, has at its start [Pa]
 * @param weakestPa rating of the weakest run; empty when none is known [Pa]
 * @param flush what a flush with water takes; empty when no flow clears
 * @param supply what the supply of the flush gives, when there is one
 * @param supplyVolumeM3 volume of the supply, when given [m3]
 */
public record StopResult(
    double sandFraction,
    double sandKg,
    double volumeM3,
    List<StoppedRun> runs,
    List<Plug> plugs,
    StoppedLine.Restart restart,
    double staticPa,
    double availablePa,
    OptionalDouble weakestPa,
    Optional<StoppedLine.Flush> flush,
    Optional<FlushFlow> supply,
    OptionalDouble supplyVolumeM3) {
  /** Copies the lists. */
  public StopResult {
    runs = List.copyOf(runs);
    plugs = List.copyOf(plugs);
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
     * Says whether the pressure left for it moves it however it is pushed.
     *
     * @return false when it is longer than that pressure moves like a cork
     */
    public boolean movable() {
      return movableM.isEmpty() || parts.lengthM() <= movableM.getAsDouble();
    }
  }

  /**
   * What the supply of a flush gives.
   *
   * @param solved whether it was worked out against the line, and not taken as given
   * @param cleanM3ps flow into the clean line; empty when none [m3/s]
   * @param loadedM3ps flow while the line is full of its sand; empty when none [m3/s]
   * @param bedM3ps flow over the settled bed; empty when none [m3/s]
   * @param runs the way over the bed in each run
   */
  public record FlushFlow(
      boolean solved,
      OptionalDouble cleanM3ps,
      OptionalDouble loadedM3ps,
      OptionalDouble bedM3ps,
      List<OverBed> runs) {
    /** Copies the list. */
    public FlushFlow {
      runs = List.copyOf(runs);
    }

    /**
     * Says whether the water over the bed is as fast in every run as it must be in the empty pipe.
     *
     * @return true if it is
     */
    public boolean wearsBedOff() {
      return runs.stream()
          .allMatch(
              run ->
                  run.clearingMps().isPresent()
                      && run.velocityMps() >= run.clearingMps().getAsDouble());
    }
  }

  /**
   * The way of a flush over the bed of a run.
   *
   * @param run its name
   * @param velocityMps velocity in the section that the bed leaves; 0 when nothing flows [m/s]
   * @param clearingMps velocity that carries off a bed; empty when none was found [m/s]
   */
  public record OverBed(String run, double velocityMps, OptionalDouble clearingMps) {}

  /**
   * A run that has stopped.
   *
   * @param run its name
   * @param bedM depth of the bed [m]
   * @param bedShare share of the section that it takes
   * @param settlingS time until the finest sand lies, on the floor or, where it slides, at the
   *     foot; empty when the liquid holds it [s]
   * @param coarseS time in which sand of d85 lies on the floor; empty when the liquid holds it [s]
   * @param slopeRad slope of the run, without sign [rad]
   * @param slideRad slope above which the bed slides [rad]
   * @param plugM length packed full at the foot, 0 when nothing slides [m]
   * @param clearingMps velocity of water that carries the bed off; empty when none was found [m/s]
   */
  public record StoppedRun(
      String run,
      double bedM,
      double bedShare,
      OptionalDouble settlingS,
      OptionalDouble coarseS,
      double slopeRad,
      double slideRad,
      double plugM,
      OptionalDouble clearingMps) {}
}
