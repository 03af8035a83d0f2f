package sandslurry.assessment;

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
import sandslurry.fact.finding.Findings;

/** What is to be said of a line in service beside its design state, chapter by chapter. */
final class ServiceFindings {
  private ServiceFindings() {}

  static void of(Design design, ServiceEvaluation evaluation, Findings to) {
    ServiceResult result = evaluation.result();
    evaluation.states().ifPresent(states -> new StatesFindings(design, result, states, to).all());
    new StationFindings(design, result, to).all();
    new PumpLoadFindings(design, result, to).all();
    new SuctionFindings(design, result, to).all();
    new StandbyFindings(design, evaluation, to).all();
    result.pulsation().ifPresent(p -> new PulsationFindings(design, p, to).all());
    new SurgeFindings(result.surges(), to).all();
    result
        .stop()
        .ifPresent(
            stop -> {
              new StopFindings(design, stop, to).all();
              new LineFlushFindings(stop, to).all();
            });
    new DayFindings(design, result, to).all();
    new FeedFindings(design, result, to).all();
    result.observed().ifPresent(o -> new ObservedFindings(design, o, to).all());
  }
}
