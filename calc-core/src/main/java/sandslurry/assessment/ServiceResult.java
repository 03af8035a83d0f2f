package sandslurry.assessment;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.correlation.Estimate;
import sandslurry.design.PumpSpec.MotorSpec;
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
 * @param day a day of pumping
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
    Optional<Day> day,
    Optional<Screw> screw,
    Optional<GravityRun> gravityRun) {
  /** Copies the lists. */
  public ServiceResult {
    states = List.copyOf(states);
    dutyBand = List.copyOf(dutyBand);
    surges = List.copyOf(surges);
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
   * @param specificSpeed suction specific speed, metric; empty when it is not known
   * @param energy suction energy; empty when it is not known
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
      OptionalDouble specificSpeed,
      Optional<SuctionEnergy> energy,
      SuctionMargin margin,
      double velocityMps,
      OptionalDouble toPassMps,
      Severity severity) {}

  /**
   * The pulsing of a piston pump.
   *
   * @param ripple flow in the line over the mean flow
   * @param accelerationM head on top of the mean at the worst moment, in metres of mixture [m]
   * @param peakPa greatest pressure with that head [Pa]
   * @param weakestPa rating of the weakest run; empty when none is known [Pa]
   * @param relief where the relief may be set; empty when no setting fits, or no rating is known
   * @param runs each run in which sand may settle
   */
  public record Pulsation(
      FlowRipple ripple,
      double accelerationM,
      double peakPa,
      OptionalDouble weakestPa,
      Optional<ReliefWindow> relief,
      List<Pulse> runs) {
    /** Copies the list. */
    public Pulsation {
      runs = List.copyOf(runs);
    }
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
   */
  public record Pulse(
      String run,
      double leastMps,
      double limitMps,
      double belowShare,
      double longestS,
      double fallM) {}

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
   */
  public record Surge(
      String run,
      double waveMps,
      double velocityMps,
      double surgePa,
      double workingPa,
      OptionalDouble ratingPa,
      OptionalDouble stopS) {}

  /**
   * The line stopped full.
   *
   * @param sandFraction volume fraction of sand in the line
   * @param sandKg sand in the line [kg]
   * @param volumeM3 volume of the line [m3]
   * @param runs each run
   * @param restart what friction, yield and plug hold it with
   * @param staticPa static pressure at its start [Pa]
   * @param availablePa pressure that the pump, or without one the pit, has at its start [Pa]
   * @param weakestPa rating of the weakest run; empty when none is known [Pa]
   * @param flush what a flush with water takes; empty when no flow clears
   * @param supplyFlowM3ps flow of the supply of the flush, when given [m3/s]
   * @param supplyVolumeM3 volume of the supply, when given [m3]
   */
  public record Stop(
      double sandFraction,
      double sandKg,
      double volumeM3,
      List<StoppedRun> runs,
      StoppedLine.Restart restart,
      double staticPa,
      double availablePa,
      OptionalDouble weakestPa,
      Optional<StoppedLine.Flush> flush,
      OptionalDouble supplyFlowM3ps,
      OptionalDouble supplyVolumeM3) {
    /** Copies the list. */
    public Stop {
      runs = List.copyOf(runs);
    }
  }

  /**
   * A run that has stopped.
   *
   * @param run its name
   * @param bedM depth of the bed [m]
   * @param bedShare share of the section that it takes
   * @param settlingS time until the finest sand lies; empty when the liquid holds it [s]
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
   */
  public record Day(
      String state,
      double runningS,
      OptionalDouble startsPs,
      double energyJ,
      double sandKg,
      OptionalDouble energyPerSandJpKg) {}

  /**
   * The screw conveyor.
   *
   * @param loading filling of the trough that the load asks
   * @param capacityM3ps capacity at the filling for abrasive material [m3/s]
   * @param powerW power at its shaft [W]
   */
  public record Screw(Estimate loading, double capacityM3ps, double powerW) {}

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
