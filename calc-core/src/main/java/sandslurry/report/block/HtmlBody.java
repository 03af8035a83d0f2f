package sandslurry.report.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation;

/** Writes the blocks of a report as the body of an HTML page that is well-formed XML as well. */
public final class HtmlBody {
  /** A table up to so many lines is kept on one page. */
  private static final int SHORT_TABLE = 12;

  /** A cell up to so many characters stays in one line, in a table of few columns. */
  private static final int SHORT_CELL = 25;

  private static final int FEW_COLUMNS = 8;

  /** Characters of a cell that stand in a line. */
  private static final int LINE = 100;

  /** Stands for a break until the text around it is markup. */
  private static final String PART = "\u200b";

  /** So many letters without a space are parted, or a long name takes the room of numbers. */
  private static final Pattern LONG_WORD = Pattern.compile("\\S{24}(?=\\S)");

  /** Marks with a colour of their own. */
  private static final Set<String> GRAVE = Set.of("fail", "caution", "note");

  private static final String AFTER_HEADING = "<!--h-->\n";

  /** Characters of a label and its value that stand side by side with another pair. */
  private static final int PAIR = 110;

  /** Gives the markup of what is drawn: a picture in a page, or what stands in for it. */
  public interface Drawings {
    /**
     * A chart or drawing.
     *
     * @param picture the picture
     * @return its markup; empty when there is nothing to draw
     */
    String picture(Block.Picture picture);

    /**
     * An operating window.
     *
     * @param window the window
     * @return its markup
     */
    String window(Block.Window window);
  }

  private final Drawings drawings;

  /**
   * Makes a view.
   *
   * @param drawings gives the markup of what is drawn
   */
  public HtmlBody(Drawings drawings) {
    this.drawings = drawings;
  }

  /**
   * Writes the blocks. A heading holds together with what follows it.
   *
   * @param blocks the report
   * @return the markup of the body
   */
  public String write(List<Block> blocks) {
    Body body = new Body();
    blocks.forEach(block -> block.write(body));
    body.endKeep();
    return body.html.toString();
  }

  /**
   * The headings of the chapters with the anchors that {@link #write} gives them.
   *
   * @param blocks the report
   * @return the chapters in order
   */
  public static List<String> chapters(List<Block> blocks) {
    return blocks.stream()
        .filter(b -> b instanceof Block.Heading heading && heading.level() == 1)
        .map(b -> ((Block.Heading) b).text())
        .toList();
  }

