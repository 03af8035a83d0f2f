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
 * @param reynolds Reynolds number of the carrier with its fines
 * @param regime flow regime of the carrier
 * @param wallShearRatePs shear rate of the carrier at the wall
 * @param deposition the judgement on deposition; empty when there is no sand
 * @param depositionModels what every deposition correlation says of it; empty when there is no sand
 * @param carriage what carries the sand; empty when there is no sand
 * @param liquidGradient metres of carrier lost per metre of pipe without sand
 * @param slurryGradient the same with sand, by the default model
 * @param headLossModels the same by every model of the bracket
 * @param pressureGradientPaPm friction of the slurry per length, slope considered
 * @param frictionPa pressure lost by friction along the run
 * @param fittingsPa pressure lost in the fittings of the run
 * @param startPa gauge pressure at the start of the run
 * @param endPa gauge pressure at its end
 * @param overBed true when the velocity is below the deposition limit: the head loss is then that
 *     of a line with a bed and not for design
 * @param severity how the run stands at this flow as far as deposition goes
 */
// More than ten components: a row of three tables, which show each; not computed with.
public record RunState(
    double velocityMps,
    double leastVelocityMps,
    double reynolds,
    Regime regime,
    double wallShearRatePs,
    Optional<DepositionJudgement> deposition,
    List<DepositionJudgement.Entry> depositionModels,
    Optional<SandCarriage> carriage,
    double liquidGradient,
    double slurryGradient,
    List<ModelValue> headLossModels,
    double pressureGradientPaPm,
    double frictionPa,
    double fittingsPa,
    double startPa,
    double endPa,
    boolean overBed,
    Severity severity) {
  /** Copies the lists. */
  public RunState {
    depositionModels = List.copyOf(depositionModels);
    headLossModels = List.copyOf(headLossModels);
  }
}
