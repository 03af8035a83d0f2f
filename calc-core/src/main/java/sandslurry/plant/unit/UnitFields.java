package sandslurry.plant.unit;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.profile.Levels;
import sandslurry.units.InUnit;
import sandslurry.units.Measure;

/** The fields that every unit of a plant has; here those that separate or split. */
public abstract class UnitFields extends Fields<List<PlantUnit>> {
  /** A small opening or diameter. */
  static final Type<Double> SMALL = Type.quantity(Measure.LENGTH, "0.5 mm", "1000 mm");

  /** The shear rate at which the viscosity of the liquor counts. */
  static final Type<Double> SHEAR = Type.quantity(Measure.SHEAR_RATE, "0.1 1/s", "1000 1/s");

  /** The share of the day that something runs. */
  public static final Type<Double> RUNNING_SHARE =
      CommonLimits.RUNNING_TIME.map(seconds -> seconds / InUnit.DAY.si(1));

  /** What the unit is called. */
  public final Field<String> name =
      needed("name", Type.name("the name of the unit"))
          .label("Name")
          .means("name of the unit")
          .such("Box");

  final Field<List<String>> in =
      needed(
              "in",
              Type.name("the streams that flow in, with commas between them")
                  .map(UnitFields::streams))
          .label("Streams in")
          .means("names of the streams that flow in, with commas between them")
          .such("manure, recycle");
  private final Field<Optional<Double>> floorLevel =
      siteLevel(
          "floorLevel",
          "no level",
          "Level of its floor",
          "level of its floor above the datum of the plant; that of a platform, where it stands on"
              + " one",
          "1.2 m",
          "4 ft");

  UnitFields(String name, String title) {
    super(name, title);
  }

  private static List<String> streams(String text) {
    return Arrays.stream(text.split(","))
        .map(String::strip)
        .filter(stream -> !stream.isEmpty())
        .toList();
  }

  /**
   * The units with their streams, known even where other fields are wrong.
   *
   * @param values the values of these fields
   * @return one; a storage that gives liquor back is two
   */
  public abstract List<Ports> ports(Values values);

  /**
   * The streams of what is dug out of it or spills from it, which leave the plant.
   *
   * @param values the values of these fields
   * @return their names
   */
  public List<String> leaving(Values values) {
    return List.of();
  }

  /**
   * The streams that are pumped out of it.
   *
   * @param values the values of these fields
   * @return their names
   */
  public List<String> pumped(Values values) {
    return List.of();
  }

  final Field<Optional<Double>> siteLevel(
      String field, String standard, String label, String meaning, String... examples) {
    return optional(field, CommonLimits.SITE_LEVEL, "default: " + standard)
        .label(label)
        .means(meaning)
        .such(examples);
  }

  /**
   * The levels of its units, as far as they are known.
   *
   * @param values the values of these fields
   * @return the levels by name of the unit
   */
  public final Map<String, Levels> levels(Values values) {
    Map<String, Levels> all = new LinkedHashMap<>();
    levels(values.number(floorLevel), values)
        .ifPresent(levels -> ports(values).forEach(unit -> all.put(unit.name(), levels)));
    return all;
  }

  /** The levels of its water, by that of its floor if that is given. */
  Optional<Levels> levels(OptionalDouble floorM, Values values) {
    return Optional.empty();
  }

  final List<Ports> one(Values values, List<String> out) {
    return List.of(new Ports(nameOf(values), values.maybe(in).orElse(List.of()), out));
  }

  /** Where a separator stands. */
  final Separator.Place place(
      Values values, Field<String> solids, Field<String> liquid, Field<Double> running) {
    return new Separator.Place(
        values.get(name),
        values.get(in),
        values.get(solids),
        values.get(liquid),
        values.get(running));
  }

  final String nameOf(Values values) {
    return values.maybe(name).orElse("");
  }

  /** A stream that flows out; blank while its name is wrong, which has been told then. */
  static String out(Values values, Field<String> stream) {
    return values.maybe(stream).orElse("");
  }

  final Field<String> stream(String field, String label, String meaning, String example) {
    return needed(field, Type.name(meaning)).label(label).means("name of " + meaning).such(example);
  }

  final Field<Double> running() {
    return standard("runningTime", RUNNING_SHARE, "24 h")
        .label("Running time a day")
        .means("time that it runs each day")
        .such("20 h");
  }

  /** The fields of a unit whose water is held by a weir or outlet of its own. */
  abstract static class HeldFields extends UnitFields {
    private final Field<Optional<Double>> water =
        siteLevel(
            "waterLevel",
            "that of its overflow",
            "Level of its water",
            "level above the datum of the plant of the water that its streams flow into",
            "2.4 m",
            "8 ft");
    private final Field<Optional<Double>> outlet =
        siteLevel(
            "overflowLevel",
            "that of its water",
            "Level of its overflow",
            "level above the datum of the plant of the weir or outlet over which its liquor leaves",
            "2.4 m",
            "8 ft");

    HeldFields(String name, String title) {
      super(name, title);
      aboveFloor(water);
      aboveFloor(outlet);
    }

    @Override
    final Optional<Levels> levels(OptionalDouble floorM, Values values) {
      Optional<Double> in = values.get(water).or(() -> values.get(outlet));
      return in.map(level -> new Levels(floorM, level, level, values.get(outlet).orElse(level)));
    }
  }

  final void aboveFloor(Field<Optional<Double>> level) {
    rule(
        level,
        List.of(floorLevel),
        values ->
            values.get(level).isEmpty()
                || values.get(floorLevel).isEmpty()
                || values.get(level).get() >= values.get(floorLevel).get(),
        values -> "must not be below the floor of the unit");
  }

  /** The fields of a unit of which the kind is not known. */
  static final class CommonFields extends UnitFields {
    CommonFields() {
      super("unit", "unit");
    }

    @Override
    public List<Ports> ports(Values values) {
      return List.of();
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      return Optional.empty();
    }
  }
}
