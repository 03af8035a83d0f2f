package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Problem;
import sandslurry.fact.finding.Severity;

class FormModelTest {
  private static final String DESIGN_FLOW = "/lines/0/flow/design";

  private final FormModel model = Designs.model("parlor-line.json");

  private Severity verdict() {
    return model.outcome().assessment().orElseThrow().verdict();
  }

  @Test
  void aChangedNumberChangesTheVerdictAtOnce() {
    assertThat(verdict()).isNotEqualTo(Severity.FAIL);

    model.edit("/lines/0/flow/minimum", "100 gpm");

    assertThat(verdict()).isEqualTo(Severity.FAIL);
  }

  @Test
  void aBadTextBlanksTheResultsIsListedAndIsKept() {
    model.edit(DESIGN_FLOW, "460 psi");

    assertThat(model.outcome().assessment()).isEmpty();
    assertThat(model.outcome().state()).isEqualTo(Outcome.State.PROBLEMS);
    assertThat(model.problemsAt(DESIGN_FLOW)).extracting(Problem::value).containsExactly("460 psi");
    assertThat(model.problemsAt("/lines/0/flow")).hasSize(1);
    assertThat(model.problemsAt("/lines/0/flow/des")).isEmpty();
    assertThat(model.document().text(DESIGN_FLOW)).isEqualTo("460 psi");
  }

  @Test
  void typingInOneFieldIsOneStepToUndo() {
    DesignDocument before = model.document();
    model.edit(DESIGN_FLOW, "4");
    model.edit(DESIGN_FLOW, "47");
    model.edit(DESIGN_FLOW, "470 gpm");
    model.edit("/title", "Other");

    model.undo();
    assertThat(model.document().text(DESIGN_FLOW)).isEqualTo("470 gpm");
    model.undo();
    assertThat(model.document()).isEqualTo(before);
    assertThat(model.canUndo()).isFalse();
    model.redo();
    model.redo();
    assertThat(model.document().text("/title")).isEqualTo("Other");
    assertThat(model.canRedo()).isFalse();
  }

  @Test
  void aNewVisitToTheSameFieldIsAStepOfItsOwn() {
    model.edit(DESIGN_FLOW, "470 gpm");
    model.endEdit();
    model.edit(DESIGN_FLOW, "480 gpm");

    model.undo();

    assertThat(model.document().text(DESIGN_FLOW)).isEqualTo("470 gpm");
  }

  @Test
  void aChangeAfterUndoCutsWhatCouldBeRedone() {
    model.edit(DESIGN_FLOW, "470 gpm");
    model.undo();
    model.edit("/title", "Other");

    assertThat(model.canRedo()).isFalse();
    model.undo();
    assertThat(model.document().text(DESIGN_FLOW)).isEqualTo("350 gpm");
  }

  @Test
  void undoBackToTheSavedDesignIsNoChange(@TempDir Path folder) throws BadInputException {
    model.save(folder.resolve("a.json"));
    assertThat(model.isModified()).isFalse();
    model.edit(DESIGN_FLOW, "470 gpm");
    assertThat(model.isModified()).isTrue();
    model.undo();
    assertThat(model.isModified()).isFalse();
  }

  @Test
  void aSavedDesignIsReopenedAsItWas(@TempDir Path folder) throws BadInputException {
    Path file = folder.resolve("a.json");
    model.edit(DESIGN_FLOW, "not a number");
    model.edit("/notes", "Größe \"x\" \\ y");
    DesignDocument typed = model.document();
    model.save(file);

    FormModel other = new FormModel(Designs.AT_ONCE);
    other.open(file);

    assertThat(other.document()).isEqualTo(typed);
    assertThat(other.file()).contains(file);
    assertThat(other.isModified()).isFalse();
    assertThat(folder).isDirectoryContaining(p -> p.equals(file));
    assertThat(folder.toFile().list()).hasSize(1);
  }

  @Test
  void aFileThatCannotBeReadLeavesTheDesignAsItWas(@TempDir Path folder) throws Exception {
    Path broken = Files.writeString(folder.resolve("b.json"), "{ not json");
    DesignDocument before = model.document();

    assertThatThrownBy(() -> model.open(broken))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("line 1");
    assertThat(model.document()).isSameAs(before);
  }

  @Test
  void savingIntoAMissingFolderSaysSo(@TempDir Path folder) {
    assertThatThrownBy(() -> model.save(folder.resolve("none/a.json")))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("cannot be written");
    assertThat(model.file()).isEmpty();
  }

  @Test
  void aNewDesignAsksForWhatIsNeededAndForNothingElse() {
    model.startNew();

    assertThat(model.reading().problems()).isNotEmpty();
    assertThat(model.reading().problems())
        .allSatisfy(p -> assertThat(p.message()).startsWith("is missing"));
    assertThat(model.isModified()).isFalse();
  }

  @Test
  void resultsAreBlankWhileAnEvaluationIsUnderWay() {
    List<Consumer<Outcome>> asked = new ArrayList<>();
    FormModel slow =
        new FormModel(
            new Evaluator() {
              @Override
              public void request(Design design, Consumer<Outcome> done) {
                asked.add(done);
              }

              @Override
              public void cancel() {}
            });
    slow.startFrom(Designs.example("parlor-line.json"));

    assertThat(slow.outcome().state()).isEqualTo(Outcome.State.WORKING);
    assertThat(slow.outcome().assessment()).isEmpty();
    asked.get(0).accept(Outcome.of(slow.reading().design().orElseThrow()));
    assertThat(slow.outcome().state()).isEqualTo(Outcome.State.DONE);
  }

  @Test
  void listenersHearOfEveryChangeButNotOfNone() {
    List<String> heard = new ArrayList<>();
    model.listen(() -> heard.add(model.document().text(DESIGN_FLOW)));

    model.edit(DESIGN_FLOW, "350 gpm");
    assertThat(heard).isEmpty();
    model.edit(DESIGN_FLOW, "470 gpm");
    assertThat(heard).isNotEmpty().allMatch("470 gpm"::equals);
  }
}
