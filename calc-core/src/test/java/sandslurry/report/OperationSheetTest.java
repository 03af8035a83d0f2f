package sandslurry.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.assessment.Assessment;
import sandslurry.golden.Shipped;
import sandslurry.report.block.Block;
import sandslurry.report.block.TextView;

class OperationSheetTest {
  private static Assessment assess(String example) throws Exception {
    return Shipped.assessment(example);
  }

  @Test
  void everyUnitHasItsSheetWithTheNumbersOfTheDesign() throws Exception {
    Assessment dairy = assess("closed-loop-dairy.json");
    List<Block> sheet = OperationSheet.of(dairy);
    String text = new TextView(100).write(sheet).replaceAll("\\s+", " ");
    for (String unit :
        List.of(
            "Box", "Cyclone", "Fibre separator", "Reception pit", "Recycle tank", "First cell")) {
      assertThat(sheet)
          .anyMatch(
              block ->
                  block instanceof Block.Marked card
                      && List.of(card.mark().split(", ")).contains(unit));
    }
    // Usual levels of a pit of 80 m3 up to its weir, moisture and freeboard as typed.
    assertThat(text)
        .contains("common practice, no source")
        .contains("stop at 16.0 m3, start at 56.0 m3, alarm at 72.0 m3")
        .contains("water 16.0 %")
        .contains("freeboard of 300 mm");
    assertThat(text).doesNotContain("NaN", "{");
  }

  @Test
  void aLineAloneHasNone() throws Exception {
    assertThat(OperationSheet.of(assess("parlor-line.json"))).isEmpty();
  }
}
