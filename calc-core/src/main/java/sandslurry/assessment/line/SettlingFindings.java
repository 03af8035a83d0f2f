package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Bound;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;

/**
 * Whether sand settles in the runs of a line: one finding a run, of its worst flow rate and
 * temperature.
 */
final class SettlingFindings extends FindingWriter {
  /** Less of the sand on the floor than this is none. */
  private static final double TRACE = 1e-5;

  private final Design design;
  private final Materials materials;
  private final LineModel model;
  private final List<State> states;
  private final LineWarmths warmths;
  private final boolean whole;

  /** The line at the flow rates judged, with the liquid at another temperature. */
  private record Warmth(double temperatureK, LineModel model, List<State> states) {}

  SettlingFindings(
      Design design, Materials materials, LineWarmths warmths, List<State> states, boolean whole) {
    super(design.units());
    this.design = design;
    this.materials = materials;
    this.model = warmths.asDesigned();
    this.states = states;
    this.warmths = warmths;
    this.whole = whole;
  }

  List<Finding> all() {
    List<Warmth> asked = warmths.asked().stream().map(this::at).toList();
    List<Warmth> around = whole ? warmths.around().stream().map(this::at).toList() : List.of();
    for (int i = 0; i < model.route().runs().size(); i++) {
      run(i, asked, around);
    }
    return findings;
  }

  private Warmth at(LineWarmths.At warmth) {
    LineModel line = warmth.line();
    double temperature = warmth.temperatureK();
    if (line == model) {
      return new Warmth(temperature, line, states);
    }
    List<State> same = new ArrayList<>();
    for (State state : states) {
      same.add(
          new State(
              state.flowCase(),
              state.flowM3ps(),
              state.sandFraction(),
              line.runs(state.flowM3ps(), state.sandFraction())));
    }
    return new Warmth(temperature, line, same);
  }

  /** The case in which a run stands worst; of equals, the one with the least margin. */
  private static State worst(List<State> states, int run) {
    return states.stream()
        .max(
            Comparator.comparing((State s) -> s.runs().get(run).severity())
                .thenComparingDouble(s -> -s.runs().get(run).margin()))
        .orElseThrow();
  }

  private static RunPoint worstPoint(Warmth warmth, int run) {
    return worst(warmth.states(), run).runs().get(run);
  }

  private void run(int index, List<Warmth> asked, List<Warmth> around) {
    Warmth warmth =
        asked.stream()
            .max(
                Comparator.comparing((Warmth w) -> worstPoint(w, index).severity())
                    .thenComparingDouble(w -> -worstPoint(w, index).margin()))
            .orElseThrow();
    State state = worst(warmth.states(), index);
    RunPoint point = state.runs().get(index);
    String name = point.run().name();
    if (point.deposition().isEmpty()) {
      add(
          Severity.PASS,
          Topic.PLUGGING,
          name,
          "There is no sand to settle.",
          "The mixture holds no grains coarser than "
              + show(Kind.GRAIN, sandslurry.material.sand.Gradation.FINES_BOUNDARY_M)
              + ".",
          "");
      return;
    }
    DepositionJudgement judged = point.deposition().get();
    String at =
        "At the "
            + state.flowCase().words()
            + " flow rate of "
            + show(Kind.FLOW, state.flowM3ps())
            + (asked.size() > 1
                ? ", with the liquid at " + show(Kind.TEMPERATURE, warmth.temperatureK()) + ","
                : "")
            + " the velocity is "
            + show(Kind.VELOCITY, point.leastVelocityMps());
    if (point.regime() != Regime.TURBULENT) {
      notTurbulent(index, state, asked.size() > 1 ? Optional.of(warmth) : Optional.empty());
      return;
    }
    String numbers =
        at
            + "; "
            + limit(judged)
            + ", required "
            + show(Kind.VELOCITY, judged.requiredMps())
            + "."
            + outside(judged)
            + slug(judged);
    switch (judged.outcome()) {
      case BELOW_LIMIT ->
          add(
              point.severity(),
              Topic.PLUGGING,
              name,
              judged.lifting()
                  ? "Coarse sand is not lifted in this rising pipe: the liquid does not outrun it."
                  : "Sand settles in this run: the velocity is below the deposition velocity.",
              numbers,
              cure(index, state));
      case WITHIN_MARGIN ->
          add(
              Severity.CAUTION,
              Topic.PLUGGING,
              name,
              "The velocity is above the deposition velocity, but by less than the margin.",
              numbers,
              cure(index, state));
      case MODELS_DISAGREE ->
          add(
              Severity.CAUTION,
              Topic.PLUGGING,
              name,
              "A correlation that is set to count requires more velocity than there is.",
              numbers
                  + judged
                      .largestCounted()
                      .map(
                          entry ->
                              " "
                                  + entry.model().name()
                                  + " requires "
                                  + show(Kind.VELOCITY, judged.velocityToPassMps())
                                  + ".")
                      .orElse(""),
              cure(index, state));
      default -> clear(index, state, numbers, around);
    }
  }

