package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.List;
import sandslurry.material.sand.GrainRange;
import sandslurry.numeric.Roots;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.BasinFlow;
import sandslurry.separation.capture.Krone1962;
import sandslurry.separation.capture.Outlook;

/**
 * The sand that comes to rest in a reach at one moment.
 *
 * <p>Over a size class the share may rise from nothing to all within a few hundredths of a
 * millimetre, so the class is not judged at one size: the share is found at its ends and, since the
 * coarser a grain the larger its share, at the sizes between them where it reaches given values;
 * the mean is that of the straight lines over the logarithm of size. Capture then moves evenly with
 * velocity, and cutting the classes finer hardly changes it.
 */
record RestingSand(
    UnitFeed feed,
    GrainCurves grains,
    double flowVelocityMps,
    double darcyFriction,
    BasinFlow basin,
    Outlook outlook) {
  private static final double[] SHARES = {0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.98, 0.998};

  /**
   * Settling velocity over shear velocity below which turbulence holds grains up: the criterion of
   * Bagnold (1966), from memory, unverified.
   */
  private static final double HELD_BELOW = 1;

  /** The share of each class, 0 to 1. */
  List<Double> shares() {
    List<GrainRange> sizes = feed.sizes();
    List<Knot> knots = knots(Math.log(grains.lowM()), Math.log(grains.highM()));
    List<Double> shares = new ArrayList<>();
    Knot end = null;
    for (GrainRange size : sizes) {
      double low = Math.log(size.lowM());
      Knot from = end != null && end.logSize() == low ? end : at(low);
      end = size.highM() == size.lowM() ? from : at(Math.log(size.highM()));
      shares.add(mean(from, end, knots));
    }
    return shares;
  }

  /** The sizes where the share leaves 0 and where it reaches the given values. */
  private List<Knot> knots(double low, double high) {
    List<Knot> knots = new ArrayList<>();
    double atHigh = velocityMps(high);
    if (!(high > low && atHigh > 0)) {
      return knots;
    }
    double left = low;
    if (!(velocityMps(low) > 0)) {
      left = Roots.between("grain lost again", d -> nearness(d) - 1, low, high);
      knots.add(new Knot(left, 0));
    }
    double atLeft = velocityMps(left);
    for (double share : SHARES) {
      double wanted = outlook.velocityCaughtMps(basin, share);
      if (atLeft < wanted && wanted < atHigh) {
        left = Roots.between("grain at rest", d -> velocityMps(d) / wanted - 1, left, high);
        knots.add(new Knot(left, share));
      }
    }
    return knots;
  }

  /** The logarithm of a size in m, and its share. */
  private record Knot(double logSize, double share) {}

  private Knot at(double logSize) {
    return new Knot(logSize, outlook.caught(basin, velocityMps(logSize)));
  }

  private static double mean(Knot low, Knot high, List<Knot> knots) {
    if (low.logSize() == high.logSize()) {
      return low.share();
    }
    double area = 0;
    Knot before = low;
    for (Knot knot : knots) {
      if (knot.logSize() > low.logSize() && knot.logSize() < high.logSize()) {
        area += area(before, knot);
        before = knot;
      }
    }
    area += area(before, high);
    return Math.min(1, area / (high.logSize() - low.logSize()));
  }

  private static double area(Knot from, Knot to) {
    return (from.share() + to.share()) / 2 * (to.logSize() - from.logSize());
  }

  /** Velocity at which grains of a size come to rest: it grows with the size [m/s]. */
  private double velocityMps(double logSize) {
    double settling = grains.settlingMps(logSize);
    return settling * Krone1962.factor(nearness(logSize, settling));
  }

  private double nearness(double logSize) {
    return nearness(logSize, grains.settlingMps(logSize));
  }

  /** How near the flow is to carrying a grain off: it does at 1. */
  private double nearness(double logSize, double settlingMps) {
    return switch (outlook) {
      case CAUTIOUS -> moves(logSize);
      case LIKELY -> Math.min(moves(logSize), basin.shearVelocityMps() * HELD_BELOW / settlingMps);
      case HOPEFUL -> 0;
    };
  }

  private double moves(double logSize) {
    return flowVelocityMps / grains.scourMps(logSize, darcyFriction);
  }
}
