package sandslurry.assessment.plant.account;

import java.util.Optional;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.station.PumpResult;

/**
 * What the pumps of a line do beside a plant.
 *
 * @param of whose pumps they are, as in a sentence: "the line" or the name of one of several
 * @param stream the stream of the plant that the line carries; empty for a mixture of its own
 * @param alone whether it is the only line: what it carries is then taken to be all that is flushed
 * @param day a day of pumping through it
 * @param pump its pump
 */
public record LineDuty(
    String of,
    Optional<String> stream,
    boolean alone,
    Optional<ServiceResult.Day> day,
    Optional<PumpResult> pump) {
  /**
   * Whether it tells what energy the pumps take.
   *
   * @return false without a day and without a duty point
   */
  public boolean isKnown() {
    return day.isPresent() || pump.flatMap(PumpResult::governing).isPresent();
  }
}
