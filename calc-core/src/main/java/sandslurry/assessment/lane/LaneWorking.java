package sandslurry.assessment.lane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
import sandslurry.fact.step.Trace;
import sandslurry.material.sand.Grain;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.CampDobbins1946;
import sandslurry.separation.capture.CaptureRelations;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.ScourModels;
import sandslurry.separation.lane.LaneClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.settling.HinderedSettlings;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The working behind the settling lane. */
public final class LaneWorking {
  private static final Equations EQUATIONS = Equations.of(LaneWorking.class);
  private static final Equation DEPTH = EQUATIONS.of("depth", Kind.BORE);
  private static final Equation VELOCITY = EQUATIONS.of("velocity", Kind.VELOCITY);
  private static final Equation RADIUS = EQUATIONS.of("radius", Kind.BORE);
  private static final Equation SLOPE = EQUATIONS.of("slope", Kind.NUMBER);
  private static final Equation SHEAR = EQUATIONS.of("shear", Kind.FALL);
  private static final Equation FACTOR = EQUATIONS.of("factor", Kind.NUMBER);
  private static final Equation FROUDE = EQUATIONS.of("froude", Kind.NUMBER);
  private static final Equation REYNOLDS = EQUATIONS.of("reynolds", Kind.NUMBER);
  private static final Equation RESIDENCE = EQUATIONS.of("residence", Kind.TIME);
  private static final Equation OVERFLOW =
      EQUATIONS.of("overflow", Kind.FALL, CaptureRelations.IDEAL.citation().toString());
  private static final Equation STORED = EQUATIONS.of("stored", Kind.MASS);
  private static final Equation ENTERING = EQUATIONS.of("entering", Kind.MASS_PER_DAY);
  private static final Equation CYCLE = EQUATIONS.of("cycle", Kind.DAYS);
  private static final Equation MEAN = EQUATIONS.of("mean", Kind.PERCENT);
  private static final Equation COATED = EQUATIONS.of("coated", Kind.FALL);
  private static final Equation GRAIN_REYNOLDS = EQUATIONS.of("grain-reynolds", Kind.NUMBER);
  private static final Equation HINDERED = EQUATIONS.of("hindered", Kind.FALL);
  private static final Equation FALL_TIME = EQUATIONS.of("fall-time", Kind.TIME);
  private static final Equation IDEAL =
      EQUATIONS.of("ideal", Kind.PERCENT, CaptureRelations.IDEAL.citation().toString());
  private static final Equation TURBULENT =
      EQUATIONS.of("turbulent", Kind.PERCENT, new CampDobbins1946().citation().toString());
  private static final Equation MIXED =
      EQUATIONS.of("mixed", Kind.PERCENT, CaptureRelations.MIXED.citation().toString());
  private static final Equation CAMP =
      scour("V_c", "velocity that scours, by Camp", ScourModels.CAMP.citation().toString());
  private static final Equation SHIELDS =
      scour("V_sh", "velocity that scours, by Shields", ScourModels.SHIELDS.citation().toString());
  private static final Equation SCOUR = EQUATIONS.of("scour", Kind.VELOCITY);
  private static final Equation SUSPENSION = EQUATIONS.of("suspension", Kind.NUMBER);
  private static final Equation KEPT = EQUATIONS.of("kept", Kind.PERCENT);

  private LaneWorking() {}

  private static Equation scour(String symbol, String meaning, String source) {
    return Equation.of(
        symbol,
        meaning,
        "sqrt(8 theta g (s - 1) d / f)",
        Kind.VELOCITY,
        source,
        "theta, s, d m, f");
  }

  /**
   * Keeps the steps of capture, scour and cleaning cycle.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param evaluation the lane
   * @param result what it captures
   */
  public static void tell(
      Trace trace, Design design, LaneEvaluation evaluation, LaneResult result) {
    LaneSpec spec = design.lane().orElseThrow();
    UnitFeed feed = evaluation.feed();
    trace.begin("settling lane", "");
    flow(trace, spec, feed, result);
    double length = Measure.LENGTH.si(spec.length());
    double width = Measure.LENGTH.si(spec.width());
    trace.step(
        STORED,
        result.storageKg(),
        length,
        width,
        Measure.LENGTH.si(spec.sandStorageDepth()),
        SettlingLane.USUAL_POROSITY,
        feed.sandDensityKgM3());
    trace.step(
        ENTERING,
        result.sandKgPs(),
        feed.volumeFraction(),
        feed.mixtureM3ps(),
        feed.sandDensityKgM3(),
        evaluation.runningShare());
    LaneFilling likely = result.cycle().likely();
    if (likely.intervalS().isPresent()) {
      trace.step(CYCLE, likely.intervalS().getAsDouble(), result.storageKg(), result.sandKgPs());
    }
    trace.step(
        MEAN, likely.meanRecovery(), likely.points().get(0).recovery(), likely.lastRecovery());
    // The class of which most is lost governs.
    List<LaneClass> mostLostFirst = new ArrayList<>(result.classes());
    mostLostFirst.stream()
        .max(Comparator.comparingDouble(c -> Math.rint(1e9 * c.share() * (1 - c.kept().likely()))))
        .ifPresent(
            worst -> {
              mostLostFirst.remove(worst);
              mostLostFirst.add(0, worst);
            });
    for (LaneClass grains : mostLostFirst) {
      trace.begin(
          "grains in the settling lane", UnitSystem.METRIC.show(Kind.GRAIN, grains.size().meanM()));
      settling(trace, feed, result, grains);
      capture(trace, feed, result, grains);
    }
  }

