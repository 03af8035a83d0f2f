package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.TexturePaint;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import javax.swing.UIManager;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.StandardChartTheme;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import sandslurry.fact.finding.Severity;

/** Turns the data of a chart into a chart of the library. */
final class ChartPainter {
  /** The palette of Okabe and Ito, which colour-blind people can tell apart; black first. */
  private static final Color[] PALETTE = {
    new Color(0x000000),
    new Color(0xD55E00),
    new Color(0x0072B2),
    new Color(0x009E73),
    new Color(0xCC79A7),
    new Color(0x8A6D00)
  };

  private static final Color[] FILLS = {
    new Color(0x0072B2),
    new Color(0x56B4E9),
    new Color(0xE69F00),
    new Color(0x009E73),
    new Color(0xCC79A7),
    new Color(0x999999),
    new Color(0xD55E00)
  };

  private static final Line2D LEGEND_LINE = new Line2D.Double(-16, 0, 16, 0);
  private static final BasicStroke SOLID = stroke();
  private static final BasicStroke DASHED = stroke(8, 5);
  private static final BasicStroke DOTTED = stroke(2, 4);
  private static final BasicStroke DASH_DOT = stroke(12, 4, 2, 4);

  /** A band narrower than this share of the axis has no room for its words. */
  private static final double NARROW = 0.035;

  private ChartPainter() {}

  private static BasicStroke stroke(float... dash) {
    return new BasicStroke(
        2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dash.length == 0 ? null : dash, 0);
  }

  /** A chart in the font of the form. */
  static JFreeChart chart(ChartData data) {
    Font base = UIManager.getFont("Label.font");
    return chart(data, base == null ? new Font(Font.SANS_SERIF, Font.PLAIN, 12) : base, false);
  }

  /** A chart in a font of its own, for paper: in lines and areas alone, without pictures in it. */
  static JFreeChart onPaper(ChartData data, Font font) {
    JFreeChart chart = chart(data, font, true);
    chart.setTitle((String) null);
    return chart;
  }

  private static JFreeChart chart(ChartData data, Font font, boolean paper) {
    JFreeChart chart = data.bars().isEmpty() ? curves(data, font) : bars(data, font, paper);
    chart.setBackgroundPaint(Color.WHITE);
    chart.getPlot().setBackgroundPaint(Color.WHITE);
    chart.getPlot().setOutlinePaint(Color.GRAY);
    chart.setPadding(new RectangleInsets(6, 6, 6, 14));
    return chart;
  }

  /** The theme goes on first: it forgets every paint that was set on a renderer. */
  private static JFreeChart themed(JFreeChart chart, Font font) {
    theme(font).apply(chart);
    return chart;
  }

  private static StandardChartTheme theme(Font font) {
    StandardChartTheme theme = new StandardChartTheme("plain");
    theme.setExtraLargeFont(font.deriveFont(Font.BOLD, font.getSize2D() * 1.15f));
    theme.setLargeFont(font);
    theme.setRegularFont(font);
    theme.setSmallFont(font);
    theme.setAxisLabelPaint(Color.BLACK);
    theme.setTickLabelPaint(Color.BLACK);
    theme.setRangeGridlinePaint(Color.LIGHT_GRAY);
    theme.setDomainGridlinePaint(Color.LIGHT_GRAY);
    theme.setPlotBackgroundPaint(Color.WHITE);
    return theme;
  }

  private static JFreeChart curves(ChartData data, Font font) {
    JFreeChart chart =
        themed(
            ChartFactory.createXYLineChart(
                data.title(),
                data.x(),
                data.y(),
                dataset(data.series()),
                PlotOrientation.VERTICAL,
                true,
                false,
                false),
            font);
    XYPlot plot = chart.getXYPlot();
    plot.setRenderer(renderer(data.series(), 0));
    if (data.shares()) {
      plot.getRangeAxis().setRange(0, 102);
    }
    plain((NumberAxis) plot.getDomainAxis());
    plain((NumberAxis) plot.getRangeAxis());
    double reached = plot.getRangeAxis().getUpperBound();
    if (data.top() > 0 && reached > data.top()) {
      plot.getRangeAxis().setUpperBound(data.top());
    }
    if (!data.right().isEmpty()) {
      addRight(plot, data);
    }
    addBands(plot, data);
    if (data.logX()) {
      LogAxis axis = new LogAxis(data.x());
      axis.setBase(2);
      axis.setNumberFormatOverride(numbers());
      axis.setLabelFont(plot.getDomainAxis().getLabelFont());
      axis.setTickLabelFont(plot.getDomainAxis().getTickLabelFont());
      plot.setDomainAxis(axis);
    }
    return chart;
  }

