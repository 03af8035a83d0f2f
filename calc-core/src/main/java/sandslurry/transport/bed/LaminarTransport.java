package sandslurry.transport.bed;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import sandslurry.material.liquid.HerschelBulkley;
import sandslurry.material.liquid.Rheology;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.HinderedSettling;
import sandslurry.settling.SettlingVelocities;
import sandslurry.settling.SettlingVelocityModel;
import sandslurry.settling.ShearSettling;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.friction.LaminarPipeFlow;

/**
 * How much of the sand of a line does not stay afloat in laminar flow, where no turbulence lifts
 * it: the sum over the classes of the sand.
 *
 * <p><b>Share that reaches the floor.</b> Grains enter spread evenly and fall at a constant speed w
 * while the liquid carries them. Over a vertical strip of the pipe the flow that loses its grains
 * is w L per width whatever the velocity profile is, but not more than the flow of the strip.
 * Summed over the strips of a round pipe, with κ = w L/(V D):
 *
 * <pre>share = (2/π) [κ √(1 − κ²) + arcsin κ],  all at κ = 1</pre>
 *
 * <p>L horizontal length [m]; V mean velocity [m/s]; D bore [m]. This is plug flow, which loses
 * most; derived here and checked by quadrature. Parabolic flow loses what dust loses in laminar
 * flow through a tube (Fuchs 1964; Pich 1972, Journal of Aerosol Science 3:351-361; from memory,
 * unverified), and a liquid that thins with shear or has a plug lies between them. The fall is the
 * fastest under the shear at the wall.
 *
 * <p><b>The plug core is left out.</b> Sand in the core, which nothing shears, sinks only where the
 * yield stress does not hold the grain: at the velocity at rest in a liquid whose yield stress is
 * so much less that it holds the grain by the greatest constant of {@link StaticSuspension}; 0 for
 * grains that are held. So of a class no more reaches the floor than what travels outside the plug,
 * P of the flow being in it, and what sinks out of the core, a pipe of the bore of the plug:
 *
 * <pre>share = min(s, 1 − P + P · s_core)</pre>
 *
 * <p><b>Share that sinks back.</b> Where a run climbs at θ, a grain goes back to its foot where the
 * liquid rises more slowly than the grain sinks along the pipe, u(r) &lt; w sin θ: the share of the
 * flow in that layer at the wall, (w sin θ/2V)² in parabolic flow.
 *
 * <p>It is an ideal estimate: no mixing at bends within a run, the same settling speed everywhere,
 * no bed that narrows the pipe, no grain lifted again. Each run starts mixed, but nothing gets out
 * of the plug or into it from run to run.
 */
public final class LaminarTransport {
  /** Greatest constant at which the law of settling at rest lets a grain stand, Stokes' 1/18. */
  private static final double AT_REST_CONSTANT = 1.0 / 18;

  private LaminarTransport() {}

  /**
   * A class of the sand.
   *
   * @param grain its grain
   * @param massShare its mass over that of all sand
   */
  public record Part(Grain grain, double massShare) {}

  /**
   * A stretch of a line with one bore.
   *
   * @param bore the pipe
   * @param lengthM its length [m]
   * @param angleRad its slope in the direction of flow, upward positive [rad]
   */
  public record Run(Bore bore, double lengthM, double angleRad) {
    /** Checks that the length is not negative. */
    public Run {
      if (!(lengthM >= 0 && Double.isFinite(lengthM)) || !(Math.abs(angleRad) <= Math.PI / 2)) {
        throw new IllegalArgumentException(
            "a run needs a length >= 0 and a slope up to the vertical but has "
                + lengthM
                + " m and "
                + angleRad
                + " rad");
      }
    }

    private double horizontalM() {
      return lengthM * Math.cos(angleRad);
    }
  }

  /**
   * Share of the sand that reaches the floor in plug flow.
   *
   * @param settlingMps settling velocity, not negative [m/s]
   * @param horizontalLengthM length [m]
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return share, 0 to 1
   */
  static double floorShare(
      double settlingMps, double horizontalLengthM, Bore bore, double velocityMps) {
    double kappa = fallOverBore(settlingMps, horizontalLengthM, bore, velocityMps);
    return kappa >= 1 ? 1 : 2 / Math.PI * (kappa * Math.sqrt(1 - kappa * kappa) + Math.asin(kappa));
  }

