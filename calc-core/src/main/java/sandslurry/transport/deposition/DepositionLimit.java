package sandslurry.transport.deposition;

import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import sandslurry.correlation.Estimate;
import sandslurry.fact.step.Equation;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Grain;
import sandslurry.pipe.Bore;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.units.Kind;

/**
 * The deposition velocity of a level pipe at a concentration, by the rule: the largest over the
 * sizes of the sand of
 *
 * <pre>
 * V(C) = max{Thomas, Oroskar–Turian(C), min[Vmax, max(Vr Vmax, sewers(C))]}
 * Vmax = max{Gillies–Shook, min[Wilson's nomograph, Wilson's bound]}
 * </pre>
 *
 * <p>{@link Sewers} say what dilute sand needs, Wilson's factor Vr what more does, and Vmax, the
 * largest velocity at any concentration, is never passed by them. Oroskar and Turian stand outside
 * that cap on purpose: in thick liquor Gillies and Shook fall below them. Every formula is
 * evaluated everywhere; whether it is in its range selects nothing.
 *
 * <p>No part falls as grains get coarser, denser or more, or the bore wider: Gillies and Shook are
 * held at their peak, the nomograph beyond its peak and Oroskar and Turian beyond 30 % of sand too.
 * In a liquid that is not water the nomograph, made for quartz in water, is read at the grain of
 * equal Archimedes number there; the bound is that of the real liquid.
 */
final class DepositionLimit {
  static final OroskarTurian1980Regression OROSKAR_TURIAN = new OroskarTurian1980Regression();
  static final GilliesShook GILLIES_SHOOK = new GilliesShook();
  static final WilsonBounded WILSON = new WilsonBounded();
  static final WilsonConcentration2006 CONCENTRATION = new WilsonConcentration2006();
  static final Thomas1979 THOMAS = new Thomas1979();
  static final May1996 MAY = new May1996();
  static final Macke1982 MACKE = new Macke1982();
  static final AbGhani1993 AB_GHANI = new AbGhani1993();

  /** Kinematic viscosity of water at 20 degC [m2/s] and density of quartz over that of water. */
  private static final double WATER_M2PS = 1.0034e-6;

  private static final double QUARTZ = 2650 / 998.2;

  private static final String SIZES = "the rule for each size of the sand";

  private static final Equation SIZE =
      Equation.search(
          "d",
          "grain size that needs the largest velocity",
          "largest velocity by the rule among the sizes of the sand",
          Kind.GRAIN,
          SIZES,
          "C_t");
  private static final Equation COUNTED_SHARE =
      Equation.lookup(
          "C",
          "volume fraction that counts for this size",
          "share of the sand that is as coarse, from the gradation; at most all of it",
          Kind.PERCENT,
          SIZES,
          "C_t, d m");
  private static final Equation IN_WATER =
      Equation.of(
          "d_n",
          "quartz grain in water of the same Archimedes number, for the nomograph",
          "d [(s - 1)/(2650/998.2 - 1) (1.0034e-6/nu)^2]^(1/3)",
          Kind.GRAIN,
          "equal Archimedes number",
          "d m, s, nu m2/s");
  private static final Equation WILSON_HELD =
      Equation.of(
          "V_WB",
          "deposition velocity by Wilson, the lower of nomograph and bound",
          "min(V_W, V_b)",
          Kind.VELOCITY,
          WILSON.citation().toString(),
          "V_W m/s, V_b m/s");
  private static final Equation LARGEST =
      Equation.of(
          "V_max",
          "largest deposition velocity at any concentration",
          "max(V_GS, V_WB)",
          Kind.VELOCITY,
          "the higher of two",
          "V_GS m/s, V_WB m/s");
  private static final Equation SECOND =
      Equation.of(
          "V_2",
          "deposition velocity of dilute sand: second largest of four",
          "second(V_OT, V_May, V_Macke, V_AG)",
          Kind.VELOCITY,
          "the second largest, as the four differ by up to 1.7",
          "V_OT m/s, V_May m/s, V_Macke m/s, V_AG m/s");

