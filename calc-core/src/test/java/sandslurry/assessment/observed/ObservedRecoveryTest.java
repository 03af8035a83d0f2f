package sandslurry.assessment.observed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.line.LineModel;
import sandslurry.assessment.materials.Materials;
import sandslurry.assessment.observed.ObservedLine.Condition;
import sandslurry.assessment.observed.ObservedResult.Agreement;
import sandslurry.assessment.observed.ObservedResult.Cause;
import sandslurry.assessment.observed.ObservedResult.Explained;
import sandslurry.assessment.observed.ObservedResult.Second;
import sandslurry.assessment.observed.ObservedResult.SecondReading;
import sandslurry.assessment.station.PumpEvaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.diagnosis.Bracket;
import sandslurry.numeric.Roots;
import sandslurry.pump.rotodynamic.PumpGroup;

/**
 * Readings made up from a known cause: what made them is found again within its uncertainty, and
 * causes that one reading cannot tell apart are named so.
 *
 * <p>A case is a line with a pump whose worn curve meets the line with its cause at the flow rate
 * that is read. Friction, pump curve, pressure and flow rate are off by errors of half their stated
 * uncertainty (one standard deviation).
 */
class ObservedRecoveryTest {
  private static final int CASES = 200;

  private static DesignDocument base;

  @BeforeAll
  static void load() throws Exception {
    base = DesignDocument.load(Path.of("..", "docs", "examples", "parlor-line.json"));
  }

  private static String write(double value, String unit) {
    return String.format(Locale.ROOT, "%.9f %s", value, unit);
  }

  private static double between(Random random, double low, double high) {
    return low + random.nextDouble() * (high - low);
  }

  /** A line with a pump that meets it when clean near a flow rate. */
  private static DesignDocument line(Random random) {
    double bore = between(random, 0.08, 0.25);
    double flow = Math.PI / 4 * bore * bore * between(random, 1.5, 3);
    DesignDocument line =
        base.without("/lines/0/route/runs/0/pipe")
            .with("/lines/0/route/runs/0/bore", write(bore, "m"))
            .with("/lines/0/route/runs/0/length", write(between(random, 60, 400), "m"))
            .with("/lines/0/route/runs/0/rise", write(between(random, -1, 6), "m"))
            .with("/lines/0/route/runs/0/roughness", write(between(random, 0.02, 0.2), "mm"))
            .with("/lines/0/mixture/volumeFraction", write(between(random, 0.5, 5), "%"))
            .with("/lines/0/flow/minimum", write(flow, "m3/s"))
            .with("/lines/0/flow/design", write(flow, "m3/s"))
            .with("/lines/0/flow/maximum", write(flow, "m3/s"))
            .with("/lines/0/observed/flow", write(flow, "m3/s"))
            .with("/lines/0/observed/pressure", "100 kPa")
            .with(
                "/lines/0/observed/pressureIs",
                random.nextBoolean() ? "at the line start" : "rise of the pump");
    if (random.nextBoolean()) {
      line =
          line.with("/carrier/kind", "manure")
              .with("/carrier/totalSolids", write(between(random, 1, 8), "%"));
    }
    ObservedLine clean = observed(line);
    double head = clean.headM(clean.pressurePa(Condition.CLEAN, flow), flow);
    line = line.without("/lines/0/pump/curve").with("/lines/0/pump/speed", "1750 rpm");
    double[][] curve = {{0, 1.4, 0}, {0.5, 1.32, 45}, {1, 1.1, 60}, {1.6, 0.5, 40}};
    for (int i = 0; i < curve.length; i++) {
      line =
          line.insert(
              "/lines/0/pump/curve",
              i,
              String.format(
                  Locale.ROOT,
                  "{\"flow\": \"%.8f m3/s\", \"head\": \"%.6f m\", \"efficiency\": \"%.1f %%\"}",
                  curve[i][0] * flow,
                  curve[i][1] * Math.max(head, 3),
                  curve[i][2]));
    }
    return line;
  }

  private static Design design(DesignDocument document) {
    assertThat(document.read().problems()).isEmpty();
    return document.read().design().orElseThrow();
  }

  private static ObservedLine observed(DesignDocument document) {
    Design design = design(document);
    return new ObservedLine(Materials.of(design));
  }

