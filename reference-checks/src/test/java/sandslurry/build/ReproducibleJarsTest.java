package sandslurry.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/**
 * Nothing in the jars tells when, where or by whom they were built. It runs when the whole project
 * is built, after they were packaged, since this module comes last.
 */
class ReproducibleJarsTest {
  /** That of {@code project.build.outputTimestamp}. */
  private static final LocalDateTime STAMP = LocalDateTime.of(2026, 1, 1, 0, 0);

  private static List<Path> jars() throws IOException {
    List<Path> jars = new ArrayList<>();
    for (String module : List.of("calc-core", "calc-ui")) {
      Path target = Path.of("..", module, "target");
      if (Files.isDirectory(target)) {
        try (DirectoryStream<Path> found = Files.newDirectoryStream(target, "*.jar")) {
          found.forEach(jars::add);
        }
      }
    }
    return jars;
  }

  @Test
  void noJarTellsWhenOrWhereItWasBuilt() throws IOException {
    List<Path> jars = jars();
    assertThat(jars).as("jars of both modules: build the whole project").hasSizeGreaterThan(1);
    String home = Path.of("..").toRealPath().toString();
    for (Path path : jars) {
      try (JarFile jar = new JarFile(path.toFile())) {
        for (ZipEntry entry : jar.stream().toList()) {
          assertThat(entry.getTimeLocal()).as(path + " " + entry.getName()).isEqualTo(STAMP);
          if (!entry.getName().endsWith(".class") && !entry.isDirectory()) {
            assertThat(text(jar, entry)).as(path + " " + entry.getName()).doesNotContain(home);
          }
        }
        Attributes told = jar.getManifest().getMainAttributes();
        assertThat(told.keySet().stream().map(key -> key.toString().toLowerCase(Locale.ROOT)))
            .as(path.toString())
            .doesNotContain("built-by", "build-time", "build-timestamp", "bnd-lastmodified");
      }
    }
  }

  private static String text(JarFile jar, ZipEntry entry) throws IOException {
    try (InputStream in = jar.getInputStream(entry)) {
      return new String(in.readAllBytes(), StandardCharsets.ISO_8859_1);
    }
  }
}
