package sandslurry.pump.derating;

import java.util.OptionalDouble;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;

/**
 * What sand takes from the head and the efficiency of a rotodynamic pump.
 *
 * <p>Heads are compared in metres of the liquid pumped, metres of mixture against metres of clear
 * liquid. The literature gives the relative density S against water; here it is taken against the
 * carrier. Without sand both ratios are exactly 1.
 */
public interface SolidsDerating extends Correlation {
  /**
   * Says whether the impeller must be known.
   *
   * @return true if the ratios cannot be told without the impeller diameter
   */
  default boolean needsImpellerDiameter() {
    return false;
  }

  /**
   * Head ratio.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, if known [m]
   * @return head with sand in metres of mixture over head without in metres of liquid, and what lay
   *     outside the published range
   * @throws IllegalArgumentException if the impeller diameter is needed but not given
   */
  default Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM) {
    return headRatio(slurry, impellerDiameterM, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, where it is known [m]
   * @param trace what keeps the steps
   * @return the ratio, and what lay outside the published range
   */
  Estimate headRatio(Slurry slurry, OptionalDouble impellerDiameterM, Trace trace);

  /**
   * Efficiency ratio, that of the head where nothing else is published.
   *
   * @param slurry sand and carrier
   * @param impellerDiameterM diameter of the impeller, if known [m]
   * @return efficiency with sand over efficiency without, and what lay outside the published range
   * @throws IllegalArgumentException if the impeller diameter is needed but not given
   */
  default Estimate efficiencyRatio(Slurry slurry, OptionalDouble impellerDiameterM) {
    return headRatio(slurry, impellerDiameterM);
  }
}