  private static Optional<PumpGroup> pump(Design design) {
    Materials materials = Materials.of(design);
    return new PumpEvaluation(new LineModel(materials))
        .derated(design.pump().orElseThrow().rotodynamic().orElseThrow());
  }

  /** What was made up. */
  private record Truth(
      Optional<Cause> cause, double unknown, double wear, double friction, double curve) {
    static Truth of(Random random, double error) {
      int which = random.nextInt(4);
      Optional<Cause> cause = which == 3 ? Optional.empty() : Optional.of(Cause.values()[which]);
      double[][] bounds = {{0.05, 0.6}, {1.2, 6}, {0.3e-3, 2.5e-3}};
      double unknown = which == 3 ? 0 : between(random, bounds[which][0], bounds[which][1]);
      return new Truth(
          cause,
          unknown,
          random.nextBoolean() ? 0 : between(random, 0.03, 0.35),
          1 + error * random.nextGaussian() * ObservedEvaluation.MODEL / 2,
          1 + error * random.nextGaussian() * ObservedEvaluation.PUMP / 2);
    }

    Truth with(double other) {
      return new Truth(cause, other, wear, friction, curve);
    }

    Condition condition() {
      return cause.map(this::condition).orElse(Condition.CLEAN);
    }

    private Condition condition(Cause of) {
      return switch (of) {
        case BED -> Condition.bed(unknown);
        case LIQUID -> Condition.liquid(unknown);
        case ROUGHNESS -> Condition.rough(unknown);
      };
    }

    double pressurePa(ObservedLine line, Condition condition, double flowM3ps) {
      double still = line.staticPa(condition, flowM3ps);
      return still + friction * (line.pressurePa(condition, flowM3ps) - still);
    }
  }

  /** A case that was made up, and what was found of it. */
  private record Case(
      DesignDocument document,
      ObservedLine line,
      Truth truth,
      double flowM3ps,
      double flowError,
      double pressureError,
      ObservedResult found) {}

  /** Where the worn pump meets the line with its cause; nothing when it meets it nowhere. */
  private static Optional<Case> made(Random random, double error) {
    DesignDocument document = line(random);
    ObservedLine line = observed(document);
    Truth truth = Truth.of(random, error);
    double flowError = error * random.nextGaussian() * 0.05 / 2;
    double pressureError = error * random.nextGaussian() * 0.03 / 2;
    Optional<PumpGroup> pump = pump(design(document));
    if (pump.isEmpty()) {
      return Optional.empty();
    }
    PumpGroup group = pump.get();
    DoubleUnaryOperator gap =
        q ->
            truth.curve() * (1 - truth.wear()) * group.headM(q)
                - line.headM(truth.pressurePa(line, truth.condition(), q), q);
    double most = group.greatestFlowM3ps();
    List<Double> meets = Roots.all("made-up duty", gap, 0.25 * most, 0.95 * most, 12);
    if (meets.isEmpty()) {
      return Optional.empty();
    }
    double flow = meets.get(meets.size() - 1);
    double pressure = truth.pressurePa(line, truth.condition(), flow);
    DesignDocument read =
        document
            .with("/lines/0/observed/flow", write(flow * (1 + flowError), "m3/s"))
            .with("/lines/0/observed/pressure", write(pressure * (1 + pressureError), "Pa"));
    Design design = design(read);
    return Optional.of(
        new Case(
            read,
            line,
            truth,
            flow,
            flowError,
            pressureError,
            ObservedEvaluation.result(Materials.of(design)).orElseThrow()));
  }

  private static List<Case> cases(long seed, double error, int count) {
    Random random = new Random(seed);
    List<Case> cases = new ArrayList<>();
    while (cases.size() < count) {
      made(random, error).ifPresent(cases::add);
    }
    return cases;
  }

  private static boolean holds(Bracket span, double value) {
    return span.low() * (1 - 1e-6) <= value && value <= span.high() * (1 + 1e-6);
  }

