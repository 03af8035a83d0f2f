package sandslurry.design.station;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import sandslurry.fact.finding.Severity;
import sandslurry.pump.piston.CrankDrive;
import sandslurry.pump.piston.HydraulicDrive;
import sandslurry.pump.piston.StrokeDrive;
import sandslurry.pump.rotodynamic.PumpCurve;
import sandslurry.pump.rotodynamic.PumpGroup;

/** The pump, or the pumps, that drive the line. */
public sealed interface PumpSpec {
  /**
   * What follows for each kind of pump.
   *
   * @param rotodynamic for rotodynamic pumps
   * @param piston for a piston pump
   * @param <R> what follows
   * @return what follows for this kind
   */
  <R> R match(Function<RotodynamicSpec, R> rotodynamic, Function<PistonSpec, R> piston);

  /**
   * These pumps where they are rotodynamic.
   *
   * @return the pumps
   */
  default Optional<RotodynamicSpec> rotodynamic() {
    return match(Optional::of, piston -> Optional.empty());
  }

  /**
   * This pump where it is a piston pump.
   *
   * @return the pump
   */
  default Optional<PistonSpec> piston() {
    return match(rotodynamic -> Optional.empty(), Optional::of);
  }

  /**
   * Efficiency of the drive.
   *
   * @return shaft power over power drawn
   */
  double driveEfficiency();

  /**
   * The motor of each pump.
   *
   * @return the motor, when it is known
   */
  Optional<MotorSpec> motor();

  /**
   * The motor of a pump.
   *
   * @param ratingW power that it gives at its shaft all day
   * @param serviceFactor what it bears for a time, over its rating
   */
  record MotorSpec(double ratingW, double serviceFactor) {
    /**
     * The power that it bears for a time.
     *
     * @return the power at its shaft [W]
     */
    public double bearsW() {
      return ratingW * serviceFactor;
    }

    /**
     * How it bears a load.
     *
     * @param shaftW power at its shaft [W]
     * @return a caution above its rating, a fail above what it bears
     */
    public Severity under(double shaftW) {
      return shaftW <= ratingW
          ? Severity.PASS
          : shaftW <= bearsW() ? Severity.CAUTION : Severity.FAIL;
    }
  }

  /**
   * A curve for clear water.
   *
   * @param points points in ascending flow
   * @param curveSpeedPs speed at which it was measured
   * @param speedPs speed at which the pump is driven
   */
  record CurveSpec(List<CurvePoint> points, double curveSpeedPs, double speedPs) {
    /** Copies the points. */
    public CurveSpec {
      points = List.copyOf(points);
    }

    /**
     * Speed driven over that of the curve.
     *
     * @return the ratio
     */
    public double speedRatio() {
      return speedPs / curveSpeedPs;
    }

    /**
     * The curve at the speedPs driven.
     *
     * @return the curve for clear water
     */
    public PumpCurve clear() {
      List<PumpCurve.Point> at = new ArrayList<>();
      for (CurvePoint point : points) {
        at.add(new PumpCurve.Point(point.flowM3ps(), point.headM(), point.efficiency()));
      }
      return PumpCurve.through(at).atSpeed(speedRatio());
    }
  }

  /**
   * One more pump, unlike the first. What is not given of it is as of the first pump.
   *
   * @param name what it is called in the report
   * @param curve its curve
   * @param standby true for a spare that takes the place of the first pump
   * @param impellerM diameter of its impeller, when given
   * @param wornHead share of head that it has lost when worn, when given
   * @param driveEfficiency efficiency of its motor and drive, when given
   * @param motor its motor, when given
   */
  record OtherPumpSpec(
      String name,
      CurveSpec curve,
      boolean standby,
      OptionalDouble impellerM,
      Optional<Double> wornHead,
      Optional<Double> driveEfficiency,
      Optional<MotorSpec> motor) {}

