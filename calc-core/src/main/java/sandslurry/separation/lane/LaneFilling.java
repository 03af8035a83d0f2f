package sandslurry.separation.lane;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.separation.Numbers;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.units.InUnit;

/**
 * How a lane fills with sand: as the deposit rises it takes depth, velocity rises, and less is
 * caught, until it is time to clean out.
 *
 * <p>The flow is steady at every moment (quasi-steady steps): at each step the capture at the
 * thickness reached is worked out, and the deposit that it makes is spread evenly over its reach. A
 * real deposit is a wedge that grows from the inlet; divide the lane into more reaches to see it.
 * Each step fills one reach by a hundredth of its storage; a smaller step changes the interval by
 * less than one per cent.
 *
 * @param points the course, the first at the clean floor
 * @param end why it ended
 * @param depositedKg dry sand in the lane at the end, by class [kg]
 * @param fedKg dry sand fed until then, by class [kg]
 * @param partition shares of all that was fed between clean and the end that stayed; at once, those
 *     of the clean lane, when it is time to end at the start
 */
public record LaneFilling(
    List<Point> points,
    End end,
    List<Double> depositedKg,
    List<Double> fedKg,
    Partition partition) {
  /**
   * A lane is cleaned when it keeps less than this share of the sand; common practice, no source.
   */
  public static final double LEAST_KEPT = 0.5;

  static final int STEPS = 100;

  /** Steps in which {@link #mean} fills a reach. */
  static final int COARSE = 8;

  /** A million years: a trace of sand takes longer than a number can say [s]. */
  private static final double NEVER_S = InUnit.DAY.si(365e6);

  /** Copies the lists. */
  public LaneFilling {
    points = List.copyOf(points);
    depositedKg = List.copyOf(depositedKg);
    fedKg = List.copyOf(fedKg);
  }

  /** Why the filling ended. */
  public enum End {
    /** Every reach holds what it may. */
    FULL,
    /** The share kept fell below the least that is wanted. */
    KEEPS_TOO_LITTLE,
    /** It was time to clean it. */
    ON_SCHEDULE,
    /** There is no sand, or so little that no lane fills with it in a million years. */
    NO_SAND
  }

  /**
   * One moment of the filling.
   *
   * @param timeS time since the lane was clean, hours of rest included [s]
   * @param depositsM thickness of the deposit in each reach [m]
   * @param depthsM depth of water in each reach [m]
   * @param velocitiesMps mean velocity in each reach [m/s]
   * @param recovery share of the sand fed at this moment that stays, 0 to 1
   */
  public record Point(
      double timeS,
      List<Double> depositsM,
      List<Double> depthsM,
      List<Double> velocitiesMps,
      double recovery) {
    /** Copies the lists. */
    public Point {
      depositsM = List.copyOf(depositsM);
      depthsM = List.copyOf(depthsM);
      velocitiesMps = List.copyOf(velocitiesMps);
    }
  }

  /**
   * Fills a clean lane.
   *
   * @param reaches the reaches, from the inlet on
   * @param feed what enters while the lane runs
   * @param organic how the fibre settles in its liquor
   * @param runningShare share of the day that it runs, above 0 to 1
   * @param porosity share of the deposit that is not sand, 0 to below 1
   * @param outlook which relation of the band
   * @param leastRecovery share kept below which the lane is cleaned, above 0 to 1
   * @return the course
   */
  public static LaneFilling of(
      List<LaneReach> reaches,
      UnitFeed feed,
      OrganicMatter organic,
      double runningShare,
      double porosity,
      Outlook outlook,
      double leastRecovery) {
    aboveNought("the least share kept", leastRecovery);
    return filled(
        reaches,
        feed,
        organic,
        runningShare,
        porosity,
        outlook,
        new CleanOut(leastRecovery, Double.POSITIVE_INFINITY),
        STEPS);
  }

  /**
   * When a lane is cleaned that is not full yet.
   *
   * @param leastRecovery share kept below which it is cleaned; 0 for however little it keeps
   * @param latestS time at which it is cleaned at the latest [s]
   */
  record CleanOut(double leastRecovery, double latestS) {}

  /**
   * What a lane keeps, meant from clean to clean-out, by few steps: each is judged by both its
   * ends, and the last is cut where the share kept reaches the least, so that the result moves
   * evenly with the feed. It differs from {@link #of} by about a hundredth.
   *
   * @param reaches the reaches, from the inlet on
   * @param feed what enters while the lane runs
   * @param organic how the fibre settles in its liquor
   * @param porosity share of the deposit that is not sand, 0 to below 1
   * @param outlook which relation of the band
   * @param leastRecovery share kept below which the lane is cleaned, above 0 to 1
   * @return shares of the feed that stay
   */
  public static Partition mean(
      List<LaneReach> reaches,
      UnitFeed feed,
      OrganicMatter organic,
      double porosity,
      Outlook outlook,
      double leastRecovery) {
    aboveNought("the least share kept", leastRecovery);
    return filled(
            reaches,
            feed,
            organic,
            1,
            porosity,
            outlook,
            new CleanOut(leastRecovery, Double.POSITIVE_INFINITY),
            COARSE)
        .partition();
  }

  static LaneFilling filled(
      List<LaneReach> reaches,
      UnitFeed feed,
      OrganicMatter organic,
      double runningShare,
      double porosity,
      Outlook outlook,
      CleanOut cleanOut,
      int steps) {
    aboveNought("the share of the day", runningShare);
    GrainCurves grains = GrainCurves.of(feed);
    double leastRecovery = cleanOut.leastRecovery();
    double[] deposits = new double[reaches.size()];
    double[] keptKg = new double[feed.sizes().size()];
    double fibreS = 0;
    double time = 0;
    List<Point> points = new ArrayList<>();
    Step last = null;
    while (true) {
      LaneDeposit now =
          LaneDeposit.of(reaches, boxed(deposits), feed, grains, organic, porosity, outlook);
      double recovery = now.sandRecovery(feed);
      if (last != null) {
        // Both ends of a coarse step count: the volume filled is the same, the time is longer.
        LaneDeposit ends = steps == COARSE && !last.jumped() ? now : last.from();
        double part =
            ends == now ? part(last.from().sandRecovery(feed), recovery, leastRecovery) : 1;
        double[] first = keptOfAll(last.from(), keptKg.length);
        double[] rates = keptOfAll(ends, keptKg.length);
        for (int k = 0; k < rates.length; k++) {
          rates[k] = first[k] + part * (rates[k] - first[k]) / 2;
        }
        double took = part * last.timeS() * (sum(rates) > 0 ? sum(first) / sum(rates) : 1);
        time += took;
        fibreS += took * (last.from().partition().fibre() + ends.partition().fibre()) / 2;
        for (int k = 0; k < keptKg.length; k++) {
          keptKg[k] += rates[k] * runningShare * took;
        }
      }
      points.add(point(time, deposits, now, recovery));
      End end = end(reaches, deposits, feed, recovery, leastRecovery);
      if (end == null && !(time < cleanOut.latestS() * (1 - 1e-12))) {
        end = End.ON_SCHEDULE;
      }
      double[] rises = rises(reaches, now, feed, runningShare, porosity);
      double step = Math.min(cleanOut.latestS() - time, timeS(reaches, deposits, rises, steps));
      if (end == null && !(step < NEVER_S)) {
        end = End.NO_SAND;
      }
      if (end != null) {
        Partition partition =
            time > 0
                ? partition(feed, keptKg, fibreS / time, time * runningShare, porosity)
                : now.partition();
        return new LaneFilling(
            points, end, boxed(keptKg), fed(feed, time * runningShare), partition);
      }
      last = new Step(now, step, raise(reaches, deposits, rises, step));
    }
  }

  /** The part of a step after which no more than the least share is kept. */
  private static double part(double before, double after, double least) {
    return after < least ? (before - least) / (before - after) : 1;
  }

  /**
   * A step of the filling: what it began with, how long that would take, whether a reach is full.
   */
  private record Step(LaneDeposit from, double timeS, boolean jumped) {}

  /** Sand of each class that all reaches keep [kg/s]. */
  private static double[] keptOfAll(LaneDeposit deposit, int classes) {
    double[] kept = new double[classes];
    for (List<Double> reach : deposit.keptKgps()) {
      for (int k = 0; k < classes; k++) {
        kept[k] += reach.get(k);
      }
    }
    return kept;
  }

  private static double sum(double[] all) {
    double sum = 0;
    for (double one : all) {
      sum += one;
    }
    return sum;
  }

  private static double storage(List<LaneReach> reaches, int reach) {
    return reaches.get(reach).storageDepthM();
  }

  /** The time in which no reach rises by more than its part of the storage depth [s]. */
  private static double timeS(
      List<LaneReach> reaches, double[] deposits, double[] rises, int steps) {
    double step = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rises.length; i++) {
      double room = storage(reaches, i) - deposits[i];
      if (rises[i] > 0 && room > 0) {
        step = Math.min(step, Math.min(room, storage(reaches, i) / steps) / rises[i]);
      }
    }
    return step;
  }

  /** Raises the deposits; says whether a reach became full. */
  private static boolean raise(
      List<LaneReach> reaches, double[] deposits, double[] rises, double step) {
    boolean filled = false;
    for (int i = 0; i < rises.length; i++) {
      double storage = storage(reaches, i);
      boolean had = deposits[i] < storage;
      deposits[i] += rises[i] * step;
      // The last step lands on the storage depth but for rounding.
      if (deposits[i] > storage * (1 - 1e-9)) {
        deposits[i] = storage;
        filled |= had;
      }
    }
    return filled;
  }

  /** How fast the deposit of each reach rises, hours of rest included [m/s]. */
  private static double[] rises(
      List<LaneReach> reaches,
      LaneDeposit now,
      UnitFeed feed,
      double runningShare,
      double porosity) {
    double[] rises = new double[reaches.size()];
    for (int i = 0; i < rises.length; i++) {
      double kept = now.keptKgps().get(i).stream().mapToDouble(Double::doubleValue).sum();
      double solidM3 = reaches.get(i).areaM2() * (1 - porosity) * feed.sandDensityKgM3();
      rises[i] = kept * runningShare / solidM3;
    }
    return rises;
  }

  private static Partition partition(
      UnitFeed feed, double[] keptKg, double fibre, double runningS, double porosity) {
    List<Double> sand = new ArrayList<>();
    double all = 0;
    for (int k = 0; k < keptKg.length; k++) {
      double fed = feed.sandKgps().get(k) * runningS;
      double share = fed > 0 ? Numbers.rounded(keptKg[k] / fed) : 0;
      // A sum of steps that all keep everything falls short of it by rounding.
      sand.add(share > 1 - 1e-12 ? 1 : share);
      all += keptKg[k];
    }
    double pores = all / feed.sandDensityKgM3() * porosity / (1 - porosity);
    double liquor = Numbers.rounded(pores / (feed.liquidM3ps() * runningS));
    return new Partition(sand, liquor, liquor, liquor, Numbers.rounded(fibre));
  }

  private static void aboveNought(String what, double share) {
    if (!(share > 0 && share <= 1)) {
      throw new IllegalArgumentException(what + " lies in 0 (excluded) to 1 but was " + share);
    }
  }

  private static Point point(double time, double[] deposits, LaneDeposit now, double recovery) {
    return new Point(
        time,
        boxed(deposits),
        now.flows().stream().map(ChannelFlow::depthM).toList(),
        now.flows().stream().map(ChannelFlow::velocityMps).toList(),
        recovery);
  }

  /** Why it is time to end; null when it is not. */
  private static End end(
      List<LaneReach> reaches,
      double[] deposits,
      UnitFeed feed,
      double recovery,
      double leastRecovery) {
    if (!(feed.sandTotalKgps() > 0)) {
      return End.NO_SAND;
    }
    boolean full = true;
    for (int i = 0; i < deposits.length; i++) {
      full &= deposits[i] >= reaches.get(i).storageDepthM();
    }
    if (full) {
      return End.FULL;
    }
    return recovery < leastRecovery ? End.KEEPS_TOO_LITTLE : null;
  }

  private static List<Double> fed(UnitFeed feed, double runningS) {
    return feed.sandKgps().stream().map(flow -> flow * runningS).toList();
  }

  private static List<Double> boxed(double[] values) {
    List<Double> list = new ArrayList<>();
    for (double value : values) {
      list.add(value);
    }
    return Collections.unmodifiableList(list);
  }

  /**
   * Time from clean to clean-out.
   *
   * @return the time [s]; empty without sand
   */
  public OptionalDouble intervalS() {
    return end == End.NO_SAND
        ? OptionalDouble.empty()
        : OptionalDouble.of(points.get(points.size() - 1).timeS());
  }

  /**
   * Share of all sand fed between two clean-outs that the lane kept.
   *
   * @return the share; that of the clean lane when it is time to clean it at once, 0 without sand
   */
  public double meanRecovery() {
    double fed = fedKg.stream().mapToDouble(Double::doubleValue).sum();
    double kept = depositedKg.stream().mapToDouble(Double::doubleValue).sum();
    return fed > 0 ? Numbers.rounded(kept / fed) : points.get(0).recovery();
  }

  /**
   * Share of the sand fed that the lane still keeps just before it is cleaned.
   *
   * @return the share; 0 when a lane keeps nothing even clean
   */
  public double lastRecovery() {
    int last = points.size() - 1;
    return points.get(end == End.FULL && last > 0 ? last - 1 : last).recovery();
  }
}
