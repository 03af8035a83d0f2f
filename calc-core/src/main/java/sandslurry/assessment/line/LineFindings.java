package sandslurry.assessment.line;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineModel.Pressures;
import sandslurry.assessment.materials.Materials;
import sandslurry.correlation.Physics;
import sandslurry.design.criteria.Criteria;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.design.station.PumpSpec;
import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Found;
import sandslurry.fact.finding.Severity;
import sandslurry.material.Proportions;
import sandslurry.transport.friction.ClearLiquid.Regime;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * Findings on the line: plugging, wear, pressure.
 *
 * @param materials its liquid, sand and mixture
 * @param warmths the line at each temperature that is judged
 * @param judged the line at each flow rate and temperature that is judged
 * @param result the line as its assessment shows it
 * @param findings takes what is found
 */
public record LineFindings(
    Materials materials,
    LineWarmths warmths,
    WarmStates judged,
    LineResult result,
    Findings findings)
    implements FindingWriter {
  /** So many of the largest grains should fit across a bore (common practice, no source). */
  private static final double BORES_A_GRAIN = 3;

  /** Share of the sand that is coarser than what is called its largest grains. */
  private static final double OVERSIZE_SHARE = 0.01;

  /** From this ratio to the design flow rate on it is said how much more the pipe wears. */
  private static final double NOTED_WEAR = 1.05;

  /**
   * Above 10 ft/s pipe abrasion becomes a problem: "Speed limits for slurry pumps", McNally
   * Institute, mcnallyinstitute.com/s-html/s074.htm [m/s].
   */
  private static final double ABRASIVE_MPS = Measure.SPEED.si(Measure.SPEED.of(10, "ft/s"));

  private static final double LEAST_WEAR_POWER = 2;
  private static final double MOST_WEAR_POWER = 3.5;

  private List<State> states() {
    return judged.asDesigned();
  }

  /** Findings on settling, large grains, wear and pressure of the line. */
  public void all() {
    tooThick();
    if (states().isEmpty()) {
      return;
    }
    new SettlingFindings(materials, warmths, judged, findings).all();
    for (int i = 0; i < warmths.asDesigned().route().runs().size(); i++) {
      largeGrains(i);
      wear(i);
      pressure(i);
    }
    gravity();
    oneFlow();
    strokes();
  }

  /** A line that passes at its design flow may plug at the flow at which it really runs. */
  private void oneFlow() {
    double least = materials.design().oneLine().flow().minimumM3ps();
    if (!materials.design().oneLine().flow().extremes().minimumGiven()) {
      found("minimum-missing", Severity.CAUTION, "flow")
          .with("least", Kind.FLOW, least)
          .why("design-judged")
          .cure("give-minimum")
          .add();
    } else if (least == materials.design().oneLine().flow().designM3ps()) {
      found("minimum-is-design", Severity.NOTE, "flow")
          .with("least", Kind.FLOW, least)
          .why("one-flow")
          .cure("give-minimum")
          .add();
    }
  }

  /** Between the strokes of a piston pump the flow may fall below the deposition velocity. */
  private void strokes() {
    boolean turbulent =
        states().stream()
            .flatMap(state -> state.runs().stream())
            .anyMatch(run -> run.hasSand() && run.regime() == Regime.TURBULENT);
    if (turbulent
        && materials
            .design()
            .pump()
            .flatMap(PumpSpec::piston)
            .filter(piston -> piston.pulsation().isEmpty())
            .isPresent()) {
      found("cylinders-missing", Severity.CAUTION, "pump")
          .why("strokes")
          .cure("give-cylinders")
          .add();
    }
  }

  /** Stones lock in a narrow pipe at any velocity, and no deposition velocity knows of it. */
  private void largeGrains(int index) {
    State state = states().get(0);
    RunPoint point = state.runs().get(index);
    if (point.deposition().isEmpty()) {
      return;
    }
    double grain = materials.coarsestHeld(OVERSIZE_SHARE).diameterM();
    double bore = point.pipe().mean().diameterM();
    if (!(grain > bore / BORES_A_GRAIN)) {
      return;
    }
    (grain >= bore
            ? found("grains-too-large", Severity.FAIL, point.pipe().spec().name())
            : found("grains-lock", Severity.CAUTION, point.pipe().spec().name()))
        .with("oversize", Kind.PERCENT, OVERSIZE_SHARE)
        .with("grain", Kind.GRAIN, grain)
        .with("bore", Kind.BORE, bore)
        .count("across", Math.round(BORES_A_GRAIN))
        .with("screen", Kind.GRAIN, bore / BORES_A_GRAIN)
        .why("large-grains")
        .cure("screen")
        .add();
  }

  /** A line that falls more than it loses is not governed by what is written as its flow. */
  private void gravity() {
    if (materials.design().pump().isPresent()) {
      return;
    }
    State most = states().stream().max(Comparator.comparingDouble(State::flowM3ps)).orElseThrow();
    double head = warmths.asDesigned().systemHeadM(most.runs());
    if (!(head < 0)) {
      return;
    }
    found("gravity-drives-more", Severity.CAUTION, "flow")
        .with("case", most.flowCase().words())
        .with("flow", Kind.FLOW, most.flowM3ps())
        .with("excessHead", Kind.HEAD, -head)
        .why("gravity")
        .cure("hold-full")
        .add();
  }

  private void tooThick() {
    double least = materials.design().oneLine().flow().minimumM3ps();
    if (materials.flows(least)) {
      return;
    }
    boolean byRate = materials.design().oneLine().mixture().isByRate();
    double needed = least * materials.sandFraction(least) / Materials.THICKEST;
    found("too-thick", Severity.FAIL, "line")
        .with("sand", Kind.PERCENT, materials.sandFraction(least))
        .with("thickest", Kind.PERCENT, Materials.THICKEST)
        .with("packed", Kind.PERCENT, Proportions.PACKED_VOLUME_FRACTION)
        .with("needed", Kind.FLOW, needed)
        .why("too-thick")
        .cure(byRate ? "keep-flow" : "add-liquid")
        .add();
  }

  /** Wear grows with the velocity; how long a pipe lasts no formula here tells. */
  private void wear(int index) {
    State state = fastest(index);
    RunPoint point = state.runs().get(index);
    if (point.deposition().isEmpty()) {
      return;
    }
    double ratio = state.flowM3ps() / materials.design().oneLine().flow().designM3ps();
    double limit = materials.design().criteria().wearVelocityMps();
    boolean over = point.velocityMps() > limit;
    boolean abrasive = point.velocityMps() > ABRASIVE_MPS;
    if (!over && !abrasive && ratio < NOTED_WEAR) {
      return;
    }
    String name = point.pipe().spec().name();
    Found found =
        over
            ? found("wear-over", Severity.CAUTION, name)
            : found(abrasive ? "wear-abrasive" : "wear-faster", Severity.NOTE, name);
    found
        .with("case", state.flowCase().words())
        .with("velocity", Kind.VELOCITY, point.velocityMps())
        .with("wearLimit", Kind.VELOCITY, limit)
        .with("wearFlow", Kind.FLOW, limit * point.pipe().mean().areaM2())
        .with("abrasive", Kind.VELOCITY, ABRASIVE_MPS)
        .why(over ? "wear-limit" : "wear-velocity")
        .why(abrasive, "wear-abrasive")
        .cure(over, "below-wear")
        .when(
            ratio >= NOTED_WEAR,
            f ->
                f.with("leastWear", any -> factor(Math.pow(ratio, LEAST_WEAR_POWER)))
                    .with("mostWear", any -> factor(Math.pow(ratio, MOST_WEAR_POWER)))
                    .why("wear"))
        .add();
  }

  private State fastest(int index) {
    return states().stream()
        .max(Comparator.comparingDouble(s -> s.runs().get(index).velocityMps()))
        .orElseThrow();
  }

  private static String factor(double value) {
    return String.format(java.util.Locale.ROOT, "%.1f", value);
  }

  private void pressure(int index) {
    RunSpec run = warmths.asDesigned().route().runs().get(index);
    LineState most = extreme(Comparator.comparingDouble(at -> -pressures(at, index).greatestPa()));
    rating(run, pressures(most, index).greatestPa(), most.flowCase());
    LineState least = extreme(Comparator.comparingDouble(at -> pressures(at, index).leastPa()));
    Pressures lowest = pressures(least, index);
    boolean beside =
        lowest.startPa() < lowest.endPa()
            ? index > 0 && !isLowerBeyond(least, index - 1)
            : isLowerBeyond(least, index);
    vacuum(run, lowest.leastPa(), least.flowCase(), beside);
  }

  private LineState extreme(Comparator<LineState> first) {
    return result.judged().stream().min(first).orElseThrow();
  }

  private static Pressures pressures(LineState state, int index) {
    return state.runs().get(index).pressures();
  }

  /** Whether the run that follows begins at a lower pressure than this one ends at. */
  private static boolean isLowerBeyond(LineState state, int index) {
    return index + 1 < state.runs().size()
        && pressures(state, index + 1).startPa() < pressures(state, index).endPa();
  }

  private void rating(RunSpec run, double greatest, FlowCase flowCase) {
    OptionalDouble rating = run.ratingPa(materials.warmestK());
    if (rating.isEmpty()) {
      found("no-rating", Severity.NOTE, run.name())
          .with("greatest", Kind.PRESSURE, greatest)
          .with("case", flowCase.words())
          .why("no-rating")
          .add();
      return;
    }
    Criteria criteria = materials.design().criteria();
    Severity severity = criteria.pressure(greatest, rating.getAsDouble());
    double share = criteria.pressureShare();
    String within = severity == Severity.PASS ? "pressure-within" : "pressure-high";
    found(severity == Severity.FAIL ? "pressure-over" : within, severity, run.name())
        .with("case", flowCase.words())
        .with("greatest", Kind.PRESSURE, greatest)
        .with("warmest", Kind.TEMPERATURE, materials.warmestK())
        .with("rating", Kind.PRESSURE, rating.getAsDouble())
        .with("share", Kind.PERCENT, share)
        .with("allowed", Kind.PRESSURE, criteria.allowedPa(rating.getAsDouble()))
        .why("rating")
        .when(
            severity != Severity.PASS,
            f -> f.with("class", Kind.PRESSURE, greatest / share).cure("higher-class"))
        .add();
  }

  /** A column that breaks where two runs meet is said once, of the run with the lower pressure. */
  private void vacuum(RunSpec run, double least, FlowCase flowCase, boolean beside) {
    double boils = materials.carrier().boilsBelowPa();
    if (!(least < -1) || least < boils && beside) {
      return;
    }
    Found found =
        least < boils
            ? found("column-breaks", Severity.FAIL, run.name())
            : found("vacuum", Severity.CAUTION, run.name());
    double density = materials.mixtureDensityKgM3(states().get(0).sandFraction());
    found
        .with("case", flowCase.words())
        .with("lowest", Kind.PRESSURE, least)
        .with("boils", Kind.PRESSURE, boils)
        .with("lift", Kind.HEAD, -least / (density * Physics.GRAVITY))
        .why("vacuum")
        .cure("hold-outlet")
        .add();
  }
}
