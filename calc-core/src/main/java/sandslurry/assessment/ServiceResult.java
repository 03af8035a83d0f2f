package sandslurry.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Estimate;
import sandslurry.design.PumpSpec.MotorSpec;
import sandslurry.pump.BestPoint;
import sandslurry.pump.FlowRipple;
import sandslurry.pump.OperatingRegion;
import sandslurry.pump.ReliefWindow;
import sandslurry.pump.RepresentativeViscosity;
import sandslurry.pump.SuctionEnergy;
import sandslurry.pump.SuctionMargin;
import sandslurry.pump.WearIndex;
import sandslurry.separation.PartFullPipe.PartFullFlow;
import sandslurry.separation.SelfCleansing;
import sandslurry.transport.ClearLiquid.Regime;
import sandslurry.transport.PackedPlug;
import sandslurry.transport.StoppedLine;

/**
 * What came of a line in service beside its design state, in plain SI.
 *
 * @param states every state in which the line was judged
 * @param dutyBand the duty of rotodynamic pumps by every correction for sand and liquid; empty when
 *     none makes a difference
 * @param governing the state that stands worst; empty when none was judged
 * @param pulsation the pulsing of a piston pump whose cylinders are known
 * @param surges the surge in every standard run when the flow is stopped at once
 * @param stop the line stopped full of sand
 * @param days a day of pumping in each state in which the pumps set the flow, the one that it is
 *     judged by first; only a held flow when there is no such state
 * @param screw the screw conveyor
 * @param gravityRun the gravity pipe
 */
