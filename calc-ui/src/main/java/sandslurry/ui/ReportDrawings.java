package sandslurry.ui;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.line.LineResult;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.line.RunState;
import sandslurry.assessment.plant.PlantResult;
import sandslurry.report.block.Block;

/** The charts and drawings of a report, in one font whatever the look of the form is. */
record ReportDrawings(Assessment assessment) {
  /** Fixed, so that form and command line draw the same. */
  private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);

  private static final int CHART_WIDTH = 500;
  private static final int CHART_HEIGHT = 280;

  /**
   * Something that can be drawn at any size.
   *
   * @param width its natural width
   * @param height its natural height
   * @param painter paints it at its natural size
   */
  record Drawing(int width, int height, Painter painter) {}

  /** Paints a drawing. */
  interface Painter {
    /**
     * Paints.
     *
     * @param graphics where to
     */
    void paint(Graphics2D graphics);
  }

  Optional<Drawing> drawing(String id) {
    int mark = id.indexOf('/');
    if (mark > 0) {
      return assessment.lines().values().stream()
          .skip(Integer.parseInt(id.substring(0, mark)))
          .findFirst()
          .flatMap(line -> new ReportDrawings(line).drawing(id.substring(mark + 1)));
    }
    return switch (id) {
      case "system" -> new Charts(assessment).systemCurve().map(ReportDrawings::chart);
      case "grade" -> new Charts(assessment).gradeLine().map(ReportDrawings::chart);
      case "deposition" -> deposition().map(ReportDrawings::chart);
      case "dilution" -> new Charts(assessment).dilution().map(ReportDrawings::chart);
      case "plant" -> FlowDrawing.onPaper(assessment).map(ReportDrawings::plant);
      case "profile" -> profile();
      default -> Optional.empty();
    };
  }

  /** At the run and the flow rate that are closest. */
  private Optional<ChartData> deposition() {
    Optional<LineResult> line = assessment.line();
    if (line.isEmpty()) {
      return Optional.empty();
    }
    int worstState = 0;
    int worstRun = 0;
    double least = Double.POSITIVE_INFINITY;
    for (int s = 0; s < line.get().states().size(); s++) {
      LineState state = line.get().states().get(s);
      for (int r = 0; r < state.runs().size(); r++) {
        RunState run = state.runs().get(r);
        double left =
            run.deposition()
                .filter(d -> run.depositionApplies())
                .map(d -> d.velocityMps() / d.velocityToPassMps())
                .orElse(Double.POSITIVE_INFINITY);
        if (left < least) {
          least = left;
          worstState = s;
          worstRun = r;
        }
      }
    }
    return new Charts(assessment).deposition(worstRun, worstState);
  }

  private static Drawing chart(ChartData data) {
    JFreeChart chart = ChartPainter.onPaper(data, FONT);
    int height = data.bars().isEmpty() ? CHART_HEIGHT : 100 + 16 * data.bars().size();
    return new Drawing(
        CHART_WIDTH, height, g -> chart.draw(g, new Rectangle2D.Double(0, 0, CHART_WIDTH, height)));
  }

  private static Drawing plant(FlowDrawing drawing) {
    drawing.setFont(FONT);
    int width = drawing.getWidth();
    int height = drawing.getHeight();
    return new Drawing(width, height, g -> drawing.paintInto(g, width, height));
  }

  private Optional<Drawing> profile() {
    return assessment
        .plant()
        .flatMap(PlantResult::profile)
        .map(found -> new ProfileDrawing(found, assessment.design().units()))
        .map(
            drawing ->
                new Drawing(
                    drawing.width(),
                    ProfileDrawing.HEIGHT,
                    g -> {
                      g.setFont(FONT);
                      drawing.paint(g);
                    }));
  }

  static Drawing window(Block.Window window) {
    return new Drawing(
        WindowDrawing.WIDTH,
        WindowDrawing.HEIGHT,
        g -> {
          g.setFont(FONT);
          g.setColor(Color.BLACK);
          new WindowDrawing(window).paint(g);
        });
  }
}
