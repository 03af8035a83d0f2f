package sandslurry.ui;

import java.awt.Dimension;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import sandslurry.design.document.DesignDocument;

/** A list to choose from, for one choice of the document. */
final class ChoiceRow implements Row {
  private static final String NOTHING_YET = "choose \u2026";

  private final FormModel model;
  private final Supplier<String> pointer;
  private final Supplier<List<String>> places;
  private final Supplier<List<Choice>> choices;
  private final Function<DesignDocument, String> get;
  private final JLabel label;
  private final JComboBox<Choice> box = new Narrowing();
  private final ProblemLine problemLine = new ProblemLine();
  private boolean taking;

  /** A box that gives way: a long choice must not widen the inputs beyond their view. */
  private static final class Narrowing extends JComboBox<Choice> {
    private static final long serialVersionUID = 1;

    @Override
    public Dimension getMinimumSize() {
      return new Dimension(0, super.getMinimumSize().height);
    }

    /**
     * As wide as a field; the layout widens it, and the list that opens shows each choice whole.
     */
    @Override
    public Dimension getPreferredSize() {
      Dimension whole = super.getPreferredSize();
      return new Dimension(Math.min(whole.width, 8 * whole.height), whole.height);
    }
  }

  /**
   * Makes the row.
   *
   * @param model the model
   * @param text its label
   * @param pointer the field that is chosen
   * @param places the fields whose own problems are shown here
   * @param choices what there is to choose from now
   * @param get the choice that a document holds; blank for none
   * @param set the document with another choice
   */
  ChoiceRow(
      FormModel model,
      String text,
      Supplier<String> pointer,
      Supplier<List<String>> places,
      Supplier<List<Choice>> choices,
      Function<DesignDocument, String> get,
      BiFunction<DesignDocument, String, DesignDocument> set) {
    this.model = model;
    this.pointer = pointer;
    this.places = places;
    this.choices = choices;
    this.get = get;
    this.label = new JLabel(text);
    label.setLabelFor(box);
    box.getAccessibleContext().setAccessibleName(text);
    box.setMaximumRowCount(16);
    box.addActionListener(
        event -> {
          Choice chosen = (Choice) box.getSelectedItem();
          if (!taking && chosen != null) {
            model.answer(
                pointer.get(),
                get.apply(model.document()),
                chosen.value(),
                document -> set.apply(document, chosen.value()));
            refresh();
          }
        });
  }

  JLabel label() {
    return label;
  }

  JComboBox<Choice> box() {
    return box;
  }

  ProblemLine problemLine() {
    return problemLine;
  }

  void setVisible(boolean visible) {
    label.setVisible(visible);
    box.setVisible(visible);
    if (!visible) {
      problemLine.component().setVisible(false);
    }
  }

  @Override
  public void refresh() {
    box.setName(pointer.get());
    String value = get.apply(model.document());
    DefaultComboBoxModel<Choice> entries = new DefaultComboBoxModel<>();
    Choice selected = null;
    for (Choice choice : choices.get()) {
      entries.addElement(choice);
      if (choice.value().equalsIgnoreCase(value)) {
        selected = choice;
      }
    }
    if (selected == null) {
      selected =
          new Choice(value, value.isBlank() ? NOTHING_YET : "\"" + value + "\", not known here");
      entries.insertElementAt(selected, 0);
    }
    taking = true;
    if (!same(entries)) {
      box.setModel(entries);
    }
    box.setSelectedItem(selected);
    box.setToolTipText(selected.label());
    taking = false;
    if (box.isVisible()) {
      List<String> shown = places.get();
      problemLine.show(
          box,
          model.reading().problems().stream().filter(p -> shown.contains(p.field())).toList(),
          "");
    }
  }

  private boolean same(DefaultComboBoxModel<Choice> entries) {
    if (entries.getSize() != box.getItemCount()) {
      return false;
    }
    for (int i = 0; i < entries.getSize(); i++) {
      if (!entries.getElementAt(i).equals(box.getItemAt(i))) {
        return false;
      }
    }
    return true;
  }

  @Override
  public boolean focus(String place) {
    return box.isVisible()
        && (place.equals(pointer.get()) || places.get().contains(place))
        && Look.focus(box);
  }
}
