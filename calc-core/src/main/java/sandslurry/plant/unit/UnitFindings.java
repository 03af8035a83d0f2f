package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sandslurry.correlation.Bound;
import sandslurry.fact.finding.Finding;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Figure;
import sandslurry.separation.UnitFeed;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What is found of the units of a plant. */
public final class UnitFindings extends PlantTopicWriter {
  private final Function<String, Optional<Figure>> fills;

  /**
   * Begins with no findings.
   *
   * @param units the units in which findings are read
   * @param fills time in which settled sand takes a quarter of a pit, by its name
   */
  public UnitFindings(UnitSystem units, Function<String, Optional<Figure>> fills) {
    super(units);
    this.fills = fills;
  }

  /** Time in which settled sand takes a quarter of a pit; empty when none settles. */
  Optional<Figure> fills(String pit) {
    return fills.apply(pit);
  }

  /** Finds that the liquor of a unit is so thick that it holds its sand. */
  void held(String unit, UnitFeed feed) {
    if (feed.heldShare() > UnitFeed.MUCH_HELD) {
      found("sand-held", Severity.CAUTION, unit)
          .with("share", Kind.PERCENT, feed.heldShare())
          .with("yield", Kind.STRESS, feed.yieldStressPa())
          .why("sand-held")
          .cure("thin-feed")
          .add();
    }
  }

  /**
   * Judges a unit.
   *
   * @param unit its name
   * @param result what it does
   * @return what was found, and what of its kernel lay outside published ranges
   */
  public List<Finding> of(String unit, UnitResult result) {
    findings.clear();
    result.judge(this);
    List<Bound.Excess> excesses = result.excesses();
    if (!excesses.isEmpty()) {
      found("outside", Severity.NOTE, unit)
          .with(
              "excesses",
              shown ->
                  excesses.stream()
                      .map(excess -> excess.describe(shown))
                      .distinct()
                      .collect(Collectors.joining("; ")))
          .why("outside")
          .add();
    }
    return List.copyOf(findings);
  }
}
