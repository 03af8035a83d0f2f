package sandslurry.plant.unit;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import sandslurry.correlation.Bound;
import sandslurry.fact.finding.Findings;
import sandslurry.fact.finding.Severity;
import sandslurry.plant.Figure;
import sandslurry.separation.UnitFeed;
import sandslurry.units.Kind;

/**
 * What is found of the units of a plant.
 *
 * @param fills time in which settled sand takes a quarter of a pit, by its name
 * @param findings takes what is found
 */
public record UnitFindings(Function<String, Optional<Figure>> fills, Findings findings)
    implements PlantTopicWriter {
  /** Time in which settled sand takes a quarter of a pit; empty when none settles. */
  Optional<Figure> fillsIn(String pit) {
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
   * Judges a unit: what was found, and what of its kernel lay outside published ranges.
   *
   * @param unit its name
   * @param result what it does
   */
  public void of(String unit, UnitResult result) {
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
  }
}
