package sandslurry.assessment.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.line.RunPoint;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.assessment.stop.StopResult.Lying;
import sandslurry.assessment.stop.StopResult.Plug;
import sandslurry.assessment.stop.StopResult.StoppedRun;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.design.station.PumpSpec.RotodynamicSpec;
import sandslurry.design.station.ServiceSpec.OperationSpec;
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
import sandslurry.transport.bed.LaminarTransport;
import sandslurry.transport.bed.PackedPlug;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.bed.StoppedLine;
import sandslurry.transport.bed.StoppedLine.Flush;
import sandslurry.transport.bed.StoppedLine.Restart;
import sandslurry.units.Measure;

/**
 * The line of a design stopped full of what it carries, at the concentration of its design flow.
 */
public final class StopEvaluation {
  private final Design design;
  private final Materials materials;
  private final LineModel model;
  private final double flow;
  private final double fraction;

  /**
   * The line of a design stopped at its design flow rate.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param model the physics of its line
   */
  public StopEvaluation(Design design, Materials materials, LineModel model) {
    this.design = design;
    this.materials = materials;
    this.model = model;
    this.flow = Measure.FLOW.si(design.flow().orElseThrow().design());
    this.fraction = materials.sandFraction(flow);
  }

  /**
   * Flow rate of water that carries a bed of the sand off in every run: it keeps the sand moving
   * with margin at any concentration, as a bed that is stirred up comes thick.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param designFlow design flow rate, at which the sand fed is counted [m3/s]
   * @return flow rate [m3/s]; empty when no flow rate through some run does
   */
  public static OptionalDouble clearingFlowM3ps(
      Design design, Materials materials, double designFlow) {
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

  /**
   * The stopped line: bed, plugs, restart and flush.
   *
   * @param base the line at its flows
   * @return the stopped line; empty without sand in a liquid without yield stress
   */
  public Optional<StopResult> result(List<State> base) {
    Vehicle vehicle = materials.vehicle(1, fraction);
    double density = vehicle.liquid().densityKgM3();
    Rheology rheology = materials.carrier().rheology().thickened(vehicle.relativeViscosity());
    if (!(fraction > 0) && !(rheology.yieldStressPa() > 0)) {
      return Optional.empty();
    }
    OperationSpec operation = design.service().operation().orElse(OperationSpec.NONE);
    Lying lying = lying(rheology, density, operation);
    double coarse =
        lying.atRest() > 0 ? settlingMps(materials.coarse().d85M(), rheology, density) : 0;
    double finest =
        lying.atRest() > 0 ? settlingMps(Gradation.FINES_BOUNDARY_M, rheology, density) : 0;
    double settling = finest > 0 ? Math.min(finest, coarse) : coarse;
    LineModel water = water(design, materials, flow);
    List<StoppedRun> runs = new ArrayList<>();
    double sliding = 0;
    double yield = 0;
    double sand = 0;
    double sandStatic = 0;
    double grain = materials.coarse().d85M();
    for (int i = 0; i < model.route().runs().size(); i++) {
      RunSpec run = model.route().runs().get(i);
      StoppedLine line = stopped(run, lying.fraction(fraction, i));
      double slope = Math.abs(angle(run));
      double slides = line.slideAngleRad(StoppedLine.SLIDING_FRICTION);
      double packed = packs(run, lying.fraction(fraction, i)) ? line.plugLengthM(length(run)) : 0;
      Restart held =
          line.restart(materials.sandDensityKgM3(), density, grain, lying.restedYieldPa(), 0);
      // Sand that is sure to have slid away leaves no bed behind.
      sliding += slope <= slides ? held.slidingBedPa() : 0;
      yield += held.yieldPa();
      sand += stopped(run, fraction).sandMassKg(materials.sandDensityKgM3());
      double rise = Measure.LENGTH.si(run.rise());
      // Sand that lies does not help to push down a slope.
      sandStatic += rise > 0 ? rise : rise * (1 - lying.share(i));
      runs.add(
          new StoppedRun(
              run.name(),
              line.bed().depthM(),
              lying.fraction(fraction, i) / StoppedLine.BED_VOLUME_FRACTION,
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
    List<Plug> plugs = plugs(density, available - resting, lying);
    OptionalDouble wedged = OptionalDouble.of(0);
    for (Plug plug : plugs) {
      wedged =
          wedged.isPresent() && plug.wedgedPa().isPresent()
              ? OptionalDouble.of(wedged.getAsDouble() + plug.wedgedPa().getAsDouble())
              : OptionalDouble.empty();
    }
    OptionalDouble clearing = water.leastSafeFlowM3ps();
    return Optional.of(
        new StopResult(
            fraction,
            sand,
            model.volumeM3(),
            lying,
            base.stream().flatMap(state -> state.runs().stream()).anyMatch(RunPoint::bedMoves),
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
                                design,
                                materials,
                                materials.inFlushWater(fraction),
                                model,
                                water,
                                fraction,
                                lying,
                                rheology.yieldStressPa())
                            .result(supply)),
            operation
                .flushVolume()
                .map(v -> OptionalDouble.of(Measure.VOLUME.si(v)))
                .orElseGet(OptionalDouble::empty)));
  }

  /** What of the sand lies on the floor of each run, and how stiff the liquid is after the rest. */
  private Lying lying(Rheology rheology, double density, OperationSpec operation) {
    double held = materials.yieldExtrapolated() ? 0 : rheology.yieldStressPa();
    double atRest = 0;
    if (fraction > 0) {
      for (LaminarTransport.Part part : materials.parts()) {
        atRest += part.massShare() * StaticSuspension.restingShare(part.grain(), held, density);
      }
    }
    List<Double> running =
        model.runs(flow, fraction).stream()
            .map(run -> run.carriage().map(SandCarriage::lyingShare).orElse(0.0))
            .toList();
    double thixotropy =
        operation.thixotropy().map(Measure.FRACTION::si).orElse(StoppedLine.THIXOTROPY);
    return new Lying(running, atRest, thixotropy, thixotropy * rheology.yieldStressPa());
  }

  private static double length(RunSpec run) {
    return Measure.LENGTH.si(run.length());
  }

  private static double angle(RunSpec run) {
    return Math.asin(Measure.LENGTH.si(run.rise()) / length(run));
  }

  /** Whether the sand of a run may slide to its foot. */
  private boolean packs(RunSpec run, double settled) {
    double slides = stopped(run, settled).slideAngleRad(StoppedLine.SLIDING_FRICTION);
    return settled > 0 && Math.abs(angle(run)) > Math.min(slides, RunPoint.SLIDES_RAD);
  }

  private boolean packs(int run, Lying lying) {
    return packs(model.route().runs().get(run), lying.fraction(fraction, run));
  }

  /** Neighbouring runs that fall and then climb lay their sand on one heap between them. */
  private List<Plug> plugs(double liquidDensity, double left, Lying lying) {
    List<Plug> plugs = new ArrayList<>();
    List<RunSpec> runs = model.route().runs();
    int i = 0;
    while (i < runs.size()) {
      if (!packs(i, lying)) {
        i++;
        continue;
      }
      boolean falls = angle(runs.get(i)) < 0;
      int end = i + 1;
      while (end < runs.size() && packs(end, lying) && (angle(runs.get(end)) < 0) == falls) {
        end++;
      }
      int climbs = end;
      while (falls && climbs < runs.size() && packs(climbs, lying) && angle(runs.get(climbs)) > 0) {
        climbs++;
      }
      plugs.add(plug(i, climbs, end - i, liquidDensity, left, lying));
      i = climbs;
    }
    return plugs;
  }

  private Plug plug(int from, int to, int before, double liquidDensity, double left, Lying lying) {
    List<RunSpec> runs = model.route().runs().subList(from, to);
    boolean falls = angle(runs.get(0)) < 0;
    boolean valley = before < runs.size();
    List<PackedPlug.Part> parts = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int i = from; i < to; i++) {
      RunSpec run = model.route().runs().get(i);
      double bore = Measure.LENGTH.si(run.meanBore());
      least = Math.min(least, bore);
      double length = stopped(run, lying.fraction(fraction, i)).plugLengthM(length(run));
      parts.add(new PackedPlug.Part(bore, length, angle(run)));
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
                : "the foot of "
                    + runs.get(0).name()
                    + (from == 0 ? ", at the start of the line" : ""),
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
   * At rest, hindered by the rest of the sand. Between the yield stress that theory asks for and
   * that from which nothing is taken to settle nobody knows, and the sand is taken to fall as if
   * there were none.
   */
  private double settlingMps(double sizeM, Rheology rheology, double density) {
    Grain grain = new Grain(sizeM, materials.sandDensityKgM3(), design.sand().shape());
    Rheology taken = rheology;
    double alone = ShearSettling.atRest(grain, taken, density, SettlingVelocities.DEFAULT).value();
    if (!(alone > 0)) {
      taken = new HerschelBulkley(0, rheology.consistency(), rheology.index());
      alone = ShearSettling.atRest(grain, taken, density, SettlingVelocities.DEFAULT).value();
    }
    if (!(alone > 0)) {
      return 0;
    }
    double viscosity = taken.apparentViscosityPaS(alone / sizeM);
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
