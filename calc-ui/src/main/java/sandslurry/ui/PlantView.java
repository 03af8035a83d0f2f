package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.FlowLayout;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JSplitPane;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.report.block.TextView;
import sandslurry.report.section.Chapters;

/** The drawing of flows of a plant above its tables. */
final class PlantView {
  private static final String PLANT = "plant";
  private static final String NOTHING = "nothing";
  private static final double[] SIZES = {0.5, 0.75, 1, 1.5, 2};
  private static final String[] ZOOMS = {"50 %", "75 %", "100 %", "150 %", "200 %"};
  private static final int OWN_SIZE = 2;

  private final CardLayout cards = new CardLayout();
  private final JPanel panel = new JPanel(cards);
  private final FlowDrawing drawing = new FlowDrawing();
  private final TextPage tables = new TextPage("plant tables", "Tables of the plant");
  private final JLabel nothing = new JLabel("", JLabel.CENTER);
  private final JComboBox<String> modes = new JComboBox<>();
  private final JComboBox<String> zoom = new JComboBox<>(ZOOMS);
  private Optional<Assessment> shown = Optional.empty();

  PlantView() {
    Look.named(drawing, "plant drawing", "Drawing of the flows of the plant");
    Look.named(modes, "plant drawing mode", "Mode drawn");
    Look.named(zoom, "plant drawing size", "Size of the drawing");
    modes.addActionListener(event -> draw());
    zoom.setSelectedIndex(OWN_SIZE);
    zoom.addActionListener(event -> drawing.zoom(SIZES[zoom.getSelectedIndex()]));
    JPanel above = new JPanel(new FlowLayout(FlowLayout.LEADING));
    above.add(new JLabel("Mode"));
    above.add(modes);
    above.add(new JLabel("Size"));
    above.add(zoom);
    JPanel flows = new JPanel(new BorderLayout());
    flows.add(above, BorderLayout.NORTH);
    flows.add(new JScrollPane(drawing));
    JSplitPane split = new JSplitPane(JSplitPane.VERTICAL_SPLIT, flows, tables.component());
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
    shown = assessment;
    modes.removeAllItems();
    plant.get().modes().forEach(mode -> modes.addItem(mode.mode().name()));
    modes.setSelectedItem(plant.get().main().mode().name());
    draw();
    tables.show(width -> new TextView(width).write(Chapters.plant(all)));
    cards.show(panel, PLANT);
  }

  private void draw() {
    if (shown.isEmpty() || modes.getSelectedIndex() < 0) {
      return;
    }
    Assessment all = shown.get();
    drawing.show(
        all.plant().orElseThrow().modes().get(modes.getSelectedIndex()), all.design().units());
  }
}
