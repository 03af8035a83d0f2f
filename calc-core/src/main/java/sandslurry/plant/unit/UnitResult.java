package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.correlation.Bound;
import sandslurry.fact.step.Trace;
import sandslurry.plant.Figure;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.separation.UnitFeed;
import sandslurry.units.Kind;

/** What a unit does at a balance: the result of its kernel is worked out once and read here. */
public interface UnitResult {
  /** Of a unit that does nothing to say anything of. */
  UnitResult NONE = List::of;

  /**
   * What it does in numbers.
   *
   * @return figures with their ranges; empty when nothing flows
   */
  List<Figure> figures();

  /**
   * What lay outside the published ranges.
   *
   * @return each bound that was left
   */
  default List<Bound.Excess> excesses() {
    return List.of();
  }

  /**
   * Judges it.
   *
   * @param found takes what is found
   */
  default void judge(UnitFindings found) {}

  /**
   * Tells how its numbers come about.
   *
   * @param trace what keeps the steps
   */
  default void steps(Trace trace) {}

  /**
   * The result where the unit is a lane.
   *
   * @return how the lane fills
   */
  default Optional<LaneUnitResult> lane() {
    return Optional.empty();
  }

  /** Figures without a range, one after another. */
  final class Figures {
    private final List<Figure> figures = new ArrayList<>();

    Figures add(String what, Kind<?> kind, double value) {
      return add(what, kind, Range.of(value));
    }

    Figures add(String what, Kind<?> kind, Range range) {
      figures.add(new Figure(what, kind, range));
      return this;
    }

    /** The feed of a unit that lets sand settle, while it runs. */
    Figures feed(Stream feed, UnitFeed seen) {
      return add("feed while it runs", Kind.FLOW, seen.mixtureM3ps())
          .add("sand-free solids of the feed", Kind.PERCENT, feed.totalSolids())
          .add("viscosity of the liquor", Kind.VISCOSITY, seen.liquid().viscosityPaS());
    }

    /** Cautious, likely and hopeful, which rounding may put out of order. */
    Figures band(String what, List<Double> outlooks) {
      return add(what, Kind.PERCENT, Range.over(outlooks.get(1), outlooks, share -> share));
    }

    List<Figure> all() {
      return List.copyOf(figures);
    }
  }
}
