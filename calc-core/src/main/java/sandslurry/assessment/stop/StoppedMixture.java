package sandslurry.assessment.stop;

import java.util.List;
import java.util.stream.IntStream;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.stop.StopResult.Lying;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.material.liquid.Rheology;
import sandslurry.pipe.Bore;
import sandslurry.transport.bed.OpenSection;
import sandslurry.transport.bed.StoppedLine;

/**
 * What stands in the line of a design that has stopped full.
 *
 * @param model the line
 * @param fraction volume fraction of sand in what the line carries
 * @param rheology the liquid with its fines, while it flows
 * @param liquidDensityKgM3 its density [kg/m3]
 * @param lying what of the sand lies on the floor, and the liquid after the rest
 */
record StoppedMixture(
    LineModel model, double fraction, Rheology rheology, double liquidDensityKgM3, Lying lying) {
  List<RunSpec> runs() {
    return model.route().runs();
  }

  /** A run with the sand that lies in it. */
  StoppedLine stopped(int run) {
    return stopped(run, lying.fraction(fraction, run));
  }

  StoppedLine stopped(int run, double sandFraction) {
    return new StoppedLine(bore(run), runs().get(run).lengthM(), sandFraction);
  }

  /** What the bed leaves open of a run. */
  OpenSection open(int run) {
    return new OpenSection(
        bore(run), stopped(run).bed().depthShare(), model.materials().coarse().d85M());
  }

  private Bore bore(int run) {
    RunSpec spec = runs().get(run);
    return new Bore(spec.meanBoreM(), spec.roughnessM());
  }

  /** Slope of a run in the direction of flow, upward positive [rad]. */
  double angleRad(int run) {
    RunSpec spec = runs().get(run);
    return Math.asin(spec.riseM() / spec.lengthM());
  }

  /** Whether the sand of a run may slide to its foot. */
  boolean packs(int run) {
    StoppedLine stopped = stopped(run);
    return stopped.bedShare() > 0
        && Math.abs(angleRad(run)) > Math.min(stopped.slideAngleRad(), RunPoint.SLIDES_RAD);
  }

  /** Pressure that breaks the yield stress of the rested liquid all along the line [Pa]. */
  double yieldPa() {
    return indices().mapToDouble(i -> stopped(i).yieldPa(lying.restedYieldPa())).sum();
  }

  /** Pressure of a height of mixture [Pa]. */
  double pressurePa(double headM) {
    return headM * model.materials().mixtureDensityKgM3(fraction) * Physics.GRAVITY;
  }

  IntStream indices() {
    return IntStream.range(0, runs().size());
  }
}
