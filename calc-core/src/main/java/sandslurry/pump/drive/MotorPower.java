package sandslurry.pump.drive;

import java.util.OptionalDouble;
import sandslurry.correlation.Physics;

/**
 * Power from the liquid back to the meter.
 *
 * @param hydraulicW power given to the mixture, ρ g Q H [W]
 * @param shaftW power taken at the pump shaft [W]
 * @param inputW power taken from the supply, by motor and drive [W]
 */
public record MotorPower(double hydraulicW, double shaftW, double inputW) {
  /**
   * The power of one duty.
   *
   * @param mixtureDensityKgM3 density of the mixture [kg/m3]
   * @param flowM3ps flow of mixture, not negative [m3/s]
   * @param headM head in metres of mixture, not negative [m]
   * @param pumpEfficiency efficiency of the pump with solids, above 0 to 1
   * @param driveEfficiency efficiency of motor, gear and speed control together, above 0 to 1
   * @return hydraulic power ρ g Q H, shaft power that over the first efficiency, input power that
   *     over the second
   * @throws IllegalArgumentException if an efficiency is 0: at shut-off the power cannot be told
   *     from the efficiency
   */
  public static MotorPower of(
      double mixtureDensityKgM3,
      double flowM3ps,
      double headM,
      double pumpEfficiency,
      double driveEfficiency) {
    if (!(mixtureDensityKgM3 > 0) || !(flowM3ps >= 0) || !(headM >= 0)) {
      throw new IllegalArgumentException(
          "need a density > 0 and flow and head >= 0 but have "
              + mixtureDensityKgM3
              + " kg/m3, "
              + flowM3ps
              + " m3/s, "
              + headM
              + " m");
    }
    if (!(pumpEfficiency > 0 && pumpEfficiency <= 1)
        || !(driveEfficiency > 0 && driveEfficiency <= 1)) {
      throw new IllegalArgumentException(
          "efficiencies lie above 0 and at most at 1 but were "
              + pumpEfficiency
              + " (pump) and "
              + driveEfficiency
              + " (drive)");
    }
    double hydraulic = mixtureDensityKgM3 * Physics.GRAVITY * flowM3ps * headM;
    double shaft = hydraulic / pumpEfficiency;
    return new MotorPower(hydraulic, shaft, shaft / driveEfficiency);
  }

  /**
   * Energy taken from the supply for each kilogram of sand moved.
   *
   * @param sandKgps mass flow of sand, not negative [kg/s]
   * @return the energy; nothing when no sand is moved [J/kg]
   */
  public OptionalDouble energyPerSandJpKg(double sandKgps) {
    if (!(sandKgps >= 0)) {
      throw new IllegalArgumentException(
          "a mass flow of sand must be >= 0 but was " + sandKgps + " kg/s");
    }
    return sandKgps == 0 ? OptionalDouble.empty() : OptionalDouble.of(inputW / sandKgps);
  }
}
