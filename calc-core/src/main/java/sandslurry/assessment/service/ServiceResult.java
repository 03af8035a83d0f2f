package sandslurry.assessment.service;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.observed.ObservedResult;
import sandslurry.assessment.station.StateResult;
import sandslurry.assessment.station.StateResult.Point;
import sandslurry.assessment.station.StateResult.PumpPoint;
import sandslurry.assessment.stop.PulsationResult;
import sandslurry.assessment.stop.StopResult;
import sandslurry.assessment.stop.SurgeResult;
import sandslurry.correlation.Estimate;
import sandslurry.fact.finding.Severity;
import sandslurry.material.sand.Grain;
import sandslurry.pump.derating.RepresentativeViscosity;
import sandslurry.separation.channel.ChannelFlow;
import sandslurry.separation.channel.GravityConduit;
import sandslurry.separation.channel.GravityFlow;
import sandslurry.separation.channel.LaminarChannel;
import sandslurry.separation.channel.SelfCleansing;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.SandLoad;

/**
 * What came of a line in service beside its design state, in plain SI.
 *
 * @param states every state in which the line was judged
 * @param dutyBand the duty of rotodynamic pumps by every correction for sand and liquid; empty when
 *     none makes a difference
 * @param governing the state that stands worst; empty when none was judged
 * @param pulsation the pulsing of a piston pump whose cylinders are known
 * @param surges the surge in every standard run when the flow is stopped at once
 * @param stop the line stopped full of sand
 * @param days a day of pumping in each state in which the pumps set the flow, the one that it is
 *     judged by first; only a held flow when there is no such state
 * @param screw the screw conveyor
 * @param gravityRun the gravity pipe
 * @param observed what a reading on site says, when there is one
 */
