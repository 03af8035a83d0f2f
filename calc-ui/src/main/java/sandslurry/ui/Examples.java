package sandslurry.ui;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;

/** The example designs that come with the program. */
final class Examples {
  private static final String FIRST = "parlor-line.json";

  private Examples() {}

  /**
   * One example.
   *
   * @param file name of its file
   * @param document the design
   */
  record Example(String file, DesignDocument document) {
    String title() {
      String title = document.text("/title");
      return title.isBlank() ? file : title;
    }
  }

  /** Read once, so that the window need not read files. */
  private static final class Held {
    static final List<Example> ALL = load();
  }

  static List<Example> all() {
    return Held.ALL;
  }

  private static List<Example> load() {
    assert FileWork.isElsewhere();
    URL folder = Examples.class.getResource("examples/");
    if (folder == null) {
      return List.of();
    }
    try {
      URI uri = folder.toURI();
      if ("jar".equals(uri.getScheme())) {
        try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
          return read(jar.getPath("sandslurry/ui/examples"));
        }
      }
      return read(Path.of(uri));
    } catch (IOException | URISyntaxException | DesignTextException e) {
      throw new IllegalStateException("the examples in the program are damaged", e);
    }
  }

  private static List<Example> read(Path folder) throws IOException, DesignTextException {
    List<Example> examples = new ArrayList<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        examples.add(new Example(file.getFileName().toString(), DesignDocument.parse(text)));
      }
    }
    return List.copyOf(examples);
  }

  /** The design that a new user sees working. */
  static Optional<DesignDocument> first() {
    List<Example> examples = all();
    return examples.stream()
        .filter(e -> e.file().equals(FIRST))
        .findFirst()
        .or(() -> examples.stream().findFirst())
        .map(Example::document);
  }
}
