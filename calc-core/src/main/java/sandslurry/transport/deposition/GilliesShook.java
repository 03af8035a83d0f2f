package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Limit of stationary deposition by Archimedes number, after the work of Gillies and Shook at
 * Saskatchewan.
 *
 * <pre>
 * V = F √(g D (s − 1))
 * F = 0.197 Ar^0.4      Ar up to 160
 * F = 1.19 Ar^0.045     160 to 540
 * F = 1.78 Ar^−0.019    above 540
 * Ar = 4 g d³ ρ (ρs − ρ) / (3 μ²)
 * </pre>
 *
 * <p>V deposition velocity [m/s]; g gravity [m/s²]; D bore [m]; s = ρs/ρ density of sand over
 * density of carrier; d grain size d50 [m]; ρ, ρs densities of carrier and sand [kg/m³]; μ dynamic
 * viscosity of the carrier [Pa.s]. Mind the root, which is without the 2 of Durand, and the 4/3 in
 * Ar.
 *
 * <p>Published for sand of Ar above 80 in pipes of 50 to 500 mm, turbulent flow of a Newtonian
 * carrier of any viscosity: of all formulas of the family it treats viscosity best. Concentration
 * does not enter; no lower limit of it is set, because less sand asks for no more velocity.
 *
 * <p>Below Ar = 80 (0.155 mm in water at 20 °C) the first line is simply carried on, so that the
 * value is continuous, and the result says that it is out of range; there {@link Thomas1979} gives
 * the floor. The pieces do not quite meet: the value falls by 0.3 % at 160 and by 4e-7 of itself at
 * 540.
 */
final class GilliesShook extends DepositionVelocityModel {
  static final Within PIPE = Within.PUBLISHED.bore(0.05, 0.5).fraction(0, 0.35);
  private static final double FIRST = 160;
  private static final double SECOND = 540;
  private static final double FINE_END = fine(FIRST);

  /** F of the second line at its end, where it is largest. */
  private static final double PEAK = middle(SECOND);

  private static final Citation SOURCE =
      new Citation(
              "Shook, Gillies and Sanders",
              2002,
              "Pipeline Hydrotransport with Applications in the Oil Sand Industry, SRC Publication"
                  + " 11508-1E02, Saskatoon")
          .fromMemory("coefficients and range");
  private static final Equation AR =
      SOURCE.equation(
          "Ar",
          "Archimedes number of the grain",
          "4 g d^3 rho (rho_s - rho) / (3 mu^2)",
          Kind.NUMBER,
          "d m, rho kg/m3, rho_s kg/m3, mu Pa.s");
  private static final Equation F =
      SOURCE.equation(
          "F",
          "factor of Gillies and Shook",
          "0.197 Ar^0.4 for Ar < 160; 1.19 Ar^0.045 for Ar < 540; else 1.78 Ar^-0.019",
          Kind.NUMBER,
          "Ar");
  private static final Equation F_HELD =
      SOURCE.equation(
          "F",
          "factor of Gillies and Shook, held at its peak",
          "0.197 Ar^0.4 for Ar < 160; else max(1.19 min(Ar, 540)^0.045, 0.197 * 160^0.4)",
          Kind.NUMBER,
          "Ar");
  private static final Equation V =
      SOURCE.equation(
          "V_GS",
          "deposition velocity by Gillies and Shook",
          "F sqrt(g D (s - 1))",
          Kind.VELOCITY,
          "F, D m, s");

  GilliesShook() {
    super(
        "gillies-shook-2002",
        "Gillies and Shook, Archimedes number",
        Limit.STATIONARY_BED,
        SOURCE,
        Within.PUBLISHED
            .and(
                "Archimedes number",
                Kind.NUMBER,
                80,
                Double.POSITIVE_INFINITY,
                (sand, pipe, v) -> archimedes(sand))
            .and(PIPE)
            .turbulent(),
        V,
        F,
        AR);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double ar = archimedes(slurry, trace);
    return valueMps(slurry, bore, trace.step(F, froude(ar), ar), trace);
  }

  /**
   * Archimedes number of the grain d50.
   *
   * @param slurry sand and carrier
   * @return 4 g d³ ρ (ρs − ρ) / (3 μ²)
   */
  static double archimedes(Slurry slurry) {
    return archimedes(slurry, Trace.NONE);
  }

  private static double archimedes(Slurry slurry, Trace trace) {
    return archimedes(slurry, slurry.d50M(), trace);
  }

  private static double archimedes(Slurry slurry, double d, Trace trace) {
    Liquid liquid = slurry.liquid();
    double buoyant = liquid.densityKgM3() * (slurry.sandDensityKgM3() - liquid.densityKgM3());
    double viscosity = liquid.viscosityPaS();
    return trace.step(
        AR,
        4 * Physics.GRAVITY * d * d * d * buoyant / (3 * viscosity * viscosity),
        d,
        liquid.densityKgM3(),
        slurry.sandDensityKgM3(),
        viscosity);
  }

  private static double froude(double ar) {
    if (ar < FIRST) {
      return fine(ar);
    }
    return ar < SECOND ? middle(ar) : 1.78 * Math.pow(ar, -0.019);
  }

  private static double fine(double ar) {
    return 0.197 * Math.pow(ar, 0.4);
  }

  private static double middle(double ar) {
    return 1.19 * Math.pow(ar, 0.045);
  }

  private static double valueMps(Slurry slurry, Bore bore, double factor, Trace trace) {
    double value = factor * VelocityScale.withoutTwoMps(slurry, bore);
    return trace.step(V, value, factor, bore.diameterM(), slurry.densityRatio());
  }

  /** The largest velocity of grains of a size and of all finer ones [m/s]. */
  static double risingMps(Slurry slurry, double sizeM, Bore bore, Trace trace) {
    double ar = archimedes(slurry, sizeM, trace);
    return valueMps(slurry, bore, trace.step(F_HELD, risingFroude(ar), ar), trace);
  }

  /** The largest F of this grain and all finer ones: F without its fall at 160 and above 540. */
  static double risingFroude(double ar) {
    if (ar < FIRST) {
      return fine(ar);
    }
    return ar < SECOND ? Math.max(middle(ar), FINE_END) : PEAK;
  }
}
