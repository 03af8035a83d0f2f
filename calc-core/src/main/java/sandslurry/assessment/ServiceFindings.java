package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.feed.DayFindings;
import sandslurry.assessment.feed.FeedFindings;
import sandslurry.assessment.observed.ObservedFindings;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.PumpLoadFindings;
import sandslurry.assessment.states.StatesFindings;
import sandslurry.assessment.states.StationFindings;
import sandslurry.assessment.states.SuctionFindings;
import sandslurry.assessment.stop.LineFlushFindings;
import sandslurry.assessment.stop.PulsationFindings;
import sandslurry.assessment.stop.StopFindings;
import sandslurry.assessment.stop.SurgeFindings;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;

/** What is to be said of a line in service beside its design state, chapter by chapter. */
final class ServiceFindings {
  private ServiceFindings() {}

  static List<Finding> of(Design design, ServiceEvaluation evaluation) {
    ServiceResult result = evaluation.result();
    List<Finding> all = new ArrayList<>();
    evaluation
        .states()
        .ifPresent(states -> all.addAll(new StatesFindings(design, result, states).all()));
    all.addAll(new StationFindings(design, result).all());
    all.addAll(new PumpLoadFindings(design, result).all());
    all.addAll(new SuctionFindings(design, result).all());
    all.addAll(new StandbyFindings(design, evaluation).all());
    result.pulsation().ifPresent(p -> all.addAll(new PulsationFindings(design, p).all()));
    all.addAll(new SurgeFindings(design.units(), result.surges()).all());
    result
        .stop()
        .ifPresent(
            stop -> {
              all.addAll(new StopFindings(design, stop).all());
              all.addAll(new LineFlushFindings(design.units(), stop).all());
            });
    all.addAll(new DayFindings(design, result).all());
    all.addAll(new FeedFindings(design, result).all());
    result.observed().ifPresent(o -> all.addAll(new ObservedFindings(design, o).all()));
    return all;
  }
}
