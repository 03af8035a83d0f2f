package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.UIManager;
import org.eclipse.elk.core.options.Direction;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.plant.PlantResult.FlowEdge;
import sandslurry.assessment.plant.PlantResult.ModeResult;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * A plant as boxes and arrows in one mode: the blue of an arrow is as wide as its flow rate, the
 * brown in it as its sand. {@link StreamLayout} says where all stands.
 */
@SuppressWarnings("serial")
final class FlowDrawing extends JComponent {
  private static final int MARGIN = 20;
  private static final int SHARP = 2;
  private static final int LONGEST_NAME = 36;
  private static final float LABEL_SIZE = 11f;
  private static final double WIDEST_FLOW = 9;
  private static final double WIDEST_SAND = 6;
  private static final Color SANDY = new Color(0x8A5300);
  private static final Color CLEAR = new Color(0x6F93BF);
  private static final Color WORDS = new Color(0x24364D);
  private static final Color FILL = new Color(0xEEF3F8);

  private transient List<FlowEdge> edges = List.of();
  private transient Optional<StreamLayout> layout = Optional.empty();
  private transient UnitSystem units = UnitSystem.METRIC;
  private transient String mode = "";
  private transient Direction direction = Direction.RIGHT;
  private double zoom = 1;

  FlowDrawing() {
    setFont(UIManager.getFont("Label.font").deriveFont(Font.PLAIN));
  }

  /**
   * The flows in the longest mode of a plant on a page, from top to bottom; nothing without a
   * plant.
   */
  static Optional<FlowDrawing> onPaper(Assessment assessment) {
    return assessment
        .plant()
        .map(
            plant -> {
              FlowDrawing drawing = new FlowDrawing();
              drawing.direction = Direction.DOWN;
              drawing.show(plant.main(), assessment.design().units());
              drawing.setSize(drawing.getPreferredSize());
              return drawing;
            });
  }

  void show(ModeResult shown, UnitSystem system) {
    edges = List.copyOf(shown.sheet());
    mode = shown.mode().name();
    units = system;
    layout =
        edges.isEmpty()
            ? Optional.empty()
            : Optional.of(
                StreamLayout.of(
                    edges,
                    direction,
                    this::lines,
                    getFontMetrics(getFont()),
                    getFontMetrics(labelFont())));
    AccessibleContext context = getAccessibleContext();
    if (context != null) {
      context.setAccessibleDescription(
          edges.stream()
              .map(edge -> edge.from() + ", " + String.join(" ", lines(edge)) + ", to " + edge.to())
              .collect(Collectors.joining("; ")));
    }
    revalidate();
    repaint();
  }

  /** Draws larger or smaller, 1 for its own size. */
  void zoom(double factor) {
    zoom = factor;
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

  private Font labelFont() {
    return getFont().deriveFont(LABEL_SIZE);
  }

  private List<String> lines(FlowEdge edge) {
    String flow = units.show(Kind.FLOW, edge.flowM3ps());
    return edge.sandKgps() > 0
        ? List.of(
            shown(edge.stream()), flow, "sand " + units.show(Kind.MASS_PER_DAY, edge.sandKgps()))
        : List.of(shown(edge.stream()), flow);
  }

  /** A name as it is drawn: a very long one is cut, which the tables are not. */
  static String shown(String name) {
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 1) + "\u2026";
  }

  private double top() {
    return getFontMetrics(getFont()).getHeight() + 10;
  }

  @Override
  public Dimension getPreferredSize() {
    double width = layout.map(StreamLayout::width).orElse(0.0);
    width = Math.max(width, getFontMetrics(getFont()).stringWidth(title()) + 2 * MARGIN);
    double height = top() + layout.map(StreamLayout::height).orElse(0.0);
    return new Dimension((int) Math.ceil(zoom * width), (int) Math.ceil(zoom * height));
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

  private String title() {
    return edges.isEmpty()
        ? "The mode \"" + mode + "\" has no steady state: there is nothing to draw."
        : "Average flow rates in the mode \""
            + mode
            + "\". Blue is as wide as the flow rate, brown as the sand.";
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
    g.scale(zoom, zoom);
    g.setColor(Color.DARK_GRAY);
    g.drawString(title(), MARGIN, g.getFontMetrics().getAscent() + 6);
    g.translate(0, top());
    layout.ifPresent(
        placed -> {
          double flow = edges.stream().mapToDouble(FlowEdge::flowM3ps).max().orElse(0);
          double sand = edges.stream().mapToDouble(FlowEdge::sandKgps).max().orElse(0);
          placed.arrows().forEach(arrow -> arrow(g, arrow, flow, sand));
          placed.arrows().forEach(arrow -> words(g, arrow));
          placed.boxes().forEach((name, box) -> box(g, shown(name), box));
        });
    g.dispose();
  }

  private static void box(Graphics2D g, String name, Rectangle2D box) {
    RoundRectangle2D shape =
        new RoundRectangle2D.Double(box.getX(), box.getY(), box.getWidth(), box.getHeight(), 8, 8);
    g.setColor(FILL);
    g.fill(shape);
    g.setColor(Color.DARK_GRAY);
    g.setStroke(new BasicStroke(1));
    g.draw(shape);
    FontMetrics metrics = g.getFontMetrics();
    g.drawString(
        name,
        (float) (box.getCenterX() - metrics.stringWidth(name) / 2.0),
        (float) (box.getCenterY() + (metrics.getAscent() - metrics.getDescent()) / 2.0));
  }

  private static void arrow(
      Graphics2D g, StreamLayout.Arrow arrow, double mostFlow, double mostSand) {
    double flow = share(arrow.edge().flowM3ps(), mostFlow);
    double sand = share(arrow.edge().sandKgps(), mostSand);
    double width = Math.max(1 + (WIDEST_FLOW - 1) * flow, 1 + (WIDEST_SAND - 1) * sand);
    stroke(g, arrow.way(), CLEAR, width);
    if (sand > 0) {
      stroke(g, arrow.way(), SANDY, 1 + (WIDEST_SAND - 1) * sand);
    }
    double angle =
        Math.atan2(
            arrow.end().getY() - arrow.beforeEnd().getY(),
            arrow.end().getX() - arrow.beforeEnd().getX());
    double length = 8 + width / 2;
    Path2D tip = new Path2D.Double();
    tip.moveTo(arrow.end().getX(), arrow.end().getY());
    for (double side : new double[] {-0.5, 0.5}) {
      tip.lineTo(
          arrow.end().getX() - length * Math.cos(angle + side),
          arrow.end().getY() - length * Math.sin(angle + side));
    }
    tip.closePath();
    g.setColor(sand > 0 ? SANDY : CLEAR);
    g.fill(tip);
  }

  private static double share(double value, double most) {
    return most > 0 ? value / most : 0;
  }

  private static void stroke(Graphics2D g, Path2D way, Color colour, double width) {
    g.setColor(colour);
    g.setStroke(new BasicStroke((float) width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND));
    g.draw(way);
  }

  private void words(Graphics2D g, StreamLayout.Arrow arrow) {
    g.setColor(WORDS);
    g.setFont(labelFont());
    FontMetrics metrics = g.getFontMetrics();
    float y = arrow.label().y + metrics.getAscent();
    for (String line : lines(arrow.edge())) {
      g.drawString(line, arrow.label().x + 3f, y);
      y += metrics.getHeight();
    }
    g.setFont(getFont());
  }
}
