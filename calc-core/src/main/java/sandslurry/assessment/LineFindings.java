package sandslurry.assessment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import sandslurry.assessment.Finding.Topic;
import sandslurry.assessment.LineEvaluation.State;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.MixtureSpec;
import sandslurry.design.RouteSpec.RunSpec;
import sandslurry.material.Proportions;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.transport.bed.SandCarriage;
import sandslurry.transport.deposition.DepositionJudgement;
import sandslurry.transport.deposition.DepositionJudgement.Entry;
import sandslurry.transport.deposition.DepositionVelocities.Role;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the line: plugging, wear, pressure. */
final class LineFindings extends FindingWriter {
  /** So many of the largest grains should fit across a bore (common practice, no source). */
  private static final double BORES_A_GRAIN = 3;

  /** Share of the sand that is coarser than what is called its largest grains. */
  private static final double OVERSIZE_SHARE = 0.01;

  private final Design design;
  private final Materials materials;
  private final LineModel model;
  private final List<State> states;
  private final LineResult result;

  LineFindings(
      Design design, Materials materials, LineModel model, List<State> states, LineResult result) {
    super(design.units());
    this.design = design;
    this.materials = materials;
    this.model = model;
    this.states = states;
    this.result = result;
  }

  List<Finding> all() {
    tooThick();
    if (states.isEmpty()) {
      return findings;
    }
    for (int i = 0; i < model.route().runs().size(); i++) {
      plugging(i);
      largeGrains(i);
      wear(i);
      pressure(i);
    }
    gravity();
    oneFlow();
    return findings;
  }

  /** A line that passes at its design flow may plug at the flow at which it really runs. */
  private void oneFlow() {
    double least = Measure.FLOW.si(design.flow().orElseThrow().minimum());
    if (least == Measure.FLOW.si(design.flow().orElseThrow().design())) {
      add(
          Severity.NOTE,
          Topic.DATA,
          "flow",
          "No flow below the design flow was judged: a line settles sand at its least flow first.",
          "Minimum and design flow are both " + show(Kind.FLOW, least) + ".",
          "Give the least flow at which the line really runs, with a worn pump and a low pit.");
    }
  }

  /** Stones lock in a narrow pipe at any velocity, and no deposition velocity knows of it. */
  private void largeGrains(int index) {
    State state = states.get(0);
    RunPoint point = state.runs().get(index);
    if (point.deposition().isEmpty()) {
      return;
    }
    double grain = materials.coarsestHeld(OVERSIZE_SHARE).diameterM();
    double bore = point.mean().diameterM();
    if (!(grain > bore / BORES_A_GRAIN)) {
      return;
    }
    boolean blocks = grain >= bore;
    add(
        blocks ? Severity.FAIL : Severity.CAUTION,
        Topic.PLUGGING,
        point.run().name(),
        blocks
            ? "The largest grains do not go through this pipe."
            : "The largest grains are so large for this pipe that a few of them can lock across"
                + " it.",
        show(Kind.PERCENT, OVERSIZE_SHARE)
            + " of the sand is coarser than "
            + show(Kind.GRAIN, grain)
            + "; the bore is "
            + show(Kind.BORE, bore)
            + " (at least "
            + Math.round(BORES_A_GRAIN)
            + " of the largest grains should fit across; common practice, no source).",
        "Screen the sand at "
            + show(Kind.GRAIN, bore / BORES_A_GRAIN)
            + ", or check the gradation at its coarse end.");
  }

  /** A line that falls more than it loses is not governed by what is written as its flow. */
  private void gravity() {
    if (design.pump().isPresent()) {
      return;
    }
    State most = states.stream().max(Comparator.comparingDouble(State::flowM3ps)).orElseThrow();
    double head = model.systemHeadM(most.runs());
    if (!(head < 0)) {
      return;
    }
    add(
        Severity.CAUTION,
        Topic.DATA,
        "flow",
        "Gravity drives more than the maximum flow through this line.",
        "At the "
            + most.flowCase().words()
            + " flow of "
            + show(Kind.FLOW, most.flowM3ps())
            + " it falls by "
            + show(Kind.HEAD, -head)
            + " of mixture more than it loses, so it does not stay full at this flow by itself.",
        "Hold it full with a valve or an orifice at its end, or judge it at the flow that gravity"
            + " drives, and a run that flows part full as a gravity run.");
  }

