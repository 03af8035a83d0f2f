package sandslurry.assessment;

import sandslurry.assessment.feed.DayWorking;
import sandslurry.assessment.feed.FeedWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedWorking;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.StateWorking;
import sandslurry.assessment.stop.PulsationWorking;
import sandslurry.assessment.stop.StopWorking;
import sandslurry.assessment.stop.SurgeWorking;
import sandslurry.fact.step.Trace;

/** The working behind a line in service, chapter by chapter. */
final class ServiceWorking {
  private ServiceWorking() {}

  static void steps(Trace trace, Materials materials, ServiceResult result) {
    StateWorking.steps(trace, materials.design(), result.states());
    result.pulsation().ifPresent(p -> PulsationWorking.steps(trace, materials.design(), p));
    SurgeWorking.steps(trace, materials.design(), result.surges());
    result.stop().ifPresent(s -> StopWorking.steps(trace, materials, s));
    DayWorking.steps(trace, materials.design(), result);
    result.screw().ifPresent(s -> FeedWorking.screw(trace, materials.design(), s));
    result.gravityRun().ifPresent(g -> FeedWorking.gravityRun(trace, g));
    result.observed().ifPresent(o -> ObservedWorking.steps(trace, materials.design(), o));
  }
}
