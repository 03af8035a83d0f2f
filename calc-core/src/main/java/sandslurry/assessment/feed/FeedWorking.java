package sandslurry.assessment.feed;

import sandslurry.assessment.service.ServiceResult.GravityHour;
import sandslurry.assessment.service.ServiceResult.GravityRun;
import sandslurry.assessment.service.ServiceResult.GravitySand;
import sandslurry.assessment.service.ServiceResult.Screw;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.station.ServiceSpec.ScrewSpec;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Equations;
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
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The working behind what feeds the pit: screw conveyor and gravity pipe. */
public final class FeedWorking {
  private static final Equations EQUATIONS = Equations.of(FeedWorking.class);
  private static final Equation PENS = EQUATIONS.of("pens", Kind.FLOW);
  private static final Equation FULLEST = EQUATIONS.of("fullest", Kind.FLOW);
  private static final Equation HALF_ANGLE = EQUATIONS.of("half-angle", Kind.NUMBER);
  private static final Equation RADIUS = EQUATIONS.of("radius", Kind.BORE);
  private static final Equation VELOCITY = EQUATIONS.of("velocity", Kind.VELOCITY);
  private static final Equation FLOW = EQUATIONS.of("flow", Kind.FLOW);
  private static final Equation CHANNEL_DEPTH = EQUATIONS.of("channel-depth", Kind.BORE);
  private static final Equation CHANNEL_RADIUS = EQUATIONS.of("channel-radius", Kind.BORE);
  private static final Equation CHANNEL_FLOW = EQUATIONS.of("channel-flow", Kind.FLOW);
  private static final Equation FACTOR = EQUATIONS.of("factor", Kind.NUMBER);
  private static final Equation SEWERS = EQUATIONS.of("sewers", Kind.VELOCITY);
  private static final Equation WIDEST = EQUATIONS.of("widest", Kind.BORE);
  private static final Equation FULL = EQUATIONS.of("full", Kind.VELOCITY);
  private static final Equation LIMIT = EQUATIONS.of("limit", Kind.VELOCITY);
  private static final Equation STRESS = EQUATIONS.of("stress", Kind.STRESS);
  private static final Equation SHIELDS =
      EQUATIONS.of("shields", Kind.NUMBER, new ShieldsSoulsby1997().citation().toString());
  private static final Equation SCOUR = EQUATIONS.of("scour", Kind.STRESS);
  private static final Equation NEEDED = EQUATIONS.of("needed", Kind.STRESS);

  private FeedWorking() {}

