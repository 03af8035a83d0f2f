package sandslurry.assessment.observed;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import sandslurry.diagnosis.Bracket;
import sandslurry.diagnosis.SiteReading;

/**
 * What a pressure and a flow rate read on site say, in plain SI.
 *
 * @param line the line as designed against the reading
 * @param pump the pump as new against the reading, when there is one
 * @param explained each cause within the line, solved for its unknown
 * @param second second readings that might tell the causes apart
 * @param filling how fast the bed filled, where a bed explains the reading
 * @param clearing what clears it, where a bed explains the reading and water can
 * @param settling the runs in which sand settles at the flow rate read, as designed
 */
public record ObservedResult(
    LineCheck line,
    Optional<PumpCheck> pump,
    List<Explained> explained,
    List<SecondReading> second,
    Optional<Filling> filling,
    Optional<Clearing> clearing,
    List<String> settling) {
  /** Copies the lists. */
  public ObservedResult {
    explained = List.copyOf(explained);
    second = List.copyOf(second);
    settling = List.copyOf(settling);
  }

  /** A cause within the line. */
  public enum Cause {
    /** Sand lies on the floor; the unknown is its depth over the bore. */
    BED,
    /** The liquid is thicker or thinner; the unknown is its stress over that of the design. */
    LIQUID,
    /** The wall is rougher; the unknown is its roughness [m]. */
    ROUGHNESS
  }

  /** The line against the reading. */
  public enum Agreement {
    /** The difference is within the uncertainty. */
    AS_CALCULATED,
    /** The line takes more pressure than it does clean. */
    MORE,
    /** The line takes less. */
    LESS
  }

  /**
   * The causes that explain the reading.
   *
   * @return those with a value that is not ruled out; those of more pressure only where the line
   *     takes more than it does clean, that of less where it takes less
   */
  public List<Explained> possible() {
    return line.agreement() == Agreement.AS_CALCULATED
        ? List.of()
        : explained.stream().filter(Explained::possible).toList();
  }

  /**
   * A cause.
   *
   * @param cause the cause
   * @return what its unknown must be, if it explains the reading
   */
  public Optional<Bracket> value(Cause cause) {
    return explained.stream()
        .filter(e -> e.cause() == cause)
        .findFirst()
        .flatMap(Explained::values);
  }

  /**
   * The pairs of causes that this reading leaves open.
   *
   * @return each pair once
   */
  public List<List<Cause>> open() {
    List<List<Cause>> pairs = new ArrayList<>();
    List<Explained> possible = possible();
    for (int i = 0; i < possible.size(); i++) {
      for (int j = i + 1; j < possible.size(); j++) {
        pairs.add(List.of(possible.get(i).cause(), possible.get(j).cause()));
      }
    }
    return pairs;
  }

  /**
   * The line as designed against the reading.
   *
   * @param flowM3ps flow rate read [m3/s]
   * @param pressurePa pressure read [Pa]
   * @param calculatedPa pressure that the clean line takes at that flow rate [Pa]
   * @param difference by how much they may differ
   */
  public record LineCheck(
      double flowM3ps, double pressurePa, double calculatedPa, SiteReading.Difference difference) {
    /**
     * By how much they may differ.
     *
     * @return the uncertainty of both together [Pa]
     */
    public double uncertaintyPa() {
      return difference.totalPa();
    }

    /**
     * How they agree.
     *
     * @return the agreement
     */
    public Agreement agreement() {
      double more = pressurePa - calculatedPa;
      return Math.abs(more) <= uncertaintyPa()
          ? Agreement.AS_CALCULATED
          : more > 0 ? Agreement.MORE : Agreement.LESS;
    }
  }

  /**
   * The pump as new against the reading.
   *
   * @param wear share of the head that is lacking, of a piston pump of the flow rate; negative
   *     where there is more
   * @param closedPa pressure with the valve closed, of the pump as it was and as it is now; empty
   *     for a piston pump, which must never run so [Pa]
   */
  public record PumpCheck(Bracket wear, Optional<List<Double>> closedPa) {}

  /**
   * A cause, solved for its unknown.
   *
   * @param cause the cause
   * @param values the values that explain the reading; empty when none does
   * @param enoughSand false for a bed of more sand than has passed since the line was clean
   */
  public record Explained(Cause cause, Optional<Bracket> values, boolean enoughSand) {
    /**
     * Whether it explains the reading.
     *
     * @return true when it has a value and there was enough sand
     */
    public boolean possible() {
      return values.isPresent() && enoughSand;
    }
  }

  /** Which second reading is taken. */
  public enum Second {
    /** The mixture again at the same flow rate, after a flush that clears any bed. */
    AFTER_FLUSH,
    /** Water at the same flow rate, as soon as it fills the line. */
    WATER,
    /** Half of the flow rate, for as long as the reading takes. */
    HALF_FLOW
  }

  /**
   * A second reading.
   *
   * @param kind which it is
   * @param flowM3ps its flow rate [m3/s]
   * @param pressurePa what each possible cause lets one read, with all uncertainties [Pa]
   */
  public record SecondReading(Second kind, double flowM3ps, Map<Cause, Bracket> pressurePa) {
    /** Copies the map in the order of the causes. */
    public SecondReading {
      pressurePa = new TreeMap<>(pressurePa);
    }

    /**
     * Says whether it tells two causes apart.
     *
     * @param pair two causes
     * @return true when what they let one read does not meet
     */
    public boolean distinguishes(List<Cause> pair) {
      Bracket one = pressurePa.get(pair.get(0));
      Bracket other = pressurePa.get(pair.get(1));
      return one != null && other != null && one.apartFrom(other);
    }
  }

  /**
   * How fast the bed filled. Only the time counts in which the line runs.
   *
   * @param bedM3 volume of the bed [m3]
   * @param sandKg sand in the bed [kg]
   * @param leastS time to its depth if all sand that came stayed [s]
   * @param expectedS time if only what the flow over the bed cannot carry stays; empty when the
   *     flow carries all of it before the bed is so deep [s]
   * @param sinceS time since the line was clean, when given [s]
   */
  public record Filling(
      double bedM3,
      double sandKg,
      double leastS,
      OptionalDouble expectedS,
      OptionalDouble sinceS) {}

  /**
   * What clears the bed.
   *
   * @param flowM3ps flow rate of water that carries it off [m3/s]
   * @param volumeM3 volume of water [m3]
   * @param pressurePa pressure at the start of the line at that flow rate over the bed [Pa]
   * @param ratingPa pressure rating of the weakest run, when known [Pa]
   */
  public record Clearing(
      double flowM3ps, double volumeM3, double pressurePa, OptionalDouble ratingPa) {
    /**
     * Whether the pipe bears the flush.
     *
     * @return false when the pressure is above the rating
     */
    public boolean borne() {
      return ratingPa.isEmpty() || pressurePa <= ratingPa.getAsDouble();
    }
  }
}
