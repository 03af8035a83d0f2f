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
 * End of laminar flow by the local stability of Ryan and Johnson.
 *
 * <pre>Z = max over r of (R ρ/τw) u (−du/dr) = 808</pre>
 *
 * <p>R radius of the pipe [m]; ρ density [kg/m³]; τw wall stress [Pa]; u velocity at radius r
 * [m/s]. The constant is that of a Newtonian liquid at Re = 2100. For a power law the authors give
 * the Reynolds number of Metzner and Reed at transition,
 *
 * <pre>Re_c = 6464 n (n+2)^((n+2)/(n+1)) / (3n+1)²</pre>
 *
 * <p>which is 2099 for n = 1 and has a flat maximum near 2400 at n = 0.4. For a Herschel–Bulkley
 * liquid the velocity profile put into Z gives (derived here)
 *
 * <pre>(ρ R²/τw) (τw/K)^(2/n) n (1 − τy/τw)^((n+2)/n) (n+2)^(−(n+2)/(n+1)) = 808</pre>
 *
 * <p>With τy = 0 that is the formula above; with n = 1 it is x/(1 − x)³ = He/16 794, x = τy/τw,
 * which is the criterion of Hanks (1963), AIChE Journal 9:306-309, for a Bingham liquid, printed
 * with 16 800 by Hanks and Pratt (1967), SPE Journal 7:342-346 (both from memory, unverified). One
 * criterion thus serves all four rheologies. Against pipe tests with strong yield stress it lies on
 * the low side; {@link SlatterWasp2000} is then the later word.
 */
final class RyanJohnson1959 extends Published implements TransitionCriterion {
  private static final double STABILITY = 808;
  private static final Bound INDEX = new Bound("flow index n", Kind.NUMBER, 0, 1);

  RyanJohnson1959() {
    super(
        "ryan-johnson-1959",
        "Ryan and Johnson, local stability",
        "max(R rho u (-du/dr) / tau_w) = 808",
        new Citation(
            "Ryan and Johnson",
            1959,
            "AIChE Journal 5:433-435; closed form for a power law seen in an open library of"
                + " engineering rheology; extended to a yield stress here"),
        List.of(INDEX));
  }

  @Override
  public Estimate velocityMps(Rheology rheology, double densityKgM3, Bore bore) {
    double velocity =
        LaminarPipeFlow.velocityMps(
            rheology, bore.diameterM(), wallStressPa(rheology, densityKgM3, bore.diameterM()));
    return Estimate.checks().check(INDEX, rheology.index()).value(velocity);
  }

  private static double wallStressPa(Rheology rheology, double densityKgM3, double diameterM) {
    double n = rheology.index();
    if (!(n < 2)) {
      throw new IllegalArgumentException(
          "the end of laminar flow is defined for a flow index below 2 but n is " + n);
    }
    double constant =
        Math.log(densityKgM3 * diameterM * diameterM / 4 * n)
            - (n + 2) / (n + 1) * Math.log(n + 2)
            - 2 / n * Math.log(rheology.consistency())
            - Math.log(STABILITY);
    double power = 2 / n - 1;
    double yield = rheology.yieldStressPa();
    double withoutYield = Math.exp(-constant / power);
    if (yield == 0) {
      return withoutYield;
    }
    // Rises steadily from minus infinity with the part of the stress above the yield stress.
    double high = withoutYield;
    while (residual(n, yield, constant, high) < 0) {
      high *= 8;
    }
    double low = high;
    while (residual(n, yield, constant, low) >= 0) {
      low /= 8;
    }
    return yield
        + Roots.betweenDecades(
            "end of laminar flow", x -> residual(n, yield, constant, x), low / 2, high * 2);
  }

  private static double residual(double n, double yield, double constant, double above) {
    double stress = yield + above;
    return constant + (2 / n - 1) * Math.log(stress) + (n + 2) / n * Math.log(above / stress);
  }
}
