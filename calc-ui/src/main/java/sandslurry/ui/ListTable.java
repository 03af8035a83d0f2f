package sandslurry.ui;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.ActionEvent;
import java.awt.event.MouseEvent;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.Action;
import javax.swing.BorderFactory;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;

/** A table for a list of the document, one row an entry, with buttons to add and remove rows. */
final class ListTable implements Row {
  /**
   * A column.
   *
   * @param field name of the field in an entry
   * @param heading its heading
   * @param choices what may be chosen; empty when a text is typed
   * @param help what it is and what may be typed
   */
  record Column(String field, String heading, List<String> choices, String help) {}

  private final FormModel model;
  private final Supplier<String> list;
  private final List<Column> columns;
  private final Entries entries = new Entries();
  private final JTable table;
  private final JButton add;
  private final JButton remove;
  private final ProblemLine problemLine = new ProblemLine();
  private final JPanel panel =
      new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));

  /**
   * Makes the table.
   *
   * @param model the model
   * @param list pointer of the list
   * @param what one entry in words, such as "sieve"
   * @param columns the columns
   */
  ListTable(FormModel model, Supplier<String> list, String what, List<Column> columns) {
    this.model = model;
    this.list = list;
    this.columns = columns;
    this.table = new Table(entries);
    this.add = new JButton("Add " + what);
    this.remove = new JButton("Remove " + what);
    setUpTable(what);
    add.addActionListener(event -> addEntry());
    remove.addActionListener(event -> removeEntry());
    JPanel frame = new JPanel(new BorderLayout());
    frame.setBorder(BorderFactory.createLineBorder(table.getGridColor()));
    frame.add(table.getTableHeader(), BorderLayout.NORTH);
    frame.add(table, BorderLayout.CENTER);
    panel.setOpaque(false);
    panel.add(frame, "wmin 0");
    panel.add(problemLine.component(), "wmin 0");
    JPanel buttons = new JPanel(new MigLayout("insets 0", "[]4lp[]"));
    buttons.add(add);
    buttons.add(remove);
    panel.add(buttons, "wmin 0");
  }

  private void setUpTable(String what) {
    Look.named(table, "", "Table of each " + what + ". F2 edits a cell, Tab moves on.");
    table.putClientProperty("terminateEditOnFocusLost", true);
    table.setSelectionMode(ListSelectionModel.SINGLE_INTERVAL_SELECTION);
    table
        .getActionMap()
        .put(
            "paste",
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                clipboard().ifPresent(ListTable.this::paste);
              }
            });
    table.setCellSelectionEnabled(true);
    table.setShowGrid(true);
    table.getTableHeader().setReorderingAllowed(false);
    table.setDefaultRenderer(Object.class, new Renderer());
    leaveAtTheEnd("selectNextColumnCell", true);
    leaveAtTheEnd("selectPreviousColumnCell", false);
    for (int i = 0; i < columns.size(); i++) {
      Column column = columns.get(i);
      if (column.choices().isEmpty()) {
        JTextField editor = new JTextField();
        editor.getAccessibleContext().setAccessibleName(column.heading());
        DefaultCellEditor cell = new DefaultCellEditor(editor);
        cell.setClickCountToStart(1);
        table.getColumnModel().getColumn(i).setCellEditor(cell);
      } else {
        JComboBox<String> editor = new JComboBox<>(column.choices().toArray(String[]::new));
        editor.setMaximumRowCount(16);
        editor.getAccessibleContext().setAccessibleName(column.heading());
        table.getColumnModel().getColumn(i).setCellEditor(new DefaultCellEditor(editor));
        table.getColumnModel().getColumn(i).setPreferredWidth(180);
      }
    }
  }

  /** Tab walks through the cells and leaves the table at its end instead of starting again. */
  private void leaveAtTheEnd(String key, boolean forward) {
    Action standard = table.getActionMap().get(key);
    table
        .getActionMap()
        .put(
            key,
            new AbstractAction() {
              @Override
              public void actionPerformed(ActionEvent event) {
                int row = table.getSelectedRow();
                int column = table.getSelectedColumn();
                boolean last =
                    row == table.getRowCount() - 1 && column == table.getColumnCount() - 1;
                boolean first = row <= 0 && column <= 0;
                if (forward && last) {
                  commit();
                  table.transferFocus();
                } else if (!forward && first) {
                  commit();
                  table.transferFocusBackward();
                } else {
                  standard.actionPerformed(event);
                }
              }
            });
  }

  private static Optional<String> clipboard() {
    try {
      return Optional.of(
          (String)
              Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
    } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
      return Optional.empty();
    }
  }

  /** Puts lines of cells, as a spreadsheet copies them, in from the selected cell on. */
  void paste(String cells) {
    commit();
    int firstRow = Math.max(0, table.getSelectedRow());
    int firstColumn = Math.max(0, table.getSelectedColumn());
    List<String> lines = cells.lines().toList();
    model.change(
        document -> {
          DesignDocument changed = document;
          for (int i = 0; i < lines.size(); i++) {
            int row = firstRow + i;
            if (row >= changed.size(list.get())) {
              changed = changed.insert(list.get(), changed.size(list.get()), "{}");
            }
            String[] texts = lines.get(i).split("\t", -1);
            for (int k = 0; k < texts.length && firstColumn + k < columns.size(); k++) {
              changed = changed.with(pointer(row, firstColumn + k), texts[k].strip());
            }
          }
          return changed;
        });
  }

  JComponent component() {
    return panel;
  }

  JTable table() {
    return table;
  }

  private void addEntry() {
    commit();
    model.change(document -> document.insert(list.get(), document.size(list.get()), "{}"));
    int row = table.getRowCount() - 1;
    table.changeSelection(row, 0, false, false);
    table.requestFocusInWindow();
  }

  private void removeEntry() {
    int row = table.getSelectedRow() < 0 ? table.getRowCount() - 1 : table.getSelectedRow();
    if (table.isEditing()) {
      table.getCellEditor().cancelCellEditing();
    }
    if (row >= 0) {
      model.change(document -> document.without(list.get() + "/" + row));
    }
  }

  @Override
  public void commit() {
    if (table.isEditing() && !table.getCellEditor().stopCellEditing()) {
      table.getCellEditor().cancelCellEditing();
    }
  }

  @Override
  public void refresh() {
    table.setName(list.get());
    add.setName(list.get() + " add");
    remove.setName(list.get() + " remove");
    entries.refresh();
    remove.setEnabled(entries.getRowCount() > 0);
    if (panel.isVisible()) {
      problemLine.show(table, model.problemsAt(list.get()), list.get());
    }
  }

  @Override
  public boolean focus(String pointer) {
    if (!panel.isVisible() || !(pointer + "/").startsWith(list.get() + "/")) {
      return false;
    }
    String[] below = pointer.substring(list.get().length()).split("/");
    if (below.length == 3 && table.getRowCount() > 0) {
      int column = columns.stream().map(Column::field).toList().indexOf(below[2]);
      table.changeSelection(Integer.parseInt(below[1]), Math.max(0, column), false, false);
    }
    return Look.focus(table.getRowCount() > 0 ? table : add);
  }

  private String pointer(int row, int column) {
    return list.get() + "/" + row + "/" + columns.get(column).field();
  }

  /** A table whose headings tell what their columns are. */
  @SuppressWarnings("serial")
  private final class Table extends JTable {
    Table(AbstractTableModel entries) {
      super(entries);
    }

    @Override
    protected JTableHeader createDefaultTableHeader() {
      return new JTableHeader(columnModel) {
        @Override
        public String getToolTipText(MouseEvent event) {
          int column = columnAtPoint(event.getPoint());
          return column < 0 ? null : columns.get(column).help();
        }
      };
    }
  }

  /** The list as a table. */
  @SuppressWarnings("serial")
  private final class Entries extends AbstractTableModel {
    private int rows;

    void refresh() {
      int now = model.document().size(list.get());
      if (now == rows) {
        if (rows > 0) {
          fireTableRowsUpdated(0, rows - 1);
        }
        return;
      }
      if (table.isEditing()) {
        table.removeEditor();
      }
      rows = now;
      fireTableDataChanged();
      panel.revalidate();
    }

    @Override
    public int getRowCount() {
      return rows;
    }

    @Override
    public int getColumnCount() {
      return columns.size();
    }

    @Override
    public String getColumnName(int column) {
      return columns.get(column).heading();
    }

    @Override
    public Object getValueAt(int row, int column) {
      return model.document().text(pointer(row, column));
    }

    @Override
    public boolean isCellEditable(int row, int column) {
      return true;
    }

    @Override
    public void setValueAt(Object value, int row, int column) {
      DesignDocument document = model.document();
      String text = value == null ? "" : value.toString();
      if (row < document.size(list.get()) && !text.equals(document.text(pointer(row, column)))) {
        model.change(d -> d.with(pointer(row, column), text));
      }
    }
  }

  /** Paints a cell, with a frame and a word when there is a problem in it. */
  @SuppressWarnings("serial")
  private final class Renderer extends DefaultTableCellRenderer {
    @Override
    public Component getTableCellRendererComponent(
        JTable owner, Object value, boolean selected, boolean focused, int row, int column) {
      super.getTableCellRendererComponent(owner, value, selected, focused, row, column);
      List<Problem> problems = model.problemsAt(pointer(row, column));
      setToolTipText(problems.isEmpty() ? null : problems.get(0).message());
      if (!problems.isEmpty()) {
        boolean needed = ProblemLine.isOnlyMissing(problems);
        setBorder(BorderFactory.createLineBorder(needed ? Look.NEEDED : Look.PROBLEM));
        if (needed && value.toString().isBlank()) {
          setText("needed");
          setForeground(selected ? owner.getSelectionForeground() : Look.NEEDED);
          return this;
        }
      }
      setForeground(selected ? owner.getSelectionForeground() : owner.getForeground());
      return this;
    }
  }
}
