package sandslurry.pipe.surge;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.fact.step.Equation;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.units.Kind;

/**
 * Pressure surge when the flow in a full pipe is stopped at once, after Joukowsky, with the wave
 * speed of Korteweg for an elastic pipe.
 *
 * <pre>Δp = ρ a ΔV,  a = √(K/ρ) / √(1 + K D / (E t))</pre>
 *
 * <p>ρ density of the liquid [kg/m³]; a speed of the pressure wave [m/s]; ΔV velocity stopped
 * [m/s]; K bulk modulus of water, 2.07 GPa; D bore and t wall, here the least [m]; E short-term
 * modulus of the pipe [Pa].
 *
 * <p>"At once" means within 2 L/a, the time in which the wave runs to the other end of a line of
 * length L and back. A slower stop gives less. A stop from which the columns part and rejoin, a
 * pocket of trapped air, or gas in the liquid give something else, which may be more: the formula
 * is no bound then.
 */
public final class Joukowsky1898 implements Correlation {
  /** Bulk modulus of water, 300 000 psi (common design value, from memory, unverified) [Pa]. */
  public static final double WATER_MODULUS_PA = 2.07e9;

  private static final Citation SOURCE =
      new Citation(
          "Joukowsky",
          1898,
          "On the hydraulic hammer in water supply pipes, Memoirs of the Imperial Academy of"
              + " Sciences of St Petersburg; wave speed by Korteweg, 1878, Annalen der Physik"
              + " 241:525-542");

  /** Wave speed of a liquid without gas in a pipe that may move. */
  public static final Equation WAVE =
      SOURCE.equation(
          "a",
          "speed of the pressure wave",
          "1 / sqrt(rho_m (1/B + D/(E t)))",
          Kind.VELOCITY,
          "rho_m kg/m3, B Pa, D m, E Pa, t m");

  /** Surge of a sudden stop. */
  public static final Equation SURGE =
      SOURCE.equation(
          "dp",
          "surge of a sudden stop",
          "rho_m a dV",
          Kind.PRESSURE,
          "rho_m kg/m3, a m/s, dV m/s");

  private static final About ABOUT =
      new About("joukowsky-1898", "Joukowsky", SOURCE, List.of(), SURGE, WAVE);

  /**
   * Speed of the pressure wave in water or a mixture on water, without gas, in a pipe with
   * expansion joints.
   *
   * @param pipe the pipe
   * @param densityKgM3 density of the liquid or mixture [kg/m3]
   * @return a [m/s]
   */
  public double waveSpeedMps(StandardPipe pipe, double densityKgM3) {
    return waveSpeedMps(
        densityKgM3,
        WATER_MODULUS_PA,
        pipe.largestBoreM(),
        pipe.leastWallM(),
        pipe.system().material().shortTermModulusPa());
  }

  /**
   * Speed of the pressure wave in any liquid and wall.
   *
   * @param densityKgM3 ρ [kg/m3]
   * @param bulkModulusPa K [Pa]
   * @param boreM D [m]
   * @param wallM t [m]
   * @param modulusPa E [Pa]
   * @return a [m/s]
   */
  public double waveSpeedMps(
      double densityKgM3, double bulkModulusPa, double boreM, double wallM, double modulusPa) {
    if (!(densityKgM3 > 0) || !(bulkModulusPa > 0) || !(wallM > 0) || !(modulusPa > 0)) {
      throw new IllegalArgumentException(
          "a pressure wave needs a density, a wall and moduli > 0 but has "
              + densityKgM3
              + " kg/m3, "
              + wallM
              + " m, "
              + bulkModulusPa
              + " Pa and "
              + modulusPa
              + " Pa");
    }
    return 1 / Math.sqrt(densityKgM3 * (1 / bulkModulusPa + boreM / (modulusPa * wallM)));
  }

  /**
   * The time within which a stop counts as sudden: the wave runs to the other end and back.
   *
   * @param lengthM length of the line [m]
   * @param waveSpeedMps a [m/s]
   * @return 2 L/a [s]
   */
  public double returnTimeS(double lengthM, double waveSpeedMps) {
    if (!(lengthM >= 0 && Double.isFinite(lengthM)) || !(waveSpeedMps > 0)) {
      throw new IllegalArgumentException(
          "need a length >= 0 and a wave speed > 0 but have "
              + lengthM
              + " m and "
              + waveSpeedMps
              + " m/s");
    }
    return 2 * lengthM / waveSpeedMps;
  }

  /**
   * Pressure rise when the flow is stopped evenly over a time: that of Joukowsky when the time is
   * no longer than {@link #returnTimeS}, else that of Michaud,
   *
   * <pre>Δp = ρ a ΔV (2 L/a) / T = 2 ρ L ΔV / T</pre>
   *
   * <p>A. Michaud (1878), Bulletin de la Société vaudoise des ingénieurs et architectes (citation
   * from memory, unverified). The stop of a pump is not even; a valve closes most of the flow in
   * the last part of its travel, so take as T that part.
   *
   * @param densityKgM3 ρ [kg/m3]
   * @param waveSpeedMps a [m/s]
   * @param stoppedVelocityMps ΔV, not negative [m/s]
   * @param lengthM L, length of the line [m]
   * @param stopS T, not negative [s]
   * @return Δp [Pa]
   */
  public double stopPa(
      double densityKgM3,
      double waveSpeedMps,
      double stoppedVelocityMps,
      double lengthM,
      double stopS) {
    if (!(densityKgM3 > 0) || !(stoppedVelocityMps >= 0) || !(stopS >= 0)) {
      throw new IllegalArgumentException(
          "need a density > 0 and a velocity and a time >= 0 but have "
              + densityKgM3
              + " kg/m3, "
              + stoppedVelocityMps
              + " m/s, "
              + stopS
              + " s");
    }
    double sudden = densityKgM3 * waveSpeedMps * stoppedVelocityMps;
    double within = returnTimeS(lengthM, waveSpeedMps);
    return stopS <= within ? sudden : sudden * within / stopS;
  }

  /**
   * Pressure rise.
   *
   * @param pipe the pipe
   * @param densityKgM3 density of the liquid or mixture [kg/m3]
   * @param stoppedVelocityMps velocity stopped, not negative [m/s]
   * @return Δp, to be added to the pressure that was there before [Pa]
   */
  public double surgePa(StandardPipe pipe, double densityKgM3, double stoppedVelocityMps) {
    if (!(stoppedVelocityMps >= 0) || Double.isInfinite(stoppedVelocityMps)) {
      throw new IllegalArgumentException(
          "a velocity to be stopped must be >= 0 but was " + stoppedVelocityMps + " m/s");
    }
    return densityKgM3 * waveSpeedMps(pipe, densityKgM3) * stoppedVelocityMps;
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
