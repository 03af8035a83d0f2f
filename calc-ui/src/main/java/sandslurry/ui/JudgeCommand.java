package sandslurry.ui;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.Reading;
import sandslurry.fact.finding.Severity;
import sandslurry.report.Answer;
import sandslurry.report.CsvView;
import sandslurry.report.DesignReport;
import sandslurry.report.JsonView;
import sandslurry.report.block.TextView;
import sandslurry.study.Cures;
import sandslurry.units.ShownText;

/** Judges design files and prints the answer. */
@Command(
    name = "judge",
    description = {
      "Judges design files - a line with its pump, a settling lane, a plant from the pens to the"
          + " storage - and prints the answer.",
      "Several files give a line each and a table; - reads standard input."
    },
    mixinStandardHelpOptions = true,
    exitCodeListHeading = "%nExit codes (of several files the worst):%n",
    exitCodeList = {
      "0:pass",
      "1:caution",
      "2:fail",
      "3:bad input: the reasons are on standard error"
    })
final class JudgeCommand implements Callable<Integer> {
  static final int REPORT_WIDTH = 100;

  private static final String STANDARD_INPUT = "-";

  /** What a window of usual width has room for beside the inputs. */
  static final int FORM_WIDTH = 88;

  enum Units {
    METRIC,
    US
  }

