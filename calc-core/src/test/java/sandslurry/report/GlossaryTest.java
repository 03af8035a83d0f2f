package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import sandslurry.report.block.Block;

/** The words are explained once, shortly, in order, and the guide has the same. */
class GlossaryTest {
  private static final Path PAGE = Path.of("..", "docs", "guide", "glossary.md");
  private static final int LONGEST = 30;

  @Test
  void theGuideHasTheSameWords() throws IOException {
    String page =
        "# Glossary\n\nThe words of form and reports; written from the program.\n\n"
            + Glossary.terms().entrySet().stream()
                .map(term -> "**" + term.getKey() + "**: " + term.getValue() + "\n")
                .collect(Collectors.joining("\n"));
    if (Boolean.getBoolean("glossary.renew")) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page);
  }

  @Test
  void eachIsASentenceInOrder() {
    assertThat(List.copyOf(Glossary.terms().keySet()))
        .isSortedAccordingTo(String.CASE_INSENSITIVE_ORDER);
    assertThat(Glossary.terms().values())
        .allSatisfy(
            meaning -> {
              assertThat(meaning).endsWith(".");
              assertThat(meaning.split("\\s+")).hasSizeLessThan(LONGEST);
            });
  }

  @Test
  void aReportExplainsTheWordsThatItUses() {
    Block.Items words =
        (Block.Items)
            Glossary.of(List.of(new Block.Paragraph("Operating window: the D85 and BEP")));

    assertThat(words.items())
        .extracting(item -> item.substring(0, item.indexOf(':')))
        .containsExactly("Best efficiency point (BEP)", "d50, d85", "Operating window");
  }
}