  /**
   * Share of the flow of a climbing pipe in which the liquid rises more slowly than a grain sinks.
   *
   * @param flow the laminar flow
   * @param sinkingMps velocity of the grain against the liquid, along the pipe; not negative [m/s]
   * @return the share, 0 to 1; 1 where the grain outruns the fastest liquid
   */
  static double sinkingBackShare(LaminarPipeFlow flow, double sinkingMps) {
    if (!(sinkingMps >= 0)) {
      throw new IllegalArgumentException(
          "a grain sinks at a velocity >= 0 but was " + sinkingMps + " m/s");
    }
    double plug = flow.velocityMps(0.0);
    if (sinkingMps >= plug) {
      return 1;
    }
    // From the edge of the plug, y = 0, to the wall, y = 1, the velocity is plug (1 - y^m).
    double m = (flow.rheology().index() + 1) / flow.rheology().index();
    double core = flow.plugRadiusRatio();
    double sheared = 1 - core;
    double y = Math.pow(1 - sinkingMps / plug, 1 / m);
    double narrow = 1 - y - (1 - Math.pow(y, m + 1)) / (m + 1);
    double wide = (1 - y * y) / 2 - (1 - Math.pow(y, m + 2)) / (m + 2);
    double layer = 2 * plug * sheared * (core * narrow + sheared * wide) / flow.velocityMps();
    return Math.max(0, Math.min(1, layer));
  }

  /**
   * Fastest fall of a grain under the shear at the wall, hindered by the rest of the sand. Liquid
   * that thins with shear lets it fall fastest by the tangent of the rheogram, n K γ̇ⁿ⁻¹, other
   * liquid by K γ̇ⁿ⁻¹, which then is the less.
   *
   * @param grain the grain
   * @param volumeFraction volume of all sand over volume of mixture
   * @param densityKgM3 density of the liquid [kg/m3]
   * @param flow the laminar flow
   * @param model a settling law for Newtonian liquids
   * @param crowd a law of hindered settling
   * @return velocity [m/s]
   */
  public static double shearedFallMps(
      Grain grain,
      double volumeFraction,
      double densityKgM3,
      LaminarPipeFlow flow,
      SettlingVelocityModel model,
      HinderedSettling crowd) {
    return ShearSettling.shearedHindered(
            grain,
            flow.rheology(),
            densityKgM3,
            flow.wallShearRatePs(),
            volumeFraction,
            flow.rheology().index() < 1
                ? ShearSettling.Assumption.FASTEST
                : ShearSettling.Assumption.DESIGN,
            model,
            crowd)
        .value();
  }

  /**
   * Fall of a grain in the plug core.
   *
   * @param grain the grain
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param model a settling law for Newtonian liquids
   * @return velocity, 0 when the yield stress surely holds the grain [m/s]
   */
  public static double coreFallMps(
      Grain grain, Rheology rheology, double densityKgM3, SettlingVelocityModel model) {
    double needed =
        StaticSuspension.neededYieldStressPa(
            grain, densityKgM3, StaticSuspension.GREATEST_CONSTANT);
    if (rheology.yieldStressPa() >= needed) {
      return 0;
    }
    double credited =
        rheology.yieldStressPa() * AT_REST_CONSTANT / StaticSuspension.GREATEST_CONSTANT;
    return ShearSettling.atRest(
            grain,
            new HerschelBulkley(credited, rheology.consistency(), rheology.index()),
            densityKgM3,
            model)
        .value();
  }

  /**
   * Fall of each class of a sand in the plug core, which is the same at any flow rate.
   *
   * @param sand the classes of the sand
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @return velocities, 0 where the yield stress surely holds the grain [m/s]
   */
  public static double[] coreFallsMps(List<Part> sand, Rheology rheology, double densityKgM3) {
    return sand.stream()
        .mapToDouble(
            part -> coreFallMps(part.grain(), rheology, densityKgM3, SettlingVelocities.DEFAULT))
        .toArray();
  }

