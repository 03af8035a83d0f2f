package sandslurry.transport.bed;

import sandslurry.material.sand.Grain;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.friction.NonNewtonianFriction;

/**
 * What carries the sand through a line of a liquid that may be thick, if anything does, and the
 * numbers that the judgement rests on.
 *
 * <p>The judgement errs to the side of a bed. Turbulence counts only above every criterion of
 * transition. Below, the share of the sand that reaches the floor (or, in a climbing run, sinks
 * back to its foot) decides, {@link LaminarTransport}:
 *
 * <ol>
 *   <li>More than is tolerated: the sand moves as a <b>sliding bed</b> if the pressure gradient
 *       over every bed up to the one that forms moves that bed ({@link SlidingBed}); otherwise it
 *       deposits.
 *   <li>No more than is tolerated, with a margin of {@value #FLOOR_MARGIN} (twice the mean error of
 *       settling formulas, 12 %, Sadat-Helbar and others 2009): <b>carried by the yield stress</b>,
 *       if the flow is surely laminar, the yield stress holds the coarsest grain that counts by the
 *       greatest constant of the experiments, a plug of {@value #LEAST_PLUG} of the bore or more
 *       exists to hold it (a choice of this calculator, no source) and the gradient slides along
 *       what does reach the floor: a share however small fills a pipe in time if it stays.
 *   <li>Anything between is <b>slow to settle</b>: nothing but the time of passage keeps the sand
 *       up.
 * </ol>
 *
 * <p>A climbing run deposits when its coarsest grains sink as fast as the mixture rises, and is not
 * carried unless it rises {@value #RISE_MARGIN} times as fast (a choice of this calculator, no
 * source). Wall slip is not credited.
 *
 * @param support what carries the sand
 * @param velocityMps mean velocity [m/s]
 * @param laminarBelowMps end of laminar flow [m/s]
 * @param turbulentAboveMps velocity from which the flow is surely turbulent [m/s]
 * @param coarsestM the coarsest grain that is to be held [m]
 * @param yieldStressPa yield stress of the liquid [Pa]
 * @param neededYieldStressPa yield stress that surely holds the coarse grain at rest [Pa]
 * @param outsidePlugShare share of the flow that is sheared
 * @param floorShare share of the sand that reaches the floor before the outlet without eddies
 * @param toleratedShare share of the sand that may do so
 * @param bedShare area of the bed that forms over that of the section
 * @param slideDemand gradient that moves the bed over that which there is; at 1 or less it slides
 * @param riseDemand velocity at which the coarsest grains sink along the run over that of the flow;
 *     0 where it does not climb
 */
