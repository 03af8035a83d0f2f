package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.document.Problem;
import sandslurry.units.ShownText;

/**
 * Fields of the file that no row of the form shows: each with its value, and a way to remove it.
 */
final class UnknownFields implements Row {
  private final FormModel model;
  private final JPanel rows =
      new JPanel(new MigLayout("insets 0, fillx, wrap 2", "[grow,fill]8lp[]"));
  private List<Problem> shown = List.of();

  private UnknownFields(FormModel model) {
    this.model = model;
  }

  static InputSection of(FormModel model) {
    UnknownFields fields = new UnknownFields(model);
    InputSection section = new InputSection(model, "Fields that are not known", NOWHERE);
    section.note("The file has them, but no design does; a slip of a name is the usual reason.");
    section.button("Remove them all", "remove unknown", fields::removeAll);
    section.wide(fields.rows);
    section.row(fields);
    return section;
  }

  /** A place that no problem is at. */
  private static final String NOWHERE = "/~0";

  static boolean isUnknown(Problem problem) {
    return problem.message().startsWith("is not a field here");
  }

  static boolean any(FormModel model) {
    return model.reading().problems().stream().anyMatch(UnknownFields::isUnknown);
  }

  private List<Problem> unknown() {
    return model.reading().problems().stream().filter(UnknownFields::isUnknown).toList();
  }

  private void removeAll() {
    List<Problem> all = unknown();
    model.change(
        document -> {
          var without = document;
          for (Problem problem : all) {
            without = without.without(problem.field());
          }
          return without;
        });
  }

  @Override
  public void refresh() {
    List<Problem> now = unknown();
    if (now.equals(shown)) {
      return;
    }
    shown = now;
    rows.removeAll();
    for (Problem problem : now) {
      String what = ShownText.brief(FieldNames.words(problem.field()));
      String value = ShownText.brief(model.document().json(problem.field()));
      JButton remove = new JButton("Remove");
      remove.setName(problem.field() + " remove");
      remove.getAccessibleContext().setAccessibleName("Remove " + what);
      remove.addActionListener(
          event -> model.change(document -> document.without(problem.field())));
      JLabel label = new JLabel(what + " = " + value);
      label.setToolTipText(ShownText.message(problem.field()));
      rows.add(label, "wmin 0");
      rows.add(remove);
    }
    rows.revalidate();
    rows.repaint();
  }

  @Override
  public boolean focus(String pointer) {
    List<String> places = new ArrayList<>();
    shown.forEach(problem -> places.add(problem.field()));
    int at = places.indexOf(pointer);
    return at >= 0 && Look.focus((JButton) rows.getComponent(2 * at + 1));
  }
}