  @Test
  void whatMadeTheReadingIsFoundAgainWithinItsUncertainty() {
    int recovered = 0;
    int causes = 0;
    int wears = 0;
    int falseAlarms = 0;
    int clean = 0;
    int undecided = 0;
    int told = 0;
    int right = 0;
    Random random = new Random(7);
    for (Case made : cases(1, 1, CASES)) {
      Truth truth = made.truth();
      ObservedResult found = made.found();
      wears += holds(found.pump().orElseThrow().wear().widened(1e-9), truth.wear()) ? 1 : 0;
      if (truth.cause().isEmpty()) {
        clean++;
        falseAlarms += found.line().agreement() == Agreement.AS_CALCULATED ? 0 : 1;
        continue;
      }
      causes++;
      Cause cause = truth.cause().get();
      boolean holds = found.value(cause).map(span -> holds(span, truth.unknown())).orElse(false);
      recovered += holds ? 1 : 0;
      List<Cause> possible = found.possible().stream().map(Explained::cause).toList();
      undecided += found.open().isEmpty() ? 0 : 1;
      assertThat(found.open())
          .as("what is possible is left open")
          .hasSize(possible.size() * (possible.size() - 1) / 2);
      if (!holds || !possible.contains(cause)) {
        continue;
      }
      for (SecondReading second : found.second()) {
        for (List<Cause> pair : found.open()) {
          if (!pair.contains(cause) || !second.distinguishes(pair)) {
            continue;
          }
          Cause other = pair.get(0) == cause ? pair.get(1) : pair.get(0);
          double read = again(made, second.kind(), random);
          told++;
          right +=
              holds(second.pressurePa().get(cause), read)
                      && !holds(second.pressurePa().get(other), read)
                  ? 1
                  : 0;
        }
      }
    }
    // The uncertainties are meant to hold nineteen times out of twenty.
    assertThat(recovered).isGreaterThanOrEqualTo((int) (0.92 * causes));
    assertThat(wears).isGreaterThanOrEqualTo((int) (0.92 * CASES));
    assertThat(falseAlarms).isLessThanOrEqualTo((int) (0.08 * clean) + 1);
    assertThat(undecided).isPositive();
    assertThat(told).isGreaterThan(20);
    assertThat(right).isGreaterThanOrEqualTo((int) (0.92 * told));
  }

  /** What the truth lets one read a second time, with new errors and the same friction. */
  private static double again(Case made, Second kind, Random random) {
    Truth truth = made.truth();
    Condition now = truth.condition();
    Condition then =
        switch (kind) {
          case HALF_FLOW -> now;
          case WATER -> now.inWater();
          case AFTER_FLUSH -> truth.cause().get() == Cause.BED ? Condition.CLEAN : now;
        };
    double shown = made.flowM3ps() * (1 + made.flowError()) * (kind == Second.HALF_FLOW ? 0.5 : 1);
    double flow = shown / (1 + random.nextGaussian() * 0.05 / 2);
    return truth.pressurePa(made.line(), then, flow) * (1 + random.nextGaussian() * 0.03 / 2);
  }

  @Test
  void withoutErrorsTheValueIsTheTruthItself() {
    int same = 0;
    int causes = 0;
    for (Case made : cases(2, 0, 60)) {
      ObservedResult found = made.found();
      assertThat(found.pump().orElseThrow().wear().value())
          .isCloseTo(made.truth().wear(), within(1e-5));
      if (made.truth().cause().isEmpty()) {
        assertThat(found.line().agreement()).isEqualTo(Agreement.AS_CALCULATED);
        assertThat(found.line().pressurePa()).isCloseTo(found.line().calculatedPa(), within(1.0));
        continue;
      }
      causes++;
      Bracket span = found.value(made.truth().cause().get()).orElseThrow();
      assertThat(holds(span, made.truth().unknown())).isTrue();
      // Two values may let one read the same: a thin bed, or liquor that turns laminar, lowers it.
      double again =
          made.truth()
              .with(span.value())
              .pressurePa(
                  made.line(), made.truth().with(span.value()).condition(), made.flowM3ps());
      assertThat(again).isCloseTo(found.line().pressurePa(), within(2.0));
      same += Math.abs(span.value() / made.truth().unknown() - 1) < 1e-3 ? 1 : 0;
    }
    assertThat(same).isGreaterThanOrEqualTo(2 * causes / 3);
  }
}
