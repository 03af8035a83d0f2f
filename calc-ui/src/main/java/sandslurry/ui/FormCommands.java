package sandslurry.ui;

import java.awt.event.KeyEvent;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JOptionPane;
import javax.swing.JTextArea;
import javax.swing.JToolBar;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import javax.swing.filechooser.FileNameExtensionFilter;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.report.Glossary;
import sandslurry.report.block.HtmlBody;
import sandslurry.study.Cures;
import sandslurry.units.ShownText;

/** Every command of the window, in its menus and on its tool bar. */
final class FormCommands {
  private static final Runnable NOTHING = () -> {};

  private final FormModel model;
  private final JFrame frame;
  private final InputsPanel inputs;
  private final ResultsPanel results;
  private final Map<Command, BooleanSupplier> places = new LinkedHashMap<>();
  private final FileWork files;
  private Path folder = Path.of("").toAbsolutePath();
  private boolean telling;

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
          "Save design &report \u2026",
          "control R",
          "Save the design report as PDF or HTML",
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
    this.files = new FileWork(frame, this::showError);
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
    int number = 0;
    for (InputSection section : inputs.sections()) {
      go.add(
          place(
              new Command(
                  section.title(),
                  keys(number++, "control ", "control shift ", "control alt "),
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
                  keys(i, "alt ", "alt shift "),
                  "Show this page of the results",
                  () -> results.open(title)),
              () -> results.has(title)));
    }
    refresh();
    JMenuBar bar = new JMenuBar();
    bar.add(file);
    bar.add(menu("Edit", 'E', undo, redo));
    bar.add(go);
    bar.add(
        menu(
            "Help",
            'H',
            new Command("&Words", "F2", "What the words mean", this::words),
            new Command("&About", "F1", "What this is", this::about)));
    return bar;
  }

  /** The keys of the next of many places: ten figures, then the same with another key held. */
  private static String keys(int index, String... held) {
    return index / 10 < held.length ? held[index / 10] + (index + 1) % 10 : null;
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
      item.addActionListener(event -> leave(() -> model.startFrom(example.document())));
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
    leave(model::startNew);
  }

  private void open() {
    leave(
        () ->
            choose("Open a design file", "Open", "json", "Design files", false)
                .ifPresent(path -> files.run(() -> FormFile.open(path), model::start)));
  }

  void save() {
    save(NOTHING);
  }

  private void save(Runnable then) {
    inputs.commit();
    if (model.file().isPresent()) {
      saveTo(model.file().get(), then);
    } else {
      saveAs(then);
    }
  }

  private void saveAs() {
    saveAs(NOTHING);
  }

  private void saveAs(Runnable then) {
    inputs.commit();
    choose("Save the design", "Save", "json", "Design files", true)
        .ifPresent(path -> saveTo(path, then));
  }

  /** Saves, unless somebody else has changed the file of the design since it was last seen. */
  private void saveTo(Path path, Runnable then) {
    Optional<FormFile> seen = model.seen().filter(file -> file.path().equals(path));
    files.run(
        () -> seen.isPresent() && seen.get().isChanged(),
        changed -> {
          if (!changed || mayOverwrite(path)) {
            DesignDocument document = model.document();
            files.run(
                () -> FormFile.save(path, document),
                saved -> {
                  model.saved(document, saved);
                  then.run();
                });
          }
        });
  }

  private boolean mayOverwrite(Path path) {
    String[] answers = {"Save over it", "Cancel"};
    return answers[0].equals(
        ask(
            path.getFileName()
                + " was changed by another window or program since it was opened here."
                + " Saving over it loses those changes; \"Save as\" keeps both.",
            1,
            answers));
  }

  private void saveReport() {
    DesignDocument document = model.document();
    model
        .outcome()
        .assessment()
        .ifPresent(
            assessment ->
                choose("Save the design report", "Save", "pdf", "PDF, or name it .html", true)
                    .ifPresent(
                        path ->
                            files.run(
                                () -> {
                                  Path[] design = model.file().stream().toArray(Path[]::new);
                                  for (Path input : design) {
                                    OutputFile.check(input, path);
                                  }
                                  byte[] report = report(document, assessment, false).as(path);
                                  OutputFile.write("The report", path, report);
                                  return path;
                                },
                                saved -> {})));
  }

  private Optional<Path> choose(
      String title, String verb, String ending, String kind, boolean saving) {
    Optional<Path> file = model.file().map(Path::toAbsolutePath);
    JFileChooser chooser = new JFileChooser(file.map(Path::getParent).orElse(folder).toFile());
    chooser.setDialogTitle(title);
    chooser.setApproveButtonText(verb);
    chooser.setFileFilter(new FileNameExtensionFilter(kind + " (*." + ending + ")", ending));
    if (saving && file.isPresent()) {
      String name = file.get().getFileName().toString().replaceFirst("\\.[^.]*$", "");
      chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), name + "." + ending));
    }
    int answer = saving ? chooser.showSaveDialog(frame) : chooser.showOpenDialog(frame);
    if (answer != JFileChooser.APPROVE_OPTION) {
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
    return answers[0].equals(ask(file.getName() + " exists already. Replace it?", 1, answers));
  }

  /** Asks a question; the answer that was chosen, or null when the dialog was closed. */
  private String ask(String question, int usual, String... answers) {
    int answer =
        JOptionPane.showOptionDialog(
            frame,
            message(question),
            Product.NAME,
            JOptionPane.DEFAULT_OPTION,
            JOptionPane.WARNING_MESSAGE,
            null,
            answers,
            answers[usual]);
    return answer < 0 ? null : answers[answer];
  }

  /** Asks what to do with unsaved changes, and goes on unless the design must stay open. */
  private void leave(Runnable then) {
    inputs.commit();
    if (!model.isModified()) {
      then.run();
      return;
    }
    String answer =
        ask("The design has changes that are not saved.", 0, "Save", "Discard", "Cancel");
    if ("Save".equals(answer)) {
      save(then);
    } else if ("Discard".equals(answer)) {
      then.run();
    }
  }

  void quit() {
    leave(frame::dispose);
  }

  /**
   * Offers a design that an earlier window could not save before it was ended.
   *
   * @param left the design
   * @param recovery what keeps the designs of this window: one that is restored is kept there
   *     before the earlier one is forgotten
   */
  void offer(Recovery.Left left, Recovery recovery) {
    String when =
        DateTimeFormatter.ofPattern("d MMMM yyyy, HH:mm", Locale.ROOT)
            .withZone(ZoneId.systemDefault())
            .format(left.when());
    String answer =
        ask(
            left.name()
                + " had changes that were not saved when the program was ended, on "
                + when
                + ".",
            0,
            "Restore them",
            "Discard them",
            "Ask again next time");
    if ("Restore them".equals(answer)) {
      leave(
          () -> {
            model.restore(left);
            files.run(
                () -> {
                  recovery.adopt(left);
                  return left;
                },
                kept -> {});
          });
    } else if ("Discard them".equals(answer)) {
      files.run(
          () -> {
            left.forget();
            return left;
          },
          forgotten -> {});
    }
  }

  /** Prints the pages of the design report with its working. */
  private void print() {
    print(PrinterJob.getPrinterJob());
  }

  /** The same by a printer that need not be one. */
  void print(PrinterJob job) {
    DesignDocument document = model.document();
    String title = document.text("/title");
    job.setJobName(title.isBlank() ? Product.NAME : title);
    model
        .outcome()
        .assessment()
        .filter(assessment -> job.printDialog())
        .ifPresent(
            assessment ->
                files.run(
                    () -> {
                      try (PDDocument pages = report(document, assessment, true).document()) {
                        job.setPageable(new PDFPageable(pages));
                        job.print();
                      } catch (IOException | PrinterException e) {
                        throw new BadInputException(
                            "The report was not printed: " + e.getMessage());
                      }
                      return job;
                    },
                    printed -> {}));
  }

  private ReportFile report(DesignDocument document, Assessment assessment, boolean working) {
    String name = model.file().map(file -> file.getFileName().toString()).orElse("");
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    return ReportFile.of(
        document, assessment, Cures.of(document, assessment), name, today, working);
  }

  /** The glossary in a window of its own, so that it can stay beside the results. */
  private void words() {
    HtmlView page = new HtmlView("glossary", "Words used in form and reports");
    StringBuilder terms = new StringBuilder();
    Glossary.terms()
        .forEach(
            (term, meaning) ->
                terms
                    .append("<p><b>")
                    .append(HtmlBody.escape(term))
                    .append("</b>: ")
                    .append(HtmlBody.escape(meaning))
                    .append("</p>"));
    page.show(terms.toString());
    JDialog window = new JDialog(frame, "Words used in form and reports", false);
    window.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
    window.add(page.component());
    window
        .getRootPane()
        .registerKeyboardAction(
            event -> window.dispose(),
            KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0),
            JComponent.WHEN_IN_FOCUSED_WINDOW);
    window.setSize(frame.getWidth() / 2, frame.getHeight() * 2 / 3);
    window.setLocationRelativeTo(frame);
    window.setVisible(true);
  }

  private void about() {
    JTextArea text = new JTextArea(Product.ABOUT);
    text.setEditable(false);
    text.setOpaque(false);
    text.getAccessibleContext().setAccessibleName("About this program");
    JOptionPane.showMessageDialog(
        frame, text, Product.NAME + " " + Product.version(), JOptionPane.INFORMATION_MESSAGE);
  }

  private void showError(String message) {
    JOptionPane.showMessageDialog(frame, message(message), Product.NAME, JOptionPane.ERROR_MESSAGE);
  }

  private static JTextArea message(String message) {
    JTextArea text = Look.wrapped(ShownText.lines(message));
    text.setColumns(50);
    text.setSize(text.getPreferredSize());
    return text;
  }

  /** Says that the program is in error, once at a time; the design stays as it is. */
  void broke(Throwable e) {
    e.printStackTrace();
    SwingUtilities.invokeLater(
        () -> {
          if (!telling) {
            telling = true;
            showError(
                "An error of the program: "
                    + ShownText.message(e.toString())
                    + " Your design is still there: save it under another name.");
            telling = false;
          }
        });
  }
}
