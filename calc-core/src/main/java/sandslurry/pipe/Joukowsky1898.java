package sandslurry.pipe;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;

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
  /** Bulk modulus of water, 300 000 psi (common design value, from memory, unverified). */
  private static final double BULK_MODULUS_PA = 2.07e9;

  /**
   * Speed of the pressure wave.
   *
   * @param pipe the pipe
   * @param densityKgM3 density of the liquid or mixture [kg/m3]
   * @return a [m/s]
   */
  public double waveSpeedMps(StandardPipe pipe, double densityKgM3) {
    if (!(densityKgM3 > 0) || Double.isInfinite(densityKgM3)) {
      throw new IllegalArgumentException("a density must be > 0 but was " + densityKgM3 + " kg/m3");
    }
    double give =
        BULK_MODULUS_PA
            * pipe.largestBoreM()
            / (pipe.system().material().shortTermModulusPa() * pipe.leastWallM());
    return Math.sqrt(BULK_MODULUS_PA / densityKgM3 / (1 + give));
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
  public String id() {
    return "joukowsky-1898";
  }

  @Override
  public String name() {
    return "Joukowsky";
  }

  @Override
  public String equation() {
    return "dp = rho a dV, a = sqrt(K/rho) / sqrt(1 + K D/(E t))";
  }

  @Override
  public Citation citation() {
    return new Citation(
        "Joukowsky",
        1898,
        "On the hydraulic hammer in water supply pipes, Memoirs of the Imperial Academy of Sciences"
            + " of St Petersburg; wave speed by Korteweg, 1878, Annalen der Physik 241:525-542");
  }

  @Override
  public List<Bound> range() {
    return List.of();
  }
}
