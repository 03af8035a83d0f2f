package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Wilson's nomograph of 1979 for the limit of stationary deposition, by the fit that he published
 * in 1986.
 *
 * <pre>V = 8.8 [μs (s − 1)/0.66]^0.55 D^0.7 d^1.75 / (d² + 0.11 D^0.7)</pre>
 *
 * <p>V largest deposition velocity over all concentrations [m/s]; μs coefficient of sliding
 * friction between sand and pipe, 0.40, for which the bracket is 1 with quartz in water; s density
 * of sand over density of carrier; D bore [m]; d grain size d50 in <b>millimetres</b>. The
 * concentration does not enter because the value is the maximum over it; for dilute sand it is
 * therefore on the safe side, and no lower limit of concentration is set.
 *
 * <p>Made from a two-layer force balance for 0.15 to 6 mm in pipes of 0.1 to 1 m with water; the
 * carrier counts as water here up to twice the viscosity of water at 20 °C, which is our reading.
 * The value is largest at d = √(0.77 D^0.7), the Murphian size, near 0.45 mm in a 150 mm pipe; near
 * it the fit runs higher than later theory allows, which is why {@link WilsonBounded} caps it.
 */
final class Wilson1986Fit extends DepositionVelocityModel {
  static final Within GRAIN_AND_PIPE = Within.PUBLISHED.size(0.15e-3, 6e-3).bore(0.1, 1);
  static final Within WITHIN = GRAIN_AND_PIPE.fraction(0, 0.35).likeWater();
  private static final double SLIDING_FRICTION = 0.40;

  private static final Citation SOURCE =
      new Citation(
          "Wilson",
          1979,
          "Hydrotransport 6, BHRA, Canterbury; fit of Wilson (1986), Journal of Pipelines 5, as"
              + " quoted from Miedema, Slurry Transport, eq. 6.20-34; range from memory,"
              + " unverified");
  private static final Equation V =
      SOURCE.equation(
          "V_W",
          "deposition velocity by the nomograph of Wilson",
          "8.8 (0.40 (s - 1)/0.66)^0.55 D^0.7 d[mm]^1.75 / (d[mm]^2 + 0.11 D^0.7)",
          Kind.VELOCITY,
          "d m, D m, s");
  private static final Equation V_HELD =
      SOURCE.equation(
          "V_W",
          "deposition velocity by the nomograph of Wilson for d_n, held at its peak",
          "8.8 (0.40 (s - 1)/0.66)^0.55 D^0.7 min(d_n[mm], (0.77 D^0.7)^0.5)^1.75 / (min(d_n[mm],"
              + " (0.77 D^0.7)^0.5)^2 + 0.11 D^0.7)",
          Kind.VELOCITY,
          "d_n m, D m, s");

  Wilson1986Fit() {
    super(
        "wilson-1986-fit",
        "Wilson, nomograph without its bound",
        Limit.STATIONARY_BED,
        SOURCE,
        WITHIN,
        V);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    return trace.step(
        V,
        InPipe.of(slurry, bore).valueMps(InUnit.MILLIMETRE.of(slurry.d50M())),
        slurry.d50M(),
        bore.diameterM(),
        slurry.densityRatio());
  }

  /**
   * The fit in one pipe, c d^1.75 / (d² + b).
   *
   * @param c 8.8 [μs (s − 1)/0.66]^0.55 D^0.7
   * @param b 0.11 D^0.7
   */
  record InPipe(double c, double b) {
    static InPipe of(Slurry slurry, Bore bore) {
      double pipe = Math.pow(bore.diameterM(), 0.7);
      double buoyancy = SLIDING_FRICTION * (slurry.densityRatio() - 1) / 0.66;
      return new InPipe(8.8 * Math.pow(buoyancy, 0.55) * pipe, 0.11 * pipe);
    }

    private double valueMps(double d) {
      double root = Math.sqrt(d);
      return c * d * root * Math.sqrt(root) / (d * d + b);
    }

    /** The largest velocity of grains of a size and of all finer ones: held beyond the peak. */
    double risingMps(double sizeM) {
      // The derivative of the fit in d is 0 at d^2 = 7 b.
      return valueMps(Math.min(InUnit.MILLIMETRE.of(sizeM), Math.sqrt(7 * b)));
    }
  }

  /** The largest velocity of grains of a size and of all finer ones [m/s]. */
  static double risingMps(Slurry slurry, double sizeM, Bore bore, Trace trace) {
    double value = InPipe.of(slurry, bore).risingMps(sizeM);
    return trace.step(V_HELD, value, sizeM, bore.diameterM(), slurry.densityRatio());
  }
}