  /**
   * Makes text safe to stand in markup.
   *
   * @param text any text
   * @return the text with the characters of markup replaced
   */
  public static String escape(String text) {
    StringBuilder safe = new StringBuilder();
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                default -> safe.appendCodePoint(allowed(c) ? c : 0xFFFD);
              }
            });
    return safe.toString();
  }

  /** The characters that XML allows at all. */
  private static boolean allowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || c >= 0x20 && c <= 0xD7FF
        || c >= 0xE000 && c <= 0xFFFD
        || c >= 0x10000;
  }

  /** The body as it grows. */
  private final class Body implements BlockWriter {
    private final StringBuilder html = new StringBuilder();
    private int chapter;
    private boolean keep;

    /** Whether the last block is a picture with room beside it. */
    private boolean beside;

    private void startKeep() {
      if (!keep) {
        html.append("<div class=\"keep\">\n");
        keep = true;
      }
    }

    private void endKeep() {
      beside = false;
      if (keep) {
        html.append("</div>\n");
        keep = false;
      }
    }

    private boolean afterHeading() {
      return html.lastIndexOf(AFTER_HEADING) >= 0
          && html.lastIndexOf(AFTER_HEADING) == html.length() - AFTER_HEADING.length();
    }

    @Override
    public void heading(Block.Heading heading) {
      if (!afterHeading()) {
        endKeep();
      }
      startKeep();
      String id = "";
      if (heading.level() == 1) {
        chapter++;
        id = " id=\"chapter" + chapter + "\"";
      }
      String tag = "h" + (heading.level() + 1);
      html.append("<" + tag + id + ">" + broken(heading.text()) + "</" + tag + ">" + AFTER_HEADING);
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
      html.append("<p>").append(escape(paragraph.text())).append("</p>\n");
      endKeep();
    }

    @Override
    public void verdict(Block.Verdict verdict) {
      endKeep();
      String word = verdict.severity().name();
      html.append("<div class=\"verdict ")
          .append(word.toLowerCase(Locale.ROOT))
          .append("\"><h1>")
          .append(escape(verdict.title()))
          .append("</h1><p class=\"word\">")
          .append(word)
          .append("</p></div>\n");
    }

    @Override
    public void marked(Block.Marked card) {
      String mark = card.mark().toLowerCase(Locale.ROOT);
      html.append("<div class=\"card ").append(GRAVE.contains(mark) ? mark : "plain");
      html.append("\"><p><b class=\"mark\">");
      html.append(escape(card.mark())).append("</b> ");
      for (int i = 0; i < card.lines().size(); i++) {
        if (i == 1) {
          html.append("</p><p class=\"more\">");
        } else if (i > 1) {
          html.append("<br/>");
        }
        html.append(escape(card.lines().get(i)));
      }
      html.append("</p></div>\n");
      endKeep();
    }

    @Override
    public void computed(Block.Computed step) {
      Equation equation = step.equation();
      boolean computed = equation.how() == Equation.How.COMPUTED;
      html.append("<div class=\"step\"><p>").append(escape(step.meaning()));
      html.append("</p><p class=\"").append(computed ? "equation" : "words").append("\">");
      html.append(
          computed ? MathMarkup.of(equation.symbol(), equation.text()) : escape(equation.text()));
      html.append("</p><p>").append(values(step.values())).append("gives <b>");
      html.append(MathMarkup.of(equation.symbol())).append(" = ").append(escape(step.result()));
      html.append("</b></p></div>\n");
      endKeep();
    }

    /** What was put in, each symbol set as in the equation. */
    private String values(String values) {
      return values.isEmpty()
          ? ""
          : Arrays.stream(values.split("; "))
              .map(
                  value -> {
                    int is = value.indexOf(" = ");
                    return MathMarkup.of(value.substring(0, is)) + escape(value.substring(is));
                  })
              .collect(Collectors.joining("; ", "with ", " "));
    }

    @Override
    public void items(Block.Items list) {
      if (list.style() == Block.Items.Style.SMALL_PRINT) {
        html.append("<p class=\"small\">");
        html.append(
            list.items().stream().map(HtmlBody::escape).collect(Collectors.joining(" &#8226; ")));
        html.append("</p>\n");
      } else {
        String tag = list.style() == Block.Items.Style.NUMBERS ? "ol" : "ul";
        html.append("<" + tag + ">");
        list.items().forEach(item -> html.append("<li>").append(escape(item)).append("</li>"));
        html.append("</" + tag + ">\n");
      }
      endKeep();
    }

    @Override
    public void table(Block.Table table) {
      boolean pairs = isPairs(table);
      List<List<String>> rows = pairs ? sideBySide(table.rows()) : table.rows();
      boolean small = rows.stream().mapToInt(Body::lines).sum() <= SHORT_TABLE;
      if (!small) {
        // The heading stays with the first rows by its own rule; the table goes on over pages.
        endKeep();
      }
      html.append("<table class=\"" + (small ? "short" : "long"));
      html.append(table.head().size() > 9 ? " wide" : "").append("\">");
      if (table.head().stream().anyMatch(h -> !h.isEmpty())) {
        html.append("<thead><tr>");
        for (int i = 0; i < (pairs ? 2 : 1); i++) {
          for (int column = 0; column < table.head().size(); column++) {
            html.append(isNumbers(table, column) ? "<th class=\"number\">" : "<th>")
                .append(escape(table.head().get(column)).replaceAll("(\\[.*])$", "<span>$1</span>"))
                .append("</th>");
          }
        }
        html.append("</tr></thead>");
      }
      html.append("<tbody>");
      for (List<String> row : rows) {
        html.append("<tr>");
        row.forEach(cell -> cell(cell, table.head().size() > FEW_COLUMNS));
        html.append("</tr>");
      }
      html.append("</tbody></table>\n");
      endKeep();
    }

    private static int lines(List<String> row) {
      return 1 + row.stream().mapToInt(String::length).max().orElse(0) / LINE;
    }

    private static boolean isNumbers(Block.Table table, int column) {
      List<String> cells = table.rows().stream().map(row -> row.get(column)).toList();
      return cells.stream().anyMatch(TextView::isNumber)
          && cells.stream().allMatch(c -> c.isEmpty() || c.equals("-") || TextView.isNumber(c));
    }

    /** A long table of short pairs, which half the width is enough for. */
    private boolean isPairs(Block.Table table) {
      return table.head().size() == 2
          && table.rows().size() > 6
          && table.rows().stream().allMatch(r -> r.get(0).length() + r.get(1).length() < PAIR);
    }

    private List<List<String>> sideBySide(List<List<String>> rows) {
      int half = (rows.size() + 1) / 2;
      List<List<String>> both = new ArrayList<>();
      for (int i = 0; i < half; i++) {
        List<String> right = half + i < rows.size() ? rows.get(half + i) : List.of("", "");
        both.add(List.of(rows.get(i).get(0), rows.get(i).get(1), right.get(0), right.get(1)));
      }
      return both;
    }

    private void cell(String text, boolean narrow) {
      html.append(
              TextView.isNumber(text)
                  ? "<td class=\"number\">"
                  : text.length() <= SHORT_CELL / (narrow ? 2 : 1) ? "<td class=\"one\">" : "<td>")
          .append(broken(text))
          .append("</td>");
    }

    /** Text whose long words may go on in the next line. */
    private static String broken(String text) {
      return escape(LONG_WORD.matcher(text).replaceAll("$0" + PART)).replace(PART, "<br/>");
    }

    @Override
    public void window(Block.Window window) {
      startKeep();
      html.append("<div class=\"window\">").append(drawings.window(window)).append("</div>\n");
      html.append("<p>").append(escape(window.ends())).append("</p>\n");
      endKeep();
    }

    @Override
    public void picture(Block.Picture picture) {
      String markup = drawings.picture(picture);
      if (!markup.isEmpty()) {
        boolean first = !beside || picture.wide();
        if (first && !afterHeading()) {
          endKeep();
        }
        startKeep();
        html.append("<div class=\"picture").append(picture.wide() ? " wide" : "").append("\">");
        html.append(markup);
        html.append("<p class=\"caption\">").append(escape(picture.caption()));
        html.append("</p></div>\n");
        beside = first && !picture.wide();
        if (!beside) {
          endKeep();
        }
      }
    }

    @Override
    public void room(Block.Room room) {
      startKeep();
      html.append("<p>").append(escape(room.statement())).append("</p>");
      html.append("<table class=\"room\"><tbody>");
      for (int i = 0; i < room.labels().size(); i++) {
        html.append(i % 2 == 0 ? "<tr>" : "");
        html.append("<td class=\"label\">").append(escape(room.labels().get(i))).append("</td>");
        html.append("<td class=\"fill\">&#160;</td>");
        html.append(i % 2 == 1 || i == room.labels().size() - 1 ? "</tr>" : "");
      }
      html.append("</tbody></table>\n");
      endKeep();
    }
  }
}
