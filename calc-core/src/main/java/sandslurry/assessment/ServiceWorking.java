package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import sandslurry.assessment.feed.DayWorking;
import sandslurry.assessment.feed.FeedWorking;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult;
import sandslurry.assessment.states.StateWorking;
import sandslurry.assessment.stop.PulsationWorking;
import sandslurry.assessment.stop.StopWorking;
import sandslurry.assessment.stop.SurgeWorking;
import sandslurry.design.Design;
import sandslurry.fact.step.Step;
import sandslurry.fact.step.Trace;

/** The working behind a line in service, chapter by chapter. */
final class ServiceWorking {
  private ServiceWorking() {}

  static List<Step> steps(Design design, Materials materials, ServiceResult result) {
    List<Step> steps = new ArrayList<>();
    Trace trace = Trace.recording();
    StateWorking.tell(trace, design, result.states());
    result.pulsation().ifPresent(p -> PulsationWorking.tell(trace, design, p));
    SurgeWorking.tell(trace, design, result.surges());
    result.stop().ifPresent(s -> StopWorking.tell(trace, design, materials, s));
    steps.addAll(trace.steps());
    result.days().forEach(d -> steps.addAll(DayWorking.steps(design, result, d)));
    result.screw().ifPresent(s -> steps.addAll(FeedWorking.screw(design, s)));
    result.gravityRun().ifPresent(g -> steps.addAll(FeedWorking.gravityRun(design, materials, g)));
    return steps;
  }
}
