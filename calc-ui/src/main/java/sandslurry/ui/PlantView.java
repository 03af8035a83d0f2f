package sandslurry.ui;

import java.awt.CardLayout;
import java.awt.Font;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import javax.swing.JTextArea;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.PlantResult;
import sandslurry.report.block.TextView;
import sandslurry.report.section.PlantSection;

/** The drawing of flows of a plant above its tables. */
final class PlantView {
  private static final String PLANT = "plant";
  private static final String NOTHING = "nothing";

  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final FlowDrawing drawing = new FlowDrawing();
  private final JTextArea tables = new JTextArea();
  private final JLabel nothing = new JLabel("", JLabel.CENTER);

  PlantView() {
    Look.named(drawing, "plant drawing", "Drawing of the flows of the plant");
    Look.named(tables, "plant tables", "Tables of the plant");
    tables.setEditable(false);
    tables.setFont(new Font(Font.MONOSPACED, Font.PLAIN, tables.getFont().getSize()));
    JSplitPane split =
        new JSplitPane(
            JSplitPane.VERTICAL_SPLIT, new JScrollPane(drawing), new JScrollPane(tables));
    split.setResizeWeight(0.55);
    panel.add(split, PLANT);
    panel.add(nothing, NOTHING);
  }

  JPanel component() {
    return panel;
  }

  void show(Optional<Assessment> assessment, String whyNot) {
    Optional<PlantResult> plant = assessment.flatMap(Assessment::plant);
    if (plant.isEmpty()) {
      nothing.setText(whyNot);
      cards.show(panel, NOTHING);
      return;
    }
    Assessment all = assessment.get();
    drawing.show(plant.get().main(), all.design().units());
    tables.setText(
        new TextView(JudgeCommand.REPORT_WIDTH)
            .write(
                PlantSection.of(
                    plant.get(), all.design().plant().orElseThrow(), all.design().units())));
    tables.setCaretPosition(0);
    cards.show(panel, PLANT);
  }
}
