package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.geom.CubicCurve2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.UIManager;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.PlantResult.FlowEdge;
import sandslurry.assessment.PlantResult.ModeResult;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * A plant as boxes and arrows, with flow and sand on each arrow. A box stands as far to the right
 * as there are steps on the shortest way to it; what flows back runs below.
 */
@SuppressWarnings("serial")
final class FlowDrawing extends JComponent {
  private static final int BOX_WIDTH = 130;
  private static final int BOX_HEIGHT = 40;
  private static final int COLUMN = 270;
  private static final int ROW = 110;
  private static final int MARGIN = 30;
  private static final int TOP = 60;
  private static final int STEPS = 60;
  private static final int SHARP = 2;
  private static final Color SANDY = new Color(0x8A5300);
  private static final Color CLEAR = new Color(0x2F4B6E);
  private static final Color FILL = new Color(0xEEF3F8);

  private transient List<FlowEdge> edges = List.of();
  private transient Map<String, Rectangle> boxes = Map.of();
  private transient UnitSystem units = UnitSystem.METRIC;
  private transient String mode = "";

  FlowDrawing() {
    setFont(UIManager.getFont("Label.font").deriveFont(Font.PLAIN));
  }

  /** The plant of an assessment in its longest mode, in its own size; nothing without a plant. */
  static Optional<FlowDrawing> of(Assessment assessment) {
    return assessment
        .plant()
        .map(
            plant -> {
              FlowDrawing drawing = new FlowDrawing();
              drawing.show(plant.main(), assessment.design().units());
              drawing.setSize(drawing.getPreferredSize());
              return drawing;
            });
  }

