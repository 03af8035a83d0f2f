package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sandslurry.design.document.DesignDocument;

/** What goes wrong while the program runs: it says so in a line, and nothing is lost. */
class RunTimeFaultsTest {
  /** As other systems than Windows have it: files grow to half a kilobyte or one, and no more. */
  private static final String FULL = "ulimit -f 1; exec \"$@\"";

  private static final int NOT_MOUNTED = 99;

  /** The folder of the process as a file system of its own that takes no writing. */
  private static final String READ_ONLY =
      "exec unshare -m sh -c 'mount --bind . . && mount -o remount,bind,ro \"$PWD\" && cd \"$PWD\""
          + " || exit 99; exec \"$@\"' sh \"$@\"";

  @TempDir private Path folder;

  private static DesignDocument line() {
    return Designs.example("parlor-line.json");
  }

  private Process start(String before, Class<?> main, String... args) throws IOException {
    return start(before, List.of(), main, args);
  }

  private Process start(String before, List<String> options, Class<?> main, String... args)
      throws IOException {
    List<String> all = new ArrayList<>(List.of("sh", "-c", before, "sh"));
    all.addAll(ChildProgram.command(options, main, args));
    try {
      return new ProcessBuilder(all).directory(folder.toFile()).redirectErrorStream(true).start();
    } catch (IOException e) {
      return Assumptions.abort("there is no shell");
    }
  }

  private static String said(Process process) throws Exception {
    String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    return said;
  }

  /** A limit of the size of files stands for a full disk: a write fails in its middle. */
  @Test
  void aFullDiskCostsNoDesign() throws Exception {
    Path file = folder.resolve("a.json");
    line().save(file);
    String before = Files.readString(file);
    assertThat(before).hasSizeGreaterThan(1024);

    Process form = start(FULL, RunTimeFaultsTest.class, file.toString());
    assertThat(said(form).lines())
        .contains(
            "a.json: refused in a line",
            "new.json: refused in a line",
            "still there: typed meanwhile",
            "autosave: refused");
    assertThat(form.exitValue()).isZero();
    assertThat(file).hasContent(before);
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("a.json", "kept");
    assertThat(Recovery.left(folder.resolve("kept")))
        .as("what was kept before the disk was full")
        .singleElement()
        .extracting(left -> left.document().text("/title"))
        .isEqualTo("short");
  }

  /** A form of which the disk fills, or whose folder takes nothing. */
  public static void main(String[] args) throws Exception {
    Path file = Path.of(args[0]);
    FormModel model = new FormModel(Designs.NEVER);
    model.open(file);
    model.edit("/title", "typed meanwhile");
    for (String name : List.of("a.json", "new.json")) {
      try {
        model.save(file.resolveSibling(name));
        System.out.println(name + ": saved");
      } catch (BadInputException e) {
        boolean plain = e.getMessage().matches(".*" + name + " cannot be written: [^\\n]+");
        System.out.println(name + ": refused " + (plain ? "in a line" : e.getMessage()));
      }
    }
    System.out.println(
        (model.isModified() ? "still there: " : "lost: ") + model.document().text("/title"));
    Recovery recovery = new Recovery(file.resolveSibling("kept"));
    keep(recovery, DesignDocument.empty().with("/title", "short"), "before");
    keep(recovery, model.document(), "autosave");
    System.out.flush();
    Runtime.getRuntime().halt(0);
  }

  private static void keep(Recovery recovery, DesignDocument document, String what) {
    try {
      recovery.keep(document, Optional.empty());
      System.out.println(what + ": written");
    } catch (IOException e) {
      System.out.println(what + ": refused");
    }
  }

  @Test
  void aReportThatTheDiskHasNoRoomForEndsWithThreeAndLeavesTheOldOne() throws Exception {
    line().save(folder.resolve("a.json"));
    Files.writeString(folder.resolve("r.txt"), "the report of yesterday");
    for (String option : List.of("--out", "--report")) {
      String output = option.equals("--out") ? "r.txt" : "r.html";
      Process judge = start(FULL, Main.class, "judge", "a.json", option, output);
      assertThat(said(judge)).contains("The report cannot be written to " + output + ": ");
      assertThat(judge.exitValue()).isEqualTo(3);
    }
    assertThat(folder.resolve("r.txt")).hasContent("the report of yesterday");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("a.json", "r.txt");
  }

  @Test
  void aFolderThatIsGoneIsToldAndTheDesignStays() throws Exception {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    Path file = inner.resolve("a.json");
    line().save(file);
    FormModel model = new FormModel(Designs.NEVER);
    model.open(file);
    model.edit("/title", "typed meanwhile");
    Files.delete(file);
    Files.delete(inner);
    assertThatThrownBy(() -> model.save(file))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("there is no folder");
    assertThat(model.isModified()).isTrue();
    Path elsewhere = folder.resolve("b.json");
    model.save(elsewhere);
    assertThat(DesignDocument.load(elsewhere).text("/title")).isEqualTo("typed meanwhile");
    assertThat(model.isModified()).isFalse();
  }

