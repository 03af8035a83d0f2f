package sandslurry.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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

/**
 * Changes an example in any way: a number becomes greater or smaller, a choice becomes another, a
 * field or its group goes. What can still be read is judged and reported, quickly and in numbers.
 */
public final class EvaluationFuzz {
  private static final int MOST_CHANGES = 6;
  private static final int BYTES_OF_CHANGE = 5;
  private static final Pattern NUMBER = Pattern.compile("^[0-9.]+");
  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b");

  /** What the examples say in each field, by its name: choices for any field of that name. */
  private static final Map<String, List<String>> SAID = new TreeMap<>();

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
    } else {
      fields.add(place);
      List<String> said = SAID.computeIfAbsent(name(place), n -> new ArrayList<>());
      if (!said.contains(node.asText())) {
        said.add(node.asText());
      }
    }
  }

  private static String name(String place) {
    return place.substring(place.lastIndexOf('/') + 1);
  }

  /**
   * One try.
   *
   * @param data which example, and which changes
   */
  public static void fuzzerTestOneInput(byte[] data) {
    changed(data)
        .flatMap(document -> document.read().design())
        .ifPresent(design -> ReaderFuzz.timed(() -> judge(design)));
  }

  /** The design that some bytes stand for. */
  static Optional<DesignDocument> changed(byte[] data) {
    ByteBuffer bytes = ByteBuffer.wrap(data);
    if (!bytes.hasRemaining()) {
      return Optional.empty();
    }
    Start start = STARTS.get((bytes.get() & 0xFF) % STARTS.size());
    DesignDocument document = start.document();
    for (int i = 0; i < MOST_CHANGES && bytes.remaining() >= BYTES_OF_CHANGE; i++) {
      String field = start.fields().get((bytes.getShort() & 0xFFFF) % start.fields().size());
      document = changed(document, field, bytes.get(), bytes.getShort());
    }
    return Optional.of(document);
  }

  private static DesignDocument changed(
      DesignDocument document, String field, byte kind, short amount) {
    if (!document.has(field)) {
      return document;
    }
    List<String> said = SAID.get(name(field));
    String group = field.substring(0, field.lastIndexOf('/'));
    return switch (kind & 7) {
      case 0 -> document.without(field);
      case 1 -> group.isEmpty() ? document : document.without(group);
      case 2, 3 -> document.with(field, said.get((amount & 0xFFFF) % said.size()));
      default -> {
        Matcher number = NUMBER.matcher(document.text(field));
        if (!number.find()) {
          yield document;
        }
        double scaled = Math.pow(10, amount / 8192.0) * value(number.group());
        yield document.with(field, number.replaceFirst(String.format(Locale.ROOT, "%.6g", scaled)));
      }
    };
  }

  private static double value(String number) {
    return number.matches("\\d*\\.?\\d+|\\d+\\.") ? Double.parseDouble(number) : 1;
  }

  private static void judge(Design design) {
    Assessment assessment = Evaluation.assess(design);
    TextView view = new TextView(100);
    String report =
        view.write(Answer.of(assessment)) + view.write(DesignReport.everything(assessment));
    ReaderFuzz.check(!NO_NUMBER.matcher(report).find(), "a number that is none");
  }
}
