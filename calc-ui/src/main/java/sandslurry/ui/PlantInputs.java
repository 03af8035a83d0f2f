package sandslurry.ui;

import java.awt.Font;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import sandslurry.design.DesignDocument;
import sandslurry.design.DesignTextException;

/** The plant: tables of its pens and units, and all of its fields as they stand in the file. */
final class PlantInputs implements Row {
  private static final String PLANT = "/plant";
  private static final List<String> KINDS =
      List.of("box", "lane", "cyclone", "screen", "fibreSeparator", "splitter", "pit", "storage");
  private static final int LINES = 18;

  private final FormModel model;
  private final JTextArea text = new JTextArea(LINES, 40);
  private final JButton apply = new JButton("Apply the text");
  private final JButton restore = new JButton("Forget changes of the text");
  private final JLabel wrong = new JLabel(" ");
  private String shown = "";

  private PlantInputs(FormModel model) {
    this.model = model;
  }

  static InputSection of(FormModel model) {
    return new PlantInputs(model).build();
  }

  private static boolean isThere(DesignDocument document) {
    return document.has(PLANT);
  }

  private InputSection build() {
    InputSection section = new InputSection(model, "Plant", PLANT);
    section.part(
        "The design has a plant, from the pens to the storage",
        "part plant",
        PlantInputs::isThere,
        document -> document.insert(PLANT + "/pens", 0, "{}").insert(PLANT + "/units", 0, "{}"),
        document -> document.without(PLANT));
    section.table(
        "Pens",
        new ListTable(
            model,
            () -> PLANT + "/pens",
            "pen",
            List.of(
                ListTable.Column.text("name", "Name"),
                ListTable.Column.text("stream", "Makes stream"),
                ListTable.Column.text("cows", "Cows"),
                ListTable.Column.text("milk", "Milk a cow"),
                ListTable.Column.text("stalls", "Sand stalls"))),
        PlantInputs::isThere);
    section.table(
        "Units",
        new ListTable(
            model,
            () -> PLANT + "/units",
            "unit",
            List.of(
                ListTable.Column.text("name", "Name"),
                new ListTable.Column("kind", "Kind", KINDS),
                ListTable.Column.text("in", "Streams in, with commas"))),
        PlantInputs::isThere);
    JComponent note =
        section.note(
            "Outlets, sizes, modes, storage and targets are changed in the text below, which is the"
                + " plant as it stands in the file; the page on the design file lists its fields.");
    text.setFont(new Font(Font.MONOSPACED, Font.PLAIN, text.getFont().getSize()));
    Look.named(text, "plant text", "Plant as it stands in the file");
    wrong.setForeground(Look.PROBLEM);
    apply.setName("apply plant text");
    restore.setName("restore plant text");
    JScrollPane scroll = new JScrollPane(text);
    section.wide(scroll);
    section.wide(wrong);
    section.wide(apply);
    section.wide(restore);
    section.showWhen(PlantInputs::isThere, note, scroll, wrong, apply, restore);
    section.row(this);
    apply.addActionListener(event -> commit());
    restore.addActionListener(
        event -> {
          shown = "";
          refresh();
        });
    return section;
  }

  @Override
  public void refresh() {
    String now = model.document().indented(PLANT);
    // What is being typed and not yet applied is kept until the plant changes elsewhere.
    if (!now.equals(shown)) {
      shown = now;
      text.setText(now);
      text.setCaretPosition(0);
      wrong.setText(" ");
    }
  }

  @Override
  public void commit() {
    if (!isThere(model.document()) || text.getText().equals(shown)) {
      return;
    }
    try {
      DesignDocument changed = model.document().withPart(PLANT, text.getText());
      wrong.setText(" ");
      model.change(document -> changed);
      shown = "";
      refresh();
    } catch (DesignTextException e) {
      wrong.setText("The text is not applied: " + e.getMessage());
    }
  }

  @Override
  public boolean focus(String pointer) {
    return isThere(model.document()) && pointer.startsWith(PLANT) && Look.focus(text);
  }
}