  private static void flow(Trace trace, LaneSpec spec, UnitFeed feed, LaneResult result) {
    ChannelFlow flow = result.flow();
    double q = feed.mixtureM3ps();
    double width = Measure.LENGTH.si(spec.width());
    double length = Measure.LENGTH.si(spec.length());
    double n = Measure.FRACTION.si(spec.manning());
    double depth = trace.step(DEPTH, flow.depthM(), q, width, Measure.FRACTION.si(spec.slope()), n);
    double velocity = trace.step(VELOCITY, flow.velocityMps(), q, width, depth);
    double radius = trace.step(RADIUS, flow.hydraulicRadiusM(), width, depth);
    double slope = trace.step(SLOPE, flow.frictionSlope(), n, velocity, radius);
    trace.step(SHEAR, flow.shearVelocityMps(), radius, slope);
    trace.step(FACTOR, flow.darcyFrictionFactor(), n, radius);
    trace.step(FROUDE, flow.froudeNumber(), velocity, depth);
    trace.step(
        REYNOLDS,
        result.reynoldsNumber(),
        radius,
        velocity,
        feed.liquid().densityKgM3(),
        feed.liquid().viscosityPaS());
    trace.step(RESIDENCE, result.residenceTimeS(), length, width, depth, q);
    trace.step(OVERFLOW, result.basin().overflowVelocityMps(), q, length, width);
  }

  private static void settling(Trace trace, UnitFeed feed, LaneResult result, LaneClass grains) {
    double d = grains.size().meanM();
    Grain grain = new Grain(d, feed.sandDensityKgM3(), feed.shape());
    double nu = feed.liquid().kinematicViscosityM2ps();
    double alone = SettlingVelocities.DEFAULT.velocityMps(grain, feed.liquid(), trace).value();
    double coated = trace.step(COATED, grains.settlingVelocityMps(), feed.settlingFactor(), alone);
    double reynolds = trace.step(GRAIN_REYNOLDS, coated * d / nu, coated, d, nu);
    double exponent =
        HinderedSettlings.DEFAULT.exponent(reynolds, feed.volumeFraction(), trace).value();
    double hindered = grains.hinderedVelocityMps();
    trace.step(HINDERED, hindered, coated, feed.volumeFraction(), exponent);
    trace.step(FALL_TIME, grains.fallTimeS(), result.flow().depthM(), hindered);
  }

  private static void capture(Trace trace, UnitFeed feed, LaneResult result, LaneClass grains) {
    double hindered = grains.hinderedVelocityMps();
    double overflow = result.basin().overflowVelocityMps();
    double shear = result.basin().shearVelocityMps();
    trace.step(IDEAL, grains.capture().ideal(), hindered, overflow);
    trace.step(TURBULENT, grains.capture().campDobbins(), hindered, overflow, shear);
    trace.step(MIXED, grains.capture().vetter(), hindered, overflow);
    double d = grains.size().meanM();
    Grain grain = new Grain(d, feed.sandDensityKgM3(), feed.shape());
    double ratio = feed.sandDensityKgM3() / feed.liquid().densityKgM3();
    double friction = result.flow().darcyFrictionFactor();
    double camp = ScourModels.CAMP.shieldsNumber(grain, feed.liquid(), trace).value();
    trace.step(CAMP, grains.campScourMps(), camp, ratio, d, friction);
    double shields = ScourModels.SHIELDS.shieldsNumber(grain, feed.liquid(), trace).value();
    trace.step(SHIELDS, grains.shieldsScourMps(), shields, ratio, d, friction);
    trace.step(SCOUR, grains.scourVelocityMps(), grains.campScourMps(), grains.shieldsScourMps());
    trace.step(SUSPENSION, grains.suspensionRatio(), hindered, shear);
    trace.step(
        KEPT,
        grains.kept().likely(),
        result.flow().velocityMps(),
        grains.scourVelocityMps(),
        grains.suspensionRatio());
  }
}
