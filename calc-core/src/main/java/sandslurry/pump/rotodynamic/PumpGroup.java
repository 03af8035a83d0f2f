package sandslurry.pump.rotodynamic;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.numeric.Roots;

/**
 * Pumps that work together, alike or not, as one head over one flow.
 *
 * <p><b>In series</b> all carry the same flow and the heads add. The group ends where the first of
 * the curves ends.
 *
 * <p><b>In parallel</b>, each behind its own non-return valve, all have the same head and the flows
 * add. The rule by which the flow of one pump follows from the common head H:
 *
 * <ul>
 *   <li>A pump whose head at its least flow, its shut-off head, is below H gives nothing: it cannot
 *       open its valve. That holds also for a pump whose head first rises with flow: already
 *       running it might hold on, but once stopped it cannot join.
 *   <li>Else it gives the greatest flow of its curve at which its head is at least H. On a curve
 *       that rises somewhere this is the outer, stable branch.
 * </ul>
 *
 * <p>The head of the group then never rises with flow; where a pump joins with a jump of flow, the
 * head of the group is level over that jump, and the pump hunts. The range of flow runs from the
 * head at which the strongest pump stands before its valve down to the head at which the first pump
 * reaches the end of its curve; no curve is extrapolated. A group of one pump is the pump itself.
 *
 * <p>A pump that is held shut by the others churns and heats its liquid; its power is not in {@link
 * #efficiency}.
 */
public final class PumpGroup {
  private static final double BESIDE = 1e-9;
  private static final double ROUNDING = 1e-12;
  private static final int SCAN = 400;
  private static final int MOST_DOUBLINGS = 20;

  private final Arrangement arrangement;
  private final List<PumpCurve> pumps;
  private final double leastFlow;
  private final double greatestFlow;
  private final double highHead;
  private final double lowHead;

  private PumpGroup(Arrangement arrangement, List<PumpCurve> pumps) {
    if (pumps.isEmpty()) {
      throw new IllegalArgumentException("a group of pumps needs one pump or more");
    }
    this.arrangement = pumps.size() == 1 ? Arrangement.SERIES : arrangement;
    this.pumps = List.copyOf(pumps);
    if (this.arrangement == Arrangement.SERIES) {
      this.leastFlow = pumps.stream().mapToDouble(PumpCurve::leastFlowM3ps).max().orElseThrow();
      this.greatestFlow =
          pumps.stream().mapToDouble(PumpCurve::greatestFlowM3ps).min().orElseThrow();
      this.highHead = Double.NaN;
      this.lowHead = Double.NaN;
    } else {
      this.highHead =
          pumps.stream().mapToDouble(p -> p.headM(p.leastFlowM3ps())).max().orElseThrow();
      this.lowHead =
          pumps.stream().mapToDouble(p -> p.headM(p.greatestFlowM3ps())).max().orElseThrow();
      this.leastFlow = Arrays.stream(leastFlows()).sum();
      this.greatestFlow = Arrays.stream(flowsAt(lowHead)).sum();
    }
  }

  /**
   * Pumps that work together, if they can.
   *
   * @param arrangement how they are joined
   * @param pumps one or more
   * @return the group; empty when the curves have no range of flow in common
   */
  public static Optional<PumpGroup> of(Arrangement arrangement, List<PumpCurve> pumps) {
    PumpGroup group = new PumpGroup(arrangement, pumps);
    return group.greatestFlow > group.leastFlow ? Optional.of(group) : Optional.empty();
  }

