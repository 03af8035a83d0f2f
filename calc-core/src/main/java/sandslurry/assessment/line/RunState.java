package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import sandslurry.assessment.materials.ModelValue;
import sandslurry.fact.finding.Severity;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.PressureGradient;
import sandslurry.units.ShearRate;

/**
 * One run of pipe at one flow.
 *
 * @param velocity mean velocity in the mean bore, which friction follows
 * @param leastVelocity mean velocity in the largest bore that the standard allows, which deposition
 *     is judged by
 * @param reynolds Reynolds number of the carrier with its fines
 * @param regime flow regime of the carrier
 * @param wallShearRate shear rate of the carrier at the wall
 * @param deposition the judgement on deposition; empty when there is no sand
 * @param depositionModels what every deposition correlation says of it; empty when there is no sand
 * @param carriage what carries the sand; empty when there is no sand
 * @param liquidGradient metres of carrier lost per metre of pipe without sand
 * @param slurryGradient the same with sand, by the default model
 * @param headLossModels the same by every model of the bracket
 * @param pressureGradient friction of the slurry per length, slope considered
 * @param friction pressure lost by friction along the run
 * @param fittings pressure lost in the fittings of the run
 * @param startPressure gauge pressure at the start of the run
 * @param endPressure gauge pressure at its end
 * @param overBed true when the velocity is below the deposition limit: the head loss is then that
 *     of a line with a bed and not for design
 * @param severity how the run stands at this flow as far as deposition goes
 */
// More than ten components: a row of three tables, which show each; not computed with.
public record RunState(
    Quantity<Speed> velocity,
    Quantity<Speed> leastVelocity,
    Quantity<Dimensionless> reynolds,
    Regime regime,
    Quantity<ShearRate> wallShearRate,
    Optional<DepositionJudgement> deposition,
    List<DepositionJudgement.Entry> depositionModels,
    Optional<SandCarriage> carriage,
    Quantity<Dimensionless> liquidGradient,
    Quantity<Dimensionless> slurryGradient,
    List<ModelValue> headLossModels,
    Quantity<PressureGradient> pressureGradient,
    Quantity<Pressure> friction,
    Quantity<Pressure> fittings,
    Quantity<Pressure> startPressure,
    Quantity<Pressure> endPressure,
    boolean overBed,
    Severity severity) {
  /** Copies the lists. */
  public RunState {
    depositionModels = List.copyOf(depositionModels);
    headLossModels = List.copyOf(headLossModels);
  }
}
