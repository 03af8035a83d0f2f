package sandslurry.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the fuzzing profile has stored, tried again in every build. */
class FuzzCorpusTest {
  private static void replay(String corpus, Consumer<byte[]> target) throws IOException {
    try (Stream<Path> stored = Files.list(Path.of("src", "test", "fuzz", corpus))) {
      List<Path> files = stored.sorted().toList();
      assertThat(files).isNotEmpty();
      for (Path file : files) {
        target.accept(Files.readAllBytes(file));
      }
    }
  }

  @Test
  void everyStoredFileIsRefusedInWordsOrReadsBack() throws IOException {
    replay("reader", ReaderFuzz::fuzzerTestOneInput);
  }

  @Test
  void everyStoredTextIsRefusedInWordsOrANumber() throws IOException {
    replay("quantity", QuantityFuzz::fuzzerTestOneInput);
  }

  @Test
  void everyStoredChangeOfAnExampleIsJudged() throws IOException {
    replay("evaluation", EvaluationFuzz::fuzzerTestOneInput);
  }
}
