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
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;

/** A text field for one text of the document, with its label and the line for its problems. */
final class TextRow implements Row {
  private final FormModel model;
  private final FieldSpec spec;
  private final Supplier<String> place;
  private final Supplier<List<Problem>> problems;
  private final Setter setter;
  private final JLabel label;
  private final JTextField field = new Field();
  private final ProblemLine problemLine = new ProblemLine();
  private boolean taking;

  /** Puts a text into a document. */
  interface Setter {
    DesignDocument set(DesignDocument document, String text);
  }

  /**
   * Makes the row.
   *
   * @param model the model
   * @param base pointer of the part that the field belongs to
   * @param spec what the form says of the field
   * @param problemsToo name of another field whose problems are shown here too; may be empty
   */
  TextRow(FormModel model, Supplier<String> base, FieldSpec spec, String problemsToo) {
    this(
        model,
        spec,
        () -> base.get() + "/" + spec.field(),
        () -> problems(model, base.get(), spec, problemsToo),
        (document, text) -> document.with(base.get() + "/" + spec.field(), text));
  }

  /**
   * Makes a row whose text has a way of its own into the document.
   *
   * @param model the model
   * @param spec what the form says of the field
   * @param place pointer of the field
   * @param problems the problems shown with it
   * @param setter puts a text into the document
   */
  TextRow(
      FormModel model,
      FieldSpec spec,
      Supplier<String> place,
      Supplier<List<Problem>> problems,
      Setter setter) {
    this.model = model;
    this.spec = spec;
    this.place = place;
    this.problems = problems;
    this.setter = setter;
    this.label = new JLabel(spec.label());
    label.setLabelFor(field);
    label.setToolTipText(spec.help());
    field.setColumns(12);
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

  private static List<Problem> problems(FormModel model, String base, FieldSpec spec, String more) {
    List<Problem> problems = new ArrayList<>(model.problemsAt(base + "/" + spec.field()));
    if (!more.isEmpty()) {
      problems.addAll(model.problemsAt(base + "/" + more));
    }
    return problems;
  }

  private String pointer() {
    return place.get();
  }

  private void typed() {
    if (!taking) {
      String text = field.getText();
      model.edit(pointer(), document -> setter.set(document, text));
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
    field.putClientProperty("JTextField.placeholderText", spec.placeholder(model.document()));
    String text = model.document().text(pointer());
    if (!text.equals(field.getText()) && !(text.isBlank() && field.getText().isBlank())) {
      taking = true;
      field.setText(text);
      field.setCaretPosition(0);
      taking = false;
    }
    if (field.isVisible()) {
      problemLine.show(field, problems.get(), "");
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
      return spec.help();
    }
  }
}
