package sandslurry.separation.cyclone;

import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.units.InUnit;

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
final class FlintoffPlittTurak1987 implements HydrocycloneModel {
  private static final About ABOUT =
      new About(
          "flintoff-plitt-turak-1987",
          "Plitt, revised by Flintoff, Plitt and Turak",
          "d50c = 39.7 Dc^0.46 Di^0.6 Do^1.21 mu^0.5 exp(0.063 C)"
              + " / (Du^0.71 h^0.38 Q^0.45 ((rho_s - rho)/1.6)^0.5)",
          new Citation(
              "Flintoff, Plitt and Turak",
              1987,
              "CIM Bulletin 80(905):39-50; coefficients from memory, unverified"),
          Plitt1976.commonRange());

  @Override
  public CyclonePerformance performance(HydrocycloneGeometry geometry, CycloneFeed feed) {
    Plitt1976.Scaled in = new Plitt1976.Scaled(geometry, feed);
    double cut =
        39.7
            * in.cutOfGeometryAndFlow()
            * Math.sqrt(InUnit.centipoise(feed.liquid().viscosityPaS()))
            / Math.sqrt(in.densityDifference / 1.6);
    double pressure = 1.88 * Math.pow(in.flow, 1.8) * in.pressureOfGeometryAndSand();
    return in.performance(cut, pressure, feed, in.excesses(feed));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