public record ServiceResult(
    List<StateResult> states,
    List<DutyRow> dutyBand,
    Optional<StateResult> governing,
    Optional<Pulsation> pulsation,
    List<Surge> surges,
    Optional<Stop> stop,
    List<Day> days,
    Optional<Screw> screw,
    Optional<GravityRun> gravityRun) {
  /** The state that asks every derating for sand and believes the gravest: the least duty. */
  public static final String LEAST_STATE = "sand takes most head by any method";

  /** Copies the lists. */
  public ServiceResult {
    states = List.copyOf(states);
    dutyBand = List.copyOf(dutyBand);
    surges = List.copyOf(surges);
    days = List.copyOf(days);
  }

  /**
   * The day of pumping that stands for all.
   *
   * @return the first of them; empty when no daily volume is given
   */
  public Optional<Day> day() {
    return days.stream().findFirst();
  }

  /**
   * The correction by which the pumps drive least.
   *
   * @return the row without a duty, or that of the least flow; empty without a band
   */
  public Optional<DutyRow> leastDuty() {
    return dutyBand.stream().min(Comparator.comparingDouble(row -> row.flowM3ps().orElse(-1)));
  }

  /**
   * The duty of rotodynamic pumps, as designed, by one correction for sand and liquid.
   *
   * @param solids the derating for sand; empty without sand
   * @param viscosity the representative viscosity of the liquid
   * @param headRatio head with sand over head without, of the first pump
   * @param viscousRatio head and flow in the liquid over those in water, of the first pump at its
   *     best point
   * @param viscousEfficiencyRatio efficiency in the liquid over that in water, of the first pump
   * @param flowM3ps flow of the duty; empty when there is no stable one [m3/s]
   * @param run the run that stands worst at that flow
   * @param velocityMps its velocity in the largest bore [m/s]
   * @param toPassMps the velocity that it needs to pass; empty when not turbulent [m/s]
   * @param severity how its sand stands
   * @param believed whether the pump is judged by this correction
   */
  public record DutyRow(
      Optional<String> solids,
      Optional<RepresentativeViscosity> viscosity,
      double headRatio,
      double viscousRatio,
      double viscousEfficiencyRatio,
      OptionalDouble flowM3ps,
      Optional<String> run,
      OptionalDouble velocityMps,
      OptionalDouble toPassMps,
      Severity severity,
      boolean believed) {}

  /**
   * The line in one state.
   *
   * @param name what the state is
   * @param asked whether the design asked for it, beside the flows of every line
   * @param severity how it stands
   * @param reasons what is amiss, gravest first; empty when nothing is
   * @param point where it runs; empty when it does not
   */
  public record StateResult(
      String name, boolean asked, Severity severity, List<String> reasons, Optional<Point> point) {
    /** Copies the list. */
    public StateResult {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * Where pump and line run in a state.
   *
   * @param flowM3ps flow of mixture [m3/s]
   * @param sandFraction volume fraction of sand
   * @param densityKgM3 density of the mixture [kg/m3]
   * @param temperatureK temperature of the liquid [K]
   * @param headM head asked of the pumps, in metres of mixture [m]
   * @param run the run that stands worst
   * @param regime how the carrier flows in it
   * @param velocityMps its velocity in the largest bore [m/s]
   * @param limitMps its deposition limit in turbulent flow; empty without sand [m/s]
   * @param toPassMps the velocity that it needs to pass; empty without sand [m/s]
   * @param pressurePa the greatest gauge pressure in the line [Pa]
   * @param driven whether the pumps set the flow
   * @param shaftW power at all shafts; empty when the flow is set otherwise [W]
   * @param inputW power drawn by all drives [W]
   * @param wear wear against the design flow
   * @param pumps each pump
   */
  public record Point(
      double flowM3ps,
      double sandFraction,
      double densityKgM3,
      double temperatureK,
      double headM,
      String run,
      Regime regime,
      double velocityMps,
      OptionalDouble limitMps,
      OptionalDouble toPassMps,
      double pressurePa,
      boolean driven,
      OptionalDouble shaftW,
      OptionalDouble inputW,
      WearIndex wear,
      List<PumpPoint> pumps) {
    /** Copies the list. */
    public Point {
      pumps = List.copyOf(pumps);
    }
  }

  /**
   * One pump in a state.
   *
   * @param name what it is called
   * @param flowM3ps its flow; 0 when the others keep it shut [m3/s]
   * @param headM its head [m]
   * @param efficiency its efficiency; 0 when shut
   * @param shutOffM its head at the least flow of its curve; that at its flow for a piston pump [m]
   * @param shaftW power at its shaft [W]
   * @param specificSpeed its specific speed, metric; empty for a piston pump
   * @param region where it may work; empty for a piston pump
   * @param motor its motor, when known
   * @param suction its suction side, when the design has one
   */
  public record PumpPoint(
      String name,
      double flowM3ps,
      double headM,
      double efficiency,
      double shutOffM,
      double shaftW,
      OptionalDouble specificSpeed,
      Optional<OperatingRegion> region,
      Optional<MotorSpec> motor,
      Optional<SuctionPoint> suction) {}

  /**
   * The suction side of one pump in a state.
   *
   * @param floodM level of the pit above the pump [m]
   * @param lossM head lost on the way [m]
   * @param accelerationM head that the pulsing of a piston pump takes [m]
   * @param availableM NPSH available [m]
   * @param requiredM NPSH required in this liquid; empty when no points reach this flow [m]
   * @param viscousRatio NPSH required in this liquid over that in water
   * @param inlet how hard the inlet works; empty when its NPSH at the best point is not known
   * @param margin what must be left over
   * @param velocityMps velocity in the largest bore [m/s]
   * @param toPassMps the velocity that keeps its sand moving; empty without sand [m/s]
   * @param severity how it stands as far as sand goes
   */
  public record SuctionPoint(
      double floodM,
      double lossM,
      double accelerationM,
      double availableM,
      OptionalDouble requiredM,
      double viscousRatio,
      Optional<Inlet> inlet,
      SuctionMargin margin,
      double velocityMps,
      OptionalDouble toPassMps,
      Severity severity) {
    /**
     * Says whether the velocity is that asked for, which alone does not make a pass.
     *
     * @return true if it is known and reached
     */
    public boolean fastEnough() {
      return toPassMps.isPresent() && velocityMps >= toPassMps.getAsDouble();
    }
  }

  /**
   * How hard the inlet of a rotodynamic pump works.
   *
   * @param best best point of the whole impeller in water
   * @param requiredM NPSH required there in water [m]
   * @param energy suction energy, with the bore of the suction line for that of the nozzle
   */
  public record Inlet(BestPoint best, double requiredM, SuctionEnergy energy) {
    /**
     * Suction specific speed.
     *
     * @return metric; the US number is 51.6 times it
     */
    public double specificSpeed() {
      return best.suctionSpecificSpeed(requiredM);
    }
  }

  /**
   * The pulsing of a piston pump.
   *
   * @param ripple flow in the line over the mean flow
   * @param accelerationM head on top of the mean at the worst moment, in metres of mixture [m]
   * @param peakPa greatest pressure with that head [Pa]
   * @param weakestPa rating of the weakest run; empty when none is known [Pa]
   * @param relief where the relief may be set; empty when no setting fits, or no rating is known
   * @param runs each run in which sand may settle
   * @param passed share of the swing of the pump that enters the line
   * @param vessel the air vessel, when its gas is given
   */
  public record Pulsation(
      FlowRipple ripple,
      double accelerationM,
      double peakPa,
      OptionalDouble weakestPa,
      Optional<ReliefWindow> relief,
      List<Pulse> runs,
      double passed,
      Optional<Vessel> vessel) {
    /** Copies the list. */
    public Pulsation {
      runs = List.copyOf(runs);
    }
  }

  /**
   * An air vessel.
   *
   * @param gasM3 its gas at the pressure of the line [m3]
   * @param absolutePa that pressure [Pa]
   * @param inertanceKgM4 inertance of the line [kg/m4]
   * @param swellsPs swells of the flow per second [1/s]
   * @param ownPs frequency of gas and line [1/s]
   * @param damps whether it damps at all
   * @param storedM3 volume of a swell above the mean [m3]
   * @param goodGasM3 gas that would let {@value #GOOD_SHARE} of the swing through [m3]
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
    public static final double GOOD_SHARE = 0.05;
  }

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
    public static final double SHORT_FALL = 0.05;

    /**
     * Says whether sand settles in the pauses.
     *
     * @return true when the velocity falls below the limit
     */
    public boolean settles() {
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

  /**
   * The surge in a run.
   *
   * @param run its name
   * @param waveMps speed of the pressure wave [m/s]
   * @param velocityMps velocity stopped [m/s]
   * @param surgePa surge [Pa]
   * @param workingPa greatest working pressure in the run [Pa]
   * @param ratingPa rating; empty when none is known [Pa]
   * @param stopS even time of stopping that would keep the rating; empty when none is needed or
   *     helps [s]
   * @param slow the stop in the time given, when one is
   * @param lowest the low half of the wave
   */
  public record Surge(
      String run,
      double waveMps,
      double velocityMps,
      double surgePa,
      double workingPa,
      OptionalDouble ratingPa,
      OptionalDouble stopS,
      Optional<SlowStop> slow,
      LowWave lowest) {
    /**
     * The rise that the run is judged by.
     *
     * @return that of the stop in the time given, or else of a sudden one [Pa]
     */
    public double judgedPa() {
      return slow.map(SlowStop::surgePa).orElse(surgePa);
    }
  }

  /**
   * A stop that takes time.
   *
   * @param timeS the time given [s]
   * @param returnS time of the wave to the end of the line and back [s]
   * @param surgePa pressure rise [Pa]
   */
  public record SlowStop(double timeS, double returnS, double surgePa) {}

  /**
   * The low half of the wave at the end of a run where the pressure is least.
   *
   * @param elevationM height of that place above the start of the line [m]
   * @param highPoint whether the line lies lower on both sides of it
   * @param steadyPa gauge pressure there before the stop [Pa]
   * @param lowestPa gauge pressure that the wave would bring [Pa]
   * @param vapourPa gauge pressure at which the liquid boils [Pa]
   */
  public record LowWave(
      double elevationM, boolean highPoint, double steadyPa, double lowestPa, double vapourPa) {
    /**
     * Says whether the column parts.
     *
     * @return true when the wave would go below the vapour pressure
     */
    public boolean parts() {
      return lowestPa < vapourPa;
    }
  }

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
  public record Stop(
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
    public Stop {
      runs = List.copyOf(runs);
      plugs = List.copyOf(plugs);
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

  /**
   * A day of pumping.
   *
   * @param state the state that it was worked out for
   * @param runningS time that the pumps run [s]
   * @param startsPs the most frequent starts, when a batch is given [1/s]
   * @param energyJ energy drawn [J]
   * @param sandKg sand moved [kg]
   * @param energyPerSandJpKg energy drawn per sand moved; empty without sand [J/kg]
   * @param wear rate of wear of the line against that at the design flow
   */
  public record Day(
      String state,
      double runningS,
      OptionalDouble startsPs,
      double energyJ,
      double sandKg,
      OptionalDouble energyPerSandJpKg,
      WearIndex wear) {}

  /**
   * The screw conveyor.
   *
   * @param loading filling of the trough that the load asks
   * @param capacityM3ps capacity at the filling for abrasive material [m3/s]
   * @param powerW power at its shaft [W]
   * @param loadM3ps the load that it is judged by [m3/s]
   * @param densityKgM3 mass of the material over its volume [kg/m3]
   * @param typed whether that load was typed
   * @param pens the load of the pens, when there are some and the time of scraping is given
   */
  public record Screw(
      Estimate loading,
      double capacityM3ps,
      double powerW,
      double loadM3ps,
      double densityKgM3,
      boolean typed,
      Optional<PenFeed> pens) {}

  /**
   * What the pens bring to the screw.
   *
   * @param batchM3 volume scraped at once from all pens, at its greatest [m3]
   * @param scrapeS time in which it comes [s]
   * @param densityKgM3 its density [kg/m3]
   */
  public record PenFeed(double batchM3, double scrapeS, double densityKgM3) {
    /**
     * The load.
     *
     * @return batch over time [m3/s]
     */
    public double loadM3ps() {
      return batchM3 / scrapeS;
    }
  }

  /**
   * The gravity pipe.
   *
   * @param greatestM3ps the most that it carries without pressure [m3/s]
   * @param flow the flow; empty when it cannot carry it
   * @param cleansing whether it cleans itself
   * @param reynolds Reynolds number of the flow
   */
  public record GravityRun(
      double greatestM3ps,
      Optional<PartFullFlow> flow,
      Optional<SelfCleansing> cleansing,
      double reynolds) {}
}
