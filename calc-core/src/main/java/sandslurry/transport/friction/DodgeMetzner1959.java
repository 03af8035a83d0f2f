package sandslurry.transport.friction;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.material.liquid.Rheology;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/**
 * Turbulent flow of a power-law liquid in a smooth pipe after Dodge and Metzner.
 *
 * <pre>1/√f = (4/n^0.75) log10(Re f^(1 − n/2)) − 0.4/n^1.2</pre>
 *
 * <p>f Fanning friction factor, τw = f ρV²/2; n flow index; Re Reynolds number of Metzner and Reed.
 * With n = 1 it is the smooth-pipe law of Prandtl, von Kármán and Nikuradse. The authors write it
 * with the local index n' and K' at the wall stress; for a liquid with yield stress n' of laminar
 * flow at the same velocity is used, which lies outside the published range, and the value comes
 * out low for clay-like liquids.
 */
final class DodgeMetzner1959 extends Published implements TurbulentFrictionModel {
  private static final Bound INDEX = new Bound("flow index n", Kind.NUMBER, 0.36, 1);
  private static final Bound REYNOLDS =
      new Bound("Reynolds number of Metzner and Reed", Kind.NUMBER, 2900, 36_000);
  private static final Bound YIELD = new Bound("yield stress", Kind.STRESS, 0, 0);
  private static final Bound ROUGHNESS = new Bound("roughness", Kind.BORE, 0, 0);

  DodgeMetzner1959() {
    super(
        "dodge-metzner-1959",
        "Dodge and Metzner, power law",
        "1/sqrt(f) = (4/n^0.75) log10(Re f^(1-n/2)) - 0.4/n^1.2, f Fanning",
        new Citation(
            "Dodge and Metzner",
            1959,
            "AIChE Journal 5:189-204; constants seen in two public codes"),
        List.of(INDEX, REYNOLDS, YIELD, ROUGHNESS));
  }

  @Override
  public Estimate wallStressPa(
      Rheology rheology, double densityKgM3, Bore bore, double velocityMps) {
    LaminarPipeFlow laminar = LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps);
    double n = laminar.localIndex();
    double reynolds = laminar.reynolds(densityKgM3);
    double factor =
        Roots.betweenDecades(
            "friction factor of Dodge and Metzner",
            f ->
                1 / Math.sqrt(f)
                    - 4 / Math.pow(n, 0.75) * Math.log10(reynolds * Math.pow(f, 1 - n / 2))
                    + 0.4 / Math.pow(n, 1.2),
            1e-12,
            1e12);
    return Estimate.checks()
        .check(INDEX, rheology.index())
        .check(REYNOLDS, reynolds)
        .check(YIELD, rheology.yieldStressPa())
        .check(ROUGHNESS, bore.roughnessM())
        .value(factor * densityKgM3 * velocityMps * velocityMps / 2);
  }
}
