package sandslurry.report.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import sandslurry.assessment.Assessment;
import sandslurry.fact.step.Step;
import sandslurry.report.block.Block;
import sandslurry.report.block.Page;

/**
 * The steps behind every number: of the parts of the design that follow the same equations the
 * first in full, in its governing state; what differs in its other states and in the other parts,
 * as tables.
 */
record WorkingSection(Assessment assessment, Map<String, Integer> sources, Page page)
    implements SectionWriter {
  /** A source longer than this stands once, in the list at the end. */
  private static final int SHORT_SOURCE = 40;

  private static final int CASES_A_TABLE = 5;

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
    Map<Set<String>, List<Part>> alike = new LinkedHashMap<>();
    parts.forEach(
        (element, states) -> {
          Part part = Part.of(element, states);
          alike
              .computeIfAbsent(part.cases().get(0).steps().keySet(), e -> new ArrayList<>())
              .add(part);
        });
    alike.values().forEach(this::alike);
    if (!sources.isEmpty()) {
      heading(2, "Sources of the working");
      List<String> items = new ArrayList<>();
      sources.forEach((source, number) -> items.add("[" + number + "] " + source));
      add(new Block.Items(items, Block.Items.Style.SMALL_PRINT));
    }
  }

  /** Parts that follow the same equations: the first in full, of the others what differs. */
  private void alike(List<Part> parts) {
    Part first = parts.get(0);
    String governing = first.cases().get(0).name();
    heading(2, "Working of " + first.element() + (governing.isEmpty() ? "" : ": " + governing));
    first.steps().forEach(this::step);
    List<Case> cases = new ArrayList<>(first.cases());
    if (governing.isEmpty()) {
      cases.set(0, cases.get(0).of(first.element()));
    }
    List<String> same = new ArrayList<>();
    for (Part other : parts.subList(1, parts.size())) {
      if (other.values().equals(first.values())) {
        same.add(other.element());
      } else {
        other.cases().forEach(one -> cases.add(one.of(other.element())));
      }
    }
    compare(cases);
    if (!same.isEmpty()) {
      paragraph("The same numbers hold for " + String.join("; ", same) + ".");
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

  /** The results that are not the same in all cases; the first stands in each table. */
  private void compare(List<Case> cases) {
    Map<String, Step> results = new LinkedHashMap<>();
    cases.forEach(one -> one.steps().forEach(results::putIfAbsent));
    results
        .keySet()
        .removeIf(result -> cases.stream().map(one -> one.value(result)).distinct().count() == 1);
    for (int i = 1; i < cases.size() && !results.isEmpty(); i += CASES_A_TABLE) {
      List<Case> shown = new ArrayList<>(List.of(cases.get(0)));
      shown.addAll(cases.subList(i, Math.min(cases.size(), i + CASES_A_TABLE)));
      List<String> head = new ArrayList<>(List.of("Result"));
      shown.forEach(one -> head.add(one.name()));
      List<List<String>> rows = new ArrayList<>();
      results.forEach((result, step) -> rows.add(row(result, step, shown)));
      table(head, rows);
    }
  }

  private List<String> row(String result, Step step, List<Case> cases) {
    List<String> row = new ArrayList<>();
    row.add(head(step.symbol() + ", " + step.equation().meaning(), step.equation().kind()));
    for (Case one : cases) {
      Step there = one.steps().get(result);
      row.add(there == null ? "-" : number(there.equation().kind(), there.value()));
    }
    return row;
  }

  /**
   * A part of the design.
   *
   * @param element its name
   * @param steps its steps in its governing state
   * @param cases the results of all its states, the governing one first
   */
  private record Part(String element, List<Step> steps, List<Case> cases) {
    static Part of(String element, Map<String, List<Step>> states) {
      return new Part(
          element,
          states.values().iterator().next(),
          states.entrySet().stream().map(e -> Case.of(e.getKey(), e.getValue())).toList());
    }

    List<Map<String, Double>> values() {
      return cases.stream().map(Case::values).toList();
    }
  }

  /**
   * A column of a table of results.
   *
   * @param name its head
   * @param steps its steps, by what they give
   */
  private record Case(String name, Map<String, Step> steps) {
    static Case of(String name, List<Step> steps) {
      Map<String, Step> results = new LinkedHashMap<>();
      Map<String, Integer> seen = new HashMap<>();
      for (Step step : steps) {
        String what = step.symbol() + ": " + step.equation().meaning();
        results.put(what + " #" + seen.merge(what, 1, Integer::sum), step);
      }
      return new Case(name, results);
    }

    Case of(String element) {
      return new Case(name.isEmpty() ? element : element + ": " + name, steps);
    }

    /** A result, nothing where this case has none. */
    Optional<Double> value(String result) {
      return Optional.ofNullable(steps.get(result)).map(Step::value);
    }

    Map<String, Double> values() {
      Map<String, Double> values = new LinkedHashMap<>();
      steps.forEach((result, step) -> values.put(result, step.value()));
      return values;
    }
  }
}
