package sandslurry.report.section;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.assessment.Assessment;
import sandslurry.fact.step.Step;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;

/**
 * The steps behind every number: each part of the design in full in its governing state, what
 * differs in its other states as a table.
 */
record WorkingSection(Assessment assessment, Map<String, Integer> sources, Page page)
    implements SectionWriter {
  /** A source longer than this stands once, in the list at the end. */
  private static final int SHORT_SOURCE = 40;

  private static final int STATES_A_TABLE = 5;

  static WorkingSection of(Assessment assessment, Page page) {
    return new WorkingSection(assessment, new LinkedHashMap<>(), page);
  }

  void write() {
    heading(1, "Working");
    paragraph(
        "Equations and the values put in are in SI, because the equations are; results follow in"
            + " the units of the report. Gravity g is 9.80665 m/s2; angles are in radians.");
    Map<String, Map<String, List<Step>>> parts = new LinkedHashMap<>();
    for (Step step : assessment.working()) {
      parts
          .computeIfAbsent(step.element(), e -> new LinkedHashMap<>())
          .computeIfAbsent(step.state(), s -> new ArrayList<>())
          .add(step);
    }
    parts.forEach(this::part);
    if (!sources.isEmpty()) {
      heading(2, "Sources of the working");
      List<String> items = new ArrayList<>();
      sources.forEach((source, number) -> items.add("[" + number + "] " + source));
      add(new Block.Items(items, Block.Items.Style.SMALL_PRINT));
    }
  }

  private void part(String element, Map<String, List<Step>> states) {
    String governing = states.keySet().iterator().next();
    heading(2, "Working of " + element + (governing.isEmpty() ? "" : ": " + governing));
    states.get(governing).forEach(this::step);
    if (states.size() > 1) {
      List<String> others = new ArrayList<>(states.keySet());
      Map<String, List<Step>> rows = rows(states.values());
      for (int i = 1; i < others.size(); i += STATES_A_TABLE) {
        table(others.subList(i, Math.min(others.size(), i + STATES_A_TABLE)), governing, rows);
      }
    }
  }

  private void step(Step step) {
    add(
        new Block.Computed(
            step.equation(),
            source(step.equation().source()),
            step.substituted(),
            step.result(units())));
  }

  private String source(String source) {
    if (source.length() <= SHORT_SOURCE) {
      return source;
    }
    return "source [" + sources.computeIfAbsent(source, s -> sources.size() + 1) + "]";
  }

  /** The steps of all states by what they give, for those whose value is not the same in all. */
  private static Map<String, List<Step>> rows(Collection<List<Step>> states) {
    Map<String, List<Step>> rows = new LinkedHashMap<>();
    for (List<Step> steps : states) {
      Map<String, Integer> seen = new HashMap<>();
      for (Step step : steps) {
        String what = step.symbol() + ": " + step.equation().meaning();
        int again = seen.merge(what, 1, Integer::sum);
        rows.computeIfAbsent(what + " #" + again, w -> new ArrayList<>()).add(step);
      }
    }
    rows.values()
        .removeIf(
            same ->
                same.size() == states.size()
                    && same.stream().mapToDouble(Step::value).distinct().count() == 1);
    return rows;
  }

  private void table(List<String> states, String governing, Map<String, List<Step>> rows) {
    List<String> head = new ArrayList<>(List.of("Result", governing));
    head.addAll(states);
    List<List<String>> cells = new ArrayList<>();
    for (List<Step> steps : rows.values()) {
      Step first = steps.get(0);
      List<String> row = new ArrayList<>();
      row.add(head(first.symbol() + ", " + first.equation().meaning(), first.equation().kind()));
      for (String state : head.subList(1, head.size())) {
        row.add(
            steps.stream()
                .filter(step -> step.state().equals(state))
                .findFirst()
                .map(step -> number(step.equation().kind(), step.value()))
                .orElse("-"));
      }
      cells.add(row);
    }
    if (!cells.isEmpty()) {
      table(head, cells);
    }
  }
}
