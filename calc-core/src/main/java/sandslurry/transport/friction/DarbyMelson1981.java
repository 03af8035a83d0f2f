package sandslurry.transport.friction;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Flow of a Bingham liquid in a smooth pipe, laminar and turbulent in one, after Darby and Melson.
 *
 * <pre>
 * f = (f_L^m + f_T^m)^(1/m),  m = 1.7 + 40 000/Re
 * f_T = 10^a Re^−0.193,       a = −1.378 [1 + 0.146 exp(−2.9·10⁻⁵ He)]
 * </pre>
 *
 * <p>f Fanning friction factor, τw = f ρV²/2; f_L the exact laminar one (Buckingham and Reiner); Re
 * = ρVD/μp; He = ρD²τy/μp²; μp plastic viscosity [Pa.s].
 *
 * <p>Two leading constants are in print, −1.378 in the article and −1.47 in later texts. At a large
 * Hedström number the first returns the Newtonian smooth-pipe law (f = 0.0045 at Re = 100 000); the
 * second lies 19 % below it, and no mechanism of the model explains that. The first is used. At a
 * small Hedström number a tends to −1.579, 37 % below the Newtonian law, so the formula must not be
 * used below He of about 1000 (limit set here).
 *
 * <p>For a flow index other than 1, μp is the secant of the flowing part at the laminar wall shear
 * rate, outside the published range.
 */
public final class DarbyMelson1981 implements TurbulentFrictionModel {
  private static final double ARTICLE = -1.378;
  private static final Bound INDEX = new Bound("flow index n", Kind.NUMBER, 1, 1);
  private static final Bound HEDSTROM =
      new Bound("Hedström number", Kind.NUMBER, 1000, Double.POSITIVE_INFINITY);
  private static final Bound ROUGHNESS = new Bound("roughness", Kind.BORE, 0, 0);

  private static final About ABOUT =
      new About(
          "darby-melson-1981",
          "Darby and Melson, Bingham",
          "f = (f_L^m + f_T^m)^(1/m), f_T = 10^a Re^-0.193, a = -1.378 (1 + 0.146 exp(-2.9e-5"
              + " He)), m = 1.7 + 40000/Re, f Fanning",
          new Citation(
                  "Darby and Melson",
                  1981,
                  "Chemical Engineering 88(26):59-61; constants seen in two public codes after"
                      + " Darby, which have -1.47 for -1.378")
              .fromMemory("-1.378"),
          List.of(INDEX, HEDSTROM, ROUGHNESS));

  private final double leading;

  /** The formula with the constant of the article. */
  public DarbyMelson1981() {
    this(ARTICLE);
  }

  DarbyMelson1981(double leading) {
    this.leading = leading;
  }

  @Override
  public Estimate wallStressPa(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps) {
    LaminarPipeFlow laminar = LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps);
    double viscosity = rheology.flowingViscosityPaS(laminar.wallShearRatePs());
    double reynolds = densityKgM3 * velocityMps * bore.diameterM() / viscosity;
    double hedstrom =
        densityKgM3 * Math.pow(bore.diameterM() / viscosity, 2) * rheology.yieldStressPa();
    double dynamic = densityKgM3 * velocityMps * velocityMps / 2;
    double smooth = laminar.wallStressPa() / dynamic;
    double a = leading * (1 + 0.146 * Math.exp(-2.9e-5 * hedstrom));
    double turbulent = Math.pow(10, a) * Math.pow(reynolds, -0.193);
    double m = 1.7 + 40_000 / reynolds;
    double greater = Math.max(smooth, turbulent);
    double lesser = Math.min(smooth, turbulent);
    double factor = greater * Math.pow(1 + Math.pow(lesser / greater, m), 1 / m);
    return Estimate.checks()
        .check(INDEX, rheology.index())
        .check(HEDSTROM, hedstrom)
        .check(ROUGHNESS, bore.roughnessM())
        .value(factor * dynamic);
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
