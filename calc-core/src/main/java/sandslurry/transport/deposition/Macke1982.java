package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;

/**
 * Limit of deposition in sewers after Macke: what turbulence carries without leaving any.
 *
 * <pre>C = λ³ V⁵ / [30.4 (s − 1) w^1.5 A]</pre>
 *
 * <p>C volume fraction; λ (f in the working) Darcy friction factor of the carrier alone; V velocity
 * at the limit [m/s]; s density of sand over density of carrier; w settling velocity of one grain
 * [m/s]; A section [m²]. The factor 30.4 has a dimension, (m/s)^3.5/m², so SI is needed.
 *
 * <p>Fitted to sewers, C below about 0.2 %; among the data were fine sands of 0.16 and 0.37 mm
 * (from memory, unverified). For coarser grains w keeps it rising.
 */
final class Macke1982 extends DepositionVelocityModel {
  private static final double FACTOR = 30.4;

  /** The power of the friction factor when the equation is solved for V: 3/5. */
  private static final double POWER = 0.6;

  private static final Citation SOURCE =
      new Citation(
              "Macke",
              1982,
              "Mitteilungen des Leichtweiss-Instituts 71, Technische Universität Braunschweig")
          .fromMemory("coefficients");
  private static final Equation CARRIED =
      SOURCE.equation(
          "C",
          "volume fraction carried at that velocity",
          "f^3 V_Macke^5 / (30.4 (s - 1) w^1.5 A)",
          Kind.NUMBER,
          "f, V_Macke m/s, s, w m/s, A m2");

  private static final Equation FOUND =
      Equation.search(
          "V_Macke",
          "deposition velocity by Macke",
          "velocity that carries the volume fraction C",
          Kind.VELOCITY,
          SOURCE.toString(),
          "C, D m");

  Macke1982() {
    super(
        "macke-1982", "Macke, limit of deposition", Limit.ANY_BED, SOURCE, May1996.SEWERS, CARRIED);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    return valueMps(slurry, slurry.d50Grain(), slurry.volumeFraction(), bore, trace);
  }

  static double valueMps(Slurry slurry, Grain grain, double fraction, Bore bore, Trace trace) {
    if (!(fraction > 0)) {
      return 0;
    }
    double load = fraction * resistance(slurry, grain, bore);
    double velocity = VelocityScale.atFrictionMps(slurry, bore, POWER, Math.pow(load, 0.2));
    if (trace.records()) {
      double fall = SettlingVelocities.DEFAULT.velocityMps(grain, slurry.liquid(), trace).value();
      trace.step(FOUND, velocity, fraction, bore.diameterM());
      double friction = VelocityScale.friction(slurry, bore, velocity, trace);
      double ratio = slurry.densityRatio();
      trace.step(CARRIED, fraction, friction, velocity, ratio, fall, bore.areaM2());
    }
    return velocity;
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
    return FACTOR * (slurry.densityRatio() - 1) * settling * Math.sqrt(settling) * areaM2;
  }
}
