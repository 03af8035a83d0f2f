package sandslurry.fact.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.units.Kind;

/** The sheets of equations and the classes that tell the working belong together. */
class EquationsTest {
  private static final Path RESOURCES = Path.of("src/main/resources");

  /** The key of a step, or the choice between two, in the code of a class. */
  private static final Pattern STEP =
      Pattern.compile(
          "(?<!Equation)\\.(?:step|of)\\(\\s*((?:[\\w.()]+ \\? )?\"[\\w-]+\"(?: :"
              + " \"[\\w-]+\")?)[,)]");

  private static final Pattern QUOTED = Pattern.compile("\"([\\w-]+)\"");

  static List<String> sheets() throws IOException {
    try (Stream<Path> files = Files.walk(RESOURCES)) {
      return files
          .map(file -> RESOURCES.relativize(file).toString())
          .filter(file -> file.endsWith(".equations"))
          .map(file -> file.replace(".equations", "").replace('/', '.').replace('\\', '.'))
          .sorted()
          .toList();
    }
  }

  /** An equation that nobody records is not part of the working; one that is not there fails. */
  @ParameterizedTest
  @MethodSource("sheets")
  void theStepsOfAClassAreTheEquationsOfItsSheet(String name) throws Exception {
    Path source = Path.of("src/main/java", name.replace('.', '/') + ".java");
    List<String> keys =
        STEP.matcher(Files.readString(source))
            .results()
            .map(step -> step.group(1))
            .flatMap(step -> QUOTED.matcher(step).results())
            .map(key -> key.group(1))
            .distinct()
            .toList();
    assertThat(keys).containsExactlyInAnyOrderElementsOf(Equations.of(Class.forName(name)).keys());
  }

  @Test
  void anEquationThatIsNotThereIsNamed() {
    assertThatThrownBy(() -> Equations.of(EquationsTest.class).of("mass"))
        .hasMessageContaining("mass in EquationsTest.equations");
    assertThatThrownBy(() -> Equations.of(EquationsTest.class).of("depth"))
        .hasMessageContaining("no source");
  }

  @Test
  void anEntryIsReadWhole() {
    Equation speed = Equations.of(EquationsTest.class).of("speed");
    assertThat(speed)
        .isEqualTo(
            Equation.of(
                "V", "mean velocity", "Q / A", Kind.VELOCITY, "continuity", "Q m3/s, A m2"));
    Equation depth = Equations.of(EquationsTest.class).of("depth", "geometry");
    assertThat(depth)
        .isEqualTo(Equation.search("h", "depth", "the deepest", Kind.BORE, "geometry"));
  }
}
