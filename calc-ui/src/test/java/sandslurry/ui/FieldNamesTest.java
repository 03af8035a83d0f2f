package sandslurry.ui;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldNamesTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "/lines/0/route/runs/0/length; Line 1, route, run 1, length",
        "/lines/0/pump/curve/2/head; Line 1, pump, curve point 3, head",
        "/lane/sandStorageDepth; Lane, sand storage depth",
        "/sand/gradation/0/passing; Sand, sieve 1, passing",
        "/plant/units/1/reaches/0/width; Plant, unit 2, reach 1, width",
        "/sand; Sand"
      })
  void aFieldIsNamedInWords(String pointer, String words) {
    assertThat(FieldNames.words(pointer)).isEqualTo(words);
  }
}
