package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.units.Kind;

/**
 * How a velocity is judged against the deposition velocity.
 *
 * <p>The deposition velocity of a level pipe at a concentration is that of {@link DepositionLimit},
 * over the sizes of {@link SandLoad.Sizes}. On an upward slope {@link WilsonTse1984} adds to it;
 * between 60° and 75° a bed ceases to be possible, and what is left is that the liquid must outrun
 * the coarse grains. The limit is that at the highest concentration.
 *
 * <p>Required is more, with the margins 25 % and 0.3 m/s by default:
 *
 * <pre>
 * required = smaller of   max{1.25 V(C), 1.15 V(Chigh), V(Chigh) + 0.3 m/s}
 *            and          max{1.15 Vslug, Vslug + 0.3 m/s}
 * </pre>
 *
 * <p>C the usual and Chigh the highest concentration; Vslug the largest deposition velocity at any
 * concentration, which measurements know better, so 15 % do there. Liquid more viscous than 2 mm²/s
 * and bores of more than 0.5 m lie outside most measurements: there 10 % for each factor e, at most
 * 25 %, are added to the 25 % and the 15 %.
 *
 * <p>Correlations take part by their {@link Role}: those that govern as the limit says, others only
 * when the user makes them a floor or lets them count.
 *
 * @param marginFraction margin over the limit at the usual concentration, as a share of it
 * @param marginMps least margin [m/s], 0 or more
 * @param searchesSizes true to look for the worst size, false to judge by d50 only
 * @param roles roles that differ from the default, by the key of the correlation
 */
