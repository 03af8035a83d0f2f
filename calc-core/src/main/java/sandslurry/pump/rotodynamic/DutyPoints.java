package sandslurry.pump.rotodynamic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;

/**
 * Where a pump meets its system: every flow at which the head given equals the head asked, both in
 * metres of mixture.
 *
 * <p>The system curve of a settling slurry falls before it rises, so it can meet a flat pump curve
 * more than once. The range of flow is scanned for changes of sign, in 200 to 400 intervals where
 * the curves are near each other and in a quarter of them where both change far less than they lie
 * apart; wherever the distance between the curves has a local minimum near 0 without a change of
 * sign, that minimum is searched out, so that two crossings inside one interval and a mere touch
 * are found too; where they do not meet at all, each minimum is. The flows between the ends of the
 * range are multiples of a power of two, so that pumps of other wear or speed ask the same system
 * for its head at the same flows.
 *
 * @param points the duty points, ascending by flow; empty when the curves do not meet
 * @param absence why there is none; empty when there is one
 * @param closestFlowM3ps the flow at which the curves come closest; that of the first duty point
 *     when there is one [m3/s]
 * @param closestGapM pump head less system head at that flow [m]
 */
public record DutyPoints(
    List<DutyPoint> points, Optional<Absence> absence, double closestFlowM3ps, double closestGapM) {
  private static final int MOST_INTERVALS = 400;

  /** Fine intervals in a coarse one. */
  private static final int COARSE = 4;

  /** Curves are near where they lie apart less than this many changes of a coarse interval. */
  private static final double NEAR = 4;

  private static final int NARROWINGS = 80;
  private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;
  private static final double RELATIVE = 1e-9;
  private static final double BESIDE = 1e-4;

  /**
   * Finds every duty point in a range of flow.
   *
   * @param pumpHeadM head of the pump in metres of mixture against flow [m3/s]
   * @param systemHeadM head of the system in metres of mixture against flow [m3/s]
   * @param leastFlowM3ps the least flow, not negative; where the pump curve begins [m3/s]
   * @param greatestFlowM3ps the greatest flow; where the pump curve ends [m3/s]
   * @return the duty points, or why there is none
   * @throws IllegalArgumentException if the range of flow is empty
   * @throws UnsolvedException if one of the heads is not finite somewhere in the range
   */
  public static DutyPoints find(
      DoubleUnaryOperator pumpHeadM,
      DoubleUnaryOperator systemHeadM,
      double leastFlowM3ps,
      double greatestFlowM3ps) {
    return find(
        pumpHeadM,
        (flow, pumpHead) -> systemHeadM.applyAsDouble(flow),
        leastFlowM3ps,
        greatestFlowM3ps);
  }

  /**
   * Finds every duty point in a range of flow.
   *
   * @param pumpHeadM head of the pump in metres of mixture against flow [m3/s]
   * @param systemHeadM head of the system in metres of mixture against flow and pump head
   * @param leastFlowM3ps the least flow, not negative; where the pump curve begins [m3/s]
   * @param greatestFlowM3ps the greatest flow; where the pump curve ends [m3/s]
   * @return the duty points, or why there is none
   * @throws IllegalArgumentException if the range of flow is empty
   * @throws UnsolvedException if one of the heads is not finite somewhere in the range
   */
  public static DutyPoints find(
      DoubleUnaryOperator pumpHeadM,
      SystemHead systemHeadM,
      double leastFlowM3ps,
      double greatestFlowM3ps) {
    if (!(leastFlowM3ps >= 0 && greatestFlowM3ps > leastFlowM3ps)
        || Double.isInfinite(greatestFlowM3ps)) {
      throw new IllegalArgumentException(
          "a range of flow needs 0 <= least < greatest but has "
              + leastFlowM3ps
              + " and "
              + greatestFlowM3ps
              + " m3/s");
    }
    return new Scan(pumpHeadM, systemHeadM, leastFlowM3ps, greatestFlowM3ps).run();
  }

  /** Head of a system, part of which depends on how pumps share the flow. */
  @FunctionalInterface
  public interface SystemHead {
    /**
     * The head asked.
     *
     * @param flowM3ps flow of all pumps [m3/s]
     * @param pumpHeadM their head at that flow, in metres of mixture [m]
     * @return head of the system in metres of mixture [m]
     */
    double atM(double flowM3ps, double pumpHeadM);
  }

  /**
   * The duty points at which the pump settles and stays.
   *
   * @return those whose kind is {@link Meeting#STABLE}, ascending by flow
   */
  public List<DutyPoint> stable() {
    return points.stream().filter(point -> point.meeting() == Meeting.STABLE).toList();
  }

  /** How the two curves meet. */
  public enum Meeting {
    /** The system curve rises through the pump curve: a small change of flow dies out. */
    STABLE("stable"),
    /** The system curve falls through the pump curve: a small change of flow grows. */
    UNSTABLE("unstable"),
    /** The curves touch without crossing: the least change parts them or makes two points. */
    TOUCHING("touching"),
    /** One curve jumps over the other, so there is no head that both share: the flow hunts. */
    JUMP("at a jump of one of the curves");

    private final String words;

    Meeting(String words) {
      this.words = words;
    }

    /**
     * The kind of meeting in words.
     *
     * @return for example "stable"
     */
    public String words() {
      return words;
    }
  }

  /** Why two curves do not meet. */
  public enum Absence {
    /** The system asks for more head than the pump has at every flow. */
    PUMP_TOO_WEAK("the pump has less head than the system needs at every flow of its curve"),
    /** The pump has more head than the system needs to the end of its curve. */
    CURVE_ENDS_TOO_EARLY(
        "the pump has more head than the system needs at every flow of its curve: the duty point"
            + " lies beyond its end"),
    /** The system asks for more, but least so where the pump curve begins above zero flow. */
    CURVE_BEGINS_TOO_LATE(
        "the pump has less head than the system needs at every flow of its curve, least so where it"
            + " begins: the duty point may lie at a lower flow");

    private final String words;

    Absence(String words) {
      this.words = words;
    }

    /**
     * The reason in words.
     *
     * @return a clause without a stop
     */
    public String words() {
      return words;
    }
  }

  /**
   * One duty point.
   *
   * @param flowM3ps flow of mixture [m3/s]
   * @param headM head of the pump, in metres of mixture [m]
   * @param meeting how the curves meet there
   */
  public record DutyPoint(double flowM3ps, double headM, Meeting meeting) {}

  /** One search, with the samples it has taken. */
  private static final class Scan {
    private final DoubleUnaryOperator pump;
    private final SystemHead system;
    private final double[] flows;
    private final double[] gaps;
    private final int last;
    private final double step;
    private final List<DutyPoint> found = new ArrayList<>();
    private double closestFlow;
    private double closestGap = Double.POSITIVE_INFINITY;

    Scan(DoubleUnaryOperator pump, SystemHead system, double least, double greatest) {
      this.pump = pump;
      this.system = system;
      double even = (greatest - least) / MOST_INTERVALS;
      this.step = Math.scalb(1, Math.getExponent(even) + 1);
      double below = Math.floor(least / step);
      int finest = (int) (Math.ceil(greatest / step) - below);
      double[] fineFlows = new double[finest + 1];
      for (int i = 0; i <= finest; i++) {
        fineFlows[i] = i == 0 ? least : i == finest ? greatest : step * (below + i);
      }
      double[] fineGaps = scanned(fineFlows);
      this.flows = taken(fineFlows, fineGaps);
      this.gaps = taken(fineGaps, fineGaps);
      this.last = flows.length - 1;
    }

    /** The gaps at the flows of a coarse scan, and between them where they are small; else NaN. */
    private double[] scanned(double[] at) {
      int most = at.length - 1;
      double[] here = new double[at.length];
      Arrays.fill(here, Double.NaN);
      for (int i = 0; i < most; i += COARSE) {
        here[i] = gap(at[i]);
      }
      here[most] = gap(at[most]);
      double before = 0;
      for (int from = 0; from < most; from += COARSE) {
        int to = Math.min(from + COARSE, most);
        int beyond = Math.min(to + COARSE, most);
        double change = Math.abs(here[to] - here[from]);
        double changes = Math.max(change, Math.max(before, Math.abs(here[beyond] - here[to])));
        before = change;
        if (Math.min(Math.abs(here[from]), Math.abs(here[to])) <= NEAR * changes) {
          for (int i = from + 1; i < to; i++) {
            here[i] = gap(at[i]);
          }
        }
      }
      return here;
    }

    /** Those values at which there is a gap. */
    private static double[] taken(double[] values, double[] gaps) {
      double[] taken = new double[values.length];
      int count = 0;
      for (int i = 0; i < values.length; i++) {
        if (!Double.isNaN(gaps[i])) {
          taken[count++] = values[i];
        }
      }
      return Arrays.copyOf(taken, count);
    }

    DutyPoints run() {
      for (int i = 0; i <= last; i++) {
        if (gaps[i] == 0) {
          addAtNode(i);
        } else if (isLocalMinimum(i) && isNear(i)) {
          searchMinimum(i);
        }
        if (i < last) {
          double left = gaps[i] == 0 ? flows[i] + BESIDE * step : flows[i];
          double right = gaps[i + 1] == 0 ? flows[i + 1] - BESIDE * step : flows[i + 1];
          double atLeft = gaps[i] == 0 ? gap(left) : gaps[i];
          double atRight = gaps[i + 1] == 0 ? gap(right) : gaps[i + 1];
          addCrossing(left, atLeft, right, atRight);
        }
      }
      for (int i = 0; found.isEmpty() && i <= last; i++) {
        if (gaps[i] != 0 && isLocalMinimum(i) && !isNear(i)) {
          searchMinimum(i);
        }
      }
      found.sort((a, b) -> Double.compare(a.flowM3ps(), b.flowM3ps()));
      if (!found.isEmpty()) {
        double flow = found.get(0).flowM3ps();
        return new DutyPoints(List.copyOf(found), Optional.empty(), flow, gap(flow));
      }
      return new DutyPoints(List.of(), Optional.of(absence()), closestFlow, closestGap);
    }

    private double gap(double flow) {
      double pumpHead = pump.applyAsDouble(flow);
      double gap = pumpHead - system.atM(flow, pumpHead);
      if (!Double.isFinite(gap)) {
        throw new UnsolvedException(
            "duty point: pump head less system head is " + gap + " at " + flow + " m3/s");
      }
      if (Math.abs(gap) < Math.abs(closestGap)) {
        closestGap = gap;
        closestFlow = flow;
      }
      return gap;
    }

    private Absence absence() {
      if (closestGap > 0) {
        return Absence.CURVE_ENDS_TOO_EARLY;
      }
      return closestFlow == flows[0] && flows[0] > 0
          ? Absence.CURVE_BEGINS_TOO_LATE
          : Absence.PUMP_TOO_WEAK;
    }

    /** A sample at which the gap is exactly 0: the samples beside it tell how the curves meet. */
    private void addAtNode(int i) {
      double before = i == 0 ? 0 : gap(flows[i] - BESIDE * step);
      double after = i == last ? 0 : gap(flows[i] + BESIDE * step);
      boolean leaves = before > 0 || i == 0;
      boolean enters = before < 0 || i == 0;
      Meeting meeting = Meeting.TOUCHING;
      if (leaves && (after < 0 || i == last)) {
        meeting = Meeting.STABLE;
      } else if (enters && (after > 0 || i == last)) {
        meeting = Meeting.UNSTABLE;
      }
      add(flows[i], meeting);
    }

    /** Strict on one side only, so that two equal samples begin one search and not two. */
    private boolean isLocalMinimum(int i) {
      double here = Math.abs(gaps[i]);
      boolean left = i == 0 || gaps[i] * gaps[i - 1] > 0 && Math.abs(gaps[i - 1]) > here;
      boolean right = i == last || gaps[i] * gaps[i + 1] > 0 && Math.abs(gaps[i + 1]) >= here;
      return left && right;
    }

    /** Whether the curves change enough beside a sample to meet there. */
    private boolean isNear(int i) {
      double before = i == 0 ? 0 : Math.abs(gaps[i] - gaps[i - 1]);
      double after = i == last ? 0 : Math.abs(gaps[i] - gaps[i + 1]);
      return Math.abs(gaps[i]) <= NEAR * Math.max(before, after);
    }

    /** Golden-section search for the least distance; the curves may touch or cross twice there. */
    private void searchMinimum(int sample) {
      double low = flows[Math.max(sample - 1, 0)];
      double high = flows[Math.min(sample + 1, last)];
      double sign = Math.signum(gaps[sample]);
      double tolerance = tolerance(low);
      double a = low;
      double b = high;
      double c = b - GOLDEN * (b - a);
      double d = a + GOLDEN * (b - a);
      double atC = sign * gap(c);
      double atD = sign * gap(d);
      for (int i = 0; i < NARROWINGS && Math.min(atC, atD) >= -tolerance && c < d; i++) {
        if (atC < atD) {
          b = d;
          d = c;
          atD = atC;
          c = b - GOLDEN * (b - a);
          atC = sign * gap(c);
        } else {
          a = c;
          c = d;
          atC = atD;
          d = a + GOLDEN * (b - a);
          atD = sign * gap(d);
        }
      }
      double nearest = atC < atD ? c : d;
      double distance = Math.min(atC, atD);
      if (distance < -tolerance) {
        addCrossing(low, gap(low), nearest, gap(nearest));
        addCrossing(nearest, gap(nearest), high, gap(high));
      } else if (distance <= tolerance) {
        add(nearest, Meeting.TOUCHING);
      }
    }

    private void addCrossing(double left, double atLeft, double right, double atRight) {
      if (atLeft * atRight < 0) {
        double flow = crossing(left, atLeft, right);
        Meeting meeting = atLeft > 0 ? Meeting.STABLE : Meeting.UNSTABLE;
        boolean meets = Math.abs(gap(flow)) <= tolerance(flow);
        add(flow, meets ? meeting : Meeting.JUMP);
      }
    }

    private double crossing(double left, double atLeft, double right) {
      try {
        return Roots.between("duty point", this::gap, left, right);
      } catch (UnsolvedException leap) {
        // A head that leaps through zero has no root; halving finds where it leaps.
        double low = left;
        double high = right;
        while (high - low > RELATIVE * high) {
          double middle = (low + high) / 2;
          double at = gap(middle);
          if (!Double.isFinite(at)) {
            throw leap;
          }
          if (at * atLeft > 0) {
            low = middle;
          } else {
            high = middle;
          }
        }
        return low;
      }
    }

    private void add(double flow, Meeting meeting) {
      found.add(new DutyPoint(flow, pump.applyAsDouble(flow), meeting));
    }

    private double tolerance(double flow) {
      return RELATIVE * Math.max(1, Math.abs(pump.applyAsDouble(flow)));
    }
  }
}
