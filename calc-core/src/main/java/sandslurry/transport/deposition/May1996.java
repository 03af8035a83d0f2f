package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Limit of deposition in sewers after May and others at HR Wallingford: no grain at rest.
 *
 * <pre>
 * C = 0.0303 (D²/A) (d/D)^0.6 [V²/(g (s − 1) D)]^1.5 (1 − Vt/V)^4
 * Vt = 0.125 √(g (s − 1) d) (y/d)^0.47
 * </pre>
 *
 * <p>C volume fraction; D bore [m]; A wetted section [m²], here that of the full pipe; d grain size
 * [m]; V velocity at the limit [m/s]; g gravity [m/s²]; s density of sand over density of carrier;
 * Vt velocity at which grains begin to move [m/s]; y depth of flow [m], here D. Every term is
 * without dimension. With x = V^(1/4) the equation is x⁴ − k x − Vt = 0, which has one positive
 * root.
 *
 * <p>Made for sand of less than about 0.2 % by volume in part-full and full pipes. The tests at HR
 * Wallingford with 0.72 mm sand in a 300 mm concrete pipe (SR 221) spanned 0.3 to 440 ppm at 0.5 to
 * 1.5 m/s; for that sand in that pipe, full, this gives 1.0, 34 and 168 ppm at 0.5, 1.0 and 1.5
 * m/s. Viscosity does not enter. Coarser grains are asked for less, as V goes with about d^−0.2.
 * The limits of grain size and bore are those within which it is used here, not published ones.
 */
final class May1996 extends DepositionVelocityModel {
  /** The most sand by volume that the relations for sewers are asked for. */
  static final double MOST_SAND = 0.002;

  static final Within SEWERS =
      Within.PUBLISHED.size(0.15e-3, 8e-3).bore(0.07, 0.45).fraction(3e-7, MOST_SAND);

  private static final Citation SOURCE =
      new Citation(
              "May, Ackers, Butler and John",
              1996,
              "Water Science and Technology 33(9):195-202, after HR Wallingford report SR 221"
                  + " (1989), as in CIRIA report 141")
          .fromMemory("coefficients");
  private static final Equation VT =
      SOURCE.equation(
          "V_t",
          "velocity at which the grain begins to move",
          "0.125 sqrt(g (s - 1) d) (D/d)^0.47",
          Kind.VELOCITY,
          "s, d m, D m");
  private static final Equation CARRIED =
      SOURCE.equation(
          "C",
          "volume fraction carried at that velocity",
          "0.0303 (D^2/A) (d/D)^0.6 (V_May^2/(g (s - 1) D))^1.5 (1 - V_t/V_May)^4",
          Kind.NUMBER,
          "V_May m/s, V_t m/s, D m, A m2, d m, s");

  private static final Equation FOUND =
      Equation.search(
          "V_May",
          "deposition velocity by May",
          "velocity that carries the volume fraction C",
          Kind.VELOCITY,
          SOURCE.toString(),
          "C, d m, V_t m/s");

  May1996() {
    super(
        "may-1996",
        "May, limit of deposition",
        Limit.ANY_BED,
        SOURCE,
        SEWERS.likeWater(),
        CARRIED,
        VT);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    return valueMps(slurry, slurry.d50M(), slurry.volumeFraction(), bore, trace);
  }

  static double valueMps(Slurry slurry, double sizeM, double fraction, Bore bore, Trace trace) {
    double threshold = thresholdMps(slurry, sizeM, bore);
    double velocity = valueMps(fraction, threshold, capacity(slurry, sizeM, bore));
    trace.step(VT, threshold, slurry.densityRatio(), sizeM, bore.diameterM());
    trace.step(FOUND, velocity, fraction, sizeM, threshold);
    trace.step(
        CARRIED,
        fraction,
        velocity,
        threshold,
        bore.diameterM(),
        bore.areaM2(),
        sizeM,
        slurry.densityRatio());
    return velocity;
  }

  /** The velocity at which a flow of a threshold and a capacity carries a fraction. */
  static double valueMps(double fraction, double threshold, double capacity) {
    double k = Math.pow(fraction / capacity, 0.25);
    // Newton from above on x^4 - k x - Vt, convex and rising beyond its one positive root.
    double x = Math.cbrt(k) + Math.pow(threshold, 0.25);
    for (int i = 0; i < 60; i++) {
      double step = (x * x * x * x - k * x - threshold) / (4 * x * x * x - k);
      x -= step;
      if (Math.abs(step) < 1e-15 * x) {
        break;
      }
    }
    return x * x * x * x;
  }

  /** Vt [m/s]. */
  static double thresholdMps(Slurry slurry, double sizeM, Bore bore) {
    return thresholdMps(slurry, sizeM, bore.diameterM());
  }

  /** Vt at a depth of flow [m/s]. */
  static double thresholdMps(Slurry slurry, double sizeM, double depthM) {
    return 0.125
        * Math.sqrt(Physics.GRAVITY * (slurry.densityRatio() - 1) * sizeM)
        * Math.pow(depthM / sizeM, 0.47);
  }

  /** What V³ (1 − Vt/V)⁴ is multiplied by to give the concentration [s³/m³]. */
  static double capacity(Slurry slurry, double sizeM, Bore bore) {
    return capacity(slurry, sizeM, bore.diameterM(), bore.areaM2());
  }

  /** The same of a wetted section of a pipe. */
  static double capacity(Slurry slurry, double sizeM, double pipe, double areaM2) {
    double weight = Physics.GRAVITY * (slurry.densityRatio() - 1);
    return 0.0303
        * pipe
        * pipe
        / areaM2
        * Math.pow(sizeM / pipe, 0.6)
        / Math.pow(weight * pipe, 1.5);
  }
}
