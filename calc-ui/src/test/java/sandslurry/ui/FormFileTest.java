package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.design.document.DesignDocument;

/** What the form does with files: nothing that was typed or saved is lost. */
class FormFileTest {
  @TempDir private Path folder;

  private static DesignDocument line() {
    return Designs.example("parlor-line.json");
  }

  @Test
  void aFileThatAnotherWindowChangedIsNoticedBeforeItIsSavedOver() throws Exception {
    Path path = folder.resolve("a.json");
    line().save(path);
    FormModel one = new FormModel(Designs.NEVER);
    FormModel two = new FormModel(Designs.NEVER);
    one.open(path);
    two.open(path);
    assertThat(one.seen().orElseThrow().isChanged()).isFalse();

    two.edit("/title", "of the second window");
    two.save(path);

    assertThat(one.seen().orElseThrow().isChanged()).isTrue();
    assertThat(two.seen().orElseThrow().isChanged()).isFalse();
    one.open(path);
    assertThat(one.seen().orElseThrow().isChanged()).isFalse();
    Files.delete(path);
    assertThat(one.seen().orElseThrow().isChanged()).as("a file that is gone").isFalse();
  }

  /** What counts is what the file holds: a clock that was set back hides no change. */
  @Test
  void aChangeIsNoticedWhateverTheClockSaysAndAFileThatIsGoneIsWrittenAgain() throws Exception {
    Path path = folder.resolve("a.json");
    FormModel form = new FormModel(Designs.NEVER);
    line().save(path);
    form.open(path);
    FileTime then = Files.getLastModifiedTime(path);
    line().with("/title", "other").save(path);
    Files.setLastModifiedTime(path, FileTime.fromMillis(then.toMillis() - 3_600_000));
    assertThat(form.seen().orElseThrow().isChanged()).isTrue();
    line().save(path);
    Files.setLastModifiedTime(path, FileTime.fromMillis(then.toMillis() + 3_600_000));
    assertThat(form.seen().orElseThrow().isChanged()).as("touched, not changed").isFalse();
    Files.delete(path);
    form.edit("/title", "after it was gone");
    form.save(path);
    assertThat(DesignDocument.load(path).text("/title")).isEqualTo("after it was gone");
  }

  @Test
  void theVersionBeforeIsKeptBesideTheFile() throws Exception {
    Path path = folder.resolve("a.json");
    FormFile.save(path, line());
    assertThat(folder.toFile().list()).containsExactly("a.json");
    FormFile.save(path, line());
    assertThat(folder.toFile().list()).as("nothing changed").containsExactly("a.json");
    FormFile.save(path, line().with("/title", "second"));
    FormFile.save(path, line().with("/title", "third"));
    assertThat(DesignDocument.load(path).text("/title")).isEqualTo("third");
    assertThat(DesignDocument.load(folder.resolve("a.json.bak")).text("/title"))
        .isEqualTo("second");
    assertThat(folder.toFile().list()).hasSize(2);
  }

  @Test
  void aDesignSurvivesTheEndOfItsWindowAndIsOfferedOnce() throws Exception {
    Path file = folder.resolve("a.json");
    DesignDocument typed =
        line().with("/lines/0/flow/design", "half a wo").with("/title", "x\ud800");
    Path kept = folder.resolve("kept");
    Process other =
        new ProcessBuilder(
                ChildProgram.command(
                    List.of(), FormFileTest.class, kept.toString(), file.toString()))
            .start();
    assertThat(other.inputReader().readLine()).isEqualTo("kept");
    assertThat(Recovery.left(kept)).as("of a window that is still open").isEmpty();
    other.destroyForcibly().waitFor(1, TimeUnit.MINUTES);

    List<Recovery.Left> left = Recovery.left(kept);
    assertThat(left).hasSize(1);
    assertThat(left.get(0).document()).isEqualTo(typed);
    assertThat(left.get(0).file().map(FormFile::path)).contains(file);
    assertThat(left.get(0).name()).isEqualTo("a.json");
    FormModel model = new FormModel(Designs.NEVER);
    model.restore(left.get(0));
    assertThat(model.document()).isEqualTo(typed);
    assertThat(model.isModified()).isTrue();
    assertThat(model.file()).contains(file);
    assertThat(model.seen().orElseThrow().isChanged()).as("there was no file").isFalse();
    line().with("/title", "by another program, before the restart").save(file);
    assertThat(model.seen().orElseThrow().isChanged()).isTrue();
    Recovery now = new Recovery(kept);
    now.adopt(left.get(0));
    assertThat(Recovery.left(kept)).as("held by this very machine").isEmpty();
    assertThat(kept.toFile().list()).as("the design and its lock").hasSize(2);
    now.clear();
    assertThat(kept.toFile().list()).isEmpty();
  }

  /** A window that keeps a design and is then ended from outside. */
  public static void main(String[] args) throws Exception {
    DesignDocument typed =
        line().with("/lines/0/flow/design", "half a wo").with("/title", "x\ud800");
    new Recovery(Path.of(args[0])).keep(typed, Optional.of(FormFile.seen(Path.of(args[1]))));
    System.out.println("kept");
    Thread.sleep(60_000);
  }

  @Test
  void whatWasSavedIsNotOffered() throws Exception {
    Path kept = folder.resolve("kept");
    Recovery recovery = new Recovery(kept);
    recovery.keep(line(), Optional.empty());
    recovery.keep(line().with("/title", "later"), Optional.empty());
    assertThat(Recovery.left(kept)).as("held by this very machine").isEmpty();
    recovery.clear();
    assertThat(kept.toFile().list()).isEmpty();
    Files.writeString(kept.resolve("spoilt.json"), "{");
    assertThat(Recovery.left(kept)).isEmpty();
    assertThat(Recovery.left(folder.resolve("none"))).isEmpty();
  }
}
