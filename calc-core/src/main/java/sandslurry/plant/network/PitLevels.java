package sandslurry.plant.network;

/**
 * The levels by which the pumps of a pit start and stop, as volumes below them.
 *
 * @param stopM3 volume at which the pumps stop [m3]
 * @param startM3 volume at which they start again [m3]
 * @param alarmM3 volume at which an alarm is raised [m3]
 */
public record PitLevels(double stopM3, double startM3, double alarmM3) {
  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless 0 ≤ stop &lt; start ≤ alarm
   */
  public PitLevels {
    if (!(stopM3 >= 0 && stopM3 < startM3 && startM3 <= alarmM3 && Double.isFinite(alarmM3))) {
      throw new IllegalArgumentException(
          "stop, start and alarm rise from 0 on but are at "
              + stopM3
              + ", "
              + startM3
              + " and "
              + alarmM3
              + " m3");
    }
  }

  /**
   * The levels of a pit of which none is given: pumps stop at a fifth of the volume up to weir or
   * brim and start at seven tenths, the alarm is raised at nine tenths (common practice, no
   * source).
   *
   * @param weirVolumeM3 volume up to weir or brim [m3]
   * @return the levels
   */
  public static PitLevels usual(double weirVolumeM3) {
    return new PitLevels(0.2 * weirVolumeM3, 0.7 * weirVolumeM3, 0.9 * weirVolumeM3);
  }

  /**
   * How often a pump starts that fills and empties the pit between its levels.
   *
   * <pre>1/T = q (1 − q/Q) / ΔV</pre>
   *
   * <p>q what comes in, Q the flow of the pump, ΔV the volume between stop and start. It is most at
   * q = Q/2, when it is Q/(4 ΔV). Derived from the balance of the pit; no source needed.
   *
   * @param inflowM3ps what comes in [m3/s]
   * @param pumpM3ps flow of the pump [m3/s]
   * @return starts in a time [1/s]; 0 when the pump does not stop
   */
  public double startsPerS(double inflowM3ps, double pumpM3ps) {
    return inflowM3ps > 0 && inflowM3ps < pumpM3ps
        ? inflowM3ps * (1 - inflowM3ps / pumpM3ps) / (startM3 - stopM3)
        : 0;
  }
}
