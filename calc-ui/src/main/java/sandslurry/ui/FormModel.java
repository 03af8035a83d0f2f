package sandslurry.ui;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import sandslurry.design.DesignDocument;
import sandslurry.design.DesignTextException;
import sandslurry.design.Problem;
import sandslurry.design.Reading;

/**
 * What the form shows, without Swing: the document with every text as it was typed, its reading,
 * and the results that belong to it. Results of a document that cannot be read are blank.
 */
final class FormModel {
  private static final String NEW_DESIGN =
      """
      {"formatVersion": 1, "sand": {}, "carrier": {"kind": "water"}, "mixture": {}, "flow": {},
       "route": {"runs": [{}]}}
      """;

  private final Evaluator evaluator;
  private final List<Runnable> listeners = new ArrayList<>();
  private History history;
  private DesignDocument saved;
  private Optional<Path> file = Optional.empty();
  private Reading reading;
  private Outcome outcome = Outcome.PROBLEMS;

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

  Optional<Path> file() {
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
      startFrom(DesignDocument.parse(NEW_DESIGN));
    } catch (DesignTextException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Starts from a document that belongs to no file. */
  void startFrom(DesignDocument document) {
    start(document, Optional.empty());
  }

  /** Opens a file. When it cannot be read, everything stays as it was. */
  void open(Path path) throws BadInputException {
    start(BadInputException.load(path), Optional.of(path));
  }

  /** Starts from a document and the file that it came from, if any. */
  void start(DesignDocument document, Optional<Path> path) {
    history = new History(document);
    saved = document;
    file = path;
    update();
  }

  /** Saves to a file, which becomes the file of the design. */
  void save(Path path) throws BadInputException {
    try {
      document().save(path);
    } catch (IOException e) {
      throw new BadInputException(path + " cannot be written: " + BadInputException.reason(e));
    }
    saved = document();
    file = Optional.of(path);
    history.endEdit();
    tell();
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
    tell();
  }

  private void accept(Outcome result) {
    outcome = result;
    tell();
  }

  private void tell() {
    listeners.forEach(Runnable::run);
  }
}
