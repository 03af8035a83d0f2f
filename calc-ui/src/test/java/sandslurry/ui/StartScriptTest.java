package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The start script, with a "java" that only writes down how it was called. */
@DisabledOnOs(OS.WINDOWS)
class StartScriptTest {
  @TempDir private Path folder;

  private List<String> calledBy(String... arguments) throws Exception {
    Path home = Files.createDirectories(folder.resolve("jdk with blank/bin"));
    File java = home.resolve("java").toFile();
    Files.writeString(
        java.toPath(),
        "#!/bin/sh\nfor a in \"$@\"; do echo \"$a\"; case $a in -XX:ArchiveClassesAtExit=*)"
            + " : > \"${a#*=}\";; esac; done\n");
    assertThat(java.setExecutable(true)).isTrue();
    Path script = folder.resolve("sandslurry");
    Files.writeString(script, Files.readString(Path.of("src", "main", "bin", "sandslurry")));
    Path jar = folder.resolve("sandslurry.jar");
    if (!Files.exists(jar)) {
      Files.createFile(jar);
      assertThat(jar.toFile().setLastModified(1_000_000_000_000L)).isTrue();
    }
    List<String> command = new ArrayList<>(List.of("sh", script.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    builder.environment().put("JAVA_HOME", folder.resolve("jdk with blank").toString());
    builder.environment().put("XDG_CACHE_HOME", folder.resolve("cache").toString());
    Process process = builder.start();
    List<String> lines = process.inputReader().lines().toList();
    assertThat(process.waitFor()).isZero();
    return lines;
  }

  @Test
  void theFirstStartMakesTheArchiveThatTheSecondUses() throws Exception {
    List<String> first = calledBy("judge", "a design.json");
    assertThat(first).anyMatch(a -> a.startsWith("-XX:ArchiveClassesAtExit="));
    assertThat(first).endsWith("judge", "a design.json");

    List<String> second = calledBy("judge", "a design.json");
    assertThat(second).anyMatch(a -> a.startsWith("-XX:SharedArchiveFile="));
    assertThat(second).noneMatch(a -> a.startsWith("-XX:ArchiveClassesAtExit="));
    assertThat(second).endsWith("judge", "a design.json");
  }

  @Test
  void theFormKeepsBothCompilers() throws Exception {
    assertThat(calledBy()).contains("-XX:+TieredCompilation").noneMatch(a -> a.contains("StopAt"));
  }
}
