package sandslurry.fact;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The message files hold every sentence of the findings, and the page of findings is theirs. */
class FindingsPageTest {
  private static final Path PAGE = Path.of("..", "docs", "findings.md");
  private static final Path FILES = Path.of("src/main/resources/sandslurry");
  private static final Path SOURCES = Path.of("src/main/java/sandslurry");
  private static final Pattern PLACE = Pattern.compile("\\{(\\w+)(?::\\w+)?}");
  private static final Pattern LITERAL = Pattern.compile("\"([a-z][\\w-]*)\"");

  /** Keys that say what a file is of. */
  private static final Set<String> OF_FILE = Set.of("subject", "part", "topic");

  private static final boolean RENEW = Boolean.getBoolean("findings.renew");

  /** A message file in the order of its lines. */
  private record Subject(Path folder, Map<String, String> sentences) {
    static Subject read(Path file) {
      try {
        Map<String, String> sentences = new LinkedHashMap<>();
        for (String line : Files.readString(file).replaceAll("\\\\\\n\\s*", "").split("\n")) {
          int equals = line.indexOf(" = ");
          if (!line.startsWith("#") && equals > 0) {
            String key = line.substring(0, equals).strip();
            String before = sentences.put(key, line.substring(equals + 3).strip());
            assertThat(before).as("%s twice in %s", key, file).isNull();
          }
        }
        return new Subject(SOURCES.resolve(FILES.relativize(file.getParent())), sentences);
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }

    String name() {
      return sentences.get("subject");
    }

    /** The subject, and the part of it where it has several files. */
    String heading() {
      return name() + (sentences.containsKey("part") ? ": " + sentences.get("part") : "");
    }

    List<String> findings() {
      return sentences.keySet().stream()
          .filter(key -> !key.contains(".") && !OF_FILE.contains(key))
          .toList();
    }

    /** The text of the classes beside the file. */
    String code() {
      try (Stream<Path> files = Files.list(folder)) {
        StringBuilder code = new StringBuilder();
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          code.append(Files.readString(file));
        }
        return code.toString();
      } catch (IOException e) {
        throw new AssertionError(e);
      }
    }
  }

  private static List<Subject> subjects() throws IOException {
    try (Stream<Path> files = Files.walk(FILES)) {
      return files
          .filter(f -> f.endsWith("findings.properties"))
          .sorted()
          .map(Subject::read)
          .toList();
    }
  }

  @Test
  void everyFindingSaysWhatItMeans() throws IOException {
    for (Subject subject : subjects()) {
      assertThat(subject.findings())
          .as(subject.name())
          .isNotEmpty()
          .allSatisfy(id -> assertThat(subject.sentences()).containsKey(id + ".means"));
    }
  }

  @Test
  void everySentenceIsUsedByTheClassesBesideIt() throws IOException {
    for (Subject subject : subjects()) {
      TreeSet<String> literals = new TreeSet<>();
      Matcher literal = LITERAL.matcher(subject.code());
      while (literal.find()) {
        literals.add(literal.group(1));
      }
      List<String> unused = new ArrayList<>();
      for (String key : subject.sentences().keySet()) {
        String used =
            key.replaceFirst("^(why|do|says)\\.", "").replaceFirst("\\.(means|topic)$", "");
        if (!OF_FILE.contains(key) && !literals.contains(used)) {
          unused.add(key);
        }
      }
      assertThat(unused).as(subject.name()).isEmpty();
    }
  }

  @Test
  void everyPlaceOfASentenceIsGivenAValueByTheClassesBesideIt() throws IOException {
    for (Subject subject : subjects()) {
      String code = subject.code();
      for (Map.Entry<String, String> sentence : subject.sentences().entrySet()) {
        Matcher place = PLACE.matcher(sentence.getValue());
        while (place.find()) {
          assertThat(code).as(sentence.getKey()).contains("\"" + place.group(1) + "\"");
        }
      }
    }
  }

  @Test
  void thePageOfFindingsIsWrittenFromTheMessageFiles() throws IOException {
    StringBuilder page =
        new StringBuilder(
            """
            # Findings

            Every finding that the program can make, by subject, with its stable id: what it says, what it means and
            when it comes. Written from the message files; a name in *italics* is a number or name of the design.
            """);
    for (Subject subject : subjects()) {
      page.append("\n## ")
          .append(subject.heading())
          .append("\n\n| id | says | means |\n|---|---|---|\n");
      for (String id : subject.findings()) {
        page.append("| `")
            .append(subject.name())
            .append('.')
            .append(id)
            .append("` | ")
            .append(shown(subject.sentences().get(id)))
            .append(" | ")
            .append(shown(subject.sentences().get(id + ".means")))
            .append(" |\n");
      }
      page.append(clauses(subject, "why.", "The reason is made of"));
      page.append(clauses(subject, "do.", "What to do is one of"));
    }
    if (RENEW) {
      Files.writeString(PAGE, page);
    }
    assertThat(Files.readString(PAGE)).isEqualTo(page.toString());
  }

  private static String clauses(Subject subject, String kind, String heading) {
    StringBuilder list = new StringBuilder("\n" + heading + ":\n\n");
    subject
        .sentences()
        .forEach(
            (key, sentence) -> {
              if (key.startsWith(kind)) {
                list.append("- ").append(shown(sentence)).append('\n');
              }
            });
    return list.toString();
  }

  private static String shown(String sentence) {
    return PLACE.matcher(sentence).replaceAll("*$1*").replace("|", "\\|");
  }
}
