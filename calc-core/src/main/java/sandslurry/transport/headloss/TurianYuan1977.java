package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Physics;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.friction.ClearLiquid;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;

/**
 * Friction of a sand slurry in four regimes, regression by Turian and Yuan.
 *
 * <pre>
 * f − fw = A C^a fw^b C_D^c Fr^e,   Fr = V² / [g D (s − 1)],   im = 2 f V²/(g D)
 *
 *                        A       a       b        c        e
 * 0 stationary bed    0.4036  0.7389  0.7717  −0.4054  −1.096
 * 1 saltation         0.9857  1.018   1.046   −0.4213  −1.354
 * 2 heterogeneous     0.5513  0.8687  1.200   −0.1677  −0.6938
 * 3 homogeneous       0.8444  0.5024  1.428    0.1516  −0.3531
 * </pre>
 *
 * <p>f and fw Fanning friction factors of slurry and clear liquid, both formed with the density of
 * the carrier, so that im is in metres of carrier per metre of pipe; C delivered concentration in
 * volume per cent, not a fraction; C_D drag coefficient of the d50 grain falling alone; V mean
 * velocity [m/s]; g gravity [m/s²]; D bore [m]; s density of the sand over that of the carrier.
 *
 * <p>Which regime holds: two regimes a and b meet where their equations give the same friction, at
 * Fr = α C^β fw^γ C_D^δ. The number R_ab is Fr over that value; above 1 the regime b holds against
 * a. The publication prints the six sets of α, β, γ, δ; here they are formed from the table above,
 * so that the curve has no step, and agree with the print within 0.3 %. Seen with rising velocity
 * the flow starts over a stationary bed and changes into the first regime that it meets: from the
 * present regime a, the class takes among the higher regimes b with R_ab ≥ 1 the one with the
 * greatest R_ab (met first), and goes on from there. So a regime can be left out: with fine grains
 * saltation does not occur, because heterogeneous flow is met before it.
 *
 * <p>Range: 2848 data, bores of 12.6 to 700 mm, grains of 0.03 to 38 mm, s − 1 of 0.16 to 10.3. The
 * scatter is about 30 % (from memory, unverified). In regime 0 the value is that of a pipe over a
 * bed and not for design. Without sand it is the clear liquid exactly.
 */
final class TurianYuan1977 extends HeadLossModel {
  private static final Bound BORE = new Bound("bore", Kind.BORE, 0.0126, 0.7);
  private static final Bound SIZE = new Bound("grain size d50", Kind.GRAIN, 3e-5, 0.038);
  private static final Bound BUOYANCY = new Bound("s - 1", Kind.NUMBER, 0.16, 10.3);

