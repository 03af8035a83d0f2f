package sandslurry.separation.cyclone;

import sandslurry.correlation.Citation;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * The hydrocyclone model of Plitt as revised by Flintoff, Plitt and Turak, with viscosity.
 *
 * <pre>
 * d50c = 39.7 Dc^0.46 Di^0.6 Do^1.21 μ^0.5 exp(0.063 C) / (Du^0.71 h^0.38 Q^0.45 ((ρs − ρ)/1.6)^0.5)
 * P    = 1.88 Q^1.8 exp(0.0055 C) / (Dc^0.37 Di^0.94 h^0.28 (Du² + Do²)^0.87)
 * </pre>
 *
 * <p>μ viscosity of the liquor [cP]; all other symbols, and S and m, as in {@link Plitt1976}. With
 * water at 20 °C the cut is that of 1976: 39.7 is 50.5 over √1.6, within 0.6 %. The exponent of the
 * difference of density is 0.5, that of Stokes's law; the revision leaves it open between 0.5 and
 * 1. Its four factors of calibration are 1: nothing here is fitted to a cyclone at hand.
 *
 * <p>A thick liquor makes the cut coarser by √μ. The pressure drop has no viscosity.
 *
 * <p>Source: Flintoff, Plitt and Turak (1987), CIM Bulletin 80(905):39-50; coefficients from
 * memory, unverified, save for the agreement named above and for 39.7 and the exponents, which a
 * public code has without the viscosity and the 1.6.
 */
final class FlintoffPlittTurak1987 extends Published implements HydrocycloneModel {
  private static final Citation SOURCE =
      new Citation("Flintoff, Plitt and Turak", 1987, "CIM Bulletin 80(905):39-50")
          .fromMemory("coefficients");
  private static final Equation THICKNESS =
      SOURCE.equation("t_v", "factor of the viscosity", "(mu[mPa.s])^0.5", Kind.NUMBER, "mu Pa.s");
  private static final Equation CUT =
      SOURCE.equation(
          "d50c",
          "cut size of the grains that do not follow the water, in a liquid as thick as water",
          "1e-6 * 39.7 D_c[cm]^0.46 D_i[cm]^0.6 D_o[cm]^1.21 exp(6.3 C) / (D_u[cm]^0.71 h[cm]^0.38"
              + " Q[L/min]^0.45 ((rho_s - rho)/1600)^0.5)",
          Kind.GRAIN,
          "D_c m, D_i m, D_o m, D_u m, h m, Q m3/s, C, rho_s kg/m3, rho kg/m3");
  private static final Equation PRESSURE =
      SOURCE.equation(
          "dp",
          "pressure drop of the cyclone",
          "1880 Q[L/min]^1.8 exp(0.55 C) / (D_c[cm]^0.37 D_i[cm]^0.94 h[cm]^0.28 (D_u[cm]^2 +"
              + " D_o[cm]^2)^0.87)",
          Kind.PRESSURE,
          "Q m3/s, C, D_c m, D_i m, h m, D_u m, D_o m");
  private static final Equation CUT_THICK =
      SOURCE.equation("d50", "cut size in this liquid", "t_v d50c", Kind.GRAIN, "t_v, d50c m");

  FlintoffPlittTurak1987() {
    super(
        "flintoff-plitt-turak-1987",
        "Plitt, revised by Flintoff, Plitt and Turak",
        SOURCE,
        Plitt1976.commonRange(),
        CUT_THICK,
        CUT,
        THICKNESS,
        PRESSURE);
  }

  @Override
  public CyclonePerformance performance(
      HydrocycloneGeometry geometry, CycloneFeed feed, Trace trace) {
    Plitt1976.Scaled in = new Plitt1976.Scaled(geometry, feed, trace);
    double thickness = Math.sqrt(InUnit.CENTIPOISE.of(feed.liquid().viscosityPaS()));
    double cut =
        39.7 * in.cutOfGeometryAndFlow() * thickness / Math.sqrt(in.densityDifference / 1.6);
    double pressure = 1.88 * Math.pow(in.flow, 1.8) * in.pressureOfGeometryAndSand();
    trace.step(THICKNESS, thickness, feed.liquid().viscosityPaS());
    in.steps(CUT, PRESSURE, cut / thickness, pressure);
    trace.step(
        CUT_THICK,
        cut / InUnit.MICROMETRE.of(1),
        thickness,
        cut / thickness / InUnit.MICROMETRE.of(1));
    return in.performance(cut, pressure, feed, in.excesses(feed));
  }
}
