package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Carrier;
import sandslurry.material.liquid.Carriers;
import sandslurry.material.liquid.DilutedRheology;
import sandslurry.transport.bed.SandCarriage;

/**
 * Evaluates the line of a design at rising dilution.
 *
 * @param materials its liquid, sand and mixture
 */
public record DilutionEvaluation(Materials materials) {
  private static final int POINTS = 24;

  /**
   * What dilution does to the mixture and its line.
   *
   * @return points from no dilution to the greatest ratio, dense where little is added
   */
  public DilutionCurve curve() {
    double most = materials.design().oneLine().dilution().orElseThrow().mostRatio();
    List<DilutionCurve.Point> points = new ArrayList<>();
    for (int i = 0; i <= POINTS; i++) {
      // Dense where little is added: there the liquid changes most.
      double share = (double) i / POINTS;
      points.add(point(most * share * share));
    }
    return new DilutionCurve(points);
  }

  /**
   * One point. Volumes are taken to add up, as the densities of carrier and mixture do; solids and
   * sand are conserved.
   */
  DilutionCurve.Point point(double ratio) {
    double designFlow = materials.design().oneLine().flow().designM3ps();
    double sand = materials.sandFraction(designFlow);
    Carrier undiluted = materials.carrier();
    double carrierMass = (1 - sand) * undiluted.densityKgM3();
    double solids = undiluted.totalSolids().orElseThrow();
    double addedSolids = materials.design().oneLine().dilution().orElseThrow().totalSolids();
    double addedMass = ratio * Carriers.manure(addedSolids, undiluted.temperatureK()).densityKgM3();
    double mixed = (solids * carrierMass + addedSolids * addedMass) / (carrierMass + addedMass);
    double density = (carrierMass + addedMass) / (1 - sand + ratio);
    Carrier thinner = DilutedRheology.carrier(undiluted, mixed, density);
    return worst(
        ratio,
        mixed,
        materials.diluted(
            thinner, sand / (1 + ratio), materials.highestFraction(sand) / (1 + ratio)));
  }

  private DilutionCurve.Point worst(double ratio, double solids, Materials diluted) {
    LineModel model = new LineModel(diluted);
    LineEvaluation line = new LineEvaluation(model, Optional.empty());
    RunPoint run =
        line.states().stream()
            .flatMap(state -> state.runs().stream())
            .reduce((worst, next) -> standsWorse(next, worst) ? next : worst)
            .orElseThrow();
    OptionalDouble flow = model.leastSafeFlowM3ps(run.pipe().spec());
    return new DilutionCurve.Point(
        ratio,
        solids,
        run.mixture().sandFraction(),
        run.leastVelocityMps(),
        flow.isPresent()
            ? Optional.of(run.pipe().largest().velocityMps(flow.getAsDouble()))
            : Optional.empty(),
        run.regime(),
        run.carriage().map(SandCarriage::support),
        run.carriage().map(SandCarriage::floorShare).orElse(0.0),
        run.friction().gradient() * run.slurry().liquid().densityKgM3() * Physics.GRAVITY,
        run.severity());
  }

  private static boolean standsWorse(RunPoint run, RunPoint than) {
    int difference = run.severity().compareTo(than.severity());
    return difference > 0 || difference == 0 && run.leastVelocityMps() < than.leastVelocityMps();
  }
}
