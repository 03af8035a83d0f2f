package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.units.Kind;

/** The mean velocity below which a horizontal pipe keeps sand on its floor. */
public abstract class DepositionVelocityModel extends Published {
  private final Limit limit;
  private final Within within;

  /** As {@link Published}, with what happens at the velocity and where the correlation holds. */
  DepositionVelocityModel(
      String id, String name, Limit limit, Citation source, Within within, Equation... equations) {
    super(id, name, source, within.bounds(), equations);
    this.limit = limit;
    this.within = within;
  }

  /**
   * What happens at the velocity that this correlation gives: they do not all mean the same.
   *
   * @return the limit meant
   */
  public final Limit limit() {
    return limit;
  }

  /**
   * Deposition (minimum non-settling) velocity.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @return the velocity [m/s], and what lay outside the published range
   */
  public final Estimate velocityMps(Slurry slurry, Bore bore) {
    return velocityMps(slurry, bore, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param trace what keeps the steps
   * @return the velocity [m/s], and what lay outside the published range
   */
  public final Estimate velocityMps(Slurry slurry, Bore bore, Trace trace) {
    return within.estimate(slurry, bore, valueMps(slurry, bore, trace));
  }

  /** The velocity alone [m/s]. */
  abstract double valueMps(Slurry slurry, Bore bore, Trace trace);

  /**
   * Where a correlation holds.
   *
   * @param limits each of them with what it limits
   * @param published whether the source prints those that are added
   */
  record Within(List<Limited> limits, boolean published) {
    /** Limits that the source prints. */
    static final Within PUBLISHED = new Within(List.of(), true);

    /** Limits within which we use it, of which its source prints none. */
    static final Within OWN = new Within(List.of(), false);

    private record Limited(Bound bound, Input input) {}

    /** What is limited: of the sand, the pipe or the velocity found. */
    interface Input {
      double of(Slurry slurry, Bore bore, double velocityMps);
    }

    Within size(double lowM, double highM) {
      return and("grain size", Kind.GRAIN, lowM, highM, (sand, pipe, v) -> sand.d50M());
    }

    Within bore(double lowM, double highM) {
      return and("bore", Kind.BORE, lowM, highM, (sand, pipe, v) -> pipe.diameterM());
    }

    Within fraction(double low, double high) {
      return and(
          "volume fraction of sand",
          Kind.PERCENT,
          low,
          high,
          (sand, pipe, v) -> sand.volumeFraction());
    }

    /** A carrier about as thin as the water that the tests were made in. */
    Within likeWater() {
      return new Within(limits, true)
          .and(
              "kinematic viscosity",
              Kind.KINEMATIC_VISCOSITY,
              0,
              2e-6,
              (sand, pipe, v) -> sand.liquid().kinematicViscosityM2ps());
    }

    Within turbulent() {
      return and(
          "Reynolds number of the carrier at this velocity",
          Kind.NUMBER,
          4000,
          Double.POSITIVE_INFINITY,
          VelocityScale::reynolds);
    }

    Within and(String what, Kind<?> kind, double low, double high, Input input) {
      return and(List.of(new Limited(new Bound(what, kind, low, high, published), input)));
    }

    Within and(Within others) {
      return and(others.limits);
    }

    private Within and(List<Limited> others) {
      List<Limited> all = new ArrayList<>(limits);
      all.addAll(others);
      return new Within(List.copyOf(all), published);
    }

    private List<Bound> bounds() {
      return limits.stream().map(Limited::bound).toList();
    }

    private Estimate estimate(Slurry slurry, Bore bore, double velocityMps) {
      Estimate.Checks checks = Estimate.checks();
      for (Limited limited : limits) {
        checks.check(limited.bound, limited.input.of(slurry, bore, velocityMps));
      }
      return checks.value(velocityMps);
    }
  }

  /** What a deposition correlation can mean. */
  public enum Limit {
    /** Below it part of the sand lies still on the floor. */
    STATIONARY_BED("onset of a stationary bed"),
    /** Below it some of the sand lies or slides on the floor. */
    ANY_BED("onset of a lying or sliding bed"),
    /** Above it turbulence holds all of the sand. */
    FULL_SUSPENSION("full suspension"),
    /** Above it grains no longer travel in leaps along the floor. */
    SALTATION("change from saltation to heterogeneous flow");

    private final String words;

    Limit(String words) {
      this.words = words;
    }

    /**
     * The limit in words.
     *
     * @return for example "onset of a stationary bed"
     */
    public String words() {
      return words;
    }
  }
}
