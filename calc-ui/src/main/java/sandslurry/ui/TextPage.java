package sandslurry.ui;

import java.awt.Font;
import java.awt.Insets;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.function.IntFunction;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.Timer;

/** A page of a report as text, written for as many characters as there is room for. */
final class TextPage {
  private static final int WIDEST = JudgeCommand.FORM_WIDTH;

  /** In less the tables of a report cannot be read; one scrolls instead. */
  private static final int NARROWEST = 66;

  /** A page is not written anew for every step of a window that is drawn wider. */
  private static final int STILL_MS = 150;

  private final JTextArea text = new JTextArea();
  private final JScrollPane scroll = new JScrollPane(text);
  private IntFunction<String> page = columns -> "";
  private int columns;

  TextPage(String name, String accessibleName) {
    text.setEditable(false);
    text.setFont(new Font(Font.MONOSPACED, Font.PLAIN, text.getFont().getSize()));
    Look.named(text, name, accessibleName);
    scroll.setBorder(null);
    Timer still = new Timer(STILL_MS, event -> refit());
    still.setRepeats(false);
    scroll.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent event) {
            still.restart();
          }
        });
  }

  JScrollPane component() {
    return scroll;
  }

  void setEnabled(boolean enabled) {
    text.setEnabled(enabled);
  }

  /** Shows what a page says when it is written for a number of characters. */
  void show(IntFunction<String> written) {
    page = written;
    columns = fitting();
    String now = page.apply(columns);
    if (!now.equals(text.getText())) {
      text.setText(now);
      text.setCaretPosition(0);
    }
  }

  private void refit() {
    if (columns != 0 && columns != fitting()) {
      show(page);
    }
  }

  private int fitting() {
    Insets edges = text.getInsets();
    int bar = scroll.getVerticalScrollBar().getPreferredSize().width;
    int room = scroll.getWidth() - bar - edges.left - edges.right;
    int letters = room / text.getFontMetrics(text.getFont()).charWidth('m');
    return room > 0 ? Math.max(NARROWEST, Math.min(WIDEST, letters)) : WIDEST;
  }
}
