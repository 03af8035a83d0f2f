package sandslurry.separation.capture;

import java.util.List;
import sandslurry.correlation.About;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;

/**
 * Capture in turbulent flow of uniform velocity and uniform mixing, after Dobbins and Camp.
 *
 * <p>The concentration c of grains of settling velocity w obeys
 *
 * <pre>V ∂c/∂x = ε ∂²c/∂y² + w ∂c/∂y,   ε = 0.075 h u*</pre>
 *
 * <p>with c even at the inlet, nothing passing through the surface (ε ∂c/∂y + w c = 0), and a floor
 * that gives nothing back (∂c/∂y = 0, so that w c settles out). V mean velocity [m/s]; x along, y
 * up [m]; h depth [m]; ε eddy diffusivity [m²/s], the mean over the depth of a logarithmic velocity
 * profile (κ/6 = 0.067 with κ = 0.40; 0.075 is Camp's figure, from memory, unverified); u* shear
 * velocity [m/s].
 *
 * <p>The share caught depends on two numbers only: the fall number T = w A / Q and K = w h / (2 ε)
 * = w / (0.15 u*). K without limit is {@link HazenIdeal1904}, K to zero is {@link Vetter1940}, and
 * the share lies between the two.
 *
 * <p><b>How it is solved.</b> Dobbins's series over the roots of 2 cot α = α/K − K/α cancels
 * catastrophically where K is large, which is the common case for sand. We use the Laplace
 * transform in x, whose solution is closed. With q = √(1 + 2p/K), p the variable of the transform,
 * and E = exp(−2Kq), the share still afloat is
 *
 * <pre>
 * r = 1 − T + L⁻¹[ p⁻² · 4 q exp(K (1 − q)) / ((1 + q)² (1 − E) + 4 q E) ]
 * </pre>
 *
 * <p>On a vertical line in the plane of q the integrand of the inverse falls off like a Gaussian,
 * so the trapezoidal rule with 40 points gives it to about 1e-12. Left of the double pole at q = 1
 * the same integral is r itself. Checked against Dobbins's series where that can be summed, against
 * a finite-difference solution, and in both limits.
 *
 * <p>Source: Dobbins (1944), Transactions ASCE 109:629; Camp (1946), Transactions ASCE 111:895
 * (citations from memory, unverified). No range is published; the premises are dilute sand, steady
 * flow and no re-entrainment.
 */
public final class CampDobbins1946 implements CaptureRelation {
  private static final double FAINT = -45;
  private static final double DIFFUSIVITY = 0.075;

  /**
   * Step and reach of the trapezoidal rule, in units of 1/√τ: the step is a sixth of the distance
   * to the nearest pole or less, the reach is where the Gaussian is below 1e-17.
   */
  private static final double STEP = 0.16;

  private static final double REACH = 6.4;

  private static final double[] GAUSSIAN = new double[(int) Math.ceil(REACH / STEP) + 1];

  static {
    for (int i = 0; i < GAUSSIAN.length; i++) {
      GAUSSIAN[i] = Math.exp(-(i * STEP) * (i * STEP));
    }
  }

  private static final About ABOUT =
      new About(
          "camp-dobbins-1946",
          "Camp and Dobbins, uniform turbulence",
          "V dc/dx = eps d2c/dy2 + w dc/dy, eps = 0.075 h u*",
          new Citation(
                  "Camp and Dobbins",
                  1946,
                  "Transactions ASCE 111:895, with Dobbins (1944), 109:629")
              .fromMemory("diffusivity and pages"),
          List.of());

  /** Creates the relation; it has no state. */
  public CampDobbins1946() {}

  @Override
  public Estimate fraction(BasinFlow flow, double settlingVelocityMps) {
    double fall = flow.fallNumber(settlingVelocityMps);
    double mixing = 2 * DIFFUSIVITY * flow.shearVelocityMps();
    double weight =
        mixing > 0 ? Math.min(settlingVelocityMps / mixing, Double.MAX_VALUE) : Double.MAX_VALUE;
    return Estimate.checks().value(fraction(fall, weight));
  }

  /** K/T of a basin: large where turbulence is weak. */
  static double weightOverFall(BasinFlow flow) {
    double mixing = 2 * DIFFUSIVITY * flow.shearVelocityMps();
    return Math.min(flow.overflowVelocityMps() / mixing, Double.MAX_VALUE);
  }

