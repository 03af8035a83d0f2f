package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What can go wrong around the command line: every failure ends with 3 and one line. */
class CommandLineFaultsTest {
  @TempDir private Path folder;

  private Path design;
  private String before;

  private record Run(int code, String out, String err) {}

  @BeforeEach
  void write() throws IOException {
    design = folder.resolve("design.json");
    Designs.example("parlor-line.json").save(design);
    before = Files.readString(design);
  }

  private static Run run(String... args) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
    return new Run(code, out.toString(), err.toString());
  }

  private void refused(Run run, String why) {
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains(why);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void noOutputGoesOntoTheDesignByWhateverNameItIsCalled() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), design);
    Path hard = Files.createLink(folder.resolve("hard.txt"), design);
    Path around = folder.resolve("sub/../design.json");
    for (Path output : List.of(design, link, hard, around)) {
      for (String option : new String[] {"--out", "--drawing"}) {
        refused(
            run("judge", design.toString(), option, output.toString()),
            "is the design file itself");
        assertThat(Files.readString(design)).as(output.toString()).isEqualTo(before);
      }
    }
  }

  @Test
  void aNameOfAFileIsToldOnOneLineAndNotWithoutEnd() {
    refused(
        run("judge", "a\nPASS b.json: line"), "a\\u000aPASS b.json: line: there is no such file");
    refused(run("judge", "x".repeat(5_000)), "xxxx");
    assertThat(run("judge", "x/".repeat(2_000) + "a.json").err()).hasSizeLessThan(900);
    refused(run("judge", ""), "\"\" is no name of a file");
    refused(run("judge", " "), "is no name of a file");
    refused(run("judge", design.toString(), "--out", ""), "is no name of a file");
    refused(run("judge", "@" + design), "there is no such file");
    refused(run("judge", design + "/x.json"), "cannot be read");
    refused(run("judge", folder.toString()), "is a folder");
  }

  @Test
  void ofSeveralFilesEachIsJudgedOrToldAndStandardInputIsReadOnce() throws IOException {
    refused(run("judge", "-", "-"), "read once only");
    Path bad = folder.resolve("bad.json");
    Designs.example("parlor-line.json")
        .with("/lines/0/flow/design", "12")
        .with("/carrier/temperature", "99 degC")
        .save(bad);
    Run both = run("judge", bad.toString(), "nope.json", design.toString());
    assertThat(both.code()).isEqualTo(3);
    assertThat(both.out()).contains("PASS");
    assertThat(both.err().lines())
        .hasSize(4)
        .anyMatch(line -> line.endsWith("bad.json:"))
        .anyMatch(line -> line.contains("99 degC") && line.contains("0.1 degC to 45 degC"))
        .anyMatch(line -> line.contains("\"12\" has no unit") && line.contains("2000 L/s"))
        .anyMatch(line -> line.equals("nope.json: there is no such file"));
  }

  @Test
  void everythingWrongWithANewPenIsToldAtOnce() {
    Run run =
        run(
            "size",
            "--cows",
            "300 %",
            "--sand",
            "9",
            "--interval",
            "8 kg",
            "--length",
            "50 furlongs");
    assertThat(run.code()).isEqualTo(3);
    assertThat(run.err().lines())
        .hasSize(4)
        .satisfiesExactlyInAnyOrder(
            line -> assertThat(line).contains("--cows", "a number is needed here"),
            line -> assertThat(line).contains("--sand", "has no unit"),
            line -> assertThat(line).contains("--interval", "a time is needed here"),
            line -> assertThat(line).contains("--length", "furlongs"));
    refused(run("size", design.toString(), "--unit", "lane", "--capture", "90 %"), "there is none");
    refused(
        run("size", "x.json", "--unit", "a", "--capture", "90 %", "--retention", "5 min"),
        "one aim");
  }

  @Test
  void twoOutputsNeverShareAFile() {
    String one = folder.resolve("one.txt").toString();
    refused(run("judge", design.toString(), "--out", one, "--drawing", one), "two outputs");
    assertThat(Path.of(one)).doesNotExist();
  }

  @Test
  void anOutputThatCannotBeWrittenLeavesTheOldOneAndNoPartOfANewOne() throws IOException {
    Path old = Files.writeString(folder.resolve("old.txt"), "kept");
    Files.setPosixFilePermissions(old, PosixFilePermissions.fromString("r--r--r--"));
    refused(run("judge", design.toString(), "--out", old.toString()), "protected against writing");
    refused(run("judge", design.toString(), "--out", folder.toString()), "it is a folder");
    refused(
        run("judge", design.toString(), "--out", folder.resolve("none/r.txt").toString()),
        "there is no folder");
    assertThat(Files.readString(old)).isEqualTo("kept");
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("design.json", "old.txt");
  }

  @Test
  void aUnitIsSizedForOneAim() throws IOException {
    Path lane = folder.resolve("lane.json");
    Designs.example("settling-lane.json").save(lane);
    Run sized = run("size", lane.toString(), "--unit", "lane", "--clean-out", "20 d");
    assertThat(sized.code()).isZero();
    assertThat(sized.out()).contains("depth for sand");
    refused(run("size", lane.toString(), "--unit", "Box", "--capture", "90 %"), "there are: lane");
    refused(run("size", lane.toString(), "--unit", "lane", "--capture", "120 %"), "at most 100 %");
    refused(
        run("size", lane.toString(), "--unit", "lane", "--retention", "5 %"), "a time is needed");
  }

  @Test
  void aWrongCommandLineIsToldInOneLine() {
    refused(run("judge"), "--help");
    refused(run("juge", "x.json"), "--help");
    refused(run("judge", "x.json", "--units", "furlongs\u001b[2J\nPASS"), "--units");
    refused(run("judge", folder.resolve("no\u202ene.json").toString()), "no such file");
    refused(run("judge", "x.json", "--date", "2026-13-40"), "is no date");
    String[] pen = {"size", "--cows", "1e308", "--sand", "9 t/d", "--interval", "8 h"};
    String[] more = {"--length", "1e300 m"};
    refused(run(Stream.of(pen, more).flatMap(Stream::of).toArray(String[]::new)), "a pen needs");
  }

  private static Process start(Path directory, List<String> options, String... args)
      throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(ChildProgram.command(options, Main.class, args))
            .directory(directory.toFile());
    builder.environment().put("LC_ALL", "C");
    return builder.start();
  }

  private Run process(List<String> options, String... args) throws Exception {
    Process process = start(folder, options, args);
    String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
    return new Run(process.exitValue(), out, err);
  }

  @Test
  void aMachineThatRunsOutOfStackOrMemoryNeverReadsAsACaution() throws Exception {
    Run stack = process(List.of("-Xss180k", "-Xint"), "judge", design.toString());
    assertThat(stack.code()).as(stack.err()).isIn(0, 3);
    Run memory = process(List.of("-Xmx9m"), "judge", design.toString());
    assertThat(memory.code()).as(memory.err()).isIn(0, 3);
    if (memory.code() == 3) {
      assertThat(memory.err()).contains("memory");
    }
  }

  @Test
  void anErrorOfTheMachineEndsWithThreeAndOneLine() {
    StringWriter err = new StringWriter();
    int code =
        Main.guarded(
            new PrintWriter(err),
            () -> {
              throw new StackOverflowError();
            });
    assertThat(code).isEqualTo(3);
    assertThat(err.toString().lines()).hasSize(1).first().asString().contains("StackOverflow");
  }

  @Test
  void aFullDiskBehindStandardOutputIsAFailure() throws Exception {
    Path full = Path.of("/dev/full");
    Assumptions.assumeTrue(Files.exists(full), "this machine has no device that is always full");
    Process process =
        new ProcessBuilder(ChildProgram.command(List.of(), Main.class, "judge", design.toString()))
            .redirectOutput(full.toFile())
            .start();
    String err = new String(process.getErrorStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor()).isEqualTo(3);
    assertThat(err.lines()).hasSize(1).first().asString().contains("could not be written");
    refused(run("judge", design.toString(), "--out", full.toString()), "cannot be written");
    assertThat(Files.isRegularFile(full)).isFalse();
  }

  @Test
  void localeAndEncodingOfTheProcessChangeNothing() throws Exception {
    Designs.example("parlor-line.json").with("/title", "Größe ≥ 3 m³").save(design);
    Run plain = process(List.of(), "judge", "design.json");
    assertThat(plain.code()).as(plain.err()).isZero();
    assertThat(plain.out()).startsWith("Größe ≥ 3 m³");
    for (List<String> options :
        List.of(
            // Another small i and decimal comma; other digits, calendar and day.
            List.of("-Duser.language=tr", "-Duser.country=TR", "-Dfile.encoding=US-ASCII"),
            List.of(
                "-Duser.language=th",
                "-Duser.country=TH",
                "-Duser.variant=TH",
                "-Duser.timezone=Pacific/Kiritimati"))) {
      Run other = process(options, "judge", "design.json");
      assertThat(other).as(options.toString()).isEqualTo(plain);
    }
  }

  @Test
  void anInputThatNeverEndsIsRefused() {
    Path endless = Path.of("/dev/zero");
    Assumptions.assumeTrue(Files.exists(endless), "this machine has no endless device");
    refused(run("judge", endless.toString()), "1048576 bytes");
  }
}
