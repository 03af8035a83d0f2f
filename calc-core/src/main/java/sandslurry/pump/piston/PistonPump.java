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
   * Says whether the pump may work against a pressure.
   *
   * @param pressureRisePa mean pressure rise over the pump [Pa]
   * @return true at or below the limit; false for NaN
   */
  public boolean allows(double pressureRisePa) {
    return pressureRisePa <= pressureLimitPa;
  }
}
