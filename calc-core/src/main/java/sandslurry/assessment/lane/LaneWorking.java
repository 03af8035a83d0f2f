package sandslurry.assessment.lane;

import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.correlation.Physics;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.lane.LaneSpec;
import sandslurry.fact.step.Step;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.lane.LaneClass;
import sandslurry.separation.lane.LaneFilling;
import sandslurry.separation.lane.LaneResult;
import sandslurry.separation.lane.SettlingLane;
import sandslurry.settling.SettlingVelocities;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind the settling lane. */
public final class LaneWorking {
  private LaneWorking() {}

  public static List<Step> steps(Design design, LaneEvaluation evaluation, LaneResult result) {
    Working w = new Working("settling lane");
    LaneSpec spec = design.lane().orElseThrow();
    UnitFeed feed = evaluation.feed();
    double flow = feed.mixtureM3ps();
    double width = Measure.LENGTH.si(spec.width());
    double length = Measure.LENGTH.si(spec.length());
    double depth = result.flow().depthM();
    if (evaluation.depthIsUniform(result)) {
      w.step(
          "h",
          "depth of uniform flow",
          "Q = b h R^(2/3) S^(1/2) / n, R = b h / (b + 2 h), solved for h",
          Kind.BORE,
          depth,
          "Manning",
          in("Q", Kind.FLOW, flow),
          in("b", Kind.LENGTH, width),
          in("S", Kind.NUMBER, Measure.FRACTION.si(spec.slope())),
          in("n", Kind.NUMBER, Measure.FRACTION.si(spec.manning())));
    } else {
      w.step("h", "depth of flow", "as given", Kind.BORE, depth, "design");
    }
    double velocity =
        w.step(
            "V",
            "mean velocity",
            "V = Q / (b h)",
            Kind.VELOCITY,
            result.flow().velocityMps(),
            "continuity",
            in("Q", Kind.FLOW, flow),
            in("b", Kind.LENGTH, width),
            in("h", Kind.BORE, depth));
    w.step(
        "Fr",
        "Froude number",
        "Fr = V / sqrt(g h)",
        Kind.NUMBER,
        result.flow().froudeNumber(),
        "definition",
        in("V", Kind.VELOCITY, velocity),
        in("g", Kind.NUMBER, Physics.GRAVITY),
        in("h", Kind.BORE, depth));
    w.step(
        "Re",
        "Reynolds number",
        "Re = 4 R V rho / mu",
        Kind.NUMBER,
        result.reynoldsNumber(),
        "definition",
        in("R", Kind.BORE, result.flow().hydraulicRadiusM()),
        in("V", Kind.VELOCITY, velocity),
        in("rho", Kind.DENSITY, feed.liquid().densityKgM3()),
        in("mu", Kind.VISCOSITY, feed.liquid().viscosityPaS()));
    w.step(
        "t",
        "residence time",
        "t = L b h / Q",
        Kind.TIME,
        result.residenceTimeS(),
        "continuity",
        in("L", Kind.LENGTH, length),
        in("b", Kind.LENGTH, width),
        in("h", Kind.BORE, depth),
        in("Q", Kind.FLOW, flow));
    w.step(
        "v_0",
        "surface overflow rate",
        "v_0 = Q / (L b)",
        Kind.FALL,
        result.basin().overflowVelocityMps(),
        "Hazen (1904)",
        in("Q", Kind.FLOW, flow),
        in("L", Kind.LENGTH, length),
        in("b", Kind.LENGTH, width));
    w.step(
        "u*",
        "shear velocity",
        "u* = sqrt(g R S_f), S_f the friction slope by Manning",
        Kind.FALL,
        result.flow().shearVelocityMps(),
        "definition",
        in("R", Kind.BORE, result.flow().hydraulicRadiusM()),
        in("S_f", Kind.NUMBER, result.flow().frictionSlope()));
    for (LaneClass grains : result.classes()) {
      grains(w, feed, result, grains, depth);
    }
    w.step(
        "m",
        "dry sand that the storage depth holds",
        "m = L b h_s (1 - porosity) rho_s",
        Kind.MASS,
        result.storageKg(),
        "geometry; porosity " + SettlingLane.USUAL_POROSITY,
        in("L", Kind.LENGTH, length),
        in("b", Kind.LENGTH, width),
        in("h_s", Kind.BORE, Measure.LENGTH.si(spec.sandStorageDepth())),
        in("rho_s", Kind.DENSITY, feed.sandDensityKgM3()));
    w.step(
        "m_d",
        "sand entering per day",
        "m_d = C Q rho_s (running time / day)",
        Kind.MASS_PER_DAY,
        result.sandKgPs(),
        "balance of mass",
        in("C", Kind.NUMBER, feed.volumeFraction()),
        in("Q", Kind.FLOW, flow),
        in("rho_s", Kind.DENSITY, feed.sandDensityKgM3()),
        in("running share", Kind.NUMBER, evaluation.runningShare()));
    cycle(w, result);
    return w.steps();
  }

