package sandslurry.assessment;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import sandslurry.design.document.DesignDocument;

class OneFlowTest {
  private static boolean saysSo(DesignDocument document) {
    return Evaluation.assess(document.read().design().orElseThrow()).findings().stream()
        .anyMatch(finding -> finding.id().equals("line.minimum-missing"));
  }

  @Test
  void aLineWithoutALeastFlowIsToldThatNoneWasJudged() throws Exception {
    DesignDocument document =
        DesignDocument.load(Path.of("..", "docs", "examples", "parlor-line.json"));
    assertThat(saysSo(document)).isFalse();
    assertThat(saysSo(document.without("/lines/0/flow/minimum"))).isTrue();
  }
}
