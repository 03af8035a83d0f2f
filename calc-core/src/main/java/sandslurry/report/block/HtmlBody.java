package sandslurry.report.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import sandslurry.fact.step.Equation;
import sandslurry.units.ShownText;

/** Writes the blocks of a report as the body of an HTML page that is well-formed XML as well. */
public final class HtmlBody {
  /** A table up to so many lines is kept on one page. */
  private static final int SHORT_TABLE = 7;

  /** A cell up to so many characters stays in one line; so does a longer name before a row. */
  private static final int SHORT_CELL = 22;

  private static final int SHORT_NAME = 40;

  /** In a table of more columns names are as short as other cells. */
  private static final int FEW_COLUMNS = 8;

  /** The most rows beside a picture, a heading as two, and the most columns of a table there. */
  private static final int MOST_BESIDE = 17;

  private static final int FEW_BESIDE = 5;

  /** A card of more characters goes on over pages. */
  private static final int LONG_CARD = 900;

  /** So many rows at the end of a long table stay together. */
  private static final int LAST_ROWS = 2;

  /** Characters of a cell that stand in a line. */
  private static final int LINE = 100;

  /** Stands for a break until the text around it is markup. */
  private static final String PART = "\u200b";

  /** What XML does not allow at all, half a letter too. */
  private static final Pattern NOT_IN_XML =
      Pattern.compile("[^\\t\\n\\r\\x20-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]");

  /** So many letters without a space are parted, or a long name takes the room of numbers. */
  private static final Pattern LONG_WORD = Pattern.compile("\\S{32}(?=\\S)");

  /** Marks with a colour of their own. */
  private static final Set<String> GRAVE = Set.of("fail", "caution", "note");

  private static final Pattern RANGE = Pattern.compile(" \\([0-9e.+-]+ to [0-9e.+-]+\\)$");

  private static final String AFTER_HEADING = "<!--h-->\n";

  private static final String KEEP = "<div class=\"keep\">\n";

