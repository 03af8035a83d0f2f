package sandslurry.ui;

import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.awt.Component;
import java.awt.Font;
import java.awt.Rectangle;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import sandslurry.fact.finding.Severity;

/** Colours, fonts and small parts that all views share. */
final class Look {
  /** Dark enough to be read on white and on the background of the form. */
  static final Color PROBLEM = new Color(0xA80F0F);

  static final Color NEEDED = new Color(0x7A4B00);

  private Look() {}

  /** The label of something that a person may set. */
  static JLabel label(String text, JComponent field) {
    JLabel label = new JLabel(text);
    label.setLabelFor(field);
    return label;
  }

  static void install() {
    FlatLightLaf.setup();
    PlainText.install();
    UIManager.put("Component.focusWidth", 1);
    UIManager.put("ScrollBar.showButtons", true);
    UIManager.put("TitlePane.unifiedBackground", false);
  }

  static Color of(Severity severity) {
    return switch (severity) {
      case FAIL -> new Color(0xA80F0F);
      case CAUTION -> new Color(0x8A5300);
      case PASS -> new Color(0x1B6B3A);
      case NOTE -> new Color(0x2F4B6E);
    };
  }

  /** A text that wraps to the width that it is given. */
  static JTextArea wrapped(String text) {
    JTextArea area =
        new JTextArea(text) {
          /** Else a change of the text would scroll the form to it. */
          @Override
          public void scrollRectToVisible(Rectangle place) {}
        };
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setEditable(false);
    area.setFocusable(false);
    area.setOpaque(false);
    area.setBorder(null);
    area.setFont(UIManager.getFont("Label.font"));
    return area;
  }

  static <C extends JComponent> C small(C component) {
    component.setFont(component.getFont().deriveFont(component.getFont().getSize2D() * 0.92f));
    return component;
  }

  static <C extends JComponent> C bold(C component, float scale) {
    Font font = component.getFont();
    component.setFont(font.deriveFont(Font.BOLD, font.getSize2D() * scale));
    return component;
  }

  /** Asks for the focus; true, as the component was found. */
  static boolean focus(JComponent component) {
    component.requestFocusInWindow();
    return true;
  }

  static <C extends Component> C named(C component, String name, String accessibleName) {
    component.setName(name);
    component.getAccessibleContext().setAccessibleName(accessibleName);
    return component;
  }
}
