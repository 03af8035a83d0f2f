package sandslurry.report.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Draws an operating window with characters: a scale of flow rates and what stands on it. */
final class WindowText {
  private static final int INDENT = 3;
  private static final int WIDEST = 84;
  private static final double SAME = 1e-6;

  /** One place on the scale. */
  private record Tick(double flow, String number, String word, char sign) {
    boolean isAt(double other) {
      return Math.abs(other / flow - 1) < SAME;
    }

    int width() {
      return Math.max(number.length(), word.length());
    }
  }

  private final int width;

  WindowText(int width) {
    this.width = Math.min(width, WIDEST);
  }

  /** The places on the scale: number, word, and whether the line works up to the next. */
  static List<Block.Window.Place> places(Block.Window window) {
    List<Tick> ticks = ticks(window);
    List<Block.Window.Place> places = new ArrayList<>();
    for (int i = 0; i < ticks.size(); i++) {
      Tick tick = ticks.get(i);
      places.add(
          new Block.Window.Place(
              tick.number(),
              tick.word(),
              i + 1 < ticks.size() && inside(window, tick.flow(), ticks.get(i + 1).flow())));
    }
    return places;
  }

  private static List<Tick> ticks(Block.Window window) {
    List<Tick> ticks = new ArrayList<>();
    for (Block.Window.Stretch stretch : window.stretches()) {
      stretch
          .lowest()
          .ifPresent(flow -> ticks.add(new Tick(flow, stretch.lowestText(), "lowest", '|')));
      stretch
          .highest()
          .ifPresent(flow -> ticks.add(new Tick(flow, stretch.highestText(), "highest", '|')));
    }
    for (Block.Window.Mark mark : window.judged()) {
      Optional<Tick> end =
          ticks.stream().filter(t -> t.sign() == '|' && t.isAt(mark.flow())).findFirst();
      end.ifPresent(ticks::remove);
      ticks.add(
          end.map(t -> new Tick(t.flow(), t.number(), t.word() + ", " + mark.word(), '|'))
              .orElseGet(() -> new Tick(mark.flow(), mark.text(), mark.word(), 'o')));
    }
    ticks.sort(Comparator.comparingDouble(Tick::flow));
    return ticks;
  }

  List<String> lines(Block.Window window) {
    List<Tick> ticks = ticks(window);
    int[] columns = columns(ticks);
    StringBuilder numbers = new StringBuilder();
    StringBuilder axis = new StringBuilder();
    StringBuilder words = new StringBuilder();
    for (int i = 0; i < ticks.size(); i++) {
      Tick tick = ticks.get(i);
      boolean works = inside(window, i == 0 ? 0 : ticks.get(i - 1).flow(), tick.flow());
      fill(axis, columns[i], works ? '-' : ' ');
      axis.append(tick.sign());
      fill(numbers, columns[i], ' ');
      numbers.append(tick.number());
      fill(words, columns[i], ' ');
      words.append(tick.word());
    }
    if (window.stretches().stream().anyMatch(stretch -> stretch.highest().isEmpty())) {
      axis.append("---->");
    }
    List<String> lines = new ArrayList<>();
    lines.add("Operating window, " + window.unit());
    lines.add(numbers.toString());
    lines.add(axis.toString());
    lines.add(words.toString());
    lines.addAll(new TextView(width).wrap(ends(window), " ".repeat(INDENT), " ".repeat(INDENT)));
    return lines;
  }

  /** What sets the ends, in sentences. */
  static String ends(Block.Window window) {
    List<String> sentences = new ArrayList<>();
    if (window.stretches().isEmpty()) {
      sentences.add(("No flow rate works. " + window.empty()).strip());
    }
    for (Block.Window.Stretch stretch : window.stretches()) {
      if (stretch.lowest().isPresent()) {
        sentences.add("Below " + stretch.lowestText() + ": " + stretch.below() + ".");
      }
      if (stretch.highest().isPresent()) {
        sentences.add("Above " + stretch.highestText() + ": " + stretch.above() + ".");
      }
    }
    return String.join(" ", sentences);
  }

  /** Whether the line works between two flow rates. */
  private static boolean inside(Block.Window window, double from, double to) {
    return window.stretches().stream().anyMatch(stretch -> stretch.holds(from, to));
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
}
