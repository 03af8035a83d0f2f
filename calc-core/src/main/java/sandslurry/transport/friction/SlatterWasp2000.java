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
 * Transition velocity of a liquid with a strong yield stress, after Slatter and Wasp.
 *
 * <pre>V_t = 26 √(τy/ρ)  for He &gt; 150 000</pre>
 *
 * <p>τy yield stress [Pa]; ρ density [kg/m³]; He Hedström number. Neither the bore nor the
 * viscosity counts at so high a Hedström number. Wilson and Thomas (2006) find 25 for the same
 * limit. Without yield stress it gives 0, outside its range.
 */
final class SlatterWasp2000 implements TransitionCriterion {
  private static final double FACTOR = 26;
  private static final Bound HEDSTROM =
      new Bound("Hedström number", Kind.NUMBER, 1.5e5, Double.POSITIVE_INFINITY);

  private static final About ABOUT =
      new About(
          "slatter-wasp-2000",
          "Slatter and Wasp, large Hedström number",
          "V_t = 26 sqrt(tau_y / rho)",
          new Citation(
                  "Slatter and Wasp",
                  2000,
                  "10th International Conference on Transport and Sedimentation of Solid Particles,"
                      + " Wroclaw")
              .fromMemory("coefficients"),
          List.of(HEDSTROM));

  @Override
  public Estimate velocityMps(Rheology rheology, double densityKgM3, Bore bore) {
    return Estimate.checks()
        .check(HEDSTROM, LaminarPipeFlow.hedstromNumber(rheology, densityKgM3, bore.diameterM()))
        .value(FACTOR * Math.sqrt(rheology.yieldStressPa() / densityKgM3));
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