  private void tooThick() {
    double least = Measure.FLOW.si(design.flow().orElseThrow().minimum());
    if (materials.flows(least)) {
      return;
    }
    boolean byRate = design.mixture().orElseThrow() instanceof MixtureSpec.ByRate;
    double needed = least * materials.sandFraction(least) / Materials.THICKEST;
    add(
        Severity.FAIL,
        Topic.PLUGGING,
        "line",
        "At the minimum flow the sand fed is too much for the liquid to carry as a slurry.",
        "The sand would be "
            + show(Kind.PERCENT, materials.sandFraction(least))
            + " of the mixture by volume; the methods end at "
            + show(Kind.PERCENT, Materials.THICKEST)
            + " and sand lies packed at "
            + show(Kind.PERCENT, Proportions.PACKED_VOLUME_FRACTION)
            + ".",
        byRate
            ? "Keep the flow above "
                + show(Kind.FLOW, needed)
                + " while this much sand is fed, or feed less sand."
            : "Add liquid until the sand is "
                + show(Kind.PERCENT, Materials.THICKEST)
                + " of the mixture by volume or less.");
  }

  /** The case in which a run stands worst; of equals, the one with the least margin. */
  private State worst(int run) {
    return states.stream()
        .max(
            Comparator.comparing((State s) -> s.runs().get(run).severity())
                .thenComparingDouble(s -> -s.runs().get(run).margin()))
        .orElseThrow();
  }

  private void plugging(int index) {
    State state = worst(index);
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
            + " flow of "
            + show(Kind.FLOW, state.flowM3ps())
            + " the velocity is "
            + show(Kind.VELOCITY, point.leastVelocityMps());
    String limit =
        "the limit by "
            + judged.limiting().model().name()
            + " is "
            + show(Kind.VELOCITY, judged.limitMps())
            + " ("
            + judged.limiting().model().limit().words()
            + ", grains of "
            + show(Kind.GRAIN, judged.limiting().sizeM())
            + ")";
    if (point.regime() != Regime.TURBULENT) {
      notTurbulent(index, state, at, limit);
      return;
    }
    switch (judged.outcome()) {
      case BELOW_LIMIT ->
          add(
              point.severity(),
              Topic.PLUGGING,
              name,
              judged.governed()
                  ? "Sand settles in this run: the velocity is below the deposition limit."
                  : "Sand may settle in this run: no governing correlation is within its published"
                      + " range, and the velocity is below the largest value of them all.",
              at + "; " + limit + "." + (judged.governed() ? "" : " " + excesses(judged) + "."),
              cure(index, state));
      case OUT_OF_RANGE ->
          add(
              Severity.CAUTION,
              Topic.PLUGGING,
              name,
              "No governing correlation is within its published range, so a pass cannot be given.",
              at + "; the largest value that counts: " + limit + ". " + excesses(judged) + ".",
              cure(index, state));
      case WITHIN_MARGIN ->
          add(
              Severity.CAUTION,
              Topic.PLUGGING,
              name,
              "The velocity is above the deposition limit but lacks the margin asked for.",
              at
                  + "; "
                  + limit
                  + ", and with the margin "
                  + show(Kind.VELOCITY, judged.requiredMps())
                  + disagreeing(point, judged)
                  + ".",
              cure(index, state));
      case MODELS_DISAGREE ->
          add(
              Severity.CAUTION,
              Topic.PLUGGING,
              name,
              "The correlations disagree: some of them ask for more velocity than there is.",
              at + "; " + limit + disagreeing(point, judged) + ".",
              cure(index, state));
      default ->
          add(
              Severity.PASS,
              Topic.PLUGGING,
              name,
              "Sand stays in motion at every flow judged.",
              at
                  + ", the closest case; "
                  + limit
                  + ", with the margin "
                  + show(Kind.VELOCITY, judged.requiredMps())
                  + ".",
              "");
    }
  }

