package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Whatever is delivered with the program is named with its licence, and its text is there. */
class NoticesTest {
  /** Libraries of the tests alone: by the beginnings of their files. */
  private static final List<String> OF_TESTS =
      List.of(
          "junit",
          "jqwik",
          "assertj",
          "byte-buddy",
          "archunit",
          "slf4j",
          "opentest4j",
          "apiguardian",
          "console",
          "surefire",
          "jspecify",
          "calc-core");

  private static String text(String name) throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            NoticesTest.class.getResourceAsStream("/META-INF/third-party/" + name), name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void everyLibraryOnTheClassPathIsNamed() throws IOException {
    String notices = text("NOTICES.md");
    List<String> libraries =
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
            .filter(path -> path.contains(".m2" + File.separator + "repository"))
            .map(path -> new File(path).getName().replaceFirst("-\\d.*", ""))
            .filter(name -> OF_TESTS.stream().noneMatch(name::startsWith))
            .distinct()
            .toList();
    assertThat(libraries).contains("flatlaf", "jackson-core");
    assertThat(libraries).allMatch(name -> notices.matches("(?s).*[|,] " + name + "[ ,].*"));
  }

  @Test
  void everyLicenceTextThatTheNoticesPointToIsThere() throws IOException {
    assertThat(text("LGPL-2.1.txt")).contains("GNU LESSER GENERAL PUBLIC LICENSE", "Version 2.1");
    assertThat(text("EPL-2.0.txt")).contains("Eclipse Public License - v 2.0");
    assertThat(text("BSD-3-Clause.txt")).contains("Redistributions in binary form");
  }
}
