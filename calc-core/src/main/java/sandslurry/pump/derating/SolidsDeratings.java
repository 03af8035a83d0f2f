package sandslurry.pump.derating;

import java.util.OptionalDouble;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Family;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.units.Kind;

/** The catalogue of solids deratings, and the rule by which one of them governs. */
public final class SolidsDeratings {
  private static final SolidsDerating CAVE = new Cave1976();
  private static final SolidsDerating ENGIN_GUR = new EnginGur2003();

  /** Every correlation of the family. */
  public static final Family<SolidsDerating> FAMILY =
      Family.of(
          "derating of a pump by solids", CAVE, ENGIN_GUR, new Gahlot1992(), new Sellgren1979());

  private static final Equation MASS =
      Equation.of(
          "C_w",
          "mass fraction of the sand",
          "C s / (1 + C (s - 1))",
          Kind.PERCENT,
          "balance of mass",
          "C, s");

  private SolidsDeratings() {}

  /**
   * The derating to design with: that of Cave, or that of Engin and Gur when the impeller is known
   * and it takes more head. Two independent forms are asked and the worse is believed, because each
   * alone is no better than about a quarter of the reduction.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, if known [m]
   * @return the derating that takes more head
   */
  public static Derating governing(Slurry slurry, OptionalDouble impellerDiameterM) {
    return governing(slurry, impellerDiameterM, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, where it is known [m]
   * @param trace what keeps the steps
   * @return the derating used
   */
  public static Derating governing(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    Derating cave = derating(CAVE, slurry, impellerDiameterM, trace);
    if (impellerDiameterM.isEmpty()) {
      return cave;
    }
    Derating enginGur = derating(ENGIN_GUR, slurry, impellerDiameterM, trace);
    return enginGur.headRatio().value() < cave.headRatio().value() ? enginGur : cave;
  }

  private static Derating derating(
      SolidsDerating model, Slurry slurry, OptionalDouble impellerDiameterM, Trace trace) {
    return new Derating(
        model,
        model.headRatio(slurry, impellerDiameterM, trace),
        model.efficiencyRatio(slurry, impellerDiameterM));
  }

  /** Mass of sand over mass of mixture, Cw = C ρs/ρm. */
  static double massFraction(Slurry slurry, Trace trace) {
    return trace.step(MASS, massFraction(slurry), slurry.volumeFraction(), slurry.densityRatio());
  }

  static double massFraction(Slurry slurry) {
    return slurry.volumeFraction() * slurry.sandDensityKgM3() / slurry.mixtureDensityKgM3();
  }

  /**
   * A derating with the correlation that gave it.
   *
   * @param model the correlation
   * @param headRatio its head ratio
   * @param efficiencyRatio its efficiency ratio
   */
  public record Derating(SolidsDerating model, Estimate headRatio, Estimate efficiencyRatio) {}
}
