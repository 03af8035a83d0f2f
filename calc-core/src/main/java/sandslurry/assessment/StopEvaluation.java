package sandslurry.assessment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.StopResult.Plug;
import sandslurry.assessment.StopResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.PumpSpec.PistonSpec;
import sandslurry.design.PumpSpec.RotodynamicSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.design.ServiceSpec.OperationSpec;
import sandslurry.material.Vehicle;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Gradation;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.pump.rotodynamic.PumpGroup;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.ShearSettling;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.StoppedLine;
import sandslurry.transport.bed.StoppedLine.Flush;
import sandslurry.transport.bed.StoppedLine.Restart;
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
   * with margin at any concentration, as a bed that is stirred up comes thick.
   *
   * @return the flow; nothing when no flow through some run does
   */
  static OptionalDouble clearingFlowM3ps(Design design, Materials materials, double designFlow) {
    return water(design, materials, designFlow).leastSafeFlowM3ps();
  }

  private static LineModel water(Design design, Materials materials, double designFlow) {
    return new LineModel(design, materials.inFlushWater(materials.sandFraction(designFlow)));
  }

  /** The velocity of water in the largest bore of a run that carries off a bed. */
  static OptionalDouble clearingMps(LineModel water, RunSpec run) {
    OptionalDouble clearing = water.leastSafeFlowM3ps(run);
    return clearing.isPresent()
        ? OptionalDouble.of(
            bore(run, Measure.LENGTH.si(run.largestBore())).velocityMps(clearing.getAsDouble()))
        : clearing;
  }

  Optional<StopResult> result() {
    if (!(fraction > 0)) {
      return Optional.empty();
    }
    Vehicle vehicle = materials.vehicle(1, fraction);
    double density = vehicle.liquid().densityKgM3();
    Rheology rheology = materials.carrier().rheology().thickened(vehicle.relativeViscosity());
    double coarse = coarseSettlingMps(rheology, density);
    double finest = settlingMps(Gradation.FINES_BOUNDARY_M, rheology, density);
    // A yield stress that holds the fine sand alone lets the coarse sand lie down all the same.
    double settling = finest > 0 ? Math.min(finest, coarse) : coarse;
    boolean lies = settling > 0;
    LineModel water = water(design, materials, flow);
    List<StoppedRun> runs = new ArrayList<>();
    double sliding = 0;
    double yield = 0;
    double sand = 0;
    double sandStatic = 0;
    for (RunSpec run : model.route().runs()) {
      StoppedLine line = stopped(run, fraction);
      double slope = Math.abs(angle(run));
      double slides = line.slideAngleRad(StoppedLine.SLIDING_FRICTION);
      double packed = lies && packs(run) ? line.plugLengthM(length(run)) : 0;
      Restart held =
          line.restart(
              materials.sandDensityKgM3(),
              density,
              StoppedLine.SLIDING_FRICTION,
              rheology.yieldStressPa(),
              0);
      // Sand that is sure to have slid away leaves no bed behind.
      sliding += lies && slope <= slides ? held.slidingBedPa() : 0;
      yield += held.yieldPa();
      sand += line.sandMassKg(materials.sandDensityKgM3());
      double rise = Measure.LENGTH.si(run.rise());
      // Sand that lies does not help to push down a slope.
      sandStatic += lies ? Math.max(rise, 0) : rise;
      runs.add(
          new StoppedRun(
              run.name(),
              line.bed().depthM(),
              fraction / StoppedLine.BED_VOLUME_FRACTION,
              packed > 0
                  ? line.slidingTimeS(settling, Math.min(slope, Math.PI / 2))
                  : line.settlingTimeS(settling),
              line.settlingTimeS(coarse),
              slope,
              slides,
              packed,
              clearingMps(water, run)));
    }
    double clear = materials.mixtureDensityKgM3(0);
    double mixture = materials.mixtureDensityKgM3(fraction);
    double level = Measure.LENGTH.si(model.route().sourceLevel());
    double lift = model.staticHeadM() + level;
    double outlet = Measure.LENGTH.si(model.route().outletHead());
    double resting = Physics.GRAVITY * (clear * lift + (mixture - clear) * (sandStatic + outlet));
    double available = available(mixture, level);
    List<Plug> plugs = lies ? plugs(density, available - resting) : List.of();
    OptionalDouble wedged = OptionalDouble.of(0);
    for (Plug plug : plugs) {
      wedged =
          wedged.isPresent() && plug.wedgedPa().isPresent()
              ? OptionalDouble.of(wedged.getAsDouble() + plug.wedgedPa().getAsDouble())
              : OptionalDouble.empty();
    }
    OptionalDouble clearing = water.leastSafeFlowM3ps();
    OperationSpec operation = design.service().operation().orElse(OperationSpec.NONE);
    return Optional.of(
        new StopResult(
            fraction,
            sand,
            model.volumeM3(),
            runs,
            plugs,
            new Restart(sliding, yield, plugs.stream().mapToDouble(Plug::frictionPa).sum(), wedged),
            resting,
            available,
            model.weakestRatingPa(),
            clearing.isPresent()
                ? Optional.of(
                    new Flush(
                        StoppedLine.FLUSH_LINE_VOLUMES * model.volumeM3(), clearing.getAsDouble()))
                : Optional.empty(),
            operation
                .flush()
                .map(
                    supply ->
                        new FlushEvaluation(
                                design, materials.inFlushWater(fraction), water, fraction, lies)
                            .result(supply)),
            operation
                .flushVolume()
                .map(v -> OptionalDouble.of(Measure.VOLUME.si(v)))
                .orElseGet(OptionalDouble::empty)));
  }

  private static double length(RunSpec run) {
    return Measure.LENGTH.si(run.length());
  }

  private static double angle(RunSpec run) {
    return Math.asin(Measure.LENGTH.si(run.rise()) / length(run));
  }

  /** Whether the sand of a run may slide to its foot. */
  private boolean packs(RunSpec run) {
    double slides = stopped(run, fraction).slideAngleRad(StoppedLine.SLIDING_FRICTION);
    return Math.abs(angle(run)) > Math.min(slides, RunPoint.SLIDES_RAD);
  }

  /** Neighbouring runs that fall and then climb lay their sand on one heap between them. */
  private List<Plug> plugs(double liquidDensity, double left) {
    List<Plug> plugs = new ArrayList<>();
    List<RunSpec> runs = model.route().runs();
    int i = 0;
    while (i < runs.size()) {
      if (!packs(runs.get(i))) {
        i++;
        continue;
      }
      boolean falls = angle(runs.get(i)) < 0;
      int end = i + 1;
      while (end < runs.size() && packs(runs.get(end)) && (angle(runs.get(end)) < 0) == falls) {
        end++;
      }
      int climbs = end;
      while (falls
          && climbs < runs.size()
          && packs(runs.get(climbs))
          && angle(runs.get(climbs)) > 0) {
        climbs++;
      }
      plugs.add(plug(runs.subList(i, climbs), end - i, i == 0, liquidDensity, left));
      i = climbs;
    }
    return plugs;
  }

  private Plug plug(
      List<RunSpec> runs, int before, boolean first, double liquidDensity, double left) {
    boolean falls = angle(runs.get(0)) < 0;
    boolean valley = before < runs.size();
    List<PackedPlug.Part> parts = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (RunSpec run : runs) {
      double bore = Measure.LENGTH.si(run.meanBore());
      least = Math.min(least, bore);
      parts.add(
          new PackedPlug.Part(bore, stopped(run, fraction).plugLengthM(length(run)), angle(run)));
    }
    PackedPlug packed =
        new PackedPlug(
            parts,
            Physics.GRAVITY
                * (materials.sandDensityKgM3() - liquidDensity)
                * StoppedLine.BED_VOLUME_FRACTION,
            StoppedLine.SLIDING_FRICTION,
            PackedPlug.STRESS_RATIO);
    double weight = packed.climbingWeightPa();
    double friction = Math.max(0, packed.seepingPa() - weight);
    OptionalDouble wedged = packed.wedgedPa();
    double steepest = parts.stream().mapToDouble(PackedPlug.Part::angleRad).max().orElseThrow();
    String last = runs.get(before - 1).name();
    return new Plug(
        valley
            ? "the low point between " + last + " and " + runs.get(before).name()
            : falls
                ? "the foot of " + last
                : "the foot of " + runs.get(0).name() + (first ? ", at the start of the line" : ""),
        packed,
        least,
        friction,
        wedged.isPresent()
            ? OptionalDouble.of(Math.max(friction, wedged.getAsDouble() - weight))
            : wedged,
        design.pump().isPresent()
            // The weight of the sand that climbs is in the static pressure already.
            ? packed.longestPushedM(least, steepest, Math.max(0, left + weight))
            : OptionalDouble.empty());
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

  /**
   * Settling of sand of d85 in a line at rest; 0 only when the liquid surely holds the coarsest, by
   * the same measure as while it runs. Between the yield stress that theory asks for and that which
   * surely holds, nobody knows, and the sand is taken to fall as if there were none.
   */
  private double coarseSettlingMps(Rheology rheology, double density) {
    double tolerated = Measure.FRACTION.si(design.criteria().floorShare());
    double needed =
        StaticSuspension.neededYieldStressPa(
            materials.coarsestHeld(tolerated), density, StaticSuspension.GREATEST_CONSTANT);
    if (rheology.yieldStressPa() >= needed && !materials.yieldExtrapolated()) {
      return 0;
    }
    double size = materials.coarse().d85M();
    double falls = settlingMps(size, rheology, density);
    return falls > 0
        ? falls
        : settlingMps(
            size, new HerschelBulkley(0, rheology.consistency(), rheology.index()), density);
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
