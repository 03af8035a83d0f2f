package sandslurry.assessment.line;

import java.util.List;
import sandslurry.plant.Range;

/**
 * The whole line at one flow.
 *
 * @param flowCase which flow it is
 * @param flowM3ps flow of mixture
 * @param sandFraction volume of sand over volume of mixture
 * @param massFraction mass of sand over mass of mixture
 * @param sandRateKgps sand moved
 * @param mixtureDensityKgM3 density of the mixture
 * @param systemHeadM head that the line asks of a pump, in metres of mixture, from the level of the
 *     source
 * @param headByModels the same over all models of head loss; without width where sand lies in the
 *     pipe, which they do not know
 * @param runs the runs in the order of flow
 */
public record LineState(
    FlowCase flowCase,
    double flowM3ps,
    double sandFraction,
    double massFraction,
    double sandRateKgps,
    double mixtureDensityKgM3,
    double systemHeadM,
    Range headByModels,
    List<RunState> runs) {
  /** Copies the list. */
  public LineState {
    runs = List.copyOf(runs);
  }
}
