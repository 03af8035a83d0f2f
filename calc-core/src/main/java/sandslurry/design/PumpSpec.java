package sandslurry.design;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Volume;
import si.uom.quantity.VolumetricFlowRate;

/** The pump that drives the line. */
public sealed interface PumpSpec {
  /**
   * Efficiency of the drive.
   *
   * @return shaft power over power drawn
   */
  Quantity<Dimensionless> driveEfficiency();

  /**
   * A rotodynamic pump by its curve for clear water.
   *
   * @param curve points of the curve in ascending flow
   * @param curveSpeed speed at which the curve was measured
   * @param speed speed at which the pump is driven
   * @param impeller impeller diameter, when known
   * @param driveEfficiency efficiency of motor and drive
   */
  record RotodynamicSpec(
      List<CurvePoint> curve,
      Quantity<Frequency> curveSpeed,
      Quantity<Frequency> speed,
      Optional<Quantity<Length>> impeller,
      Quantity<Dimensionless> driveEfficiency)
      implements PumpSpec {
    /** Copies the curve. */
    public RotodynamicSpec {
      curve = List.copyOf(curve);
    }
  }

  /**
   * One point of a pump curve.
   *
   * @param flow flow of clear water
   * @param head head of clear water
   * @param efficiency hydraulic power over shaft power
   */
  record CurvePoint(
      Quantity<VolumetricFlowRate> flow,
      Quantity<Length> head,
      Quantity<Dimensionless> efficiency) {}

  /**
   * A piston pump.
   *
   * @param displacement volume swept in one stroke cycle
   * @param strokeRate cycles per time
   * @param volumetricEfficiency flow delivered over flow swept
   * @param mechanicalEfficiency hydraulic power over shaft power
   * @param pressureLimit pressure at which its relief opens
   * @param driveEfficiency efficiency of motor and drive
   */
  record PistonSpec(
      Quantity<Volume> displacement,
      Quantity<Frequency> strokeRate,
      Quantity<Dimensionless> volumetricEfficiency,
      Quantity<Dimensionless> mechanicalEfficiency,
      Quantity<Pressure> pressureLimit,
      Quantity<Dimensionless> driveEfficiency)
      implements PumpSpec {}
}