  /** The velocity is enough; whether it is so when the liquid is colder or warmer is said too. */
  private void clear(int index, State state, String numbers, List<Warmth> around) {
    Optional<Warmth> worse =
        around.stream()
            .filter(w -> worstPoint(w, index).severity() != Severity.PASS)
            .max(Comparator.comparing(w -> worstPoint(w, index).severity()));
    String moves =
        around.size() < 2
            ? ""
            : " From "
                + show(Kind.TEMPERATURE, around.get(0).temperatureK())
                + " to "
                + show(Kind.TEMPERATURE, around.get(1).temperatureK())
                + " the required velocity goes from "
                + required(around.get(0), index)
                + " to "
                + required(around.get(1), index)
                + ".";
    add(
        worse.isPresent() ? Severity.CAUTION : Severity.PASS,
        Topic.PLUGGING,
        state.runs().get(index).run().name(),
        worse.isPresent()
            ? "Sand stays in motion at the temperature given, but not surely at another."
            : "Sand stays in motion at every flow rate judged.",
        numbers
            + moves
            + worse
                .map(
                    w ->
                        " At "
                            + show(Kind.TEMPERATURE, w.temperatureK())
                            + " the verdict on this run is "
                            + worstPoint(w, index).severity()
                            + ".")
                .orElse(""),
        worse.isPresent()
            ? "Give the coldest and the warmest temperature of the liquid, or run faster."
            : "");
  }

  private String required(Warmth warmth, int index) {
    RunPoint point = worstPoint(warmth, index);
    return point.regime() == Regime.TURBULENT
        ? show(Kind.VELOCITY, point.deposition().orElseThrow().requiredMps())
        : "none, as the flow is " + point.regime().words();
  }

  private String limit(DepositionJudgement judged) {
    return judged.lifting()
        ? "the coarse grains fall at " + show(Kind.VELOCITY, judged.riserMps()) + " along the pipe"
        : "the deposition velocity is "
            + show(Kind.VELOCITY, judged.limitMps())
            + " ("
            + judged.limiting().model().name()
            + ", grains of "
            + show(Kind.GRAIN, judged.limiting().sizeM())
            + ", "
            + show(Kind.PERCENT, judged.highestFraction())
            + " sand at the most)";
  }

  /** What lies outside the range of the formula that sets the limit, and what it costs. */
  private String outside(DepositionJudgement judged) {
    List<Bound.Excess> excesses = judged.limiting().estimate().excesses();
    if (judged.lifting() || excesses.isEmpty()) {
      return "";
    }
    return " Outside its published range: "
        + excesses.stream().map(e -> e.describe(units)).collect(Collectors.joining(", "))
        + (judged.widening() > 0
            ? "; the margin is "
                + show(Kind.PERCENT, judged.widening())
                + " wider for thick liquid or a wide bore"
            : "")
        + ".";
  }

  private String slug(DepositionJudgement judged) {
    return !judged.lifting() && judged.slugSettles()
        ? " A slug of sand settles below " + show(Kind.VELOCITY, judged.slugMps()) + "."
        : "";
  }

  /** Laminar and transitional flow: eddies do not carry the sand, so something else must. */
  private void notTurbulent(int index, State state, Optional<Warmth> warmth) {
    RunPoint point = state.runs().get(index);
    SandCarriage carriage = point.carriage().orElseThrow();
    Found found =
        found(withoutEddies(point, carriage), point.severity(), Topic.PLUGGING, point.run().name())
            .with("case", state.flowCase().words())
            .with("flow", Kind.FLOW, state.flowM3ps())
            .with("velocity", Kind.VELOCITY, point.leastVelocityMps());
    warmth.ifPresent(w -> found.with("temperature", Kind.TEMPERATURE, w.temperatureK()));
    found.why(warmth.isPresent() ? "at-temperature" : "at");
    carriage(found, carriage);
    if (point.isNewtonian() || point.regime() == Regime.TRANSITIONAL) {
      ifTurbulent(found, point.deposition().orElseThrow());
    }
    if (point.yieldExtrapolated()) {
      found.why("yield-not-seen");
    }
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
        .why(carriage.velocityMps() < carriage.laminarBelowMps() ? "laminar" : "neither");
    if (carriage.yieldStressPa() > 0) {
      found
          .with("yield", Kind.STRESS, carriage.yieldStressPa())
          .with("yieldNeeded", Kind.STRESS, carriage.neededYieldStressPa())
          .with("grain", Kind.GRAIN, carriage.coarsestM())
          .with("plugShare", Kind.PERCENT, 1 - carriage.outsidePlugShare())
          .why(
              carriage.yieldStressPa() >= carriage.neededYieldStressPa()
                  ? "yield-holds"
                  : "yield-holds-not");
    }
    found
        .with("floor", Kind.PERCENT, carriage.floorShare())
        .with("tolerated", Kind.PERCENT, carriage.toleratedShare())
        .why(carriage.floorShare() < TRACE ? "floor-trace" : "floor");
    if (carriage.floorShare() >= TRACE) {
      found
          .with("bedShare", Kind.PERCENT, carriage.bedShare())
          .with("slides", Kind.PERCENT, 1 / carriage.slideDemand())
          .why(carriage.bedSlides() ? "bed-slides" : "bed-stays");
    }
    if (carriage.riseDemand() > 1 / SandCarriage.RISE_MARGIN) {
      found
          .with("sinks", Kind.VELOCITY, carriage.riseDemand() * carriage.velocityMps())
          .why("sinks-in-rise");
    }
  }

