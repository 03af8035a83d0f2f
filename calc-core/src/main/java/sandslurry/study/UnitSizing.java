package sandslurry.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import sandslurry.assessment.Assessment;
import sandslurry.design.document.DesignDocument;
import sandslurry.numeric.Interruption;
import sandslurry.numeric.Roots;
import sandslurry.numeric.UnsolvedException;
import sandslurry.study.UnitTrials.Feed;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * Which size a unit of a plant, or the settling lane of a design, needs for an aim. Each size is
 * typed into the design and looked at by the model of the unit itself, in the balance of the whole
 * plant for its average feed, so that nothing is judged here that a report would judge otherwise.
 *
 * @param unit name of the unit
 * @param aim what is wanted of it
 * @param wanted how much of it, in SI
 * @param rows each dimension with each feed; empty when no size of it serves the aim
 */
public record UnitSizing(String unit, Aim aim, double wanted, List<Row> rows) {
  /** The settling lane of the design itself, where a unit is asked for. */
  public static final String LANE = "lane";

  private static final double FINER = 1.005;
  private static final int REFINED = 20;

  /** Copies the list. */
  public UnitSizing {
    rows = List.copyOf(rows);
  }

  /** What is wanted of a unit. */
  public enum Aim {
    /** Share of the sand that flows in that it captures. */
    CAPTURE(Kind.PERCENT, "captures"),
    /** Sand that the plant recovers of the sand flushed. */
    RECOVERY(Kind.PERCENT, "the plant recovers"),
    /** Time that what flows in stays. */
    RETENTION(Kind.HOURS, "stays"),
    /** Time between two clean-outs. */
    INTERVAL(Kind.DAYS, "cleaned out every");

    private final Kind<?> kind;
    private final String words;

    /**
     * Reads how much is wanted.
     *
     * @param text a share or a time with its unit
     * @return the value in SI
     * @throws IllegalArgumentException if it is not one above 0, or a share above 100 %
     */
    public double parse(String text) {
      boolean share = kind == Kind.PERCENT;
      double si =
          share
              ? Measure.FRACTION.si(Measure.FRACTION.parse(text))
              : Measure.TIME.si(Measure.TIME.parse(text));
      if (!(si > 0) || share && si > 1) {
        throw new IllegalArgumentException(
            "what is wanted must be above 0"
                + (share ? " and at most 100 %" : "")
                + " but was "
                + text);
      }
      return si;
    }

    Aim(Kind<?> kind, String words) {
      this.kind = kind;
      this.words = words;
    }

    /**
     * How it is shown.
     *
     * @return its kind of quantity
     */
    public Kind<?> kind() {
      return kind;
    }

    /**
     * The heading of a column of it.
     *
     * @return for example "captures"
     */
    public String words() {
      return words;
    }
  }

  /**
   * What comes of a size.
   *
   * @param value what is wanted of it, in SI
   * @param halfM upper bound of the coarsest class of which less than half is captured; empty where
   *     there is none, or nothing is asked of grains [m]
   * @param finerShare share of the sand that flows in that lies in such classes
   * @param tooThick whether the liquor is too thick for anything to settle
   */
  public record Measured(double value, OptionalDouble halfM, double finerShare, boolean tooThick) {}

  /**
   * A dimension and a feed.
   *
   * @param dimension what is changed
   * @param feed what flows in, in words
   * @param typed the sizes that do, as they are typed; empty when none of those tried does
   * @param pointers where they are typed
   * @param measured grains and liquor there
   * @param smallest whether it is the smallest that was tried
   */
  public record Row(
      String dimension,
      String feed,
      List<String> typed,
      List<String> pointers,
      Measured measured,
      boolean smallest) {
    /** Copies the lists. */
    public Row {
      typed = List.copyOf(typed);
      pointers = List.copyOf(pointers);
    }

    /**
     * The surface of a unit of which length and width are sized together.
     *
     * @return their product [m2]; empty for anything else
     */
    public OptionalDouble areaM2() {
      return typed.size() == 2
              && pointers.get(0).endsWith("/length")
              && pointers.get(1).endsWith("/width")
          ? OptionalDouble.of(
              typed.stream()
                  .mapToDouble(text -> Measure.LENGTH.si(Measure.LENGTH.parse(text)))
                  .reduce(1, (one, other) -> one * other))
          : OptionalDouble.empty();
    }

    /**
     * The design with the sizes typed back.
     *
     * @param document the design that was sized
     * @return the design; the same when no size does
     */
    public DesignDocument in(DesignDocument document) {
      DesignDocument changed = document;
      for (int i = 0; i < typed.size(); i++) {
        changed = changed.with(pointers.get(i), typed.get(i));
      }
      return changed;
    }
  }

