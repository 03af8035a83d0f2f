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
import sandslurry.units.Kind;

/**
 * Friction of a sand slurry by three regimes, after Newitt, Richardson, Abbott and Turtle.
 *
 * <pre>
 * im = iw (1 + C Φ)
 * sliding bed      Φ = 66 (s − 1) g D/V²
 * heterogeneous    Φ = 1100 (s − 1) g D w/V³
 * homogeneous      Φ = 0.6 (s − 1)
 * </pre>
 *
 * <p>im gradient of the slurry and iw of the clear liquid, both in metres of carrier per metre of
 * pipe; C delivered volume fraction; s density of the sand over that of the carrier; g gravity
 * [m/s²]; D bore [m]; V mean velocity [m/s]; w settling velocity of the d50 grain alone [m/s].
 *
 * <p>The regimes are printed as parted by V = 17 w and V³ = 1800 g D w. The branches themselves
 * meet at V = 16.7 w and V³ = 1833 g D w; the class changes over where they meet, so that the curve
 * has no step. The difference is 2 %.
 *
 * <p>Range: a pipe of one inch, sand of 0.097 to 0.76 mm and gravel to 6.4 mm. In pipes of 150 mm
 * and more the sliding-bed branch is known to give too much. Below the deposition velocity the
 * value is that of a pipe over a bed and not for design. Without sand it is the clear liquid
 * exactly.
 */
final class Newitt1955 extends HeadLossModel {
  private static final double SLIDING = 66;
  private static final double HETEROGENEOUS = 1100;
  private static final double HOMOGENEOUS = 0.6;
  private static final Bound BORE = new Bound("bore", Kind.BORE, 0.025, 0.027);
  private static final Bound SIZE = new Bound("grain size d50", Kind.GRAIN, 9.65e-5, 6.4e-3);

  private static final Citation SOURCE =
      new Citation(
              "Newitt, Richardson, Abbott and Turtle",
              1955,
              "Transactions of the Institution of Chemical Engineers 33:93-113;"
                  + " pipe and grain sizes by Miedema, Slurry Transport"
                  + " (open text), section 6.5")
          .fromMemory("coefficients");
  private static final Equation GRADIENT =
      SOURCE.equation(
          "i_m",
          "gradient with sand, metres of carrier per metre",
          "i_f (1 + C (s - 1) max(0.6, min(66 g D/V^2, 1100 g D w/V^3)))",
          Kind.NUMBER,
          "i_f, C, s, D m, V m/s, w m/s");

  Newitt1955() {
    super(
        "newitt-1955",
        "Newitt, Richardson, Abbott and Turtle",
        SOURCE,
        List.of(ClearLiquid.TURBULENT, BORE, SIZE),
        GRADIENT);
  }

  @Override
  double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace) {
    double concentration = slurry.volumeFraction();
    double fall =
        SettlingVelocities.DEFAULT.velocityMps(slurry.d50Grain(), slurry.liquid(), trace).value();
    double froude = Physics.GRAVITY * bore.diameterM() / (velocityMps * velocityMps);
    double bed = SLIDING * froude;
    double heterogeneous = HETEROGENEOUS * froude * fall / velocityMps;
    double excess =
        (slurry.densityRatio() - 1) * Math.max(HOMOGENEOUS, Math.min(bed, heterogeneous));
    checks.check(BORE, bore.diameterM()).check(SIZE, slurry.d50M());
    return trace.step(
        GRADIENT,
        clear.gradient() * (1 + concentration * excess),
        clear.gradient(),
        concentration,
        slurry.densityRatio(),
        bore.diameterM(),
        velocityMps,
        fall);
  }
}
