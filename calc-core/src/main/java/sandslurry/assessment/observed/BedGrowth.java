package sandslurry.assessment.observed;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedLine.Condition;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.material.Proportions;
import sandslurry.material.Slurry;
import sandslurry.numeric.Roots;
import sandslurry.transport.deposition.DepositionRule;
import sandslurry.transport.deposition.SandLoad;

/**
 * How long a bed takes to grow: what stays is the sand that the flow over the bed cannot carry,
 *
 * <pre>t = ∫ Cb dVb / (Q (C − Cc))</pre>
 *
 * <p>Vb volume of the bed; Cb volume fraction of sand in it; Q flow rate; C volume fraction of the
 * sand that comes; Cc the fraction of which the deposition velocity, in the round pipe that the
 * flow over the bed sees, is its velocity there. The flat run that carries least decides. That it
 * is the deposition velocity which limits the growth is a choice of this program (no source).
 */
record BedGrowth(ObservedLine line, List<RunSpec> flat, double flowM3ps, double fraction) {
  private static final int STEPS = 8;
  private static final double TRACE = 1e-6;

  /**
   * The time to a depth.
   *
   * @param depth depth over bore
   * @param bedM3 volume of the bed by its depth
   * @return the time; nothing where the flow carries all sand before [s]
   */
  OptionalDouble timeS(double depth, DoubleUnaryOperator bedM3) {
    double time = 0;
    for (int i = 0; i < STEPS; i++) {
      double stays = fraction - carried(depth * (i + 0.5) / STEPS);
      double grows =
          bedM3.applyAsDouble(depth * (i + 1) / STEPS) - bedM3.applyAsDouble(depth * i / STEPS);
      if (!(stays > 0)) {
        return OptionalDouble.empty();
      }
      time += Proportions.PACKED_VOLUME_FRACTION * grows / (flowM3ps * stays);
    }
    return OptionalDouble.of(time);
  }

  /** The most sand that every flat run carries over a bed, at most what comes. */
  private double carried(double depth) {
    double least = fraction;
    for (RunPoint run : line.runs(Condition.bed(depth), flowM3ps)) {
      if (flat.stream().anyMatch(f -> f.name().equals(run.pipe().spec().name()))) {
        least = Math.min(least, carried(run));
      }
    }
    return least;
  }

  private double carried(RunPoint run) {
    DoubleUnaryOperator excess = c -> run.velocityMps() - limitMps(run, c);
    if (excess.applyAsDouble(fraction) >= 0) {
      return fraction;
    }
    double trace = Math.min(TRACE, fraction / 2);
    return excess.applyAsDouble(trace) <= 0
        ? 0
        : Roots.betweenDecades("sand that a flow carries over a bed", excess, trace, fraction);
  }

  private double limitMps(RunPoint run, double fraction) {
    Materials materials = line.materials();
    Slurry slurry = run.slurry().withVolumeFraction(fraction);
    DepositionRule rule = line.clean().rule();
    return rule.judge(
            new SandLoad(slurry, fraction, materials.sizes()),
            run.pipe().mean(),
            run.velocityMps(),
            run.pipe().angleRad())
        .limitMps();
  }
}
