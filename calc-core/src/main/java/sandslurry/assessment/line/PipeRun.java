package sandslurry.assessment.line;

import java.util.Map;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.pipe.Bore;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.pipe.fittings.FittingLoss;

/**
 * The pipe of one run in plain SI.
 *
 * @param spec the run
 * @param mean the mean bore, which friction follows
 * @param largest the largest bore, which deposition is judged by
 * @param angleRad slope in the direction of flow, upward positive [rad]
 */
public record PipeRun(RunSpec spec, Bore mean, Bore largest, double angleRad) {
  static PipeRun of(RunSpec spec) {
    double roughness = spec.roughnessM();
    return new PipeRun(
        spec,
        new Bore(spec.meanBoreM(), roughness),
        new Bore(spec.largestBoreM(), roughness),
        Math.asin(spec.riseM() / spec.lengthM()));
  }

  /** Sum of the loss coefficients of all fittings. */
  double fittingCoefficient(double reynolds) {
    double coefficient = 0;
    for (Map.Entry<FittingKind, Integer> fitting : spec.fittings().entrySet()) {
      coefficient += fitting.getValue() * FittingLoss.coefficient(fitting.getKey(), reynolds, mean);
    }
    return coefficient;
  }
}
