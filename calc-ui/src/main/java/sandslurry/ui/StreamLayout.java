package sandslurry.ui;

import java.awt.FontMetrics;
import java.awt.Rectangle;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.elk.alg.layered.options.CycleBreakingStrategy;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.alg.layered.options.OrderingStrategy;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.math.ElkPadding;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeLabelPlacement;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.util.BasicProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkLabel;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import sandslurry.assessment.plant.PlantResult.FlowEdge;

/**
 * Where the boxes, arrows and labels of a drawing of flows stand: in layers from left to right or
 * from top to bottom, every arrow from the box it leaves to the box it enters by right angles, and
 * no label on another. What flows back enters from behind. The layered layout of the Eclipse Layout
 * Kernel does the work.
 *
 * @param boxes the place of each unit, by name
 * @param arrows the arrows, in the order of the streams
 * @param width width of the whole
 * @param height height of the whole
 */
record StreamLayout(
    Map<String, Rectangle2D> boxes, List<Arrow> arrows, double width, double height) {
  private static final double BOX_HEIGHT = 28;
  private static final double LEAST_BOX_WIDTH = 70;
  private static final double GAP = 12;
  private static final double LAYER_GAP = 14;
  private static final double MARGIN = 8;

  static {
    LayoutMetaDataService.getInstance()
        .registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
  }

  /**
   * The way of a stream.
   *
   * @param edge the stream
   * @param way its line
   * @param beforeEnd the last corner before its end
   * @param end where it enters
   * @param label the place of its label
   */
  record Arrow(FlowEdge edge, Path2D way, Point2D beforeEnd, Point2D end, Rectangle label) {}

  /**
   * Lays out streams.
   *
   * @param edges the streams
   * @param direction where they run: right on a screen, down on a page
   * @param lines the lines of the label of a stream
   * @param names the metrics in which units are written
   * @param labels the metrics in which labels are written
   * @return the layout
   */
  static StreamLayout of(
      List<FlowEdge> edges,
      Direction direction,
      Function<FlowEdge, List<String>> lines,
      FontMetrics names,
      FontMetrics labels) {
    ElkNode root = ElkGraphUtil.createGraph();
    root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
    root.setProperty(CoreOptions.DIRECTION, direction);
    root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
    root.setProperty(CoreOptions.PADDING, new ElkPadding(MARGIN));
    root.setProperty(CoreOptions.SPACING_NODE_NODE, GAP);
    root.setProperty(CoreOptions.SPACING_EDGE_NODE, GAP);
    root.setProperty(CoreOptions.SPACING_EDGE_EDGE, GAP);
    root.setProperty(LayeredOptions.SPACING_NODE_NODE_BETWEEN_LAYERS, LAYER_GAP);
    root.setProperty(LayeredOptions.SPACING_EDGE_NODE_BETWEEN_LAYERS, GAP);
    root.setProperty(LayeredOptions.SPACING_EDGE_EDGE_BETWEEN_LAYERS, GAP / 2);
    // The streams come in the order in which one would tell them; keep to it where it does no harm.
    root.setProperty(LayeredOptions.CONSIDER_MODEL_ORDER_STRATEGY, OrderingStrategy.PREFER_EDGES);
    root.setProperty(LayeredOptions.CYCLE_BREAKING_STRATEGY, CycleBreakingStrategy.DEPTH_FIRST);
    root.setProperty(CoreOptions.SPACING_EDGE_LABEL, GAP / 3);
    Map<String, ElkNode> nodes = new LinkedHashMap<>();
    List<ElkEdge> drawn = new ArrayList<>();
    for (FlowEdge edge : edges) {
      ElkEdge line =
          ElkGraphUtil.createSimpleEdge(
              node(nodes, root, edge.from(), names), node(nodes, root, edge.to(), names));
      ElkLabel label = ElkGraphUtil.createLabel(edge.stream(), line);
      List<String> text = lines.apply(edge);
      label.setDimensions(
          text.stream().mapToInt(labels::stringWidth).max().orElse(0) + 6.0,
          text.size() * labels.getHeight() + 2.0);
      label.setProperty(CoreOptions.EDGE_LABELS_PLACEMENT, EdgeLabelPlacement.CENTER);
      drawn.add(line);
    }
    new RecursiveGraphLayoutEngine().layout(root, new BasicProgressMonitor());
    List<Arrow> arrows = new ArrayList<>();
    for (int i = 0; i < drawn.size(); i++) {
      arrows.add(arrow(edges.get(i), drawn.get(i)));
    }
    Map<String, Rectangle2D> boxes = new LinkedHashMap<>();
    nodes.forEach(
        (name, node) ->
            boxes.put(
                name,
                new Rectangle2D.Double(
                    node.getX(), node.getY(), node.getWidth(), node.getHeight())));
    return new StreamLayout(boxes, arrows, root.getWidth(), root.getHeight());
  }

  private static ElkNode node(
      Map<String, ElkNode> nodes, ElkNode root, String name, FontMetrics metrics) {
    return nodes.computeIfAbsent(
        name,
        key -> {
          ElkNode node = ElkGraphUtil.createNode(root);
          node.setDimensions(
              Math.max(LEAST_BOX_WIDTH, metrics.stringWidth(FlowDrawing.shown(key)) + 20.0),
              BOX_HEIGHT);
          return node;
        });
  }

  private static Arrow arrow(FlowEdge edge, ElkEdge line) {
    ElkEdgeSection section = line.getSections().get(0);
    Path2D way = new Path2D.Double();
    way.moveTo(section.getStartX(), section.getStartY());
    double[] before = {section.getStartX(), section.getStartY()};
    section
        .getBendPoints()
        .forEach(
            bend -> {
              way.lineTo(bend.getX(), bend.getY());
              before[0] = bend.getX();
              before[1] = bend.getY();
            });
    way.lineTo(section.getEndX(), section.getEndY());
    ElkLabel label = line.getLabels().get(0);
    return new Arrow(
        edge,
        way,
        new Point2D.Double(before[0], before[1]),
        new Point2D.Double(section.getEndX(), section.getEndY()),
        new Rectangle(
            (int) Math.round(label.getX()),
            (int) Math.round(label.getY()),
            (int) Math.ceil(label.getWidth()),
            (int) Math.ceil(label.getHeight())));
  }
}