  private static PumpGroup fitting(Arrangement arrangement, List<PumpCurve> pumps) {
    return of(arrangement, pumps)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "the curves of the pumps "
                        + arrangement.words()
                        + " have no range of flow in common"));
  }

  /**
   * Pumps one after the other.
   *
   * @param pumps one or more
   * @return the group
   * @throws IllegalArgumentException if the curves have no flow in common
   */
  public static PumpGroup series(List<PumpCurve> pumps) {
    return fitting(Arrangement.SERIES, pumps);
  }

  /**
   * Pumps side by side, each behind its non-return valve.
   *
   * @param pumps one or more
   * @return the group
   * @throws IllegalArgumentException if the curves have no range of head in common
   */
  public static PumpGroup parallel(List<PumpCurve> pumps) {
    return fitting(Arrangement.PARALLEL, pumps);
  }

  /** How pumps are joined. */
  public enum Arrangement {
    /** One after the other: the heads add. */
    SERIES("in series"),
    /** Side by side: the flows add. */
    PARALLEL("in parallel");

    private final String words;

    Arrangement(String words) {
      this.words = words;
    }

    /**
     * The arrangement in words.
     *
     * @return for example "in parallel"
     */
    String words() {
      return words;
    }
  }

  /**
   * What one pump of a group does.
   *
   * @param flowM3ps its flow, 0 if it is held shut [m3/s]
   * @param headM its head in metres of the liquid pumped [m]
   * @param efficiency its efficiency; 0 if it is held shut
   */
  public record Part(double flowM3ps, double headM, double efficiency) {}

  /**
   * The pumps.
   *
   * @return in the order given
   */
  public List<PumpCurve> pumps() {
    return pumps;
  }

  /**
   * The least flow of the group.
   *
   * @return the flow [m3/s]
   */
  public double leastFlowM3ps() {
    return leastFlow;
  }

  /**
   * The greatest flow of the group.
   *
   * @return the flow at which the first pump reaches the end of its curve [m3/s]
   */
  public double greatestFlowM3ps() {
    return greatestFlow;
  }

  /**
   * Head of the group.
   *
   * @param flowM3ps flow of the group, within its range [m3/s]
   * @return head in metres of the liquid pumped [m]
   * @throws IllegalArgumentException if the flow lies outside the range
   */
  public double headM(double flowM3ps) {
    double flow = within(flowM3ps);
    if (arrangement == Arrangement.SERIES) {
      double head = 0;
      for (PumpCurve pump : pumps) {
        head += pump.headM(flow);
      }
      return head;
    }
    if (flow <= flowAt(highHead)) {
      return highHead;
    }
    if (flow >= greatestFlow) {
      return lowHead;
    }
    return Roots.between(
        "head of pumps in parallel", head -> flowAt(head) - flow, lowHead, highHead);
  }

  /**
   * What each pump does at a flow of the group. In parallel the flows add up to it; a pump that
   * joins with a jump of flow is given what the others leave.
   *
   * @param flowM3ps flow of the group, within its range [m3/s]
   * @return one part for each pump, in order
   */
  public List<Part> parts(double flowM3ps) {
    double flow = within(flowM3ps);
    double head = headM(flow);
    double[] flows = flows(flow, head);
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < flows.length; i++) {
      PumpCurve pump = pumps.get(i);
      boolean shut = arrangement == Arrangement.PARALLEL && flows[i] == 0;
      double onCurve = Math.min(Math.max(flows[i], pump.leastFlowM3ps()), pump.greatestFlowM3ps());
      parts.add(
          new Part(
              flows[i],
              arrangement == Arrangement.SERIES ? pump.headM(onCurve) : head,
              shut ? 0 : pump.efficiency(onCurve)));
    }
    return List.copyOf(parts);
  }

  /**
   * The flow of the pump that takes most.
   *
   * @param flowM3ps flow of the group, within its range [m3/s]
   * @param headM head of the group at that flow [m]
   * @return its flow; in series that of the group [m3/s]
   */
  public double greatestShareM3ps(double flowM3ps, double headM) {
    double flow = within(flowM3ps);
    double greatest = 0;
    for (double share : flows(flow, headM)) {
      greatest = Math.max(greatest, share);
    }
    return greatest;
  }

  private double[] flows(double flow, double head) {
    if (arrangement == Arrangement.PARALLEL) {
      return shares(flow, head);
    }
    double[] flows = new double[pumps.size()];
    Arrays.fill(flows, flow);
    return flows;
  }

  /**
   * Efficiency of the group: power given to the liquid over the shaft power of the pumps that
   * deliver.
   *
   * @param flowM3ps flow of the group, within its range [m3/s]
   * @return the efficiency; 0 where a pump that delivers has none, as at shut-off
   */
  public double efficiency(double flowM3ps) {
    double given = 0;
    double taken = 0;
    for (Part part : parts(flowM3ps)) {
      if (part.flowM3ps() > 0) {
        given += part.flowM3ps() * part.headM();
        taken += part.flowM3ps() * part.headM() / part.efficiency();
      }
    }
    return given > 0 ? given / taken : 0;
  }

  /**
   * The least speed at which the group reaches a point. All pumps turn in one ratio, by which the
   * curve of the group scales as that of a pump does.
   *
   * <pre>r² H(Q/r) = H_wanted</pre>
   *
   * @param flowM3ps Q, positive [m3/s]
   * @param headM head that the system asks at that flow, in metres of the liquid pumped; positive
   *     [m]
   * @return r, the speed over that of this group; empty when at every speed that gives this head
   *     the flow lies beyond the end of the curve
   */
  public OptionalDouble speedRatio(double flowM3ps, double headM) {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps)) || !(headM > 0 && Double.isFinite(headM))) {
      throw new IllegalArgumentException(
          "a speed is sought for a flow and a head > 0 but they were "
              + flowM3ps
              + " m3/s and "
              + headM
              + " m");
    }
    double low = flowM3ps / greatestFlow;
    if (gap(low, flowM3ps, headM) > 0) {
      return OptionalDouble.empty();
    }
    double high = low;
    double last = leastFlow > 0 ? flowM3ps / leastFlow : Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST_DOUBLINGS && high < last && gap(high, flowM3ps, headM) < 0; i++) {
      high = Math.min(2 * high, last);
    }
    if (gap(high, flowM3ps, headM) < 0) {
      return OptionalDouble.empty();
    }
    return high == low
        ? OptionalDouble.of(low)
        : OptionalDouble.of(
            Roots.all("speed of a pump", r -> gap(r, flowM3ps, headM), low, high, SCAN).get(0));
  }

  private double gap(double ratio, double flow, double wanted) {
    double onCurve = Math.min(Math.max(flow / ratio, leastFlow), greatestFlow);
    return ratio * ratio * headM(onCurve) - wanted;
  }

  private double within(double flow) {
    double slack = ROUNDING * greatestFlow;
    if (!(flow >= leastFlow - slack && flow <= greatestFlow + slack)) {
      throw new IllegalArgumentException(
          "a flow of "
              + flow
              + " m3/s lies outside the curve of the pumps, "
              + leastFlow
              + " to "
              + greatestFlow
              + " m3/s; it is not extrapolated");
    }
    return Math.min(Math.max(flow, leastFlow), greatestFlow);
  }

  /** The flows beside the head, blended so that they add up also where one of them jumps. */
  private double[] shares(double flow, double head) {
    double beside = BESIDE * Math.max(highHead - lowHead, ROUNDING);
    double[] less = head < highHead ? flowsAt(Math.min(head + beside, highHead)) : leastFlows();
    double[] more = flowsAt(Math.max(head < highHead ? head - beside : head, lowHead));
    double below = Arrays.stream(less).sum();
    double above = Arrays.stream(more).sum();
    double weight = above > below ? Math.min(Math.max((flow - below) / (above - below), 0), 1) : 0;
    double[] shares = new double[less.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = less[i] + weight * (more[i] - less[i]);
    }
    return shares;
  }

  /** The flows when the strongest pumps stand before their valves. */
  private double[] leastFlows() {
    return pumps.stream()
        .mapToDouble(p -> p.headM(p.leastFlowM3ps()) < highHead ? 0 : p.leastFlowM3ps())
        .toArray();
  }

  private double[] flowsAt(double head) {
    double[] flows = new double[pumps.size()];
    for (int i = 0; i < flows.length; i++) {
      flows[i] = pumps.get(i).flowAtM3ps(head);
    }
    return flows;
  }

  private double flowAt(double head) {
    double sum = 0;
    for (PumpCurve pump : pumps) {
      sum += pump.flowAtM3ps(head);
    }
    return sum;
  }
}
