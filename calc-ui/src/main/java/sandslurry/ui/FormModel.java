package sandslurry.ui;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;
import sandslurry.design.document.Reading;

/**
 * What the form shows, without Swing: the document with every text as it was typed, its reading,
 * and the results that belong to it. Results of a document that cannot be read are blank.
 */
final class FormModel {
  private static final String NEW_DESIGN =
      """
      {"formatVersion": 2, "units": "%s", "sand": {}, "carrier": {"kind": "water"},
       "lines": [{"mixture": {}, "flow": {}, "route": {"runs": [{}]}}]}
      """;

  /** Countries whose trade measures in feet and gallons: common practice, no source. */
  private static final Set<String> US_UNITS = Set.of("US", "LR", "MM");

  private final Evaluator evaluator;
  private final List<Runnable> listeners = new ArrayList<>();
  private History history;
  private DesignDocument saved;
  private Optional<FormFile> file = Optional.empty();
  private Reading reading;
  private Outcome outcome = Outcome.PROBLEMS;
  private Optional<Assessment> latest = Optional.empty();

  /** What an answer needed when it was given up, by question and answer. */
  private final Map<String, Aside> aside = new HashMap<>();

  private int line;

  /**
   * What was taken out.
   *
   * @param of the document it was in
   * @param places where
   */
  private record Aside(DesignDocument of, List<String> places) {}

  FormModel(Evaluator evaluator) {
    this.evaluator = evaluator;
    startNew();
  }

  DesignDocument document() {
    return history.current();
  }

  Reading reading() {
    return reading;
  }

  Outcome outcome() {
    return outcome;
  }

  /**
   * The assessment that the pages show: that of these inputs or, while they are evaluated, that of
   * the same design before its last change. Another design never inherits it.
   */
  Optional<Assessment> shown() {
    return isBehind() ? latest : outcome.assessment();
  }

  /** Says that the pages show the inputs before the last change. */
  boolean isBehind() {
    return outcome.state() == Outcome.State.WORKING && latest.isPresent();
  }

  /** The place of the line that is edited, and whose pages are shown. */
  int line() {
    return Math.max(0, Math.min(line, document().size("/lines") - 1));
  }

  /** Another of several lines is edited. */
  void choose(int other) {
    line = other;
    changed();
  }

  /** What came of the line that is edited, with all that there is beside the lines. */
  Optional<Assessment> ofLine(Optional<Assessment> shown) {
    return shown.map(
        whole -> whole.lines().values().stream().skip(line()).findFirst().orElse(whole));
  }

  Optional<Path> file() {
    return file.map(FormFile::path);
  }

  /** The file of the design as it was last seen on the disk. */
  Optional<FormFile> seen() {
    return file;
  }

  boolean isModified() {
    return !document().equals(saved);
  }

  /** The problems of a field and of everything below it. */
  List<Problem> problemsAt(String pointer) {
    return reading.problems().stream()
        .filter(p -> p.field().equals(pointer) || p.field().startsWith(pointer + "/"))
        .toList();
  }

  /** Calls a listener after every change of document, reading or results. */
  void listen(Runnable listener) {
    listeners.add(listener);
  }

  /** Changes one text while it is typed. */
  void edit(String pointer, String text) {
    edit(pointer, document -> document.with(pointer, text));
  }

  /** Changes what a field says, in its own way, while it is typed. */
  void edit(String pointer, UnaryOperator<DesignDocument> change) {
    step(change.apply(document()), pointer);
  }

  /** The typing has ended: more of it will be a new step to undo. */
  void endEdit() {
    history.endEdit();
  }

  /** Changes the document in one step. */
  void change(UnaryOperator<DesignDocument> change) {
    step(change.apply(document()), "");
  }

  /**
   * Answers a question another way, in one step: what only the old answer needs goes aside, and
   * what was typed for the new one before comes back.
   *
   * @param question pointer of what is asked
   * @param from the old answer
   * @param to the new one
   * @param change the document with the new answer and without what the old one needs
   */
  void answer(String question, String from, String to, UnaryOperator<DesignDocument> change) {
    change(
        before -> {
          DesignDocument after = change.apply(before);
          Aside back = aside.get(question + "=" + to);
          aside.put(question + "=" + from, new Aside(before, absent(after, before.places(""))));
          return back == null ? after : after.withThoseOf(back.of, absent(after, back.places));
        });
  }

  private static List<String> absent(DesignDocument document, List<String> places) {
    return places.stream().filter(place -> !document.has(place)).toList();
  }

  /** What was taken out of the entries of a list is forgotten when they change their places. */
  void forgetBelow(String list) {
    aside.keySet().removeIf(question -> question.startsWith(list + "/"));
  }

  private void step(DesignDocument changed, String field) {
    if (!changed.equals(document())) {
      history.add(changed, field);
      update();
    }
  }

  boolean canUndo() {
    return history.canUndo();
  }

  boolean canRedo() {
    return history.canRedo();
  }

  void undo() {
    if (history.canUndo()) {
      history.undo();
      update();
    }
  }

  void redo() {
    if (history.canRedo()) {
      history.redo();
      update();
    }
  }

  /** Starts an empty design, whose fields say what is needed. */
  void startNew() {
    try {
      startFrom(DesignDocument.parse(NEW_DESIGN.formatted(usualUnits())));
    } catch (DesignTextException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The units that people use where the computer stands; they can be changed in the form. */
  private static String usualUnits() {
    return US_UNITS.contains(Locale.getDefault().getCountry()) ? "US" : "metric";
  }

  /** Opens a file. When it cannot be read, everything stays as it was. */
  void open(Path path) throws BadInputException {
    start(FormFile.open(path));
  }

  /** Starts from a file that was read. */
  void start(FormFile.Opened opened) {
    start(opened.document(), opened.document(), Optional.of(opened.file()));
  }

  /** Starts from a document that belongs to no file. */
  void startFrom(DesignDocument document) {
    start(document, document, Optional.empty());
  }

  /** Starts from a design that was left behind before it was saved. */
  void restore(Recovery.Left left) {
    start(left.document(), DesignDocument.empty(), left.file());
  }

  private void start(DesignDocument document, DesignDocument asSaved, Optional<FormFile> from) {
    history = new History(document.renewed());
    saved = asSaved;
    file = from;
    latest = Optional.empty();
    aside.clear();
    update();
  }

  /** Saves to a file, which becomes the file of the design. */
  void save(Path path) throws BadInputException {
    DesignDocument document = document();
    saved(document, FormFile.save(path, document));
  }

  /** A document was saved to a file, which becomes the file of the design. */
  void saved(DesignDocument document, FormFile to) {
    saved = document;
    file = Optional.of(to);
    history.endEdit();
    changed();
  }

  private void update() {
    reading = document().read();
    evaluator.cancel();
    if (reading.design().isPresent()) {
      outcome = Outcome.WORKING;
      evaluator.request(reading.design().get(), this::accept);
    } else {
      outcome = Outcome.PROBLEMS;
    }
    changed();
  }

  private void accept(Outcome result) {
    outcome = result;
    latest = result.assessment();
    changed();
  }

  /** Tells every listener, also when one of them fails; the first failure is thrown at the end. */
  private void changed() {
    Throwable failure = null;
    for (Runnable listener : List.copyOf(listeners)) {
      try {
        listener.run();
      } catch (RuntimeException | Error e) {
        if (failure == null) {
          failure = e;
        } else {
          failure.addSuppressed(e);
        }
      }
    }
    if (failure instanceof Error error) {
      throw error;
    }
    if (failure instanceof RuntimeException exception) {
      throw exception;
    }
  }
}
