package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import sandslurry.settling.HinderedSettlings;
import sandslurry.transport.bed.LaminarTransport;

/**
 * Share of the sand that would reach the floor before the outlet of a line if no eddy lifted it;
 * worked out when it is first asked for.
 */
final class FloorShare implements DoubleSupplier {
  private final List<FilledRun> line;
  private final double flowM3ps;
  private double share = Double.NaN;

  FloorShare(List<FilledRun> line, double flowM3ps) {
    this.line = line;
    this.flowM3ps = flowM3ps;
  }

  @Override
  public double getAsDouble() {
    if (Double.isNaN(share)) {
      List<LaminarTransport.Run> stretches = new ArrayList<>();
      for (FilledRun run : line) {
        stretches.add(
            new LaminarTransport.Run(
                run.pipe().largest(), run.pipe().spec().lengthM(), run.pipe().angleRad()));
      }
      LineMixture mixture = line.get(0).mixture();
      share =
          LaminarTransport.floorShare(
              line.get(0).sand(),
              line.get(0)::coreFallsMps,
              mixture.coarseFraction(),
              mixture.rheology(),
              mixture.liquidDensityKgM3(),
              flowM3ps,
              stretches,
              HinderedSettlings.DEFAULT);
    }
    return share;
  }
}
