package sandslurry.assessment.feed;

import static sandslurry.correlation.Working.in;

import java.util.List;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Working;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.GravityRunSpec;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.fact.step.Step;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** The working behind what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedWorking {
  private FeedWorking() {}

  public static List<Step> screw(Design design, Screw screw) {
    Working w = new Working("screw");
    ScrewSpec spec = design.service().screw().orElseThrow();
    screw
        .pens()
        .ifPresent(
            pens ->
                w.step(
                    "Q_pens",
                    "load that the pens bring",
                    "Q_pens = B / t",
                    Kind.FLOW,
                    pens.loadM3ps(),
                    "balance of the pens, at its greatest",
                    in("B", Kind.VOLUME, pens.batchM3()),
                    in("t", Kind.TIME, pens.scrapeS())));
    w.step(
        "phi",
        "filling of the trough that the load asks",
        ScrewConveyor.EQUATION + ", solved for phi",
        Kind.PERCENT,
        screw.loading().value(),
        ScrewConveyor.SOURCE.toString(),
        in("Q", Kind.FLOW, screw.loadM3ps()),
        in("D", Kind.BORE, Measure.LENGTH.si(spec.diameter())),
        in("d", Kind.BORE, Measure.LENGTH.si(spec.shaft())),
        in("S", Kind.BORE, Measure.LENGTH.si(spec.pitch())),
        in("n", Kind.FREQUENCY, Measure.FREQUENCY.si(spec.speed())),
        in("slope", Kind.PERCENT, Measure.FRACTION.si(spec.slope())));
    w.step(
        "P",
        "power at its shaft",
        "P = m g (lambda L + H) + 50 W/m2 D L",
        Kind.POWER,
        screw.powerW(),
        ScrewConveyor.SOURCE + "; from memory, unverified",
        in("m", Kind.MASS_FLOW, screw.loadM3ps() * screw.densityKgM3()),
        in("lambda", Kind.NUMBER, ScrewConveyor.ABRASIVE_RESISTANCE),
        in("L", Kind.LENGTH, Measure.LENGTH.si(spec.length())));
    return w.steps();
  }

  public static List<Step> gravityRun(Design design, Materials materials, GravityRun run) {
    Working w = new Working("gravity pipe");
    GravityRunSpec spec = design.service().gravityRun().orElseThrow();
    Working.In bore = in("D", Kind.BORE, Measure.LENGTH.si(spec.bore()));
    Working.In slope = in("S", Kind.PERCENT, Measure.FRACTION.si(spec.slope()));
    Working.In manning = in("n", Kind.NUMBER, Measure.FRACTION.si(spec.manning()));
    w.step(
        "Q_most",
        "the most that it carries without pressure, at 94 % of its depth",
        "Q = A R^(2/3) S^(1/2) / n",
        Kind.FLOW,
        run.greatestM3ps(),
        "Manning 1891",
        bore,
        slope,
        manning);
    run.hours().forEach(hour -> gravityHour(w, materials, hour, slope, manning));
    return w.steps();
  }

  private static void gravityHour(
      Working w, Materials materials, GravityHour hour, Working.In slope, Working.In manning) {
    PartFullFlow flow = hour.flow();
    SelfCleansing cleansing = hour.cleansing();
    w.step(
        "V",
        "mean velocity at its depth of " + Math.round(100 * flow.wetted().depthShare()) + " %",
        "V = R^(2/3) S^(1/2) / n, with A V = Q",
        Kind.VELOCITY,
        flow.velocityMps(),
        "Manning 1891",
        in("Q", Kind.FLOW, flow.flowM3ps()),
        in("R", Kind.BORE, flow.hydraulicRadiusM()),
        slope,
        manning);
    hour.sand().ifPresent(sand -> gravitySand(w, hour, sand));
    w.step(
        "tau",
        "tractive stress",
        "tau = rho g R S",
        Kind.STRESS,
        cleansing.stressPa(),
        "balance of forces",
        in("rho", Kind.DENSITY, materials.carrier().densityKgM3()),
        in("R", Kind.BORE, flow.hydraulicRadiusM()),
        slope);
    w.step(
        "tau_needed",
        "stress that moves the coarsest grains",
        "tau = max(theta (rho_s - rho) g d, 0.867 Pa (d / 1 mm)^0.277)",
        Kind.STRESS,
        cleansing.neededStressPa(),
        "Shields by Soulsby 1997; Merritt 2009, power from memory, unverified",
        in("rho_s", Kind.DENSITY, materials.sandDensityKgM3()),
        in("d", Kind.GRAIN, materials.sizes().coarsestM()));
  }

  private static void gravitySand(Working w, GravityHour hour, GravitySand sand) {
    PartFullFlow flow = hour.flow();
    w.step(
        "V_sewer",
        "limit of deposition by the relations for sewers in the wetted section",
        "largest of May, Macke and Ab Ghani with A, y, R and lambda = 8 g n^2 / R^(1/3)",
        Kind.VELOCITY,
        sand.sewers().governingMps(),
        "May 1996; Macke 1982; Ab Ghani 1993, coefficients from memory, unverified",
        in("C", Kind.PERCENT, hour.sandFraction()),
        in("A/D^2", Kind.NUMBER, flow.wetted().areaM2() / Math.pow(flow.pipe().diameterM(), 2)),
        in("y", Kind.BORE, flow.wetted().depthM()),
        in("R", Kind.BORE, flow.hydraulicRadiusM()),
        in("lambda", Kind.NUMBER, flow.darcyFrictionFactor()));
    w.step(
        "V_full",
        "deposition velocity in a full pipe of the widest hydraulic diameter, the most that counts",
        sand.fullPipe().limiting().model(),
        Kind.VELOCITY,
        sand.fullPipe().limitMps(),
        in("D", Kind.BORE, flow.pipe().widestHydraulicDiameterM()),
        in("C", Kind.PERCENT, sand.fullPipe().limiting().fraction()),
        in("d", Kind.GRAIN, sand.fullPipe().limiting().sizeM()));
  }
}