  /**
   * The units that can be sized.
   *
   * @param document the design
   * @return names of boxes, lanes and pits of its plant, and {@link #LANE} where it has a lane
   */
  public static List<String> units(DesignDocument document) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < document.size("/plant/units"); i++) {
      String at = "/plant/units/" + i;
      if (List.of("box", "lane", "pit").contains(document.text(at + "/kind"))) {
        names.add(document.text(at + "/name"));
      }
    }
    if (document.has("/lane")) {
      names.add(LANE);
    }
    return names;
  }

  /**
   * Sizes a unit.
   *
   * @param document the design
   * @param before what came of the design
   * @param unit name of a box, lane or pit of its plant, or {@link #LANE}
   * @param aim what is wanted of it
   * @param wanted how much, in SI
   * @return the sizes
   */
  public static UnitSizing of(
      DesignDocument document, Assessment before, String unit, Aim aim, double wanted) {
    UnitTrials trials = UnitTrials.of(document, before, unit, aim);
    List<Row> rows = new ArrayList<>();
    for (UnitDimension dimension : dimensions(document, unit, aim)) {
      for (Feed feed : trials.feeds()) {
        rows.add(
            new Search(document, trials, dimension, feed, wanted, before.design().units()).row());
      }
    }
    return new UnitSizing(unit, aim, wanted, rows);
  }

  private static List<UnitDimension> dimensions(DesignDocument document, String unit, Aim aim) {
    Optional<String> found =
        IntStream.range(0, document.size("/plant/units"))
            .mapToObj(i -> "/plant/units/" + i)
            .filter(at -> document.text(at + "/name").equals(unit))
            .findFirst();
    if (found.isEmpty()) {
      return aim == Aim.RECOVERY ? List.of() : lane(document, List.of("/lane"), aim);
    }
    String at = found.get();
    return switch (document.text(at + "/kind")) {
      case "box" -> box(document, at, aim);
      case "lane" ->
          lane(
              document,
              IntStream.range(0, document.size(at + "/reaches"))
                  .mapToObj(i -> at + "/reaches/" + i)
                  .toList(),
              aim);
      case "pit" ->
          aim == Aim.RETENTION || aim == Aim.INTERVAL
              ? List.of(
                  UnitDimension.volume(
                      document,
                      "capacity, at the same depth",
                      List.of(at + "/capacity", at + "/weirVolume")))
              : List.of();
      default -> List.of();
    };
  }

  private static List<UnitDimension> box(DesignDocument document, String at, Aim aim) {
    if (aim == Aim.INTERVAL) {
      return List.of();
    }
    UnitDimension area =
        UnitDimension.side(document, "length and width", List.of(at + "/length", at + "/width"));
    return aim == Aim.RETENTION
        ? List.of(
            area, UnitDimension.depth(document, "water depth", List.of(at + "/waterDepth"), "1 m"))
        : List.of(area);
  }

  private static List<UnitDimension> lane(DesignDocument document, List<String> reaches, Aim aim) {
    List<UnitDimension> all = new ArrayList<>();
    all.add(UnitDimension.side(document, "length", each(reaches, "/length")));
    all.add(UnitDimension.side(document, "width", each(reaches, "/width")));
    if (aim == Aim.INTERVAL) {
      all.add(
          UnitDimension.depth(
              document, "depth for sand", each(reaches, "/sandStorageDepth"), "300 mm"));
    }
    return all;
  }

  private static List<String> each(List<String> reaches, String field) {
    return reaches.stream().map(reach -> reach + field).toList();
  }

  /** The search of one dimension with one feed. */
  private record Search(
      DesignDocument document,
      UnitTrials trials,
      UnitDimension dimension,
      Feed feed,
      double wanted,
      UnitSystem units) {
    private Measured at(double factor) {
      Interruption.check();
      return trials.measure(dimension.exact(document, factor), feed);
    }

    private double excess(double factor) {
      return at(factor).value() - wanted;
    }

    Row row() {
      double least = dimension.least(document);
      double most = dimension.most(document);
      Measured largest = at(most);
      if (!(largest.value() >= wanted)) {
        return row(List.of(), List.of(), largest, false);
      }
      if (excess(least) >= 0) {
        return typed(least, true);
      }
      try {
        return typed(Roots.betweenDecades(dimension.name(), this::excess, least, most), false);
      } catch (UnsolvedException e) {
        return row(List.of(), List.of(), largest, false);
      }
    }

    /** The sizes rounded up as they are typed, larger by little until they do. */
    private Row typed(double factor, boolean smallest) {
      double now = factor;
      List<String> texts = dimension.typed(now, units);
      Measured measured = trials.measure(dimension.with(document, texts), feed);
      for (int i = 0; i < REFINED && !(measured.value() >= wanted); i++) {
        now *= FINER;
        texts = dimension.typed(now, units);
        measured = trials.measure(dimension.with(document, texts), feed);
      }
      boolean enough = measured.value() >= wanted;
      return row(
          enough ? texts : List.of(),
          enough ? dimension.pointers() : List.of(),
          measured,
          smallest);
    }

    private Row row(
        List<String> texts, List<String> pointers, Measured measured, boolean smallest) {
      return new Row(dimension.name(), feed.words(), texts, pointers, measured, smallest);
    }
  }

  /**
   * The row that satisfies every feed: the largest size of each dimension.
   *
   * @return one row a dimension that some feed has a size for
   */
  public List<Row> governing() {
    List<Row> largest = new ArrayList<>();
    for (String dimension : rows.stream().map(Row::dimension).distinct().toList()) {
      List<Row> all = rows.stream().filter(row -> row.dimension().equals(dimension)).toList();
      if (all.stream().noneMatch(row -> row.typed().isEmpty())) {
        all.stream()
            .max((one, other) -> Double.compare(size(one), size(other)))
            .ifPresent(largest::add);
      }
    }
    return largest;
  }

  private static double size(Row row) {
    String number = row.typed().get(0).split(" ")[0];
    return Double.parseDouble(number);
  }
}
