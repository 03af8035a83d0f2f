package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.design.document.DesignDocument;
import sandslurry.design.document.TypedInput;
import sandslurry.golden.Shipped;
import sandslurry.report.block.TextView;

/** Who signs a report reads in it all that was assumed. */
class AssumptionsTest {
  /** After it stands what was assumed in the part of a row. */
  private static final String ASSUMED = "ssumed: ";

  static List<String> files() {
    return Shipped.files();
  }

  @ParameterizedTest
  @MethodSource("files")
  void everyDefaultIsNamedAsAnAssumptionOfItsPart(String file) throws Exception {
    DesignDocument document = DesignDocument.load(Shipped.FOLDER.resolve(file));
    String assumed =
        new TextView(100_000)
            .write(
                DesignReport.of(
                    document,
                    Shipped.assessment(document),
                    Optional.empty(),
                    new TitleBlock(file, "", "")))
            .lines()
            .filter(line -> line.contains(ASSUMED) || line.contains("(assumed)"))
            .map(line -> line.contains("(assumed)") ? line : line.split(ASSUMED, 2)[1])
            .collect(Collectors.joining("\n"));
    assertThat(document.inputs().stream().filter(TypedInput::assumed))
        .filteredOn(input -> !input.text().matches("no level|that of its .*"))
        // The row of the sand says once that these are of its shape.
        .extracting(input -> input.label().replace("Shape, ", "") + ": ")
        .isNotEmpty()
        .allSatisfy(label -> assertThat(assumed).contains(label));
  }
}