  /**
   * One pump that runs, with all that holds for it.
   *
   * @param name what it is called in the report
   * @param curve its curve as given
   * @param clear its curve for clear water, trimmed, at the speed driven
   * @param impellerM diameter of its impeller, when known
   * @param impellerOfFirst true when that is the diameter of the first pump, for want of its own
   * @param wornHead share of head that it has lost when worn, when that is its own
   * @param driveEfficiency efficiency of its motor and drive
   * @param motor its motor, when known
   */
  record RunningPump(
      String name,
      CurveSpec curve,
      PumpCurve clear,
      OptionalDouble impellerM,
      boolean impellerOfFirst,
      Optional<Double> wornHead,
      double driveEfficiency,
      Optional<MotorSpec> motor) {}

  /**
   * How several pumps stand together.
   *
   * @param count pumps like the first that run together
   * @param arrangement how they and the others work together
   * @param trim diameter of the impeller of the first pumps over that of their curve
   * @param minimumFlowM3ps least flow that the maker allows through one pump, when known
   * @param maximumFlowM3ps greatest flow that the maker allows through one pump, when known
   * @param others the other pumps
   */
  record StationSpec(
      int count,
      PumpGroup.Arrangement arrangement,
      double trim,
      OptionalDouble minimumFlowM3ps,
      OptionalDouble maximumFlowM3ps,
      List<OtherPumpSpec> others) {
    /** Copies the list. */
    public StationSpec {
      others = List.copyOf(others);
    }
  }

  /**
   * Rotodynamic pumps by their curves for clear water.
   *
   * @param first the curve of the first pump
   * @param impellerM impeller diameter, when known
   * @param driveEfficiency efficiency of motor and drive
   * @param motor motor of each pump, when known
   * @param station how many pumps there are
   */
  record RotodynamicSpec(
      CurveSpec first,
      OptionalDouble impellerM,
      double driveEfficiency,
      Optional<MotorSpec> motor,
      StationSpec station)
      implements PumpSpec {
    @Override
    public <R> R match(Function<RotodynamicSpec, R> rotodynamic, Function<PistonSpec, R> piston) {
      return rotodynamic.apply(this);
    }

    /**
     * The clear-water curve of the first pump as trimmed, at the speed driven.
     *
     * @return the curve
     */
    PumpCurve clearCurve() {
      return first.clear().trimmed(station.trim());
    }

    /**
     * The pumps that run.
     *
     * @return each with what holds for it, the first pumps first
     */
    public List<RunningPump> pumps() {
      List<RunningPump> pumps = new ArrayList<>();
      PumpCurve clear = clearCurve();
      for (int i = 0; i < station.count(); i++) {
        pumps.add(
            new RunningPump(
                "pump " + (i + 1),
                first,
                clear,
                impellerM,
                false,
                Optional.empty(),
                driveEfficiency,
                motor));
      }
      others(false).forEach(other -> pumps.add(running(other)));
      return pumps;
    }

    /**
     * The pumps that run when a spare stands in for the first.
     *
     * @param spare the spare
     * @return each with what holds for it
     */
    public List<RunningPump> withSpare(OtherPumpSpec spare) {
      List<RunningPump> pumps = pumps();
      pumps.set(0, running(spare));
      return pumps;
    }

    private RunningPump running(OtherPumpSpec other) {
      return new RunningPump(
          other.name(),
          other.curve(),
          other.curve().clear(),
          other.impellerM().isPresent() ? other.impellerM() : impellerM,
          other.impellerM().isEmpty(),
          other.wornHead(),
          other.driveEfficiency().orElse(driveEfficiency),
          other.motor().isPresent() ? other.motor() : motor);
    }

    /**
     * The pumps that run, in clear water.
     *
     * @return the group
     * @throws IllegalArgumentException if their curves have no range of flow in common
     */
    public PumpGroup running() {
      return clear(pumps());
    }

    /**
     * Pumps of this station in clear water.
     *
     * @param pumps the pumps
     * @return the group
     * @throws IllegalArgumentException if their curves have no range of flow in common
     */
    public PumpGroup clear(List<RunningPump> pumps) {
      List<PumpCurve> curves = pumps.stream().map(RunningPump::clear).toList();
      return station.arrangement() == PumpGroup.Arrangement.SERIES
          ? PumpGroup.series(curves)
          : PumpGroup.parallel(curves);
    }

    /**
     * The names of the pumps that run, in the order of {@link #pumps}.
     *
     * @return one name for each pump
     */
    public List<String> names() {
      return pumps().stream().map(RunningPump::name).toList();
    }

    /**
     * The spare pumps.
     *
     * @return those that stand by
     */
    public List<OtherPumpSpec> spares() {
      return others(true);
    }

    private List<OtherPumpSpec> others(boolean standby) {
      return station.others().stream().filter(other -> other.standby() == standby).toList();
    }
  }