public record ServiceResult(
    List<StateResult> states,
    List<DutyRow> dutyBand,
    Optional<StateResult> governing,
    Optional<PulsationResult> pulsation,
    List<SurgeResult> surges,
    Optional<StopResult> stop,
    List<Day> days,
    Optional<Screw> screw,
    Optional<GravityRun> gravityRun,
    Optional<ObservedResult> observed) {
  /** The state that asks every derating for sand and believes the gravest: the least duty. */
  public static final String LEAST_STATE = "most derated, by any method";

  /** Copies the lists. */
  public ServiceResult {
    states = List.copyOf(states);
    dutyBand = List.copyOf(dutyBand);
    surges = List.copyOf(surges);
    days = List.copyOf(days);
  }

  /**
   * The day of pumping that stands for all.
   *
   * @return the first of them; empty when no daily volume is given
   */
  public Optional<Day> day() {
    return days.stream().findFirst();
  }

  /**
   * The correction by which the pumps drive least.
   *
   * @return the row without a duty, or that of the least flow; empty without a band
   */
  public Optional<DutyRow> leastDuty() {
    return dutyBand.stream().min(Comparator.comparingDouble(row -> row.flowM3ps().orElse(-1)));
  }

  /**
   * A pump in one of the states.
   *
   * @param state the state
   * @param point where pump and line run in it
   * @param pump the pump there
   */
  public record PumpInState(StateResult state, Point point, PumpPoint pump) {}

  /**
   * Every pump in every state.
   *
   * @return pumps, in the order of the states
   */
  public List<PumpInState> pumps() {
    List<PumpInState> all = new ArrayList<>();
    for (StateResult state : states) {
      state
          .point()
          .ifPresent(p -> p.pumps().forEach(pump -> all.add(new PumpInState(state, p, pump))));
    }
    return all;
  }

  /**
   * The duty of rotodynamic pumps, as designed, by one correction for sand and liquid.
   *
   * @param solids the derating for sand; empty without sand
   * @param viscosity the representative viscosity of the liquid
   * @param headRatio head with sand over head without, of the first pump
   * @param viscousRatio head and flow in the liquid over those in water, of the first pump at its
   *     best point
   * @param viscousEfficiencyRatio efficiency in the liquid over that in water, of the first pump
   * @param flowM3ps flow of the duty; empty when there is no stable one [m3/s]
   * @param run the run that stands worst at that flow
   * @param velocityMps its velocity in the largest bore [m/s]
   * @param toPassMps the velocity that it needs to pass; empty when not turbulent [m/s]
   * @param severity how its sand stands
   * @param believed whether the pump is judged by this correction
   */
  // More than ten components: a row of the table of duties, which shows each.
  public record DutyRow(
      Optional<String> solids,
      Optional<RepresentativeViscosity> viscosity,
      double headRatio,
      double viscousRatio,
      double viscousEfficiencyRatio,
      OptionalDouble flowM3ps,
      Optional<String> run,
      OptionalDouble velocityMps,
      OptionalDouble toPassMps,
      Severity severity,
      boolean believed) {}

  /**
   * A day of pumping.
   *
   * @param state the state that it was worked out for
   * @param runningS time that the pumps run [s]
   * @param startsPs the most frequent starts, when a batch is given [1/s]
   * @param energyJ energy drawn [J]
   * @param sandKg sand moved [kg]
   * @param energyPerSandJpKg energy drawn per sand moved; empty without sand [J/kg]
   */
  public record Day(
      String state,
      double runningS,
      OptionalDouble startsPs,
      double energyJ,
      double sandKg,
      OptionalDouble energyPerSandJpKg) {}

  /**
   * The screw conveyor.
   *
   * @param loading filling of the trough that the load asks
   * @param capacityM3ps capacity at the filling for abrasive material [m3/s]
   * @param powerW power at its shaft [W]
   * @param loadM3ps the load that it is judged by [m3/s]
   * @param densityKgM3 mass of the material over its volume [kg/m3]
   * @param typed whether that load was typed
   * @param pens the load of the pens, when there are some and the time of scraping is given
   */
  public record Screw(
      Estimate loading,
      double capacityM3ps,
      double powerW,
      double loadM3ps,
      double densityKgM3,
      boolean typed,
      Optional<PenFeed> pens) {}

  /**
   * What the pens bring to the screw.
   *
   * @param batchM3 volume scraped at once from all pens, at its greatest [m3]
   * @param scrapeS time in which it comes [s]
   * @param densityKgM3 its density [kg/m3]
   */
  public record PenFeed(double batchM3, double scrapeS, double densityKgM3) {
    /**
     * The load.
     *
     * @return batch over time [m3/s]
     */
    public double loadM3ps() {
      return batchM3 / scrapeS;
    }
  }

  /**
   * A pipe or channel by gravity.
   *
   * @param conduit pipe or channel
   * @param mostM3ps the greatest flow rate that comes [m3/s]
   * @param hours every time at which what flows fits in it
   * @param window the flow rates that pass with what flows at the gravest time; empty when none
   *     does
   * @param slopeToPass least slope that passes, where it does not; empty also when no slope does
   * @param sizeToPass nearest bore or width that passes, where it does not; empty also when none of
   *     those tried does [m]
   */
  public record GravityRun(
      GravityConduit conduit,
      double mostM3ps,
      List<GravityHour> hours,
      Optional<Window> window,
      OptionalDouble slopeToPass,
      OptionalDouble sizeToPass) {
    /**
     * Least hour over the flow that the pipe must carry, where nobody gave it (common practice, no
     * source).
     */
    public static final double LEAST_SHARE = 0.3;

    /** Share of its depth up to which it is designed (common practice, no source). */
    public static final double DEEP = 0.75;

    /** From so much solids without sand on manure is undiluted (common practice, no source). */
    public static final double UNDILUTED_SOLIDS = 0.06;

    /** Copies the list. */
    public GravityRun {
      hours = List.copyOf(hours);
    }

    /**
     * Flow rates that pass.
     *
     * @param carriesFromM3ps the least that carries its sand; 0 when every flow rate does [m3/s]
     * @param holdsM3ps the most at the depth up to which it is designed [m3/s]
     */
    public record Window(double carriesFromM3ps, double holdsM3ps) {}

    /**
     * The hour by which the sand is judged.
     *
     * @return the gravest; empty when nothing fits
     */
    public Optional<GravityHour> worst() {
      return hours.stream().min(GravityHour.GRAVEST);
    }

    /**
     * Whether it runs over.
     *
     * @return true when the greatest flow rate does not fit without pressure or spilling
     */
    public boolean runsOver() {
      return mostM3ps > conduit.greatestFlowM3ps();
    }

    /**
     * Depth at the greatest flow rate that fits.
     *
     * @return share of bore or walls; 0 when nothing fits
     */
    public double deepest() {
      return hours.stream().mapToDouble(hour -> hour.flow().depthShare()).max().orElse(0);
    }

    /**
     * Whether all is as it should be.
     *
     * @return true when it holds what comes and every time passes
     */
    public boolean passes() {
      return !runsOver()
          && deepest() <= DEEP
          && hours.stream().allMatch(hour -> hour.severity() == Severity.PASS);
    }

    /**
     * Whether slope or size may mend it.
     *
     * @return false when the liquid is too thick
     */
    public boolean mayBeMended() {
      return worst().map(hour -> hour.outcome().mended).orElse(true);
    }
  }

  /**
   * A pipe or channel by gravity at one time, at the temperature that asks most of it.
   *
   * @param when the time
   * @param flow the flow
   * @param reynolds its Reynolds number
   * @param sandFraction highest volume fraction of sand
   * @param sandKnown whether that is known; else the fraction that asks most of any pipe is taken
   * @param undiluted whether the liquid is undiluted manure
   * @param coarsest the coarsest grains
   * @param cleansing whether the stress on the wall moves them
   * @param stressWithMarginPa stress needed with its margin [Pa]
   * @param sand what carries the sand; empty without sand
   */
  public record GravityHour(
      String when,
      GravityFlow flow,
      double reynolds,
      double sandFraction,
      boolean sandKnown,
      boolean undiluted,
      Grain coarsest,
      SelfCleansing cleansing,
      double stressWithMarginPa,
      Optional<GravitySand> sand) {
    /** The gravest first. */
    public static final Comparator<GravityHour> GRAVEST =
        Comparator.comparing(GravityHour::outcome).thenComparing(GravityHour::margin);

    /** What comes of the sand, the gravest first. */
    public enum Outcome {
      /** No eddies lift the sand. */
      NOT_TURBULENT(Severity.FAIL, false),
      /** The velocity is below the deposition velocity. */
      SAND_STAYS(Severity.FAIL, true),
      /** The stress on the wall does not move the coarsest grains. */
      COARSEST_STAY(Severity.FAIL, true),
      /** Undiluted manure, and the pipe has no margin. */
      UNDILUTED(Severity.FAIL, false),
      /** The sand moves, with too little margin. */
      LACKS_MARGIN(Severity.CAUTION, true),
      /** It moves with margin by relations that were made for less sand. */
      TOO_MUCH_SAND(Severity.CAUTION, true),
      /** It moves with margin in a flow that is neither laminar nor fully turbulent. */
      TRANSITIONAL(Severity.CAUTION, false),
      /** Undiluted manure in a pipe steep and smooth enough by computation. */
      UNDILUTED_WITH_MARGIN(Severity.CAUTION, false),
      /** The sand moves, with its margin. */
      CARRIED(Severity.PASS, true),
      /** There is no sand. */
      NO_SAND(Severity.PASS, true);

      private final Severity severity;

      /** Whether slope or size may mend it. */
      private final boolean mended;

      Outcome(Severity severity, boolean mended) {
        this.severity = severity;
        this.mended = mended;
      }
    }

    /**
     * How grave that is.
     *
     * @return the severity; without sand a caution where Manning's formula does not hold
     */
    public Severity severity() {
      return sand.isEmpty() && !turbulent() ? Severity.CAUTION : outcome().severity;
    }

    /**
     * What comes of the sand.
     *
     * @return the outcome
     */
    public Outcome outcome() {
      if (sand.isEmpty()) {
        return Outcome.NO_SAND;
      }
      double velocity = flow.velocityMps();
      boolean margin =
          velocity >= sand.get().requiredMps() && cleansing.stressPa() >= stressWithMarginPa;
      if (!turbulent()) {
        // Manning's friction is then above that of a smooth wall: the flow is no slower than it
        // says.
        return reynolds >= LaminarChannel.LAMINAR_BELOW && margin && !undiluted
            ? Outcome.TRANSITIONAL
            : Outcome.NOT_TURBULENT;
      }
      if (velocity < sand.get().limitMps()) {
        return Outcome.SAND_STAYS;
      }
      if (!cleansing.kept()) {
        return Outcome.COARSEST_STAY;
      }
      boolean sure =
          sandFraction <= SandLoad.SewerLimit.MOST_SAND
              || velocity >= sand.get().fullPipe().velocityToPassMps();
      if (undiluted) {
        return margin && sure ? Outcome.UNDILUTED_WITH_MARGIN : Outcome.UNDILUTED;
      }
      return !margin ? Outcome.LACKS_MARGIN : sure ? Outcome.CARRIED : Outcome.TOO_MUCH_SAND;
    }

    /**
     * Whether Manning's formula holds.
     *
     * @return true in turbulent flow
     */
    public boolean turbulent() {
      return reynolds >= ChannelFlow.TURBULENT.low();
    }

    private double margin() {
      return sand.map(s -> flow.velocityMps() / s.requiredMps()).orElse(Double.MAX_VALUE);
    }
  }

  /**
   * What velocity carries the sand of a gravity pipe.
   *
   * @param sewers the limits of deposition by the relations for sewers, in the wetted section;
   *     empty for a channel
   * @param fullPipe the judgement in a full pipe of the widest hydraulic diameter, which no depth
   *     asks more than
   * @param limitMps the limit: the largest of the relations, at most that of the full pipe [m/s]
   * @param requiredMps the same with its margin [m/s]
   */
  public record GravitySand(
      Optional<SandLoad.SewerLimit> sewers,
      DepositionJudgement fullPipe,
      double limitMps,
      double requiredMps) {}
}
