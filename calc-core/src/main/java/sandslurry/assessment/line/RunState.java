package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * One run of pipe at one flow.
 *
 * @param velocityMps mean velocity in the mean bore, which friction follows
 * @param leastVelocityMps mean velocity in the largest bore that the standard allows, which
 *     deposition is judged by
 * @param regime flow regime of the carrier
 * @param flow how the carrier alone flows in the mean bore
 * @param deposition the judgement on deposition; empty when there is no sand
 * @param depositionModels what every deposition correlation says of it; empty when there is no sand
 * @param carriage what carries the sand; empty when there is no sand
 * @param headLossModels the same by every model of the bracket
 * @param friction what it takes of the head
 * @param pressures pressure at its ends
 * @param overBed true when the velocity is below the deposition limit: the head loss is then that
 *     of a line with a bed and not for design
 * @param severity how the run stands at this flow as far as deposition goes
 */
// More than ten components: a row of three tables, which show each part.
public record RunState(
    double velocityMps,
    double leastVelocityMps,
    Regime regime,
    CarrierFlow flow,
    Optional<DepositionJudgement> deposition,
    List<DepositionJudgement.Entry> depositionModels,
    Optional<SandCarriage> carriage,
    List<ModelValue> headLossModels,
    RunPoint.Friction friction,
    LineModel.Pressures pressures,
    boolean overBed,
    Severity severity) {
  /** Copies the lists. */
  public RunState {
    depositionModels = List.copyOf(depositionModels);
    headLossModels = List.copyOf(headLossModels);
  }

  /**
   * Whether the correlations of the deposition velocity apply, which are for turbulent flow.
   *
   * @return false without sand and in laminar flow
   */
  public boolean depositionApplies() {
    return deposition.isPresent() && regime != Regime.LAMINAR;
  }
}
