package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Evaluation;

class ReportPagesTest {
  private final PageFormat format = new PageFormat();

  private static String lines(int count, String text) {
    return IntStream.range(0, count).mapToObj(i -> text).collect(Collectors.joining("\n"));
  }

  private int print(ReportPages pages, int index, BufferedImage image) {
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    int answer = pages.print(g, format, index);
    g.dispose();
    return answer;
  }

  private static BufferedImage paper(PageFormat format) {
    return new BufferedImage(
        (int) format.getWidth(), (int) format.getHeight(), BufferedImage.TYPE_INT_RGB);
  }

  private static boolean inked(BufferedImage image, int x, int y, int width, int height) {
    int[] pixels = image.getRGB(x, y, width, height, null, 0, width);
    return IntStream.of(pixels).anyMatch(p -> p != Color.WHITE.getRGB());
  }

  @Test
  void aLongReportTakesPagesThatEndWithTheLastLine() {
    ReportPages pages =
        new ReportPages("Title", "2026-01-01", lines(500, "some text"), Optional.empty());
    BufferedImage image = paper(format);

    int count = pages.pageCount(format);
    assertThat(count).isBetween(5, 15);
    assertThat(print(pages, count - 1, image)).isEqualTo(Printable.PAGE_EXISTS);
    assertThat(print(pages, count, image)).isEqualTo(Printable.NO_SUCH_PAGE);
  }

  @Test
  void aLineOfTheWidthOfTheReportIsNotBroken() {
    String line = "M".repeat(JudgeCommand.REPORT_WIDTH);
    int narrow = new ReportPages("T", "D", lines(200, "M"), Optional.empty()).pageCount(format);
    // Smaller letters make lines lower, so unbroken lines never take more pages.
    assertThat(new ReportPages("T", "D", lines(200, line), Optional.empty()).pageCount(format))
        .isLessThanOrEqualTo(narrow);
  }

  @Test
  void widePagesKeepWithinThePaper() {
    ReportPages pages =
        new ReportPages("Title", "2026-01-01", lines(200, "M".repeat(300)), Optional.empty());
    BufferedImage image = paper(format);
    print(pages, 0, image);

    int left = (int) format.getImageableX();
    int right = (int) (format.getImageableX() + format.getImageableWidth());
    int bottom = (int) (format.getImageableY() + format.getImageableHeight());
    assertThat(inked(image, left, 80, right - left, 500)).isTrue();
    assertThat(inked(image, right + 2, 0, image.getWidth() - right - 2, image.getHeight()))
        .isFalse();
    assertThat(inked(image, 0, bottom + 1, image.getWidth(), image.getHeight() - bottom - 1))
        .isFalse();
  }

  @Test
  void theDrawingOfThePlantFillsALastPageAndNoMoreThanThatPage() {
    FlowDrawing drawing =
        FlowDrawing.of(
                Evaluation.assess(
                    Designs.example("closed-loop-dairy.json").read().design().orElseThrow()))
            .orElseThrow();
    String report = lines(60, "some text");
    int without = new ReportPages("T", "D", report, Optional.empty()).pageCount(format);
    ReportPages pages = new ReportPages("T", "D", report, Optional.of(drawing));
    assertThat(pages.pageCount(format)).isEqualTo(without + 1);

    BufferedImage image = paper(format);
    assertThat(print(pages, without, image)).isEqualTo(Printable.PAGE_EXISTS);
    int left = (int) format.getImageableX();
    int top = (int) format.getImageableY();
    int width = (int) format.getImageableWidth();
    int height = (int) format.getImageableHeight();
    assertThat(inked(image, left, top + height / 4, width, height / 4)).isTrue();
    assertThat(inked(image, 0, 0, left - 1, image.getHeight())).isFalse();
    int right = left + width + 2;
    assertThat(inked(image, right, 0, image.getWidth() - right, image.getHeight())).isFalse();
    assertThat(print(pages, without + 1, paper(format))).isEqualTo(Printable.NO_SUCH_PAGE);
  }
}
