package sandslurry.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.FlowCase;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.assessment.line.WindowWords;
import sandslurry.assessment.states.WindowFindings;
import sandslurry.design.Design;
import sandslurry.fact.finding.Finding;
import sandslurry.report.block.Block;
import sandslurry.report.block.Block.Window.Stretch;
import sandslurry.units.Kind;
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

  private static Block.Window window(Assessment assessment, LineResult line) {
    UnitSystem units = assessment.design().units();
    WindowWords words = new WindowWords(units);
    OperatingWindow window = line.window();
    return new Block.Window(
        Kind.FLOW.symbol(units),
        shown(window).map(interval -> stretch(interval, words, assessment.design())).toList(),
        empty(assessment),
        marks(line, units));
  }

  /** Why no flow rate works; empty when one does. */
  static String empty(Assessment assessment) {
    return assessment.findings().stream()
        .filter(finding -> finding.element().equals(WindowFindings.ELEMENT))
        .map(Finding::why)
        .findFirst()
        .orElse("");
  }

  /** The interval that holds the design flow rate and the nearest other, ascending. */
  private static Stream<Interval> shown(OperatingWindow window) {
    return Stream.of(window.main(), window.other())
        .flatMap(Optional::stream)
        .sorted(Comparator.comparingDouble(interval -> interval.low().flowM3ps()));
  }

  private static Stretch stretch(Interval interval, WindowWords words, Design design) {
    UnitSystem units = design.units();
    double maximum = design.oneLine().flow().maximumM3ps();
    double low = interval.low().flowM3ps();
    return new Stretch(
        low > 0 ? OptionalDouble.of(number(units, low)) : OptionalDouble.empty(),
        words.below(interval.low()),
        interval
            .high()
            .map(high -> OptionalDouble.of(number(units, high.flowM3ps())))
            .orElse(OptionalDouble.empty()),
        interval.high().map(high -> words.above(high) + words.beyond(high, maximum)).orElse(""));
  }

  private static List<Block.Window.Mark> marks(LineResult line, UnitSystem units) {
    List<Block.Window.Mark> marks = new ArrayList<>();
    for (LineState state : line.states()) {
      double flow = number(units, state.flowM3ps());
      String text = units.number(Kind.FLOW, state.flowM3ps());
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

  private static double number(UnitSystem units, double si) {
    return Kind.FLOW.number(units, si);
  }
}
