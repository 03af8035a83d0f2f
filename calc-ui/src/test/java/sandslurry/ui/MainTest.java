package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.design.document.DesignDocument;

class MainTest {
  @TempDir private Path folder;

  private record Run(int code, String out, String err) {}

  private static Run run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Run(code, out.toString(), err.toString());
  }

  private String file(DesignDocument document) throws IOException {
    Path file = folder.resolve("design.json");
    document.save(file);
    return file.toString();
  }

  @Test
  void aPassEndsWithZeroAndPrintsTheAnswer() throws IOException {
    Run run = run("judge", file(Designs.example("parlor-line.json")));

    assertThat(run.code()).as(run.err()).isZero();
    assertThat(run.out()).contains("PASS", "Operating window", "What decides", "Not known");
    assertThat(run.out()).contains("licensed practitioner");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void aCautionEndsWithOne() throws IOException {
    DesignDocument wearing =
        Designs.example("parlor-line.json").with("/criteria/wearVelocity", "0.5 m/s");

    assertThat(run("judge", file(wearing)).code()).isEqualTo(1);
  }

  @Test
  void aFailEndsWithTwo() throws IOException {
    DesignDocument slow =
        Designs.example("parlor-line.json").with("/lines/0/flow/minimum", "100 gpm");

    assertThat(run("judge", file(slow)).code()).isEqualTo(2);
  }

  @Test
  void badInputEndsWithThreeAndListsEveryProblemOnALine() throws IOException {
    DesignDocument bad =
        Designs.example("parlor-line.json")
            .with("/lines/0/flow/design", "460 psi")
            .with("/lines/0/route/runs/0/length", "-3 ft")
            .without("/carrier/temperature");

    Run run = run("judge", file(bad));

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines())
        .hasSize(3)
        .anyMatch(line -> line.startsWith("/lines/0/flow/design = \"460 psi\""))
        .anyMatch(line -> line.startsWith("/lines/0/route/runs/0/length"))
        .anyMatch(line -> line.startsWith("/carrier/temperature"));
  }

  @Test
  void aMissingFileAFolderAndATextThatIsNoJsonEndWithThreeInOneLine() throws IOException {
    Path text = Files.writeString(folder.resolve("text.json"), "hello");
    Path bytes = Files.write(folder.resolve("bytes.json"), new byte[] {(byte) 0xC3, 0x28});
    for (String bad :
        new String[] {
          folder.resolve("none.json").toString(),
          folder.toString(),
          text.toString(),
          bytes.toString()
        }) {
      Run run = run("judge", bad);
      assertThat(run.code()).as(bad).isEqualTo(3);
      assertThat(run.err().lines()).as(bad).hasSize(1).first().asString().contains(bad);
    }
  }

  @Test
  void aWrongCommandLineEndsWithThreeNotWithTheCodeOfAFail() {
    assertThat(run("judge").code()).isEqualTo(3);
    assertThat(run("juge", "x.json").code()).isEqualTo(3);
    assertThat(run("judge", "x.json", "--units", "furlongs").code()).isEqualTo(3);
  }

  @Test
  void theUnitsOfTheReportCanBeChosen() throws IOException {
    String file = file(Designs.example("parlor-line.json"));

    assertThat(run("judge", file).out()).contains("gal/min").doesNotContain("L/s");
    assertThat(run("judge", file, "--units", "metric").out())
        .contains("L/s")
        .doesNotContain("gal/min");
    assertThat(run("judge", file, "--units", "us").out()).isEqualTo(run("judge", file).out());
  }

  @Test
  void theReportCanGoToAFileWithTheVerdictOnTheConsole() throws IOException {
    String file = file(Designs.example("parlor-line.json"));
    Path report = folder.resolve("report.txt");

    Run run = run("judge", file, "--out", report.toString());

    assertThat(run.out().lines()).hasSize(1);
    assertThat(Files.readString(report)).isEqualTo(run("judge", file).out());
    assertThat(run("judge", file, "--out", folder.resolve("none/r.txt").toString()).code())
        .isEqualTo(3);
  }

  @Test
  void severalFilesGiveALineEachATableAndTheWorstCode() throws IOException {
    Path passes = folder.resolve("passes.json");
    Path plugs = folder.resolve("plugs.json");
    Designs.example("parlor-line.json").save(passes);
    Designs.example("oversized-line-plugs.json").save(plugs);

    Run both = run("judge", passes.toString(), plugs.toString());

    assertThat(both.code()).isEqualTo(2);
    assertThat(both.out().lines())
        .anyMatch(line -> line.startsWith("PASS " + passes))
        .anyMatch(line -> line.startsWith("FAIL " + plugs));
    assertThat(both.out()).contains("operating window");

    Run oneIsMissing = run("judge", passes.toString(), folder.resolve("none.json").toString());
    assertThat(oneIsMissing.code()).isEqualTo(3);
    assertThat(oneIsMissing.out()).contains("PASS");
    assertThat(oneIsMissing.err()).contains("none.json");
  }

  @Test
  void resultsGoToOtherProgramsAsJsonAndCsv() throws IOException {
    String file = file(Designs.example("parlor-line.json"));

    JsonNode json = new ObjectMapper().readTree(run("judge", file, "--format", "json").out());
    assertThat(json.get("verdict").asText()).isEqualTo("PASS");
    assertThat(json.at("/window/lowest").asDouble()).isBetween(0.0185, 0.0195);
    assertThat(json.get("figures"))
        .anySatisfy(
            figure -> {
              assertThat(figure.get("id").asText()).isEqualTo("deposition-velocity");
              assertThat(figure.get("unit").asText()).isEqualTo("m/s");
            });
    assertThat(run("judge", file, "--format", "csv").out())
        .startsWith("file,verdict,id,label,element,at,unit,low,value,high\r\n");
    assertThat(run("judge", file, "--working").out()).contains("Working of");
  }

  @Test
  void theDesignReportIsAPdfOrAPageOfHtmlByItsName() throws IOException {
    String file = file(Designs.example("parlor-line.json"));
    Path pdf = folder.resolve("report.pdf");
    Path html = folder.resolve("report.html");

    assertThat(run("judge", file, "--report", pdf.toString(), "--date", "2026-03-01").code())
        .isZero();
    assertThat(Files.readString(pdf, StandardCharsets.ISO_8859_1)).startsWith("%PDF");
    assertThat(run("judge", file, "--report", html.toString()).code()).isZero();
    assertThat(Files.readString(html)).startsWith("<!DOCTYPE html>").contains("<svg");
    assertThat(run("judge", file, "--report", folder.resolve("r.doc").toString()).code())
        .isEqualTo(3);
  }

  @Test
  void theDrawingOfThePlantGoesToAFile() throws IOException {
    Path picture = folder.resolve("flows.png");
    Run drawn =
        run(
            "judge",
            file(Designs.example("closed-loop-dairy.json")),
            "--drawing",
            picture.toString());
    assertThat(drawn.code()).isLessThan(3);
    assertThat(ImageIO.read(picture.toFile()).getWidth()).isGreaterThan(1000);
    Run without =
        run("judge", file(Designs.example("parlor-line.json")), "--drawing", picture.toString());
    assertThat(without.code()).isEqualTo(3);
    assertThat(without.err()).contains("no plant in the design");
  }

  @Test
  void helpAndVersionEndWithZero() {
    assertThat(run("--help").code()).isZero();
    assertThat(run("--help").out()).contains("judge", "form");
    assertThat(run("judge", "--help").out()).contains("--units", "caution");
    assertThat(run("--version").out()).contains(Product.NAME);
  }

  @Test
  void withoutADisplayTheFormSaysWhatToTypeInstead() {
    Assumptions.assumeTrue(GraphicsEnvironment.isHeadless(), "needs a machine without display");

    Run run = run();

    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("judge FILE");
  }
}
