package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Points of several sets on two equal logarithmic axes with the line of equality, as SVG that is
 * the same on every machine.
 */
final class ScatterChart {
  private static final double[] TICKS = {0.3, 0.5, 1, 2, 3, 5, 8};
  private static final String[] COLOURS = {
    "#D55E00", "#0072B2", "#009E73", "#CC79A7", "#000000", "#56B4E9", "#E69F00", "#999999",
    "#7a5195", "#8c564b"
  };
  private static final int LEFT = 64;
  private static final int TOP = 12;
  private static final int SIDE = 420;
  private static final int LEGEND = LEFT + SIDE + 16;

  private final StringBuilder body = new StringBuilder();
  private final double least;
  private final double most;
  private int sets;

  /**
   * A point.
   *
   * @param x on the horizontal axis
   * @param y on the vertical axis
   */
  record Point(double x, double y) {}

  ScatterChart(String across, String up, double least, double most) {
    this.least = least;
    this.most = most;
    line(LEFT, TOP + SIDE, LEFT + SIDE, TOP, "#444444");
    for (double tick : TICKS) {
      line(x(tick), TOP, x(tick), TOP + SIDE, "#dddddd");
      line(LEFT, y(tick), LEFT + SIDE, y(tick), "#dddddd");
      String number = tick == Math.rint(tick) ? String.valueOf((int) tick) : String.valueOf(tick);
      text(x(tick), TOP + SIDE + 18, "middle", number);
      text(LEFT - 8, y(tick) + 4, "end", number);
    }
    text(LEFT + SIDE / 2.0, TOP + SIDE + 40, "middle", across);
    body.append(
        String.format(
            Locale.ROOT,
            "<text x=\"18\" y=\"%1$.1f\" transform=\"rotate(-90 18 %1$.1f)\""
                + " text-anchor=\"middle\">%2$s</text>%n",
            TOP + SIDE / 2.0,
            up));
    text(x(4.1), y(4.4), "end", "equal");
  }

  private double x(double value) {
    return LEFT + SIDE * Math.log(value / least) / Math.log(most / least);
  }

  private double y(double value) {
    return TOP + SIDE - SIDE * Math.log(value / least) / Math.log(most / least);
  }

  private void line(double x1, double y1, double x2, double y2, String colour) {
    body.append(
        String.format(
            Locale.ROOT,
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"/>%n",
            x1,
            y1,
            x2,
            y2,
            colour));
  }

  private void text(double x, double y, String anchor, String text) {
    body.append(
        String.format(
            Locale.ROOT,
            "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n",
            x,
            y,
            anchor,
            text));
  }

  /** Adds a set with a mark of its own: the first four are filled, the others are open. */
  void add(String name, List<Point> points) {
    List<Point> marks = new ArrayList<>();
    for (Point point : points) {
      if (point.x() > least && point.x() < most && point.y() > least && point.y() < most) {
        marks.add(new Point(x(point.x()), y(point.y())));
      }
    }
    double row = TOP + 16 + 22.0 * sets;
    marks.add(new Point(LEGEND, row - 4));
    marks.forEach(this::mark);
    text(LEGEND + 12, row, "start", name);
    sets++;
  }

  private void mark(Point at) {
    String paint =
        sets < 4
            ? "fill=\"" + COLOURS[sets] + "\""
            : "fill=\"none\" stroke=\"" + COLOURS[sets] + "\"";
    double r = sets < 4 ? 5 : 3;
    String shape =
        switch (sets % 3) {
          case 0 -> "<circle cx=\"%1$.1f\" cy=\"%2$.1f\" r=\"%3$.0f\" %4$s/>%n";
          case 1 -> "<rect x=\"%5$.1f\" y=\"%6$.1f\" width=\"%7$.0f\" height=\"%7$.0f\" %4$s/>%n";
          default -> "<polygon points=\"%1$.1f,%6$.1f %5$.1f,%8$.1f %9$.1f,%8$.1f\" %4$s/>%n";
        };
    body.append(
        String.format(
            Locale.ROOT,
            shape,
            at.x(),
            at.y(),
            r,
            paint,
            at.x() - r,
            at.y() - r,
            2 * r,
            at.y() + r,
            at.x() + r));
  }

  String svg() {
    return String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%d\" height=\"%d\""
                + " font-family=\"sans-serif\" font-size=\"13\">%n<rect width=\"100%%\""
                + " height=\"100%%\" fill=\"white\"/>%n",
            LEGEND + 170,
            TOP + SIDE + 54)
        + body
        + "</svg>\n";
  }
}
