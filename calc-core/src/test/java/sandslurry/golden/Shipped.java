package sandslurry.golden;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Reading;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** The examples of the documentation and changes of them, each assessed once for all tests. */
public final class Shipped {
  /** Where the examples are. */
  public static final Path FOLDER = Path.of("..", "docs", "examples");

  private static final Map<DesignDocument, Assessment> ASSESSED = new ConcurrentHashMap<>();
  private static final Map<String, String> REPORTED = new ConcurrentHashMap<>();

  private Shipped() {}

  /** The file names of all examples, such as {@code parlor-line.json}, in order. */
  public static List<String> files() {
    try (Stream<Path> listed = Files.list(FOLDER)) {
      return listed
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".json"))
          .sorted()
          .toList();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** What comes of an example. */
  public static Assessment assessment(String file) {
    try {
      return assessment(DesignDocument.load(FOLDER.resolve(file)));
    } catch (IOException | DesignTextException e) {
      throw new AssertionError(file, e);
    }
  }

  /**
   * What comes of a design without a problem, assessed once for all tests that look at the same
   * text. Not for designs drawn at random, which would all be kept.
   */
  public static Assessment assessment(DesignDocument document) {
    return ASSESSED.computeIfAbsent(document, Shipped::assess);
  }

  /** The report of an example as text, 100 characters wide. */
  public static String report(String file) {
    return REPORTED.computeIfAbsent(
        file, f -> new TextView(100).write(DesignReport.everything(assessment(f))));
  }

  /**
   * What comes of a design without a problem, kept by nobody.
   *
   * @param document the design
   * @return its assessment
   */
  public static Assessment assess(DesignDocument document) {
    Reading reading = document.read();
    if (!reading.problems().isEmpty()) {
      throw new AssertionError(reading.problems());
    }
    return Evaluation.assess(reading.design().orElseThrow());
  }
}
