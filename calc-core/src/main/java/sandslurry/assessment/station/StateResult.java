package sandslurry.assessment.station;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.station.PumpSpec.MotorSpec;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.OperatingRegion;
import sandslurry.pump.rotodynamic.WearIndex;
import sandslurry.pump.suction.SuctionEnergy;
import sandslurry.pump.suction.SuctionMargin;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * The line in one state.
 *
 * @param name what the state is
 * @param named whether the design named for it, beside the flows of every line
 * @param severity how it stands
 * @param reasons what is amiss, gravest first; empty when nothing is
 * @param point where it runs; empty when it does not
 */
public record StateResult(
    String name, boolean named, Severity severity, List<String> reasons, Optional<Point> point) {
  /** Copies the list. */
  public StateResult {
    reasons = List.copyOf(reasons);
  }

  /**
   * What flows in a state.
   *
   * @param sandFraction volume fraction of sand
   * @param densityKgM3 density of the mixture [kg/m3]
   * @param temperatureK temperature of the liquid [K]
   */
  public record PumpedMixture(double sandFraction, double densityKgM3, double temperatureK) {}

  /**
   * The run that stands worst in a state.
   *
   * @param run its name
   * @param regime how the carrier flows in it
   * @param velocityMps its velocity in the largest bore [m/s]
   * @param limitMps its deposition limit in turbulent flow; empty without sand [m/s]
   * @param toPassMps the velocity that it needs to pass; empty without sand [m/s]
   */
  public record WorstRun(
      String run,
      Regime regime,
      double velocityMps,
      OptionalDouble limitMps,
      OptionalDouble toPassMps) {}

  /**
   * Power in a state; empty when the flow is set otherwise than by pumps.
   *
   * @param shaftW power at all shafts [W]
   * @param inputW power drawn by all drives [W]
   */
  public record DrivingPower(OptionalDouble shaftW, OptionalDouble inputW) {}

  /**
   * Where pump and line run in a state.
   *
   * @param flowM3ps flow of mixture [m3/s]
   * @param mixture what flows
   * @param headM head named of the pumps, in metres of mixture [m]
   * @param worst the run that stands worst
   * @param pressurePa the greatest gauge pressure in the line [Pa]
   * @param power what drives it
   * @param wear wear against the design flow
   * @param pumps each pump
   */
  public record Point(
      double flowM3ps,
      PumpedMixture mixture,
      double headM,
      WorstRun worst,
      double pressurePa,
      DrivingPower power,
      WearIndex wear,
      List<PumpPoint> pumps) {
    /** Copies the list. */
    public Point {
      pumps = List.copyOf(pumps);
    }

    /**
     * Whether the pumps set the flow.
     *
     * @return whether they were asked for it
     */
    public boolean driven() {
      return power.shaftW().isPresent();
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
  // More than ten components: a row of the table of suctions, which shows each.
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
}
