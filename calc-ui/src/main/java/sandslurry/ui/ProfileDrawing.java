package sandslurry.ui;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.plant.profile.Fall;
import sandslurry.plant.profile.HydraulicProfile;
import sandslurry.plant.profile.Levels;
import sandslurry.plant.profile.Lift;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * Draws the hydraulic profile of a plant: its units with their levels to scale, and the hydraulic
 * grade line of each stream between them.
 */
final class ProfileDrawing {
  static final int HEIGHT = 400;
  private static final int LEAST_WIDTH = 680;
  private static final int SLOT = 118;
  private static final int BOX = 62;
  private static final int LEFT = 64;
  private static final int TOP = 34;
  private static final int BOTTOM = HEIGHT - 62;
  private static final int TICKS = 6;
  private static final int LONGEST_LINE = 17;
  private static final float SMALL = 10f;

  /** Between a line and its name. */
  private static final int GAP = 2;

  /** Where along its line the name of a stream is tried. */
  private static final double[] ALONG = {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9};

  private static final Color WATER = new Color(0x9DBBDD);
  private static final Color TIDE = new Color(0xD3E1F0);
  private static final Color ENOUGH = new Color(0x2C6E49);
  private static final Color SHORT = new Color(0xB3261E);
  private static final Color PUMPED = new Color(0x777777);

  private final HydraulicProfile profile;
  private final UnitSystem units;
  private final Map<String, Integer> places = new LinkedHashMap<>();

  /** Where no label may stand: units, and labels that stand already. */
  private final List<Rectangle2D> taken = new ArrayList<>();

  private final double lowestM;
  private final double highestM;

  ProfileDrawing(HydraulicProfile profile, UnitSystem units) {
    this.profile = profile;
    this.units = units;
    List<Double> levels = new ArrayList<>(List.of(profile.levels().yardM()));
    profile
        .levels()
        .units()
        .forEach(
            (name, unit) -> {
              places.put(name, places.size());
              levels.add(unit.footM());
              levels.add(Math.max(unit.highestM(), unit.overflowM()));
            });
    double low = levels.stream().mapToDouble(level -> level).min().orElseThrow();
    double high = levels.stream().mapToDouble(level -> level).max().orElseThrow();
    double room = Math.max(0.05 * (high - low), 0.1);
    this.lowestM = low - room;
    this.highestM = high + room;
  }

  int width() {
    return Math.max(LEAST_WIDTH, LEFT + SLOT * places.size());
  }

  private double y(double levelM) {
    return BOTTOM - (levelM - lowestM) / (highestM - lowestM) * (BOTTOM - TOP);
  }

  private double x(String unit) {
    return LEFT + (places.get(unit) + 0.5) * (width() - LEFT) / places.size();
  }

  void paint(Graphics2D g) {
    g.setColor(Color.BLACK);
    g.drawString(
        "Levels above the datum, "
            + Kind.LENGTH.symbol(units)
            + ". Lines: hydraulic grade; red where the fall is too small, dashed where pumped.",
        8,
        14);
    g.setFont(g.getFont().deriveFont(SMALL));
    scale(g);
    taken.clear();
    profile.levels().units().forEach((name, levels) -> unit(g, name, levels));
    profile.lifts().forEach(lift -> lift(g, lift));
    profile.falls().forEach(fall -> fall(g, fall));
    profile.falls().forEach(fall -> label(g, fall));
    profile.lifts().forEach(lift -> label(g, lift));
  }

  private void scale(Graphics2D g) {
    g.setStroke(new BasicStroke(1));
    double metre = Kind.LENGTH.number(units, 1);
    double step = step((highestM - lowestM) * metre / TICKS);
    for (double shown = Math.ceil(lowestM * metre / step) * step;
        shown <= highestM * metre;
        shown += step) {
      double level = shown / metre;
      g.setColor(Color.DARK_GRAY);
      g.drawString(units.number(Kind.LENGTH, level), 8, (float) y(level) + 4);
      g.setColor(TIDE);
      g.draw(new Line2D.Double(LEFT - 6, y(level), width(), y(level)));
    }
    g.setColor(Color.DARK_GRAY);
    double yard = y(profile.levels().yardM());
    g.setStroke(new BasicStroke(2));
    g.draw(new Line2D.Double(LEFT - 6, yard, width(), yard));
    g.drawString("yard", LEFT - 4, (float) yard - 3);
  }

  /** The next of 1, 2, 5, 10 and so on. */
  private static double step(double least) {
    double ten = Math.pow(10, Math.floor(Math.log10(least)));
    return ten * (least <= 1.001 * ten ? 1 : least <= 2 * ten ? 2 : least <= 5 * ten ? 5 : 10);
  }

