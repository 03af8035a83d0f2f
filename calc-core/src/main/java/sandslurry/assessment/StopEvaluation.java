package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.ServiceResult.Stop;
import sandslurry.assessment.ServiceResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.OperationSpec;
import sandslurry.material.Carriers;
import sandslurry.material.Gradation;
import sandslurry.material.Grain;
import sandslurry.material.Liquid;
import sandslurry.material.Rheology;
import sandslurry.material.Vehicle;
import sandslurry.pipe.Bore;
import sandslurry.pump.PumpGroup;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.transport.StoppedLine;
import sandslurry.transport.StoppedLine.Flush;
import sandslurry.transport.StoppedLine.Restart;
import sandslurry.units.Measure;

/** The line of a design stopped full of sand, at the concentration of its design flow. */
final class StopEvaluation {
  private final Design design;
  private final Materials materials;
  private final LineModel model;
  private final double flow;
  private final double fraction;

  StopEvaluation(Design design, Materials materials, LineModel model) {
    this.design = design;
    this.materials = materials;
    this.model = model;
    this.flow = Measure.FLOW.si(design.flow().orElseThrow().design());
    this.fraction = materials.sandFraction(flow);
  }

  /**
   * The flow of water that carries off a bed of the sand in every run: that which keeps it moving
   * with margin at the concentration that it had in the line.
   *
   * @return the flow; nothing when no flow through some run does
   */
  static OptionalDouble clearingFlowM3ps(Design design, Materials materials, double designFlow) {
    LineModel water = water(design, materials, designFlow);
    double most = 0;
    for (RunSpec run : water.route().runs()) {
      OptionalDouble least = water.leastSafeFlowM3ps(run);
      if (least.isEmpty()) {
        return least;
      }
      most = Math.max(most, least.getAsDouble());
    }
    return OptionalDouble.of(most);
  }

  private static LineModel water(Design design, Materials materials, double designFlow) {
    Materials flushing =
        materials.diluted(
            Carriers.water(materials.carrier().temperatureK()), materials.sandFraction(designFlow));
    return new LineModel(design, flushing);
  }

  Optional<Stop> result() {
    if (!(fraction > 0)) {
      return Optional.empty();
    }
    Vehicle vehicle = materials.vehicle(1, fraction);
    double density = vehicle.liquid().densityKgM3();
    Rheology rheology = materials.carrier().rheology().thickened(vehicle.relativeViscosity());
    double finest = settlingMps(Gradation.FINES_BOUNDARY_M, rheology, density);
    double coarse = settlingMps(materials.coarse().d85M(), rheology, density);
    // A yield stress that holds the fine sand alone lets the coarse sand lie down all the same.
    double settling = finest > 0 ? finest : coarse;
    boolean lies = settling > 0;
    LineModel water = water(design, materials, flow);
    List<StoppedRun> runs = new ArrayList<>();
    double sliding = 0;
    double yield = 0;
    double plug = 0;
    double sand = 0;
    double weakest = Double.POSITIVE_INFINITY;
    for (RunSpec run : model.route().runs()) {
      StoppedLine line = stopped(run, fraction);
      double length = Measure.LENGTH.si(run.length());
      double slope = Math.abs(Math.asin(Measure.LENGTH.si(run.rise()) / length));
      double slides = line.slideAngleRad(StoppedLine.SLIDING_FRICTION);
      double packed =
          lies && slope > Math.min(slides, RunPoint.SLIDES_RAD) ? line.plugLengthM(length) : 0;
      Restart held =
          line.restart(
              materials.sandDensityKgM3(),
              density,
              StoppedLine.SLIDING_FRICTION,
              rheology.yieldStressPa(),
              packed);
      sliding += lies ? held.slidingBedPa() : 0;
      yield += held.yieldPa();
      plug += held.plugPa();
      sand += line.sandMassKg(materials.sandDensityKgM3());
      weakest = Math.min(weakest, run.ratingPa(materials.carrier().temperatureK()).orElse(weakest));
      OptionalDouble clearing = water.leastSafeFlowM3ps(run);
      Bore largest = bore(run, Measure.LENGTH.si(run.largestBore()));
      runs.add(
          new StoppedRun(
              run.name(),
              line.bed().depthM(),
              fraction / StoppedLine.BED_VOLUME_FRACTION,
              line.settlingTimeS(settling),
              slope,
              slides,
              packed,
              clearing.isPresent()
                  ? OptionalDouble.of(largest.velocityMps(clearing.getAsDouble()))
                  : OptionalDouble.empty()));
    }
    double mixture = materials.mixtureDensityKgM3(fraction);
    double level = Measure.LENGTH.si(model.route().sourceLevel());
    OptionalDouble clearing = clearingFlowM3ps(design, materials, flow);
    OperationSpec operation =
        design
            .service()
            .operation()
            .orElse(
                new OperationSpec(
                    Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    return Optional.of(
        new Stop(
            fraction,
            sand,
            model.volumeM3(),
            runs,
            new Restart(sliding, yield, plug),
            mixture * Physics.GRAVITY * (model.staticHeadM() + level),
            available(mixture, level),
            Double.isInfinite(weakest) ? OptionalDouble.empty() : OptionalDouble.of(weakest),
            clearing.isPresent()
                ? Optional.of(
                    new Flush(
                        StoppedLine.FLUSH_LINE_VOLUMES * model.volumeM3(), clearing.getAsDouble()))
                : Optional.empty(),
            operation
                .flushFlow()
                .map(q -> OptionalDouble.of(Measure.FLOW.si(q)))
                .orElseGet(OptionalDouble::empty),
            operation
                .flushVolume()
                .map(v -> OptionalDouble.of(Measure.VOLUME.si(v)))
                .orElseGet(OptionalDouble::empty)));
  }

  static StoppedLine stopped(RunSpec run, double sandFraction) {
    return new StoppedLine(
        bore(run, Measure.LENGTH.si(run.meanBore())),
        Measure.LENGTH.si(run.length()),
        sandFraction,
        StoppedLine.BED_VOLUME_FRACTION);
  }

  private static Bore bore(RunSpec run, double diameter) {
    return new Bore(diameter, Measure.LENGTH.si(run.roughness()));
  }

  /** At rest, hindered by the rest of the sand; 0 when the liquid holds the grain. */
  private double settlingMps(double sizeM, Rheology rheology, double density) {
    Grain grain = new Grain(sizeM, materials.sandDensityKgM3(), design.sand().shape());
    double alone =
        ShearSettling.atRest(grain, rheology, density, SettlingVelocities.DEFAULT).value();
    if (!(alone > 0)) {
      return 0;
    }
    double viscosity = rheology.apparentViscosityPaS(alone / sizeM);
    return HinderedSettlings.hinderedVelocityMps(grain, new Liquid(density, viscosity), fraction)
        .value();
  }

  /** Pressure at the start of the line with the pump against it and nothing flowing. */
  private double available(double mixture, double level) {
    double head = 0;
    if (design.pump().orElse(null) instanceof RotodynamicSpec spec) {
      Optional<PumpGroup> group = new PumpEvaluation(design, materials, model).derated(spec);
      head = group.map(g -> g.headM(g.leastFlowM3ps())).orElse(0.0);
    } else if (design.pump().orElse(null) instanceof PistonSpec piston) {
      return Measure.PRESSURE.si(piston.pressureLimit());
    }
    return mixture * Physics.GRAVITY * (head + level);
  }
}
