package sandslurry.fact.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.units.Kind;

/** The sheets of equations and the classes that tell the working belong together. */
class EquationsTest {
  private static final Path RESOURCES = Path.of("src/main/resources");

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
  void eachEquationOfASheetIsAConstantOfItsClass(String name) throws Exception {
    Class<?> owner = Class.forName(name);
    List<String> constants = new ArrayList<>();
    for (Field field : owner.getDeclaredFields()) {
      if (field.getType() == Equation.class) {
        constants.add(field.getName().toLowerCase(Locale.ROOT).replace('_', '-'));
      }
    }
    assertThat(constants).containsAll(Equations.of(owner).keys());
  }

  @Test
  void anEquationThatIsNotThereIsNamed() {
    assertThatThrownBy(() -> Equations.of(EquationsTest.class).of("mass", Kind.MASS))
        .hasMessageContaining("mass in EquationsTest.equations");
    assertThatThrownBy(() -> Equations.of(EquationsTest.class).of("depth", Kind.BORE))
        .hasMessageContaining("no source");
  }

  @Test
  void anEntryIsReadWhole() {
    Equation speed = Equations.of(EquationsTest.class).of("speed", Kind.VELOCITY);
    assertThat(speed)
        .isEqualTo(
            Equation.of(
                "V", "mean velocity", "Q / A", Kind.VELOCITY, "continuity", "Q m3/s, A m2"));
    Equation depth = Equations.of(EquationsTest.class).of("depth", Kind.BORE, "geometry");
    assertThat(depth)
        .isEqualTo(Equation.search("h", "depth", "the deepest", Kind.BORE, "geometry"));
  }
}
