package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import sandslurry.assessment.materials.Materials;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.bed.LaminarTransport;

/**
 * Share of the sand that would reach the floor before the outlet of a line if no eddy lifted it;
 * worked out when it is first asked for.
 */
final class FloorShare implements DoubleSupplier {
  private final Materials materials;
  private final List<FilledRun> line;
  private final double flowM3ps;
  private double share = Double.NaN;

  FloorShare(Materials materials, List<FilledRun> line, double flowM3ps) {
    this.materials = materials;
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
                run.pipe().largest(), run.pipe().lengthM(), run.pipe().angleRad()));
      }
      LineMixture mixture = line.get(0).mixture();
      share =
          LaminarTransport.floorShare(
              materials.parts(),
              mixture.coarseFraction(),
              mixture.rheology(),
              mixture.liquidDensityKgM3(),
              flowM3ps,
              stretches,
              SettlingVelocities.DEFAULT,
              HinderedSettlings.DEFAULT);
    }
    return share;
  }
}
