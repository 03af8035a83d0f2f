package sandslurry.ui;

import java.util.List;
import sandslurry.fact.finding.Severity;

/**
 * What a chart shows, as data: it is painted by {@link ChartView} and can be read as a table.
 *
 * @param title its title
 * @param x what stands on the horizontal axis, with the unit; for bars what they are
 * @param y what stands on the vertical axis, with the unit
 * @param logX whether the horizontal axis is logarithmic
 * @param series the curves
 * @param bars the bars; a chart has curves or bars
 * @param levels named values of the vertical axis
 * @param bands named stretches of the horizontal axis behind curves
 * @param shares whether the vertical axis goes from 0 to 100
 * @param right what stands on a second vertical axis, with the unit; empty without one
 * @param rightSeries the curves that belong to it
 * @param top where the vertical axis ends at the latest; 0 for wherever the curves end
 */
// More than ten components: all that a chart may show, most of it empty.
record ChartData(
    String title,
    String x,
    String y,
    boolean logX,
    List<Series> series,
    List<Bar> bars,
    List<Level> levels,
    List<Band> bands,
    boolean shares,
    String right,
    List<Series> rightSeries,
    double top) {
  /** End of the name of a group whose bars are hatched. */
  static final String HATCHED = ", outside its range";

  static ChartData lines(String title, String x, String y, boolean logX, List<Series> series) {
    return new ChartData(
        title, x, y, logX, series, List.of(), List.of(), List.of(), false, "", List.of(), 0);
  }

  static ChartData bars(String title, String x, String y, List<Bar> bars, List<Level> levels) {
    return new ChartData(
        title, x, y, false, List.of(), bars, levels, List.of(), false, "", List.of(), 0);
  }

  /** Copies the lists. */
  ChartData {
    series = List.copyOf(series);
    bars = List.copyOf(bars);
    levels = List.copyOf(levels);
    bands = List.copyOf(bands);
    rightSeries = List.copyOf(rightSeries);
  }

  ChartData withBands(List<Band> stretches) {
    return new ChartData(
        title, x, y, logX, series, bars, levels, stretches, shares, right, rightSeries, top);
  }

  /** With the whole of the vertical axis from 0 to 100 per cent. */
  ChartData withShares() {
    return new ChartData(
        title, x, y, logX, series, bars, levels, bands, true, right, rightSeries, top);
  }

  /** With a second vertical axis for curves of their own; without curves it stays away. */
  ChartData withRight(String axis, List<Series> curves) {
    return new ChartData(
        title,
        x,
        y,
        logX,
        series,
        bars,
        levels,
        bands,
        shares,
        curves.isEmpty() ? "" : axis,
        curves,
        top);
  }

  /** With a vertical axis that ends there at the latest, whatever runs on beyond it. */
  ChartData withTop(double most) {
    return new ChartData(
        title, x, y, logX, series, bars, levels, bands, shares, right, rightSeries, most);
  }

  /** How a curve is painted; never by colour alone. */
  enum Style {
    SOLID,
    DASHED,
    DOTTED,
    DASH_DOT,
    MARKED,
    POINTS
  }

  /**
   * A curve. One without points keeps its place, so that the others keep their colours.
   *
   * @param name its name
   * @param style how it is painted
   * @param points its points
   */
  record Series(String name, Style style, List<Point> points) {}

  /**
   * A point.
   *
   * @param x on the horizontal axis
   * @param y on the vertical axis
   */
  record Point(double x, double y) {}

  /**
   * A bar.
   *
   * @param group the group whose bars look alike
   * @param colour which of the colours the group has, in every chart the same
   * @param name its name
   * @param value its length
   */
  record Bar(String group, int colour, String name, double value) {}

  /**
   * A stretch of the horizontal axis.
   *
   * @param name what holds there; written into the band, so that it is not told by colour alone
   * @param severity how it stands, which decides its tint
   * @param from where it begins
   * @param to where it ends
   */
  record Band(String name, Severity severity, double from, double to) {}

  /**
   * A value worth a line across the chart.
   *
   * @param name its name
   * @param value the value
   */
  record Level(String name, double value) {}
}
