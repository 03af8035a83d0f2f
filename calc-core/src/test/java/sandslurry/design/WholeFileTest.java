package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.design.document.WholeFile;

class WholeFileTest {
  @TempDir private Path folder;

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private String[] names() {
    return folder.toFile().list();
  }

  @Test
  void thePermissionsOfTheOldFileAreKept() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "old");
    for (String permissions : new String[] {"rw-r-----", "rw-rw-rw-", "rwx------"}) {
      Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
      WholeFile.write(file, bytes("new"));
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
          .isEqualTo(permissions);
    }
  }

  @Test
  void aNewFileHasThePermissionsOfAnyOther() throws IOException {
    Path other = Files.writeString(folder.resolve("other"), "x");
    Path file = folder.resolve("a");
    WholeFile.write(file, bytes("new"));
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
  }

  @Test
  void aProtectedFileIsNotReplaced() throws IOException {
    Path file = Files.writeString(folder.resolve("a"), "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    assertThatThrownBy(() -> WholeFile.write(file, bytes("new")))
        .isInstanceOf(AccessDeniedException.class);
    assertThat(file).hasContent("old");
    assertThat(names()).containsExactly("a");
  }

  @Test
  void aLinkIsFollowedAlsoToAFileThatIsNotThereYet() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("real"));
    WholeFile.write(link, bytes("one"));
    WholeFile.write(link, bytes("two"));
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(folder.resolve("real")).hasContent("two");
    Path ring = Files.createSymbolicLink(folder.resolve("ring"), Path.of("ring"));
    assertThatThrownBy(() -> WholeFile.write(ring, bytes("x"))).isInstanceOf(IOException.class);
  }

  @Test
  void whatAKilledWriterLeftIsSweptAwayAndWhatIsBeingWrittenIsNot() throws IOException {
    Path old = Files.writeString(folder.resolve(".saving-1.part"), "x");
    Files.setLastModifiedTime(old, FileTime.from(Instant.now().minus(Duration.ofHours(2))));
    Files.writeString(folder.resolve(".saving-2.part"), "x");
    WholeFile.write(folder.resolve("a"), bytes("new"));
    assertThat(names()).containsExactlyInAnyOrder("a", ".saving-2.part");
  }

  /** A pipe stands for all devices: a mistake here must not cost the machine one of its own. */
  @Test
  void aPipeStaysAPipe() throws Exception {
    Path pipe = folder.resolve("pipe");
    try {
      Assumptions.assumeTrue(
          new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0, "no pipes here");
    } catch (IOException e) {
      Assumptions.abort("no pipes here");
    }
    CompletableFuture<String> read =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return Files.readString(pipe);
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    WholeFile.write(pipe, bytes("through"));
    assertThat(read.get(20, TimeUnit.SECONDS)).isEqualTo("through");
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }

  @Test
  void twoThreadsAndTwoProcessesNeverMixAndNeverLeaveHalf() throws Exception {
    Path file = folder.resolve("a");
    WholeFile.write(file, bytes("0".repeat(50_000)));
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                WholeFileTest.class.getName(),
                file.toString())
            .inheritIO()
            .start();
    ExecutorService threads = Executors.newFixedThreadPool(3);
    List<Future<Void>> writers = new ArrayList<>();
    for (String letter : List.of("1", "2", "3")) {
      Callable<Void> writer =
          () -> {
            for (int i = 0; i < 50; i++) {
              WholeFile.write(file, bytes(letter.repeat(50_000)));
            }
            return null;
          };
      writers.add(threads.submit(writer));
    }
    for (int i = 0; i < 200; i++) {
      String read = Files.readString(file);
      assertThat(read).hasSize(50_000);
      assertThat(read.chars().distinct().count()).isOne();
    }
    for (Future<Void> writer : writers) {
      writer.get(1, TimeUnit.MINUTES);
    }
    threads.shutdown();
    assertThat(other.waitFor(1, TimeUnit.MINUTES)).isTrue();
    assertThat(other.exitValue()).isZero();
    assertThat(names()).containsExactly("a");
  }

  /** The other process. */
  public static void main(String[] args) throws IOException {
    for (int i = 0; i < 50; i++) {
      WholeFile.write(Path.of(args[0]), bytes("4".repeat(50_000)));
    }
  }
}
