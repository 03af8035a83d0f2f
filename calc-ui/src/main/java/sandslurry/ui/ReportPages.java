package sandslurry.ui;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lays the text report on pages, and the drawing of the plant on a last one: title and date above,
 * page number and caution below.
 */
final class ReportPages implements Printable {
  private static final float LARGEST_FONT = 10;
  private static final float SMALLEST_FONT = 6;
  private static final int HEADER_LINES = 2;
  private static final int FOOTER_LINES = 3;

  private final String title;
  private final String date;
  private final List<String> lines;
  private final Optional<FlowDrawing> drawing;

  ReportPages(String title, String date, String report, Optional<FlowDrawing> drawing) {
    this.title = title;
    this.date = date;
    this.drawing = drawing;
    this.lines = report.lines().toList();
  }

  /** The text in a font in which the widest line fits if it can, cut into pages. */
  private record Sheets(Font font, double lineHeight, List<List<String>> pages) {}

  int pageCount(PageFormat format) {
    return sheets(format).pages().size() + (drawing.isPresent() ? 1 : 0);
  }

  private Sheets sheets(PageFormat format) {
    FontRenderContext context = new FontRenderContext(null, true, true);
    Font unit = new Font(Font.MONOSPACED, Font.PLAIN, 1).deriveFont(LARGEST_FONT);
    double letter = unit.getStringBounds("M", context).getWidth() / LARGEST_FONT;
    int widest =
        lines.stream().mapToInt(String::length).reduce(Product.CAUTION.length(), Math::max);
    // A hair less than fits, so that rounding does not break the last letter off.
    double fitting = 0.999 * format.getImageableWidth() / (letter * widest);
    float size = (float) Math.max(SMALLEST_FONT, Math.min(LARGEST_FONT, fitting));
    Font font = unit.deriveFont(size);
    double height = font.getLineMetrics("Mg", context).getHeight();
    int columns = Math.max(20, (int) (format.getImageableWidth() / (letter * size)));
    int rows =
        Math.max(5, (int) (format.getImageableHeight() / height) - HEADER_LINES - FOOTER_LINES);
    return new Sheets(font, height, pages(columns, rows));
  }

  private List<List<String>> pages(int columns, int rows) {
    List<String> fitted = new ArrayList<>();
    for (String line : lines) {
      String rest = line;
      while (rest.length() > columns) {
        fitted.add(rest.substring(0, columns));
        rest = "    " + rest.substring(columns);
      }
      fitted.add(rest);
    }
    List<List<String>> pages = new ArrayList<>();
    for (int from = 0; from < fitted.size(); from += rows) {
      pages.add(fitted.subList(from, Math.min(fitted.size(), from + rows)));
    }
    return pages;
  }

  @Override
  public int print(Graphics graphics, PageFormat format, int index) {
    Sheets sheets = sheets(format);
    int count = pageCount(format);
    if (index >= count) {
      return NO_SUCH_PAGE;
    }
    Graphics2D g = (Graphics2D) graphics.create();
    g.translate(format.getImageableX(), format.getImageableY());
    g.setRenderingHint(
        RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Color.BLACK);
    g.setFont(sheets.font());
    FontMetrics metrics = g.getFontMetrics();
    float y = metrics.getAscent();
    g.drawString(title, 0, y);
    right(g, metrics, date, format, y);
    y += (float) (sheets.lineHeight() * HEADER_LINES);
    float bottom = (float) format.getImageableHeight() - metrics.getDescent();
    if (index < sheets.pages().size()) {
      for (String line : sheets.pages().get(index)) {
        g.drawString(line, 0, y);
        y += (float) sheets.lineHeight();
      }
    } else {
      Graphics2D space = (Graphics2D) g.create();
      space.translate(0, y);
      drawing
          .orElseThrow()
          .paintInto(
              space, format.getImageableWidth(), bottom - FOOTER_LINES * sheets.lineHeight() - y);
      space.dispose();
    }
    g.drawString(Product.CAUTION, 0, bottom - (float) sheets.lineHeight());
    right(g, metrics, "page " + (index + 1) + " of " + count, format, bottom);
    g.dispose();
    return PAGE_EXISTS;
  }

  private static void right(
      Graphics2D g, FontMetrics metrics, String text, PageFormat format, float y) {
    g.drawString(text, (float) (format.getImageableWidth() - metrics.stringWidth(text)), y);
  }
}