  /** The superuser may write into every folder but not onto a file system mounted read-only. */
  @Test
  void aFolderThatTakesNoFileIsToldAndTheOldFileStays() throws Exception {
    Path file = folder.resolve("a.json");
    line().save(file);
    String before = Files.readString(file);
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    try {
      boolean superuser = Files.isWritable(folder);
      Process form =
          start(superuser ? READ_ONLY : "exec \"$@\"", RunTimeFaultsTest.class, file.toString());
      String said = said(form);
      Assumptions.assumeFalse(
          form.exitValue() >= NOT_MOUNTED || said.contains("unshare"),
          "no file system can be mounted");
      assertThat(said.lines())
          .contains(
              "a.json: refused in a line",
              "new.json: refused in a line",
              "still there: typed meanwhile",
              "before: refused",
              "autosave: refused");
      assertThat(form.exitValue()).isZero();
      assertThat(file).hasContent(before);
      assertThat(folder.toFile().list()).containsExactly("a.json");
    } finally {
      Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    }
  }

  /** Changes are told by what a file holds and never by its time, which no clock can then spoil. */
  @Test
  void aClockThatIsSetBackHidesNoChangeAndLosesNothing() throws Exception {
    Path file = folder.resolve("a.json");
    line().save(file);
    FileTime tomorrow = FileTime.from(Instant.now().plus(1, ChronoUnit.DAYS));
    Files.setLastModifiedTime(file, tomorrow);
    Path writing = Files.writeString(folder.resolve(".saving-other.part"), "half");
    Files.setLastModifiedTime(writing, tomorrow);
    FormModel model = new FormModel(Designs.NEVER);
    model.open(file);
    model.edit("/title", "after the clock was set back");
    model.save(file);
    assertThat(DesignDocument.load(file).text("/title")).isEqualTo("after the clock was set back");
    assertThat(writing).as("what another program is writing").hasContent("half");

    FormFile seen = FormFile.seen(file);
    FileTime time = Files.getLastModifiedTime(file);
    line().with("/title", "by another program").save(file);
    Files.setLastModifiedTime(file, time);
    assertThat(seen.isChanged()).isTrue();
    Files.setLastModifiedTime(file, FileTime.from(Instant.EPOCH));
    assertThat(FormFile.seen(file).isChanged()).isFalse();

    Path kept = folder.resolve("kept");
    for (FileTime when : List.of(tomorrow, FileTime.from(Instant.EPOCH))) {
      Recovery recovery = new Recovery(kept);
      recovery.keep(line(), Optional.of(seen));
      for (Path each : Files.list(kept).toList()) {
        Files.setLastModifiedTime(each, when);
        // Whoever kept it is gone.
        if (each.toString().endsWith(".lock")) {
          Files.delete(each);
        }
      }
    }
    assertThat(Recovery.left(kept)).hasSize(2);
  }

  @Test
  void aNameThatTheLanguageOfTheProcessCannotWriteIsToldInALine() throws Exception {
    StringWriter err = new StringWriter();
    for (String[] args :
        new String[][] {
          {"judge", "a\0b.json"}, {"size", "a\0b.json"}, {"judge", "a.json", "--out", "a\0b.txt"}
        }) {
      int code = Main.run(new PrintWriter(new StringWriter()), new PrintWriter(err), args);
      assertThat(code).isEqualTo(3);
    }
    assertThat(err.toString().lines())
        .hasSize(3)
        .allMatch(line -> line.contains("is no name of a file here: "))
        .noneMatch(line -> line.contains("Exception"));

    line().save(folder.resolve("größe.json"));
    for (String setting : List.of("C", "C.UTF-8")) {
      Process judge =
          start("LC_ALL=" + setting + "; export LC_ALL; exec \"$@\" gr*.json", Main.class, "judge");
      String said = said(judge);
      assertThat(said).doesNotContain("Exception");
      assertThat(judge.exitValue()).as(said).isIn(0, 3);
      assertThat(said).contains(judge.exitValue() == 0 ? "PASS" : "is no name of a file here: ");
    }
  }

  /** The largest example with its report, in a quarter of a gigabyte. */
  @Test
  void aSmallMemoryIsEnoughForThePlantWithItsReport() throws Exception {
    Designs.example("lines-of-a-plant.json").save(folder.resolve("a.json"));
    Process judge =
        start(
            "exec \"$@\"", List.of("-Xmx256m"), Main.class, "judge", "a.json", "--report", "a.pdf");
    String said = said(judge);
    assertThat(said).containsPattern("\\b(PASS|CAUTION|FAIL)\\b").doesNotContain("WARNING");
    assertThat(judge.exitValue()).as(said).isLessThan(3);
    assertThat(folder.resolve("a.pdf")).isNotEmptyFile();
  }
}
