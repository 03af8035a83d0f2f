package sandslurry.ui;

import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import javax.swing.UIManager;

/** A page of text that wraps, can be copied and can be read by keyboard. */
final class HtmlView {
  private final JEditorPane page = new JEditorPane("text/html", "");
  private final JScrollPane scroll = new JScrollPane(page);
  private String shown = "";

  HtmlView(String name, String accessibleName) {
    page.putClientProperty(JEditorPane.HONOR_DISPLAY_PROPERTIES, true);
    page.setFont(UIManager.getFont("Label.font"));
    page.setEditable(false);
    Look.named(page, name, accessibleName);
    scroll.setBorder(null);
  }

  JScrollPane component() {
    return scroll;
  }

  JEditorPane page() {
    return page;
  }

  void show(String body) {
    if (!body.equals(shown)) {
      shown = body;
      Font font = page.getFont();
      page.setText(
          "<html><head><style>th { text-align: left }</style></head><body style='margin:10px'>"
              + body
              + "</body></html>");
      page.setFont(font);
      page.setCaretPosition(0);
    }
  }

  static String colour(Color colour) {
    return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
  }
}
