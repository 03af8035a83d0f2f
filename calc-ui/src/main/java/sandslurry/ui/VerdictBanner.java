package sandslurry.ui;

import java.awt.Color;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.Problem;
import sandslurry.fact.finding.Severity;
import sandslurry.report.Answer;

/** The verdict in a word, a shape and a colour, with the reason in a sentence. */
final class VerdictBanner {
  private static final int ICON_SIZE = 44;

  private final JPanel panel =
      new JPanel(new MigLayout("insets 10 14 10 14, fillx", "[]12lp[grow,fill]", "[]2lp[]"));
  private final JLabel icon = new JLabel();
  private final JLabel word = Look.bold(new JLabel(" "), 1.7f);
  private final JTextArea reason = Look.wrapped("");

  VerdictBanner() {
    panel.add(icon, "spany 2, aligny top");
    panel.add(word, "wrap");
    panel.add(reason, "wmin 0");
    word.setName("verdict");
    reason.setName("verdict reason");
  }

  JPanel component() {
    return panel;
  }

  void show(FormModel model) {
    Outcome outcome = model.outcome();
    switch (outcome.state()) {
      case DONE -> show(outcome.assessment().orElseThrow());
      case WORKING -> show(Optional.empty(), "WORKING \u2026", "The inputs have changed.");
      case BROKEN -> show(Optional.empty(), "NO VERDICT", outcome.message());
      case PROBLEMS -> show(Optional.empty(), "NO VERDICT", count(model.reading().problems()));
    }
  }

  private void show(Assessment assessment) {
    Severity verdict = assessment.verdict();
    show(Optional.of(verdict), verdict.name(), Answer.sentence(assessment));
  }

  private static String count(List<Problem> problems) {
    return problems.size() == 1
        ? "One input needs attention before anything can be computed."
        : problems.size() + " inputs need attention before anything can be computed.";
  }

  private void show(Optional<Severity> severity, String verdict, String why) {
    icon.setIcon(new SeverityIcon(severity, ICON_SIZE));
    word.setText(verdict);
    Color colour = severity.map(Look::of).orElse(Color.DARK_GRAY);
    word.setForeground(colour);
    word.getAccessibleContext().setAccessibleName("Verdict: " + verdict + ". " + why);
    reason.setText(why);
    panel.setBorder(BorderFactory.createMatteBorder(0, 8, 1, 0, colour));
    panel.revalidate();
    panel.repaint();
  }
}
