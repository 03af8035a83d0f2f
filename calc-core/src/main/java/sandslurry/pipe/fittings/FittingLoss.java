package sandslurry.pipe.fittings;

import sandslurry.pipe.Bore;
import sandslurry.units.InUnit;

/**
 * Loss in a fitting by the three-constant method of Darby, which follows the coefficient into
 * laminar flow and into large pipes.
 *
 * <pre>
 * K = K1/Re + Ki (1 + Kd/D^0.3),   h = K V²/(2 g)
 * </pre>
 *
 * <p>K loss coefficient; Re Reynolds number in the pipe beside the fitting, of a liquid that is not
 * Newtonian its generalised one; D size of the pipe in inches; K1, Ki, Kd constants of the kind of
 * fitting; h head lost, in metres of the mixture that flows; V mean velocity [m/s].
 *
 * <p>Darby's D is the nominal size. Here the bore stands for it: the two differ by a few per cent,
 * which changes K by one or two. Printed coefficients for one fitting differ by 20 to 40 %; against
 * a pump handbook's table this method is 40 % lower for a threaded 2-inch elbow and 36 % higher for
 * a long-radius 6-inch one. The method is about liquids; with sand in them the same K is applied to
 * metres of mixture, which is common practice, no source.
 */
public final class FittingLoss {
  private FittingLoss() {}

  /**
   * The loss coefficient.
   *
   * @param kind the fitting
   * @param reynolds Reynolds number in the pipe, positive
   * @param bore the pipe
   * @return K, in velocity heads
   * @throws IllegalArgumentException if the Reynolds number is not a positive number
   */
  public static double coefficient(FittingKind kind, double reynolds, Bore bore) {
    if (!(reynolds > 0 && Double.isFinite(reynolds))) {
      throw new IllegalArgumentException("a Reynolds number must be > 0 but was " + reynolds);
    }
    return kind.laminarConstant() / reynolds
        + kind.turbulentConstant()
            * (1 + kind.sizeConstant() * Math.pow(InUnit.INCH.of(bore.diameterM()), -0.3));
  }
}