  /** The same where the user lets no more than one of the four take part; the others print 0. */
  private static final Equation ALONE =
      Equation.of(
          "V_2",
          "deposition velocity of dilute sand: the one of four that takes part",
          "max(V_OT, V_May, V_Macke, V_AG)",
          Kind.VELOCITY,
          "a choice of the user",
          "V_OT m/s, V_May m/s, V_Macke m/s, V_AG m/s");

  /** The limit of one size by the rule, with V_F what the user made a floor. */
  static final Equation LIMIT =
      Equation.of(
          "V_h",
          "deposition velocity of the level pipe at the highest concentration",
          "max(V_T, V_OT, min(V_max, max(V_r V_max, V_2)), V_F)",
          Kind.VELOCITY,
          "rule of the theory page on the deposition velocity",
          "V_T m/s, V_OT m/s, V_max m/s, V_r, V_2 m/s, V_F m/s");

  private final DepositionRule rule;
  private final Slurry slurry;
  private final SandLoad.Sizes sizes;
  private final SandLoad.Sizes.InBore inBore;
  private final Bore bore;

  /** Seen by the tests: its two ways to ask for dilute sand must agree. */
  final Sewers sewers;

  private final List<DepositionVelocityModel> floors;
  private final Set<DepositionVelocityModel> governing;

  /** What a grain of this liquid is multiplied by for {@link #IN_WATER}. */
  private final double inWater;

  private final double thomasMps;

  /** The largest velocity at any concentration for each size. */
  private final double[] largestMps;

  /** Of each size Oroskar and Turian's velocity but for the concentration. */
  private final double[] suspendingMps;

  DepositionLimit(DepositionRule rule, Slurry slurry, SandLoad.Sizes sizes, Bore bore) {
    this.rule = rule;
    this.slurry = slurry;
    this.sizes = sizes;
    this.inBore = sizes.in(bore, slurry.densityRatio());
    this.bore = bore;
    this.governing = rule.governing();
    this.sewers = new Sewers();
    this.floors = rule.floors();
    double viscosity = WATER_M2PS / slurry.liquid().kinematicViscosityM2ps();
    this.inWater = Math.cbrt((slurry.densityRatio() - 1) / (QUARTZ - 1) * viscosity * viscosity);
    this.thomasMps = governs(THOMAS) ? THOMAS.velocityMps(slurry, bore).value() : 0;
    double boundMps = governs(WILSON) ? WilsonBounded.upperBoundMps(slurry, bore) : 0;
    Wilson1986Fit.InPipe nomograph = Wilson1986Fit.InPipe.of(slurry, bore);
    this.largestMps = new double[sizes.count()];
    this.suspendingMps = new double[sizes.count()];
    for (int i = 0; i < largestMps.length; i++) {
      double sizeM = sizes.sizeM(i);
      double wilson = Math.min(boundMps, nomograph.risingMps(sizeM * inWater));
      largestMps[i] = Math.max(gilliesMps(sizeM, Trace.NONE), wilson);
      suspendingMps[i] = OroskarTurian1980Regression.aloneMps(slurry, sizeM, bore);
    }
  }

  private boolean governs(DepositionVelocityModel part) {
    return governing.contains(part);
  }

  private double gilliesMps(double sizeM, Trace trace) {
    return governs(GILLIES_SHOOK) ? GilliesShook.risingMps(slurry, sizeM, bore, trace) : 0;
  }