  private static XYSeriesCollection dataset(List<ChartData.Series> curves) {
    XYSeriesCollection set = new XYSeriesCollection();
    for (ChartData.Series series : curves) {
      XYSeries points = new XYSeries(series.name(), false);
      series.points().forEach(p -> points.add(p.x(), p.y()));
      set.addSeries(points);
    }
    return set;
  }

  /** How curves are painted; those of a second axis go on where the first ended. */
  private static XYLineAndShapeRenderer renderer(List<ChartData.Series> curves, int first) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
    for (int i = 0; i < curves.size(); i++) {
      ChartData.Style style = curves.get(i).style();
      renderer.setSeriesVisible(i, !curves.get(i).points().isEmpty());
      boolean only = style == ChartData.Style.POINTS;
      renderer.setSeriesLinesVisible(i, !only);
      renderer.setSeriesShapesVisible(i, only || style == ChartData.Style.MARKED);
      renderer.setSeriesShape(i, shape(first + i));
      renderer.setSeriesStroke(i, strokeOf(style));
      renderer.setSeriesPaint(i, PALETTE[(first + i) % PALETTE.length]);
    }
    renderer.setDrawSeriesLineAsPath(true);
    renderer.setLegendLine(LEGEND_LINE);
    return renderer;
  }

  private static void addRight(XYPlot plot, ChartData data) {
    NumberAxis axis = new NumberAxis(data.right());
    axis.setLabelFont(plot.getRangeAxis().getLabelFont());
    axis.setTickLabelFont(plot.getRangeAxis().getTickLabelFont());
    plot.setRangeAxis(1, axis);
    plot.setDataset(1, dataset(data.rightSeries()));
    plot.setRenderer(1, renderer(data.rightSeries(), data.series().size()));
    plot.mapDatasetToRangeAxis(1, 1);
    axis.setAutoRangeIncludesZero(true);
    plain(axis);
  }

  /** Numbers as everywhere else in the program, whatever the language of the computer. */
  private static void plain(NumberAxis axis) {
    axis.setNumberFormatOverride(numbers());
  }

  private static DecimalFormat numbers() {
    return new DecimalFormat("0.######", DecimalFormatSymbols.getInstance(Locale.ROOT));
  }

  /** Tinted stretches behind the curves, each with its words written upwards. */
  private static void addBands(XYPlot plot, ChartData data) {
    List<ChartData.Band> bands = data.bands();
    DoubleUnaryOperator place = data.logX() ? Math::log : x -> x;
    double left = bands.stream().mapToDouble(ChartData.Band::from).min().orElse(1);
    double right = bands.stream().mapToDouble(ChartData.Band::to).max().orElse(1);
    double width = place.applyAsDouble(right) - place.applyAsDouble(left);
    for (ChartData.Band band : bands) {
      IntervalMarker marker = new IntervalMarker(band.from(), band.to());
      marker.setPaint(tint(band.severity()));
      marker.setAlpha(1);
      plot.addDomainMarker(marker, Layer.BACKGROUND);
      double share = place.applyAsDouble(band.to()) - place.applyAsDouble(band.from());
      if (share > NARROW * width) {
        XYTextAnnotation words =
            new XYTextAnnotation(
                band.name(),
                data.logX() ? Math.sqrt(band.from() * band.to()) : (band.from() + band.to()) / 2,
                plot.getRangeAxis().getRange().getLength() * 0.04);
        words.setFont(plot.getDomainAxis().getTickLabelFont());
        words.setTextAnchor(TextAnchor.CENTER_LEFT);
        words.setRotationAnchor(TextAnchor.CENTER_LEFT);
        words.setRotationAngle(-Math.PI / 2);
        plot.addAnnotation(words);
      }
    }
  }

  private static Color tint(Severity severity) {
    return switch (severity) {
      case PASS, NOTE -> new Color(0xDDF0E0);
      case CAUTION -> new Color(0xFCEFCF);
      case FAIL -> new Color(0xF9DEDC);
    };
  }

  private static BasicStroke strokeOf(ChartData.Style style) {
    return switch (style) {
      case SOLID, MARKED, POINTS -> SOLID;
      case DASHED -> DASHED;
      case DOTTED -> DOTTED;
      case DASH_DOT -> DASH_DOT;
    };
  }

  private static Shape shape(int index) {
    Path2D diamond = new Path2D.Double();
    diamond.moveTo(0, -5);
    diamond.lineTo(5, 0);
    diamond.lineTo(0, 5);
    diamond.lineTo(-5, 0);
    diamond.closePath();
    Shape[] shapes = {
      new Ellipse2D.Double(-4, -4, 8, 8), diamond, new Rectangle2D.Double(-3.5, -3.5, 7, 7)
    };
    return shapes[index % shapes.length];
  }

  /** Groups of one colour belong together; the hatched one is outside its published range. */
  private static Paint fill(String group, int index) {
    Color colour = FILLS[index % FILLS.length];
    if (!group.endsWith(ChartData.HATCHED)) {
      return colour;
    }
    int size = 8;
    BufferedImage tile = new BufferedImage(size, size, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = tile.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, size, size);
    g.setColor(colour);
    for (int i = 0; i < size; i++) {
      g.drawLine(i, size - 1 - i, i, size - 1 - i);
      g.drawLine((i + 1) % size, size - 1 - i, (i + 1) % size, size - 1 - i);
    }
    g.dispose();
    return new TexturePaint(tile, new Rectangle(size, size));
  }

  private static JFreeChart bars(ChartData data, Font font, boolean paper) {
    DefaultCategoryDataset set = new DefaultCategoryDataset();
    List<String> groups = new ArrayList<>();
    List<Integer> colours = new ArrayList<>();
    for (ChartData.Bar bar : data.bars()) {
      set.addValue(bar.value(), bar.group(), bar.name());
      if (!groups.contains(bar.group())) {
        groups.add(bar.group());
        colours.add(bar.colour());
      }
    }
    JFreeChart chart =
        themed(
            ChartFactory.createBarChart(
                data.title(), null, data.y(), set, PlotOrientation.HORIZONTAL, true, false, false),
            font);
    CategoryPlot plot = chart.getCategoryPlot();
    StackedBarRenderer renderer = new StackedBarRenderer();
    for (int i = 0; i < groups.size(); i++) {
      String group = groups.get(i);
      int index = colours.get(i);
      boolean hatched = group.endsWith(ChartData.HATCHED);
      renderer.setSeriesPaint(i, paper && hatched ? Color.WHITE : fill(group, index));
      renderer.setSeriesOutlinePaint(
          i, paper && hatched ? FILLS[index % FILLS.length] : Color.DARK_GRAY);
      renderer.setSeriesOutlineStroke(i, paper && hatched ? DASHED : new BasicStroke(1));
    }
    renderer.setDrawBarOutline(true);
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    plot.setRenderer(renderer);
    CategoryAxis names = plot.getDomainAxis();
    names.setMaximumCategoryLabelWidthRatio(0.6f);
    names.setCategoryMargin(0.25);
    NumberAxis values = (NumberAxis) plot.getRangeAxis();
    values.setUpperMargin(0.08);
    plain(values);
    double greatest = data.bars().stream().mapToDouble(ChartData.Bar::value).max().orElse(1);
    for (ChartData.Level level : data.levels()) {
      greatest = Math.max(greatest, level.value());
    }
    values.setRange(0, greatest * 1.12);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    addLevels(plot, data.levels());
    return chart;
  }

  /** Lines across the bars, named in the legend. */
  private static void addLevels(CategoryPlot plot, List<ChartData.Level> levels) {
    BasicStroke[] strokes = {SOLID, DASHED, DOTTED};
    LegendItemCollection legend = plot.getLegendItems();
    for (int i = 0; i < levels.size(); i++) {
      BasicStroke stroke = strokes[i % strokes.length];
      ValueMarker marker = new ValueMarker(levels.get(i).value());
      marker.setPaint(PALETTE[i]);
      marker.setStroke(stroke);
      plot.addRangeMarker(marker, Layer.FOREGROUND);
      legend.add(
          new LegendItem(levels.get(i).name(), null, null, null, LEGEND_LINE, stroke, PALETTE[i]));
    }
    plot.setFixedLegendItems(legend);
  }
}