  private static void cycle(Working w, LaneResult result) {
    LaneFilling likely = result.cycle().likely();
    w.step(
        "T",
        "time from clean to clean-out",
        "followed in steps of a hundredth of the storage depth",
        Kind.DAYS,
        likely.intervalS().orElse(0),
        "balance of mass; the deposit spread evenly",
        in("m", Kind.MASS, result.storageKg()),
        in("m_d", Kind.MASS_PER_DAY, result.sandKgPs()));
    w.step(
        "k_m",
        "share of the sand kept, average over one cleaning cycle",
        "sand deposited / sand fed, from clean to clean-out",
        Kind.PERCENT,
        likely.meanRecovery(),
        "balance of mass",
        in("clean", Kind.PERCENT, likely.points().get(0).recovery()),
        in("before cleaning", Kind.PERCENT, likely.lastRecovery()));
  }

  private static void grains(
      Working w, UnitFeed feed, LaneResult result, LaneClass grains, double depth) {
    String of =
        " of grains of "
            + sandslurry.units.UnitSystem.METRIC.show(Kind.GRAIN, grains.size().meanM());
    w.step(
        "w",
        "settling velocity" + of,
        SettlingVelocities.DEFAULT,
        Kind.FALL,
        grains.settlingVelocityMps(),
        in("d", Kind.GRAIN, grains.size().meanM()),
        in("rho", Kind.DENSITY, feed.liquid().densityKgM3()),
        in("mu", Kind.VISCOSITY, feed.liquid().viscosityPaS()),
        in("coating factor", Kind.NUMBER, feed.settlingFactor()));
    w.step(
        "w_C",
        "hindered settling velocity" + of,
        "w_C = w (1 - C)^n, n by Rowe (1987)",
        Kind.FALL,
        grains.hinderedVelocityMps(),
        "Richardson and Zaki (1954)",
        in("w", Kind.FALL, grains.settlingVelocityMps()),
        in("C", Kind.NUMBER, feed.volumeFraction()));
    w.step(
        "t_s",
        "time to settle through the depth" + of,
        "t_s = h / w_C",
        Kind.TIME,
        grains.fallTimeS(),
        "definition",
        in("h", Kind.BORE, depth),
        in("w_C", Kind.FALL, grains.hinderedVelocityMps()));
    w.step(
        "E",
        "share caught, ideal," + of,
        "E = min(1, w_C / v_0)",
        Kind.PERCENT,
        grains.capture().ideal(),
        "Hazen (1904)",
        in("w_C", Kind.FALL, grains.hinderedVelocityMps()),
        in("v_0", Kind.FALL, result.basin().overflowVelocityMps()));
    w.step(
        "E",
        "share caught, turbulent," + of,
        "uniform eddy diffusivity 0.075 u* h, series solution",
        Kind.PERCENT,
        grains.capture().campDobbins(),
        "Camp (1946), Dobbins (1944)",
        in("w_C", Kind.FALL, grains.hinderedVelocityMps()),
        in("v_0", Kind.FALL, result.basin().overflowVelocityMps()),
        in("u*", Kind.FALL, result.flow().shearVelocityMps()));
    w.step(
        "E",
        "share caught, fully mixed," + of,
        "E = 1 - exp(-w_C / v_0)",
        Kind.PERCENT,
        grains.capture().vetter(),
        "Vetter (1940)",
        in("w_C", Kind.FALL, grains.hinderedVelocityMps()),
        in("v_0", Kind.FALL, result.basin().overflowVelocityMps()));
    w.step(
        "V_s",
        "velocity that scours" + of,
        "lesser of Camp (beta 0.04) and Shields",
        Kind.VELOCITY,
        grains.scourVelocityMps(),
        "Camp (1946); Shields curve by Soulsby (1997)",
        in("Camp", Kind.VELOCITY, grains.campScourMps()),
        in("Shields", Kind.VELOCITY, grains.shieldsScourMps()));
    w.step(
        "k",
        "share kept by the clean lane, over all sizes of the class" + of,
        "capture (turbulent) with w_C (1 - (V/V_r)^2), V_r the velocity that scours or at which"
            + " turbulence holds the grain up, the higher",
        Kind.PERCENT,
        grains.kept().likely(),
        "Krone (1962) on Camp (1946) and Dobbins (1944)",
        in("V", Kind.VELOCITY, result.flow().velocityMps()),
        in("V_s", Kind.VELOCITY, grains.scourVelocityMps()),
        in("w/u*", Kind.NUMBER, grains.suspensionRatio()));
  }
}
