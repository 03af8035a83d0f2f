package sandslurry.fact.finding;

import java.util.function.Function;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/** What a sentence of a finding holds: a number with its kind, or a name. */
public sealed interface Value {
  /**
   * The value as text.
   *
   * @param form how it is wanted; empty for the usual form
   * @param units the units to show it in
   * @return the text
   */
  String show(String form, UnitSystem units);

  /**
   * A number.
   *
   * @param kind what it is
   * @param si its value in SI
   */
  record Number(Kind<?> kind, double si) implements Value {
    /** From here on a time is shown in days [s]. */
    private static final double LONG_S = 172_800;

    /** From here on it is shown in hours [s]. */
    private static final double HOURS_S = 7200;

    /** No line rests longer [s]. */
    private static final double YEARS_S = 365 * LONG_S / 2;

    /** A time up to this is shown in seconds [s]. */
    private static final double SHORT_S = 120;

    @Override
    public String show(String form, UnitSystem units) {
      return switch (form) {
        case "" -> units.show(kind, si);
        case "up" -> units.showAtLeast(kind, si);
        case "down" -> units.showAtMost(kind, si);
        case "number" -> units.number(kind, si);
        case "rough" -> units.number(kind, si, 0, 2 * si);
        case "duration" -> duration(units, si);
        case "longest" -> units.showAtLeast(suits(si), si);
        default -> throw new IllegalArgumentException("no form \"" + form + "\" of a number");
      };
    }

    /**
     * A time in the unit that suits its size.
     *
     * @param units the units to show it in
     * @param seconds the time [s]
     * @return for example {@code 71.6 s}, {@code 14 min}, {@code 8.7 h} or {@code 6.7 d}
     */
    static String duration(UnitSystem units, double seconds) {
      return seconds < YEARS_S ? units.show(suits(seconds), seconds) : "more than a year";
    }

    private static Kind<?> suits(double seconds) {
      return seconds < SHORT_S
          ? Kind.TIME
          : seconds < HOURS_S ? Kind.MINUTES : seconds < LONG_S ? Kind.HOURS : Kind.DAYS;
    }
  }

  /**
   * A number with its range, shown with no more digits than the range supports.
   *
   * @param kind what it is
   * @param si its expected value in SI
   * @param lowSi the least that it may be
   * @param highSi the most that it may be
   */
  record Ranged(Kind<?> kind, double si, double lowSi, double highSi) implements Value {
    @Override
    public String show(String form, UnitSystem units) {
      return switch (form) {
        case "" -> units.show(kind, si, lowSi, highSi);
        case "low" -> units.low(kind, lowSi, highSi);
        default -> throw new IllegalArgumentException("no form \"" + form + "\" of a range");
      };
    }
  }

  /**
   * A name: of a run, a unit, a correlation, a state.
   *
   * @param text the name
   */
  record Name(String text) implements Value {
    @Override
    public String show(String form, UnitSystem units) {
      return text;
    }
  }

  /**
   * Something with numbers of its own, such as a list of what lies outside its range.
   *
   * @param text how it reads in given units
   */
  record Shown(Function<UnitSystem, String> text) implements Value {
    @Override
    public String show(String form, UnitSystem units) {
      return text.apply(units);
    }
  }
}
