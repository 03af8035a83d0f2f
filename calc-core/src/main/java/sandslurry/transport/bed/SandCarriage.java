package sandslurry.transport.bed;

import java.util.ArrayList;
import java.util.List;
import sandslurry.material.sand.Grain;
import sandslurry.settling.StaticSuspension;
import sandslurry.transport.friction.LaminarPipeFlow;
import sandslurry.transport.friction.NonNewtonianFriction;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * What carries the sand through a line of a non-Newtonian liquid, if anything does, and the numbers
 * that the judgement rests on.
 *
 * <p>The judgement errs to the side of a bed. Turbulence counts only above every criterion of
 * transition. The yield stress counts in laminar flow only if all of this holds:
 *
 * <ol>
 *   <li>the flow is surely laminar, so that the middle of the pipe moves as an unsheared plug;
 *   <li>the yield stress holds the coarsest grain that counts by the greatest constant of the
 *       experiments ({@link StaticSuspension#GREATEST_CONSTANT}); what is coarser than that grain
 *       sinks through the plug, so no more of it than is tolerated on the floor may be left out;
 *   <li>the sand that can reach the floor is a tolerated share of all sand. Only sand outside the
 *       plug is sheared and falls; so that share is at most the share of the flow outside the plug,
 *       and at most the share that falls to the floor in the length of the line.
 *   <li>the pressure gradient slides along what does reach the floor, by the rule of thumb of
 *       {@link LaminarTransport}: a share however small fills a pipe in time if it stays.
 * </ol>
 *
 * <p>A yield stress that holds the sand at rest does not by itself pass a line. Wall slip and a
 * plug that stiffens with rest are not credited. Sand that reaches the floor stays there and
 * gathers with every hour of running, unless the pressure gradient slides the bed.
 *
 * @param support what carries the sand
 * @param velocityMps mean velocity [m/s]
 * @param laminarBelowMps end of laminar flow [m/s]
 * @param turbulentAboveMps velocity from which the flow is surely turbulent [m/s]
 * @param depositionVelocityMps velocity below which turbulence drops the sand [m/s]
 * @param coarsestM the coarsest grain that is to be held [m]
 * @param yieldStressPa yield stress of the liquid [Pa]
 * @param neededYieldStressPa yield stress that surely holds the coarse grain at rest [Pa]
 * @param outsidePlugShare share of the flow that is sheared
 * @param floorShare greatest share of the sand that reaches the floor before the outlet
 * @param toleratedShare share of the sand that may do so
 * @param pressureGradientPaPm pressure gradient of the liquid [Pa/m]
 */
public record SandCarriage(
    Support support,
    double velocityMps,
    double laminarBelowMps,
    double turbulentAboveMps,
    double depositionVelocityMps,
    double coarsestM,
    double yieldStressPa,
    double neededYieldStressPa,
    double outsidePlugShare,
    double floorShare,
    double toleratedShare,
    double pressureGradientPaPm) {

  /** A share of the sand that may reach the floor: a choice of this calculator, no source. */
  public static final double DEFAULT_TOLERATED_SHARE = 0.01;

  /** What carries the sand. */
  public enum Support {
    /** The liquid is so stiff that it moves as a plug and holds the sand. */
    CARRIED_BY_YIELD_STRESS("carried by the yield stress"),
    /** The flow is turbulent and faster than the deposition velocity. */
    CARRIED_BY_TURBULENCE("carried by turbulence"),
    /** Neither: the flow is laminar or in transition, and sand gathers on the floor. */
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

    /**
     * Says whether the sand arrives.
     *
     * @return true when something carries it
     */
    public boolean carried() {
      return this == CARRIED_BY_YIELD_STRESS || this == CARRIED_BY_TURBULENCE;
    }
  }

  /**
   * Judges a line.
   *
   * @param pipe the liquid in the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @param coarsest the coarsest grain that is to be held: all but a tolerated share is finer
   * @param lineFloorShare share of the sand that reaches the floor of the whole line when all of
   *     the liquid is sheared, from {@link LaminarTransport#alongLine}
   * @param depositionVelocityMps deposition velocity in turbulent flow, from a correlation that is
   *     given the viscosity at the wall [m/s]
   * @param toleratedShare share of the sand that may reach the floor
   * @return the judgement
   */
  public static SandCarriage judge(
      NonNewtonianFriction pipe,
      double velocityMps,
      Grain coarsest,
      double lineFloorShare,
      double depositionVelocityMps,
      double toleratedShare) {
    if (!(lineFloorShare >= 0 && lineFloorShare <= 1)
        || !(toleratedShare >= 0 && toleratedShare <= 1)
        || !(depositionVelocityMps >= 0 && Double.isFinite(depositionVelocityMps))) {
      throw new IllegalArgumentException(
          "shares lie in 0 to 1 and a deposition velocity is >= 0 but given were "
              + lineFloorShare
              + ", "
              + toleratedShare
              + " and "
              + depositionVelocityMps
              + " m/s");
    }
    LaminarPipeFlow laminar =
        LaminarPipeFlow.at(pipe.rheology(), pipe.bore().diameterM(), velocityMps);
    double yield = pipe.rheology().yieldStressPa();
    double needed =
        StaticSuspension.neededYieldStressPa(
            coarsest, pipe.densityKgM3(), StaticSuspension.GREATEST_CONSTANT);
    boolean held = velocityMps < pipe.laminarBelowMps() && yield >= needed;
    double outside = 1 - laminar.plugFlowShare();
    double floor = held ? Math.min(outside, lineFloorShare) : lineFloorShare;
    double gradient = pipe.at(velocityMps).pressureGradientPaPm();
    boolean slides = gradient >= LaminarTransport.SLIDING_GRADIENT_HIGH_PAPM;
    Support support;
    if (velocityMps >= pipe.turbulentAboveMps()) {
      support =
          velocityMps >= depositionVelocityMps
              ? Support.CARRIED_BY_TURBULENCE
              : Support.TURBULENT_BUT_TOO_SLOW;
    } else {
      support =
          held && floor <= toleratedShare && slides
              ? Support.CARRIED_BY_YIELD_STRESS
              : Support.LAMINAR_AND_DEPOSITING;
    }
    return new SandCarriage(
        support,
        velocityMps,
        pipe.laminarBelowMps(),
        pipe.turbulentAboveMps(),
        depositionVelocityMps,
        coarsest.diameterM(),
        yield,
        needed,
        outside,
        floor,
        toleratedShare,
        gradient);
  }

  /**
   * The same numbers where the yield stress may not be counted on for a reason that they do not
   * tell.
   *
   * @return the judgement, laminar and depositing if the yield stress carried the sand
   */
  public SandCarriage withoutYieldStress() {
    return support != Support.CARRIED_BY_YIELD_STRESS
        ? this
        : new SandCarriage(
            Support.LAMINAR_AND_DEPOSITING,
            velocityMps,
            laminarBelowMps,
            turbulentAboveMps,
            depositionVelocityMps,
            coarsestM,
            yieldStressPa,
            neededYieldStressPa,
            outsidePlugShare,
            floorShare,
            toleratedShare,
            pressureGradientPaPm);
  }

  /**
   * The velocity at which turbulence carries the sand.
   *
   * @return the greater of the surely turbulent and the deposition velocity [m/s]
   */
  public double velocityForTurbulenceMps() {
    return Math.max(turbulentAboveMps, depositionVelocityMps);
  }

  /**
   * Says whether the pressure gradient reaches the rule of thumb for a sliding bed.
   *
   * @return true at or above {@link LaminarTransport#SLIDING_GRADIENT_HIGH_PAPM}
   */
  public boolean bedSlides() {
    return pressureGradientPaPm >= LaminarTransport.SLIDING_GRADIENT_HIGH_PAPM;
  }

  /**
   * The reasons, with numbers.
   *
   * @param system the units to write in
   * @return sentences
   */
  public List<String> reasons(UnitSystem system) {
    List<String> reasons = new ArrayList<>();
    String velocity = system.show(Kind.VELOCITY, velocityMps);
    String turbulent = system.show(Kind.VELOCITY, turbulentAboveMps);
    String deposition = system.show(Kind.VELOCITY, depositionVelocityMps);
    if (velocityMps >= turbulentAboveMps) {
      reasons.add("The flow is turbulent: " + velocity + " is above " + turbulent + ".");
      reasons.add(
          support == Support.CARRIED_BY_TURBULENCE
              ? "It is faster than the deposition velocity of " + deposition + "."
              : "It is slower than the deposition velocity of " + deposition + ": sand settles.");
      return List.copyOf(reasons);
    }
    reasons.add(
        velocityMps < laminarBelowMps
            ? "The flow is laminar: "
                + velocity
                + " is below "
                + system.show(Kind.VELOCITY, laminarBelowMps)
                + "; no turbulence lifts the sand."
            : "The flow is neither surely laminar nor surely turbulent: "
                + velocity
                + " is below "
                + turbulent
                + "; turbulence cannot be counted on to lift the sand.");
    String yield = system.show(Kind.STRESS, yieldStressPa);
    String needed = system.show(Kind.STRESS, neededYieldStressPa);
    reasons.add(
        yieldStressPa >= neededYieldStressPa
            ? "At rest the yield stress of "
                + yield
                + " holds grains of "
                + system.show(Kind.GRAIN, coarsestM)
                + ", which takes "
                + needed
                + "; where the liquid is sheared it holds nothing, and "
                + system.show(Kind.PERCENT, outsidePlugShare)
                + " of the flow is sheared."
            : "The yield stress of "
                + yield
                + " does not surely hold grains of "
                + system.show(Kind.GRAIN, coarsestM)
                + " even at rest, which takes "
                + needed
                + ".");
    reasons.add(
        "Up to "
            + system.show(Kind.PERCENT, floorShare)
            + " of the sand reaches the floor before the outlet; "
            + system.show(Kind.PERCENT, toleratedShare)
            + " is tolerated.");
    if (!support.carried() || floorShare > 0) {
      reasons.add(
          "The pressure gradient of "
              + system.show(Kind.PRESSURE_GRADIENT, pressureGradientPaPm)
              + (bedSlides()
                  ? " slides along what reaches the floor, by a rule of thumb of "
                  : " does not surely slide along what reaches the floor, which by a rule of thumb"
                        + " takes ")
              + system.show(Kind.PRESSURE_GRADIENT, LaminarTransport.SLIDING_GRADIENT_LOW_PAPM)
              + " to "
              + system.show(Kind.PRESSURE_GRADIENT, LaminarTransport.SLIDING_GRADIENT_HIGH_PAPM)
              + ".");
    }
    return List.copyOf(reasons);
  }
}
