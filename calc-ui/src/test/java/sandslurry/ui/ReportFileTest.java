package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.IOException;
import java.io.StringReader;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.study.Cures;

class ReportFileTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 1);

  /** Whether this is a run of the deep profile. */
  private static final boolean DEEP = "1".equals(System.getProperty("tries.share"));

  private static final int MOST_OF_PLANT = 15;
  private static final int MOST_OF_OTHERS = 6;

  /** Points at the foot of a page for its number. */
  private static final float FOOT = 34;

  private static ReportFile file(DesignDocument document, LocalDate day) {
    Assessment assessment = Designs.assessment(document);
    return ReportFile.of(
        document, assessment, Cures.of(document, assessment), "design.json", day, false);
  }

  private static int most(Assessment assessment) {
    return assessment.design().plant().isPresent() ? MOST_OF_PLANT : MOST_OF_OTHERS;
  }

  /**
   * Examples in both systems of units; in a plain build the largest in both, the rest in theirs.
   */
  static List<Arguments> everyExample() {
    return Examples.all().stream()
        .flatMap(
            example ->
                Stream.of("metric", "US")
                    .filter(
                        units ->
                            DEEP
                                || example.file().equals("lines-of-a-plant.json")
                                || units.equals("US") == isUs(example.document()))
                    .map(units -> arguments(example.file(), units)))
        .toList();
  }

  private static boolean isUs(DesignDocument document) {
    return "US".equals(document.text("/units"));
  }

  /** A page as it is read again: its text, and each letter with its place and font. */
  private record Sheet(String text, List<TextPosition> letters) {
    static List<Sheet> of(PDDocument pages) throws IOException {
      List<Sheet> sheets = new ArrayList<>();
      for (int page = 1; page <= pages.getNumberOfPages(); page++) {
        List<TextPosition> letters = new ArrayList<>();
        PDFTextStripper text =
            new PDFTextStripper() {
              @Override
              protected void processTextPosition(TextPosition letter) {
                letters.add(letter);
                super.processTextPosition(letter);
              }
            };
        text.setStartPage(page);
        text.setEndPage(page);
        sheets.add(new Sheet(text.getText(pages), letters));
      }
      return sheets;
    }

    /**
     * The fonts of the last line: bold alone where a heading or the head of a table is cut from
     * what it stands over.
     */
    Set<String> lastLine() {
      List<TextPosition> body =
          letters.stream().filter(l -> l.getYDirAdj() < l.getPageHeight() - FOOT).toList();
      double lowest = body.stream().mapToDouble(TextPosition::getYDirAdj).max().orElseThrow();
      return body.stream()
          .filter(letter -> letter.getYDirAdj() > lowest - 2)
          .map(letter -> letter.getFont().getName())
          .collect(Collectors.toSet());
    }

    /** The letters that are printed over an edge of the page. */
    List<TextPosition> cut() {
      return letters.stream()
          .filter(
              letter ->
                  letter.getXDirAdj() < 0
                      || letter.getXDirAdj() + letter.getWidthDirAdj() > letter.getPageWidth()
                      || letter.getYDirAdj() < 0
                      || letter.getYDirAdj() > letter.getPageHeight())
          .toList();
    }

    /** What is printed twice at a place, as the head of a table that goes on once was. */
    List<String> twice() {
      Set<String> places = new HashSet<>();
      return letters.stream()
          .filter(letter -> !letter.getUnicode().isBlank())
          .map(l -> l + String.format(Locale.ROOT, " %.2f %.2f", l.getXDirAdj(), l.getYDirAdj()))
          .filter(place -> !places.add(place))
          .toList();
    }

    static String text(List<Sheet> sheets) {
      return sheets.stream().map(Sheet::text).collect(Collectors.joining());
    }
  }

  @ParameterizedTest
  @MethodSource("everyExample")
  void aReportHasFewPagesEachWithItsNumber(String name, String units) throws Exception {
    DesignDocument own = Designs.example(name);
    DesignDocument document = isUs(own) == units.equals("US") ? own : own.with("/units", units);
    byte[] pdf = file(document, DAY).pdf();

    try (PDDocument pages = Loader.loadPDF(pdf)) {
      List<Sheet> sheets = Sheet.of(pages);
      assertThat(sheets).hasSizeLessThanOrEqualTo(most(Designs.assessment(document)));
      for (int i = 0; i < sheets.size(); i++) {
        String number = "page " + (i + 1);
        assertThat(sheets.get(i).text()).contains(number + " of " + sheets.size());
        assertThat(sheets.get(i).lastLine()).as("last line of " + number).contains("Helvetica");
        assertThat(sheets.get(i).cut()).as(number).isEmpty();
        assertThat(sheets.get(i).twice()).as(number).isEmpty();
      }
      assertThat(Sheet.text(sheets))
          .contains("Not known", "Inputs and assumptions", "Sources", "Words used here")
          .contains("Signature", "2026-03-01", "licensed practitioner")
          .doesNotContain("#");
      assertThat(pages.getDocumentCatalog().getDocumentOutline().children()).hasSizeGreaterThan(5);
    }
  }

  @ParameterizedTest
  @CsvSource({"metric, 841.89", "US, 792"})
  void theReportIsOnThePaperOfTheCountry(String units, float height) throws Exception {
    DesignDocument document = Designs.example("settling-lane.json").with("/units", units);
    try (PDDocument pages = file(document, DAY).document()) {
      assertThat(pages.getPage(0).getMediaBox().getHeight()).isCloseTo(height, within(0.1f));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"metric", "US"})
  void nothingIsCutWithFortyRunsOfLongNames(String units) throws Exception {
    DesignDocument document = Designs.example("parlor-line.json").with("/units", units);
    String run = "/lines/0/route/runs/";
    for (int i = 0; i < 40; i++) {
      String name =
          i + (i % 2 == 0 ? "W".repeat(57) : " run under the feed alley and yard of barns");
      document =
          document
              .with(run + i + "/name", name)
              .with(run + i + "/pipe/system", "ASTM D1785")
              .with(run + i + "/pipe/size", "4 in")
              .with(run + i + "/pipe/class", "Sch 40")
              .with(run + i + "/roughness", "0.1 mm")
              .with(run + i + "/length", "8 ft")
              .with(run + i + "/rise", "0.1 ft");
    }
    try (PDDocument pages = Loader.loadPDF(file(document, DAY).pdf())) {
      List<Sheet> sheets = Sheet.of(pages);
      assertThat(sheets).flatExtracting(Sheet::cut).isEmpty();
      assertThat(sheets).flatExtracting(Sheet::twice).isEmpty();
      assertThat(Sheet.text(sheets)).contains("39 run under");
    }
  }

  @Test
  void theSameDesignGivesTheSameBytesButForTheDate() throws Exception {
    DesignDocument document = Designs.example("parlor-line.json");

    assertThat(file(document, DAY).pdf()).isEqualTo(file(document, DAY).pdf());
    assertThat(file(document, DAY).html()).isEqualTo(file(document, DAY).html());
    assertThat(file(document, DAY.plusDays(1)).html())
        .isEqualTo(file(document, DAY).html().replace("2026-03-01", "2026-03-02"));
  }

  @Test
  void thePageOfHtmlIsOneFileAndWellFormedWhateverTheTitleIs() throws Exception {
    DesignDocument document =
        Designs.example("parlor-line.json")
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
        Designs.example("parlor-line.json")
            .with("/titleBlock/site", "North yard")
            .with("/titleBlock/checker", "<b>B. Example</b>");

    assertThat(file(document, DAY).html())
        .contains("North yard", "&lt;b&gt;B. Example&lt;/b&gt;")
        .doesNotContain("<b>B.");
  }

  /** What goes to a printer are the pages of the file. */
  @Test
  void thePagesOfTheReportArePrinted() throws Exception {
    DesignDocument document = Designs.example("parlor-line.json");
    try (PDDocument pages = file(document, DAY).document()) {
      PDFPageable printed = new PDFPageable(pages);
      assertThat(printed.getNumberOfPages()).isBetween(3, most(Designs.assessment(document)));
      BufferedImage image = new BufferedImage(620, 800, BufferedImage.TYPE_INT_RGB);
      int last = printed.getNumberOfPages() - 1;
      assertThat(printed.getPrintable(last).print(image.createGraphics(), new PageFormat(), last))
          .isEqualTo(Printable.PAGE_EXISTS);
      assertThat(IntStream.of(image.getRGB(0, 0, 620, 800, null, 0, 620)).distinct().count())
          .isGreaterThan(2);
    }
  }
}
