package sandslurry.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.DesignTextException;
import sandslurry.design.document.Problem;

class DesignDocumentTest {
  @TempDir Path folder;

  private static DesignDocument line() {
    return Documents.line();
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void whatIsWrittenReadsBackTheSame() throws DesignTextException {
    DesignDocument document = line();
    assertThat(DesignDocument.parse(document.toString())).isEqualTo(document);
    assertThat(DesignDocument.parse(document.toString())).hasSameHashCodeAs(document);
    assertThat(document.toString()).endsWith("}\n").doesNotContain("\r");
  }

  @Test
  void aSpoiltTextIsKeptAsItWasTyped() throws DesignTextException {
    DesignDocument spoilt = line().with("/lines/0/route/runs/0/length", "300 furlongs");
    DesignDocument again = DesignDocument.parse(spoilt.toString());
    assertThat(again.text("/lines/0/route/runs/0/length")).isEqualTo("300 furlongs");
    assertThat(again.read().design()).isEmpty();
  }

  @Test
  void aChangeMakesANewDocumentAndLeavesTheOldOne() {
    DesignDocument before = line();
    DesignDocument after = before.with("/lines/0/flow/design", "500 gpm");
    assertThat(after.text("/lines/0/flow/design")).isEqualTo("500 gpm");
    assertThat(before.text("/lines/0/flow/design")).isEqualTo("460 gpm");
    assertThat(after.with("/lines/0/flow/design", "460 gpm")).isEqualTo(before);
    assertThat(before.with("/lines/0/flow/design", "460 gpm")).isSameAs(before);
  }

  @Test
  void aBlankTextRemovesTheField() {
    DesignDocument document = line();
    assertThat(document.with("/lines/0/flow/minimum", "  ").has("/lines/0/flow/minimum")).isFalse();
    assertThat(document.with("/lines/0/flow/minimum", ""))
        .isEqualTo(document.without("/lines/0/flow/minimum"));
    assertThat(document.without("/no/such/field")).isSameAs(document);
  }

  @Test
  void aChangeMakesThePartsOnItsWay() {
    DesignDocument document =
        DesignDocument.empty().with("/lines/0/route/runs/0/pipe/size", "4 in");
    assertThat(document.size("/lines/0/route/runs")).isOne();
    assertThat(document.text("/lines/0/route/runs/0/pipe/size")).isEqualTo("4 in");
    assertThat(document.has("/lines/0/route/runs/1")).isFalse();
    assertThat(document.json("/lines/0/route/runs/0")).isEqualTo("{\"pipe\":{\"size\":\"4 in\"}}");
    assertThat(document.json("/lane")).isEmpty();
    assertThatThrownBy(() -> document.with("/lines/0/route/runs/5/length", "3 m"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void entriesOfAListAreInsertedAndRemoved() {
    DesignDocument document =
        line()
            .insert("/lines/0/route/runs", 0, "{\"length\": \"10 m\"}")
            .insert("/lane/x", 0, "\"a\"");
    assertThat(document.size("/lines/0/route/runs")).isEqualTo(2);
    assertThat(document.text("/lines/0/route/runs/0/length")).isEqualTo("10 m");
    assertThat(document.text("/lines/0/route/runs/1/length")).isEqualTo("300 ft");
    assertThat(document.text("/lane/x/0")).isEqualTo("a");
    assertThat(document.without("/lines/0/route/runs/0").without("/lane")).isEqualTo(line());
    assertThatThrownBy(() -> document.insert("/lines/0/route/runs", 0, "{"))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"sand\": }",
        "{\"title\": \"a\",}",
        "{\n \"title\" \"a\"}",
        "{'title': 1}",
        "{\"a\": NaN}",
        "{\"title\": \"a\"",
        "{\"title\": \"a\"} {}",
        "{\"title\": \"a\", \"title\": \"b\"}",
        "{\"sand\": {\"d50\": 1, \"d50\": 2}}"
      })
  void textThatIsNoJsonIsRefusedWithLineAndColumn(String text) {
    assertThatThrownBy(() -> DesignDocument.parse(text))
        .isInstanceOf(DesignTextException.class)
        .hasMessageMatching("(?s)line \\d+, column \\d+: .+");
  }

  @Test
  void theLineOfASlipIsTheLineWhereItStands() {
    assertThatThrownBy(() -> DesignDocument.parse("{\n  \"title\": \"a\",\n  \"notes\": b\n}"))
        .hasMessageStartingWith("line 3, column 1");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "[]", "3", "null", "\"text\""})
  void aFileHoldsOneObject(String text) {
    assertThatThrownBy(() -> DesignDocument.parse(text))
        .isInstanceOf(DesignTextException.class)
        .hasMessageContaining("one JSON object");
  }

  @Test
  void aFileWithTheMarkThatSomeEditorsPutInFrontIsRead() throws Exception {
    Path file = folder.resolve("a.json");
    Files.writeString(file, "\ufeff" + line(), StandardCharsets.UTF_8);
    assertThat(DesignDocument.load(file)).isEqualTo(line());
  }

  @Test
  void aFileThatIsNoTextIsRefusedInWords() throws Exception {
    Path file = folder.resolve("a.json");
    Files.write(file, new byte[] {'{', (byte) 0xff, (byte) 0xfe, '}'});
    assertThatThrownBy(() -> DesignDocument.load(file))
        .isInstanceOf(DesignTextException.class)
        .hasMessageContaining("UTF-8");
  }

  @Test
  void aFileIsSavedWholeAndNothingElseIsLeft() throws Exception {
    Path file = folder.resolve("line.json");
    line().save(file);
    assertThat(DesignDocument.load(file)).isEqualTo(line());
    line().with("/title", "Übung ≥ 3 m³").save(file);
    assertThat(DesignDocument.load(file).text("/title")).isEqualTo("Übung ≥ 3 m³");
    assertThat(names()).containsExactly("line.json");
  }

  @Test
  void aFailedSaveLeavesTheFileAsItWas() throws Exception {
    Path file = folder.resolve("line.json");
    line().save(file);
    String before = Files.readString(file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    assertThatThrownBy(() -> line().with("/title", "other").save(file))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("protected against writing");
    assertThat(names()).containsExactly("line.json");
    assertThat(Files.readString(file)).isEqualTo(before);
  }

  @Test
  void aSaveIntoAFolderThatIsNotThereLeavesNothing() throws Exception {
    assertThatThrownBy(() -> line().save(folder.resolve("none").resolve("a.json")))
        .isInstanceOf(IOException.class);
    assertThat(names()).isEmpty();
  }

  @Test
  void aFolderIsNotOverwritten() throws Exception {
    Path target = Files.createDirectory(folder.resolve("a.json"));
    Files.writeString(target.resolve("inside"), "x");
    assertThatThrownBy(() -> line().save(target)).isInstanceOf(IOException.class);
    assertThat(names()).containsExactly("a.json");
    assertThat(target.resolve("inside")).hasContent("x");
  }

  @Test
  void aLinkStaysALinkAndItsFileIsWritten() throws Exception {
    Path real = folder.resolve("real.json");
    line().save(real);
    Path link = folder.resolve("link.json");
    Files.createSymbolicLink(link, real);
    line().with("/title", "changed").save(link);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(DesignDocument.load(real).text("/title")).isEqualTo("changed");
    assertThat(names()).containsExactly("link.json", "real.json");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1e400",
        "1E-400",
        "0.1",
        "1.10",
        "100.0",
        "12345678901234567890.123456789",
        "1e5",
        "-0.25",
        "9007199254740993",
        "3"
      })
  void aNumberIsSavedAsTheNumberThatItWas(String number) throws DesignTextException {
    DesignDocument document = DesignDocument.parse("{\"flow\": {\"design\": " + number + "}}");
    DesignDocument again = DesignDocument.parse(document.with("/title", "other").toString());
    assertThat(new BigDecimal(again.json("/lines/0/flow/design")))
        .isEqualTo(new BigDecimal(number));
    assertThat(document.json("/lines/0/flow/design")).doesNotContain("\"");
  }

  @Test
  void halfOfAPairOfCharactersSurvivesASave() throws Exception {
    DesignDocument half = line().with("/title", "a\ud800b").with("/notes", "\udc00");
    Path file = folder.resolve("half.json");
    half.save(file);
    assertThat(DesignDocument.load(file)).isEqualTo(half);
    assertThat(half.read().design().orElseThrow().title()).isEqualTo("a\\ud800b");
  }

  @Test
  void nullIsAProblemAndNotAFieldThatIsLeftOut() throws DesignTextException {
    for (String place :
        new String[] {
          "/notes", "/lines/0/pump", "/lines/0/route/runs/0", "/lines/0/flow/minimum"
        }) {
      DesignDocument with = line().with(place, "here");
      DesignDocument spoilt = DesignDocument.parse(with.toString().replace("\"here\"", "null"));
      assertThat(spoilt.read().problems())
          .as(place)
          .anyMatch(p -> p.field().equals(place) && p.message().startsWith("is null"));
    }
  }

  @Test
  void aProblemNeverRepeatsALongValueNorCharactersThatCannotBeSeen() {
    for (String value :
        new String[] {
          "9".repeat(10_000), "x".repeat(10_000), "3 " + "y".repeat(390), "\u202e3 m"
        }) {
      DesignDocument spoilt =
          line().with("/lines/0/flow/design", value).with("/lines/0/pump/kind", value);
      assertThat(spoilt.read().problems())
          .isNotEmpty()
          .allMatch(p -> p.toString().length() < 900)
          .noneMatch(p -> p.toString().contains("\u202e"));
      assertThat(spoilt.text("/lines/0/flow/design")).isEqualTo(value);
    }
  }

  @Test
  void whatIsTooLargeIsRefusedWithTheNumberThatIsAllowed() {
    DesignDocument large = line();
    for (int i = 0; i < 201; i++) {
      large = large.insert("/lines/0/pump/curve", 0, "{}");
    }
    assertThat(large.with("/title", "t".repeat(401)).read().problems())
        .extracting(Problem::toString)
        .anyMatch(p -> p.matches("/lines/0/pump/curve: has 20\\d entries: at most 200 are allowed"))
        .contains("/title: has 401 characters: at most 400 are allowed")
        .noneMatch(p -> p.startsWith("/lines/0/pump/curve/"));
  }

  @Test
  void thousandsOfProblemsAreCountedNotListed() {
    DesignDocument spoilt = line().without("/lines/0/pump");
    for (int i = 0; i < 60; i++) {
      spoilt = spoilt.with("/x" + i, "1").with("/lines/0/flow/y" + i, "1").with("/sand/z" + i, "1");
    }
    assertThat(spoilt.read().problems()).hasSize(101);
    assertThat(spoilt.read().problems().get(100).message()).contains("80 more problems");
  }
}
