package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import javax.swing.Icon;
import sandslurry.fact.finding.Severity;

/** A sign whose shape tells the verdict apart without colour; a hollow square is no verdict. */
final class SeverityIcon implements Icon {
  private final Optional<Severity> severity;
  private final int size;

  SeverityIcon(Optional<Severity> severity, int size) {
    this.severity = severity;
    this.size = size;
  }

  @Override
  public int getIconWidth() {
    return size;
  }

  @Override
  public int getIconHeight() {
    return size;
  }

  @Override
  public void paintIcon(Component owner, Graphics graphics, int x, int y) {
    Graphics2D g = (Graphics2D) graphics.create(x, y, size, size);
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(size, size);
    g.setColor(severity.map(Look::of).orElse(Color.GRAY));
    g.setStroke(new BasicStroke(0.1f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    if (severity.isEmpty()) {
      g.draw(new Rectangle2D.Double(0.15, 0.15, 0.7, 0.7));
    } else {
      g.fill(outline(severity.get()));
      g.setColor(Color.WHITE);
      g.draw(mark(severity.get()));
    }
    g.dispose();
  }

  private static Shape outline(Severity severity) {
    return switch (severity) {
      case PASS, NOTE -> new Ellipse2D.Double(0.04, 0.04, 0.92, 0.92);
      case CAUTION -> lines(true, 0.5, 0.04, 0.98, 0.92, 0.02, 0.92);
      case FAIL ->
          lines(
              true, 0.3, 0.03, 0.7, 0.03, 0.97, 0.3, 0.97, 0.7, 0.7, 0.97, 0.3, 0.97, 0.03, 0.7,
              0.03, 0.3);
    };
  }

  private static Shape mark(Severity severity) {
    return switch (severity) {
      case PASS -> lines(false, 0.28, 0.52, 0.44, 0.68, 0.73, 0.34);
      case NOTE -> twoStrokes(lines(false, 0.5, 0.46, 0.5, 0.74), 0.27);
      case CAUTION -> twoStrokes(lines(false, 0.5, 0.36, 0.5, 0.62), 0.78);
      case FAIL -> {
        Path2D cross = lines(false, 0.32, 0.32, 0.68, 0.68);
        cross.append(lines(false, 0.68, 0.32, 0.32, 0.68), false);
        yield cross;
      }
    };
  }

  private static Path2D twoStrokes(Path2D stroke, double dotY) {
    stroke.append(lines(false, 0.5, dotY, 0.5, dotY), false);
    return stroke;
  }

  private static Path2D lines(boolean closed, double... xy) {
    Path2D path = new Path2D.Double();
    path.moveTo(xy[0], xy[1]);
    for (int i = 2; i < xy.length; i += 2) {
      path.lineTo(xy[i], xy[i + 1]);
    }
    if (closed) {
      path.closePath();
    }
    return path;
  }
}
