package sandslurry.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.assessment.Assessment;
import sandslurry.design.LineSpec;
import sandslurry.design.line.FlowSpec;
import sandslurry.report.block.Block;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** Several lines side by side, a row each, the worst first. */
final class LinesTable {
  private LinesTable() {}

  static Block of(Assessment whole) {
    UnitSystem units = whole.design().units();
    List<List<String>> rows = new ArrayList<>();
    for (Map.Entry<String, Assessment> line : whole.worstFirst().entrySet()) {
      Optional<Deciding> governs = DecidingFacts.governing(line.getValue());
      rows.add(
          List.of(
              line.getKey(),
              line.getValue().verdict().name(),
              whole.design().lines().stream()
                  .filter(spec -> spec.name().equals(line.getKey()))
                  .map(spec -> flowRates(spec, units))
                  .findFirst()
                  .orElseThrow(),
              OperatingBlock.of(line.getValue()).map(Block.Window::text).orElse("-"),
              governs.map(Deciding::what).orElse("-"),
              governs.map(Deciding::actual).orElse("-"),
              governs.map(Deciding::limit).orElse("-"),
              governs.map(Deciding::marginText).orElse("-")));
    }
    return new Block.Table(
        List.of(
            "line",
            "verdict",
            "flow rates",
            "operating window",
            "what governs",
            "actual",
            "limit",
            "margin"),
        rows);
  }

  private static String flowRates(LineSpec line, UnitSystem units) {
    FlowSpec flow = line.flow();
    return units.showSpan(Kind.FLOW, flow.minimumM3ps(), flow.maximumM3ps());
  }
}