  /** Keeps the steps of the largest velocity of a size. */
  private double largestMps(double sizeM, Trace trace) {
    double boundMps = governs(WILSON) ? WilsonBounded.upperBoundMps(slurry, bore, trace) : 0;
    double gillies = gilliesMps(sizeM, trace);
    double wilson = 0;
    if (governs(WILSON)) {
      double inWaterM = sizeM * inWater;
      trace.step(
          IN_WATER,
          inWaterM,
          sizeM,
          slurry.densityRatio(),
          slurry.liquid().kinematicViscosityM2ps());
      double nomograph = Wilson1986Fit.risingMps(slurry, inWaterM, bore, trace);
      wilson = trace.step(WILSON_HELD, Math.min(boundMps, nomograph), nomograph, boundMps);
    }
    return trace.step(LARGEST, Math.max(gillies, wilson), gillies, wilson);
  }

  /** Whose the largest velocity of a size is. */
  private DepositionVelocityModel largestBy(int index) {
    double gilliesMps = gilliesMps(sizes.sizeM(index), Trace.NONE);
    return governs(GILLIES_SHOOK) && gilliesMps >= largestMps[index] ? GILLIES_SHOOK : WILSON;
  }

  /** The limit at a concentration of the whole sand, with what sets it. */
  Entry at(double fraction) {
    return search(fraction).entry();
  }

  /** The limit at a concentration of the whole sand [m/s]. */
  double mpsAt(double fraction) {
    return search(fraction).mps;
  }

  private Search search(double fraction) {
    SandLoad.Sizes.InBore.Crowd crowd = inBore.at(fraction);
    Search best = new Search(crowd);
    best.offer(THOMAS, 0, thomasMps);
    for (int i = 0; i < largestMps.length; i++) {
      double suspending =
          governs(OROSKAR_TURIAN) ? crowd.oroskarTurian(i) * suspendingMps[i] : Sewers.ABSENT;
      best.offer(OROSKAR_TURIAN, i, suspending);
      double most = largestMps[i];
      if (most > best.mps) {
        double factor = governs(CONCENTRATION) ? crowd.wilson(i) : 1;
        best.offer(factor < 1 ? CONCENTRATION : null, i, factor * most);
        if (most > best.mps && (!(best.mps > 0) || sewers.exceed(best.mps, suspending, crowd, i))) {
          Value dilute = sewers.secondLargest(suspending, uniform(i, crowd));
          best.offer(dilute.mps() < most ? dilute.model() : null, i, Math.min(dilute.mps(), most));
        }
      }
      for (DepositionVelocityModel floor : floors) {
        best.offer(floor, i, floor.velocityMps(uniform(i, crowd), bore).value());
      }
    }
    return best;
  }

  /**
   * Keeps the steps of the limit at a concentration, for the size that sets it.
   *
   * @param result how the limit is called
   */
  void steps(double fraction, Equation result, Trace trace) {
    Search best = search(fraction);
    Slurry uniform = best.uniform();
    double c = uniform.volumeFraction();
    trace.step(SIZE, uniform.d50M(), fraction);
    trace.step(COUNTED_SHARE, c, fraction, uniform.d50M());
    double thomas = governs(THOMAS) ? THOMAS.velocityMps(uniform, bore, trace).value() : 0;
    double most = largestMps(uniform.d50M(), trace);
    double oroskarTurian =
        governs(OROSKAR_TURIAN)
            ? OroskarTurian1980Regression.valueMps(
                uniform, Math.min(c, SandLoad.Sizes.InBore.PEAK_FRACTION), bore, trace)
            : Sewers.ABSENT;
    double factor =
        governs(CONCENTRATION)
            ? WilsonConcentration2006.factor(slurry, uniform.d50M(), c, bore, trace)
            : 1;
    double[] values = sewers.values(oroskarTurian, uniform, trace);
    double[] dilute = DoubleStream.of(values).map(mps -> Math.max(0, mps)).toArray();
    double second = Math.max(0, sewers.secondLargest(oroskarTurian, uniform).mps());
    trace.step(
        sewers.relations > 1 ? SECOND : ALONE, second, dilute[0], dilute[1], dilute[2], dilute[3]);
    double floor = 0;
    for (DepositionVelocityModel model : floors) {
      floor = Math.max(floor, model.velocityMps(uniform, bore, trace).value());
    }
    trace.step(result, best.mps, thomas, dilute[0], most, factor, second, floor);
  }

