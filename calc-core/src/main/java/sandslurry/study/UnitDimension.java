package sandslurry.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sandslurry.design.document.DesignDocument;
import sandslurry.units.Kind;
import sandslurry.units.Measure;
import sandslurry.units.UnitSystem;

/**
 * Sizes of a unit that are changed together, each by the same factor.
 *
 * @param name what is changed, for a person
 * @param pointers where they stand in the design
 * @param valuesSi what they are in the design [m, m3]
 * @param kind length or volume
 * @param low the least that a design takes [m, m3]
 * @param high the greatest
 */
record UnitDimension(
    String name,
    List<String> pointers,
    List<Double> valuesSi,
    Kind<?> kind,
    double low,
    double high) {
  /** No size is tried that is more than so many times larger or smaller. */
  private static final double FACTOR = 10;

  private static final double STEP = 1.25;

  private static final double LEAST_SIDE_M = 0.2;
  private static final double MOST_SIDE_M = 1000;
  private static final double LEAST_DEPTH_M = 0.05;
  private static final double MOST_DEPTH_M = 20;
  private static final double LEAST_M3 = 0.1;
  private static final double MOST_M3 = 200_000;

  static UnitDimension side(DesignDocument document, String name, List<String> pointers) {
    return length(document, name, pointers, "", LEAST_SIDE_M, MOST_SIDE_M);
  }

  static UnitDimension depth(
      DesignDocument document, String name, List<String> pointers, String standard) {
    return length(document, name, pointers, standard, LEAST_DEPTH_M, MOST_DEPTH_M);
  }

  private static UnitDimension length(
      DesignDocument document,
      String name,
      List<String> pointers,
      String standard,
      double low,
      double high) {
    List<Double> values =
        pointers.stream()
            .map(
                at ->
                    Measure.LENGTH.si(
                        Measure.LENGTH.parse(document.has(at) ? document.text(at) : standard)))
            .toList();
    return new UnitDimension(name, pointers, values, Kind.LENGTH, low, high);
  }

  static UnitDimension volume(DesignDocument document, String name, List<String> pointers) {
    List<String> there = pointers.stream().filter(document::has).toList();
    return new UnitDimension(
        name,
        there,
        there.stream()
            .map(at -> Measure.VOLUME.si(Measure.VOLUME.parse(document.text(at))))
            .toList(),
        Kind.VOLUME,
        LEAST_M3,
        MOST_M3);
  }

  /** The smallest factor that is tried, and that the design can be read with. */
  double least(DesignDocument document) {
    double least =
        Math.max(1 / FACTOR, valuesSi.stream().mapToDouble(value -> low / value).max().orElse(1));
    while (least < 1 && exact(document, least).read().design().isEmpty()) {
      least = Math.min(1, least * STEP);
    }
    return least;
  }

  /** The largest factor that is tried, and that the design can be read with. */
  double most(DesignDocument document) {
    double most =
        Math.min(FACTOR, valuesSi.stream().mapToDouble(value -> high / value).min().orElse(1));
    while (most > 1 && exact(document, most).read().design().isEmpty()) {
      most = Math.max(1, most / STEP);
    }
    return most;
  }

  /** The design with these sizes, to all digits. */
  DesignDocument exact(DesignDocument document, double factor) {
    String unit = kind.measure().units().get(0).symbol();
    DesignDocument changed = document;
    for (int i = 0; i < pointers.size(); i++) {
      changed =
          changed.with(
              pointers.get(i),
              String.format(Locale.ROOT, "%.12g %s", factor * valuesSi.get(i), unit));
    }
    return changed;
  }

  /** The sizes as they are typed, rounded up. */
  List<String> typed(double factor, UnitSystem units) {
    List<String> texts = new ArrayList<>();
    valuesSi.forEach(value -> texts.add(units.showAtLeast(kind, factor * value)));
    return List.copyOf(texts);
  }

  /** The design with sizes as they are typed. */
  DesignDocument with(DesignDocument document, List<String> texts) {
    DesignDocument changed = document;
    for (int i = 0; i < pointers.size(); i++) {
      changed = changed.with(pointers.get(i), texts.get(i));
    }
    return changed;
  }
}