  private static final Citation SOURCE =
      new Citation(
              "Turian and Yuan",
              1977,
              "AIChE Journal 23:232-243; the printed boundaries of the regimes follow"
                  + " from its coefficients within 0.3 %; range by Miedema,"
                  + " Slurry Transport (open text), section 6.10")
          .fromMemory("coefficients");
  private static final Equation FANNING =
      SOURCE.equation("f_w", "Fanning friction factor of the carrier", "f/4", Kind.NUMBER, "f");
  private static final Equation FROUDE =
      SOURCE.equation("Fr", "Froude number", "V^2 / (g D (s - 1))", Kind.NUMBER, "V m/s, D m, s");
  private static final Equation EXCESS =
      SOURCE.equation(
          "f_x",
          "what the sand adds to f_w in this regime",
          "A (100 C)^a f_w^b C_D^c Fr^e",
          Kind.NUMBER,
          "A, C, a, f_w, b, C_D, c, Fr, e");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f (1 + f_x/f_w)",
          Kind.NUMBER,
          "i_f, f_x, f_w");

  private static final Equation REGIME =
      Equation.lookup(
          "A",
          "factor of the regime",
          "table of the four regimes, by the Froude number at which each gives way to the next",
          Kind.NUMBER,
          SOURCE.toString(),
          "Fr, C_D");

  TurianYuan1977() {
    super(
        "turian-yuan-1977",
        "Turian and Yuan",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, BORE, SIZE, BUOYANCY),
        GRADIENT,
        EXCESS,
        FROUDE,
        FANNING);
  }

  /** How the sand travels. */
  public enum Regime {
    /** Part of the sand lies still on the floor. */
    STATIONARY_BED("stationary bed", 0.4036, 0.7389, 0.7717, -0.4054, -1.096),
    /** Grains travel in leaps. */
    SALTATION("saltation", 0.9857, 1.018, 1.046, -0.4213, -1.354),
    /** All of the sand is carried, more of it near the floor. */
    HETEROGENEOUS("heterogeneous", 0.5513, 0.8687, 1.200, -0.1677, -0.6938),
    /** The sand is spread evenly over the height. */
    HOMOGENEOUS("homogeneous", 0.8444, 0.5024, 1.428, 0.1516, -0.3531);

    private final String words;
    private final double factor;
    private final double concentrationPower;
    private final double frictionPower;
    private final double dragPower;
    private final double froudePower;

    Regime(
        String words,
        double factor,
        double concentrationPower,
        double frictionPower,
        double dragPower,
        double froudePower) {
      this.words = words;
      this.factor = factor;
      this.concentrationPower = concentrationPower;
      this.frictionPower = frictionPower;
      this.dragPower = dragPower;
      this.froudePower = froudePower;
    }

    /**
     * The regime in words.
     *
     * @return for example "saltation"
     */
    String words() {
      return words;
    }

    private double excess(Case at) {
      return factor
          * Math.pow(at.percent, concentrationPower)
          * Math.pow(at.fanning, frictionPower)
          * Math.pow(at.drag, dragPower)
          * Math.pow(at.froude, froudePower);
    }

    /** α, β, γ, δ of the Froude number at which this regime gives way to a higher one. */
    double[] boundary(Regime higher) {
      double span = froudePower - higher.froudePower;
      return new double[] {
        Math.pow(higher.factor / factor, 1 / span),
        (higher.concentrationPower - concentrationPower) / span,
        (higher.frictionPower - frictionPower) / span,
        (higher.dragPower - dragPower) / span
      };
    }

    private double regimeNumber(Regime higher, Case at) {
      double[] power = boundary(higher);
      return at.froude
          / (power[0]
              * Math.pow(at.percent, power[1])
              * Math.pow(at.fanning, power[2])
              * Math.pow(at.drag, power[3]));
    }
  }

  /** The four numbers of the correlation. */
  private record Case(double percent, double fanning, double drag, double froude) {
    private static Case of(Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear) {
      return new Case(
          InUnit.PERCENT.of(slurry.volumeFraction()),
          clear.darcyFactor() / 4,
          SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid()),
          velocityMps
              * velocityMps
              / (Physics.GRAVITY * bore.diameterM() * (slurry.densityRatio() - 1)));
    }

    private Regime regime() {
      Regime present = Regime.STATIONARY_BED;
      Regime next = present;
      do {
        present = next;
        double greatest = 1;
        for (Regime higher : Regime.values()) {
          if (higher.compareTo(present) > 0) {
            double number = present.regimeNumber(higher, this);
            if (number >= greatest) {
              greatest = number;
              next = higher;
            }
          }
        }
      } while (next != present);
      return present;
    }
  }

  /**
   * The regime in which the sand travels.
   *
   * @param slurry sand and carrier, with a volume fraction above 0
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return the regime
   */
  Regime regime(Slurry slurry, Bore bore, double velocityMps) {
    if (!(slurry.volumeFraction() > 0)) {
      throw new IllegalArgumentException("without sand there is no regime of sand transport");
    }
    return Case.of(slurry, bore, velocityMps, ClearLiquid.of(slurry.liquid(), bore, velocityMps))
        .regime();
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    Case at = Case.of(slurry, bore, velocityMps, clear);
    Regime regime = at.regime();
    checks
        .check(BORE, bore.diameterM())
        .check(SIZE, slurry.d50M())
        .check(BUOYANCY, slurry.densityRatio() - 1);
    return steps(slurry, bore, velocityMps, at, regime, clear, trace);
  }

  private static double steps(
      Slurry slurry,
      Bore bore,
      double velocityMps,
      Case at,
      Regime regime,
      ClearLiquid clear,
      Trace trace) {
    double gradient = clear.gradient() * (1 + regime.excess(at) / at.fanning);
    if (trace.records()) {
      trace.step(FANNING, at.fanning, clear.darcyFactor());
      SettlingVelocities.dragCoefficient(slurry.d50Grain(), slurry.liquid(), trace);
      trace.step(FROUDE, at.froude, velocityMps, bore.diameterM(), slurry.densityRatio());
      trace.step(REGIME.about(regime.words()), regime.factor, at.froude, at.drag);
      double c = slurry.volumeFraction();
      double excess = regime.excess(at);
      trace.step(
          EXCESS,
          excess,
          regime.factor,
          c,
          regime.concentrationPower,
          at.fanning,
          regime.frictionPower,
          at.drag,
          regime.dragPower,
          at.froude,
          regime.froudePower);
      trace.step(GRADIENT, gradient, clear.gradient(), excess, at.fanning);
    }
    return gradient;
  }
}
