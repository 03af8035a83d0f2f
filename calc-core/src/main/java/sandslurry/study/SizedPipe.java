package sandslurry.study;

import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.station.PumpResult;
import sandslurry.correlation.Physics;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.Severity;
import sandslurry.pipe.catalogue.StandardPipe;

/**
 * A line laid in one standard pipe, with the whole evaluation that it rests on.
 *
 * @param pipe the pipe
 * @param assessment the design with that pipe in every run that is sized
 */
public record SizedPipe(StandardPipe pipe, Assessment assessment) {
  /**
   * How the line stands; a lane or a plant beside it is left out.
   *
   * @return the gravest of its findings
   */
  public Severity verdict() {
    return assessment.findings().stream()
        .filter(SizedPipe::ofLine)
        .map(Finding::severity)
        .reduce(Severity.PASS, Severity::or);
  }

  /**
   * Says whether the line works in this pipe.
   *
   * @return true when no finding of it is a FAIL and its pump, if given, brings the minimum flow
   *     rate
   */
  boolean feasible() {
    return verdict() != Severity.FAIL && !pumpFallsShort();
  }

  /**
   * Whether the pump gives less than the minimum flow rate wanted.
   *
   * @return true when its duty point lies below it
   */
  public boolean pumpFallsShort() {
    double minimum = assessment.design().oneLine().flow().minimumM3ps();
    return assessment
        .pump()
        .flatMap(PumpResult::governing)
        .map(duty -> duty.flowM3ps() < minimum)
        .orElse(false);
  }

  /**
   * The gravest finding.
   *
   * @return what stands first; nothing for a pass
   */
  public Optional<Finding> gravest() {
    return assessment.findings().stream()
        .filter(SizedPipe::ofLine)
        .filter(finding -> finding.severity() == verdict())
        .filter(finding -> finding.severity().compareTo(Severity.CAUTION) >= 0)
        .findFirst();
  }

  private static boolean ofLine(Finding finding) {
    return finding.topic() != Topic.LANE
        && finding.topic() != Topic.PLANT
        && finding.topic() != Topic.FEED;
  }

  private LineResult line() {
    return assessment.line().orElseThrow();
  }

  private Optional<LineState> state(FlowCase flowCase) {
    return line().at(flowCase);
  }

  /**
   * The flow rates at which the line works in this pipe.
   *
   * @return the operating window
   */
  public OperatingWindow window() {
    return line().window();
  }

  /**
   * The lowest velocity at the minimum flow rate, in the widest run.
   *
   * @return the velocity in the largest bore of the standard; empty without a flow [m/s]
   */
  public OptionalDouble leastVelocityMps() {
    return state(FlowCase.MINIMUM).stream()
        .flatMap(state -> state.runs().stream())
        .mapToDouble(run -> run.leastVelocityMps())
        .min();
  }

  /**
   * Total dynamic head at the design flow rate.
   *
   * @return head in metres of slurry; empty without a flow [m]
   */
  public OptionalDouble headM() {
    return state(FlowCase.DESIGN).stream().mapToDouble(state -> state.systemHeadM()).findFirst();
  }

  /**
   * Power that the slurry takes up at the design flow rate: that at the shaft is this over the
   * efficiency of the pump.
   *
   * @return ρ g Q H, 0 for a line that falls [W]
   */
  public OptionalDouble hydraulicW() {
    return state(FlowCase.DESIGN).stream()
        .mapToDouble(
            state ->
                Math.max(0, state.systemHeadM())
                    * Physics.GRAVITY
                    * state.mixtureDensityKgM3()
                    * state.flowM3ps())
        .findFirst();
  }

  /**
   * Water to flush the line before a stop.
   *
   * @return its volume; empty without sand or where no flow clears the line [m3]
   */
  public OptionalDouble flushM3() {
    return assessment.service().stop().stream()
        .flatMap(stop -> stop.flush().stream())
        .mapToDouble(flush -> flush.volumeM3())
        .findFirst();
  }

  /**
   * Hours of a day for a daily volume at the design flow rate.
   *
   * @param dailyM3 volume moved in a day [m3]
   * @return time of pumping in a day; empty without a flow [s]
   */
  public OptionalDouble runningS(double dailyM3) {
    return state(FlowCase.DESIGN).stream()
        .mapToDouble(state -> dailyM3 / state.flowM3ps())
        .findFirst();
  }
}
