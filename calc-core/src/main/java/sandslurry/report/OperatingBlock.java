package sandslurry.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/** The operating window of a line as a block. */
final class OperatingBlock {
  private OperatingBlock() {}

  static Optional<Block.Window> of(Assessment assessment) {
    return assessment
        .line()
        .filter(line -> !line.states().isEmpty())
        .map(line -> window(assessment, line));
  }

  /** The lowest flow rate that carries the sand with its margin. */
  static OptionalDouble lowestM3ps(Assessment assessment) {
    return assessment
        .line()
        .flatMap(LineResult::leastSafeFlow)
        .map(flow -> OptionalDouble.of(Measure.FLOW.si(flow)))
        .orElse(OptionalDouble.empty());
  }

  /**
   * The highest flow rate allowed by wear, in the run that reaches the velocity set for it first.
   * What pressure, pump and motor allow is judged at the flow rates given, beside it.
   */
  static OptionalDouble highestM3ps(Assessment assessment) {
    return assessment
        .design()
        .criteria()
        .wearVelocity()
        .map(wear -> highestM3ps(assessment, Measure.SPEED.si(wear)))
        .orElse(OptionalDouble.empty());
  }

  private static OptionalDouble highestM3ps(Assessment assessment, double wearMps) {
    return assessment.line().stream()
        .flatMap(line -> line.states().stream().limit(1))
        .flatMapToDouble(
            state ->
                state.runs().stream()
                    .filter(run -> run.deposition().isPresent())
                    .mapToDouble(
                        run ->
                            Measure.FLOW.si(state.flow())
                                * wearMps
                                / Measure.SPEED.si(run.velocity())))
        .min();
  }

  private static Block.Window window(Assessment assessment, LineResult line) {
    UnitSystem units = assessment.design().units();
    OptionalDouble lowest = shown(units, lowestM3ps(assessment));
    OptionalDouble highest = shown(units, highestM3ps(assessment));
    return new Block.Window(
        Kind.FLOW.symbol(units),
        lowest,
        lowest.isPresent()
            ? "sand settles, or the margin is lost"
            : "no flow rate carries the sand by turbulence with its margin",
        highest,
        assessment
            .design()
            .criteria()
            .wearVelocity()
            .filter(v -> highest.isPresent())
            .map(v -> "wear, faster than " + units.show(Kind.VELOCITY, v))
            .orElse(""),
        marks(line, units));
  }

  private static List<Block.Window.Mark> marks(LineResult line, UnitSystem units) {
    List<Block.Window.Mark> marks = new ArrayList<>();
    for (LineState state : line.states()) {
      double flow = number(units, Measure.FLOW.si(state.flow()));
      String text = units.number(Kind.FLOW, Measure.FLOW.si(state.flow()));
      String word = state.flowCase() == FlowCase.DUTY ? "duty" : state.flowCase().words();
      Optional<Block.Window.Mark> same =
          marks.stream().filter(m -> m.text().equals(text)).findFirst();
      if (same.isPresent()) {
        marks.remove(same.get());
        word = same.get().word() + ", " + word;
      }
      marks.add(new Block.Window.Mark(flow, text, word));
    }
    marks.sort(Comparator.comparingDouble(Block.Window.Mark::flow));
    return marks;
  }

  private static OptionalDouble shown(UnitSystem units, OptionalDouble si) {
    return si.isPresent() ? OptionalDouble.of(number(units, si.getAsDouble())) : si;
  }

  private static double number(UnitSystem units, double si) {
    return Kind.FLOW.number(units, si);
  }
}
