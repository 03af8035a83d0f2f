package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.event.ActionListener;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.Scrollable;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.jfree.chart.JFreeChart;

/** A chart, its numbers as a table when asked for, or a sentence that says why there is none. */
final class ChartView {
  private static final String CHART = "chart";
  private static final String TABLE = "table";
  private static final String NOTHING = "nothing";

  private final CardLayout cards = new CardLayout();
  private final JPanel stack = new JPanel(cards);
  private final JPanel panel = new JPanel(new BorderLayout());
  private final JPanel controls = new JPanel(new MigLayout("insets 4 10 4 10", "push[]"));
  private final Canvas canvas = new Canvas();
  private final JTable table = new JTable();
  private final JCheckBox asTable = new JCheckBox("Numbers as a table");
  private final JLabel nothing = new JLabel("", JLabel.CENTER);
  private Optional<ChartData> shown = Optional.empty();

  ChartView(String name, String title) {
    Look.named(canvas, name, title);
    Look.named(table, name + " numbers", title + ", numbers");
    asTable.setName(name + " as table");
    asTable.addActionListener(event -> turn());
    table.setCellSelectionEnabled(true);
    JScrollPane room = new JScrollPane(canvas);
    room.setBorder(BorderFactory.createEmptyBorder());
    stack.add(room, CHART);
    stack.add(new JScrollPane(table), TABLE);
    stack.add(nothing, NOTHING);
    controls.add(asTable);
    panel.add(controls, BorderLayout.SOUTH);
    panel.add(stack, BorderLayout.CENTER);
    panel.setBorder(BorderFactory.createEmptyBorder(4, 4, 0, 4));
  }

  JPanel component() {
    return panel;
  }

  /** Puts two choices above the chart, which are taken where they change. */
  void choose(String first, JComboBox<?> one, String second, JComboBox<?> other, Runnable taken) {
    JPanel above = new JPanel(new MigLayout("insets 6 10 2 10", "[]6lp[]16lp[]6lp[]"));
    above.add(Look.label(first, one));
    above.add(one, "wmax 260lp");
    above.add(Look.label(second, other));
    above.add(other);
    panel.add(above, BorderLayout.NORTH);
    one.addActionListener(event -> taken.run());
    other.addActionListener(event -> taken.run());
  }

  /** Fills a choice, which keeps its place in the list and tells nobody. */
  static void fill(JComboBox<String> box, List<String> entries) {
    List<ActionListener> told = List.of(box.getActionListeners());
    told.forEach(box::removeActionListener);
    int selected = Math.max(0, box.getSelectedIndex());
    box.setModel(new DefaultComboBoxModel<>(entries.toArray(String[]::new)));
    box.setSelectedIndex(Math.min(selected, entries.size() - 1));
    box.setEnabled(!entries.isEmpty());
    told.forEach(box::addActionListener);
  }

  void show(Optional<ChartData> data, String whyNot) {
    nothing.setText(whyNot);
    if (!data.equals(shown)) {
      shown = data;
      canvas.chart = data.map(ChartPainter::chart);
      canvas.bars = data.map(d -> d.bars().size()).orElse(0);
      canvas.revalidate();
      table.setModel(data.map(ChartView::numbers).orElseGet(DefaultTableModel::new));
      canvas
          .getAccessibleContext()
          .setAccessibleDescription(
              data.map(d -> d.title() + ": " + d.y() + " against " + d.x()).orElse(whyNot));
    }
    turn();
    canvas.repaint();
  }

  private void turn() {
    asTable.setEnabled(shown.isPresent());
    cards.show(stack, shown.isEmpty() ? NOTHING : asTable.isSelected() ? TABLE : CHART);
  }

  private static DefaultTableModel numbers(ChartData data) {
    boolean curves = data.bars().isEmpty();
    DefaultTableModel rows =
        new Numbers(new String[] {curves ? "curve" : "part", data.x(), data.y()});
    if (!data.right().isEmpty()) {
      rows.addColumn(data.right());
    }
    for (ChartData.Series series : data.series()) {
      series
          .points()
          .forEach(p -> rows.addRow(new Object[] {series.name(), text(p.x()), text(p.y())}));
    }
    for (ChartData.Series series : data.rightSeries()) {
      series
          .points()
          .forEach(p -> rows.addRow(new Object[] {series.name(), text(p.x()), "", text(p.y())}));
    }
    data.bars().forEach(b -> rows.addRow(new Object[] {b.group(), b.name(), text(b.value())}));
    data.levels().forEach(l -> rows.addRow(new Object[] {"line", l.name(), text(l.value())}));
    return rows;
  }

  private static String text(double number) {
    return String.format(java.util.Locale.ROOT, "%.4g", number);
  }

  /** Numbers to be read and copied, not changed. */
  @SuppressWarnings("serial")
  private static final class Numbers extends DefaultTableModel {
    Numbers(String[] heads) {
      super(heads, 0);
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return false;
    }
  }

  /** Paints the chart as large as there is room, sharp at every scale of the screen. */
  @SuppressWarnings("serial")
  private static final class Canvas extends JComponent implements Scrollable {
    private static final int BESIDE_BARS = 190;
    private static final int BAR = 16;

    private transient Optional<JFreeChart> chart = Optional.empty();

    /** Bars whose names would cover each other are scrolled. */
    private int bars;

    @Override
    public Dimension getPreferredScrollableViewportSize() {
      return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle seen, int orientation, int direction) {
      return BAR;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle seen, int orientation, int direction) {
      return seen.height;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
      return bars == 0 || getParent().getHeight() >= BESIDE_BARS + BAR * bars;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
      chart.ifPresent(c -> c.draw((Graphics2D) graphics, new Rectangle(getSize())));
    }

    @Override
    public Dimension getPreferredSize() {
      return new Dimension(560, bars == 0 ? 380 : BESIDE_BARS + BAR * bars);
    }

    @Override
    public javax.accessibility.AccessibleContext getAccessibleContext() {
      if (accessibleContext == null) {
        accessibleContext =
            new AccessibleJComponent() {
              @Override
              public javax.accessibility.AccessibleRole getAccessibleRole() {
                return javax.accessibility.AccessibleRole.CANVAS;
              }
            };
      }
      return accessibleContext;
    }
  }
}
