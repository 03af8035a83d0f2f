package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.eclipse.elk.core.options.Direction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.assessment.plant.PlantResult.FlowEdge;

class StreamLayoutTest {
  private static final FontMetrics METRICS =
      new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)
          .createGraphics()
          .getFontMetrics(new Font(Font.SANS_SERIF, Font.PLAIN, 12));

  private static StreamLayout of(List<FlowEdge> edges) {
    return StreamLayout.of(
        edges,
        Direction.RIGHT,
        edge -> List.of(edge.stream(), "1.234 L/s, sand 1.234 t/d"),
        METRICS,
        METRICS);
  }

  private static void isReadable(StreamLayout layout) {
    List<StreamLayout.Arrow> arrows = layout.arrows();
    for (int i = 0; i < arrows.size(); i++) {
      StreamLayout.Arrow arrow = arrows.get(i);
      for (int j = 0; j < i; j++) {
        assertThat(arrow.label().intersects(arrows.get(j).label()))
            .as("label of %s on that of %s", arrow.edge(), arrows.get(j).edge())
            .isFalse();
      }
      layout
          .boxes()
          .forEach(
              (name, box) ->
                  assertThat(box.intersects(arrow.label()))
                      .as("label of %s on %s", arrow.edge(), name)
                      .isFalse());
      Rectangle2D to = layout.boxes().get(arrow.edge().to());
      assertThat(
              Math.min(
                  Math.abs(arrow.end().getX() - to.getMinX()),
                  Math.abs(arrow.end().getX() - to.getMaxX())))
          .as("%s ends at its box", arrow.edge())
          .isCloseTo(0, within(0.5));
      assertThat(arrow.end().getY()).isBetween(to.getMinY(), to.getMaxY());
      // No arrow runs behind a box that it has no business with.
      layout
          .boxes()
          .forEach(
              (name, box) -> {
                if (!name.equals(arrow.edge().from()) && !name.equals(arrow.edge().to())) {
                  Rectangle2D inside =
                      new Rectangle2D.Double(
                          box.getX() + 1, box.getY() + 1, box.getWidth() - 2, box.getHeight() - 2);
                  assertThat(crosses(arrow, inside))
                      .as("%s runs behind %s", arrow.edge(), name)
                      .isFalse();
                }
              });
    }
  }

  private static boolean crosses(StreamLayout.Arrow arrow, Rectangle2D box) {
    double[] last = new double[2];
    double[] point = new double[6];
    for (var it = arrow.way().getPathIterator(null); !it.isDone(); it.next()) {
      boolean line = it.currentSegment(point) == java.awt.geom.PathIterator.SEG_LINETO;
      if (line && box.intersectsLine(last[0], last[1], point[0], point[1])) {
        return true;
      }
      last[0] = point[0];
      last[1] = point[1];
    }
    return false;
  }

  @ParameterizedTest
  @ValueSource(strings = {"closed-loop-dairy.json", "flushed-barn-lagoon.json"})
  void thePlantsOfTheExamplesCanBeRead(String example) {
    Designs.assessment(Designs.example(example))
        .plant()
        .orElseThrow()
        .modes()
        .forEach(mode -> isReadable(of(mode.sheet())));
  }

  @Test
  void ringsAndParallelStreamsAreReadableToo() {
    isReadable(
        of(
            List.of(
                new FlowEdge("a", "One", "Two", 1, 1),
                new FlowEdge("b", "One", "Two", 2, 0),
                new FlowEdge("c", "Two", "One", 3, 0),
                new FlowEdge("d", "Two", "Three", 1, 0),
                new FlowEdge("e", "Three", "Two", 1, 1))));
  }
}
