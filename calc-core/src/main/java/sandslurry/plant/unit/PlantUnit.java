package sandslurry.plant.unit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sandslurry.correlation.Correlation;
import sandslurry.fact.Kinds;
import sandslurry.plant.Stream;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.separation.capture.CaptureRelations;

/**
 * A unit of a plant, as it is given. Values are in SI, as the kernels that it describes take them.
 *
 * <p>A kind of unit is one class: its fields, how it divides its feed, what it does at a balance,
 * what may fail in it and how it is looked after. A new separator is named in {@link Separator},
 * another unit here: as one that is permitted, and by its fields.
 */
public sealed interface PlantUnit permits Separator, SplitterUnit, PitUnit, StorageUnit {
  /** What a unit does, for what asks about all units of a plant. */
  enum Role {
    /** Sand sinks in it: a larger area captures more. */
    SETTLES,
    /** It works by the pressure of its feed pump, and cuts by one of several models. */
    SPINS,
    /** It holds back what is coarse. */
    SCREENS,
    /** It divides or joins streams. */
    DIVIDES,
    /** It holds liquor between its pumps: batches end in it. */
    HOLDS,
    /** Streams end in it. */
    STORES
  }

  /** What may be out in a plant. */
  enum Part {
    /** Nothing: the plant as it should be. */
    NONE,
    /** A pump of a pit. */
    PUMP,
    /** The screw of a box. */
    SCREW,
    /** Another separator: all that comes to it passes on. */
    SEPARATOR,
    /** A lane of which another takes the turn. */
    LANE_OF_SEVERAL
  }

  /**
   * What the unit is called.
   *
   * @return its name
   */
  String name();

  /**
   * The streams in.
   *
   * @return their names
   */
  List<String> inlets();

  /**
   * The streams out.
   *
   * @return their names, solids first
   */
  List<String> outlets();

  /**
   * The streams of liquor out that run by gravity, unless a line pumps them: no sand that is raked
   * or dug out, no cake.
   *
   * @return their names
   */
  List<String> byGravity();

  /**
   * The streams out that are pumped.
   *
   * @return their names
   */
  default List<String> pumped() {
    return List.of();
  }

  /**
   * The kind, as in files.
   *
   * @return for example "box"
   */
  String kind();

  /**
   * What it does.
   *
   * @return its role in the plant
   */
  Role role();

  /**
   * The unit as it divides its feed in a network.
   *
   * @param c the conditions under which it runs
   * @return the unit
   */
  Unit built(Conditions c);

  /**
   * What it does at a balance.
   *
   * @param c the conditions of the balance
   * @param balance a steady balance of the plant
   * @return the result of its kernel, with its figures, findings and steps
   */
  UnitResult at(Conditions c, SteadyBalance balance);

  /**
   * What may fail in it.
   *
   * @return the parts by the name of the unit, or of the stream of the pump
   */
  Map<String, Part> parts();

  /**
   * How it is looked after.
   *
   * @param shown the numbers of the design that this is said with
   * @return the lines of its operation sheet; empty when there is nothing to look after
   */
  Optional<Care> care(Care.Numbers shown);

  /**
   * The energy that it takes, as far as its design says it.
   *
   * @param c the conditions under which it runs
   * @param meanOverDay the mean over the day of what follows from the balances
   * @return the use; empty when it takes none or none is known
   */
  default Optional<EnergyUse> energy(
      Conditions c, ToDoubleFunction<ToDoubleFunction<SteadyBalance>> meanOverDay) {
    return Optional.empty();
  }

  /**
   * The unit with something out: all leaves a separator by its second outlet, that of the liquid.
   *
   * @param c the conditions under which it runs
   * @param out name of the separator, or stream of the pump
   * @return the unit as it is when neither it nor a part of it is out
   */
  default Unit built(Conditions c, String out) {
    return name().equals(out)
        ? new Splitter(name(), inlets(), outlets(), List.of(0.0, 1.0))
        : built(c);
  }

  /**
   * Time in which the unit fills with the solids that it parts, nothing taking them away.
   *
   * @param solids its stream of solids
   * @return time [s]; empty when it does not fill
   */
  default OptionalDouble fullAfterS(Stream solids) {
    return OptionalDouble.empty();
  }

  /**
   * Time that what flows in stays in the unit while it runs.
   *
   * @param feed what flows in on the average of the day
   * @param share share of the time in which it sees that
   * @return its liquid over the flow rate [s]; empty where it holds none, or nothing flows
   */
  default OptionalDouble staysS(Stream feed, double share) {
    return OptionalDouble.empty();
  }

  /**
   * Share of the time in which it sees its feed at a balance, as its split there took it.
   *
   * @param balance the balance
   * @return the share
   */
  default double seen(SteadyBalance balance) {
    return 1;
  }

  /**
   * Share of the time in which it sees a feed that is given for a moment of the day.
   *
   * @param c the conditions under which it runs
   * @return the share
   */
  default double seen(Conditions c) {
    return 1;
  }

  /**
   * The published correlation by which it is judged.
   *
   * @return the one that decides; empty where none does
   */
  default Optional<Correlation> decidedBy() {
    return role() == Role.SETTLES ? Optional.of(CaptureRelations.TURBULENT) : Optional.empty();
  }

  /**
   * Lanes of which one runs at a time.
   *
   * @return how many there are; none where it is no lane
   */
  default int lanes() {
    return 0;
  }

  /**
   * The pumps of the unit.
   *
   * @return their flow rates by their streams [m3/s]
   */
  default Map<String, Double> pumps() {
    return Map.of();
  }

  /**
   * This unit where it is a pit.
   *
   * @return the pit, or the pool of a storage
   */
  default Optional<PitUnit> asPit() {
    return Optional.empty();
  }

  /**
   * This unit where it is a storage.
   *
   * @return the storage
   */
  default Optional<StorageUnit> asStorage() {
    return Optional.empty();
  }

  /**
   * All kinds of unit that a plant is built of, by their fields.
   *
   * @return the kinds; a storage that gives liquor back is read as two units
   */
  static Kinds<List<PlantUnit>> kinds() {
    return new Kinds<>(
        "Kind",
        "the kind of unit",
        new UnitFields.CommonFields(),
        java.util.stream.Stream.concat(
                Separator.fields().stream(),
                java.util.stream.Stream.of(
                    new SplitterUnit.SplitterFields(),
                    new PitUnit.PitFields(),
                    new StorageUnit.StorageFields()))
            .toList());
  }
}
