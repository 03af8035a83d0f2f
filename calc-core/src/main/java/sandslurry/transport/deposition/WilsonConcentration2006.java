package sandslurry.transport.deposition;

import sandslurry.correlation.Citation;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Limit of stationary deposition at a concentration after Wilson, Addie, Sellgren and Clift: a part
 * of the largest value over all concentrations.
 *
 * <pre>
 * V = Vr Vmax,  Cr = C/0.60,  Crm = 0.16 D^0.40 d^−0.84 [(s − 1)/1.65]^−0.17
 * Crm ≤ 1/3:  Vr = 6.75 Cr^a (1 − Cr^a)²,           a = ln(1/3)/ln Crm
 * Crm > 1/3:  Vr = 6.75 (1 − Cr)^2b [1 − (1 − Cr)^b],  b = ln(2/3)/ln(1 − Crm)
 * </pre>
 *
 * <p>V deposition velocity [m/s]; Vmax its largest value over all concentrations, here the larger
 * of {@link GilliesShook} and {@link WilsonBounded} [m/s]; C volume fraction, 0.60 that of a packed
 * bed; Crm relative concentration at which the largest value occurs, at most 0.66; D bore [m]; d
 * grain size in <b>millimetres</b>; s density of sand over density of carrier. In print stand 0.33,
 * 0.333 and 0.666; thirds make the two branches meet. At Cr = Crm the factor is 1 in both. The open
 * implementation named below holds Crm at 0.05 or more, which gives less for dilute coarse sand and
 * is not done here.
 *
 * <p>Beyond Crm the published factor falls again, as a bed of much sand is a thin layer of liquid
 * away from filling the pipe; <b>that credit is not given</b>: there the factor stays 1. For dilute
 * fine sand it tends to 0, far below what sewers need: other relations must hold there.
 */
final class WilsonConcentration2006 extends DepositionVelocityModel {
  private static final double PACKED = 0.60;
  private static final double HIGHEST_CRM = 0.66;
  private static final double THIRD = 1.0 / 3;
  private static final DepositionVelocityModel FIRST = new GilliesShook();
  private static final DepositionVelocityModel SECOND = new WilsonBounded();

  private static final Citation SOURCE =
      new Citation(
              "Wilson, Addie, Sellgren and Clift",
              2006,
              "Slurry Transport Using Centrifugal Pumps, 3rd edition, Springer; coefficients read"
                  + " in R. Ramsdell's open implementation of Miedema, Slurry Transport, eq."
                  + " 6.20-35 and 36")
          .fromMemory("V_max by Gillies and Shook");
  private static final Equation CR =
      SOURCE.equation("C_r", "concentration over that of a packed bed", "C/0.60", Kind.NUMBER, "C");
  private static final Equation CRM =
      SOURCE.equation(
          "C_rm",
          "the same at which the deposition velocity is largest",
          "min(0.66, 0.16 D^0.40 d[mm]^-0.84 ((s - 1)/1.65)^-0.17)",
          Kind.NUMBER,
          "D m, d m, s");
  private static final Equation VR =
      SOURCE.equation(
          "V_r",
          "share of the largest deposition velocity at this concentration",
          "1 for C_r >= C_rm; 6.75 C_r^(ln(1/3)/ln(C_rm)) (1 - C_r^(ln(1/3)/ln(C_rm)))^2 for C_rm"
              + " <= 1/3; else 6.75 (1 - C_r)^(2 ln(2/3)/ln(1 - C_rm)) (1 - (1 - C_r)^(ln(2/3)/ln(1"
              + " - C_rm)))",
          Kind.NUMBER,
          "C_r, C_rm");
  private static final Equation VMAX =
      SOURCE.equation(
          "V_max",
          "largest deposition velocity at any concentration",
          "max(V_GS, V_WB)",
          Kind.VELOCITY,
          "V_GS m/s, V_WB m/s");
  private static final Equation V =
      SOURCE.equation(
          "V",
          "deposition velocity at this concentration",
          "V_r V_max",
          Kind.VELOCITY,
          "V_r, V_max m/s");

  WilsonConcentration2006() {
    super(
        "wilson-concentration-2006",
        "Wilson, factor for the concentration",
        Limit.STATIONARY_BED,
        SOURCE,
        Within.PUBLISHED.and(Wilson1986Fit.GRAIN_AND_PIPE).fraction(0.002, 0.35).likeWater(),
        V,
        VR,
        CR,
        CRM);
  }

  @Override
  double valueMps(Slurry slurry, Bore bore, Trace trace) {
    double gillies = FIRST.valueMps(slurry, bore, trace);
    double wilson = SECOND.valueMps(slurry, bore, trace);
    double largest = trace.step(VMAX, Math.max(gillies, wilson), gillies, wilson);
    double factor = factor(slurry, slurry.d50M(), slurry.volumeFraction(), bore, trace);
    return trace.step(V, factor * largest, factor, largest);
  }

  /**
   * The factor Vr.
   *
   * @param slurry sand and carrier, for their densities
   * @param sizeM grain size [m]
   * @param fraction volume fraction of the sand
   * @param bore the pipe
   * @param trace what keeps the steps
   * @return deposition velocity over its largest value, 0 to 1, never falling with the fraction
   */
  static double factor(Slurry slurry, double sizeM, double fraction, Bore bore, Trace trace) {
    double relative = trace.step(CR, fraction / PACKED, fraction);
    double most = crowded(slurry.densityRatio(), sizeM, bore);
    trace.step(CRM, most, bore.diameterM(), sizeM, slurry.densityRatio());
    return trace.step(VR, factor(fraction, most), relative, most);
  }

  /** The relative concentration at which the largest velocity occurs. */
  static double crowded(double densityRatio, double sizeM, Bore bore) {
    return Math.min(
        HIGHEST_CRM,
        0.16
            * Math.pow(bore.diameterM(), 0.40)
            * Math.pow(InUnit.MILLIMETRE.of(sizeM), -0.84)
            * Math.pow((densityRatio - 1) / 1.65, -0.17));
  }

  /** The factor Vr where that concentration is known. */
  static double factor(double fraction, double most) {
    double relative = fraction / PACKED;
    if (relative >= most) {
      return 1;
    }
    if (most <= THIRD) {
      double power = Math.pow(relative, Math.log(THIRD) / Math.log(most));
      return 6.75 * power * (1 - power) * (1 - power);
    }
    double power = Math.pow(1 - relative, Math.log(2 * THIRD) / Math.log(1 - most));
    return 6.75 * power * power * (1 - power);
  }
}