  private void unit(Graphics2D g, String name, Levels levels) {
    double left = x(name) - BOX / 2.0;
    double top = Math.max(levels.highestM(), levels.overflowM());
    fill(g, Color.WHITE, left, top, levels.footM());
    fill(g, TIDE, left, levels.highestM(), levels.lowestM());
    if (levels.floorM().isPresent()) {
      fill(g, WATER, left, levels.lowestM(), levels.footM());
    }
    g.setColor(Color.DARK_GRAY);
    g.setStroke(new BasicStroke(1));
    g.draw(box(left, top, levels.footM()));
    taken.add(box(left, top, levels.footM()));
    FontMetrics metrics = g.getFontMetrics();
    float y = BOTTOM + 16;
    for (String line : lines(name)) {
      g.drawString(line, (float) (x(name) - metrics.stringWidth(line) / 2.0), y);
      y += metrics.getHeight();
    }
    Double rise = profile.risesM().get(name);
    if (rise != null) {
      g.setColor(SHORT);
      String text = "+" + units.showAtLeast(Kind.LENGTH, rise);
      g.drawString(text, (float) (x(name) - metrics.stringWidth(text) / 2.0), (float) y(top) - 12);
    }
  }

  private static List<String> lines(String name) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : FlowDrawing.shown(name).split(" ")) {
      if (line.length() > 0 && line.length() + word.length() >= LONGEST_LINE) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private Rectangle2D box(double left, double topM, double footM) {
    return new Rectangle2D.Double(left, y(topM), BOX, Math.max(1, y(footM) - y(topM)));
  }

  private void fill(Graphics2D g, Color colour, double left, double topM, double footM) {
    g.setColor(colour);
    g.fill(box(left, topM, footM));
  }

  /** The side of a unit that faces another. */
  private double side(String unit, String other) {
    return x(unit) + (x(other) >= x(unit) ? BOX : -BOX) / 2.0;
  }

  private void fall(Graphics2D g, Fall fall) {
    Path2D line = new Path2D.Double();
    double from = side(fall.from(), fall.to());
    double to = side(fall.to(), fall.from());
    line.moveTo(from, y(fall.upstreamM()));
    fall.need()
        .ifPresentOrElse(
            need -> {
              double start = fall.upstreamM() - need.endsM();
              line.lineTo(from, y(start));
              line.lineTo(to, y(start - need.alongM()));
            },
            () -> line.lineTo(to, y(fall.upstreamM())));
    line.lineTo(to, y(fall.downstreamM()));
    g.setColor(fall.enough() ? ENOUGH : SHORT);
    g.setStroke(new BasicStroke(2));
    g.draw(line);
  }

  private void label(Graphics2D g, Fall fall) {
    g.setColor(fall.enough() ? ENOUGH : SHORT);
    double level = Math.max(fall.upstreamM(), fall.downstreamM());
    double from = side(fall.from(), fall.to());
    label(g, fall.stream(), from, level, side(fall.to(), fall.from()), level);
  }

  private void lift(Graphics2D g, Lift lift) {
    double from = side(lift.from(), lift.to());
    double to = side(lift.to(), lift.from());
    g.setColor(PUMPED);
    g.setStroke(
        new BasicStroke(
            1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {5, 4}, 0));
    g.draw(new Line2D.Double(from, y(low(lift)), to, y(high(lift))));
  }

  private void label(Graphics2D g, Lift lift) {
    g.setColor(PUMPED);
    double from = side(lift.from(), lift.to());
    label(g, lift.stream(), from, low(lift), side(lift.to(), lift.from()), high(lift));
  }

  private double low(Lift lift) {
    return profile.levels().units().get(lift.from()).lowestM();
  }

  private double high(Lift lift) {
    return profile.levels().units().get(lift.to()).highestM();
  }

  /** The name of a stream along its line, above or below it where nothing else stands. */
  private void label(
      Graphics2D g, String stream, double from, double fromM, double to, double toM) {
    String text = FlowDrawing.shown(stream);
    FontMetrics metrics = g.getFontMetrics();
    double width = metrics.stringWidth(text);
    List<Rectangle2D> tried = new ArrayList<>();
    for (double along : ALONG) {
      double middle = from + along * (to - from);
      double left = Math.max(2, Math.min(middle - width / 2, width() - width - 2));
      double line = y(fromM + along * (toM - fromM));
      tried.add(
          new Rectangle2D.Double(
              left, line - GAP - metrics.getHeight(), width, metrics.getHeight()));
      tried.add(new Rectangle2D.Double(left, line + GAP, width, metrics.getHeight()));
    }
    Rectangle2D place =
        tried.stream()
            .filter(one -> taken.stream().noneMatch(one::intersects))
            .findFirst()
            .orElse(tried.get(0));
    taken.add(place);
    Color colour = g.getColor();
    g.setColor(Color.WHITE);
    g.fill(place);
    g.setColor(colour);
    g.drawString(text, (float) place.getX(), (float) place.getY() + metrics.getAscent());
  }
}
