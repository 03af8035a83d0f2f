package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProgramExamplesTest {
  @Test
  void allExamplesOfTheDocsAreInTheProgramAndCanBeJudged() throws Exception {
    List<String> files;
    try (Stream<Path> listed = Files.list(Path.of("../docs/examples"))) {
      files =
          listed
              .map(f -> f.getFileName().toString())
              .filter(name -> name.endsWith(".json"))
              .sorted()
              .toList();
    }
    assertThat(Examples.all()).extracting(Examples.Example::file).isEqualTo(files);
    for (Examples.Example example : Examples.all()) {
      assertThat(example.title()).isNotBlank();
      assertThat(Designs.assessment(example.document()).findings()).as(example.file()).isNotEmpty();
    }
    assertThat(Examples.first()).isPresent();
  }
}
