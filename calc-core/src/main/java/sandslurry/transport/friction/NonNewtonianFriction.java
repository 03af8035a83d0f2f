package sandslurry.transport.friction;

import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.Rheology;
import sandslurry.numeric.Roots;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * Friction of a liquid of any of the four rheologies in a full pipe, as one continuous curve over
 * laminar, transitional and turbulent flow.
 *
 * <p>The curve joins three Darcy friction factors as Churchill (1977) joins them for a Newtonian
 * liquid, f = [f_L¹² + (f_T⁻⁸ + f_B⁻⁸)^−1.5]^(1/12):
 *
 * <ul>
 *   <li>f_L = 64/Re, exact laminar flow ({@link LaminarPipeFlow}), Re the Reynolds number of
 *       Metzner and Reed;
 *   <li>f_T turbulent flow after {@link WilsonThomas1985};
 *   <li>f_B Churchill's transitional term, scaled so that f_B/f_L at Re is that of a Newtonian
 *       liquid at Re·Re_N/Re_c, where Re_c is that of the end of laminar flow by {@link
 *       RyanJohnson1959} and Re_N the same for a Newtonian liquid: the transition comes where that
 *       criterion puts it.
 * </ul>
 *
 * <p>Each of the three stresses rises with the velocity, so the wall stress does. With n = 1 and τy
 * = 0 the curve is that of {@link PipeFriction#darcyFactor}. At rest the wall stress is the yield
 * stress, which must be overcome to start.
 *
 * <p>Nothing is known well inside the transition: for sand, only what lies above {@link
 * #turbulentAboveMps} may count as turbulent, and only what lies below {@link #laminarBelowMps} as
 * laminar for the pressure.
 */
public final class NonNewtonianFriction {
  /** Below this Reynolds number the turbulent terms are smaller than the rounding of a double. */
  private static final double SURELY_LAMINAR = 300;

  private static final double FULLY_TURBULENT = 4000;

  /** An intersection nearer than this to the end of laminar flow is none of its own. */
  private static final double BRACKET = 1e-9;

  private static final double NEWTONIAN_CRITICAL = newtonianCriticalReynolds();

  private final Rheology rheology;
  private final double densityKgM3;
  private final Bore bore;
  private final double scale;
  private final double laminarBelowMps;
  private final double turbulentAboveMps;
  private Known last;

  /**
   * Friction at one velocity.
   *
   * @param wallStressPa shear stress at the wall [Pa]
   * @param pressureGradientPaPm pressure lost per length of pipe [Pa/m]
   * @param reynolds Reynolds number of Metzner and Reed
   * @param wallShearRatePs shear rate at the wall, to be compared with the range of the rheogram
   *     [1/s]
   * @param regime state of the flow
   * @param model what the value comes from
   */
  public record Friction(
      double wallStressPa,
      double pressureGradientPaPm,
      double reynolds,
      double wallShearRatePs,
      Regime regime,
      String model) {
    /**
     * Apparent viscosity of the liquid at the wall: what a correlation made for Newtonian liquids
     * is given for turbulent flow.
     *
     * @return τw/γ̇w [Pa.s]
     * @throws ArithmeticException if the liquid is at rest
     */
    public double wallViscosityPaS() {
      if (!(wallShearRatePs > 0)) {
        throw new ArithmeticException("a liquid at rest has no viscosity at the wall");
      }
      return wallStressPa / wallShearRatePs;
    }
  }

  /** The friction at a velocity, kept since the runs of one pipe ask for it one after the other. */
  private record Known(double velocityMps, Friction friction) {}

  /**
   * A liquid in a pipe.
   *
   * @param rheology the liquid, with a flow index below 2
   * @param densityKgM3 its density, positive [kg/m3]
   * @param bore the pipe
   * @throws IllegalArgumentException if the density is not positive or the flow index not below 2
   */
  public NonNewtonianFriction(Rheology rheology, double densityKgM3, Bore bore) {
    if (!(densityKgM3 > 0 && Double.isFinite(densityKgM3))) {
      throw new IllegalArgumentException("density must be > 0 but was " + densityKgM3 + " kg/m3");
    }
    this.rheology = rheology;
    this.densityKgM3 = densityKgM3;
    this.bore = bore;
    laminarBelowMps =
        NonNewtonianModels.TRANSITION.velocityMps(rheology, densityKgM3, bore).value();
    scale = laminar(laminarBelowMps).reynolds(densityKgM3) / NEWTONIAN_CRITICAL;
    turbulentAboveMps = Math.max(scaledTo(FULLY_TURBULENT), Math.max(intersection(), slatter()));
  }

  /**
   * The liquid.
   *
   * @return its rheology
   */
  public Rheology rheology() {
    return rheology;
  }

  /**
   * Density of the liquid.
   *
   * @return density [kg/m3]
   */
  public double densityKgM3() {
    return densityKgM3;
  }

  /**
   * The pipe.
   *
   * @return its bore
   */
  public Bore bore() {
    return bore;
  }

  /**
   * The velocity up to which the flow is laminar.
   *
   * @return velocity by {@link RyanJohnson1959} [m/s]
   */
  public double laminarBelowMps() {
    return laminarBelowMps;
  }

  /**
   * The velocity from which the flow is turbulent by every criterion that applies: a Reynolds
   * number of 4000 scaled to the end of laminar flow, the velocity at which the turbulent stress of
   * {@link WilsonThomas1985} overtakes the laminar one, and {@link SlatterWasp2000} when its
   * Hedström number is reached. The safe rule for sand.
   *
   * @return velocity [m/s]
   */
  public double turbulentAboveMps() {
    return turbulentAboveMps;
  }

  /**
   * State of the flow at a velocity.
   *
   * @param velocityMps mean velocity [m/s]
   * @return laminar, turbulent by every criterion that applies, or in between
   */
  public Regime regime(double velocityMps) {
    return velocityMps < laminarBelowMps
        ? Regime.LAMINAR
        : velocityMps < turbulentAboveMps ? Regime.TRANSITIONAL : Regime.TURBULENT;
  }

  /**
   * Friction at a velocity.
   *
   * @param velocityMps mean velocity, not negative [m/s]
   * @return the friction; at rest that which must be overcome to start
   */
  public Friction at(double velocityMps) {
    if (!(velocityMps >= 0 && Double.isFinite(velocityMps))) {
      throw new IllegalArgumentException("velocity must be >= 0 but was " + velocityMps + " m/s");
    }
    Known known = last;
    if (known == null || known.velocityMps() != velocityMps) {
      known = new Known(velocityMps, found(velocityMps));
      last = known;
    }
    return known.friction();
  }

  private Friction found(double velocityMps) {
    if (velocityMps == 0) {
      double stress = rheology.yieldStressPa();
      return friction(stress, 0, Regime.LAMINAR, "start from rest");
    }
    LaminarPipeFlow laminar = laminar(velocityMps);
    double reynolds = laminar.reynolds(densityKgM3);
    Regime regime = regime(velocityMps);
    if (!(reynolds / scale > SURELY_LAMINAR)) {
      return friction(
          laminar.wallStressPa(), reynolds, regime, "laminar flow of the rheology, closed form");
    }
    Estimate turbulent =
        NonNewtonianModels.DEFAULT.wallStressPa(rheology, densityKgM3, bore, velocityMps);
    double dynamic = densityKgM3 * velocityMps * velocityMps / 8;
    double factor =
        PipeFriction.join(
            laminar.wallStressPa() / dynamic,
            PipeFriction.transitionalFactor(reynolds / scale) / scale,
            turbulent.value() / dynamic);
    boolean isLaminar = regime == Regime.LAMINAR;
    return friction(
        factor * dynamic,
        reynolds,
        regime,
        isLaminar
            ? "laminar flow of the rheology, closed form"
            : NonNewtonianModels.DEFAULT.name()
                + ", joined to laminar flow in the manner of Churchill (1977)");
  }

  private Friction friction(double stress, double reynolds, Regime regime, String model) {
    return new Friction(
        stress,
        4 * stress / bore.diameterM(),
        reynolds,
        rheology.shearRatePs(stress),
        regime,
        model);
  }

  private LaminarPipeFlow laminar(double velocityMps) {
    return LaminarPipeFlow.at(rheology, bore.diameterM(), velocityMps);
  }

  /** The velocity of a scaled Reynolds number. */
  private double scaledTo(double reynolds) {
    DoubleUnaryOperator tooMuch =
        logAbove -> {
          double velocity = laminarMps(logAbove);
          double stress = rheology.yieldStressPa() + Math.exp(logAbove);
          return Math.log(8 * densityKgM3 * velocity * velocity / (stress * scale * reynolds));
        };
    double low = laminarEnd();
    double root =
        Roots.near(tooMuch, low, 2 / rheology.index())
            .orElseGet(
                () ->
                    Roots.between(
                        "end of the transition",
                        tooMuch,
                        low,
                        above(low, v -> tooMuch.applyAsDouble(v) < 0)));
    return laminarMps(root);
  }

  /** Where the turbulent stress overtakes the laminar one; 0 if it has done so before. */
  private double intersection() {
    DoubleUnaryOperator laminarOverTurbulent =
        logAbove ->
            new WilsonThomas1985.Balance(rheology, densityKgM3, bore, laminarMps(logAbove))
                .applyAsDouble(logAbove);
    double low = laminarEnd();
    if (!(laminarOverTurbulent.applyAsDouble(low) > BRACKET)) {
      return 0;
    }
    double high = above(low, stress -> laminarOverTurbulent.applyAsDouble(stress) > 0);
    return laminarMps(
        Roots.between(
            "intersection of laminar and turbulent flow", laminarOverTurbulent, low, high));
  }

  /** ln x of the wall stress that lies x above the yield stress at the end of laminar flow. */
  private double laminarEnd() {
    return Math.log(laminar(laminarBelowMps).wallStressPa() - rheology.yieldStressPa());
  }

  /** The velocity of laminar flow, carried on beyond its end, with a stress above the yield. */
  private double laminarMps(double logAbove) {
    return LaminarPipeFlow.velocityAboveYieldMps(rheology, bore.diameterM(), logAbove);
  }

  /** From a start upwards the first multiple by two that is not too low any more. */
  private static double above(double start, DoublePredicate tooLow) {
    double high = start + Math.log(2);
    while (tooLow.test(high)) {
      high += Math.log(2);
    }
    return high;
  }

  private double slatter() {
    Estimate estimate = new SlatterWasp2000().velocityMps(rheology, densityKgM3, bore);
    return estimate.inRange() ? estimate.value() : 0;
  }

  private static double newtonianCriticalReynolds() {
    Rheology unit = new Newtonian(1);
    Bore bore = new Bore(1, 0);
    double velocity = NonNewtonianModels.TRANSITION.velocityMps(unit, 1, bore).value();
    return LaminarPipeFlow.at(unit, 1, velocity).reynolds(1);
  }
}