  /** Laminar and transitional flow: eddies do not carry the sand, so something else must. */
  private void notTurbulent(int index, State state, String at, String limit) {
    RunPoint point = state.runs().get(index);
    SandCarriage carriage = point.carriage().orElseThrow();
    boolean held = carriage.support() == SandCarriage.Support.CARRIED_BY_YIELD_STRESS;
    String what =
        switch (point.severity()) {
          case PASS ->
              carriage.outsidePlugShare() <= carriage.toleratedShare()
                  ? "Carried by the yield stress: the liquid moves as a plug that holds the sand."
                  : "Carried by the yield stress: it holds the sand where nothing is sheared, and"
                      + " elsewhere the sand sinks too slowly to reach the floor in this length.";
          case FAIL ->
              point.regime() == Regime.LAMINAR
                  ? "Laminar and depositing: no eddies lift the sand, and it gathers on the floor."
                  : "Neither laminar nor turbulent, and below the deposition limit: sand settles.";
          default ->
              point.regime() == Regime.TRANSITIONAL
                  ? "Neither surely laminar nor surely turbulent: turbulence cannot be counted on."
                  : point.yieldUnknown()
                      ? "Laminar: whether it holds its sand depends on a yield stress that total"
                          + " solids do not tell."
                      : point.yieldExtrapolated()
                          ? "Laminar: whether it holds its sand depends on a yield stress that the"
                              + " readings do not show."
                          : "Laminar: sand sinks through what is sheared, though little of it"
                              + " reaches the floor before the outlet.";
        };
    StringBuilder why = new StringBuilder(at).append(". ");
    why.append(String.join(" ", carriage.reasons(units)));
    if (point.isNewtonian() || point.regime() == Regime.TRANSITIONAL) {
      why.append(" For turbulent flow ").append(limit).append('.');
    }
    if (point.yieldUnknown() && !held) {
      why.append(" Manure so thick often has a yield stress of 5 to 30 Pa (from memory,")
          .append(" unverified); with ")
          .append(show(Kind.STRESS, carriage.neededYieldStressPa()))
          .append(" it would hold this sand where it is not sheared.");
    }
    if (point.yieldExtrapolated()) {
      why.append(" The least stress measured is more than twice the fitted yield stress, which")
          .append(" therefore is not counted on: take readings at lower shear rates.");
    }
    if (point.climbsSteeply() && carriage.outsidePlugShare() > carriage.toleratedShare()) {
      why.append(" In so steep a run sand outside the plug slides back to the foot.");
    }
    add(
        point.severity(),
        Topic.PLUGGING,
        point.run().name(),
        what,
        why.toString(),
        held ? "" : notTurbulentCure(index, state, carriage));
  }

  private String notTurbulentCure(int index, State state, SandCarriage carriage) {
    RunSpec run = model.route().runs().get(index);
    OptionalDouble flow = model.leastSafeFlowM3ps(run);
    String turbulent =
        flow.isPresent()
            ? "Run at "
                + show(Kind.FLOW, flow.getAsDouble())
                + " or more, where the flow is turbulent and above the limit with margin"
            : "No flow of this liquid in this pipe is turbulent and fast enough";
    String dilution =
        materials.carrier().totalSolids().orElse(0) > 0
            ? design.dilution().isPresent()
                ? ", or dilute as far as the dilution curve tells"
                : ", or dilute (a \"dilution\" in the design shows how far)"
            : "";
    String yield = "";
    if (carriage.velocityMps() < carriage.laminarBelowMps()) {
      yield =
          carriage.yieldStressPa() < carriage.neededYieldStressPa()
              ? ", or keep the liquid thick: a measured yield stress of "
                  + show(Kind.STRESS, carriage.neededYieldStressPa())
                  + " or more holds the sand in the plug"
              : ", or keep water out, so that the plug is wider and sand sinks more slowly: in a"
                  + " shorter line or with a thicker liquid less of it reaches the floor";
    }
    return turbulent + dilution + yield + ".";
  }

  private String excesses(DepositionJudgement judged) {
    List<String> of = new ArrayList<>();
    for (Entry entry : judged.entries()) {
      if (entry.role() == Role.GOVERNING && !entry.estimate().inRange()) {
        of.add(
            entry.model().name()
                + ": "
                + entry.estimate().excesses().stream()
                    .map(e -> e.describe(units))
                    .collect(Collectors.joining(", ")));
      }
    }
    if (!judged.slope().inRange()) {
      of.add("the slope is steeper than the chart of its correction");
    }
    return "Out of range: " + String.join("; ", of);
  }

  private String disagreeing(RunPoint point, DepositionJudgement judged) {
    String more =
        judged.entries().stream()
            .filter(e -> e.role() == Role.COUNTED && e.estimate().inRange())
            .filter(e -> e.valueMps() + judged.upwardCorrectionMps() > point.leastVelocityMps())
            .sorted(Comparator.comparingDouble(Entry::valueMps).reversed())
            .map(
                e ->
                    e.model().name()
                        + " "
                        + show(Kind.VELOCITY, e.valueMps() + judged.upwardCorrectionMps()))
            .collect(Collectors.joining(", "));
    return more.isEmpty() ? "" : "; more is asked by " + more;
  }

