package sandslurry.pump.derating;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Correlation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
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

  private static final Citation SOURCE =
      new Citation(
          "Hydraulic Institute",
          2010,
          "ANSI/HI 9.6.7, Effects of Liquid Viscosity on Rotodynamic Pump Performance, as in ISO/TR"
              + " 17766:2005; equations, range and worked example read in public accounts of it,"
              + " not in the standard");
  private static final Equation PARAMETER_B =
      SOURCE.equation(
          "B",
          "parameter of the liquid in this pump",
          "16.5 nu[mm2/s]^0.5 H^0.0625 / (Q[m3/h]^0.375 N[1/min]^0.25)",
          Kind.NUMBER,
          "nu m2/s, H m, Q m3/s, N 1/s");
  private static final Equation C_Q =
      SOURCE.equation(
          "C_Q",
          "flow rate, and head at the best point, in the liquid over those in water",
          "exp(-0.165 log10(B)^3.15) for B > 1; else 1",
          Kind.NUMBER,
          "B");
  private static final Equation C_ETA =
      SOURCE.equation(
          "C_eta",
          "efficiency in the liquid over that in water",
          "B^(-0.0547 B^0.69) for B > 1; else 1",
          Kind.NUMBER,
          "B");

  private static final About ABOUT =
      new About(
          "hydraulic-institute-viscous",
          "Hydraulic Institute, viscous liquids",
          "B = 16.5 nu^0.5 H^0.0625/(Q^0.375 N^0.25); C_Q = exp(-0.165 (log10 B)^3.15);"
              + " C_H = 1 - (1 - C_Q)(Q_w/Q)^0.75; C_eta = B^(-0.0547 B^0.69)",
          SOURCE,
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
    return correction(best, kinematicViscosityM2ps, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param best the best efficiency point in water
   * @param kinematicViscosityM2ps kinematic viscosity of the liquid in the pump, positive [m2/s]
   * @param trace what keeps the steps
   * @return the correction, and what lay outside the range
   * @throws IllegalArgumentException if the viscosity is not positive
   */
  public ViscousCorrection correction(BestPoint best, double kinematicViscosityM2ps, Trace trace) {
    if (!(kinematicViscosityM2ps > 0 && Double.isFinite(kinematicViscosityM2ps))) {
      throw new IllegalArgumentException(
          "a kinematic viscosity must be > 0 but was " + kinematicViscosityM2ps + " m2/s");
    }
    double b =
        16.5
            * Math.sqrt(InUnit.CENTISTOKES.of(kinematicViscosityM2ps))
            * Math.pow(best.headM(), 0.0625)
            / (Math.pow(InUnit.CUBIC_METRE_PER_HOUR.of(best.flowM3ps()), 0.375)
                * Math.pow(InUnit.PER_MINUTE.of(best.speedPs()), 0.25));
    trace.step(
        PARAMETER_B, b, kinematicViscosityM2ps, best.headM(), best.flowM3ps(), best.speedPs());
    double flow = b <= 1 ? 1 : Math.exp(-0.165 * Math.pow(Math.log10(b), 3.15));
    double efficiency = b <= 1 ? 1 : Math.pow(b, -0.0547 * Math.pow(b, 0.69));
    trace.step(C_Q, flow, b);
    trace.step(C_ETA, efficiency, b);
    if (b <= 1) {
      return new ViscousCorrection(best, b, 1, 1, List.of());
    }
    List<Bound.Excess> excesses = new ArrayList<>();
    VISCOSITY.check(kinematicViscosityM2ps).ifPresent(excesses::add);
    PARAMETER.check(b).ifPresent(excesses::add);
    SHAPE.check(best.specificSpeed()).ifPresent(excesses::add);
    FLOW.check(best.flowM3ps()).ifPresent(excesses::add);
    HEAD.check(best.headM()).ifPresent(excesses::add);
    return new ViscousCorrection(best, b, flow, efficiency, excesses);
  }

  private static double hourly(double cubicMetres) {
    return Measure.FLOW.entry("m3/h").toSi(cubicMetres);
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
