package sandslurry.manual;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** Curves on two axes, each even or logarithmic, as SVG that is the same on every machine. */
final class LineChart {
  private static final String[] COLOURS = {
    "#0072B2", "#D55E00", "#009E73", "#CC79A7", "#000000", "#E69F00"
  };
  private static final int LEFT = 64;
  private static final int TOP = 14;
  private static final int WIDE = 460;
  private static final int HIGH = 300;
  private static final int STEPS = 160;
  private static final int EDGE = 190;

  private final StringBuilder body = new StringBuilder();
  private final Axis across;
  private final Axis up;
  private int curves;

  /**
   * An axis.
   *
   * @param title what it shows, with its unit
   * @param least its start
   * @param most its end
   * @param logarithmic whether equal ratios are equally long
   * @param ticks where it is marked
   */
  record Axis(String title, double least, double most, boolean logarithmic, double... ticks) {
    double share(double value) {
      return logarithmic
          ? Math.log(value / least) / Math.log(most / least)
          : (value - least) / (most - least);
    }

    double at(double share) {
      return logarithmic ? least * Math.pow(most / least, share) : least + share * (most - least);
    }
  }

  LineChart(Axis across, Axis up) {
    this.across = across;
    this.up = up;
    for (double tick : across.ticks()) {
      line(x(tick), TOP, x(tick), TOP + HIGH, "#dddddd", "");
      text(x(tick), TOP + HIGH + 18, "middle", "#000000", number(tick));
    }
    for (double tick : up.ticks()) {
      line(LEFT, y(tick), LEFT + WIDE, y(tick), "#dddddd", "");
      text(LEFT - 8, y(tick) + 4, "end", "#000000", number(tick));
    }
    text(LEFT + WIDE / 2.0, TOP + HIGH + 38, "middle", "#000000", across.title());
    append(
        "<text x=\"16\" y=\"%1$.1f\" transform=\"rotate(-90 16 %1$.1f)\""
            + " text-anchor=\"middle\">%2$s</text>%n",
        TOP + HIGH / 2.0, up.title());
  }

  /** A curve, drawn where it lies on the axes, with its name in the legend. */
  void curve(String name, double from, double to, DoubleUnaryOperator value) {
    String colour = COLOURS[curves % COLOURS.length];
    StringBuilder points = new StringBuilder();
    for (int i = 0; i <= STEPS; i++) {
      double along =
          across.at(across.share(from) + i * (across.share(to) - across.share(from)) / STEPS);
      double found = value.applyAsDouble(along);
      if (found >= up.least() && found <= up.most()) {
        points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(along), y(found)));
      }
    }
    append(
        "<polyline fill=\"none\" stroke=\"%s\" stroke-width=\"2\" points=\"%s\"/>%n",
        colour, points.toString().strip());
    double row = TOP + 14 + 22.0 * curves;
    line(LEFT + WIDE + 12, row - 4, LEFT + WIDE + 32, row - 4, colour, " stroke-width=\"3\"");
    text(LEFT + WIDE + 38, row, "start", "#000000", name);
    curves++;
  }

  /** A ring in the colour of the curve drawn last. */
  void point(double along, double height) {
    append(
        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\" fill=\"none\" stroke=\"%s\""
            + " stroke-width=\"2\"/>%n",
        x(along), y(height), COLOURS[(curves - 1) % COLOURS.length]);
  }

  /** An upright line with a word at its head. */
  void mark(double along, String word) {
    line(x(along), TOP, x(along), TOP + HIGH, "#666666", " stroke-dasharray=\"5 4\"");
    text(x(along) + 4, TOP + 14, "start", "#444444", word);
  }

  /** A word on the chart. */
  void word(double along, double height, String word) {
    text(x(along), y(height), "middle", "#444444", word);
  }

  private double x(double value) {
    return LEFT + WIDE * across.share(value);
  }

  private double y(double value) {
    return TOP + HIGH - HIGH * up.share(value);
  }

  private static String number(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }

  private void line(double x1, double y1, double x2, double y2, String colour, String more) {
    append(
        "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"%s/>%n",
        x1, y1, x2, y2, colour, more);
  }

  private void text(double x, double y, String anchor, String colour, String text) {
    append(
        "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>%n",
        x, y, anchor, colour, text);
  }

  private void append(String format, Object... values) {
    body.append(String.format(Locale.ROOT, format, values));
  }

  String svg() {
    return String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\""
                + " font-family=\"sans-serif\" font-size=\"13\">%n<rect width=\"100%%\""
                + " height=\"100%%\" fill=\"white\"/>%n",
            LEFT + WIDE + EDGE,
            TOP + HIGH + 50)
        + body
        + "</svg>\n";
  }
}
