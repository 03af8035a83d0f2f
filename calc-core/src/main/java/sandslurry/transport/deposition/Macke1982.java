package sandslurry.transport.deposition;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;

/**
 * Limit of deposition in sewers after Macke: what turbulence carries without leaving any.
 *
 * <pre>C = λ³ V⁵ / [30.4 (s − 1) w^1.5 A]</pre>
 *
 * <p>C volume fraction; λ Darcy friction factor of the carrier alone; V velocity at the limit
 * [m/s]; s density of sand over density of carrier; w settling velocity of one grain [m/s]; A
 * section [m²]. The factor 30.4 has a dimension, (m/s)^3.5/m², so SI is needed.
 *
 * <p>Fitted to sewers, C below about 0.2 %; among the data were fine sands of 0.16 and 0.37 mm
 * (from memory, unverified). For coarser grains w keeps it rising.
 */
final class Macke1982 implements DepositionVelocityModel {
  private static final double FACTOR = 30.4;

  /** The power of the friction factor when the equation is solved for V: 3/5. */
  private static final double POWER = 0.6;

  private static final About ABOUT =
      new About(
          "macke-1982",
          "Macke, limit of deposition",
          "C = lambda^3 V^5 / (30.4 (s - 1) w^1.5 A), SI units",
          new Citation(
              "Macke",
              1982,
              "Mitteilungen des Leichtweiss-Instituts 71, Technische Universität Braunschweig;"
                  + " coefficients from memory, unverified"),
          List.of(May1996.SIZE, May1996.BORE, May1996.CONCENTRATION));

  @Override
  public Estimate velocityMps(Slurry slurry, Bore bore) {
    return Estimate.checks()
        .check(May1996.SIZE, slurry.d50M())
        .check(May1996.BORE, bore.diameterM())
        .check(May1996.CONCENTRATION, slurry.volumeFraction())
        .value(valueMps(slurry, slurry.d50Grain(), slurry.volumeFraction(), bore));
  }

  static double valueMps(Slurry slurry, Grain grain, double fraction, Bore bore) {
    if (!(fraction > 0)) {
      return 0;
    }
    double load = fraction * resistance(slurry, grain, bore);
    return VelocityScale.atFrictionMps(slurry, bore, POWER, Math.pow(load, 0.2));
  }

  /**
   * What divides λ³ V⁵ to the concentration carried.
   *
   * @return 30.4 (s − 1) w^1.5 A [m⁵/s⁵]
   */
  static double resistance(Slurry slurry, Grain grain, Bore bore) {
    return resistance(slurry, grain, bore.areaM2());
  }

  static double resistance(Slurry slurry, Grain grain, double areaM2) {
    double settling = SettlingVelocities.DEFAULT.velocityMps(grain, slurry.liquid()).value();
    return FACTOR * (slurry.densityRatio() - 1) * Math.pow(settling, 1.5) * areaM2;
  }

  @Override
  public Limit limit() {
    return Limit.ANY_BED;
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
