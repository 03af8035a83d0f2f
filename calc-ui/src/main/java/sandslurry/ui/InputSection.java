package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;

/** A titled part of the form: rows of label, field and problem line, some shown only at times. */
final class InputSection implements Row {
  private final FormModel model;
  private final Supplier<String> pointer;
  private final JPanel panel =
      new JPanel(
          new MigLayout(
              "insets 6 12 10 12, fillx, wrap 2, hidemode 3, novisualpadding",
              "[right,172lp!]8lp[grow,fill,170lp::]",
              "[]4lp[]"));
  private final ProblemLine problemLine = new ProblemLine();
  private final List<Row> rows = new ArrayList<>();
  private final String title;
  private final JLabel heading;
  private JComponent first;

  /**
   * Makes an empty section.
   *
   * @param model the model
   * @param title its title
   * @param pointer the part of the document, whose own problems are shown under the title
   */
  InputSection(FormModel model, String title, String pointer) {
    this(model, title, () -> pointer);
  }

  InputSection(FormModel model, String title, Supplier<String> pointer) {
    this.model = model;
    this.title = title;
    this.pointer = pointer;
    panel.setName("section " + title);
    panel.setBorder(
        BorderFactory.createMatteBorder(0, 0, 1, 0, UIManager.getColor("Separator.foreground")));
    panel.getAccessibleContext().setAccessibleName(title);
    heading = Look.bold(new JLabel(title), 1.15f);
    panel.add(heading, "span 2, align left, gapbottom 2lp");
    panel.add(problemLine.component(), "span 2, growx, wmin 0");
  }

  String title() {
    return title;
  }

  JPanel panel() {
    return panel;
  }

  JLabel heading() {
    return heading;
  }

  /** As a part of another section: set in by a line instead of standing for itself. */
  InputSection inside() {
    panel.setBorder(
        BorderFactory.createMatteBorder(0, 2, 0, 0, UIManager.getColor("Component.borderColor")));
    MigLayout layout = (MigLayout) panel.getLayout();
    layout.setLayoutConstraints("insets 2 8 2 0, fillx, wrap 2, hidemode 3, novisualpadding");
    layout.setColumnConstraints("[right,160lp!]8lp[grow,fill,110lp::]");
    heading.setFont(UIManager.getFont("Label.font"));
    Look.bold(heading, 1);
    return this;
  }

  /** A sentence of help under the title. */
  JTextArea note(String text) {
    JTextArea note = Look.small(Look.wrapped(text));
    panel.add(note, "span 2, growx, wmin 0");
    return note;
  }

  private TextRow add(TextRow row) {
    panel.add(row.label());
    panel.add(row.field());
    panel.add(row.problemLine().component(), "skip 1, growx, wmin 0");
    rows.add(row);
    first = first == null ? row.field() : first;
    return row;
  }

  /**
   * Adds a text that is asked for only at times.
   *
   * @param condition when it is
   * @param base pointer of the group that the field belongs to
   * @param field the field
   * @param problemsToo name of another field whose problems are shown here too; may be empty
   */
  void textWhen(
      Predicate<DesignDocument> condition,
      Supplier<String> base,
      Field<?> field,
      String problemsToo) {
    TextRow row = new TextRow(model, base, FieldSpec.of(field), problemsToo);
    // The condition comes before the row is refreshed.
    rows.add(() -> row.setVisible(condition.test(model.document())));
    add(row);
  }

  /** A value that may have a range, asked for only at times: a field, and two for its ends. */
  void rangeWhen(Predicate<DesignDocument> condition, Supplier<String> base, Field<?> field) {
    RangeRow range = new RangeRow(model, base, FieldSpec.of(field));
    JPanel ends = new JPanel(new MigLayout("insets 0, fillx", "[grow,fill]4lp[]4lp[grow,fill]"));
    rows.add(
        () -> {
          boolean visible = condition.test(model.document());
          range.base().setVisible(visible);
          range.low().setVisible(visible);
          range.high().setVisible(visible);
          ends.setVisible(visible);
        });
    add(range.base());
    ends.add(range.low().field(), "wmin 40lp");
    ends.add(new JLabel("to"));
    ends.add(range.high().field(), "wmin 40lp");
    panel.add(range.low().label());
    panel.add(ends, "width 0:120lp");
    rows.add(range.low());
    rows.add(range.high());
    panel.add(range.low().problemLine().component(), "skip 1, growx, wmin 0");
    panel.add(range.high().problemLine().component(), "skip 1, growx, wmin 0");
  }

