package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.pipe.Bore;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.deposition.DepositionVelocities.Role;

/**
 * How a velocity is judged against the deposition velocities of the family.
 *
 * <p>The limit is the largest value of the governing correlations that are within their range, and
 * never less than a floor. If no governing correlation is within its range, the limit is the
 * largest value of all governing, floor and counted ones, in range or not, and the judgement cannot
 * be a pass. To the limit comes the increment of an upward slope ({@link WilsonTse1984}), then the
 * margin: the larger of a fraction and a velocity. Counted correlations within their range are
 * compared with the velocity without margin.
 *
 * <p>A graded sand settles its worst size first. Each correlation is therefore asked for uniform
 * sand of nine sizes, evenly spaced in the logarithm from d50 to d85, and answers with its largest
 * value among the sizes within its range, or among all when none is; the full concentration goes
 * with each size, which is on the safe side.
 *
 * @param marginFraction margin as a share of the limit, 0 or more
 * @param marginMps least margin [m/s], 0 or more
 * @param searchesToD85 true to look for the worst size up to d85, false to ask for d50 only
 * @param roles roles that differ from the default, by the key of the correlation
 */
public record DepositionRule(
    double marginFraction, double marginMps, boolean searchesToD85, Map<String, Role> roles) {
  /** A margin of 15 % or 0.3 m/s, whichever is larger; all sizes; default roles. */
  public static final DepositionRule DEFAULT = new DepositionRule(0.15, 0.3, true, Map.of());

  private static final int SIZES = 9;
  private static final WilsonTse1984 SLOPE = new WilsonTse1984();

  /**
   * Checks the margins and the keys and copies the map.
   *
   * @param marginFraction margin as a share of the limit, 0 or more
   * @param marginMps least margin [m/s], 0 or more
   * @param searchesToD85 whether the worst size is looked for
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
      if (DepositionVelocities.byId(id).isEmpty()) {
        throw new IllegalArgumentException(
            "\"" + id + "\" is no deposition velocity; known are " + knownIds());
      }
    }
    Map<String, Role> given = roles;
    if (DepositionVelocities.all().stream()
        .noneMatch(model -> roleIn(given, model) == Role.GOVERNING)) {
      throw new IllegalArgumentException("at least one deposition velocity must govern");
    }
  }

  private static List<String> knownIds() {
    return DepositionVelocities.all().stream().map(DepositionVelocityModel::id).toList();
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
  public Role roleOf(DepositionVelocityModel model) {
    return roleIn(roles, model);
  }

  /**
   * Judges a velocity.
   *
   * <p>A slurry without sand (a volume fraction of 0) is judged as one with a trace of it: whether
   * there is anything to settle is for the caller to say. Laminar flow is not judged here either;
   * the Reynolds number in the result tells of it.
   *
   * @param slurry sand and carrier; of a carrier whose viscosity depends on the shear rate, the
   *     apparent viscosity at the wall at this velocity
   * @param bore the pipe
   * @param velocityMps mean velocity, 0 or more [m/s]
   * @param upwardAngleRad angle of the pipe in the direction of flow, upward positive [rad]
   * @return the verdict with all that led to it
   * @throws IllegalArgumentException if the velocity is negative or the angle is none between the
   *     verticals
   */
  public DepositionJudgement judge(
      Slurry slurry, Bore bore, double velocityMps, double upwardAngleRad) {
    if (!(velocityMps >= 0 && Double.isFinite(velocityMps))) {
      throw new IllegalArgumentException("velocity must be >= 0 but was " + velocityMps + " m/s");
    }
    List<Entry> entries = entries(slurry, bore);
    Optional<Entry> governing = largest(entries.stream().filter(inRange(Role.GOVERNING)));
    Entry limiting =
        governing.isPresent()
            ? largest(Stream.concat(governing.stream(), entries.stream().filter(is(Role.FLOOR))))
                .orElseThrow()
            : largest(entries.stream().filter(e -> e.role() != Role.SHOWN)).orElseThrow();
    Optional<Entry> counted = largest(entries.stream().filter(inRange(Role.COUNTED)));

    Estimate slope = SLOPE.durandIncrement(upwardAngleRad);
    double upward = slope.value() * VelocityScale.durandMps(slurry, bore);
    double limit = limiting.valueMps() + upward;
    double required = Math.max(limit * (1 + marginFraction), limit + marginMps);
    double disagreement = counted.map(e -> e.valueMps() + upward).orElse(0.0);
    boolean known = governing.isPresent() && slope.inRange();
    return new DepositionJudgement(
        outcome(velocityMps, limit, known, required, disagreement),
        velocityMps,
        VelocityScale.reynolds(slurry, bore, velocityMps),
        entries,
        limiting,
        limit,
        slope,
        upward,
        required,
        counted,
        Math.max(required, disagreement));
  }

  /**
   * The least velocity that no finding speaks against.
   *
   * @param slurry sand and carrier
   * @param bore the pipe
   * @param upwardAngleRad angle of the pipe in the direction of flow, upward positive [rad]
   * @return the velocity from which {@link #judge} gives {@link Outcome#CLEAR}, or, where no
   *     velocity does because nothing that governs is within its range, the velocity from which
   *     only {@link Outcome#OUT_OF_RANGE} is left to say [m/s]
   */
  public double velocityToPassMps(Slurry slurry, Bore bore, double upwardAngleRad) {
    return judge(slurry, bore, 0, upwardAngleRad).velocityToPassMps();
  }

  static Outcome outcome(
      double velocity, double limit, boolean known, double required, double disagreement) {
    if (velocity < limit) {
      return Outcome.BELOW_LIMIT;
    }
    if (!known) {
      return Outcome.OUT_OF_RANGE;
    }
    if (velocity < required) {
      return Outcome.WITHIN_MARGIN;
    }
    return velocity < disagreement ? Outcome.MODELS_DISAGREE : Outcome.CLEAR;
  }

  private List<Entry> entries(Slurry slurry, Bore bore) {
    List<Slurry> bySize = bySize(slurry);
    List<Entry> entries = new ArrayList<>();
    for (DepositionVelocityModel model : DepositionVelocities.all()) {
      entries.add(worst(model, bySize, bore));
    }
    return List.copyOf(entries);
  }

  /**
   * The size that asks most, among those within the range of the correlation when there is one: a
   * coarse end beyond the range must not take the correlation out of the judgement.
   */
  private Entry worst(DepositionVelocityModel model, List<Slurry> bySize, Bore bore) {
    Entry worst = null;
    for (Slurry slurry : bySize) {
      Estimate estimate = model.velocityMps(slurry, bore);
      Entry entry = new Entry(model, roleOf(model), slurry.d50M(), estimate);
      if (worst == null || asksMore(entry, worst)) {
        worst = entry;
      }
    }
    return worst;
  }

  private static boolean asksMore(Entry entry, Entry than) {
    if (entry.estimate().inRange() != than.estimate().inRange()) {
      return entry.estimate().inRange();
    }
    // A correlation that does not depend on the size answers with d50 and not with a rounding.
    return entry.valueMps() > than.valueMps() * (1 + 1e-9);
  }

  private List<Slurry> bySize(Slurry slurry) {
    List<Slurry> bySize = new ArrayList<>();
    bySize.add(slurry.ofUniformSize(slurry.d50M()));
    if (searchesToD85 && slurry.d85M() > slurry.d50M()) {
      double span = slurry.d85M() / slurry.d50M();
      for (int i = 1; i < SIZES - 1; i++) {
        double size = slurry.d50M() * Math.pow(span, i / (SIZES - 1.0));
        bySize.add(slurry.ofUniformSize(size));
      }
      bySize.add(slurry.ofUniformSize(slurry.d85M()));
    }
    return bySize;
  }

  private static Predicate<Entry> is(Role role) {
    return entry -> entry.role() == role;
  }

  private static Predicate<Entry> inRange(Role role) {
    return entry -> entry.role() == role && entry.estimate().inRange();
  }

  private static Optional<Entry> largest(Stream<Entry> entries) {
    return entries.max(Comparator.comparingDouble(Entry::valueMps));
  }
}
