package sandslurry.assessment.stop;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The surge in a run.
 *
 * @param run its name
 * @param densityKgM3 greatest density of the mixture [kg/m3]
 * @param waveMps speed of the pressure wave [m/s]
 * @param velocityMps velocity stopped [m/s]
 * @param surgePa surge [Pa]
 * @param workingPa greatest working pressure in the run [Pa]
 * @param ratingPa rating; empty when none is known [Pa]
 * @param stopS even time of stopping that would keep the rating; empty when none is needed or helps
 *     [s]
 * @param slow the stop in the time given, when one is
 * @param lowest the low half of the wave
 */
public record SurgeResult(
    String run,
    double densityKgM3,
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

    /**
     * Least pressure that there can be: where the wave asks for less, the liquid boils instead.
     *
     * @return gauge pressure [Pa], never below the vapour pressure
     */
    public double minimumPa() {
      return Math.max(lowestPa, vapourPa);
    }
  }
}