  /** The largest limit at any concentration, which a slug of sand needs [m/s]. */
  double slugMps() {
    double most = 0;
    for (double mps : largestMps) {
      most = Math.max(most, mps);
    }
    return most;
  }

  Slurry uniform(int index, SandLoad.Sizes.InBore.Crowd crowd) {
    return slurry.ofUniformSize(sizes.sizeM(index)).withVolumeFraction(crowd.fraction(index));
  }

  /** Keeps the largest of what is offered. */
  private final class Search {
    private final SandLoad.Sizes.InBore.Crowd crowd;
    private DepositionVelocityModel model;
    private int index;
    private double mps = Double.NEGATIVE_INFINITY;

    Search(SandLoad.Sizes.InBore.Crowd crowd) {
      this.crowd = crowd;
    }

    /** Offers a velocity for a size, by a model or, without one, by that of its largest. */
    void offer(DepositionVelocityModel offered, int indexOfSize, double velocityMps) {
      if (velocityMps > mps) {
        model = offered;
        index = indexOfSize;
        mps = velocityMps;
      }
    }

    Slurry uniform() {
      return DepositionLimit.this.uniform(index, crowd);
    }

    Entry entry() {
      Slurry uniform = uniform();
      DepositionVelocityModel by = model == null ? largestBy(index) : model;
      return new Entry(
          by,
          rule.roleOf(by),
          uniform.d50M(),
          uniform.volumeFraction(),
          new Estimate(mps, by.velocityMps(uniform, bore).excesses()));
    }
  }

  /**
   * A velocity with the correlation that gives it.
   *
   * @param model the correlation
   * @param mps the velocity [m/s]
   */
  record Value(DepositionVelocityModel model, double mps) {}

  /**
   * What is known of dilute sand: {@link May1996}, {@link Macke1982} and {@link AbGhani1993} beside
   * {@link OroskarTurian1980Regression}; the second largest of the four counts.
   *
   * <p>Two readings make them one bound that never falls as sand gets coarser or more:
   *
   * <ul>
   *   <li>Made for sewers, they hold to about 0.2 % of sand. Above it they are kept at that value
   *       and not carried on: with V ∝ C^0.2 to C^0.33 they would pass the largest velocity that
   *       was measured at any concentration when there is 1 to 2 % of sand.
   *   <li>May's and Ab Ghani's velocity falls with coarser grains. No credit is taken: both are
   *       asked for the finest sand that Ab Ghani tested, 0.46 mm.
   * </ul>
   *
   * <p>The second largest, as May's relation and the other two differ by up to 1.7 and no end of
   * the four is to decide alone.
   */
  final class Sewers {
    /** The value of a relation that takes no part. */
    static final double ABSENT = -1;

    private final double mayThresholdMps;
    private final double mayCapacity;
    private final int relations;

    /** Of each size what Macke's relation has of it, once it was asked for. */
    private final double[] mackeResistance = new double[sizes.count()];

    /** The last velocity asked for, with its friction: one size after the other asks for it. */
    private double seenMps = Double.NaN;

    private double frictionSeen;

    /** The last concentration asked for, with what Ab Ghani demands at it. */
    private double diluteSeen = Double.NaN;

    private double abGhaniDemand;

    Sewers() {
      this.mayThresholdMps = May1996.thresholdMps(slurry, AbGhani1993.FINEST_M, bore);
      this.mayCapacity = May1996.capacity(slurry, AbGhani1993.FINEST_M, bore);
      this.relations =
          (int) Stream.of(OROSKAR_TURIAN, MAY, MACKE, AB_GHANI).filter(governing::contains).count();
    }

