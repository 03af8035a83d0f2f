package sandslurry.separation.cyclone;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.Kind;

/**
 * The dimensionless model of Medronho and Svarovsky for cyclones in Rietema's proportions.
 *
 * <pre>
 * Eu       = 371.5 Re^0.116 exp(−2.12 C)
 * Stk50 Eu = 0.047 (ln(1/Rw))^0.74 exp(8.96 C)
 * Rw       = 1218 (Du/D)^4.75 Eu^(−0.30)
 * Eu = Δp / (ρ u²/2),  Re = ρ u D/μ,  Stk50 = (ρs − ρ) u d50² / (18 μ D),  u = 4 Q/(π D²)
 * </pre>
 *
 * <p>Δp pressure drop [Pa]; D diameter of the cyclone, Du of the apex [m]; ρ, μ density [kg/m³] and
 * viscosity [Pa.s] of the liquor; ρs density of the sand; C volume fraction of sand; Q flow into
 * one cyclone [m³/s]; d50 reduced cut size [m]; Rw share of the water that leaves below, taken as
 * the share of the volume. Viscosity enters by Stokes's law. The sharpness is 2.45, which Coelho
 * and Medronho (2001, Chemical Engineering Journal 84:7-14) give for this family (the number was
 * read in a public program after that paper).
 *
 * <p>Range: up to 10 % sand by volume, Rietema's proportions (Di/D 0.28, Do/D 0.34, free vortex 4.6
 * D), and Rw up to one half. A wide apex would by the formula take more than all the water: then
 * the share is held at 0.99 and reported as outside.
 *
 * <p>Source: Medronho and Svarovsky (1984), Second International Conference on Hydrocyclones, Bath,
 * as in Svarovsky (1984), Hydrocyclones; coefficients from memory, unverified. They agree with the
 * simpler form of Massarani for the same family (Rw = 145 (Du/D)^4.75 and Eu = 1200, read in a
 * public collection of course programs): 1218 · 1200^(−0.30) = 145.
 */
public final class MedronhoSvarovsky1984 extends Published implements HydrocycloneModel {
  private static final Bound SAND = new Bound("volume fraction of sand", Kind.PERCENT, 0, 0.10);
  private static final Bound WATER_SHARE =
      new Bound("share of water in the underflow", Kind.PERCENT, 0, 0.5);
  private static final Bound INLET =
      new Bound("inlet over diameter of the cyclone", Kind.NUMBER, 0.25, 0.31);
  private static final Bound OVERFLOW =
      new Bound("vortex finder over diameter of the cyclone", Kind.NUMBER, 0.31, 0.37);
  private static final Bound VORTEX =
      new Bound("free vortex over diameter of the cyclone", Kind.NUMBER, 4.1, 5.1);
  private static final double MOST_WATER = 0.99;
  private static final double SHARPNESS = 2.45;

  private static final Citation SOURCE =
      new Citation(
              "Medronho and Svarovsky", 1984, "2nd International Conference on Hydrocyclones, Bath")
          .fromMemory("coefficients");
  private static final Equation VELOCITY =
      SOURCE.equation(
          "V",
          "velocity of the feed over the body",
          "Q / (pi/4 D^2)",
          Kind.VELOCITY,
          "Q m3/s, D m");
  private static final Equation REYNOLDS =
      SOURCE.equation(
          "Re",
          "Reynolds number of the body",
          "rho V D/mu",
          Kind.NUMBER,
          "rho kg/m3, V m/s, D m, mu Pa.s");
  private static final Equation EULER =
      SOURCE.equation("Eu", "Euler number", "371.5 Re^0.116 exp(-2.12 C)", Kind.NUMBER, "Re, C");
  private static final Equation WATER =
      SOURCE.equation(
          "R_w",
          "share of the water that leaves below",
          "min(0.99, 1218 (D_u/D)^4.75 Eu^-0.30)",
          Kind.PERCENT,
          "D_u m, D m, Eu");
  private static final Equation STOKES =
      SOURCE.equation(
          "Stk",
          "Stokes number of the cut size",
          "0.047 ln(1/R_w)^0.74 exp(8.96 C)/Eu",
          Kind.NUMBER,
          "R_w, C, Eu");
  private static final Equation CUT =
      SOURCE.equation(
          "d50c",
          "cut size of the grains that do not follow the water",
          "sqrt(18 mu D Stk / ((rho_s - rho) V))",
          Kind.GRAIN,
          "mu Pa.s, D m, Stk, rho_s kg/m3, rho kg/m3, V m/s");
  private static final Equation PRESSURE =
      SOURCE.equation(
          "dp",
          "pressure drop of the cyclone",
          "Eu rho V^2/2",
          Kind.PRESSURE,
          "Eu, rho kg/m3, V m/s");

  /** Creates the model; it has no state. */
  public MedronhoSvarovsky1984() {
    super(
        "medronho-svarovsky-1984",
        "Medronho and Svarovsky",
        SOURCE,
        List.of(SAND, WATER_SHARE, INLET, OVERFLOW, VORTEX),
        CUT,
        STOKES,
        EULER,
        WATER,
        PRESSURE);
  }

  @Override
  public CyclonePerformance performance(
      HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace) {
    double body = geometry.bodyM();
    double density = feed.liquid().densityKgM3();
    double viscosity = feed.liquid().viscosityPaS();
    double sand = feed.volumeFraction();
    double velocity = feed.flowM3ps() / (Math.PI / 4 * body * body);
    double reynolds = density * velocity * body / viscosity;
    double euler = 371.5 * Math.pow(reynolds, 0.116) * Math.exp(-2.12 * sand);
    double water = 1218 * Math.pow(geometry.underflowM() / body, 4.75) * Math.pow(euler, -0.30);
    List<Bound.Excess> excesses = new ArrayList<>();
    SAND.check(sand).ifPresent(excesses::add);
    WATER_SHARE.check(water).ifPresent(excesses::add);
    INLET.check(geometry.inletM() / body).ifPresent(excesses::add);
    OVERFLOW.check(geometry.overflowM() / body).ifPresent(excesses::add);
    VORTEX.check(geometry.freeVortexM() / body).ifPresent(excesses::add);
    double share = Math.min(water, MOST_WATER);
    double stokes = 0.047 * Math.pow(-Math.log(share), 0.74) * Math.exp(8.96 * sand) / euler;
    double cut =
        Math.sqrt(18 * viscosity * body * stokes / ((feed.sandDensityKgM3() - density) * velocity));
    double pressure = euler * density * velocity * velocity / 2;
    trace.step(VELOCITY, velocity, feed.flowM3ps(), body);
    trace.step(REYNOLDS, reynolds, density, velocity, body, viscosity);
    trace.step(EULER, euler, reynolds, sand);
    trace.step(WATER, share, geometry.underflowM(), body, euler);
    trace.step(STOKES, stokes, share, sand, euler);
    trace.step(CUT, cut, viscosity, body, stokes, feed.sandDensityKgM3(), density, velocity);
    trace.step(PRESSURE, pressure, euler, density, velocity);
    return new CyclonePerformance(cut, pressure, share, SHARPNESS, excesses);
  }
}