  /**
   * Keeps the steps of the screw.
   *
   * @param trace what keeps the steps
   * @param design the design
   * @param screw the screw as the assessment shows it
   */
  public static void screw(Trace trace, Design design, Screw screw) {
    trace.begin("screw", "");
    ScrewSpec spec = design.feed().screw().orElseThrow();
    screw
        .pens()
        .ifPresent(pens -> trace.step(PENS, pens.loadM3ps(), pens.batchM3(), pens.scrapeS()));
    double slope = Math.atan(Measure.FRACTION.si(spec.slope()));
    double diameter = Measure.LENGTH.si(spec.diameter());
    trace.step(
        ScrewConveyor.LOAD,
        screw.loading().value(),
        screw.loadM3ps(),
        diameter,
        Measure.LENGTH.si(spec.shaft()),
        Measure.LENGTH.si(spec.pitch()),
        Measure.FREQUENCY.si(spec.speed()),
        slope);
    trace.step(
        ScrewConveyor.POWER,
        screw.powerW(),
        screw.loadM3ps() * screw.densityKgM3(),
        ScrewConveyor.ABRASIVE_RESISTANCE,
        Measure.LENGTH.si(spec.length()),
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
    trace.begin("gravity pipe", "");
    GravityConduit conduit = run.conduit();
    if (conduit instanceof PartFullPipe pipe) {
      trace.step(FULLEST, pipe.greatestFlowM3ps(), pipe.diameterM(), pipe.slope(), pipe.manningN());
    }
    for (GravityHour hour : run.hours()) {
      String flow = UnitSystem.METRIC.show(Kind.FLOW, hour.flow().flowM3ps());
      trace.begin("flow in the gravity pipe", hour.when() + ", at " + flow);
      flow(trace, hour);
      hour.sand().ifPresent(sand -> sand(trace, hour, sand));
      stress(trace, hour);
    }
  }

  private static void flow(Trace trace, GravityHour hour) {
    GravityFlow flow = hour.flow();
    double slope = flow.conduit().slope();
    double n = flow.conduit().manningN();
    if (flow instanceof PartFullFlow pipe) {
      double d = pipe.conduit().diameterM();
      double half =
          trace.step(HALF_ANGLE, pipe.wetted().halfAngleRad(), flow.flowM3ps(), d, slope, n);
      double radius = trace.step(RADIUS, flow.hydraulicRadiusM(), d, half);
      trace.step(VELOCITY, flow.velocityMps(), radius, slope, n);
      trace.step(FLOW, flow.flowM3ps(), flow.velocityMps(), d, half);
    } else if (flow.conduit() instanceof TrapezoidalChannel channel) {
      double b = channel.floorWidthM();
      double z = channel.sideRun();
      double depth = trace.step(CHANNEL_DEPTH, flow.depthM(), flow.flowM3ps(), b, z, slope, n);
      double radius = trace.step(CHANNEL_RADIUS, flow.hydraulicRadiusM(), b, z, depth);
      trace.step(VELOCITY, flow.velocityMps(), radius, slope, n);
      trace.step(CHANNEL_FLOW, flow.flowM3ps(), flow.velocityMps(), b, z, depth);
    }
  }

  private static void sand(Trace trace, GravityHour hour, GravitySand sand) {
    GravityFlow flow = hour.flow();
    double widest = flow.conduit().widestHydraulicDiameterM();
    if (sand.sewers().isEmpty()) {
      trace.step(FULL, sand.fullPipe().limitMps(), widest, hour.sandFraction());
      return;
    }
    SewerLimit limits = sand.sewers().get();
    double factor =
        trace.step(
            FACTOR, flow.darcyFrictionFactor(), flow.conduit().manningN(), flow.hydraulicRadiusM());
    double may = sewer(trace, "V_May", "May", limits.mayMps(), hour, factor);
    double macke = sewer(trace, "V_Macke", "Macke", limits.mackeMps(), hour, factor);
    double abGhani = sewer(trace, "V_AG", "Ab Ghani", limits.abGhaniMps(), hour, factor);
    double sewers = trace.step(SEWERS, limits.governingMps(), may, macke, abGhani);
    trace.step(WIDEST, widest, flow.conduit().fullDepthM());
    double full = trace.step(FULL, sand.fullPipe().limitMps(), widest, hour.sandFraction());
    trace.step(LIMIT, sand.limitMps(), sewers, full);
  }

  private static double sewer(
      Trace trace, String symbol, String name, double value, GravityHour hour, double factor) {
    Equation equation =
        Equation.search(
            symbol,
            "limit of deposition by " + name,
            "velocity that carries the sand in the wetted section, worst of its sizes",
            Kind.VELOCITY,
            name + ", as in the deposition velocity",
            "C, f");
    return trace.step(equation, value, hour.sandFraction(), factor);
  }

  private static void stress(Trace trace, GravityHour hour) {
    GravityFlow flow = hour.flow();
    SelfCleansing cleansing = hour.cleansing();
    double slope = flow.conduit().slope();
    double rho = cleansing.stressPa() / (Physics.GRAVITY * flow.hydraulicRadiusM() * slope);
    double d = hour.coarsest().diameterM();
    double submerged = hour.coarsest().densityKgM3() - rho;
    trace.step(STRESS, cleansing.stressPa(), rho, flow.hydraulicRadiusM(), slope);
    double theta =
        trace.step(SHIELDS, cleansing.scourStressPa() / (submerged * Physics.GRAVITY * d), d);
    trace.step(SCOUR, cleansing.scourStressPa(), theta, hour.coarsest().densityKgM3(), rho, d);
    new Merritt2009().neededStressPa(d, trace);
    trace.step(
        NEEDED, cleansing.neededStressPa(), cleansing.scourStressPa(), cleansing.sewerStressPa());
  }
}
