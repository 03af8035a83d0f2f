package sandslurry.report.block;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import sandslurry.units.ShownText;

/** Writes the blocks of a report as plain text, wrapped to a width, for a terminal or a printer. */
public final class TextView {
  private static final String GAP = "  ";
  private static final int NARROWEST = 9;

  /** In a column below this width a number may stand apart from its unit. */
  private static final int NARROW = 24;

  private final int width;

  /**
   * Makes a view.
   *
   * @param width the greatest number of characters in a line of running text
   */
  public TextView(int width) {
    this.width = width;
  }

  /**
   * Writes the blocks.
   *
   * @param blocks the report
   * @return its text; every line ends with a line feed
   */
  public String write(List<Block> blocks) {
    Lines lines = new Lines();
    blocks.forEach(block -> block.write(lines));
    return lines.text.toString();
  }

  /** Writes one kind of block after the other. */
  private final class Lines implements BlockWriter {
    private final StringBuilder text = new StringBuilder();
    private boolean title;

    private void line(String line) {
      text.append(line.stripTrailing()).append('\n');
    }

    /** A blank line before every block but the first and one right below its title. */
    private void gap() {
      if (text.length() > 0 && !title) {
        text.append('\n');
      }
      title = false;
    }

    @Override
    public void heading(Block.Heading heading) {
      gap();
      line(heading.text());
      if (heading.level() <= 2) {
        line((heading.level() == 1 ? "=" : "-").repeat(heading.text().length()));
        text.append('\n');
      }
      title = true;
    }

    @Override
    public void paragraph(Block.Paragraph paragraph) {
      gap();
      wrap(paragraph.text(), "", "").forEach(this::line);
    }

    @Override
    public void verdict(Block.Verdict verdict) {
      gap();
      String word = verdict.severity().name();
      List<String> lines = new TextView(width - word.length() - 2).wrap(verdict.title(), "", "");
      line(pad(lines.get(0), width - word.length()) + word);
      lines.stream().skip(1).forEach(this::line);
      title = true;
    }

    @Override
    public void marked(Block.Marked card) {
      card(card.mark(), card.lines());
    }

    @Override
    public void computed(Block.Computed step) {
      String symbol = step.equation().symbol();
      card(
          symbol,
          List.of(
              step.meaning(),
              step.equation().printed() + step.with(),
              "gives " + symbol + " = " + step.result()));
    }

    private void card(String mark, List<String> lines) {
      gap();
      String first = String.format(Locale.ROOT, "%-9s", mark);
      String indent = " ".repeat(first.length());
      for (int i = 0; i < lines.size(); i++) {
        wrap(lines.get(i), i == 0 ? first : indent, indent).forEach(this::line);
      }
    }

    @Override
    public void items(Block.Items list) {
      gap();
      int number = 1;
      for (String item : list.items()) {
        String first =
            list.style() == Block.Items.Style.NUMBERS
                ? String.format(Locale.ROOT, "%3d. ", number)
                : "   - ";
        wrap(item, first, "     ").forEach(this::line);
        number++;
      }
    }

    @Override
    public void table(Block.Table table) {
      gap();
      TextView.this.table(text, table);
    }

    @Override
    public void window(Block.Window window) {
      gap();
      new WindowText(width).lines(window).forEach(this::line);
    }

    @Override
    public void picture(Block.Picture picture) {
      // A picture has no words of its own: what it shows stands in a table as well.
    }

    @Override
    public void room(Block.Room room) {
      gap();
      wrap(room.statement(), "", "").forEach(this::line);
      gap();
      room.labels().forEach(label -> line(pad(label + ":", width / 3) + "_".repeat(width / 2)));
    }
  }

  private static String pad(String text, int length) {
    return text + " ".repeat(Math.max(0, length - text.length()));
  }

  private void table(StringBuilder text, Block.Table table) {
    List<List<String>> all = new ArrayList<>();
    all.add(table.head());
    all.addAll(table.rows());
    int[] widths = widths(all);
    for (int r = 0; r < all.size(); r++) {
      row(text, all.get(r), widths, r == 0);
      if (r == 0) {
        rule(text, widths);
      }
    }
  }

  /**
   * Widths of the columns: natural ones, the widest narrowed until the table fits, first those that
   * are wide for their head alone, which may be wrapped between its words.
   */
  private int[] widths(List<List<String>> rows) {
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    int[] floors = new int[columns];
    for (int i = 0; i < columns; i++) {
      for (List<String> row : rows) {
        widths[i] = Math.max(widths[i], row.get(i).length());
        floors[i] = Math.max(floors[i], row == rows.get(0) ? 0 : row.get(i).length());
      }
      for (String word : rows.get(0).get(i).split(" ")) {
        floors[i] = Math.max(floors[i], word.length());
      }
    }
    narrow(widths, floors);
    Arrays.fill(floors, NARROWEST);
    narrow(widths, floors);
    return widths;
  }

  private void narrow(int[] widths, int[] floors) {
    int total = (widths.length - 1) * GAP.length() + Arrays.stream(widths).sum();
    while (total > width) {
      int widest = -1;
      for (int i = 0; i < widths.length; i++) {
        if (widths[i] > floors[i] && (widest < 0 || widths[i] > widths[widest])) {
          widest = i;
        }
      }
      if (widest < 0) {
        return;
      }
      widths[widest]--;
      total--;
    }
  }

  private static void row(StringBuilder text, List<String> cells, int[] widths, boolean head) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int i = 0; i < cells.size(); i++) {
      List<String> lines = new TextView(widths[i]).wrap(cells.get(i), "", "");
      wrapped.add(lines);
      height = Math.max(height, lines.size());
    }
    for (int line = 0; line < height; line++) {
      StringBuilder out = new StringBuilder();
      for (int i = 0; i < cells.size(); i++) {
        // Headings stand at the foot of their row, other cells at its top.
        int skip = head ? height - wrapped.get(i).size() : 0;
        int at = line - skip;
        String cell = at >= 0 && at < wrapped.get(i).size() ? wrapped.get(i).get(at) : "";
        String pad = " ".repeat(Math.max(0, widths[i] - cell.length()));
        out.append(isNumber(cells.get(i)) ? pad + cell : cell + pad);
        out.append(i < cells.size() - 1 ? GAP : "");
      }
      text.append(out.toString().stripTrailing()).append('\n');
    }
  }

  private static void rule(StringBuilder text, int[] widths) {
    List<String> rules = new ArrayList<>();
    for (int columnWidth : widths) {
      rules.add("-".repeat(columnWidth));
    }
    text.append(String.join(GAP, rules)).append('\n');
  }

  static boolean isNumber(String cell) {
    return cell.matches("[+-]?[0-9.]+(e[+-]?[0-9]+)?[%*]?");
  }

  List<String> wrap(String text, String first, String next) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(first);
    boolean empty = true;
    boolean narrow = width < NARROW;
    for (String held : (narrow ? text : ShownText.together(text)).strip().split("\\s+")) {
      String word = ShownText.apart(held);
      if (!empty && line.length() + 1 + word.length() > width) {
        lines.add(line.toString().stripTrailing());
        line = new StringBuilder(next);
        empty = true;
      }
      if (!empty) {
        line.append(' ');
      }
      line.append(word);
      empty = false;
    }
    lines.add(line.toString().stripTrailing());
    return lines;
  }
}