  /**
   * Share of the sand of a line that reaches its floor, or the foot of a climbing run, before the
   * outlet.
   *
   * @param sand the classes of the sand
   * @param coreFallsMps {@link #coreFallsMps} of these classes, asked for where there is a plug
   * @param volumeFraction volume of all sand over volume of mixture
   * @param rheology the liquid
   * @param densityKgM3 its density [kg/m3]
   * @param flowM3ps flow of mixture, positive [m3/s]
   * @param runs the runs from pump to outlet
   * @param crowd a law of hindered settling
   * @return the share, 0 to 1
   */
  public static double floorShare(
      List<Part> sand,
      Supplier<double[]> coreFallsMps,
      double volumeFraction,
      Rheology rheology,
      double densityKgM3,
      double flowM3ps,
      List<Run> runs,
      HinderedSettling crowd) {
    if (!(flowM3ps > 0 && Double.isFinite(flowM3ps))) {
      throw new IllegalArgumentException("the flow must be > 0 but was " + flowM3ps + " m3/s");
    }
    List<LaminarPipeFlow> flows = new ArrayList<>();
    for (int i = 0; i < runs.size(); i++) {
      Bore bore = runs.get(i).bore();
      // Runs of one bore one after the other have one flow.
      flows.add(
          i > 0 && bore.equals(runs.get(i - 1).bore())
              ? flows.get(i - 1)
              : LaminarPipeFlow.at(rheology, bore.diameterM(), bore.velocityMps(flowM3ps)));
    }
    double outside = 0;
    for (LaminarPipeFlow flow : flows) {
      outside = Math.max(outside, 1 - flow.plugFlowShare());
    }
    double[] cores = outside < 1 ? coreFallsMps.get() : new double[sand.size()];
    double total = 0;
    for (int k = 0; k < sand.size(); k++) {
      Part part = sand.get(k);
      double core = cores[k];
      double afloat = 1;
      double inPlug = 1;
      double fall = 0;
      for (int i = 0; i < runs.size(); i++) {
        Run run = runs.get(i);
        LaminarPipeFlow flow = flows.get(i);
        if (i == 0 || flow != flows.get(i - 1)) {
          fall =
              shearedFallMps(
                  part.grain(),
                  volumeFraction,
                  densityKgM3,
                  flow,
                  SettlingVelocities.DEFAULT,
                  crowd);
        }
        afloat *= 1 - floorShare(fall, run.horizontalM(), run.bore(), flow.velocityMps());
        afloat *= 1 - sinkingBackShare(flow, fall * Math.max(0, Math.sin(run.angleRad())));
        if (core > 0) {
          inPlug *= 1 - lostFromCore(core, run, flow);
        }
      }
      double sinks = Math.min(1 - afloat, outside + (1 - outside) * (1 - inPlug));
      total += part.massShare() * sinks;
    }
    return Math.min(1, total);
  }

  /** What sinks out of the plug, as out of a pipe of its bore that flows evenly. */
  private static double lostFromCore(double fallMps, Run run, LaminarPipeFlow flow) {
    double bore = flow.plugRadiusRatio() * run.bore().diameterM();
    double plug = flow.velocityMps(0.0);
    if (!(bore > 0) || fallMps * Math.max(0, Math.sin(run.angleRad())) >= plug) {
      return 1;
    }
    return floorShare(fallMps, run.horizontalM(), new Bore(bore, 0), plug);
  }

  private static double fallOverBore(
      double settlingMps, double horizontalLengthM, Bore bore, double velocityMps) {
    if (!(settlingMps >= 0) || !(horizontalLengthM >= 0) || !(velocityMps > 0)) {
      throw new IllegalArgumentException(
          "deposition needs a settling velocity >= 0, a length >= 0 and a velocity > 0 but has "
              + settlingMps
              + " m/s, "
              + horizontalLengthM
              + " m, "
              + velocityMps
              + " m/s");
    }
    return settlingMps * horizontalLengthM / (velocityMps * bore.diameterM());
  }
}
