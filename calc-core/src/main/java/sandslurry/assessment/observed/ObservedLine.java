package sandslurry.assessment.observed;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.material.liquid.Carriers;
import sandslurry.pipe.Bore;
import sandslurry.transport.bed.OpenSection;

/**
 * The pressure that the line of a design takes when something in it differs from the design. A bed
 * is taken as equally deep, over the bore, in every run that is not steeper than sand slides on.
 */
final class ObservedLine {
  private final Materials materials;
  private final boolean isRise;
  private final Map<Condition, LineModel> models = new HashMap<>();

  /**
   * What differs from the design.
   *
   * @param bedDepth depth of a settled bed over the bore
   * @param liquidFactor every stress of the liquid over that of the design
   * @param roughnessM roughness of the wall, when another
   * @param water whether water without sand flows
   */
  record Condition(double bedDepth, double liquidFactor, OptionalDouble roughnessM, boolean water) {
    /** The line as designed. */
    static final Condition CLEAN = new Condition(0, 1, OptionalDouble.empty(), false);

    static Condition bed(double depth) {
      return new Condition(depth, 1, OptionalDouble.empty(), false);
    }

    static Condition liquid(double factor) {
      return new Condition(0, factor, OptionalDouble.empty(), false);
    }

    static Condition rough(double roughnessM) {
      return new Condition(0, 1, OptionalDouble.of(roughnessM), false);
    }

    /** The same line with water in it. */
    Condition inWater() {
      return new Condition(bedDepth, 1, roughnessM, true);
    }

    /** What decides which liquid there is. */
    private Condition filling() {
      return new Condition(0, liquidFactor, OptionalDouble.empty(), water);
    }
  }

  ObservedLine(Materials materials) {
    this.materials = materials;
    this.isRise = materials.design().service().observed().orElseThrow().isRise();
  }

  private Materials filling(Condition condition) {
    if (condition.water()) {
      return materials.diluted(Carriers.water(materials.carrier().temperatureK()), 0, 0);
    }
    return condition.liquidFactor() == 1
        ? materials
        : materials.in(
            materials
                .carrier()
                .of(materials.carrier().rheology().thickened(condition.liquidFactor())));
  }

  private LineModel model(Condition condition) {
    Condition filling = condition.filling();
    // Only the design and water come again; a thickness is tried once or twice.
    return filling.liquidFactor() == 1
        ? models.computeIfAbsent(filling, c -> new LineModel(filling(c)))
        : new LineModel(filling(filling));
  }

  /** The runs, each as the flow sees it: over a bed at the velocity that is left to it. */
  List<RunPoint> runs(Condition condition, double flowM3ps) {
    LineModel model = model(condition);
    double fraction = filling(condition).sandFraction(flowM3ps);
    List<RunPoint> runs = new ArrayList<>();
    for (RunSpec run : materials.design().oneLine().route().runs()) {
      Optional<OpenSection> open = open(run, condition.bedDepth());
      if (open.isPresent()) {
        Bore seen = open.get().equivalent();
        runs.add(model.run(piped(run, seen), open.get().equivalentFlowM3ps(flowM3ps), fraction));
      } else {
        runs.add(model.run(walled(run, condition), flowM3ps, fraction));
      }
    }
    return runs;
  }

  /** What a bed leaves open of a run; nothing where there is none. */
  Optional<OpenSection> open(RunSpec run, double bedDepth) {
    double slope = run.riseM() / run.lengthM();
    return bedDepth > 0 && Math.abs(slope) <= Math.sin(RunPoint.SLIDES_RAD)
        ? Optional.of(
            new OpenSection(
                new Bore(run.meanBoreM(), run.roughnessM()), bedDepth, materials.coarse().d85M()))
        : Optional.empty();
  }

  private static RunSpec piped(RunSpec run, Bore bore) {
    RunSpec other = run.inBore(bore.diameterM());
    return rough(other, bore.roughnessM());
  }

  private static RunSpec walled(RunSpec run, Condition condition) {
    return condition.roughnessM().isPresent()
        ? rough(run, condition.roughnessM().getAsDouble())
        : run;
  }

  private static RunSpec rough(RunSpec run, double roughnessM) {
    return new RunSpec(
        run.name(),
        run.pipe(),
        run.largestBoreM(),
        run.meanBoreM(),
        run.ratingPa(),
        roughnessM,
        run.lengthM(),
        run.riseM(),
        run.fittings());
  }

  private double weight(Condition condition, double flowM3ps) {
    Materials filling = filling(condition);
    return Physics.GRAVITY * filling.mixtureDensityKgM3(filling.sandFraction(flowM3ps));
  }

  /**
   * The pressure that would be read: at the start of the line, or the rise of the pump.
   *
   * @return the pressure; NaN where the mixture is too thick to flow [Pa]
   */
  double pressurePa(Condition condition, double flowM3ps) {
    if (!filling(condition).flows(flowM3ps)) {
      return Double.NaN;
    }
    List<RunPoint> runs = runs(condition, flowM3ps);
    double head = runs.get(runs.size() - 1).velocityHeadM();
    for (RunPoint run : runs) {
      head += run.lossM();
    }
    head += isRise ? suctionM(condition, flowM3ps) : -runs.get(0).velocityHeadM();
    return weight(condition, flowM3ps) * head + staticPa(condition, flowM3ps);
  }

  /** What of the pressure is no friction [Pa]. */
  double staticPa(Condition condition, double flowM3ps) {
    LineModel model = model(condition);
    double level = isRise ? 0 : model.route().sourceLevelM();
    return weight(condition, flowM3ps) * (model.staticHeadM() + level);
  }

  /** The rise of the pumps at the pressure read, in metres of mixture. */
  double headM(double pressurePa, double flowM3ps) {
    double read = pressurePa / weight(Condition.CLEAN, flowM3ps);
    if (isRise) {
      return read;
    }
    return read
        + runs(Condition.CLEAN, flowM3ps).get(0).velocityHeadM()
        - materials.design().oneLine().route().sourceLevelM()
        + suctionM(Condition.CLEAN, flowM3ps);
  }

  private double suctionM(Condition condition, double flowM3ps) {
    LineModel model = model(condition);
    double fraction = filling(condition).sandFraction(flowM3ps);
    return model.hasSuction()
        ? model.systemHeadM(flowM3ps, fraction) - model.deliveryHeadM(flowM3ps, fraction)
        : 0;
  }

  /** The pressure that would be read with the valve closed and a head of the pumps. */
  double closedPa(double headM, double flowM3ps) {
    double level = isRise ? 0 : materials.design().oneLine().route().sourceLevelM();
    return weight(Condition.CLEAN, flowM3ps) * (headM + level);
  }

  LineModel clean() {
    return model(Condition.CLEAN);
  }

  Materials materials() {
    return materials;
  }
}
