package sandslurry.report.section;

import java.util.List;
import sandslurry.report.block.Block;
import sandslurry.study.Cures;

/** The cures that were tried, as blocks. */
public final class CuresSection {
  private CuresSection() {}

  /**
   * What mends the gravest finding on the line.
   *
   * @param cures what was tried
   * @return the blocks
   */
  public static List<Block> of(Cures cures) {
    if (cures.tried().isEmpty()) {
      return List.of(
          new Block.Heading(3, "No single change tried mends it"),
          new Block.Paragraph(cures.why()));
    }
    return List.of(
        new Block.Heading(
            3,
            cures.tried().size() == 1
                ? "Do this (it was tried; the verdict with it)"
                : "Do one of these (each was tried; the verdict with it)"),
        Block.Items.bullets(
            cures.tried().stream().map(cure -> cure.text() + " (" + cure.after() + ")").toList()));
  }
}