  /**
   * Share caught, by the two numbers that it depends on.
   *
   * @param fallNumber T = w A / Q, 0 or more
   * @param weightNumber K = w h / (2 ε), 0 or more: settling against mixing
   * @return the share, 0 to 1
   */
  public static double fraction(double fallNumber, double weightNumber) {
    if (!(fallNumber >= 0) || !(weightNumber >= 0)) {
      throw new IllegalArgumentException(
          "need numbers >= 0 but have T = " + fallNumber + " and K = " + weightNumber);
    }
    double ideal = Math.min(1, fallNumber);
    double mixed = -Math.expm1(-fallNumber);
    // Outside these limits the bounds of the relation agree with it to 1e-9 or better: the gap to
    // the mixed limit is of the order of K, that to the ideal one of the order of 1/√K.
    if (fallNumber > 40 || fallNumber < 1e-15 || weightNumber < 1e-12) {
      return mixed;
    }
    if (weightNumber > 1e18) {
      return ideal;
    }
    // The bounds are the limits of the relation, so this only takes off rounding.
    return Math.max(mixed, Math.min(ideal, solve(fallNumber, weightNumber)));
  }

  private static double solve(double t, double k) {
    double tau = k * t / 2;
    double width = 1 / Math.sqrt(tau);
    double saddle = 1 / t - 1;
    // The line lies one width from the pole at d = q − 1 = 0 and from those on the axis q = 0.
    boolean right = t <= 1 || width > 0.5;
    double line =
        right ? Math.max(saddle, 0) + width : Math.min(Math.max(saddle, width - 1), -width);
    double step = STEP * width;
    double size = Math.exp(line * (tau * line + k * (t - 1)));
    Complex turn = Complex.ofAngle(step * (k * t * line + k * (t - 1)));
    // Below the rounding of a double the echo from the surface is nothing.
    double returns = -2 * k * (1 + line);
    double echo = returns < FAINT ? 0 : Math.exp(returns);
    double lost = returns < FAINT ? 1 : -Math.expm1(returns);
    Complex halfTurn = Complex.ofAngle(-k * step);
    Complex wave = new Complex(1, 0);
    Complex half = wave;
    double sum = integrand(new Complex(line, 0), wave, half, echo, lost) / 2;
    for (int i = 1; i < GAUSSIAN.length; i++) {
      wave = wave.times(turn);
      half = half.times(halfTurn);
      sum += GAUSSIAN[i] * integrand(new Complex(line, i * step), wave, half, echo, lost);
    }
    double integral = 16 / (Math.PI * k) * size * sum * step;
    return right ? t - integral : 1 - integral;
  }

  /**
   * Real part of e^(pT) p⁻² G(p) dp/dq at q = 1 + d, but for constants and for the size of the
   * exponential, which along the line is a Gaussian. The angles of the exponentials grow evenly
   * from point to point, so that they are turned and not worked out anew.
   *
   * @param d q − 1
   * @param wave direction of e^(pT + K (1 − q))
   * @param half direction of E, half its angle
   * @param echo size of E
   * @param lost 1 less the size of E
   */
  private static double integrand(Complex d, Complex wave, Complex half, double echo, double lost) {
    Complex q = new Complex(1 + d.re, d.im);
    Complex two = new Complex(2 + d.re, d.im);
    Complex floor = two.times(two);
    if (echo > 0) {
      Complex direction = half.times(half);
      Complex back = direction.scaled(echo);
      // 1 − E without cancellation at small K q
      Complex rest = new Complex(2 * half.im * half.im + lost * direction.re, -back.im);
      floor = floor.times(rest).plus(q.times(back).scaled(4));
    }
    Complex poles = d.times(two);
    return wave.times(q).times(q).over(poles.times(poles).times(floor)).re;
  }

  private record Complex(double re, double im) {
    static Complex ofAngle(double angle) {
      return new Complex(Math.cos(angle), Math.sin(angle));
    }

    Complex plus(Complex other) {
      return new Complex(re + other.re, im + other.im);
    }

    Complex times(Complex other) {
      return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    Complex scaled(double factor) {
      return new Complex(re * factor, im * factor);
    }

    Complex over(Complex other) {
      double size = other.re * other.re + other.im * other.im;
      return times(new Complex(other.re / size, -other.im / size));
    }
  }

  @Override
  public About about() {
    return ABOUT;
  }
}
