package sandslurry.ui;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import sandslurry.design.document.DesignDocument;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.pipe.catalogue.PipeCatalogue;
import sandslurry.pipe.catalogue.StandardPipe;

/** The fields of one run of pipe. */
final class RunEditor {
  private static final String BORE = "given bore";

  private final FormModel model;
  private final Supplier<String> run;

  /** The run for which a bore was chosen, until the document shows one. */
  private String boreChosenFor = "";

  /**
   * Prepares the rows.
   *
   * @param model the model
   * @param run pointer of the run
   */
  RunEditor(FormModel model, Supplier<String> run) {
    this.model = model;
    this.run = run;
  }

  /** Whether a group holds a run of pipe. */
  static boolean isRun(Fields<?> fields) {
    return fields.all().stream().map(Field::name).toList().containsAll(List.of("pipe", "bore"));
  }

  void addTo(InputSection section, Fields<?> fields, Predicate<DesignDocument> there) {
    FieldRows rows = new FieldRows(model, section, run, there);
    rows.add(fields.field("name"), there, "");
    ChoiceRow kind =
        section.choice(
            "Pipe",
            this::pipe,
            () -> List.of(pipe(), pipe() + "/system"),
            RunEditor::systems,
            this::system,
            this::withSystem);
    ChoiceRow size =
        section.choice(
            "Nominal size",
            () -> pipe() + "/size",
            () -> ofSystem(model.document(), PipeCatalogue::sizes),
            document -> spelt(document, "size", StandardPipe::size),
            (document, value) -> document.with(pipe() + "/size", value));
    ChoiceRow wall =
        section.choice(
            "Schedule, SDR or DR",
            () -> pipe() + "/class",
            () -> ofSystem(model.document(), PipeCatalogue::classes),
            document -> spelt(document, "class", StandardPipe::wallClass),
            (document, value) -> document.with(pipe() + "/class", value));
    section.choiceWhen(there, kind);
    section.choiceWhen(there.and(this::isStandard), size);
    section.choiceWhen(there.and(this::isStandard), wall);
    rows.add(fields.field("bore"), there.and(this::isBore), "");
    rows.add(fields.field("rating"), there.and(this::isBore), "");
    rows.add(fields, "name", "pipe", "bore", "rating");
  }

  private String pipe() {
    return run.get() + "/pipe";
  }

  private boolean isBore(DesignDocument document) {
    return system(document).equals(BORE);
  }

  private boolean isStandard(DesignDocument document) {
    return !isBore(document);
  }

  private static List<Choice> systems() {
    List<Choice> choices =
        new ArrayList<>(
            PipeCatalogue.all().stream()
                .map(StandardPipe::system)
                .distinct()
                .map(system -> new Choice(system.standard(), system.words()))
                .toList());
    choices.add(new Choice(BORE, "any pipe, by its bore"));
    return choices;
  }

  private String system(DesignDocument document) {
    boolean chosen = boreChosenFor.equals(run.get()) && !document.has(pipe());
    if (chosen || document.has(run.get() + "/bore")) {
      return BORE;
    }
    return found(document)
        .map(p -> p.system().standard())
        .orElse(document.text(pipe() + "/system"));
  }

  private DesignDocument withSystem(DesignDocument document, String system) {
    if (system.equals(BORE)) {
      boreChosenFor = run.get();
      return document.without(pipe());
    }
    boreChosenFor = "";
    DesignDocument changed =
        document
            .without(run.get() + "/bore")
            .without(run.get() + "/rating")
            .with(pipe() + "/system", system);
    if (!PipeCatalogue.systems().contains(system)) {
      return changed;
    }
    if (!PipeCatalogue.sizes(system).contains(changed.text(pipe() + "/size"))) {
      changed = changed.without(pipe() + "/size");
    }
    if (!PipeCatalogue.classes(system).contains(changed.text(pipe() + "/class"))) {
      changed = changed.without(pipe() + "/class");
    }
    return changed;
  }

  private Optional<StandardPipe> found(DesignDocument document) {
    return PipeCatalogue.find(
        document.text(pipe() + "/system"),
        document.text(pipe() + "/size"),
        document.text(pipe() + "/class"));
  }

  /** People spell a size in many ways; the list shows the spelling of the catalogue. */
  private String spelt(DesignDocument document, String field, Function<StandardPipe, String> of) {
    return found(document).map(of).orElse(document.text(pipe() + "/" + field));
  }

  private List<Choice> ofSystem(DesignDocument document, Function<String, List<String>> what) {
    String system = system(document);
    return PipeCatalogue.systems().contains(system)
        ? what.apply(system).stream().map(Choice::of).toList()
        : List.of();
  }
}