public record DepositionRule(
    double marginFraction, double marginMps, boolean searchesSizes, Map<String, Role> roles) {
  /** A margin of 25 % or 0.3 m/s, whichever is larger; all sizes; default roles. */
  public static final DepositionRule DEFAULT = new DepositionRule(0.25, 0.3, true, Map.of());

  /** Over what is measured at the worst concentration, this share is margin enough. */
  private static final double SLUG_MARGIN = 0.15;

  private static final double THICK_M2PS = 2e-6;
  private static final double WIDE_M = 0.5;
  private static final double WIDENING = 0.10;
  private static final double WIDEST = 0.25;

  /** Durand number below which a slope adds in proportion: that of the chart's force balance. */
  private static final double CHART_DURAND = 0.75;

  private static final double BED_TO_RAD = Math.toRadians(60);
  private static final double NO_BED_FROM_RAD = Math.toRadians(75);

  /** Transport ratio 1 − w/V required in a riser (practice of drilling; from memory). */
  private static final double TRANSPORT_RATIO = 0.5;

  /** The velocity for a bed falls by no more than this between 60° and 75°: a choice, no source. */
  private static final double STEEPEST_FALL = 40;

  private static final WilsonTse1984 SLOPE = new WilsonTse1984();

  private static final String RULE = "rule of the theory page on the deposition velocity";
  private static final Equation USUAL =
      Equation.search(
          "V_u",
          "deposition velocity of the level pipe at the usual concentration",
          "largest velocity by the same rule among the sizes of the sand",
          Kind.VELOCITY,
          RULE,
          "C");
  private static final Equation SLUG =
      Equation.search(
          "V_s",
          "deposition velocity of the level pipe for a slug of sand",
          "largest V_max among the sizes of the sand, or V_h if that is more",
          Kind.VELOCITY,
          RULE,
          "V_h m/s");
  private static final Equation WIDER =
      Equation.of(
          "e",
          "wider margin for a liquid thicker or a bore wider than those of the measurements",
          "min(0.25, 0.10 (max(0, ln(nu/2e-6)) + max(0, ln(D/0.5))))",
          Kind.NUMBER,
          RULE,
          "nu m2/s, D m");
  private static final Equation WANTED =
      Equation.of(
          "V_m",
          "deposition velocity with its margin",
          "max((1 + m + e) V_u, (1 + min(m, 0.15) + e) V_h, V_h + dV)",
          Kind.VELOCITY,
          RULE,
          "m, e, dV m/s, V_u m/s, V_h m/s");
  private static final Equation ENOUGH =
      Equation.of(
          "V_sm",
          "deposition velocity for a slug with its margin, which is enough at any concentration",
          "max((1 + min(m, 0.15) + e) V_s, V_s + dV)",
          Kind.VELOCITY,
          RULE,
          "m, e, dV m/s, V_s m/s");
  private static final Equation ASKED =
      Equation.of(
          "V_req", "required velocity", "min(V_m, V_sm)", Kind.VELOCITY, RULE, "V_m m/s, V_sm m/s");
  private static final Equation COUNTED =
      Equation.search(
          "V_c",
          "velocity by the largest correlation that counts, on this slope",
          "the same rules of the slope for the value in a level pipe",
          Kind.VELOCITY,
          RULE,
          "V m/s");
  private static final Equation TO_PASS =
      Equation.of(
          "V_pass",
          "velocity that passes",
          "max(V_req, V_c)",
          Kind.VELOCITY,
          RULE,
          "V_req m/s, V_c m/s");

  /** The correlations of which {@link DepositionLimit} is made. */
  private static final List<DepositionVelocityModel> PARTS =
      List.of(
          DepositionLimit.THOMAS,
          DepositionLimit.GILLIES_SHOOK,
          DepositionLimit.WILSON,
          DepositionLimit.CONCENTRATION,
          DepositionLimit.OROSKAR_TURIAN,
          DepositionLimit.MAY,
          DepositionLimit.MACKE,
          DepositionLimit.AB_GHANI);

  private static final Set<DepositionVelocityModel> BY_DEFAULT =
      PARTS.stream()
          .filter(
              part ->
                  DepositionVelocities.defaultRole(part) == Role.GOVERNING
                      || DepositionVelocities.defaultRole(part) == Role.FLOOR)
          .collect(Collectors.toUnmodifiableSet());

  /**
   * Checks the margins and the keys and copies the map.
   *
   * @param marginFraction margin as a share of the limit, 0 or more
   * @param marginMps least margin [m/s], 0 or more
   * @param searchesSizes whether the worst size is looked for
   * @param roles roles that differ from the default
   * @throws IllegalArgumentException if a margin is negative, a key is unknown or nothing governs
   */
  public DepositionRule {
    if (!(marginFraction >= 0 && Double.isFinite(marginFraction))
        || !(marginMps >= 0 && Double.isFinite(marginMps))) {
      throw new IllegalArgumentException(
          "margins must be >= 0 but are " + marginFraction + " and " + marginMps + " m/s");
    }
    roles = Map.copyOf(roles);
    for (String id : roles.keySet()) {
      if (DepositionVelocities.FAMILY.find(id).isEmpty()) {
        throw new IllegalArgumentException(
            "\"" + id + "\" is no deposition velocity; known are " + knownIds());
      }
    }
    if (!governs(roles)) {
      throw new IllegalArgumentException(
          "one of the largest velocities must govern: "
              + DepositionLimit.GILLIES_SHOOK.id()
              + " or "
              + DepositionLimit.WILSON.id());
    }
  }

  /**
   * Whether roles leave one of the formulas for the largest velocity governing, without which there
   * is no limit.
   *
   * @param roles roles that differ from the default, by the key of the correlation
   * @return true if Gillies and Shook or Wilson govern
   */
  public static boolean governs(Map<String, Role> roles) {
    return List.of(DepositionLimit.GILLIES_SHOOK, DepositionLimit.WILSON).stream()
        .anyMatch(model -> roleIn(roles, model) == Role.GOVERNING);
  }

  private static List<String> knownIds() {
    return DepositionVelocities.FAMILY.all().stream().map(DepositionVelocityModel::id).toList();
  }

  private static Role roleIn(Map<String, Role> roles, DepositionVelocityModel model) {
    return roles.getOrDefault(model.id(), DepositionVelocities.defaultRole(model));
  }

  /**
   * The part that a correlation plays under this rule.
   *
   * @param model a correlation of the catalogue
   * @return its role
   */
  Role roleOf(DepositionVelocityModel model) {
    return roleIn(roles, model);
  }

  /**
   * The correlations that are part of the default rule and are not of this one.
   *
   * @return those that were given a weaker role; empty unless the user did so
   */
  public List<DepositionVelocityModel> demoted() {
    return PARTS.stream().filter(model -> !governs(model)).toList();
  }

  /** Whether a part of the limit takes part. */
  boolean governs(DepositionVelocityModel part) {
    Role role = roleOf(part);
    return role == Role.GOVERNING || role == Role.FLOOR;
  }

  /** The parts of the limit that take part. */
  Set<DepositionVelocityModel> governing() {
    return roles.isEmpty()
        ? BY_DEFAULT
        : PARTS.stream().filter(this::governs).collect(Collectors.toSet());
  }

  /** What the user made a floor although it is no part of the limit, or a part of it plainly so. */
  List<DepositionVelocityModel> floors() {
    if (roles.isEmpty()) {
      return List.of();
    }
    return roles.entrySet().stream()
        .filter(entry -> entry.getValue() == Role.FLOOR || entry.getValue() == Role.GOVERNING)
        .map(entry -> DepositionVelocities.FAMILY.find(entry.getKey()).orElseThrow())
        .filter(model -> roleOf(model) == Role.FLOOR || !PARTS.contains(model))
        .toList();
  }

  /**
   * Judges a velocity.
   *
   * <p>A slurry without sand (a volume fraction of 0) is judged as one with a trace of it: whether
   * there is anything to settle is for the caller to say. Laminar flow is not judged here either;
   * the Reynolds number in the result tells of it.
   *
   * @param load what is to be carried
   * @param bore the pipe
   * @param velocityMps mean velocity, 0 or more [m/s]
   * @param upwardAngleRad angle of the pipe in the direction of flow, upward positive [rad]
   * @return the verdict with all that led to it
   * @throws IllegalArgumentException if the velocity is negative or the angle is none between the
   *     verticals
   */
  public DepositionJudgement judge(
      SandLoad load, Bore bore, double velocityMps, double upwardAngleRad) {
    return judge(load, bore, velocityMps, upwardAngleRad, Trace.NONE);
  }

  /**
   * The same with its steps.
   *
   * @param load what is to be carried
   * @param bore the pipe
   * @param velocityMps mean velocity, 0 or more [m/s]
   * @param upwardAngleRad angle of the pipe in the direction of flow, upward positive [rad]
   * @param trace what keeps the steps
   * @return the verdict with all that led to it
   * @throws IllegalArgumentException if the velocity is negative or the angle is none between the
   *     verticals
   */
  public DepositionJudgement judge(
      SandLoad load, Bore bore, double velocityMps, double upwardAngleRad, Trace trace) {
    if (!(velocityMps >= 0 && Double.isFinite(velocityMps))) {
      throw new IllegalArgumentException("velocity must be >= 0 but was " + velocityMps + " m/s");
    }
    Slurry slurry = load.slurry();
    DepositionLimit level =
        new DepositionLimit(
            this, slurry, searchesSizes ? load.sizes() : load.sizes().middleOnly(), bore);
    Entry high = level.at(load.highestFraction());
    double usual =
        load.highestFraction() > slurry.volumeFraction()
            ? level.mpsAt(slurry.volumeFraction())
            : high.valueMps();
    double slug = Math.max(level.slugMps(), high.valueMps());

    boolean flat = upwardAngleRad == 0;
    if (trace.records()) {
      level.steps(load.highestFraction(), level(DepositionLimit.LIMIT, flat), trace);
      trace.step(level(USUAL, flat), usual, slurry.volumeFraction());
      trace.step(level(SLUG, flat), slug, high.valueMps());
    }
    Slope slope = new Slope(slurry, bore, upwardAngleRad, trace);
    double highOnSlope = slope.rising(WilsonTse1984.HIGH_ON_SLOPE, high.valueMps());
    double slugOnSlope = slope.rising(WilsonTse1984.SLUG_ON_SLOPE, slug);
    double usualOnSlope = slope.rising(WilsonTse1984.USUAL_ON_SLOPE, usual);
    double widening = widening(slurry, bore);
    trace.step(WIDER, widening, slurry.liquid().kinematicViscosityM2ps(), bore.diameterM());
    double asked = askedMps(usualOnSlope, highOnSlope, slugOnSlope, widening, trace);
    double riser = riserMps(load, upwardAngleRad, slope.trace);
    double limit = slope.steep(WilsonTse1984.STEEP_LIMIT, highOnSlope, riser, riser);
    double required =
        slope.steep(WilsonTse1984.STEEP_REQUIRED, asked, riser / (1 - TRANSPORT_RATIO), riser);

    Optional<Entry> counted = largestCounted(load, bore);
    double disagreement = counted.map(e -> slope.inclined(e.valueMps(), riser)).orElse(0.0);
    counted.ifPresent(entry -> steps(entry, load, bore, disagreement, required, trace));
    return new DepositionJudgement(
        outcome(velocityMps, limit, required, disagreement),
        velocityMps,
        high,
        load.highestFraction(),
        slope.steep(usualOnSlope, riser),
        limit,
        highOnSlope - high.valueMps(),
        riser,
        required,
        slope.steep(slugOnSlope, riser),
        widening,
        counted,
        Math.max(required, disagreement));
  }

  /**
   * Every correlation of the catalogue at the highest concentration in a level pipe, for
   * comparison: each with the size that asks most of it.
   *
   * @param load what is to be carried
   * @param bore the pipe
   * @return one entry each, in the order of the catalogue
   */
  public List<Entry> compare(SandLoad load, Bore bore) {
    List<Entry> entries = new ArrayList<>();
    for (DepositionVelocityModel model : DepositionVelocities.FAMILY.all()) {
      entries.add(worst(model, load, bore));
    }
    return List.copyOf(entries);
  }

  private Entry worst(DepositionVelocityModel model, SandLoad load, Bore bore) {
    SandLoad.Sizes sizes = searchesSizes ? load.sizes() : load.sizes().middleOnly();
    Entry worst = null;
    for (int i = 0; i < sizes.count(); i++) {
      double fraction = load.highestFraction() * sizes.share(i);
      Slurry uniform = load.slurry().ofUniformSize(sizes.sizeM(i)).withVolumeFraction(fraction);
      Entry entry =
          new Entry(
              model, roleOf(model), sizes.sizeM(i), fraction, model.velocityMps(uniform, bore));
      // A correlation that does not depend on the size answers with d50 and not with a rounding.
      if (worst == null || entry.valueMps() > worst.valueMps() * (1 + 1e-9)) {
        worst = entry;
      }
    }
    return worst;
  }

  private Optional<Entry> largestCounted(SandLoad load, Bore bore) {
    return roles.containsValue(Role.COUNTED)
        ? DepositionVelocities.FAMILY.all().stream()
            .filter(model -> roleOf(model) == Role.COUNTED)
            .map(model -> worst(model, load, bore))
            .filter(entry -> entry.estimate().inRange())
            .max(Comparator.comparingDouble(Entry::valueMps))
        : Optional.empty();
  }

  /**
   * The margin over the deposition velocity at the highest concentration.
   *
   * @param marginFraction that over the one at the usual concentration
   * @return the margin as a share
   */
  public static double marginAtMostSand(double marginFraction) {
    return Math.min(marginFraction, SLUG_MARGIN);
  }

  /** The required velocity, if a bed can form at all [m/s]. */
  private double askedMps(
      double usualMps, double highMps, double slugMps, double widening, Trace trace) {
    double narrow = 1 + marginAtMostSand(marginFraction) + widening;
    double most = Math.max(narrow * slugMps, slugMps + marginMps);
    double wanted =
        Math.max(
            (1 + marginFraction + widening) * usualMps,
            Math.max(narrow * highMps, highMps + marginMps));
    trace.step(WANTED, wanted, marginFraction, widening, marginMps, usualMps, highMps);
    trace.step(ENOUGH, most, marginFraction, widening, marginMps, slugMps);
    return trace.step(ASKED, Math.min(wanted, most), wanted, most);
  }

  /** A velocity of the level pipe, which in a level pipe is that of the pipe itself. */
  private static Equation level(Equation equation, boolean flat) {
    return flat ? equation : equation.as(equation.symbol() + "0");
  }

  private static void steps(
      Entry counted,
      SandLoad load,
      Bore bore,
      double disagreementMps,
      double requiredMps,
      Trace trace) {
    Slurry uniform = load.slurry().ofUniformSize(counted.sizeM());
    counted.model().velocityMps(uniform.withVolumeFraction(counted.fraction()), bore, trace);
    trace.step(COUNTED, disagreementMps, counted.valueMps());
    trace.step(TO_PASS, Math.max(requiredMps, disagreementMps), requiredMps, disagreementMps);
  }

  static Outcome outcome(double velocity, double limit, double required, double disagreement) {
    if (velocity < limit) {
      return Outcome.BELOW_LIMIT;
    }
    if (velocity < required) {
      return Outcome.WITHIN_MARGIN;
    }
    return velocity < disagreement ? Outcome.MODELS_DISAGREE : Outcome.CLEAR;
  }

  /** How far liquid and bore lie outside the measurements, as a share of margin. */
  private static double widening(Slurry slurry, Bore bore) {
    double thick = Math.log(slurry.liquid().kinematicViscosityM2ps() / THICK_M2PS);
    double wide = Math.log(bore.diameterM() / WIDE_M);
    return Math.min(WIDEST, WIDENING * (Math.max(0, thick) + Math.max(0, wide)));
  }

  /**
   * The velocity that just lifts the coarse grains along a steep pipe. They are taken to fall as if
   * alone: among others they fall slower, but more sand must never look easier to carry.
   */
  private static double riserMps(SandLoad load, double upwardAngleRad, Trace trace) {
    Slurry slurry = load.slurry();
    Grain coarse = new Grain(load.sizes().coarsestM(), slurry.sandDensityKgM3(), slurry.shape());
    double fall = SettlingVelocities.DEFAULT.velocityMps(coarse, slurry.liquid(), trace).value();
    double riser = fall * Math.abs(Math.sin(upwardAngleRad));
    return trace.step(WilsonTse1984.LIFT, riser, fall, upwardAngleRad);
  }

  /**
   * What a slope makes of the velocity of a level pipe. The chart of the upward increment is for
   * the largest deposition velocity, a Durand number near 0.75 or more; a smaller velocity of
   * dilute sand grows in the same proportion.
   */
  private static final class Slope {
    private final double increment;
    private final double scaleMps;
    private final double past;
    private final double boreM;
    private final double ratio;

    /** Of a level pipe nothing is told. */
    private final Trace trace;

    Slope(Slurry slurry, Bore bore, double upwardAngleRad, Trace trace) {
      this.trace = upwardAngleRad == 0 ? Trace.NONE : trace;
      boreM = bore.diameterM();
      ratio = slurry.densityRatio();
      increment = SLOPE.durandIncrement(upwardAngleRad).value();
      scaleMps = VelocityScale.durandMps(slurry, bore);
      double share = (Math.abs(upwardAngleRad) - BED_TO_RAD) / (NO_BED_FROM_RAD - BED_TO_RAD);
      past = Math.min(1, Math.max(0, share));
      this.trace.step(WilsonTse1984.INCREMENT, increment, upwardAngleRad);
      this.trace.step(WilsonTse1984.PAST, past, upwardAngleRad);
    }

    /** With what a slope adds on which a bed can lie [m/s]. */
    double rising(Equation equation, double levelMps) {
      return trace.step(equation, rising(levelMps), levelMps, increment, boreM, ratio);
    }

    private double rising(double levelMps) {
      return levelMps + increment * Math.min(scaleMps, levelMps / CHART_DURAND);
    }

    /** What a slope makes of the velocity of a level pipe. */
    double inclined(double levelMps, double liftMps) {
      return steep(rising(levelMps), liftMps);
    }

    double steep(Equation equation, double bedMps, double liftMps, double riserMps) {
      return trace.step(equation, steep(bedMps, liftMps), bedMps, riserMps, past);
    }

    /**
     * From the velocity for a bed to that which lifts the grains, in even ratios between 60° and
     * 75° so that nothing jumps; the worse of both at any angle [m/s].
     */
    double steep(double bedMps, double liftMps) {
      double lifted = Math.max(liftMps, bedMps / STEEPEST_FALL);
      return Math.max(liftMps, bedMps * Math.pow(lifted / bedMps, past));
    }
  }
}
