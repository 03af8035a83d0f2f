package sandslurry.transport.deposition;

import sandslurry.fact.step.Equation;
import sandslurry.units.Kind;

/**
 * The equations of {@link DepositionLimit} and {@link DepositionRule}, as their working has them.
 */
final class DepositionEquations {
  private static final String SIZES = "the rule for each size of the sand";

  static final Equation SIZE =
      Equation.search(
          "d",
          "grain size that needs the largest velocity",
          "largest velocity by the rule among the sizes of the sand",
          Kind.GRAIN,
          SIZES,
          "C_t");
  static final Equation COUNTED_SHARE =
      Equation.lookup(
          "C",
          "volume fraction that counts for this size",
          "share of the sand that is as coarse, from the gradation; at most all of it",
          Kind.PERCENT,
          SIZES,
          "C_t",
          "d m");
  static final Equation IN_WATER =
      Equation.of(
          "d_n",
          "quartz grain in water of the same Archimedes number, for the nomograph",
          "d [(s - 1)/(2650/998.2 - 1) (1.0034e-6/nu)^2]^(1/3)",
          Kind.GRAIN,
          "equal Archimedes number",
          "d m",
          "s",
          "nu m2/s");
  static final Equation WILSON_HELD =
      Equation.of(
          "V_WB",
          "deposition velocity by Wilson, the lower of nomograph and bound",
          "min(V_W, V_b)",
          Kind.VELOCITY,
          DepositionLimit.WILSON.citation().toString(),
          "V_W m/s",
          "V_b m/s");
  static final Equation LARGEST =
      Equation.of(
          "V_max",
          "largest deposition velocity at any concentration",
          "max(V_GS, V_WB)",
          Kind.VELOCITY,
          "the higher of two",
          "V_GS m/s",
          "V_WB m/s");
  static final Equation SECOND =
      Equation.of(
          "V_2",
          "deposition velocity of dilute sand: second largest of four",
          "second(V_OT, V_May, V_Macke, V_AG)",
          Kind.VELOCITY,
          "the second largest, as the four differ by up to 1.7",
          "V_OT m/s",
          "V_May m/s",
          "V_Macke m/s",
          "V_AG m/s");

  /** The limit of one size by the rule, with V_F what the user made a floor. */
  static final Equation LIMIT =
      Equation.of(
          "V_h",
          "deposition velocity of the level pipe at the highest concentration",
          "max(V_T, V_OT, min(V_max, max(V_r V_max, V_2)), V_F)",
          Kind.VELOCITY,
          "rule of the theory page on the deposition velocity",
          "V_T m/s",
          "V_OT m/s",
          "V_max m/s",
          "V_r",
          "V_2 m/s",
          "V_F m/s");

  private static final String RULE = "rule of the theory page on the deposition velocity";
  private static final String STEEP = "a bed ceases to be possible from 60 to 75 degrees; " + RULE;
  static final Equation USUAL =
      Equation.search(
          "V_u",
          "deposition velocity of the level pipe at the usual concentration",
          "largest velocity by the same rule among the sizes of the sand",
          Kind.VELOCITY,
          RULE,
          "C");
  static final Equation SLUG =
      Equation.search(
          "V_s",
          "deposition velocity of the level pipe for a slug of sand",
          "largest V_max among the sizes of the sand, or V_h if that is more",
          Kind.VELOCITY,
          RULE,
          "V_h m/s");
  static final Equation INCREMENT =
      Equation.lookup(
          "Delta",
          "what an upward slope adds, over sqrt(2 g D (s - 1))",
          "chart, by the angle of the pipe",
          Kind.NUMBER,
          new WilsonTse1984().citation().toString(),
          "theta");
  static final Equation HIGH_ON_SLOPE = onSlope("V_h", "at the highest concentration");
  static final Equation SLUG_ON_SLOPE = onSlope("V_s", "for a slug of sand");
  static final Equation USUAL_ON_SLOPE = onSlope("V_u", "at the usual concentration");
  static final Equation PAST =
      Equation.of(
          "p",
          "how far past 60 degrees on the way to 75",
          "min(1, max(0, (abs(theta) - pi/3) / (pi/12)))",
          Kind.NUMBER,
          STEEP,
          "theta");
  static final Equation LIFT =
      Equation.of(
          "V_lift",
          "velocity that lifts the coarsest grains, all but 1 % of the sand finer",
          "w abs(sin(theta))",
          Kind.VELOCITY,
          Equation.DEFINITION,
          "w m/s",
          "theta");
  static final Equation STEEP_LIMIT =
      steep("V_lim", "deposition velocity on this slope", "V_h", "V_lift");
  static final Equation WIDER =
      Equation.of(
          "e",
          "wider margin for a liquid thicker or a bore wider than those of the measurements",
          "min(0.25, 0.10 (max(0, ln(nu/2e-6)) + max(0, ln(D/0.5))))",
          Kind.NUMBER,
          RULE,
          "nu m2/s",
          "D m");
  static final Equation WANTED =
      Equation.of(
          "V_m",
          "deposition velocity with its margin",
          "max((1 + m + e) V_u, (1 + min(m, 0.15) + e) V_h, V_h + dV)",
          Kind.VELOCITY,
          RULE,
          "m",
          "e",
          "dV m/s",
          "V_u m/s",
          "V_h m/s");
  static final Equation ENOUGH =
      Equation.of(
          "V_sm",
          "deposition velocity for a slug with its margin, which is enough at any concentration",
          "max((1 + min(m, 0.15) + e) V_s, V_s + dV)",
          Kind.VELOCITY,
          RULE,
          "m",
          "e",
          "dV m/s",
          "V_s m/s");
  static final Equation ASKED =
      Equation.of(
          "V_req",
          "required velocity",
          "min(V_m, V_sm)",
          Kind.VELOCITY,
          RULE,
          "V_m m/s",
          "V_sm m/s");
  static final Equation STEEP_REQUIRED =
      steep("V_req2", "required velocity on this slope", "V_req", "2 V_lift");
  static final Equation COUNTED =
      Equation.search(
          "V_c",
          "velocity by the largest correlation that counts, on this slope",
          "the same rules of the slope for the value in a level pipe",
          Kind.VELOCITY,
          RULE,
          "V m/s");
  static final Equation TO_PASS =
      Equation.of(
          "V_pass",
          "velocity that passes",
          "max(V_req, V_c)",
          Kind.VELOCITY,
          RULE,
          "V_req m/s",
          "V_c m/s");

  private static Equation onSlope(String symbol, String when) {
    return Equation.of(
        symbol,
        "deposition velocity with what the slope adds, " + when,
        symbol + "0 + Delta min(sqrt(2 g D (s - 1)), " + symbol + "0/0.75)",
        Kind.VELOCITY,
        new WilsonTse1984().citation().toString(),
        symbol + "0 m/s",
        "Delta",
        "D m",
        "s");
  }

  private static Equation steep(String symbol, String meaning, String bed, String lift) {
    return Equation.of(
        symbol,
        meaning,
        "max(LIFT, BED (max(LIFT, BED/40)/BED)^p)".replace("LIFT", lift).replace("BED", bed),
        Kind.VELOCITY,
        STEEP,
        bed + " m/s",
        "V_lift m/s",
        "p");
  }

  private DepositionEquations() {}

  /** A velocity of the level pipe, which in a level pipe is that of the pipe itself. */
  static Equation level(Equation equation, boolean flat) {
    return flat ? equation : equation.as(equation.symbol() + "0");
  }
}
