package sandslurry.pump.derating;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.pump.rotodynamic.BestPoint;
import sandslurry.pump.rotodynamic.ViscousCorrection;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * What a viscous liquid takes from a rotodynamic pump, by the Hydraulic Institute.
 *
 * <pre>
 * B = 16.5 ν^0.5 H^0.0625 / (Q^0.375 N^0.25)
 * C_Q = exp(−0.165 (log10 B)^3.15)
 * C_H = 1 − (1 − C_Q) (Q_w/Q)^0.75
 * C_η = B^(−0.0547 B^0.69)
 * </pre>
 *
 * <p>ν kinematic viscosity [mm2/s]; H head of one stage [m], Q flow [m3/h] and N speed [1/min] at
 * the best point in water; Q_w flow in water of the point that is corrected. The point (Q_w, H_w,
 * η_w) of the curve for water moves to (C_Q Q_w, C_H H_w, C_η η_w). Up to B = 1 nothing changes,
 * and there all three factors are 1, so that they join without a step.
 *
 * <p>B is a Reynolds number of the impeller turned upside down, so a larger, faster pump loses less
 * in the same liquid. Beyond B = 40 the standard asks for an analysis of the losses instead; the
 * factors are given all the same and said to be out of range. The standard is for Newtonian liquids
 * only: see {@link RepresentativeViscosity}.
 */
public final class HydraulicInstituteViscous implements Correlation {
  private static final Bound VISCOSITY =
      new Bound("viscosity of the liquid in the pump", Kind.KINEMATIC_VISCOSITY, 0, 4e-3);
  private static final Bound PARAMETER =
      new Bound("parameter B of the viscous correction", Kind.NUMBER, 0, 40);
  private static final Bound SHAPE =
      new Bound("specific speed of the pump, metric", Kind.NUMBER, 0, 60);
  private static final Bound FLOW =
      new Bound("best flow of the pump", Kind.FLOW, hourly(3), hourly(260));
  private static final Bound HEAD = new Bound("head of the pump at its best", Kind.HEAD, 6, 130);

  private static final About ABOUT =
      new About(
          "hydraulic-institute-viscous",
          "Hydraulic Institute, viscous liquids",
          "B = 16.5 nu^0.5 H^0.0625/(Q^0.375 N^0.25); C_Q = exp(-0.165 (log10 B)^3.15);"
              + " C_H = 1 - (1 - C_Q)(Q_w/Q)^0.75; C_eta = B^(-0.0547 B^0.69)",
          new Citation(
              "Hydraulic Institute",
              2010,
              "ANSI/HI 9.6.7, Effects of Liquid Viscosity on Rotodynamic Pump Performance, as in ISO/TR"
                  + " 17766:2005; equations, range and worked example read in public accounts of it, not"
                  + " in the standard"),
          List.of(VISCOSITY, PARAMETER, SHAPE, FLOW, HEAD));

  /**
   * The correction of a pump in a liquid.
   *
   * @param best best point in water at the speed driven
   * @param kinematicViscosityM2ps viscosity of the liquid over its density, positive [m2/s]
   * @return the factors, and what lay outside the published range; without an excess when the
   *     liquid changes nothing
   */
  public ViscousCorrection correction(BestPoint best, double kinematicViscosityM2ps) {
    if (!(kinematicViscosityM2ps > 0 && Double.isFinite(kinematicViscosityM2ps))) {
      throw new IllegalArgumentException(
          "a kinematic viscosity must be > 0 but was " + kinematicViscosityM2ps + " m2/s");
    }
    double b =
        16.5
            * Math.sqrt(InUnit.centistokes(kinematicViscosityM2ps))
            * Math.pow(best.headM(), 0.0625)
            / (Math.pow(InUnit.cubicMetresPerHour(best.flowM3ps()), 0.375)
                * Math.pow(InUnit.perMinute(best.speedPs()), 0.25));
    if (b <= 1) {
      return new ViscousCorrection(best, b, 1, 1, List.of());
    }
    List<Bound.Excess> excesses = new ArrayList<>();
    VISCOSITY.check(kinematicViscosityM2ps).ifPresent(excesses::add);
    PARAMETER.check(b).ifPresent(excesses::add);
    SHAPE.check(best.specificSpeed()).ifPresent(excesses::add);
    FLOW.check(best.flowM3ps()).ifPresent(excesses::add);
    HEAD.check(best.headM()).ifPresent(excesses::add);
    return new ViscousCorrection(
        best,
        b,
        Math.exp(-0.165 * Math.pow(Math.log10(b), 3.15)),
        Math.pow(b, -0.0547 * Math.pow(b, 0.69)),
        excesses);
  }

  private static double hourly(double cubicMetres) {
    return Measure.FLOW.entry("m3/h").toSi(cubicMetres);
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
