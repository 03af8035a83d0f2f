package sandslurry.report.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextViewTest {
  @Test
  void aHeadIsWrappedBeforeACell() {
    Block.Table table =
        new Block.Table(
            List.of("velocity at the minimum flow rate [m/s]", "pipe"),
            List.of(List.of("2.53", "4 in Sch 40 (PVC)"), List.of("2.58", "4 in Sch 80 (PVC)")));
    assertThat(new TextView(30).write(List.of(table)).lines())
        .contains("       2.53  4 in Sch 40 (PVC)", "       2.58  4 in Sch 80 (PVC)")
        .allMatch(line -> line.length() <= 30);
  }
}
