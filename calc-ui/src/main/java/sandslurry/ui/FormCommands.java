package sandslurry.ui;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;
import javax.swing.JToolBar;
import javax.swing.filechooser.FileNameExtensionFilter;

/** Every command of the window, in its menus and on its tool bar. */
final class FormCommands {
  private final FormModel model;
  private final JFrame frame;
  private final InputsPanel inputs;
  private final ResultsPanel results;
  private final Map<Command, BooleanSupplier> places = new LinkedHashMap<>();
  private Path folder = Path.of("").toAbsolutePath();

  private final Command startNew =
      new Command("&New", "control N", "Start an empty design", this::startNew);
  private final Command open =
      new Command("&Open \u2026", "control O", "Open a design file", this::open);
  private final Command save =
      new Command("&Save", "control S", "Save the design to its file", this::save);
  private final Command saveAs =
      new Command(
          "Save &as \u2026", "control shift S", "Save the design to another file", this::saveAs);
  private final Command saveReport =
      new Command(
          "Save &report as text \u2026",
          "control R",
          "Save the report as a text file",
          this::saveReport);
  private final Command print =
      new Command("&Print report \u2026", "control P", "Print the report", this::print);
  private final Command quit = new Command("&Quit", "control Q", "Leave", this::quit);
  private final Command undo;
  private final Command redo;

  FormCommands(FormModel model, JFrame frame, InputsPanel inputs, ResultsPanel results) {
    this.model = model;
    this.frame = frame;
    this.inputs = inputs;
    this.results = results;
    undo = new Command("&Undo", "control Z", "Take back the last change", () -> step(false));
    redo = new Command("&Redo", "control Y", "Make the change again", () -> step(true));
    model.listen(this::refresh);
    refresh();
  }

  private void refresh() {
    undo.setEnabled(model.canUndo());
    redo.setEnabled(model.canRedo());
    boolean there = model.outcome().state() == Outcome.State.DONE;
    print.setEnabled(there);
    saveReport.setEnabled(there);
    places.forEach((command, isThere) -> command.setEnabled(isThere.getAsBoolean()));
  }

  /** A place that one can go to only while it is there. */
  private Command place(Command command, BooleanSupplier there) {
    places.put(command, there);
    return command;
  }

  private void step(boolean forward) {
    inputs.commit();
    if (forward) {
      model.redo();
    } else {
      model.undo();
    }
  }

  JMenuBar menuBar() {
    JMenu file = menu("File", 'F', startNew, open);
    file.add(examples());
    for (Action action : new Action[] {null, save, saveAs, null, print, saveReport, null, quit}) {
      add(file, action);
    }
    JMenu go = menu("Go to", 'G');
    int number = 1;
    for (InputSection section : inputs.sections()) {
      // The second ten go by the same keys with the shift key.
      String keys = "control " + (number > 10 ? "shift " : "") + number % 10;
      number++;
      go.add(
          place(
              new Command(
                  section.title(),
                  keys,
                  "Go to the inputs of this part",
                  () -> inputs.goTo(section)),
              () -> section.panel().isVisible()));
    }
    go.addSeparator();
    for (int i = 0; i < results.titles().size(); i++) {
      String title = results.titles().get(i);
      go.add(
          place(
              new Command(
                  title,
                  "alt " + (i + 1) % 10,
                  "Show this page of the results",
                  () -> results.open(title)),
              () -> results.has(title)));
    }
    refresh();
    JMenuBar bar = new JMenuBar();
    bar.add(file);
    bar.add(menu("Edit", 'E', undo, redo));
    bar.add(go);
    bar.add(menu("Help", 'H', new Command("&About", "F1", "What this is", this::about)));
    return bar;
  }

  private static JMenu menu(String name, char mnemonic, Action... actions) {
    JMenu menu = new JMenu(name);
    menu.setMnemonic(mnemonic);
    for (Action action : actions) {
      add(menu, action);
    }
    return menu;
  }

  private static void add(JMenu menu, Action action) {
    if (action == null) {
      menu.addSeparator();
    } else {
      menu.add(action);
    }
  }

  private JMenu examples() {
    JMenu menu = new JMenu("Open example");
    menu.setMnemonic('e');
    for (Examples.Example example : Examples.all()) {
      JMenuItem item = new JMenuItem(example.title());
      item.addActionListener(
          event -> {
            if (mayLeave()) {
              model.startFrom(example.document());
            }
          });
      menu.add(item);
    }
    menu.setEnabled(menu.getItemCount() > 0);
    return menu;
  }