  /**
   * One point of a pump curve.
   *
   * @param flowM3ps flow of clear water
   * @param headM head of clear water
   * @param efficiency hydraulic power over shaft power
   * @param npshM net positive suction head required, when known
   */
  record CurvePoint(double flowM3ps, double headM, double efficiency, OptionalDouble npshM) {}

  /**
   * A piston pump.
   *
   * @param displacementM3 volume swept in one stroke cycle
   * @param strokeRatePs cycles per time
   * @param volumetricEfficiency flow delivered over flow swept
   * @param mechanicalEfficiency hydraulic power over shaft power
   * @param pressureLimitPa pressure at which its relief opens
   * @param driveEfficiency efficiency of motor and drive
   * @param motor its motor, when known
   * @param pulsation its cylinders, when known
   * @param npshM net positive suction head required, when known
   */
  record PistonSpec(
      double displacementM3,
      double strokeRatePs,
      double volumetricEfficiency,
      double mechanicalEfficiency,
      double pressureLimitPa,
      double driveEfficiency,
      Optional<MotorSpec> motor,
      Optional<PulsationSpec> pulsation,
      OptionalDouble npshM)
      implements PumpSpec {
    @Override
    public <R> R match(Function<RotodynamicSpec, R> rotodynamic, Function<PistonSpec, R> piston) {
      return piston.apply(this);
    }
  }

  /**
   * What makes the flow of a piston pump pulse.
   *
   * @param cylinders how many
   * @param doubleActing true if both sides of a piston pump
   * @param rodShare cross-section of the rod over that of the piston, 0 for single acting
   * @param rodToCrank length of the connecting rod over the crank radius
   * @param passed share of the swing of flow that an air vessel lets into the line; 1 without one
   * @param vesselGasM3 gas in an air vessel at the pressure of the line, when the share is to be
   *     worked out from it
   * @param rams hydraulic cylinders that drive the pistons; absent for a crank
   */
  record PulsationSpec(
      int cylinders,
      boolean doubleActing,
      double rodShare,
      double rodToCrank,
      double passed,
      Optional<Double> vesselGasM3,
      Optional<RamSpec> rams) {
    /**
     * The drive.
     *
     * @param strokeRate cycles per time
     * @return how it moves the pistons
     */
    public StrokeDrive drive(double strokeRate) {
      double rod = doubleActing ? rodShare : 0;
      if (rams.isPresent()) {
        return new HydraulicDrive(
            cylinders,
            doubleActing,
            rod,
            rams.get().dwellS() * strokeRate,
            rams.get().changeoverS() * strokeRate);
      }
      return new CrankDrive(cylinders, doubleActing, rod, rodToCrank);
    }
  }

  /**
   * Hydraulic cylinders that push the pistons at constant speed.
   *
   * @param dwellS time at each end of a stroke in which nothing is pushed
   * @param changeoverS time in which the flow starts or stops there
   */
  record RamSpec(double dwellS, double changeoverS) {}
}
