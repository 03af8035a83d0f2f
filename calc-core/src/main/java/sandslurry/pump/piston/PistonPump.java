package sandslurry.pump.piston;

/**
 * A piston or other positive-displacement pump: its flow follows the strokes, not the head.
 *
 * <p>Sand takes no head from such a pump, but it wears valves and packing, which shows as slip. The
 * volumetric efficiency is therefore an input. A handbook figure for a properly packed pump is a
 * slip of 3 to 5 %; flap and ball valves with sand have 5 to 15 % and it grows with wear (from
 * memory, unverified).
 *
 * @param displacementM3 volume swept in one cycle, one stroke forth and back of every cylinder [m3]
 * @param volumetricEfficiency flow delivered over flow swept, above 0 to 1; 1 minus the slip
 * @param pressureLimitPa the greatest pressure rise that pump and drive allow [Pa]
 */
public record PistonPump(
    double displacementM3, double volumetricEfficiency, double pressureLimitPa) {
  /**
   * Checks that all values are positive and the efficiency a fraction.
   *
   * @param displacementM3 volume swept in one cycle [m3]
   * @param volumetricEfficiency flow delivered over flow swept, above 0 to 1
   * @param pressureLimitPa the greatest pressure rise allowed [Pa]
   * @throws IllegalArgumentException if one of them is not
   */
  public PistonPump {
    if (!(displacementM3 > 0) || Double.isInfinite(displacementM3)) {
      throw new IllegalArgumentException(
          "a displacement must be > 0 but was " + displacementM3 + " m3");
    }
    if (!(volumetricEfficiency > 0 && volumetricEfficiency <= 1)) {
      throw new IllegalArgumentException(
          "a volumetric efficiency lies above 0 and at most at 1 but was " + volumetricEfficiency);
    }
    if (!(pressureLimitPa > 0) || Double.isInfinite(pressureLimitPa)) {
      throw new IllegalArgumentException(
          "a pressure limit must be > 0 but was " + pressureLimitPa + " Pa");
    }
  }

  /**
   * Volume swept in one cycle by pistons that push in one direction only.
   *
   * @param pistonDiameterM diameter of a piston [m]
   * @param strokeM length of a stroke [m]
   * @param cylinders how many
   * @return z (π/4) d² L [m3]
   */
  public static double singleActingDisplacementM3(
      double pistonDiameterM, double strokeM, int cylinders) {
    return doubleActing(pistonDiameterM, pistonDiameterM, strokeM, cylinders);
  }

  /**
   * Volume swept in one cycle by pistons that push in both directions; on one side the rod takes
   * part of the room.
   *
   * @param pistonDiameterM diameter of a piston [m]
   * @param rodDiameterM diameter of its rod, less than that of the piston; 0 neglects it [m]
   * @param strokeM length of a stroke [m]
   * @param cylinders how many
   * @return z (π/4) (2 d² − d_rod²) L [m3]
   */
  public static double doubleActingDisplacementM3(
      double pistonDiameterM, double rodDiameterM, double strokeM, int cylinders) {
    if (!(rodDiameterM >= 0 && rodDiameterM < pistonDiameterM)) {
      throw new IllegalArgumentException(
          "a rod must be thinner than its piston, "
              + pistonDiameterM
              + " m, but is "
              + rodDiameterM
              + " m");
    }
    return doubleActing(pistonDiameterM, rodDiameterM, strokeM, cylinders);
  }

  private static double doubleActing(double piston, double rod, double stroke, int cylinders) {
    if (!(piston > 0) || !(stroke > 0) || cylinders < 1) {
      throw new IllegalArgumentException(
          "a piston pump needs a positive diameter, stroke and number of cylinders but has "
              + piston
              + " m, "
              + stroke
              + " m, "
              + cylinders);
    }
    return cylinders * Math.PI / 4 * (2 * piston * piston - rod * rod) * stroke;
  }

  /**
   * Mean flow delivered.
   *
   * @param cyclesPerSecond strokes forth and back per second, not negative [1/s]
   * @return efficiency × displacement × rate [m3/s]
   */
  public double flowM3ps(double cyclesPerSecond) {
    if (!(cyclesPerSecond >= 0)) {
      throw new IllegalArgumentException(
          "a stroke rate must be >= 0 but was " + cyclesPerSecond + " 1/s");
    }
    return volumetricEfficiency * displacementM3 * cyclesPerSecond;
  }

  /**
   * The stroke rate that delivers a flow.
   *
   * @param flowM3ps mean flow, not negative [m3/s]
   * @return strokes forth and back per second [1/s]
   */
  public double cyclesPerSecond(double flowM3ps) {
    if (!(flowM3ps >= 0)) {
      throw new IllegalArgumentException("a flow must be >= 0 but was " + flowM3ps + " m3/s");
    }
    return flowM3ps / (volumetricEfficiency * displacementM3);
  }

  /**
   * Says whether the pump may work against a pressure.
   *
   * @param pressureRisePa mean pressure rise over the pump [Pa]
   * @return true at or below the limit; false for NaN
   */
  public boolean allows(double pressureRisePa) {
    return pressureRisePa <= pressureLimitPa;
  }

  /**
   * Power at the piston rods: the whole swept volume is brought to pressure, also the part that
   * slips back.
   *
   * @param flowM3ps mean flow delivered, not negative [m3/s]
   * @param pressureRisePa mean pressure rise over the pump, not negative [Pa]
   * @return Δp Q / volumetric efficiency; the efficiency of the drive is not in it [W]
   */
  public double rodPowerW(double flowM3ps, double pressureRisePa) {
    if (!(flowM3ps >= 0) || !(pressureRisePa >= 0)) {
      throw new IllegalArgumentException(
          "flow and pressure rise must be >= 0 but were "
              + flowM3ps
              + " m3/s and "
              + pressureRisePa
              + " Pa");
    }
    return pressureRisePa * flowM3ps / volumetricEfficiency;
  }
}