  JToolBar toolBar() {
    JToolBar bar = new JToolBar();
    bar.setFloatable(false);
    for (Action action : new Action[] {startNew, open, save, null, undo, redo, null, print}) {
      if (action == null) {
        bar.addSeparator();
      } else {
        JButton button = bar.add(action);
        button.setFocusable(true);
        button.setText((String) action.getValue(Action.NAME));
      }
    }
    return bar;
  }

  private void startNew() {
    if (mayLeave()) {
      model.startNew();
    }
  }

  private void open() {
    if (!mayLeave()) {
      return;
    }
    choose("Open a design file", "Open", "json", "Design files", false)
        .ifPresent(
            path -> {
              try {
                model.open(path);
              } catch (BadInputException e) {
                tell(e.getMessage());
              }
            });
  }

  void save() {
    saved();
  }

  /** Saves; false when it did not come to that. */
  private boolean saved() {
    inputs.commit();
    return model.file().map(this::saveTo).orElseGet(this::savedAs);
  }

  private void saveAs() {
    inputs.commit();
    savedAs();
  }

  private boolean savedAs() {
    return choose("Save the design", "Save", "json", "Design files", true)
        .map(this::saveTo)
        .orElse(false);
  }

  private boolean saveTo(Path path) {
    try {
      model.save(path);
      return true;
    } catch (BadInputException e) {
      tell(e.getMessage());
      return false;
    }
  }

  private void saveReport() {
    Optional<String> text = results.reportText();
    if (text.isEmpty()) {
      return;
    }
    choose("Save the report", "Save", "txt", "Text files", true)
        .ifPresent(
            path -> {
              try {
                Files.writeString(path, text.get(), StandardCharsets.UTF_8);
              } catch (IOException e) {
                tell(path + " cannot be written: " + BadInputException.reason(e));
              }
            });
  }

  private Optional<Path> choose(
      String title, String verb, String ending, String kind, boolean saving) {
    JFileChooser chooser = new JFileChooser(folder.toFile());
    chooser.setDialogTitle(title);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " (*." + ending + ")", ending));
    if (chooser.showDialog(frame, verb) != JFileChooser.APPROVE_OPTION) {
      return Optional.empty();
    }
    File chosen = chooser.getSelectedFile();
    folder = chooser.getCurrentDirectory().toPath();
    if (saving && !chosen.getName().contains(".")) {
      chosen = new File(chosen.getParentFile(), chosen.getName() + "." + ending);
    }
    return saving && chosen.exists() && !mayReplace(chosen)
        ? Optional.empty()
        : Optional.of(chosen.toPath());
  }

  private boolean mayReplace(File file) {
    String[] answers = {"Replace", "Cancel"};
    return JOptionPane.showOptionDialog(
            frame,
            file.getName() + " exists already. Replace it?",
            Product.NAME,
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.WARNING_MESSAGE,
            null,
            answers,
            answers[1])
        == 0;
  }

  /** Asks what to do with unsaved changes; false when the design must stay open. */
  private boolean mayLeave() {
    inputs.commit();
    if (!model.isModified()) {
      return true;
    }
    String[] answers = {"Save", "Discard", "Cancel"};
    int answer =
        JOptionPane.showOptionDialog(
            frame,
            "The design has changes that are not saved.",
            Product.NAME,
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.WARNING_MESSAGE,
            null,
            answers,
            answers[0]);
    return answer == 1 || answer == 0 && saved();
  }

  void quit() {
    if (mayLeave()) {
      frame.dispose();
    }
  }

  private void print() {
    Optional<String> text = results.reportText();
    if (text.isEmpty()) {
      return;
    }
    String title = model.document().text("/title");
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(title.isBlank() ? Product.NAME : title);
    job.setPrintable(
        new ReportPages(
            job.getJobName(),
            LocalDate.now().toString(),
            text.get(),
            model.outcome().assessment().flatMap(FlowDrawing::of)));
    try {
      if (job.printDialog()) {
        job.print();
      }
    } catch (PrinterException e) {
      tell("The report was not printed: " + e.getMessage());
    }
  }

  private void about() {
    JTextArea text = new JTextArea(Product.ABOUT);
    text.setEditable(false);
    text.setOpaque(false);
    text.getAccessibleContext().setAccessibleName("About this program");
    JOptionPane.showMessageDialog(
        frame, text, Product.NAME + " " + Product.version(), JOptionPane.INFORMATION_MESSAGE);
  }

  private void tell(String message) {
    JTextArea text = Look.wrapped(message);
    text.setColumns(50);
    text.setSize(text.getPreferredSize());
    JOptionPane.showMessageDialog(frame, text, Product.NAME, JOptionPane.ERROR_MESSAGE);
  }
}
