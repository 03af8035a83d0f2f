package sandslurry.pump.drive;

import java.util.OptionalDouble;

/**
 * A day of pumping in batches from a sump.
 *
 * <p>The sump fills at a steady inflow q and is pumped down at Q. With a volume B between the
 * levels at which the pump starts and stops,
 *
 * <pre>cycle = B/q + B/(Q − q);   starts most often at q = Q/2, every 4 B/Q</pre>
 *
 * <p>which is the usual rule for the sump of a lift station (from memory, unverified, and derived
 * here). A day's volume D takes D/Q of running.
 *
 * @param dailyVolumeM3 D, volume of mixture moved in a day [m3]
 * @param batchVolumeM3 B, volume of the sump between start and stop [m3]
 * @param flowM3ps Q, flow of the pump [m3/s]
 */
public record DailyDuty(double dailyVolumeM3, double batchVolumeM3, double flowM3ps) {
  /** Checks that all values are positive. */
  public DailyDuty {
    if (!(dailyVolumeM3 > 0 && Double.isFinite(dailyVolumeM3))
        || !(batchVolumeM3 > 0 && Double.isFinite(batchVolumeM3))
        || !(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException(
          "a day of pumping needs a daily volume, a batch and a flow > 0 but has "
              + dailyVolumeM3
              + " m3, "
              + batchVolumeM3
              + " m3, "
              + flowM3ps
              + " m3/s");
    }
  }

  /**
   * Time that the pump runs in a day.
   *
   * @return D/Q; more than a day when the pump is too small [s]
   */
  public double runningS() {
    return dailyVolumeM3 / flowM3ps;
  }

  /**
   * The greatest rate of starts, at an inflow of half the flow of the pump.
   *
   * @return Q/(4 B) [1/s]
   */
  public double greatestStartRatePs() {
    return flowM3ps / (4 * batchVolumeM3);
  }

  /**
   * Energy from the supply in a day.
   *
   * @param inputW power from the supply while the pump runs, not negative [W]
   * @return the energy [J]
   */
  public double energyJ(double inputW) {
    if (!(inputW >= 0 && Double.isFinite(inputW))) {
      throw new IllegalArgumentException("a power must be >= 0 but was " + inputW + " W");
    }
    return inputW * runningS();
  }

  /**
   * Energy from the supply for each kilogram of sand moved.
   *
   * @param inputW power from the supply while the pump runs, not negative [W]
   * @param sandPerVolumeKgM3 mass of sand in a volume of mixture, not negative [kg/m3]
   * @return the energy; nothing when no sand is moved [J/kg]
   */
  public OptionalDouble energyPerSandJpKg(double inputW, double sandPerVolumeKgM3) {
    if (!(sandPerVolumeKgM3 >= 0 && Double.isFinite(sandPerVolumeKgM3))) {
      throw new IllegalArgumentException(
          "a content of sand must be >= 0 but was " + sandPerVolumeKgM3 + " kg/m3");
    }
    return sandPerVolumeKgM3 == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(energyJ(inputW) / (dailyVolumeM3 * sandPerVolumeKgM3));
  }
}
