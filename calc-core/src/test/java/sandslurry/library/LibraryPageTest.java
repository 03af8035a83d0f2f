package sandslurry.library;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.PrintStream;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.junit.jupiter.api.parallel.Resources;
import si.uom.quantity.Density;
import tech.units.indriya.AbstractUnit;

/**
 * Every program of the page on the library compiles, runs and prints what stands under it; {@code
 * -Dlibrary.renew=true} writes that anew.
 */
class LibraryPageTest {
  private static final Path PAGE = Path.of("..", "docs", "library.md");
  private static final Pattern IMPORTS =
      Pattern.compile("```java imports\n(.*?)```\n", Pattern.DOTALL);
  private static final Pattern PROGRAM =
      Pattern.compile("```java\n(.*?)```\n(?:\n```text\n(.*?)```\n)?", Pattern.DOTALL);
  private static final boolean RENEW = Boolean.getBoolean("library.renew");

  @Test
  @ResourceLock(Resources.SYSTEM_OUT)
  void everyProgramPrintsWhatThePageShows(@TempDir Path folder) throws Exception {
    String page = Files.readString(PAGE);
    Matcher imports = IMPORTS.matcher(page);
    assertThat(imports.find()).isTrue();
    List<String> bodies = new ArrayList<>();
    List<String> shown = new ArrayList<>();
    Matcher program = PROGRAM.matcher(page);
    while (program.find()) {
      bodies.add(program.group(1));
      shown.add(program.group(2));
    }
    assertThat(bodies).hasSize(10);
    assertThat(compile(folder, imports.group(1), bodies)).isEmpty();
    List<String> printed = new ArrayList<>();
    try (URLClassLoader classes =
        new URLClassLoader(
            new URL[] {folder.toUri().toURL()}, LibraryPageTest.class.getClassLoader())) {
      for (int i = 0; i < bodies.size(); i++) {
        printed.add(run(classes.loadClass("Program" + i)));
      }
    }
    if (RENEW) {
      renew(page, printed);
    } else {
      assertThat(printed).isEqualTo(shown);
    }
  }

  /**
   * A flow rate for a length, a velocity for a flow rate, two lengths for a slope: each refused.
   */
  @Test
  void aQuantityOfAnotherKindDoesNotCompile(@TempDir Path folder) throws IOException {
    String imports = "import static sandslurry.library.Amounts.*; import sandslurry.library.*;\n";
    String line = "Line line = Line.of(Line.pipe(\"ASTM D1785\", \"4 in\", \"Sch 40\"))";
    assertThat(compile(folder, imports, List.of(line + ".length(ft(300));"))).isEmpty();
    for (String wrong :
        List.of(
            line + ".length(lps(30));",
            line + ".length(300);",
            line + ".length(ft(300)); line.headLoss(lps(30));",
            "Lane.of(m(30), m(3), m(1));",
            "Mixture.ofWater(m(1));",
            "Mixture.ofWater(degC(10)).byVolume(mm(3));")) {
      assertThat(compile(folder, imports, List.of(wrong))).as(wrong).contains("incompatible");
    }
  }

  private static void renew(String page, List<String> printed) throws IOException {
    StringBuilder renewed = new StringBuilder();
    Matcher program = PROGRAM.matcher(page);
    for (String output : printed) {
      assertThat(program.find()).isTrue();
      program.appendReplacement(
          renewed,
          Matcher.quoteReplacement(
              "```java\n" + program.group(1) + "```\n\n```text\n" + output + "```\n"));
    }
    Files.writeString(PAGE, program.appendTail(renewed));
  }

  private static String compile(Path folder, String imports, List<String> bodies)
      throws IOException {
    List<String> arguments =
        new ArrayList<>(List.of("-d", folder.toString(), "-cp", classPath(), "-nowarn"));
    for (int i = 0; i < bodies.size(); i++) {
      Path file = folder.resolve("Program" + i + ".java");
      Files.writeString(
          file,
          imports
              + "public class Program"
              + i
              + " { public static void main(String[] args) {\n"
              + bodies.get(i)
              + "}}\n");
      arguments.add(file.toString());
    }
    ByteArrayOutputStream errors = new ByteArrayOutputStream();
    int result =
        ToolProvider.getSystemJavaCompiler()
            .run(null, errors, errors, arguments.toArray(String[]::new));
    return result == 0 ? "" : errors.toString(StandardCharsets.UTF_8);
  }

  /** The library and the quantities that it speaks in, wherever they were loaded from. */
  private static String classPath() {
    return Stream.of(Line.class, Quantity.class, AbstractUnit.class, Density.class)
        .map(type -> type.getProtectionDomain().getCodeSource().getLocation())
        .map(place -> Path.of(URI.create(place.toString())).toString())
        .collect(Collectors.joining(File.pathSeparator));
  }

  private static String run(Class<?> program) throws ReflectiveOperationException {
    PrintStream before = System.out;
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    System.setOut(new PrintStream(printed, true, StandardCharsets.UTF_8));
    try {
      program.getMethod("main", String[].class).invoke(null, (Object) new String[0]);
    } finally {
      System.setOut(before);
    }
    return printed.toString(StandardCharsets.UTF_8).replace(System.lineSeparator(), "\n");
  }
}
