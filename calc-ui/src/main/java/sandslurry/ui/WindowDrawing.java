package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import sandslurry.report.block.Block;

/** Draws an operating window: where the line works, and the flow rates judged. */
final class WindowDrawing {
  static final int WIDTH = 680;
  static final int HEIGHT = 86;
  private static final int LEFT = 24;
  private static final int RIGHT = WIDTH - 24;
  private static final int AXIS = 40;
  private static final int BETWEEN = 8;
  private static final Color GOOD = new Color(0xBFE3CC);
  private static final Color BAD = new Color(0xF3D2D0);

  private final Block.Window window;
  private final double from;
  private final double to;

  WindowDrawing(Block.Window window) {
    this.window = window;
    List<Double> flows = new ArrayList<>();
    window.judged().forEach(m -> flows.add(m.flow()));
    window.stretches().forEach(stretch -> stretch.lowest().ifPresent(flows::add));
    window.stretches().forEach(stretch -> stretch.highest().ifPresent(flows::add));
    double least = flows.stream().mapToDouble(f -> f).min().orElse(0);
    double most = flows.stream().mapToDouble(f -> f).max().orElse(1);
    double room = Math.max(most - least, 0.1 * most) * 0.12;
    this.from = Math.max(0, least - room);
    this.to = most + room;
  }

  private double x(double flow) {
    return LEFT + (flow - from) / (to - from) * (RIGHT - LEFT);
  }

  void paint(Graphics2D g) {
    g.setColor(Color.BLACK);
    g.drawString("Operating window, " + window.unit(), LEFT, 12);
    g.setColor(BAD);
    g.fill(new Rectangle2D.Double(LEFT, AXIS - 6, RIGHT - LEFT, 12));
    g.setColor(GOOD);
    for (Block.Window.Stretch stretch : window.stretches()) {
      double start = x(stretch.lowest().orElse(from));
      double end = x(stretch.highest().orElse(to));
      g.fill(new Rectangle2D.Double(start, AXIS - 6, end - start, 12));
    }
    g.setColor(Color.BLACK);
    g.setStroke(new BasicStroke(1));
    for (Block.Window.Stretch stretch : window.stretches()) {
      stretch.lowest().ifPresent(low -> limit(g, low, stretch.lowestText()));
      stretch.highest().ifPresent(high -> limit(g, high, stretch.highestText()));
    }
    FontMetrics metrics = g.getFontMetrics();
    List<String> texts = window.judged().stream().map(m -> m.word() + " " + m.text()).toList();
    double[] at = places(texts.stream().mapToDouble(metrics::stringWidth).toArray());
    for (int i = 0; i < at.length; i++) {
      double x = x(window.judged().get(i).flow());
      double y = AXIS + 30;
      g.draw(new Line2D.Double(x, AXIS, at[i] + metrics.stringWidth(texts.get(i)) / 2.0, y - 11));
      g.fill(new Ellipse2D.Double(x - 3.5, AXIS - 3.5, 7, 7));
      g.drawString(texts.get(i), (float) at[i], (float) y);
    }
  }

  /**
   * Where the labels of the flow rates begin. Those that would touch move to the right, and back
   * where there is no room; a line leads to their mark.
   */
  private double[] places(double[] widths) {
    double[] at = new double[widths.length];
    double free = LEFT;
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.max(free, x(window.judged().get(i).flow()) - widths[i] / 2);
      free = at[i] + widths[i] + BETWEEN;
    }
    double end = RIGHT;
    for (int i = at.length - 1; i >= 0; i--) {
      at[i] = Math.min(at[i], end - widths[i]);
      end = at[i] - BETWEEN;
    }
    return at;
  }

  private void limit(Graphics2D g, double flow, String text) {
    g.draw(new Line2D.Double(x(flow), AXIS - 12, x(flow), AXIS + 8));
    double width = g.getFontMetrics().stringWidth(text);
    g.drawString(
        text, (float) Math.min(Math.max(LEFT, x(flow) - width / 2), RIGHT - width), AXIS - 14);
  }
}