    /**
     * Whether the second largest for sand of one size is above a velocity, which is told without a
     * root: by what each relation lets that velocity carry. One that cannot decide any more is not
     * asked.
     */
    boolean exceed(
        double velocityMps, double oroskarTurianMps, SandLoad.Sizes.InBore.Crowd crowd, int index) {
      double dilute = Math.min(crowd.fraction(index), May1996.MOST_SAND);
      int needed = relations > 1 ? 2 : 1;
      int above = oroskarTurianMps > velocityMps ? 1 : 0;
      if (governing.contains(MAY) && mayExceeds(velocityMps, dilute)) {
        above++;
      }
      if (above < needed && governing.contains(MACKE) && mackeExceeds(velocityMps, dilute, index)) {
        above++;
      }
      if (above == needed - 1
          && governing.contains(AB_GHANI)
          && abGhaniExceeds(velocityMps, dilute)) {
        above++;
      }
      return above >= needed;
    }

    private boolean mayExceeds(double velocityMps, double dilute) {
      double moving = 1 - mayThresholdMps / velocityMps;
      return !(moving > 0) || mayCapacity * cube(velocityMps) * moving * cube(moving) < dilute;
    }

    private boolean mackeExceeds(double velocityMps, double dilute, int index) {
      if (mackeResistance[index] == 0) {
        Grain grain = new Grain(sizes.sizeM(index), slurry.sandDensityKgM3(), slurry.shape());
        mackeResistance[index] = Macke1982.resistance(slurry, grain, bore);
      }
      double carried =
          cube(friction(velocityMps) * velocityMps)
              * velocityMps
              * velocityMps
              / mackeResistance[index];
      return carried < dilute;
    }

    private boolean abGhaniExceeds(double velocityMps, double dilute) {
      if (dilute != diluteSeen) {
        diluteSeen = dilute;
        abGhaniDemand = AbGhani1993.demand(slurry, AbGhani1993.FINEST_M, bore, dilute);
      }
      double has = velocityMps * Math.pow(friction(velocityMps), AbGhani1993.FRICTION_POWER);
      return dilute > 0 && has < abGhaniDemand;
    }

    private double friction(double velocityMps) {
      if (velocityMps != seenMps) {
        seenMps = velocityMps;
        frictionSeen = VelocityScale.friction(slurry, bore, velocityMps);
      }
      return frictionSeen;
    }

    private static double cube(double x) {
      return x * x * x;
    }

    /** The four for sand of one size, in the order Oroskar and Turian, May, Macke, Ab Ghani. */
    double[] values(double oroskarTurianMps, Slurry uniform, Trace trace) {
      double dilute = Math.min(uniform.volumeFraction(), May1996.MOST_SAND);
      return new double[] {
        oroskarTurianMps,
        governing.contains(MAY)
            ? May1996.valueMps(slurry, AbGhani1993.FINEST_M, dilute, bore, trace)
            : ABSENT,
        governing.contains(MACKE)
            ? Macke1982.valueMps(slurry, uniform.d50Grain(), dilute, bore, trace)
            : ABSENT,
        governing.contains(AB_GHANI)
            ? AbGhani1993.valueMps(slurry, AbGhani1993.FINEST_M, dilute, bore, trace)
            : ABSENT
      };
    }

    /** The second largest for sand of one size, and of one value that value itself. */
    Value secondLargest(double oroskarTurianMps, Slurry uniform) {
      DepositionVelocityModel[] models = {OROSKAR_TURIAN, MAY, MACKE, AB_GHANI};
      double[] values = values(oroskarTurianMps, uniform, Trace.NONE);
      int first = 0;
      for (int i = 1; i < values.length; i++) {
        first = values[i] > values[first] ? i : first;
      }
      int second = -1;
      for (int i = 0; i < values.length; i++) {
        if (i != first && values[i] >= 0 && (second < 0 || values[i] > values[second])) {
          second = i;
        }
      }
      int counts = second < 0 ? first : second;
      return new Value(models[counts], values[counts]);
    }
  }
}
