package sandslurry.separation.capture;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.numeric.Roots;

/**
 * The fall number T at which {@link CampDobbins1946} catches a share of the grains, against the
 * ratio K/T of a basin, which depends on its flow alone. It is solved once at points a quarter
 * apart in ln(K/T) and interpolated between them, to 1e-5 of T; beyond the points it is solved each
 * time.
 */
final class CaughtFall {
  private static final double LOW = -8;
  private static final double STEP = 0.25;
  private static final int POINTS = 73;

  private static final Map<Double, CaughtFall> BY_SHARE = new ConcurrentHashMap<>();

  private final double share;
  private final MonotoneCurve curve;

  private CaughtFall(double share) {
    this.share = share;
    double[] xs = new double[POINTS];
    double[] ys = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      xs[i] = LOW + i * STEP;
      ys[i] = solve(Math.exp(xs[i]));
    }
    curve = new MonotoneCurve(xs, ys);
  }

  static CaughtFall of(double share) {
    return BY_SHARE.computeIfAbsent(share, CaughtFall::new);
  }

  double at(double ratio) {
    double x = Math.log(ratio);
    return x >= curve.from() && x <= curve.to() ? curve.at(x) : solve(ratio);
  }

  private double solve(double ratio) {
    return Roots.between(
        "fall number caught",
        t -> CampDobbins1946.fraction(t, Math.min(ratio * t, Double.MAX_VALUE)) - share,
        share * 0.99,
        -Math.log1p(-share) * 1.01);
  }
}
