package sandslurry.ui;

import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import javax.swing.UIManager;
import net.miginfocom.swing.MigLayout;
import sandslurry.design.document.DesignDocument;

/** A list of the document as a list of names, and below it the fields of the entry selected. */
final class ListEditor implements Row {
  /**
   * What the editor says and does for one kind of list.
   *
   * @param heading what stands above the list
   * @param entry one entry in a word, such as "run"
   * @param fresh a new entry as JSON
   * @param least the least number of entries that is left
   * @param summary a few words on the entry at a pointer, shown after its name; may be empty
   */
  record Kind(
      String heading,
      String entry,
      String fresh,
      int least,
      BiFunction<DesignDocument, String, String> summary) {}

  private final FormModel model;
  private final Supplier<String> place;
  private final Kind kind;
  private final InputSection editor;
  private final DefaultListModel<String> names = new DefaultListModel<>();
  private final JList<String> list = new JList<>(names);
  private final JButton add;
  private final JButton remove = new JButton("Remove");
  private final JButton up = new JButton("Move up");
  private final JButton down = new JButton("Move down");
  private final JPanel panel =
      new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill]"));
  private int selected;
  private Runnable before = () -> {};
  private IntConsumer after = index -> {};

  /**
   * Makes the editor.
   *
   * @param model the model
   * @param place pointer of the list
   * @param kind what it says and does
   * @param editor makes the fields of one entry from the pointer of that entry
   */
  ListEditor(
      FormModel model,
      Supplier<String> place,
      Kind kind,
      Function<Supplier<String>, InputSection> editor) {
    this.model = model;
    this.place = place;
    this.kind = kind;
    this.editor = editor.apply(this::entry).inside();
    this.add = new JButton("Add " + kind.entry());
    Look.named(list, "", kind.heading());
    list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    list.setBorder(BorderFactory.createLineBorder(UIManager.getColor("Component.borderColor")));
    list.addListSelectionListener(event -> select());
    JPanel buttons = new JPanel(new MigLayout("insets 0", "[]4lp[]4lp[]4lp[]"));
    for (JButton button : new JButton[] {add, remove, up, down}) {
      button.getAccessibleContext().setAccessibleName(button.getText() + ": " + kind.heading());
      buttons.add(button);
    }
    panel.add(Look.label(kind.heading(), list));
    panel.add(list, "wmin 0");
    panel.add(buttons, "wmin 0");
    panel.add(this.editor.panel(), "wmin 0");
    add.addActionListener(event -> addEntry());
    remove.addActionListener(event -> removeEntry());
    up.addActionListener(event -> move(-1));
    down.addActionListener(event -> move(1));
  }

  /**
   * Lets others follow which entry is selected.
   *
   * @param commit runs before another is selected
   * @param then takes the index of the entry selected
   */
  void follow(Runnable commit, IntConsumer then) {
    before = commit;
    after = then;
  }

  JComponent component() {
    return panel;
  }

  JComponent list() {
    return list;
  }

  private String entry() {
    return place.get() + "/" + selected;
  }

  private void select() {
    if (list.getSelectedIndex() >= 0 && list.getSelectedIndex() != selected) {
      int wanted = list.getSelectedIndex();
      editor.commit();
      before.run();
      selected = wanted;
      model.endEdit();
      refresh();
      after.accept(selected);
    }
  }

  private void addEntry() {
    editor.commit();
    before.run();
    model.forgetBelow(place.get());
    int at = Math.min(selected + 1, model.document().size(place.get()));
    selected = at;
    model.change(document -> document.insert(place.get(), at, kind.fresh()));
  }

  private void removeEntry() {
    model.forgetBelow(place.get());
    String entry = entry();
    // A list that is empty says nothing, so it goes as well.
    boolean last = model.document().size(place.get()) == 1;
    selected = Math.max(0, selected - 1);
    model.change(document -> document.without(last ? place.get() : entry));
  }

  private void move(int step) {
    editor.commit();
    before.run();
    model.forgetBelow(place.get());
    String entry = entry();
    selected += step;
    int to = selected;
    model.change(document -> document.without(entry).insert(place.get(), to, document.json(entry)));
  }

  @Override
  public void refresh() {
    DesignDocument document = model.document();
    String at = place.get();
    list.setName(at);
    add.setName(at + " add");
    remove.setName(at + " remove");
    up.setName(at + " up");
    down.setName(at + " down");
    int size = document.size(at);
    selected = Math.max(0, Math.min(selected, size - 1));
    for (int i = 0; i < size; i++) {
      String name = name(document, i);
      if (i >= names.size()) {
        names.addElement(name);
      } else if (!names.get(i).equals(name)) {
        names.set(i, name);
      }
    }
    while (names.size() > size) {
      names.remove(names.size() - 1);
    }
    list.setSelectedIndex(size == 0 ? -1 : selected);
    list.setVisible(size > 0);
    editor.panel().setVisible(size > 0);
    remove.setEnabled(size > kind.least());
    up.setEnabled(selected > 0);
    down.setEnabled(selected < size - 1);
    if (size > 0) {
      editor.heading().setText(title(document, selected));
      editor.refresh();
    }
  }

  private String title(DesignDocument document, int index) {
    String name = document.text(place.get() + "/" + index + "/name");
    return name.isBlank()
        ? kind.entry().substring(0, 1).toUpperCase(Locale.ROOT)
            + kind.entry().substring(1)
            + " "
            + (index + 1)
        : name;
  }

  private String name(DesignDocument document, int index) {
    String entry = place.get() + "/" + index;
    String what = kind.summary().apply(document, entry).strip();
    boolean named = !document.text(entry + "/name").isBlank();
    return (named ? index + 1 + "  " : "")
        + title(document, index)
        + (what.isEmpty() ? "" : ": " + what)
        + (model.problemsAt(entry).isEmpty() ? "" : "  (needs attention)");
  }

  @Override
  public void commit() {
    editor.commit();
  }

  /** Selects the entry in which a place lies, if it lies in one. */
  void turnTo(String pointer) {
    String at = place.get();
    if (pointer.startsWith(at + "/")) {
      String index = pointer.substring(at.length() + 1).split("/")[0];
      if (index.matches("\\d{1,6}") && Integer.parseInt(index) < names.size()) {
        list.setSelectedIndex(Integer.parseInt(index));
      }
    }
  }

  @Override
  public boolean focus(String pointer) {
    String at = place.get();
    if (!panel.isVisible() || !(pointer + "/").startsWith(at + "/")) {
      return false;
    }
    if (pointer.equals(at) || names.isEmpty()) {
      return Look.focus(add);
    }
    turnTo(pointer);
    return editor.focus(pointer) || Look.focus(list);
  }
}
