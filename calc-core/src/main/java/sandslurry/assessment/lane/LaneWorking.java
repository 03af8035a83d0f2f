package sandslurry.assessment.lane;

import static sandslurry.fact.step.Equation.DEFINITION;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.fact.step.Equation;
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
  private static final String CONTINUITY = "continuity";
  private static final String BALANCE = "balance of mass";
  private static final String MANNING = "Manning 1891";
  private static final Equation DEPTH =
      Equation.search(
          "h",
          "depth of flow over the clean floor",
          "depth at which Manning's equation gives the flow rate, or the depth of the design if that"
              + " is more",
          Kind.BORE,
          MANNING,
          "Q m3/s, b m, S, n");
  private static final Equation VELOCITY =
      Equation.of("V", "mean velocity", "Q / (b h)", Kind.VELOCITY, CONTINUITY, "Q m3/s, b m, h m");
  private static final Equation RADIUS =
      Equation.of("R", "hydraulic radius", "b h / (b + 2 h)", Kind.BORE, "geometry", "b m, h m");
  private static final Equation SLOPE =
      Equation.of(
          "S_f",
          "friction slope, that of the floor in uniform flow",
          "(n V/R^(2/3))^2",
          Kind.NUMBER,
          MANNING,
          "n, V m/s, R m");
  private static final Equation SHEAR =
      Equation.of("u*", "shear velocity", "sqrt(g R S_f)", Kind.FALL, DEFINITION, "R m, S_f");
  private static final Equation FACTOR =
      Equation.of(
          "f",
          "Darcy friction factor of the floor",
          "8 g n^2/R^(1/3)",
          Kind.NUMBER,
          MANNING,
          "n, R m");
  private static final Equation FROUDE =
      Equation.of("Fr", "Froude number", "V/sqrt(g h)", Kind.NUMBER, DEFINITION, "V m/s, h m");
  private static final Equation REYNOLDS =
      Equation.of(
          "Re",
          "Reynolds number",
          "4 R V rho/mu",
          Kind.NUMBER,
          DEFINITION,
          "R m, V m/s, rho kg/m3, mu Pa.s");
  private static final Equation RESIDENCE =
      Equation.of("t", "detention time", "L b h/Q", Kind.TIME, CONTINUITY, "L m, b m, h m, Q m3/s");
  private static final Equation OVERFLOW =
      Equation.of(
          "v_0",
          "overflow rate",
          "Q / (L b)",
          Kind.FALL,
          CaptureRelations.IDEAL.citation().toString(),
          "Q m3/s, L m, b m");
  private static final Equation STORED =
      Equation.of(
          "m",
          "dry sand that the storage depth holds",
          "L b h_s (1 - p) rho_s",
          Kind.MASS,
          "geometry",
          "L m, b m, h_s m, p, rho_s kg/m3");
  private static final Equation ENTERING =
      Equation.of(
          "m_d",
          "sand that enters, average over the day",
          "C Q rho_s x_run",
          Kind.MASS_PER_DAY,
          BALANCE,
          "C, Q m3/s, rho_s kg/m3, x_run");
  private static final Equation CYCLE =
      Equation.search(
          "T",
          "time from clean to clean-out",
          "filling followed in steps of a hundredth of the storage depth, the deposit spread evenly",
          Kind.DAYS,
          BALANCE,
          "m kg, m_d kg/s");
  private static final Equation MEAN =
      Equation.search(
          "k_m",
          "share of the sand kept, average over one cleaning cycle",
          "sand deposited over sand fed, from clean to clean-out",
          Kind.PERCENT,
          BALANCE,
          "clean, last");
  private static final Equation COATED =
      Equation.of(
          "w_1",
          "settling velocity of the grain with its coating",
          "f_c w",
          Kind.FALL,
          "coating factor of the design",
          "f_c, w m/s");
  private static final Equation GRAIN_REYNOLDS =
      Equation.of(
          "Re_p",
          "Reynolds number of the grain",
          "w_1 d/nu",
          Kind.NUMBER,
          DEFINITION,
          "w_1 m/s, d m, nu m2/s");
  private static final Equation HINDERED =
      Equation.of(
          "w_C",
          "settling velocity in the crowd",
          "w_1 (1 - C)^n",
          Kind.FALL,
          "Richardson and Zaki (1954)",
          "w_1 m/s, C, n");
  private static final Equation FALL_TIME =
      Equation.of(
          "t_s",
          "time to settle through the depth",
          "h/w_C",
          Kind.TIME,
          DEFINITION,
          "h m, w_C m/s");
  private static final Equation IDEAL =
      Equation.of(
          "E_1",
          "share caught without turbulence",
          "min(1, w_C/v_0)",
          Kind.PERCENT,
          CaptureRelations.IDEAL.citation().toString(),
          "w_C m/s, v_0 m/s");
  private static final Equation TURBULENT =
      Equation.search(
          "E_2",
          "share caught in turbulence",
          "solution for the uniform eddy diffusivity 0.075 u* h",
          Kind.PERCENT,
          new CampDobbins1946().citation().toString(),
          "w_C m/s, v_0 m/s, u* m/s");
  private static final Equation MIXED =
      Equation.of(
          "E_3",
          "share caught when fully mixed",
          "1 - exp(-w_C/v_0)",
          Kind.PERCENT,
          CaptureRelations.MIXED.citation().toString(),
          "w_C m/s, v_0 m/s");
  private static final Equation CAMP =
      scour("V_c", "velocity that scours, by Camp", ScourModels.CAMP.citation().toString());
  private static final Equation SHIELDS =
      scour("V_sh", "velocity that scours, by Shields", ScourModels.SHIELDS.citation().toString());
  private static final Equation SCOUR =
      Equation.of(
          "V_s",
          "velocity that scours, the lower of the two",
          "min(V_c, V_sh)",
          Kind.VELOCITY,
          "the lower of two",
          "V_c m/s, V_sh m/s");
  private static final Equation SUSPENSION =
      Equation.of(
          "r",
          "settling velocity over shear velocity",
          "w_C/u*",
          Kind.NUMBER,
          DEFINITION,
          "w_C m/s, u* m/s");
  private static final Equation KEPT =
      Equation.search(
          "k",
          "share kept by the clean lane, over all sizes of the class",
          "share caught in turbulence with w_C (1 - (V/V_r)^2), V_r the higher of V_s and the"
              + " velocity at which turbulence holds the grain up",
          Kind.PERCENT,
          "Krone (1962) on Camp (1946) and Dobbins (1944)",
          "V m/s, V_s m/s, r");

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
