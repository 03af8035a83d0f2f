package sandslurry.assessment.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Speed;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.design.station.PumpSpec.PistonSpec;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Finding.Topic;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Proportions;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/** What is to be said of the line: plugging, wear, pressure. */
public final class LineFindings extends FindingWriter {
  /** So many of the largest grains should fit across a bore (common practice, no source). */
  private static final double BORES_A_GRAIN = 3;

  /** Share of the sand that is coarser than what is called its largest grains. */
  private static final double OVERSIZE_SHARE = 0.01;

  /** From this ratio to the design flow rate on it is said how much more the pipe wears. */
  private static final double WEAR_TOLD = 1.05;

  private static final double LEAST_WEAR_POWER = 2;
  private static final double MOST_WEAR_POWER = 3.5;

  private final Design design;
  private final Materials materials;
  private final LineModel model;
  private final LineWarmths warmths;
  private final List<State> states;
  private final LineResult result;
  private final boolean whole;

  /**
   * The line with what its findings are read from.
   *
   * @param design the design
   * @param materials its liquid, sand and mixture
   * @param warmths the line at each temperature that is judged
   * @param states the line at each flow rate that is judged
   * @param result the line as its assessment shows it
   * @param whole false for an end of the scatter of its liquid, which is not judged over
   *     temperatures
   */
  public LineFindings(
      Design design,
      Materials materials,
      LineWarmths warmths,
      List<State> states,
      LineResult result,
      boolean whole) {
    super(design.units());
    this.design = design;
    this.materials = materials;
    this.model = warmths.asDesigned();
    this.warmths = warmths;
    this.states = states;
    this.result = result;
    this.whole = whole;
  }

  /**
   * Findings on settling, large grains, wear and pressure of the line.
   *
   * @return the findings
   */
  public List<Finding> all() {
    tooThick();
    if (states.isEmpty()) {
      return findings;
    }
    findings.addAll(new SettlingFindings(design, materials, warmths, states, whole).all());
    for (int i = 0; i < model.route().runs().size(); i++) {
      largeGrains(i);
      wear(i);
      pressure(i);
    }
    gravity();
    oneFlow();
    strokes();
    return findings;
  }

  /** A line that passes at its design flow may plug at the flow at which it really runs. */
  private void oneFlow() {
    double least = Measure.FLOW.si(design.flow().orElseThrow().minimum());
    if (!design.flow().orElseThrow().extremes().minimumGiven()) {
      add(
          Severity.CAUTION,
          Topic.DATA,
          "flow",
          "The minimum flow rate is missing: sand settles first at the least flow rate.",
          "Judged is the design flow rate of " + show(Kind.FLOW, least) + " and above.",
          "Give the least flow rate at which the line really runs, with a worn pump and a low pit.");
    } else if (least == Measure.FLOW.si(design.flow().orElseThrow().design())) {
      add(
          Severity.NOTE,
          Topic.DATA,
          "flow",
          "No flow below the design flow was judged: a line settles sand at its least flow first.",
          "Minimum and design flow are both " + show(Kind.FLOW, least) + ".",
          "Give the least flow at which the line really runs, with a worn pump and a low pit.");
    }
  }

  /** Between the strokes of a piston pump the flow may fall below the deposition velocity. */
  private void strokes() {
    boolean turbulent =
        states.stream()
            .flatMap(state -> state.runs().stream())
            .anyMatch(run -> run.hasSand() && run.regime() == Regime.TURBULENT);
    if (turbulent
        && design.pump().orElse(null) instanceof PistonSpec piston
        && piston.pulsation().isEmpty()) {
      add(
          Severity.CAUTION,
          Topic.PLUGGING,
          "pump",
          "The number of cylinders is missing: whether sand settles between strokes is not known.",
          "Turbulence carries the sand here, and the flow of a piston pump with one cylinder stops"
              + " at every stroke.",
          "Give the cylinders of the pump.");
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

  /** Wear grows with the velocity; how long a pipe lasts no formula here tells. */
  private void wear(int index) {
    State state = fastest(index);
    RunPoint point = state.runs().get(index);
    if (point.deposition().isEmpty()) {
      return;
    }
    double ratio = state.flowM3ps() / Measure.FLOW.si(design.flow().orElseThrow().design());
    Optional<Quantity<Speed>> limit = design.criteria().wearVelocity();
    boolean over = limit.isPresent() && point.velocityMps() > Measure.SPEED.si(limit.get());
    if (!over && ratio < WEAR_TOLD) {
      return;
    }
    add(
        over ? Severity.CAUTION : Severity.NOTE,
        Topic.WEAR,
        point.run().name(),
        over
            ? "The velocity is above the limit set for wear."
            : "Above the design flow rate the pipe wears faster.",
        "At the "
            + state.flowCase().words()
            + " flow rate the velocity is "
            + show(Kind.VELOCITY, point.velocityMps())
            + (over
                ? "; the limit set is " + show(Kind.VELOCITY, Measure.SPEED.si(limit.get()))
                : "")
            + ". Wear per hour is "
            + factor(Math.pow(ratio, LEAST_WEAR_POWER))
            + " to "
            + factor(Math.pow(ratio, MOST_WEAR_POWER))
            + " times that at the design flow rate: it grows with velocity to the power of 2 to 3.5"
            + " (Wiedenroth 1984, read at second hand).",
        over
            ? "Stay below "
                + show(Kind.FLOW, Measure.SPEED.si(limit.get()) * point.mean().areaM2())
                + " in this pipe."
            : "");
  }

  private State fastest(int index) {
    return states.stream()
        .max(Comparator.comparingDouble(s -> s.runs().get(index).velocityMps()))
        .orElseThrow();
  }

  private static String factor(double value) {
    return String.format(java.util.Locale.ROOT, "%.1f", value);
  }

  private void pressure(int index) {
    RunSpec run = model.route().runs().get(index);
    double greatest = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    FlowCase greatestCase = FlowCase.DESIGN;
    FlowCase leastCase = FlowCase.DESIGN;
    for (LineState state : result.judged()) {
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
    OptionalDouble rating = run.ratingPa(materials.warmestK());
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
            + show(Kind.TEMPERATURE, materials.warmestK())
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
