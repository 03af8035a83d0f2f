package sandslurry.assessment.lane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.design.lane.LaneSpec;
import sandslurry.fact.step.Sheet;
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
import sandslurry.units.UnitSystem;

/** The working behind the settling lane. */
public final class LaneWorking {

  private LaneWorking() {}

  /**
   * Keeps the steps of capture, scour and cleaning cycle.
   *
   * @param trace what keeps the steps
   * @param evaluation the lane
   * @param result what it captures
   */
  public static void steps(Trace trace, LaneEvaluation evaluation, LaneResult result) {
    Sheet sheet = Sheet.of(LaneWorking.class, trace);
    LaneSpec spec = evaluation.materials().design().lane().orElseThrow();
    UnitFeed feed = evaluation.feed();
    sheet.begin("settling lane", "");
    flow(sheet, spec, feed, result);
    double length = spec.lengthM();
    double width = spec.widthM();
    sheet.step(
        "stored",
        result.storageKg(),
        length,
        width,
        spec.sandStorageDepthM(),
        SettlingLane.USUAL_POROSITY,
        feed.sandDensityKgM3());
    sheet.step(
        "entering",
        result.sandKgPs(),
        feed.volumeFraction(),
        feed.mixtureM3ps(),
        feed.sandDensityKgM3(),
        evaluation.runningShare());
    LaneFilling likely = result.cycle().likely();
    if (likely.intervalS().isPresent()) {
      sheet.step("cycle", likely.intervalS().getAsDouble(), result.storageKg(), result.sandKgPs());
    }
    sheet.step(
        "mean", likely.meanRecovery(), likely.points().get(0).recovery(), likely.lastRecovery());
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
      sheet.begin(
          "grains in the settling lane", UnitSystem.METRIC.show(Kind.GRAIN, grains.size().meanM()));
      settling(sheet, feed, result, grains);
      capture(sheet, feed, result, grains);
    }
  }

  private static void flow(Sheet sheet, LaneSpec spec, UnitFeed feed, LaneResult result) {
    ChannelFlow flow = result.flow();
    double q = feed.mixtureM3ps();
    double width = spec.widthM();
    double length = spec.lengthM();
    double n = spec.manning();
    double depth = sheet.step("depth", flow.depthM(), q, width, spec.slope(), n);
    double velocity = sheet.step("velocity", flow.velocityMps(), q, width, depth);
    double radius = sheet.step("radius", flow.hydraulicRadiusM(), width, depth);
    double slope = sheet.step("slope", flow.frictionSlope(), n, velocity, radius);
    sheet.step("shear", flow.shearVelocityMps(), radius, slope);
    sheet.step("factor", flow.darcyFrictionFactor(), n, radius);
    sheet.step("froude", flow.froudeNumber(), velocity, depth);
    sheet.step(
        "reynolds",
        result.reynoldsNumber(),
        radius,
        velocity,
        feed.liquid().densityKgM3(),
        feed.liquid().viscosityPaS());
    sheet.step("residence", result.residenceTimeS(), length, width, depth, q);
    sheet
        .by(CaptureRelations.IDEAL.citation())
        .step("overflow", result.basin().overflowVelocityMps(), q, length, width);
  }

  private static void settling(Sheet sheet, UnitFeed feed, LaneResult result, LaneClass grains) {
    double d = grains.size().meanM();
    Grain grain = new Grain(d, feed.sandDensityKgM3(), feed.shape());
    double nu = feed.liquid().kinematicViscosityM2ps();
    double alone =
        SettlingVelocities.DEFAULT.velocityMps(grain, feed.liquid(), sheet.trace()).value();
    double falling =
        sheet.step(
            "falling",
            feed.fallingShare(d),
            feed.yieldStressPa(),
            d,
            feed.sandDensityKgM3(),
            feed.liquid().densityKgM3());
    double coated =
        sheet.step("coated", grains.settlingVelocityMps(), feed.settlingFactor(), falling, alone);
    double reynolds = sheet.step("grain-reynolds", coated * d / nu, coated, d, nu);
    double exponent =
        HinderedSettlings.DEFAULT.exponent(reynolds, feed.volumeFraction(), sheet.trace()).value();
    double hindered = grains.hinderedVelocityMps();
    sheet.step("hindered", hindered, coated, feed.volumeFraction(), exponent);
    sheet.step("fall-time", grains.fallTimeS(), result.flow().depthM(), hindered);
  }

  private static void capture(Sheet sheet, UnitFeed feed, LaneResult result, LaneClass grains) {
    double hindered = grains.hinderedVelocityMps();
    double overflow = result.basin().overflowVelocityMps();
    double shear = result.basin().shearVelocityMps();
    sheet
        .by(CaptureRelations.IDEAL.citation())
        .step("ideal", grains.capture().ideal(), hindered, overflow);
    sheet
        .by(new CampDobbins1946().citation())
        .step("turbulent", grains.capture().campDobbins(), hindered, overflow, shear);
    sheet
        .by(CaptureRelations.MIXED.citation())
        .step("mixed", grains.capture().vetter(), hindered, overflow);
    double d = grains.size().meanM();
    Grain grain = new Grain(d, feed.sandDensityKgM3(), feed.shape());
    double ratio = feed.sandDensityKgM3() / feed.liquid().densityKgM3();
    double friction = result.flow().darcyFrictionFactor();
    double camp = ScourModels.CAMP.shieldsNumber(grain, feed.liquid(), sheet.trace()).value();
    sheet
        .by(ScourModels.CAMP.citation())
        .step("camp", grains.campScourMps(), camp, ratio, d, friction);
    double shields = ScourModels.SHIELDS.shieldsNumber(grain, feed.liquid(), sheet.trace()).value();
    sheet
        .by(ScourModels.SHIELDS.citation())
        .step("shields", grains.shieldsScourMps(), shields, ratio, d, friction);
    sheet.step("scour", grains.scourVelocityMps(), grains.campScourMps(), grains.shieldsScourMps());
    sheet.step("suspension", grains.suspensionRatio(), hindered, shear);
    sheet.step(
        "kept",
        grains.kept().likely(),
        result.flow().velocityMps(),
        grains.scourVelocityMps(),
        grains.suspensionRatio());
  }
}
