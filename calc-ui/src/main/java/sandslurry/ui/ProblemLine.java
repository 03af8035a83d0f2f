package sandslurry.ui;

import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import sandslurry.design.document.Problem;

/** The line under a field that says what is wrong with it, and the outline around the field. */
final class ProblemLine {
  private final JTextArea line = Look.small(Look.wrapped(""));

  ProblemLine() {
    line.setVisible(false);
  }

  JComponent component() {
    return line;
  }

  /** A field that still waits for its first text is asked for; anything else is a mistake. */
  static boolean isOnlyMissing(List<Problem> problems) {
    return problems.stream()
        .allMatch(p -> p.value().isEmpty() && p.message().startsWith("is missing"));
  }

  /** Marks a field with its problems; without any, the marks go away. */
  void show(JComponent field, List<Problem> problems, String place) {
    boolean needed = isOnlyMissing(problems);
    String text =
        problems.stream()
            .map(p -> sentence(place(p, place), needed ? afterMissing(p) : p.message()))
            .distinct()
            .collect(Collectors.joining("\n"));
    String shown = problems.isEmpty() ? "" : (needed ? "Missing: " : "Problem: ") + text;
    line.setText(shown);
    line.setForeground(needed ? Look.NEEDED : Look.PROBLEM);
    line.setVisible(!shown.isEmpty());
    field.putClientProperty(
        "JComponent.outline", shown.isEmpty() ? null : needed ? "warning" : "error");
    field.getAccessibleContext().setAccessibleDescription(shown.isEmpty() ? null : shown);
  }

  /** What and where as a sentence, in the way that the messages of problems begin. */
  static String sentence(String place, String message) {
    if (place.isEmpty()) {
      return message;
    }
    boolean verb = message.startsWith("is ") || message.startsWith("must ");
    return place + (verb ? " " : ": ") + message;
  }

  private static String afterMissing(Problem problem) {
    return problem
        .message()
        .replaceFirst("^is missing:? ?", "")
        .replaceFirst("^give exactly one of.*", "a value is needed");
  }

  /** Where below the list or part a problem lies, in words. */
  private static String place(Problem problem, String place) {
    if (place.isEmpty() || !problem.field().startsWith(place + "/")) {
      return "";
    }
    return FieldNames.words(problem.field().substring(place.lastIndexOf('/')));
  }
}
