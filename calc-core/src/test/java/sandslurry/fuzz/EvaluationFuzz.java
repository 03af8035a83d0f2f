package sandslurry.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import sandslurry.assessment.Assessment;
import sandslurry.assessment.Evaluation;
import sandslurry.design.Design;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.report.Answer;
import sandslurry.report.DesignReport;
import sandslurry.report.block.TextView;

/** Changes numbers of an example in any way: what can be read is judged, quickly and in numbers. */
public final class EvaluationFuzz {
  private static final long LONGEST_NS = 5_000_000_000L;
  private static final int MOST_CHANGES = 6;
  private static final Pattern NUMBER = Pattern.compile("^[0-9.]+");
  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");
  private static final List<Start> STARTS = starts();

  private EvaluationFuzz() {}

  private record Start(DesignDocument document, List<String> fields) {}

  private static List<Start> starts() {
    List<Start> starts = new ArrayList<>();
    try (Stream<Path> files = Files.list(Path.of("..", "docs", "examples"))) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        List<String> fields = new ArrayList<>();
        walk(new ObjectMapper().readTree(file.toFile()), "", fields);
        starts.add(new Start(DesignDocument.load(file), fields));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DesignTextException e) {
      throw new IllegalStateException(e);
    }
    return starts;
  }

  private static void walk(JsonNode node, String place, List<String> fields) {
    if (node.isObject()) {
      node.properties().forEach(f -> walk(f.getValue(), place + "/" + f.getKey(), fields));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(node.get(i), place + "/" + i, fields);
      }
    } else if (NUMBER.matcher(node.asText()).find()) {
      fields.add(place);
    }
  }

  /**
   * One try.
   *
   * @param data which example, and which changes
   */
  public static void fuzzerTestOneInput(byte[] data) {
    changed(data).flatMap(document -> document.read().design()).ifPresent(EvaluationFuzz::judge);
  }

  /** The design that some bytes stand for. */
  static Optional<DesignDocument> changed(byte[] data) {
    ByteBuffer bytes = ByteBuffer.wrap(data);
    if (bytes.remaining() < 5) {
      return Optional.empty();
    }
    Start start = STARTS.get((bytes.get() & 0xFF) % STARTS.size());
    DesignDocument document = start.document();
    for (int i = 0; i < MOST_CHANGES && bytes.remaining() >= 4; i++) {
      String field = start.fields().get((bytes.getShort() & 0xFFFF) % start.fields().size());
      double factor = Math.pow(10, bytes.getShort() / 8192.0);
      Matcher number = NUMBER.matcher(document.text(field));
      if (number.find()) {
        String text = String.format(Locale.ROOT, "%.6g", factor * value(number.group()));
        document = document.with(field, number.replaceFirst(text));
      }
    }
    return Optional.of(document);
  }

  private static double value(String number) {
    return number.matches("\\d*\\.?\\d+|\\d+\\.") ? Double.parseDouble(number) : 1;
  }

  private static void judge(Design design) {
    var threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    Assessment assessment = Evaluation.assess(design);
    TextView view = new TextView(100);
    String report =
        view.write(Answer.of(assessment)) + view.write(DesignReport.everything(assessment));
    long worked = threads.getCurrentThreadCpuTime() - start;
    ReaderFuzz.check(!NO_NUMBER.matcher(report).find(), "a number that is none");
    ReaderFuzz.check(worked < LONGEST_NS, "it took " + worked + " ns");
  }
}
