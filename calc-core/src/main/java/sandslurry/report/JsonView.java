package sandslurry.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.SafetyCaution;
import sandslurry.assessment.line.OperatingWindow;
import sandslurry.assessment.line.OperatingWindow.Interval;
import sandslurry.assessment.line.WindowWords;
import sandslurry.assessment.station.PumpResult;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Value;
import sandslurry.report.figure.ReportFigure;
import sandslurry.report.section.ReportFigures;

/**
 * What came of a design as JSON, for other programs: every number in SI with its unit. The schema
 * stands in {@code docs/result.schema.json}.
 */
public final class JsonView {
  /** The version of what is written; it grows when a program that reads it would have to change. */
  static final int FORMAT_VERSION = 1;

  private static final ObjectMapper JSON =
      new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private JsonView() {}

  /**
   * Writes the results of some designs.
   *
   * @param results what came of each, by the name of its file
   * @return one object for one design, else a list
   */
  public static String write(Map<String, Assessment> results) {
    ArrayNode all = NODES.arrayNode();
    results.forEach((file, assessment) -> all.add(one(file, assessment)));
    try {
      return JSON.writeValueAsString(all.size() == 1 ? all.get(0) : all) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a result could not be written", e);
    }
  }

  private static ObjectNode one(String file, Assessment assessment) {
    ObjectNode root = NODES.objectNode();
    root.put("formatVersion", FORMAT_VERSION)
        .put("file", file)
        .put("title", assessment.design().title())
        .put("verdict", assessment.verdict().name())
        .put("sentence", Answer.sentence(assessment));
    OperatingBlock.of(assessment).ifPresent(window -> root.set("window", window(assessment)));
    if (!assessment.lines().isEmpty()) {
      root.set("lines", lines(assessment));
    }
    root.set("findings", findings(assessment.findings()));
    root.set("figures", figures(ReportFigures.of(assessment)));
    ArrayNode cautions = root.putArray("cautions");
    for (SafetyCaution caution : assessment.cautions()) {
      cautions
          .addObject()
          .put("title", caution.title())
          .put("text", caution.text())
          .put("source", caution.source());
    }
    return root;
  }

  /** Several lines in the order of the file. */
  private static ArrayNode lines(Assessment assessment) {
    ArrayNode all = NODES.arrayNode();
    assessment
        .lines()
        .forEach(
            (name, line) -> {
              ObjectNode node = all.addObject();
              node.put("name", name)
                  .put("verdict", line.verdict().name())
                  .put("sentence", Answer.sentence(line));
              OperatingBlock.of(line).ifPresent(window -> node.set("window", window(line)));
            });
    return all;
  }

  private static ObjectNode window(Assessment assessment) {
    ObjectNode node = NODES.objectNode();
    node.put("unit", "m3/s");
    OperatingWindow window = assessment.line().orElseThrow().window();
    WindowWords words = new WindowWords(assessment.design().units());
    window.main().ifPresent(main -> interval(node, main, words));
    ArrayNode all = node.putArray("intervals");
    window.intervals().forEach(interval -> interval(all.addObject(), interval, words));
    if (window.intervals().isEmpty()) {
      node.put("empty", OperatingBlock.empty(assessment));
    }
    ArrayNode judged = node.putArray("judged");
    double duty =
        assessment
            .pump()
            .flatMap(PumpResult::governing)
            .map(PumpResult.Duty::flowM3ps)
            .orElse(Double.POSITIVE_INFINITY);
    assessment
        .line()
        .orElseThrow()
        .states()
        .forEach(
            state ->
                judged
                    .addObject()
                    .put("at", state.flowCase().words())
                    .put("value", state.flowM3ps())
                    .put("reached", state.flowM3ps() <= duty));
    return node;
  }

  private static void interval(ObjectNode node, Interval interval, WindowWords words) {
    if (interval.low().flowM3ps() > 0) {
      node.put("lowest", interval.low().flowM3ps());
    }
    interval.high().ifPresent(high -> node.put("highest", high.flowM3ps()));
    node.put("below", words.below(interval.low()))
        .put("above", interval.high().map(words::above).orElse(""));
  }

  private static ArrayNode findings(List<Finding> findings) {
    ArrayNode all = NODES.arrayNode();
    for (Finding finding : findings) {
      ObjectNode node = all.addObject();
      node.put("id", finding.id())
          .put("severity", finding.severity().name())
          .put("topic", finding.topic().word())
          .put("element", finding.element())
          .put("what", finding.what())
          .put("why", finding.why())
          .put("do", finding.cure());
      ObjectNode values = node.putObject("values");
      finding
          .values()
          .forEach(
              (name, value) -> {
                if (value instanceof Value.Number number) {
                  ObjectNode one = values.putObject(name);
                  one.put("value", number.si());
                  String symbol = number.kind().measure().units().get(0).symbol();
                  one.put("unit", symbol.isEmpty() ? "1" : symbol);
                }
              });
    }
    return all;
  }

  private static ArrayNode figures(List<ReportFigure> figures) {
    ArrayNode all = NODES.arrayNode();
    for (ReportFigure figure : figures) {
      all.addObject()
          .put("id", figure.id())
          .put("label", figure.label())
          .put("element", figure.element())
          .put("at", figure.at())
          .put("unit", figure.unit())
          .put("low", figure.low())
          .put("value", figure.value())
          .put("high", figure.high());
    }
    return all;
  }
}