  private static void ifTurbulent(Found found, DepositionJudgement judged) {
    if (judged.lifting()) {
      found.with("falls", Kind.VELOCITY, judged.riserMps()).why("turbulent-rise");
      return;
    }
    found
        .with("limit", Kind.VELOCITY, judged.limitMps())
        .with("model", judged.limiting().model().name())
        .with("limitGrain", Kind.GRAIN, judged.limiting().sizeM())
        .with("mostSand", Kind.PERCENT, judged.highestFraction())
        .why("turbulent-limit");
  }

  private void notTurbulentCure(Found found, int index, SandCarriage carriage) {
    OptionalDouble flow = warmths.leastSafeFlowM3ps(model.route().runs().get(index));
    if (flow.isPresent()) {
      found.with("safe", Kind.FLOW, flow.getAsDouble()).cure("run-turbulent");
    } else {
      found.cure("no-turbulent");
    }
    if (materials.carrier().totalSolids().orElse(0) > 0) {
      found.cure(design.dilution().isPresent() ? "dilute-by-curve" : "dilute");
    }
    if (carriage.support() == SandCarriage.Support.SLIDING_BED) {
      found.cure("keep-sliding");
    } else if (carriage.support() == SandCarriage.Support.SLOW_TO_SETTLE) {
      found.cure("keep-slow");
    } else if (carriage.velocityMps() < carriage.laminarBelowMps()) {
      found.cure("thicker");
    }
  }

  /** The flow, and the pipe, that would pass. */
  private String cure(int index, State state) {
    RunSpec run = model.route().runs().get(index);
    RunPoint point = state.runs().get(index);
    OptionalDouble flow = warmths.leastSafeFlowM3ps(run);
    StringBuilder text = new StringBuilder();
    if (flow.isPresent()) {
      text.append("Never run below ").append(units.showAtLeast(Kind.FLOW, flow.getAsDouble()));
    } else {
      text.append("No flow through this pipe is enough");
    }
    if (run.pipe().isPresent()) {
      text.append(smallerPipe(run, run.pipe().get(), state));
    } else {
      text.append(smallerBore(point, state));
    }
    return text.append('.').toString();
  }

  private String smallerPipe(RunSpec run, StandardPipe pipe, State state) {
    List<StandardPipe> family = PipeCatalogue.sameSystemAndClass(pipe);
    for (int i = family.size() - 1; i >= 0; i--) {
      StandardPipe other = family.get(i);
      if (other.largestBoreM() < pipe.largestBoreM()) {
        RunPoint point = model.run(run.inPipe(other), state.flowM3ps(), state.sandFraction());
        if (point.severity() == Severity.PASS) {
          return "; or fit "
              + other.words()
              + ", which passes at this flow with "
              + show(Kind.VELOCITY, point.leastVelocityMps())
              + " against "
              + show(Kind.VELOCITY, point.deposition().orElseThrow().velocityToPassMps())
              + " ("
              + "its head loss is higher: check the pump, and the flow at its new duty)";
        }
      }
    }
    return "; no smaller size of " + pipe.words() + " passes at this flow either";
  }

  private String smallerBore(RunPoint point, State state) {
    double bore = point.largest().diameterM();
    try {
      double enough =
          Roots.between(
              "bore that passes",
              d -> {
                RunPoint trial =
                    model.run(point.run().inBore(d), state.flowM3ps(), state.sandFraction());
                return trial.leastVelocityMps()
                    - trial.deposition().orElseThrow().velocityToPassMps();
              },
              bore / 5,
              bore);
      return "; or take a bore of "
          + show(Kind.BORE, enough)
          + " or less, which is fast enough at this flow";
    } catch (UnsolvedException none) {
      return "";
    }
  }
}
