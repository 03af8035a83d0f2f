package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sandslurry.ui.EventThread.onEventThread;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.design.document.DesignDocument;

/**
 * A disk or a network that does not answer must not hold the window. So no file is read or written
 * by its thread: each door to files fails there, in every test of the form, not in this one alone.
 */
class FileWorkTest {
  @TempDir static Path folder;

  static Stream<Callable<Object>> doors() {
    Path file = folder.resolve("a.json");
    DesignDocument design = DesignDocument.empty();
    return Stream.of(
        () -> FormFile.open(file),
        () -> FormFile.seen(file),
        () -> new FormFile(file, "").isChanged(),
        () -> FormFile.save(file, design),
        () -> BadInputException.load(file),
        () -> Recovery.left(folder),
        () -> {
          new Recovery(folder).keep(design, Optional.empty());
          return null;
        },
        () -> {
          OutputFile.check(file, folder.resolve("b.json"));
          return null;
        },
        () -> {
          OutputFile.write("The report", file, new byte[1]);
          return null;
        });
  }

  @ParameterizedTest
  @MethodSource("doors")
  void theThreadOfTheWindowTouchesNoFile(Callable<Object> door) {
    assertThatThrownBy(() -> onEventThread(door)).hasCauseInstanceOf(AssertionError.class);
  }
}