// More than ten components: the demands of one judgement, each against its limit.
public record SandCarriage(
    Support support,
    double velocityMps,
    double laminarBelowMps,
    double turbulentAboveMps,
    double coarsestM,
    double yieldStressPa,
    double neededYieldStressPa,
    double outsidePlugShare,
    double floorShare,
    double toleratedShare,
    double bedShare,
    double slideDemand,
    double riseDemand) {

  /** A share of the sand that may reach the floor: a choice of this calculator, no source. */
  public static final double DEFAULT_TOLERATED_SHARE = 0.01;

  /** Tolerated share over the greatest share of a line that is carried by its yield stress. */
  static final double FLOOR_MARGIN = 1.25;

  /** Velocity of a climbing run over that at which its coarsest grains sink. */
  public static final double RISE_MARGIN = 2;

  /** Least plug over bore of a line that is carried by its yield stress. */
  static final double LEAST_PLUG = 0.1;

  /** What carries the sand. */
  public enum Support {
    /** The liquid is so stiff that it holds the sand in a plug and lets little sink beside it. */
    CARRIED_BY_YIELD_STRESS("carried by the yield stress"),
    /** The flow is turbulent and faster than the deposition velocity. */
    CARRIED_BY_TURBULENCE("carried by turbulence"),
    /** Sand sinks, but so slowly that little of it reaches the floor before the outlet. */
    SLOW_TO_SETTLE("slow to settle"),
    /** Sand lies on the floor, and the pressure gradient slides it along. */
    SLIDING_BED("moves as a sliding bed"),
    /** None of these: the flow is laminar or in transition, and sand gathers on the floor. */
    LAMINAR_AND_DEPOSITING("laminar and depositing"),
    /** The flow is turbulent but slower than the deposition velocity. */
    TURBULENT_BUT_TOO_SLOW("turbulent but too slow");

    private final String words;

    Support(String words) {
      this.words = words;
    }

    /**
     * The state in words.
     *
     * @return for example "laminar and depositing"
     */
    public String words() {
      return words;
    }
  }

  /**
   * Judges a run.
   *
   * @param pipe the liquid in the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @param coarsest the coarsest grain that is to be held: all but a tolerated share is finer
   * @param floorShare share of the sand that reaches the floor of the whole line
   * @param bed the bed that forms
   * @param sinkingMps velocity at which the coarsest grains sink along a climbing run; 0 where it
   *     does not climb [m/s]
   * @param depositionVelocityMps deposition velocity in turbulent flow, from a correlation that is
   *     given the viscosity at the wall [m/s]
   * @param toleratedShare share of the sand that may reach the floor
   * @return the judgement
   */
  public static SandCarriage judge(
      NonNewtonianFriction pipe,
      double velocityMps,
      Grain coarsest,
      double floorShare,
      SlidingBed bed,
      double sinkingMps,
      double depositionVelocityMps,
      double toleratedShare) {
    check(floorShare, toleratedShare, sinkingMps, depositionVelocityMps);
    LaminarPipeFlow laminar =
        LaminarPipeFlow.at(pipe.rheology(), pipe.bore().diameterM(), velocityMps);
    double needed =
        StaticSuspension.neededYieldStressPa(
            coarsest, pipe.densityKgM3(), StaticSuspension.GREATEST_CONSTANT);
    boolean turbulent = velocityMps >= pipe.turbulentAboveMps();
    double slide = turbulent ? 0 : bed.demand(pipe.rheology(), velocityMps);
    double rise = sinkingMps / velocityMps;
    boolean plug =
        velocityMps < pipe.laminarBelowMps()
            && pipe.rheology().yieldStressPa() >= needed
            && laminar.plugRadiusRatio() >= LEAST_PLUG
            && floorShare * FLOOR_MARGIN <= toleratedShare
            && rise * RISE_MARGIN <= 1
            && slide <= 1;
    Support support;
    if (turbulent) {
      support =
          velocityMps >= depositionVelocityMps
              ? Support.CARRIED_BY_TURBULENCE
              : Support.TURBULENT_BUT_TOO_SLOW;
    } else if (rise >= 1 || floorShare > toleratedShare && slide > 1) {
      support = Support.LAMINAR_AND_DEPOSITING;
    } else if (floorShare > toleratedShare) {
      support = Support.SLIDING_BED;
    } else {
      support = plug ? Support.CARRIED_BY_YIELD_STRESS : Support.SLOW_TO_SETTLE;
    }
    return new SandCarriage(
        support,
        velocityMps,
        pipe.laminarBelowMps(),
        pipe.turbulentAboveMps(),
        coarsest.diameterM(),
        pipe.rheology().yieldStressPa(),
        needed,
        1 - laminar.plugFlowShare(),
        floorShare,
        toleratedShare,
        bed.areaShare(),
        slide,
        rise);
  }

  private static void check(
      double floorShare, double toleratedShare, double sinkingMps, double depositionVelocityMps) {
    if (!(floorShare >= 0 && floorShare <= 1)
        || !(toleratedShare >= 0 && toleratedShare <= 1)
        || !(sinkingMps >= 0 && Double.isFinite(sinkingMps))
        || !(depositionVelocityMps >= 0 && Double.isFinite(depositionVelocityMps))) {
      throw new IllegalArgumentException(
          "shares lie in 0 to 1 and velocities are >= 0 but given were "
              + floorShare
              + ", "
              + toleratedShare
              + ", "
              + sinkingMps
              + " and "
              + depositionVelocityMps
              + " m/s");
    }
  }

  /**
   * The same numbers where the yield stress may not be counted on for a reason that they do not
   * tell.
   *
   * @return the judgement, slow to settle if the yield stress carried the sand
   */
  public SandCarriage withoutYieldStress() {
    return support != Support.CARRIED_BY_YIELD_STRESS
        ? this
        : new SandCarriage(
            Support.SLOW_TO_SETTLE,
            velocityMps,
            laminarBelowMps,
            turbulentAboveMps,
            coarsestM,
            yieldStressPa,
            neededYieldStressPa,
            outsidePlugShare,
            floorShare,
            toleratedShare,
            bedShare,
            slideDemand,
            riseDemand);
  }

  /**
   * What decides whether sand deposits without turbulence: above 1 it does.
   *
   * @return the lesser of share on the floor over that tolerated and {@link #slideDemand}, or
   *     {@link #riseDemand} if that is more
   */
  public double demand() {
    double floor = toleratedShare > 0 ? floorShare / toleratedShare : floorShare > 0 ? 1e9 : 0;
    return Math.max(riseDemand, Math.min(floor, slideDemand));
  }

  /**
   * How far a flow has come through the transition.
   *
   * @param pipe the liquid in the pipe
   * @param velocityMps mean velocity [m/s]
   * @return 0 where it is surely laminar, 1 where it is surely turbulent
   */
  public static double eddies(NonNewtonianFriction pipe, double velocityMps) {
    return eddies(velocityMps, pipe.laminarBelowMps(), pipe.turbulentAboveMps());
  }

  private static double eddies(double velocityMps, double laminarMps, double turbulentMps) {
    return velocityMps >= turbulentMps
        ? 1
        : Math.max(0, (velocityMps - laminarMps) / (turbulentMps - laminarMps));
  }

  /**
   * Share of the sand that lies on the floor while the line runs.
   *
   * @return the share that reaches the floor without eddies, less and less of it through the
   *     transition, 0 in turbulent flow
   */
  public double lyingShare() {
    return floorShare * (1 - eddies(velocityMps, laminarBelowMps, turbulentAboveMps));
  }

  /**
   * Says whether the pressure gradient slides along what reaches the floor.
   *
   * @return true when it moves every bed up to the one that forms
   */
  public boolean bedSlides() {
    return slideDemand <= 1;
  }
}
