package sandslurry.settling;

import sandslurry.correlation.Citation;

/**
 * Settling velocity of a sphere from the drag law of Turton and Levenspiel, one formula from
 * creeping flow to the drag crisis.
 *
 * <pre>C_D = 24/Re (1 + 0.173 Re^0.657) + 0.413 / (1 + 16300 Re^−1.09)</pre>
 *
 * <p>C_D drag coefficient; Re = w d / ν; w settling velocity [m/s], found by {@link
 * DragLaw#terminalVelocityMps}; d diameter [m]; ν kinematic viscosity [m²/s].
 *
 * <p>Published for Re below 2.6·10⁵, where the boundary layer of a sphere turns turbulent.
 */
final class TurtonLevenspiel1986 extends Spheres {
  private static final Citation SOURCE =
      new Citation(
          "Turton and Levenspiel",
          1986,
          "Powder Technology 47:83-86; coefficients from memory, checked against other sphere"
              + " laws");

  TurtonLevenspiel1986() {
    super(
        "turton-levenspiel-1986",
        "Turton and Levenspiel, sphere",
        SOURCE,
        2.6e5,
        "24/Re (1 + 0.173 Re^0.657) + 0.413 / (1 + 16300 Re^-1.09)");
  }

  @Override
  public double dragCoefficient(double reynoldsNumber) {
    return 24 / reynoldsNumber * (1 + 0.173 * Math.pow(reynoldsNumber, 0.657))
        + 0.413 / (1 + 16300 * Math.pow(reynoldsNumber, -1.09));
  }
}
