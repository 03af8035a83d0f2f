package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.ResourceBundle;
import org.junit.jupiter.api.Test;

/** Every caution of the file is said of some design, and each is whole. */
class SafetyCautionsTest {
  @Test
  void everyCautionHasItsTextAndSourceAndIsUsed() throws IOException {
    String code =
        Files.readString(Path.of("src/main/java/sandslurry/assessment/SafetyCautions.java"));
    ResourceBundle texts = ResourceBundle.getBundle("sandslurry.assessment.cautions", Locale.ROOT);
    assertThat(texts.keySet().stream().filter(key -> !key.contains(".")))
        .hasSize(16)
        .allSatisfy(
            key -> {
              assertThat(code).contains('"' + key + '"');
              assertThat(texts.getString(key)).isNotBlank();
              assertThat(texts.getString(key + ".text")).endsWith(".");
              assertThat(texts.getString(key + ".source")).isNotBlank();
            });
  }
}
