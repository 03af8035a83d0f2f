package sandslurry.ui;

import java.awt.Dimension;
import java.awt.KeyboardFocusManager;
import java.awt.Point;
import java.awt.Rectangle;
import java.beans.PropertyChangeEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.Scrollable;
import javax.swing.SwingConstants;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.DesignFields;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Content;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Kinds;

/** All inputs, in the order of the way that the material takes. */
final class InputsPanel implements Row {
  private static final String LINES = "/lines";
  private final FormModel model;
  private final List<InputSection> sections;
  private final Map<InputSection, Predicate<DesignDocument>> shown = new HashMap<>();
  private final InputSection unknown;
  private final ListEditor lines;

  /** Pointer of the line that is edited. */
  private Supplier<String> line;

  private final Letters letters = new Letters();
  private final Column column = new Column();
  private final JScrollPane scroll = new JScrollPane(column);

  InputsPanel(FormModel model) {
    this.model = model;
    this.sections = new ArrayList<>(List.of(design(), SandSection.of(model)));
    group("carrier", "", "");
    this.lines = lines();
    ofLine("mixture", "", "");
    ofLine("dilution", "Look at what dilution of the mixture does", "");
    ofLine("flow", "", "The least and greatest flow rate that really occur, not only the wish.");
    route();
    pump();
    ofLine(
        "suction",
        "Judge the suction line and the NPSH",
        "The pit stands above the pump by the pit level of the transfer line. Each of several"
            + " pumps in parallel has such a pipe of its own.");
    ofLine("states", "Judge the line in more states", "");
    ofLine(
        "operation",
        "Judge a day of pumping and the flush",
        "The flush takes two volumes of the line. It has one supply: one whose flow rate is known,"
            + " or the pump of the line, or a tank at a level, with a pump of its own or without.");
    ofLine(
        "observed",
        "A pressure and a flow rate were read on this line",
        "Read both at the same time. The program says what explains them.");
    group(
        "screw",
        "A screw conveyor feeds the pit",
        "A check of capacity for what stands in a heap. Guard and lock out every auger.");
    group(
        "gravityRun",
        "A gravity pipe runs part full",
        "By Manning's formula, which does not hold for thick manure.");
    group("lane", "The design has a settling lane", "");
    plant();
    criteria();
    group("titleBlock", "Fill in the title block of the report", "");
    this.unknown = UnknownFields.of(model);
    column.add(unknown.panel());
    for (InputSection section : sections) {
      column.add(section.panel());
    }
    sections.add(unknown);
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
      bringIntoView(owner);
      for (InputSection section : sections) {
        if (SwingUtilities.isDescendingFrom(owner, section.panel())) {
          letters.moveTo(section.panel());
        }
      }
    }
  }

  /** The column is asked, since a text field takes the question for one about its own text. */
  void bringIntoView(JComponent owner) {
    Rectangle place = new Rectangle(owner.getSize());
    if (owner instanceof JTable table && table.getSelectedRow() >= 0) {
      place = table.getCellRect(table.getSelectedRow(), table.getSelectedColumn(), true);
    } else if (owner instanceof JList<?> list && list.getSelectedIndex() >= 0) {
      place = list.getCellBounds(list.getSelectedIndex(), list.getSelectedIndex());
    }
    column.scrollRectToVisible(SwingUtilities.convertRectangle(owner, place, column));
  }

  JScrollPane component() {
    return scroll;
  }

  List<InputSection> sections() {
    return sections;
  }

  private static Content<?> content(String name) {
    return DesignFields.DESIGN.field(name).content();
  }

  private FieldRows rows(InputSection section, String place, Predicate<DesignDocument> there) {
    return rows(section, () -> place, there);
  }

  private FieldRows rows(
      InputSection section, Supplier<String> place, Predicate<DesignDocument> there) {
    return new FieldRows(model, section, place, there);
  }

  private InputSection section(String title, String place) {
    return section(title, () -> place);
  }

  private InputSection section(String title, Supplier<String> place) {
    InputSection section = new InputSection(model, title, place);
    sections.add(section);
    return section;
  }

  /** Title, notes and the units of the report. */
  private InputSection design() {
    InputSection section = new InputSection(model, "Design", "");
    FieldRows rows = rows(section, "", any -> true);
    for (String name : List.of("title", "notes", "units")) {
      rows.add(DesignFields.DESIGN.field(name), any -> true, "");
    }
    section.note(
        "Type every quantity with its unit, metric or US, as in 300 ft, 6 in, 0.9 m3/min.");
    return section;
  }

  /**
   * Adds the section of a group.
   *
   * @param name name of the group
   * @param box what the box says by which it comes and goes; empty for a group without one
   * @param note a note under the fields; may be empty
   */
  private void group(String name, String box, String note) {
    group(DesignFields.DESIGN, () -> "", name, box, note);
  }

  /** Adds the section of a part of the line. */
  private void ofLine(String name, String box, String note) {
    group(DesignFields.LINE, line, name, box, note);
  }

  private void group(
      Fields<?> fields, Supplier<String> around, String name, String box, String note) {
    Field<?> field = fields.field(name);
    Supplier<String> place = () -> around.get() + "/" + name;
    InputSection section = section(field.label(), place);
    shown.put(
        section,
        document ->
            (around.get().isEmpty() || document.has(around.get()))
                && fields.isShown(field, document.seen(around.get())));
    Predicate<DesignDocument> there = any -> true;
    if (!box.isEmpty()) {
      there = part(section, name, place, box, "{}");
    }
    if (field.content() instanceof Fields<?> run && RunEditor.isRun(run)) {
      new RunEditor(model, place).addTo(section, run, there);
    } else {
      rows(section, place, there).add(field.content());
    }
    if (!note.isEmpty()) {
      section.showWhen(there, section.note(note));
    }
  }

  /** Adds the box by which a part comes and goes. */
  private static Predicate<DesignDocument> part(
      InputSection section, String name, Supplier<String> place, String box, String fresh) {
    Predicate<DesignDocument> there = document -> document.has(place.get());
    section.part(
        box,
        "part " + name,
        there,
        document -> document.withPart(place.get(), fresh),
        () -> List.of(place.get()));
    return there;
  }

  /** The lines by their names: the fields of the one that is selected follow. */
  private ListEditor lines() {
    Field<?> list = DesignFields.DESIGN.field("lines");
    // Where there is none the box of the transfer line says what is amiss.
    InputSection section =
        section(list.label(), () -> model.document().has(LINES + "/0") ? LINES : "/~0");
    Predicate<DesignDocument> any = document -> document.has(LINES + "/0");
    shown.put(section, any);
    ListEditor editor =
        new ListEditor(
            model,
            () -> LINES,
            new ListEditor.Kind(
                "The line that is edited", "line", DesignFields.LINE.fresh(), 1, (d, at) -> ""),
            pointer -> {
              this.line = pointer;
              InputSection fields = new InputSection(model, "line", pointer);
              rows(fields, pointer, there -> true).add(DesignFields.LINE.field("name"), any, "");
              return fields;
            });
    editor.follow(
        () -> sections.stream().filter(other -> other != section).forEach(Row::commit),
        model::choose);
    section.list(editor, any);
    return editor;
  }

  private void route() {
    Field<?> route = DesignFields.LINE.field("route");
    Supplier<String> place = () -> line.get() + "/route";
    InputSection section =
        section(route.label(), () -> model.document().has(line.get()) ? place.get() : LINES);
    JCheckBox box =
        section.part(
            "The design has a transfer line",
            "part route",
            document -> document.has(LINES + "/0"),
            document -> document.withPart(LINES + "/0", DesignFields.LINE.fresh()),
            () -> List.of(LINES + "/0"));
    // One of several is removed in their list.
    section.showWhen(document -> document.size(LINES) < 2, box);
    rows(section, place, document -> document.has(line.get())).add(route.content());
  }

  private void pump() {
    Field<?> pump = DesignFields.LINE.field("pump");
    Supplier<String> place = () -> line.get() + "/pump";
    InputSection section = section(pump.label(), place);
    shown.put(section, document -> document.has(line.get()));
    rows(section, place, any -> true)
        .addKinds(
            (Kinds<?>) pump.content(),
            Optional.of("none: " + pump.absent()),
            () -> List.of(line.get() + "/suction", line.get() + "/states/wornHead"));
  }

  private void plant() {
    Fields<?> fields = (Fields<?>) content("plant");
    InputSection first = section(DesignFields.DESIGN.field("plant").label(), "/plant");
    Predicate<DesignDocument> there =
        part(
            first,
            "plant",
            () -> "/plant",
            "The design has a plant, from the pens to the storage",
            fields.fresh());
    List<String> lists = List.of("pens", "waters", "units", "products", "machines", "modes");
    List<String> apart = new ArrayList<>(lists);
    apart.addAll(List.of("targets", "prices"));
    rows(first, "/plant", there).add(fields, apart.toArray(String[]::new));
    first.showWhen(
        there,
        first.note(
            "Units are connected by streams: a stream is a name that one pen, water or unit makes"
                + " and one unit or product takes. The plant takes the sand and the temperature"
                + " from above; its liquor is what its balance makes of it."));
    for (List<String> part :
        List.of(lists.subList(0, 2), lists.subList(2, 3), lists.subList(3, lists.size()))) {
      String titles = String.join(", ", part.stream().map(name -> titleOf(fields, name)).toList());
      String title = titles.charAt(0) + titles.substring(1).toLowerCase(Locale.ROOT);
      InputSection section = section(title, "/plant/" + part.get(0));
      shown.put(section, there);
      FieldRows rows = rows(section, "/plant", there);
      part.forEach(name -> rows.add(fields.field(name), there, ""));
    }
    for (String name : List.of("targets", "prices")) {
      InputSection section = section(titleOf(fields, name), "/plant/" + name);
      shown.put(section, there);
      rows(section, "/plant/" + name, there).add(fields.field(name).content());
    }
  }

  private static String titleOf(Fields<?> fields, String name) {
    return fields.field(name).label().replaceAll("[:;,].*| of (the day|known).*", "");
  }

  private void criteria() {
    InputSection section = section(DesignFields.DESIGN.field("criteria").label(), "/criteria");
    Fields<?> fields = (Fields<?>) content("criteria");
    rows(section, "/criteria", any -> true).add(fields, "depositionRoles");
    JCheckBox show = new JCheckBox("Show the roles of the correlations");
    show.setName("show roles");
    section.panel().add(show, "span 2, align left");
    String roles = "/criteria/depositionRoles";
    rows(section, roles, document -> show.isSelected() || document.has(roles))
        .add(fields.field("depositionRoles").content());
    show.addActionListener(event -> section.refresh());
  }

  @Override
  public void refresh() {
    unknown.panel().setVisible(UnknownFields.any(model));
    shown.forEach(
        (section, condition) -> section.panel().setVisible(condition.test(model.document())));
    sections.forEach(Row::refresh);
  }

  @Override
  public void commit() {
    sections.forEach(Row::commit);
    model.endEdit();
  }

  @Override
  public boolean focus(String pointer) {
    lines.turnTo(pointer);
    return unknown.focus(pointer)
        || sections.stream()
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
