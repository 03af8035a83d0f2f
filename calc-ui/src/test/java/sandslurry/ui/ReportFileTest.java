package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.xml.sax.InputSource;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;

class ReportFileTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  private static DesignDocument example(String name) throws IOException, DesignTextException {
    return DesignDocument.load(Path.of("..", "docs", "examples", name));
  }

  private static ReportFile file(DesignDocument document, LocalDate day) {
    Assessment assessment = Evaluation.assess(document.read().design().orElseThrow());
    return ReportFile.of(document, assessment, "design.json", day, false);
  }

  @ParameterizedTest
  @CsvSource({
    "parlor-line.json, metric, 6",
    "parlor-line.json, US, 6",
    "oversized-line-plugs.json, US, 6",
    "two-pumps-six-states.json, metric, 10",
    "closed-loop-dairy.json, US, 15"
  })
  void aReportHasFewPagesEachWithItsNumber(String name, String units, int most) throws Exception {
    byte[] pdf = file(example(name).with("/units", units), DAY).pdf();

    try (PDDocument document = Loader.loadPDF(pdf)) {
      int pages = document.getNumberOfPages();
      assertThat(pages).isLessThanOrEqualTo(most);
      PDFTextStripper text = new PDFTextStripper();
      for (int page = 1; page <= pages; page++) {
        text.setStartPage(page);
        text.setEndPage(page);
        assertThat(text.getText(document)).contains("page " + page + " of " + pages);
      }
      text.setStartPage(1);
      text.setEndPage(pages);
      assertThat(text.getText(document))
          .contains("Not known", "Inputs and assumptions", "Sources", "Signature", "2026-03-01")
          .contains("licensed practitioner");
      assertThat(document.getDocumentCatalog().getDocumentOutline().children())
          .hasSizeGreaterThan(5);
    }
  }

  @Test
  void theSameDesignGivesTheSameBytesButForTheDate() throws Exception {
    DesignDocument document = example("parlor-line.json");

    assertThat(file(document, DAY).pdf()).isEqualTo(file(document, DAY).pdf());
    assertThat(file(document, DAY).html()).isEqualTo(file(document, DAY).html());
    assertThat(file(document, DAY.plusDays(1)).html())
        .isEqualTo(file(document, DAY).html().replace("2026-03-01", "2026-03-02"));
  }

  @Test
  void thePageOfHtmlIsOneFileAndWellFormedWhateverTheTitleIs() throws Exception {
    DesignDocument document =
        example("parlor-line.json")
            .with("/title", "<script>a & b</script> \"'")
            .with("/lines/0/route/runs/0/name", "]]><b>x</b>");
    String html = file(document, DAY).html();

    assertThat(html).doesNotContain("<script", "<b>x", "href=\"http", "src=");
    String body = html.substring(html.indexOf("<html"));
    DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new InputSource(new StringReader(body.replace("&#160;", " "))));
    assertThat(Stream.of(html.split("<svg", -1))).hasSizeGreaterThan(3);
  }

  @Test
  void theTitleBlockHoldsWhatTheDesignSaysOfItself() throws Exception {
    DesignDocument document =
        example("parlor-line.json")
            .with("/titleBlock/site", "North yard")
            .with("/titleBlock/checker", "<b>B. Example</b>");

    assertThat(file(document, DAY).html())
        .contains("North yard", "&lt;b&gt;B. Example&lt;/b&gt;")
        .doesNotContain("<b>B.");
  }
}
