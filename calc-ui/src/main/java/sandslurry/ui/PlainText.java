package sandslurry.ui;

import com.formdev.flatlaf.ui.FlatLabelUI;
import com.formdev.flatlaf.ui.FlatToolTipUI;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.plaf.ComponentUI;

/**
 * Labels and tips that show every text letter by letter. Swing draws a text that begins with {@code
 * <html>} as markup and fetches its images, so a name in a design file could make the form call a
 * server. Cells of tables, lists and choices and the messages of dialogs are labels too.
 */
final class PlainText {
  private static final String NO_MARKUP = "html.disable";

  private PlainText() {}

  /** Makes every label and tip of the program plain, those that libraries build as well. */
  static void install() {
    UIManager.put("LabelUI", OfLabel.class.getName());
    UIManager.put("ToolTipUI", OfToolTip.class.getName());
  }

  /** Paints a label; public because the look and feel makes it by its name. */
  public static final class OfLabel extends FlatLabelUI {
    private OfLabel() {
      super(false);
    }

    /**
     * Makes the delegate of one label.
     *
     * @param label the label
     * @return its delegate
     */
    public static ComponentUI createUI(JComponent label) {
      return new OfLabel();
    }

    @Override
    public void installUI(JComponent label) {
      label.putClientProperty(NO_MARKUP, Boolean.TRUE);
      super.installUI(label);
    }
  }

  /** Paints a tip; public because the look and feel makes it by its name. */
  public static final class OfToolTip extends FlatToolTipUI {
    private OfToolTip() {}

    /**
     * Makes the delegate of one tip.
     *
     * @param tip the tip
     * @return its delegate
     */
    public static ComponentUI createUI(JComponent tip) {
      return new OfToolTip();
    }

    @Override
    public void installUI(JComponent tip) {
      tip.putClientProperty(NO_MARKUP, Boolean.TRUE);
      super.installUI(tip);
    }
  }
}
