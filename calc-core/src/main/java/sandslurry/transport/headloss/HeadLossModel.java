package sandslurry.transport.headloss;

import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Estimate.Checks;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.transport.friction.ClearLiquid;

/** Friction of a settling slurry in a horizontal pipe. */
public abstract class HeadLossModel extends Published {
  /** As {@link Published}. */
  HeadLossModel(
      String id, String name, Citation source, List<Bound> bounds, Equation... equations) {
    super(id, name, source, bounds, equations);
  }

  /** As {@link Published}, for an equation that is no step of the working. */
  HeadLossModel(String id, String name, String equation, Citation source, List<Bound> bounds) {
    super(id, name, equation, source, bounds);
  }

  /**
   * Hydraulic gradient of the slurry.
   *
   * @param slurry sand and carrier; with a volume fraction of 0 the result is that of the liquid
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @return metres of carrier liquid lost per metre of pipe, and what lay outside the published
   *     range
   */
  public final Estimate gradient(Slurry slurry, Bore bore, double velocityMps) {
    return gradient(slurry, bore, velocityMps, Trace.NONE);
  }

  /**
   * The same with its steps, which begin with the gradient i_f of the clear carrier.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param velocityMps mean velocity, positive [m/s]
   * @param trace what keeps the steps
   * @return metres of carrier liquid lost per metre of pipe, and what lay outside the published
   *     range
   */
  public final Estimate gradient(Slurry slurry, Bore bore, double velocityMps, Trace trace) {
    ClearLiquid clear = ClearLiquid.of(slurry.liquid(), bore, velocityMps);
    Checks checks = Estimate.checks();
    if (slurry.volumeFraction() == 0) {
      return checks.value(clear.gradient());
    }
    checks.check(ClearLiquid.TURBULENT, clear.reynolds());
    return checks.value(gradient(slurry, bore, velocityMps, clear, checks, trace));
  }

  /** The gradient with sand, whose range is compared in the checks. */
  abstract double gradient(
      Slurry slurry, Bore bore, double velocityMps, ClearLiquid clear, Checks checks, Trace trace);

  /**
   * The same gradient for many velocities of one slurry in one pipe.
   *
   * @param slurry sand and carrier, with sand
   * @param bore the pipe
   * @return the gradient against velocity, without a word on the published range
   */
  public Curve curve(Slurry slurry, Bore bore) {
    return (clear, velocityMps) -> gradient(slurry, bore, velocityMps).value();
  }

  /** Gradient of one slurry in one pipe against velocity. */
  @FunctionalInterface
  public interface Curve {
    /**
     * The gradient at a velocity.
     *
     * @param clear friction of the carrier alone at this velocity
     * @param velocityMps mean velocity, positive [m/s]
     * @return metres of carrier liquid lost per metre of pipe
     */
    double gradient(ClearLiquid clear, double velocityMps);
  }
}
