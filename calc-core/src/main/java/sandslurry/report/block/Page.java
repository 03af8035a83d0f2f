package sandslurry.report.block;

import java.util.ArrayList;
import java.util.List;
import sandslurry.units.UnitSystem;

/**
 * Chapters as they are written.
 *
 * @param units the units of the report
 * @param blocks all blocks so far
 */
public record Page(UnitSystem units, List<Block> blocks) {
  /**
   * Begins without a block.
   *
   * @param units the units of the report
   */
  public Page(UnitSystem units) {
    this(units, new ArrayList<>());
  }
}