  /** A heading, with the first words below it, before what goes on over pages. */
  private static final String LEAD = "<div class=\"lead\">\n";

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
    for (int i = 0; i < blocks.size(); i++) {
      int end = body.endOfBeside(blocks, i);
      if (end > i) {
        body.beside(blocks.subList(i, end));
        i = end - 1;
      } else {
        blocks.get(i).write(body);
      }
      body.below =
          blocks.get(i) instanceof Block.Table
              || body.below && blocks.get(i) instanceof Block.Paragraph;
    }
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
    return NOT_IN_XML
        .matcher(text)
        .replaceAll("\uFFFD")
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }

  /** Text in which no line breaks within a number with its unit. */
  private static String words(String text) {
    return ShownText.markQuotients(
        escape(ShownText.together(text)), "<span class=\"one\">", "</span>");
  }

  /** The body as it grows. */
  private final class Body implements BlockWriter {
    private final StringBuilder html = new StringBuilder();
    private int chapter;
    private boolean keep;
    private int kept;

    /** Whether what is kept is a heading and what is said before a table or a card. */
    private boolean leads;

    /** Whether a paragraph is a note to a table, and stands in its size. */
    private boolean below;

    /** Whether the last block is a picture with room beside it. */
    private boolean beside;

    private void put(String template, Object... parts) {
      html.append(String.format(Locale.ROOT, template, parts));
    }

    private void startKeep() {
      if (!keep) {
        kept = html.length();
        html.append(KEEP);
        keep = true;
      }
    }

    private void endKeep() {
      beside = false;
      if (keep) {
        if (afterHeading() || leads) {
          html.replace(kept, kept + KEEP.length(), LEAD);
        }
        html.append("</div>\n");
        keep = false;
        leads = false;
      }
    }

    /** Where those headings with their tables end that have room beside the last picture. */
    private int endOfBeside(List<Block> blocks, int from) {
      int end = from;
      int rows = 0;
      while (beside
          && end + 1 < blocks.size()
          && blocks.get(end) instanceof Block.Heading
          && blocks.get(end + 1) instanceof Block.Table table
          && (end > from ? table.head().size() <= FEW_BESIDE : isPairs(table))) {
        rows += 2 + table.rows().size();
        if (rows > MOST_BESIDE) {
          break;
        }
        end += 2;
      }
      return end;
    }

    /** Headings with their tables in the room beside a picture. */
    private void beside(List<Block> blocks) {
      html.append("<div class=\"picture beside\">");
      for (Block block : blocks) {
        if (block instanceof Block.Heading heading) {
          put(heading);
        } else {
          put((Block.Table) block, false, true);
        }
      }
      html.append("</div>\n");
      endKeep();
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
      put(heading);
    }

    private void put(Block.Heading heading) {
      String id = "";
      if (heading.level() == 1) {
        chapter++;
        id = " id=\"chapter" + chapter + "\"";
      }
      String tag = "h" + (heading.level() + 1);
      put("<%s%s>%s</%s>%s", tag, id, broken(heading.text()), tag, AFTER_HEADING);
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
      boolean goesOn = paragraph.text().endsWith(":");
      if (goesOn) {
        startKeep();
      }
      leads = afterHeading();
      put(below ? "<p class=\"below\">%s</p>\n" : "<p>%s</p>\n", words(paragraph.text()));
      if (!goesOn) {
        endKeep();
      }
    }

    @Override
    public void verdict(Block.Verdict verdict) {
      endKeep();
      String word = verdict.severity().name();
      put(
          "<div class=\"verdict %s\"><h1>%s</h1><p class=\"word\">%s</p></div>\n",
          word.toLowerCase(Locale.ROOT), broken(verdict.title()), word);
    }

    @Override
    public void marked(Block.Marked card) {
      String mark = card.mark().toLowerCase(Locale.ROOT);
      List<String> lines = card.lines().stream().map(HtmlBody::words).toList();
      put(
          "<div class=\"card %s%s\"><p><b class=\"mark\">%s</b> %s",
          GRAVE.contains(mark) ? mark : "plain",
          String.join("", lines).length() > LONG_CARD ? " long" : "",
          escape(card.mark()),
          lines.get(0));
      lines.stream().skip(1).forEach(line -> put("<br/>%s", line));
      put("</p></div>\n");
      endKeep();
    }

    @Override
    public void computed(Block.Computed step) {
      Equation equation = step.equation();
      boolean computed = equation.how() == Equation.How.COMPUTED;
      put(
          "<div class=\"step\"><p>%s</p><p class=\"%s\">%s</p><p>%sgives <b>%s ="
              + " %s</b></p></div>\n",
          escape(step.meaning()),
          computed ? "equation" : "words",
          computed ? MathMarkup.of(equation.symbol(), equation.text()) : escape(equation.text()),
          values(step.values()),
          MathMarkup.of(equation.symbol()),
          escape(step.result()));
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
      List<String> items = list.items().stream().map(HtmlBody::words).toList();
      if (list.style() == Block.Items.Style.SMALL_PRINT) {
        if (items.size() > SHORT_TABLE) {
          // As a long table: its heading stays with its first lines.
          endKeep();
        }
        put("<p class=\"small\">%s</p>\n", String.join(" &#8226; ", items));
      } else {
        String tag = list.style() == Block.Items.Style.NUMBERS ? "ol" : "ul";
        put("<%s>", tag);
        items.forEach(item -> put("<li>%s</li>", item));
        put("</%s>\n", tag);
      }
      endKeep();
    }

    @Override
    public void table(Block.Table table) {
      put(table, isPairs(table), false);
      endKeep();
    }

    private void put(Block.Table table, boolean pairs, boolean isNarrow) {
      List<List<String>> rows = pairs ? sideBySide(table.rows()) : table.rows();
      boolean small = isNarrow || rows.stream().mapToInt(Body::lines).sum() <= SHORT_TABLE;
      if (!small) {
        // The heading stays with the first rows by its own rule; the table goes on over pages.
        endKeep();
      }
      // A table may leave its head alone at the end of a page; this asks for room for some rows.
      html.append(small ? "" : "<div class=\"room-for-rows\"></div>");
      html.append("<table class=\"" + (small ? "short" : "long"));
      html.append(table.head().size() > 9 ? " wide" : "").append("\">");
      boolean headed = table.head().stream().anyMatch(h -> !h.isEmpty());
      if (headed) {
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
      for (int r = 0; r < rows.size(); r++) {
        List<String> row = rows.get(r);
        if (!small && r == rows.size() - LAST_ROWS) {
          html.append("</tbody><tbody class=\"end\">");
        }
        html.append("<tr>");
        for (int i = 0; i < row.size(); i++) {
          boolean name = i == 0 && table.head().size() <= FEW_COLUMNS;
          cell(
              row.get(i),
              name ? SHORT_NAME : SHORT_CELL,
              headed && isNumbers(table, i % table.head().size()));
        }
        html.append("</tr>");
      }
      html.append("</tbody></table>").append('\n');
    }

    private static int lines(List<String> row) {
      return 1 + row.stream().mapToInt(String::length).max().orElse(0) / LINE;
    }

    /** A number, with its range if it has one. */
    private static boolean isNumber(String cell) {
      return TextView.isNumber(RANGE.matcher(cell).replaceFirst(""));
    }

    private static boolean isNumbers(Block.Table table, int column) {
      List<String> cells = table.rows().stream().map(row -> row.get(column)).toList();
      return cells.stream().anyMatch(Body::isNumber)
          && cells.stream().allMatch(c -> c.isEmpty() || c.equals("-") || isNumber(c));
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

    private void cell(String text, int one, boolean number) {
      html.append(
              number
                  ? "<td class=\"number\">"
                  : text.length() <= one ? "<td class=\"one\">" : "<td>")
          .append(broken(text))
          .append("</td>");
    }

    /** Text whose long words may go on in the next line. */
    private static String broken(String text) {
      return words(LONG_WORD.matcher(text).replaceAll("$0" + PART)).replace(PART, "<br/>");
    }

    @Override
    public void window(Block.Window window) {
      startKeep();
      put("<div class=\"window\">%s</div>\n", drawings.window(window));
      put("<p>%s</p>\n", words(window.ends()));
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
        put(
            "<div class=\"picture%s\">%s<p class=\"caption\">%s</p></div>\n",
            picture.wide() ? " wide" : "", markup, escape(picture.caption()));
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
