package sandslurry.assessment;

import java.util.List;
import java.util.Optional;
import sandslurry.assessment.feed.DayEvaluation;
import sandslurry.assessment.feed.FeedEvaluation;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedEvaluation;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.StateEvaluation.Evaluated;
import sandslurry.assessment.states.StatesEvaluation;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.stop.PulsationEvaluation;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.StopEvaluation;
import sandslurry.assessment.stop.SurgeEvaluation;

/**
 * Evaluates what a line meets in service beside its design state, chapter by chapter.
 *
 * @param result what came of it
 * @param states the states of the line; empty without one
 */
record ServiceEvaluation(ServiceResult result, Optional<StatesEvaluation> states) {
  /** A design without a line. */
  static ServiceEvaluation withoutLine(Materials materials) {
    return new ServiceEvaluation(
        new ServiceResult(
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            Optional.empty(),
            List.of(),
            materials
                .design()
                .feed()
                .screw()
                .map(screw -> FeedEvaluation.screw(materials.design(), screw)),
            materials
                .design()
                .feed()
                .gravityRun()
                .map(run -> FeedEvaluation.gravityRun(materials, run)),
            Optional.empty()),
        Optional.empty());
  }

  /**
   * A design with a line.
   *
   * @param base the line at its flows
   * @param everyState whether the states beside them are evaluated too
   */
  static ServiceEvaluation of(LineModel model, List<State> base, boolean everyState) {
    StatesEvaluation states = new StatesEvaluation(model, base, everyState);
    List<StateResult> all = states.all().stream().map(Evaluated::result).toList();
    Optional<PulsationResult> pulsation = new PulsationEvaluation(model).result(base);
    ServiceResult feed = withoutLine(model.materials()).result();
    return new ServiceEvaluation(
        new ServiceResult(
            all,
            states.band(),
            states.governing().map(Evaluated::result),
            pulsation,
            model.design().pump().isPresent()
                ? new SurgeEvaluation(model).result(base, pulsation)
                : List.of(),
            new StopEvaluation(model).result(base),
            DayEvaluation.days(model.materials(), all),
            feed.screw(),
            feed.gravityRun(),
            model
                .design()
                .service()
                .observed()
                .filter(read -> everyState)
                .flatMap(read -> ObservedEvaluation.result(model.materials()))),
        Optional.of(states));
  }
}