  void show(ModeResult shown, UnitSystem system) {
    edges = List.copyOf(shown.sheet());
    mode = shown.mode().name();
    units = system;
    boxes = place();
    AccessibleContext context = getAccessibleContext();
    if (context != null) {
      context.setAccessibleDescription(
          edges.stream()
              .map(edge -> edge.from() + ", " + label(edge) + ", to " + edge.to())
              .collect(Collectors.joining("; ")));
    }
    revalidate();
    repaint();
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext = new AccessibleJComponent() {};
    }
    return accessibleContext;
  }

  private String label(FlowEdge edge) {
    return edge.stream() + " " + numbers(edge);
  }

  private String numbers(FlowEdge edge) {
    return units.show(Kind.FLOW, edge.flowM3ps())
        + ", sand "
        + units.show(Kind.MASS_PER_DAY, edge.sandKgps());
  }

  private Map<String, Rectangle> place() {
    Set<String> makers = new LinkedHashSet<>();
    Set<String> takers = new LinkedHashSet<>();
    edges.forEach(edge -> makers.add(edge.from()));
    edges.forEach(edge -> takers.add(edge.to()));
    Map<String, Integer> columns = new LinkedHashMap<>();
    Deque<String> next = new ArrayDeque<>();
    for (String maker : makers) {
      if (!takers.contains(maker)) {
        columns.put(maker, 0);
        next.add(maker);
      }
    }
    while (!next.isEmpty()) {
      String from = next.remove();
      for (FlowEdge edge : edges) {
        if (edge.from().equals(from) && !columns.containsKey(edge.to())) {
          columns.put(edge.to(), columns.get(from) + 1);
          next.add(edge.to());
        }
      }
    }
    // A ring that nothing feeds has no first box.
    takers.forEach(taker -> columns.putIfAbsent(taker, 1));
    makers.forEach(maker -> columns.putIfAbsent(maker, 0));
    Map<Integer, Integer> rows = new HashMap<>();
    Map<String, Rectangle> placed = new LinkedHashMap<>();
    columns.forEach(
        (name, column) -> {
          int row = rows.merge(column, 1, Integer::sum) - 1;
          placed.put(
              name,
              new Rectangle(
                  MARGIN + column * COLUMN,
                  TOP + row * ROW + (column % 2) * ROW / 3,
                  BOX_WIDTH,
                  BOX_HEIGHT));
        });
    return placed;
  }

  @Override
  public Dimension getPreferredSize() {
    int width = MARGIN;
    int height = TOP;
    for (Rectangle box : boxes.values()) {
      width = Math.max(width, box.x + box.width);
      height = Math.max(height, box.y + box.height);
    }
    return new Dimension(width + MARGIN, height + ROW);
  }

  /** This drawing as a picture of twice its size. */
  BufferedImage picture() {
    BufferedImage image =
        new BufferedImage(SHARP * getWidth(), SHARP * getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.scale(SHARP, SHARP);
    paintComponent(g);
    g.dispose();
    return image;
  }

  /** Paints this drawing into a space, turned by a quarter where it then fits larger. */
  void paintInto(Graphics2D graphics, double width, double height) {
    boolean turned = (getWidth() > getHeight()) != (width > height);
    Graphics2D g = (Graphics2D) graphics.create();
    if (turned) {
      g.rotate(Math.PI / 2);
      g.translate(0, -width);
    }
    double fits =
        Math.min((turned ? height : width) / getWidth(), (turned ? width : height) / getHeight());
    g.scale(fits, fits);
    g.setFont(getFont());
    paintComponent(g);
    g.dispose();
  }

  @Override
  protected void paintComponent(Graphics graphics) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setFont(getFont());
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, getWidth(), getHeight());
    g.setColor(Color.DARK_GRAY);
    g.drawString(
        edges.isEmpty()
            ? "The mode \"" + mode + "\" has no steady state: there is nothing to draw."
            : "Flows in the mode \"" + mode + "\" at rest; brown carries sand, blue does not",
        MARGIN,
        g.getFontMetrics().getAscent() + 6);
    List<Rectangle> taken = new ArrayList<>(boxes.values());
    for (FlowEdge edge : edges) {
      arrow(g, edge);
    }
    for (FlowEdge edge : edges) {
      words(g, edge, taken);
    }
    boxes.forEach((name, box) -> box(g, name, box));
    g.dispose();
  }

  private static void box(Graphics2D g, String name, Rectangle box) {
    g.setColor(FILL);
    g.fillRoundRect(box.x, box.y, box.width, box.height, 8, 8);
    g.setColor(Color.DARK_GRAY);
    g.drawRoundRect(box.x, box.y, box.width, box.height, 8, 8);
    FontMetrics metrics = g.getFontMetrics();
    String shown = name;
    while (shown.length() > 3 && metrics.stringWidth(shown) > box.width - 8) {
      shown = shown.substring(0, shown.length() - 2) + "\u2026";
    }
    g.drawString(
        shown,
        box.x + (box.width - metrics.stringWidth(shown)) / 2,
        box.y + (box.height + metrics.getAscent() - metrics.getDescent()) / 2);
  }

  private CubicCurve2D curve(FlowEdge edge) {
    Rectangle from = boxes.get(edge.from());
    Rectangle to = boxes.get(edge.to());
    if (to.x > from.x) {
      double x1 = from.getMaxX();
      double x2 = to.getMinX();
      double bend = (x2 - x1) / 2;
      return new CubicCurve2D.Double(
          x1,
          from.getCenterY(),
          x1 + bend,
          from.getCenterY(),
          x2 - bend,
          to.getCenterY(),
          x2,
          to.getCenterY());
    }
    if (to.x == from.x && Math.abs(to.y - from.y) == ROW) {
      boolean down = to.y > from.y;
      double x = from.getCenterX() + (down ? 12 : -12);
      double y1 = down ? from.getMaxY() : from.getMinY();
      double y2 = down ? to.getMinY() : to.getMaxY();
      return new CubicCurve2D.Double(x, y1, x, y1, x, y1, x, y2);
    }
    double low = Math.max(from.getMaxY(), to.getMaxY()) + 0.6 * ROW;
    return new CubicCurve2D.Double(
        from.getCenterX(),
        from.getMaxY(),
        from.getCenterX(),
        low,
        to.getCenterX(),
        low,
        to.getCenterX(),
        to.getMaxY());
  }

  private static Color colour(FlowEdge edge) {
    return edge.sandKgps() > 0 ? SANDY : CLEAR;
  }

  private void arrow(Graphics2D g, FlowEdge edge) {
    CubicCurve2D curve = curve(edge);
    g.setColor(colour(edge));
    g.setStroke(new BasicStroke(edge.flowM3ps() > 0 ? 1.6f : 0.6f));
    g.draw(curve);
    double angle = Math.atan2(curve.getY2() - curve.getCtrlY2(), curve.getX2() - curve.getCtrlX2());
    Path2D tip = new Path2D.Double();
    tip.moveTo(curve.getX2(), curve.getY2());
    for (double side : new double[] {-0.4, 0.4}) {
      tip.lineTo(
          curve.getX2() - 9 * Math.cos(angle + side), curve.getY2() - 9 * Math.sin(angle + side));
    }
    tip.closePath();
    g.fill(tip);
  }

  private static boolean covers(Rectangle place, List<Rectangle> taken) {
    return taken.stream().anyMatch(place::intersects);
  }

  /** Name and numbers at the middle of the arrow, moved up or down until they cover nothing. */
  private void words(Graphics2D g, FlowEdge edge, List<Rectangle> taken) {
    CubicCurve2D curve = curve(edge);
    double x = (curve.getX1() + 3 * curve.getCtrlX1() + 3 * curve.getCtrlX2() + curve.getX2()) / 8;
    double y = (curve.getY1() + 3 * curve.getCtrlY1() + 3 * curve.getCtrlY2() + curve.getY2()) / 8;
    g.setFont(getFont().deriveFont(10f));
    FontMetrics metrics = g.getFontMetrics();
    int width = Math.max(metrics.stringWidth(edge.stream()), metrics.stringWidth(numbers(edge)));
    Rectangle place =
        new Rectangle(
            (int) Math.max(2, x - width / 2.0),
            (int) (y - metrics.getHeight()),
            width,
            2 * metrics.getHeight());
    int home = place.y;
    for (int step = 1; step < STEPS && covers(place, taken); step++) {
      place.y = Math.max(0, home + (step % 2 == 0 ? step : -step) * 4);
    }
    taken.add(place);
    g.setColor(new Color(255, 255, 255, 210));
    g.fill(place);
    g.setColor(colour(edge));
    g.drawString(edge.stream(), place.x, place.y + metrics.getAscent());
    g.drawString(numbers(edge), place.x, place.y + metrics.getHeight() + metrics.getAscent());
    g.setFont(getFont());
  }
}
