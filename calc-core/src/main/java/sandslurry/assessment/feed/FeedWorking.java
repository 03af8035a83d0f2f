package sandslurry.assessment.feed;

import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Sheet;
import sandslurry.fact.step.Trace;
import sandslurry.pump.drive.ScrewConveyor;
import sandslurry.separation.channel.GravityConduit;
import sandslurry.separation.channel.GravityFlow;
import sandslurry.separation.channel.Merritt2009;
import sandslurry.separation.channel.PartFullPipe;
import sandslurry.separation.channel.PartFullPipe.PartFullFlow;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.separation.channel.ShieldsSoulsby1997;
import sandslurry.separation.channel.TrapezoidalChannel;
import sandslurry.transport.deposition.SandLoad.SewerLimit;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** The working behind what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedWorking {

  private FeedWorking() {}

  /**
   * Keeps the steps of the screw.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param screw the screw as the assessment shows it
   */
  public static void screw(Trace trace, Design design, Screw screw) {
    Sheet sheet = Sheet.of(FeedWorking.class, trace);
    sheet.begin("screw", "");
    ScrewSpec spec = design.feed().screw().orElseThrow();
    screw
        .pens()
        .ifPresent(pens -> sheet.step("pens", pens.loadM3ps(), pens.batchM3(), pens.scrapeS()));
    double slope = Math.atan(spec.slope());
    double diameter = spec.diameterM();
    sheet.step(
        ScrewConveyor.LOAD,
        screw.loading().value(),
        screw.loadM3ps(),
        diameter,
        spec.shaftM(),
        spec.pitchM(),
        spec.speedPs(),
        slope);
    sheet.step(
        ScrewConveyor.POWER,
        screw.powerW(),
        screw.loadM3ps() * screw.densityKgM3(),
        ScrewConveyor.ABRASIVE_RESISTANCE,
        spec.lengthM(),
        slope,
        diameter);
  }

  /**
   * Keeps the steps of the gravity pipe.
   *
   * @param trace what keeps the steps
   * @param run the gravity pipe as the assessment shows it
   */
  public static void gravityRun(Trace trace, GravityRun run) {
    Sheet sheet = Sheet.of(FeedWorking.class, trace);
    sheet.begin("gravity pipe", "");
    GravityConduit conduit = run.conduit();
    if (conduit instanceof PartFullPipe pipe) {
      sheet.step(
          "fullest", pipe.greatestFlowM3ps(), pipe.diameterM(), pipe.slope(), pipe.manningN());
    }
    for (GravityHour hour : run.hours()) {
      String flow = UnitSystem.METRIC.show(Kind.FLOW, hour.flow().flowM3ps());
      sheet.begin("flow in the gravity pipe", hour.when() + ", at " + flow);
      flow(sheet, hour);
      hour.sand().ifPresent(sand -> sand(sheet, hour, sand));
      stress(sheet, hour);
    }
  }

  private static void flow(Sheet sheet, GravityHour hour) {
    GravityFlow flow = hour.flow();
    double slope = flow.conduit().slope();
    double n = flow.conduit().manningN();
    if (flow instanceof PartFullFlow pipe) {
      double d = pipe.conduit().diameterM();
      double half =
          sheet.step("half-angle", pipe.wetted().halfAngleRad(), flow.flowM3ps(), d, slope, n);
      double radius = sheet.step("radius", flow.hydraulicRadiusM(), d, half);
      sheet.step("velocity", flow.velocityMps(), radius, slope, n);
      sheet.step("flow", flow.flowM3ps(), flow.velocityMps(), d, half);
    } else if (flow.conduit() instanceof TrapezoidalChannel channel) {
      double b = channel.floorWidthM();
      double z = channel.sideRun();
      double depth = sheet.step("channel-depth", flow.depthM(), flow.flowM3ps(), b, z, slope, n);
      double radius = sheet.step("channel-radius", flow.hydraulicRadiusM(), b, z, depth);
      sheet.step("velocity", flow.velocityMps(), radius, slope, n);
      sheet.step("channel-flow", flow.flowM3ps(), flow.velocityMps(), b, z, depth);
    }
  }

  private static void sand(Sheet sheet, GravityHour hour, GravitySand sand) {
    GravityFlow flow = hour.flow();
    double widest = flow.conduit().widestHydraulicDiameterM();
    if (sand.sewers().isEmpty()) {
      sheet.step("full", sand.fullPipe().limitMps(), widest, hour.sandFraction());
      return;
    }
    SewerLimit limits = sand.sewers().get();
    double factor =
        sheet.step(
            "factor",
            flow.darcyFrictionFactor(),
            flow.conduit().manningN(),
            flow.hydraulicRadiusM());
    double may = sewer(sheet, "V_May", "May", limits.mayMps(), hour, factor);
    double macke = sewer(sheet, "V_Macke", "Macke", limits.mackeMps(), hour, factor);
    double abGhani = sewer(sheet, "V_AG", "Ab Ghani", limits.abGhaniMps(), hour, factor);
    double sewers = sheet.step("sewers", limits.governingMps(), may, macke, abGhani);
    sheet.step("widest", widest, flow.conduit().fullDepthM());
    double full = sheet.step("full", sand.fullPipe().limitMps(), widest, hour.sandFraction());
    sheet.step("limit", sand.limitMps(), sewers, full);
  }

  private static double sewer(
      Sheet sheet, String symbol, String name, double value, GravityHour hour, double factor) {
    Equation equation =
        Equation.search(
            symbol,
            "limit of deposition by " + name,
            "velocity that carries the sand in the wetted section, worst of its sizes",
            Kind.VELOCITY,
            name + ", as in the deposition velocity",
            "C, f");
    return sheet.step(equation, value, hour.sandFraction(), factor);
  }

  private static void stress(Sheet sheet, GravityHour hour) {
    GravityFlow flow = hour.flow();
    SelfCleansing cleansing = hour.cleansing();
    double slope = flow.conduit().slope();
    double rho = cleansing.stressPa() / (Physics.GRAVITY * flow.hydraulicRadiusM() * slope);
    double d = hour.coarsest().diameterM();
    double submerged = hour.coarsest().densityKgM3() - rho;
    sheet.step("stress", cleansing.stressPa(), rho, flow.hydraulicRadiusM(), slope);
    double theta =
        sheet
            .by(new ShieldsSoulsby1997().citation())
            .step("shields", cleansing.scourStressPa() / (submerged * Physics.GRAVITY * d), d);
    sheet.step("scour", cleansing.scourStressPa(), theta, hour.coarsest().densityKgM3(), rho, d);
    new Merritt2009().neededStressPa(d, sheet.trace());
    sheet.step(
        "needed", cleansing.neededStressPa(), cleansing.scourStressPa(), cleansing.sewerStressPa());
  }
}
