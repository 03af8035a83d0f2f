package sandslurry.ui;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import javax.imageio.ImageIO;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.DesignDocument;
import sandslurry.design.Problem;
import sandslurry.design.Reading;
import sandslurry.report.Report;
import sandslurry.report.TextView;

/** Judges a design file and prints the report. */
@Command(
    name = "judge",
    description = "Judges a design file and prints the report.",
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:pass",
      "1:caution",
      "2:fail",
      "3:bad input: nothing was judged, the reasons are on standard error"
    })
final class JudgeCommand implements Callable<Integer> {
  static final int REPORT_WIDTH = 100;

  private enum Units {
    METRIC,
    US
  }

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The design file.")
  private Path file;

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units of the report; those of the file if not given.")
  private Units units;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the report to a file (UTF-8) and print the verdict only.")
  private Path out;

  @Option(
      names = "--drawing",
      paramLabel = "FILE",
      description = "Write the drawing of the plant's flows to a file (PNG).")
  private Path drawing;

  @Override
  public Integer call() throws BadInputException {
    DesignDocument document = BadInputException.load(file);
    if (units != null) {
      document = document.with("/units", units == Units.US ? "US" : "metric");
    }
    Reading reading = document.read();
    if (reading.design().isEmpty()) {
      throw new BadInputException(
          reading.problems().stream()
              .map(Problem::toString)
              .collect(Collectors.joining(System.lineSeparator())));
    }
    Assessment assessment = Evaluation.assess(reading.design().get());
    String report = new TextView(REPORT_WIDTH).write(Report.of(assessment));
    if (drawing != null) {
      draw(assessment);
    }
    PrintWriter console = spec.commandLine().getOut();
    if (out == null) {
      console.print(report);
    } else {
      write(report);
      console.println(Report.headline(assessment));
    }
    console.flush();
    return switch (assessment.verdict()) {
      case NOTE, PASS -> 0;
      case CAUTION -> 1;
      case FAIL -> 2;
    };
  }

  private void write(String report) throws BadInputException {
    try {
      Files.writeString(out, report, StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new BadInputException(
          "The report cannot be written to " + out + ": " + BadInputException.reason(e));
    }
  }

  private void draw(Assessment assessment) throws BadInputException {
    FlowDrawing plant =
        FlowDrawing.of(assessment)
            .orElseThrow(() -> new BadInputException("There is no plant in the design to draw."));
    try {
      ImageIO.write(plant.picture(), "png", drawing.toFile());
    } catch (IOException e) {
      throw new BadInputException(
          "The drawing cannot be written to " + drawing + ": " + BadInputException.reason(e));
    }
  }
}