  private enum Format {
    TEXT,
    JSON,
    CSV,
    HTML
  }

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "The design files; - for standard input.")
  private List<String> files = List.of();

  @Option(
      names = "--units",
      paramLabel = "metric|us",
      description = "Units of what is printed; those of the file if not given.")
  private Units units;

  @Option(
      names = "--format",
      paramLabel = "text|json|csv|html",
      defaultValue = "TEXT",
      description = "What is printed: the answer as text, or all results as JSON, CSV or HTML.")
  private Format format;

  @Option(
      names = "--working",
      description = "Print the working as well: every step with equation, values and source.")
  private boolean working;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description = "Write the design report to a file (.pdf or .html).")
  private Path report;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write what would be printed to a file (UTF-8) and print the verdict only.")
  private Path out;

  @Option(
      names = "--drawing",
      paramLabel = "FILE",
      description = "Write the drawing of the plant's flows to a file (PNG).")
  private Path drawing;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "The date in the design report; today if not given.")
  private LocalDate date;

  /** What mends the only file, looked for once for all that is written of it. */
  private Optional<Cures> cures = Optional.empty();

  /**
   * A design file that was judged.
   *
   * @param file its name
   * @param document what was typed
   * @param assessment what came of it
   */
  private record Judged(String file, DesignDocument document, Assessment assessment) {}

  @Override
  public Integer call() throws BadInputException {
    if (files.size() > 1 && (report != null || drawing != null)) {
      throw new BadInputException("--report and --drawing take one design file at a time.");
    }
    if (Collections.frequency(files, STANDARD_INPUT) > 1) {
      throw new BadInputException("- is standard input, which can be read once only.");
    }
    for (String file : files) {
      OutputFile.check(
          file.equals(STANDARD_INPUT) ? null : BadInputException.path(file), out, report, drawing);
    }
    List<Judged> judged = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    for (String file : files) {
      try {
        judged.add(judge(file));
      } catch (BadInputException e) {
        String name = BadInputException.shown(file);
        boolean named = files.size() == 1 || e.getMessage().startsWith(name);
        problems.add(named ? e.getMessage() : name + ":\n" + e.getMessage());
      }
    }
    if (judged.isEmpty()) {
      throw new BadInputException(String.join("\n", problems));
    }
    problems.forEach(p -> spec.commandLine().getErr().println(ShownText.lines(p)));
    if (drawing != null) {
      draw(judged.get(0).assessment());
    }
    if (files.size() == 1 && (report != null || format == Format.TEXT || format == Format.HTML)) {
      cures = Cures.of(judged.get(0).document(), judged.get(0).assessment());
    }
    if (report != null) {
      report(judged.get(0));
    }
    print(judged);
    int worst =
        judged.stream().mapToInt(j -> code(j.assessment().verdict())).max().orElse(Main.BAD_INPUT);
    return problems.isEmpty() ? worst : Main.BAD_INPUT;
  }

  private static int code(Severity verdict) {
    return switch (verdict) {
      case NOTE, PASS -> 0;
      case CAUTION -> 1;
      case FAIL -> 2;
    };
  }

  private Judged judge(String file) throws BadInputException {
    DesignDocument document =
        file.equals(STANDARD_INPUT)
            ? BadInputException.read(System.in)
            : BadInputException.load(BadInputException.path(file));
    if (units != null) {
      document = document.with("/units", units == Units.US ? "US" : "metric");
    }
    Reading reading = document.read();
    BadInputException.check(reading.problems());
    return new Judged(file, document, Evaluation.assess(reading.design().get()));
  }

  private void print(List<Judged> judged) throws BadInputException {
    Map<String, Assessment> results = new LinkedHashMap<>();
    judged.forEach(j -> results.put(j.file(), j.assessment()));
    String text =
        switch (format) {
          case JSON -> JsonView.write(results);
          case CSV -> CsvView.write(results);
          case HTML -> html(judged);
          case TEXT -> text(judged, results);
        };
    PrintWriter console = spec.commandLine().getOut();
    if (out == null) {
      console.print(text);
    } else {
      OutputFile.write("The report", out, text.getBytes(StandardCharsets.UTF_8));
      judged.forEach(j -> console.println(line(j)));
    }
    console.flush();
  }

  private String text(List<Judged> judged, Map<String, Assessment> results) {
    TextView view = new TextView(REPORT_WIDTH);
    if (judged.size() == 1) {
      Assessment assessment = judged.get(0).assessment();
      String answer = view.write(Answer.of(assessment, cures));
      return working
          ? answer + "\n" + view.write(DesignReport.working(assessment))
          : answer
              + "More: --report FILE.pdf (tables, drawings, cautions)  --working  --format json\n";
    }
    return judged.stream().map(j -> line(j) + "\n").collect(Collectors.joining())
        + "\n"
        + view.write(List.of(Answer.table(results)));
  }

  private static String line(Judged judged) {
    return judged.assessment().verdict()
        + " "
        + ShownText.escaped(judged.file())
        + ": "
        + Answer.sentence(judged.assessment());
  }

  private String html(List<Judged> judged) throws BadInputException {
    if (judged.size() > 1) {
      throw new BadInputException("--format html takes one design file at a time.");
    }
    try {
      return file(judged.get(0)).html();
    } catch (IOException e) {
      throw new BadInputException("The report cannot be written: " + BadInputException.reason(e));
    }
  }

  private void report(Judged judged) throws BadInputException {
    OutputFile.write("The report", report, file(judged).as(report));
  }

  private ReportFile file(Judged judged) {
    LocalDate day = date == null ? LocalDate.now() : date;
    Path name = Path.of(judged.file()).getFileName();
    return ReportFile.of(
        judged.document(),
        judged.assessment(),
        cures,
        judged.file().equals(STANDARD_INPUT) ? "" : name.toString(),
        day,
        working);
  }

  private void draw(Assessment assessment) throws BadInputException {
    FlowDrawing plant =
        FlowDrawing.onPaper(assessment)
            .orElseThrow(() -> new BadInputException("There is no plant in the design to draw."));
    ByteArrayOutputStream picture = new ByteArrayOutputStream();
    try {
      ImageIO.write(plant.picture(), "png", picture);
    } catch (IOException e) {
      throw new BadInputException("The drawing cannot be made: " + BadInputException.reason(e));
    }
    OutputFile.write("The drawing", drawing, picture.toByteArray());
  }
}
