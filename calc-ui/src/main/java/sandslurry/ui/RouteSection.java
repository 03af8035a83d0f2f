package sandslurry.ui;

import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.DesignDocument;

/** The transfer line: levels, the list of its runs, and the run that is selected. */
final class RouteSection implements Row {
  private static final String RUNS = "/route/runs";

  private final FormModel model;
  private final InputSection section;
  private final InputSection editor;
  private final DefaultListModel<String> names = new DefaultListModel<>();
  private final JList<String> list = new JList<>(names);
  private final JButton add = new JButton("Add run");
  private final JButton remove = new JButton("Remove run");
  private final JButton up = new JButton("Move up");
  private final JButton down = new JButton("Move down");
  private int selected;

  private RouteSection(FormModel model) {
    this.model = model;
    this.section = new InputSection(model, "Transfer line", "/route");
    this.editor = RunEditor.of(model, this::run);
  }

  static InputSection of(FormModel model) {
    return new RouteSection(model).build();
  }

  private static boolean isThere(DesignDocument document) {
    return document.has("/route");
  }

  private InputSection build() {
    section.part(
        "The design has a transfer line",
        "part route",
        RouteSection::isThere,
        document -> document.insert(RUNS, 0, "{}"),
        RouteSection::withoutLine);
    section.textWhen(
        RouteSection::isThere,
        FieldSpec.standard("Pit level above line start", "sourceLevel", "0 m", "1 m", "3 ft"));
    section.textWhen(
        RouteSection::isThere,
        FieldSpec.standard("Outlet below surface", "outletHead", "0 m", "0.5 m", "2 ft"));
    JLabel heading = new JLabel("Pipe runs in the order of flow");
    heading.setLabelFor(list);
    JPanel buttons = new JPanel(new MigLayout("insets 0", "[]4lp[]4lp[]4lp[]"));
    for (JButton button : new JButton[] {add, remove, up, down}) {
      button.setName(button.getText());
      buttons.add(button);
    }
    setUpList();
    section.panel().add(heading, "span 2, align left, gaptop 4lp");
    section.wide(list);
    section.wide(buttons);
    section.wide(editor.panel());
    JComponent[] parts = {heading, list, buttons, editor.panel()};
    section.showWhen(RouteSection::isThere, parts);
    section.row(this);
    add.addActionListener(event -> addRun());
    remove.addActionListener(event -> removeRun());
    up.addActionListener(event -> move(-1));
    down.addActionListener(event -> move(1));
    return section;
  }

  private void setUpList() {
    Look.named(list, "runs", "Pipe runs in the order of flow");
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.borderColor")));
    list.addListSelectionListener(
        event -> {
          if (list.getSelectedIndex() >= 0 && list.getSelectedIndex() != selected) {
            editor.commit();
            selected = list.getSelectedIndex();
            model.endEdit();
            refresh();
          }
        });
  }

  private static DesignDocument withoutLine(DesignDocument document) {
    return document
        .without("/route")
        .without("/pump")
        .without("/suction")
        .without("/states")
        .without("/operation")
        .without("/flow")
        .without("/mixture")
        .without("/dilution");
  }

  private String run() {
    return RUNS + "/" + selected;
  }

  private void addRun() {
    editor.commit();
    int at = Math.min(selected + 1, model.document().size(RUNS));
    selected = at;
    model.change(document -> document.insert(RUNS, at, "{}"));
  }

  private void removeRun() {
    String run = run();
    selected = Math.max(0, selected - 1);
    model.change(document -> document.without(run));
  }

  private void move(int step) {
    editor.commit();
    String run = run();
    selected += step;
    int to = selected;
    model.change(document -> document.without(run).insert(RUNS, to, document.json(run)));
  }

  @Override
  public void refresh() {
    DesignDocument document = model.document();
    int size = document.size(RUNS);
    selected = Math.max(0, Math.min(selected, size - 1));
    for (int i = 0; i < size; i++) {
      String name = name(document, i);
      if (i >= names.size()) {
        names.addElement(name);
      } else if (!names.get(i).equals(name)) {
        names.set(i, name);
      }
    }
    while (names.size() > size) {
      names.remove(names.size() - 1);
    }
    list.setSelectedIndex(size == 0 ? -1 : selected);
    editor.heading().setText("Run " + (selected + 1));
    editor.panel().setVisible(size > 0);
    add.setEnabled(isThere(document));
    remove.setEnabled(size > 1);
    up.setEnabled(selected > 0);
    down.setEnabled(selected < size - 1);
    if (size > 0) {
      editor.refresh();
    }
  }

  private String name(DesignDocument document, int index) {
    String run = RUNS + "/" + index;
    String name = document.text(run + "/name");
    String pipe =
        document.has(run + "/bore")
            ? document.text(run + "/bore")
            : (document.text(run + "/pipe/size") + " " + document.text(run + "/pipe/class"))
                .strip();
    String length = document.text(run + "/length");
    String what = pipe + (length.isBlank() || pipe.isBlank() ? "" : ", ") + length;
    return (index + 1)
        + "  "
        + (name.isBlank() ? "run " + (index + 1) : name)
        + (what.isBlank() ? "" : ": " + what)
        + (model.problemsAt(run).isEmpty() ? "" : "  (needs attention)");
  }

  @Override
  public void commit() {
    editor.commit();
  }

  @Override
  public boolean focus(String pointer) {
    if (!pointer.startsWith(RUNS + "/")) {
      return pointer.equals(RUNS) && Look.focus(add);
    }
    int index = Integer.parseInt(pointer.substring(RUNS.length() + 1).split("/")[0]);
    if (index < names.size()) {
      list.setSelectedIndex(index);
    }
    return editor.focus(pointer);
  }
}