  ChoiceRow choice(
      String label,
      Supplier<String> place,
      Supplier<List<Choice>> choices,
      Function<DesignDocument, String> get,
      BiFunction<DesignDocument, String, DesignDocument> set) {
    return choice(label, place, () -> List.of(place.get()), choices, get, set);
  }

  ChoiceRow choice(
      String label,
      Supplier<String> place,
      Supplier<List<String>> problemPlaces,
      Supplier<List<Choice>> choices,
      Function<DesignDocument, String> get,
      BiFunction<DesignDocument, String, DesignDocument> set) {
    ChoiceRow row = new ChoiceRow(model, label, place, problemPlaces, choices, get, set);
    panel.add(row.label());
    panel.add(row.box(), "wmin 60lp");
    first = first == null ? row.box() : first;
    panel.add(row.problemLine().component(), "skip 1, growx, wmin 0");
    rows.add(row);
    return row;
  }

  /** The row made last is shown only at times. */
  void choiceWhen(Predicate<DesignDocument> condition, ChoiceRow row) {
    rows.add(rows.indexOf(row), () -> row.setVisible(condition.test(model.document())));
  }

  /**
   * A part that may be there or not; ticked again it is as it was.
   *
   * @param label what the box says
   * @param name name of the box
   * @param there whether the part is there
   * @param add the document with a new part
   * @param parts pointers of everything that goes with the part
   */
  JCheckBox part(
      String label,
      String name,
      Predicate<DesignDocument> there,
      UnaryOperator<DesignDocument> add,
      Supplier<List<String>> parts) {
    JCheckBox box = new JCheckBox(label);
    box.setName(name);
    box.addActionListener(
        event -> {
          String part = parts.get().get(0);
          if (box.isSelected()) {
            model.answer(part, "out", "in", add);
          } else {
            commit();
            model.answer(part, "in", "out", document -> without(document, parts.get()));
          }
        });
    rows.add(() -> box.setSelected(there.test(model.document())));
    panel.add(box, "span 2, align left");
    first = first == null ? box : first;
    return box;
  }

  private static DesignDocument without(DesignDocument document, List<String> parts) {
    DesignDocument without = document;
    for (String part : parts) {
      without = without.without(part);
    }
    return without;
  }

  void focusFirst() {
    first.requestFocusInWindow();
  }

  /** A button under the fields. */
  void button(String label, String name, Runnable run) {
    JButton button = new JButton(label);
    button.setName(name);
    button.addActionListener(event -> run.run());
    panel.add(button, "span 2, align left");
    first = first == null ? button : first;
  }

  /** A component over both columns. */
  void wide(JComponent component) {
    panel.add(component, "span 2, growx, wmin 0");
  }

  /** A table with a label above it, shown only at times. */
  ListTable table(String label, ListTable table, Predicate<DesignDocument> condition) {
    JLabel heading = Look.label(label, table.table());
    panel.add(heading, "span 2, align left, gaptop 4lp");
    wide(table.component());
    rows.add(
        () -> {
          boolean visible = condition.test(model.document());
          heading.setVisible(visible);
          table.component().setVisible(visible);
        });
    rows.add(table);
    return table;
  }

  /** A list whose entries are edited one at a time, shown only at times. */
  void list(ListEditor list, Predicate<DesignDocument> condition) {
    first = first == null ? list.list() : first;
    wide(list.component());
    showWhen(condition, list.component());
    rows.add(list);
  }

  /** Rows that look after themselves. */
  void row(Row row) {
    rows.add(row);
  }

  /** Shows some components only at times. */
  void showWhen(Predicate<DesignDocument> condition, JComponent... components) {
    rows.add(
        () -> {
          boolean visible = condition.test(model.document());
          for (JComponent component : components) {
            component.setVisible(visible);
          }
        });
  }

  @Override
  public void refresh() {
    rows.forEach(Row::refresh);
    problemLine.show(
        panel,
        model.reading().problems().stream().filter(p -> p.field().equals(pointer.get())).toList(),
        "");
  }

  @Override
  public void commit() {
    rows.forEach(Row::commit);
  }

  @Override
  public boolean focus(String place) {
    return rows.stream().anyMatch(row -> row.focus(place));
  }
}
