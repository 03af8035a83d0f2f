package sandslurry.ui;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JLabel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import sandslurry.design.Problem;

/** A text field for one text of the document, with its label and the line for its problems. */
final class TextRow implements Row {
  private final FormModel model;
  private final FieldSpec spec;
  private final Supplier<String> base;
  private final String[] moreProblems;
  private final JLabel label;
  private final JTextField field = new Field();
  private final ProblemLine problemLine = new ProblemLine();
  private boolean taking;

  /**
   * Makes the row.
   *
   * @param model the model
   * @param base pointer of the part that the field belongs to
   * @param spec what the form says of the field
   * @param moreProblems fields of the same part whose problems are shown here too
   */
  TextRow(FormModel model, Supplier<String> base, FieldSpec spec, String... moreProblems) {
    this.model = model;
    this.base = base;
    this.spec = spec;
    this.moreProblems = moreProblems;
    this.label = new JLabel(spec.label());
    label.setLabelFor(field);
    field.setColumns(12);
    field.putClientProperty("JTextField.placeholderText", spec.empty());
    field.getAccessibleContext().setAccessibleName(spec.label());
    field
        .getDocument()
        .addDocumentListener(
            new DocumentListener() {
              @Override
              public void insertUpdate(DocumentEvent e) {
                typed();
              }

              @Override
              public void removeUpdate(DocumentEvent e) {
                typed();
              }

              @Override
              public void changedUpdate(DocumentEvent e) {
                typed();
              }
            });
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            model.endEdit();
          }
        });
  }

  JLabel label() {
    return label;
  }

  JTextField field() {
    return field;
  }

  ProblemLine problemLine() {
    return problemLine;
  }

  private String pointer() {
    return base.get() + "/" + spec.field();
  }

  private void typed() {
    if (!taking) {
      model.edit(pointer(), field.getText());
    }
  }

  void setVisible(boolean visible) {
    label.setVisible(visible);
    field.setVisible(visible);
    if (!visible) {
      problemLine.component().setVisible(false);
    }
  }

  @Override
  public void refresh() {
    field.setName(pointer());
    String text = model.document().text(pointer());
    if (!text.equals(field.getText()) && !(text.isBlank() && field.getText().isBlank())) {
      taking = true;
      field.setText(text);
      field.setCaretPosition(0);
      taking = false;
    }
    if (field.isVisible()) {
      List<Problem> problems = new ArrayList<>(model.problemsAt(pointer()));
      for (String other : moreProblems) {
        problems.addAll(model.problemsAt(base.get() + "/" + other));
      }
      problemLine.show(field, problems, "");
    }
  }

  @Override
  public boolean focus(String pointer) {
    return field.isVisible() && pointer.equals(pointer()) && Look.focus(field);
  }

  /** A field whose tip is worked out only when somebody looks at it. */
  @SuppressWarnings("serial")
  private final class Field extends JTextField {
    Field() {
      setToolTipText("");
    }

    @Override
    public String getToolTipText(MouseEvent event) {
      return spec.help(model.document(), pointer());
    }
  }
}
