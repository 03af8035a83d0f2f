package sandslurry.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import sandslurry.assessment.Assessment;
import sandslurry.report.figure.ReportFigure;
import sandslurry.report.section.ReportFigures;

/** The numbers of some designs as comma-separated values (RFC 4180), in SI. */
public final class CsvView {
  private static final List<String> HEAD =
      List.of("file", "verdict", "id", "label", "element", "at", "unit", "low", "value", "high");

  private CsvView() {}

  /**
   * Writes the numbers.
   *
   * @param results what came of each design, by the name of its file
   * @return a heading and a row for each number
   */
  public static String write(Map<String, Assessment> results) {
    StringBuilder text = new StringBuilder();
    row(text, HEAD);
    results.forEach(
        (file, assessment) -> {
          for (ReportFigure figure : ReportFigures.of(assessment)) {
            row(
                text,
                List.of(
                    file,
                    assessment.verdict().name(),
                    figure.id(),
                    figure.label(),
                    figure.element(),
                    figure.at(),
                    figure.unit(),
                    Double.toString(figure.low()),
                    Double.toString(figure.value()),
                    Double.toString(figure.high())));
          }
        });
    return text.toString();
  }

  private static void row(StringBuilder text, List<String> cells) {
    text.append(cells.stream().map(CsvView::cell).collect(Collectors.joining(","))).append("\r\n");
  }

  /** A cell that no table program takes for a formula. */
  private static String cell(String value) {
    String safe = value.matches("[=+@\\t\\r].*|-(?![0-9.]).*") ? "'" + value : value;
    return safe.matches("(?s).*[\",\\r\\n].*") ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