  /** The flow, and the pipe, that would pass. */
  private String cure(int index, State state) {
    RunSpec run = model.route().runs().get(index);
    RunPoint point = state.runs().get(index);
    OptionalDouble flow = model.leastSafeFlowM3ps(run);
    StringBuilder text = new StringBuilder();
    if (flow.isPresent()) {
      text.append("Never run below ").append(show(Kind.FLOW, flow.getAsDouble()));
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
    double wear = Measure.SPEED.si(design.criteria().wearVelocity());
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
              + (point.velocityMps() > wear
                  ? "above the wear velocity of " + show(Kind.VELOCITY, wear) + "; "
                  : "")
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

  private void wear(int index) {
    double allowed = Measure.SPEED.si(design.criteria().wearVelocity());
    State state =
        states.stream()
            .max(Comparator.comparingDouble(s -> s.runs().get(index).velocityMps()))
            .orElseThrow();
    RunPoint point = state.runs().get(index);
    if (point.velocityMps() > allowed && point.deposition().isPresent()) {
      double flow = allowed * point.mean().areaM2();
      add(
          Severity.CAUTION,
          Topic.WEAR,
          point.run().name(),
          "The velocity is high enough to wear pipe, bends and pump quickly.",
          "At the "
              + state.flowCase().words()
              + " flow the velocity is "
              + show(Kind.VELOCITY, point.velocityMps())
              + ", above "
              + show(Kind.VELOCITY, allowed)
              + "; wear grows as the velocity to the power of 2 to 3.5 (Wiedenroth 1984, as"
              + " quoted in a collection of rules).",
          "Stay below " + show(Kind.FLOW, flow) + " in this pipe.");
    }
  }

  private void pressure(int index) {
    RunSpec run = model.route().runs().get(index);
    double greatest = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    FlowCase greatestCase = FlowCase.DESIGN;
    FlowCase leastCase = FlowCase.DESIGN;
    for (LineState state : result.states()) {
      RunState shown = state.runs().get(index);
      double start = Measure.PRESSURE.si(shown.startPressure());
      double end = Measure.PRESSURE.si(shown.endPressure());
      if (Math.max(start, end) > greatest) {
        greatest = Math.max(start, end);
        greatestCase = state.flowCase();
      }
      if (Math.min(start, end) < least) {
        least = Math.min(start, end);
        leastCase = state.flowCase();
      }
    }
    rating(run, greatest, greatestCase);
    vacuum(run, least, leastCase);
  }

  private void rating(RunSpec run, double greatest, FlowCase flowCase) {
    OptionalDouble rating = run.ratingPa(materials.carrier().temperatureK());
    if (rating.isEmpty()) {
      add(
          Severity.NOTE,
          Topic.PRESSURE,
          run.name(),
          "No pressure rating is known for this pipe, so none was checked.",
          "The greatest working pressure is "
              + show(Kind.PRESSURE, greatest)
              + " at the "
              + flowCase.words()
              + " flow.",
          "");
      return;
    }
    double share = Measure.FRACTION.si(design.criteria().pressureShare());
    double allowed = share * rating.getAsDouble();
    boolean over = greatest > rating.getAsDouble();
    boolean much = greatest > allowed;
    String numbers =
        "At the "
            + flowCase.words()
            + " flow the pressure reaches "
            + show(Kind.PRESSURE, greatest)
            + "; the rating at "
            + show(Kind.TEMPERATURE, materials.carrier().temperatureK())
            + " is "
            + show(Kind.PRESSURE, rating.getAsDouble())
            + ", of which "
            + show(Kind.PERCENT, share)
            + " ("
            + show(Kind.PRESSURE, allowed)
            + ") may be used by the criteria. Surge comes on top.";
    add(
        over ? Severity.FAIL : much ? Severity.CAUTION : Severity.PASS,
        Topic.PRESSURE,
        run.name(),
        over
            ? "The working pressure exceeds the rating of the pipe."
            : much
                ? "The working pressure leaves too little of the rating for surge."
                : "The working pressure is within the rating.",
        numbers,
        much ? "Fit a class rated " + show(Kind.PRESSURE, greatest / share) + " or more." : "");
  }

  private void vacuum(RunSpec run, double least, FlowCase flowCase) {
    if (!(least < -1)) {
      return;
    }
    double boils = materials.carrier().vapourPressurePa() - Physics.ATMOSPHERE_PA;
    boolean boiling = least < boils;
    add(
        boiling ? Severity.FAIL : Severity.CAUTION,
        Topic.PRESSURE,
        run.name(),
        boiling
            ? "The liquid column breaks at a high point: the pressure would be below that of its"
                + " vapour."
            : "There is a vacuum in this run: air or gas is drawn in, and thin pipe may collapse.",
        "At the "
            + flowCase.words()
            + " flow the gauge pressure falls to "
            + show(Kind.PRESSURE, least)
            + "; vapour forms at "
            + show(Kind.PRESSURE, boils)
            + " (sea level). Where air gets in, what falls from there flows part full, and no"
            + " velocity told here holds for it.",
        "Lower the high point or hold the outlet "
            + show(
                Kind.HEAD,
                -least
                    / (materials.mixtureDensityKgM3(states.get(0).sandFraction())
                        * Physics.GRAVITY))
            + " higher, and provide air release and vacuum relief.");
  }
}
