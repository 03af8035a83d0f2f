package sandslurry.assessment.line;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.WarmStates.Warmth;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Bound;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.material.sand.Gradation;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Outcome;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;

/**
 * Whether sand settles in the runs of a line: one finding a run, of its worst flow rate and
 * temperature.
 */
record SettlingFindings(
    Materials materials, LineWarmths warmths, WarmStates states, Findings findings)
    implements FindingWriter {
  /** Less of the sand on the floor than this is none. */
  private static final double TRACE = 1e-5;

  /** Below this share nothing is said of how temperature changes the required velocity. */
  private static final double NOTED_CHANGE = 0.01;

  void all() {
    for (int i = 0; i < warmths.asDesigned().route().runs().size(); i++) {
      run(i);
    }
  }

  private void run(int index) {
    Warmth worst = WarmStates.worst(states.given(), index);
    Optional<Warmth> warmth = states.given().size() > 1 ? Optional.of(worst) : Optional.empty();
    State state = worst.worst(index);
    RunPoint point = state.runs().get(index);
    if (point.deposition().isEmpty()) {
      found("no-sand", Severity.PASS, point.pipe().spec().name())
          .with("fines", Kind.GRAIN, Gradation.FINES_BOUNDARY_M)
          .why("no-sand")
          .add();
    } else if (point.regime() != Regime.TURBULENT) {
      notTurbulent(index, state, warmth);
    } else if (point.deposition().get().outcome() == Outcome.CLEAR) {
      clear(index, state, warmth);
    } else {
      tooSlow(index, state, warmth);
    }
  }

  /** Turbulent flow below what is required. */
  private void tooSlow(int index, State state, Optional<Warmth> warmth) {
    RunPoint point = state.runs().get(index);
    String name = point.pipe().spec().name();
    DepositionJudgement judged = point.deposition().orElseThrow();
    Found found =
        switch (judged.outcome()) {
          case BELOW_LIMIT ->
              judged.lifting()
                  ? found("not-lifted", point.severity(), name)
                  : found("below-limit", point.severity(), name);
          case WITHIN_MARGIN -> found("within-margin", Severity.CAUTION, name);
          default -> found("correlations-disagree", Severity.CAUTION, name);
        };
    turbulent(found, state, point, warmth);
    if (judged.outcome() == Outcome.MODELS_DISAGREE) {
      judged
          .largestCounted()
          .ifPresent(
              entry ->
                  found
                      .with("counted", entry.model().name())
                      .with("countedRequires", Kind.VELOCITY, judged.velocityToPassMps())
                      .why("counted"));
    }
    cure(found, index, state);
    found.add();
  }

  /** The velocity is enough, perhaps not so when the liquid is colder or warmer. */
  private void clear(int index, State state, Optional<Warmth> warmth) {
    List<Warmth> around = states.around();
    Optional<Warmth> worse =
        Optional.of(around)
            .filter(any -> !any.isEmpty())
            .map(any -> WarmStates.worst(any, index))
            .filter(w -> w.worstPoint(index).severity() != Severity.PASS);
    RunPoint point = state.runs().get(index);
    String name = point.pipe().spec().name();
    Found found =
        worse.isPresent()
            ? found("clear-at-temperature", Severity.CAUTION, name)
            : found("clear", Severity.PASS, name);
    worse.ifPresent(w -> worse(found, w, index));
    turbulent(found, state, point, warmth);
    if (around.size() >= 2) {
      overTemperatures(found, around.get(0), around.get(1), index);
    }
    found.add();
  }

  /** What is short when the liquid is colder or warmer. */
  private static void worse(Found found, Warmth warmth, int index) {
    RunPoint point = warmth.worstPoint(index);
    found
        .with("worseTemperature", Kind.TEMPERATURE, warmth.temperatureK())
        .with("worseVerdict", point.severity().toString())
        .cure("give-temperatures");
    if (point.regime() == Regime.TURBULENT) {
      found
          .with(
              "worseRequired", Kind.VELOCITY, point.deposition().orElseThrow().velocityToPassMps())
          .why("worse-at");
    } else {
      found.with("worseRegime", point.regime().words()).why("worse-not-turbulent");
    }
  }

  private static void overTemperatures(Found found, Warmth cold, Warmth warm, int index) {
    found
        .with("coldest", Kind.TEMPERATURE, cold.temperatureK())
        .with("warmest", Kind.TEMPERATURE, warm.temperatureK());
    boolean whenCold = required(found, "requiredCold", "regimeCold", cold, index);
    boolean whenWarm = required(found, "requiredWarm", "regimeWarm", warm, index);
    if (whenCold && whenWarm) {
      double change = requiredMps(cold, index) / requiredMps(warm, index) - 1;
      if (Math.abs(change) < NOTED_CHANGE) {
        return;
      }
    }
    found.why(
        whenCold
            ? whenWarm ? "required-over" : "required-cold"
            : whenWarm ? "required-warm" : "required-neither");
  }

  /** Gives the required velocity at a temperature; false where there is none, with its regime. */
  private static boolean required(
      Found found, String velocity, String regime, Warmth warmth, int index) {
    RunPoint point = warmth.worstPoint(index);
    if (point.regime() != Regime.TURBULENT) {
      found.with(regime, point.regime().words());
      return false;
    }
    found.with(velocity, Kind.VELOCITY, requiredMps(warmth, index));
    return true;
  }

  private static double requiredMps(Warmth warmth, int index) {
    return warmth.worstPoint(index).deposition().orElseThrow().requiredMps();
  }

  /** Gives the flow rate judged and the velocity at it. */
  private static void at(Found found, State state, RunPoint point, Optional<Warmth> warmth) {
    found
        .with("case", state.flowCase().words())
        .with("flow", Kind.FLOW, state.flowM3ps())
        .with("velocity", Kind.VELOCITY, point.leastVelocityMps());
    warmth.ifPresent(w -> found.with("temperature", Kind.TEMPERATURE, w.temperatureK()));
  }

  /** The numbers on which the judgement of turbulent flow rests. */
  private static void turbulent(Found found, State state, RunPoint point, Optional<Warmth> warmth) {
    DepositionJudgement judged = point.deposition().orElseThrow();
    at(found, state, point, warmth);
    limit(found, judged);
    found.with("required", Kind.VELOCITY, judged.requiredMps());
    if (judged.lifting()) {
      found.why(warmth.isPresent() ? "rise-at-temperature" : "rise");
      return;
    }
    found.why(warmth.isPresent() ? "limit-at-temperature" : "limit");
    List<Bound.Excess> excesses = judged.limiting().estimate().excesses();
    found
        .when(
            !excesses.isEmpty(),
            f ->
                f.with(
                        "excesses",
                        units ->
                            excesses.stream()
                                .map(e -> e.describe(units))
                                .collect(Collectors.joining(", ")))
                    .with("wider", Kind.PERCENT, judged.widening())
                    .why(judged.widening() > 0 ? "outside-wider" : "outside"))
        .when(
            judged.slugSettles(), f -> f.with("slug", Kind.VELOCITY, judged.slugMps()).why("slug"));
  }

  private static void limit(Found found, DepositionJudgement judged) {
    if (judged.lifting()) {
      found.with("falls", Kind.VELOCITY, judged.riserMps());
      return;
    }
    found
        .with("limit", Kind.VELOCITY, judged.limitMps())
        .with("model", judged.limiting().model().name())
        .with("limitGrain", Kind.GRAIN, judged.limiting().sizeM())
        .with("mostSand", Kind.PERCENT, judged.highestFraction());
  }

  /** Laminar and transitional flow: eddies do not carry the sand, so something else must. */
  private void notTurbulent(int index, State state, Optional<Warmth> warmth) {
    RunPoint point = state.runs().get(index);
    SandCarriage carriage = point.carriage().orElseThrow();
    Found found =
        found(withoutEddies(point, carriage), point.severity(), point.pipe().spec().name());
    at(found, state, point, warmth);
    found.why(warmth.isPresent() ? "at-temperature" : "at");
    carriage(found, carriage);
    if (point.mixture().rheology().isNewtonian() || point.regime() == Regime.TRANSITIONAL) {
      DepositionJudgement judged = point.deposition().orElseThrow();
      limit(found, judged);
      found.why(judged.lifting() ? "turbulent-rise" : "turbulent-limit");
    }
    found.why(point.yieldExtrapolated(), "yield-not-seen");
    if (point.severity() != Severity.PASS) {
      notTurbulentCure(found, index, carriage);
    }
    found.add();
  }

  private static String withoutEddies(RunPoint point, SandCarriage carriage) {
    if (point.regime() == Regime.TRANSITIONAL) {
      return point.severity() == Severity.FAIL ? "transition-settles" : "transition";
    }
    return switch (carriage.support()) {
      case CARRIED_BY_YIELD_STRESS ->
          carriage.outsidePlugShare() <= carriage.toleratedShare() ? "plug" : "plug-and-slow";
      case SLIDING_BED -> "sliding-bed";
      case SLOW_TO_SETTLE -> "slow-to-settle";
      default -> carriage.riseDemand() >= 1 ? "sinks-back" : "deposits";
    };
  }

  /** The numbers on which the judgement rests. */
  private static void carriage(Found found, SandCarriage carriage) {
    found
        .with("laminar", Kind.VELOCITY, carriage.laminarBelowMps())
        .with("turbulent", Kind.VELOCITY, carriage.turbulentAboveMps())
        .why(carriage.velocityMps() < carriage.laminarBelowMps() ? "laminar" : "neither")
        .when(
            carriage.yieldStressPa() > 0,
            f ->
                f.with("yield", Kind.STRESS, carriage.yieldStressPa())
                    .with("yieldNeeded", Kind.STRESS, carriage.neededYieldStressPa())
                    .with("grain", Kind.GRAIN, carriage.coarsestM())
                    .with("plugShare", Kind.PERCENT, 1 - carriage.outsidePlugShare())
                    .why(
                        carriage.yieldStressPa() >= carriage.neededYieldStressPa()
                            ? "yield-holds"
                            : "yield-holds-not"))
        .with("floor", Kind.PERCENT, carriage.floorShare())
        .with("tolerated", Kind.PERCENT, carriage.toleratedShare())
        .why(carriage.floorShare() < TRACE ? "floor-trace" : "floor")
        .when(
            carriage.floorShare() >= TRACE,
            f ->
                f.with("bedShare", Kind.PERCENT, carriage.bedShare())
                    .with("slides", Kind.PERCENT, 1 / carriage.slideDemand())
                    .why(carriage.bedSlides() ? "bed-slides" : "bed-stays"))
        .when(
            carriage.riseDemand() > 1 / SandCarriage.RISE_MARGIN,
            f ->
                f.with("sinks", Kind.VELOCITY, carriage.riseDemand() * carriage.velocityMps())
                    .why("sinks-in-rise"));
  }

  private void notTurbulentCure(Found found, int index, SandCarriage carriage) {
    RunSpec run = warmths.asDesigned().route().runs().get(index);
    OptionalDouble flow = warmths.leastSafeFlowM3ps(run);
    boolean turbulent =
        flow.isPresent()
            && PipeRun.of(run).mean().velocityMps(flow.getAsDouble())
                <= materials.design().criteria().wearVelocityMps();
    if (turbulent) {
      found.with("safe", Kind.FLOW, flow.getAsDouble()).cure("run-turbulent");
    } else {
      found.cure("no-turbulent");
    }
    boolean curve = materials.design().oneLine().dilution().isPresent();
    found.cure(
        materials.carrier().totalSolids().orElse(0) > 0,
        turbulent
            ? curve ? "or-dilute-by-curve" : "or-dilute"
            : curve ? "dilute-by-curve" : "dilute");
    if (carriage.support() == SandCarriage.Support.SLIDING_BED) {
      found.cure("keep-sliding");
    } else if (carriage.support() == SandCarriage.Support.SLOW_TO_SETTLE) {
      found.cure("keep-slow");
    } else if (carriage.velocityMps() < carriage.laminarBelowMps()) {
      found.cure("thicker");
    }
  }

  /** The flow, and the pipe, that would pass. */
  private void cure(Found found, int index, State state) {
    RunSpec run = warmths.asDesigned().route().runs().get(index);
    OptionalDouble flow = warmths.leastSafeFlowM3ps(run);
    if (flow.isPresent()) {
      found.with("safe", Kind.FLOW, flow.getAsDouble()).cure("never-below");
    } else {
      found.cure("no-flow");
    }
    if (run.pipe().isPresent()) {
      smallerPipe(found, run, run.pipe().get(), state);
    } else {
      smallerBore(found, state.runs().get(index), state);
    }
  }

  private void smallerPipe(Found found, RunSpec run, StandardPipe pipe, State state) {
    List<StandardPipe> family = PipeCatalogue.sameSystemAndClass(pipe);
    for (int i = family.size() - 1; i >= 0; i--) {
      StandardPipe other = family.get(i);
      if (other.largestBoreM() < pipe.largestBoreM()) {
        RunPoint point =
            warmths.asDesigned().run(run.inPipe(other), state.flowM3ps(), state.sandFraction());
        if (point.severity() == Severity.PASS
            && point.leastVelocityMps() <= materials.design().criteria().wearVelocityMps()) {
          double enough = point.deposition().orElseThrow().velocityToPassMps();
          found
              .with("smaller", other.words())
              .with("smallerVelocity", Kind.VELOCITY, point.leastVelocityMps())
              .with("smallerRequires", Kind.VELOCITY, enough)
              .cure("fit-smaller");
          return;
        }
      }
    }
    found.with("pipe", pipe.words()).cure("no-smaller");
  }

  private void smallerBore(Found found, RunPoint point, State state) {
    double bore = point.pipe().largest().diameterM();
    try {
      double enough =
          Roots.between(
              "bore that passes",
              d -> {
                RunPoint trial =
                    warmths
                        .asDesigned()
                        .run(point.pipe().spec().inBore(d), state.flowM3ps(), state.sandFraction());
                return trial.leastVelocityMps()
                    - trial.deposition().orElseThrow().velocityToPassMps();
              },
              bore / 5,
              bore);
      found.with("enough", Kind.BORE, enough).cure("smaller-bore");
    } catch (UnsolvedException none) {
      // No bore down to a fifth of this one is enough: there is none to name.
    }
  }
}
