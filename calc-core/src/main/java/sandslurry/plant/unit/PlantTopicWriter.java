package sandslurry.plant.unit;

import sandslurry.fact.finding.FindingWriter;
import sandslurry.fact.finding.Found;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.units.Kind;

/** What everything that judges a part of a plant needs. */
public interface PlantTopicWriter extends FindingWriter {
  /**
   * Gives a number with its range to a finding.
   *
   * @param found the finding
   * @param name its name in the message file
   * @param kind what it is
   * @param range its least, expected and greatest value in SI
   * @return the finding
   */
  default Found with(Found found, String name, Kind<?> kind, Range range) {
    return found.with(name, kind, range.base(), range.low(), range.high());
  }

  /**
   * Gives a figure to a finding.
   *
   * @param found the finding
   * @param name its name in the message file
   * @param figure the figure
   * @return the finding
   */
  default Found with(Found found, String name, Figure figure) {
    return with(found, name, figure.kind(), figure.range());
  }
}
