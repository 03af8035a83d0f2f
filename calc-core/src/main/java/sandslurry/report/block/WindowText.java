package sandslurry.report.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Draws an operating window with characters: a scale of flow rates and what stands on it. */
final class WindowText {
  private static final int INDENT = 3;
  private static final int WIDEST = 84;

  /** One place on the scale. */
  private record Tick(double flow, String number, String word, char sign) {
    int width() {
      return Math.max(number.length(), word.length());
    }
  }

  private final int width;

  WindowText(int width) {
    this.width = Math.min(width, WIDEST);
  }

  List<String> lines(Block.Window window) {
    List<Tick> ticks = new ArrayList<>();
    window.lowest().ifPresent(flow -> ticks.add(new Tick(flow, number(flow, true), "lowest", '|')));
    window.judged().forEach(m -> ticks.add(new Tick(m.flow(), m.text(), m.word(), 'o')));
    window
        .highest()
        .ifPresent(flow -> ticks.add(new Tick(flow, number(flow, false), "highest", '|')));
    ticks.sort(Comparator.comparingDouble(Tick::flow));
    int[] columns = columns(ticks);
    StringBuilder numbers = new StringBuilder();
    StringBuilder axis = new StringBuilder();
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < ticks.size(); i++) {
      Tick tick = ticks.get(i);
      char between = i > 0 && inside(window, ticks.get(i - 1).flow(), tick.flow()) ? '-' : ' ';
      fill(axis, columns[i], i == 0 ? ' ' : between);
      axis.append(tick.sign());
      fill(numbers, columns[i], ' ');
      numbers.append(tick.number());
      fill(words, columns[i], ' ');
      words.append(tick.word());
    }
    if (window.highest().isEmpty() && window.lowest().isPresent()) {
      axis.append("---->");
    }
    List<String> lines = new ArrayList<>();
    lines.add("Operating window, " + window.unit());
    lines.add(numbers.toString());
    lines.add(axis.toString());
    lines.add(words.toString());
    String below =
        window.lowest().isPresent()
            ? "Below " + number(window.lowest().getAsDouble(), true) + ": " + window.below() + "."
            : capital(window.below()) + ".";
    String above =
        window.highest().isPresent()
            ? " Above "
                + number(window.highest().getAsDouble(), false)
                + ": "
                + window.above()
                + "."
            : window.above().isEmpty() ? "" : " " + window.above() + ".";
    lines.addAll(new TextView(width).wrap(below + above, " ".repeat(INDENT), " ".repeat(INDENT)));
    return lines;
  }

  /** Whether the line holds between two flow rates. */
  private static boolean inside(Block.Window window, double from, double to) {
    OptionalDouble low = window.lowest();
    OptionalDouble high = window.highest();
    return low.isPresent()
        && from >= low.getAsDouble() - 1e-9
        && (high.isEmpty() || to <= high.getAsDouble() + 1e-9);
  }

  /** Columns to scale, moved apart where the words would touch. */
  private int[] columns(List<Tick> ticks) {
    int[] columns = new int[ticks.size()];
    double first = ticks.get(0).flow();
    double last = ticks.get(ticks.size() - 1).flow();
    int room = width - 2 * INDENT - ticks.get(ticks.size() - 1).width();
    int next = INDENT;
    for (int i = 0; i < ticks.size(); i++) {
      double share = last > first ? (ticks.get(i).flow() - first) / (last - first) : 0;
      columns[i] = Math.max(next, INDENT + (int) Math.round(share * room));
      next = columns[i] + ticks.get(i).width() + 2;
    }
    return columns;
  }

  private static void fill(StringBuilder text, int column, char with) {
    while (text.length() < column) {
      text.append(with);
    }
  }

  /** A lowest flow rate is rounded up and a highest down, so that the number shown is safe. */
  static String number(double flow, boolean up) {
    double scale = Math.pow(10, Math.floor(Math.log10(Math.max(flow, 1e-9))) - 2);
    double rounded =
        (up ? Math.ceil(flow / scale - 1e-6) : Math.floor(flow / scale + 1e-6)) * scale;
    int decimals = (int) Math.max(0, -Math.round(Math.log10(scale)));
    return String.format(Locale.ROOT, "%." + decimals + "f", rounded);
  }

  private static String capital(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
