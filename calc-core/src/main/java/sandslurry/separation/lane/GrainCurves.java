package sandslurry.separation.lane;

import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainRange;
import sandslurry.numeric.MonotoneCurve;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.channel.ScourModels;

/**
 * How fast the grains of a feed settle, and when a flow moves them, over the sizes of its classes.
 * Worked out once for a feed and interpolated over the logarithm of size, to 1e-5 or better: a lane
 * that fills asks many times.
 */
record GrainCurves(double lowM, double highM, MonotoneCurve settling, MonotoneCurve scour) {
  private static final int POINTS = 49;

  static GrainCurves of(UnitFeed feed) {
    double low = feed.sizes().stream().mapToDouble(GrainRange::lowM).min().orElseThrow();
    double high = feed.sizes().stream().mapToDouble(GrainRange::highM).max().orElseThrow();
    // Grains of one size have no curve; a little beside them changes nothing.
    double span = Math.max(Math.log(high / low), 1e-3);
    double[] xs = new double[POINTS];
    double[] moves = new double[POINTS];
    for (int i = 0; i < POINTS; i++) {
      xs[i] = Math.log(low) + span * i / (POINTS - 1);
      double size = Math.exp(xs[i]);
      Grain grain = new Grain(size, feed.sandDensityKgM3(), feed.shape());
      moves[i] = Math.log(ScourModels.lowestMps(grain, feed.liquid(), 1));
    }
    MonotoneCurve scour = new MonotoneCurve(xs, moves);
    return new GrainCurves(low, high, settling(feed, xs), scour);
  }

  /** The same for other amounts of the same grains in the same liquor, which settle otherwise. */
  GrainCurves with(UnitFeed feed) {
    return new GrainCurves(lowM, highM, settling(feed, scour.abscissas()), scour);
  }

  private static MonotoneCurve settling(UnitFeed feed, double[] xs) {
    double[] falls = new double[xs.length];
    for (int i = 0; i < xs.length; i++) {
      falls[i] = Math.log(feed.hinderedVelocityMps(Math.exp(xs[i])).value());
    }
    return new MonotoneCurve(xs, falls);
  }

  /** Velocity among neighbours of grains of a size, by its logarithm in m [m/s]. */
  double settlingMps(double logSize) {
    return Math.exp(settling.at(inside(logSize)));
  }

  /** Mean velocity at which a flow of a Darcy friction factor moves the grain [m/s]. */
  double scourMps(double logSize, double darcyFriction) {
    // Both criteria go with the root of the friction factor.
    return Math.exp(scour.at(inside(logSize))) / Math.sqrt(darcyFriction);
  }

  /** The ends of the curves but for rounding. */
  private double inside(double logSize) {
    return Math.max(settling.from(), Math.min(logSize, settling.to()));
  }
}
