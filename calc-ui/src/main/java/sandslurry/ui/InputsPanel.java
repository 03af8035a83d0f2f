package sandslurry.ui;

import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.beans.PropertyChangeEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** All inputs, in the order of the way that the material takes. */
final class InputsPanel implements Row {
  private final FormModel model;
  private final List<InputSection> sections;
  private final InputSection mixture;
  private final InputSection dilution;
  private final InputSection flow;
  private final InputSection pump;
  private final InputSection suction;
  private final InputSection states;
  private final InputSection operation;
  private final List<InputSection> plant;
  private final Column column = new Column();
  private final JScrollPane scroll = new JScrollPane(column);

  InputsPanel(FormModel model) {
    this.model = model;
    this.mixture = MixtureSection.mixture(model);
    this.dilution = MixtureSection.dilution(model);
    this.flow = MixtureSection.flow(model);
    this.pump = PumpSection.of(model);
    this.suction = ServiceSections.suction(model);
    this.states = ServiceSections.states(model);
    this.operation = ServiceSections.operation(model);
    this.plant = PlantInputs.of(model);
    this.sections = new ArrayList<>();
    sections.addAll(
        List.of(
            DesignSection.of(model),
            SandSection.of(model),
            CarrierSection.of(model),
            mixture,
            dilution,
            flow,
            RouteSection.of(model),
            pump,
            suction,
            states,
            operation,
            ServiceSections.screw(model),
            ServiceSections.gravityRun(model),
            LaneSection.of(model)));
    sections.addAll(plant);
    sections.add(CriteriaSection.of(model));
    for (InputSection section : sections) {
      column.add(section.panel());
    }
    scroll.setBorder(null);
    scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
    scroll.getVerticalScrollBar().setUnitIncrement(20);
    Look.named(scroll, "inputs", "Inputs");
    model.listen(this::refresh);
    refresh();
    KeyboardFocusManager.getCurrentKeyboardFocusManager()
        .addPropertyChangeListener("permanentFocusOwner", this::followFocus);
  }

  private void followFocus(PropertyChangeEvent event) {
    if (event.getNewValue() instanceof JComponent owner
        && SwingUtilities.isDescendingFrom(owner, column)) {
      owner.scrollRectToVisible(new Rectangle(owner.getSize()));
    }
  }

  JScrollPane component() {
    return scroll;
  }

  List<InputSection> sections() {
    return sections;
  }

  @Override
  public void refresh() {
    boolean line = model.document().has("/route");
    mixture.panel().setVisible(line || model.document().has("/mixture"));
    dilution.panel().setVisible(line || model.document().has("/dilution"));
    flow.panel().setVisible(line || model.document().has("/flow"));
    pump.panel().setVisible(line || model.document().has("/pump"));
    suction.panel().setVisible(model.document().has("/pump") || model.document().has("/suction"));
    states.panel().setVisible(line || model.document().has("/states"));
    operation.panel().setVisible(line || model.document().has("/operation"));
    for (InputSection part : plant.subList(1, plant.size())) {
      part.panel().setVisible(model.document().has("/plant"));
    }
    sections.forEach(Row::refresh);
  }

  @Override
  public void commit() {
    sections.forEach(Row::commit);
    model.endEdit();
  }

  @Override
  public boolean focus(String pointer) {
    return sections.stream()
        .filter(s -> s.panel().isVisible())
        .anyMatch(section -> section.focus(pointer));
  }

  /** Brings a section into view and gives the focus to its first field. */
  void goTo(InputSection section) {
    int lowest = column.getHeight() - scroll.getViewport().getHeight();
    int top = Math.max(0, Math.min(section.panel().getY(), lowest));
    scroll.getViewport().setViewPosition(new Point(0, top));
    section.focusFirst();
  }

  /** A column as wide as the window shows. */
  @SuppressWarnings("serial")
  private static final class Column extends JPanel implements Scrollable {
    Column() {
      super(new MigLayout("insets 0, gap 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
    }

    void add(JPanel section) {
      add(section, "growx, wmin 0");
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
      return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
      return getFontMetrics(getFont()).getHeight();
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
      return orientation == SwingConstants.VERTICAL ? visible.height : visible.width;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
      return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
      return getParent() != null && getParent().getHeight() > getPreferredSize().height;
    }
  }
}
