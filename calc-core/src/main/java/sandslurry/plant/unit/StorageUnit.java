package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Seen;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Stream;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.profile.Levels;
import sandslurry.units.InUnit;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * A storage, where streams end until it is emptied.
 *
 * @param name its name
 * @param inlets streams in
 * @param pond its shape
 * @param months the months of the year: names, days, rain and evaporation; their inflow is 0 here;
 *     none where the plant has a year
 * @param stormM depth of the design storm [m]
 * @param freeboardM freeboard [m]
 * @param settledSandM3 sand on its floor now [m3]
 * @param runoffAreaM2 area that drains into it times the share of its rain that does [m2]
 */
public record StorageUnit(
    String name,
    List<String> inlets,
    Pond pond,
    List<StorageAccount.Month> months,
    double stormM,
    double freeboardM,
    double settledSandM3,
    double runoffAreaM2)
    implements PlantUnit {
  /** Copies the list. */
  public StorageUnit {
    months = List.copyOf(months);
  }

  @Override
  public List<String> outlets() {
    return List.of();
  }

  @Override
  public List<String> byGravity() {
    return List.of();
  }

  @Override
  public String kind() {
    return "storage";
  }

  @Override
  public Role role() {
    return Role.STORES;
  }

  @Override
  public Optional<StorageUnit> asStorage() {
    return Optional.of(this);
  }

  @Override
  public Unit built(Conditions c) {
    return new End(name, inlets);
  }

  /** Where streams end. */
  private record End(String name, List<String> inlets) implements Unit {
    @Override
    public List<String> outlets() {
      return List.of();
    }

    @Override
    public Split split(Stream feed) {
      return new Split(new double[0][], List.of());
    }
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    return UnitResult.NONE;
  }

  @Override
  public Map<String, Part> parts() {
    return Map.of();
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    return Optional.of(
        new Care(
            "look for a leak, a burrow and a broken fence.",
            "read and note the level; keep the freeboard of "
                + shown.show(Kind.DEPTH, freeboardM)
                + " and the room of the storm free.",
            "the level rises faster than planned; the crust or the bank moves; sand shows at the"
                + " inlet.",
            "empty it within"
                + shown
                    .lasts()
                    .map(figure -> " " + figure.shown(shown.units()))
                    .orElse(" the days of the permit")
                + "; agitate only as the cautions say."));
  }

  /** The fields of a storage, and of the pool from which liquor is pumped back. */
  static final class StorageFields extends UnitFields {
    private static final Type<Double> WATER_DEPTH = Type.quantity(Measure.LENGTH, "0 m", "5 m");
    private static final String SETTLING =
        "a storage that gives liquor back needs the share of these that settles in it";
    private static final String YEAR = "/plant/year";
    private static final DrawFields PUMP = new DrawFields();

    private final Field<Double> length =
        needed("floorLength", CommonLimits.SIDE)
            .label("Floor length")
            .means("length of the floor")
            .such("60 m", "200 ft");
    private final Field<Double> width =
        needed("floorWidth", CommonLimits.SIDE)
            .label("Floor width")
            .means("width of the floor")
            .such("40 m", "130 ft");
    private final Field<Double> side =
        standard("sideSlope", Type.quantity(Measure.NUMBER, "0", "5"), "0")
            .label("Side slope, run to rise")
            .means("run over rise of the sides, 0 for walls")
            .such("2");
    private final Field<Double> depth =
        needed("depth", CommonLimits.DEPTH)
            .label("Depth to the top")
            .means("depth to the top")
            .such("4 m", "13 ft");
    private final Field<List<Map.Entry<String, Double>>> pumps =
        list("pumps", PUMP)
            .label("Pumps that give liquor back")
            .means(
                "pumps that give liquor back; the storage is then shown as its pool and what"
                    + " stays");
    private final Field<Double> sand =
        standard("sandSettling", CommonLimits.SHARE, "100 %")
            .label("Sand that settles")
            .means("share of the sand that settles in it")
            .such("100 %");
    private final Field<Optional<Double>> fibre =
        optional("fibreSettling", CommonLimits.SHARE, "needed with pumps")
            .label("Fibre that settles")
            .means("share of the fibre that settles in it")
            .such("60 %");
    private final Field<Optional<Double>> fines =
        optional("finesSettling", CommonLimits.SHARE, "needed with pumps")
            .label("Fines that settle")
            .means("share of the fines that settles in it")
            .such("40 %");
    private final Field<Optional<Double>> pool =
        optional("poolVolume", CommonLimits.PIT, "default: half")
            .label("Volume while pumped")
            .means("volume that it holds while it gives liquor back")
            .such("5000 m3", "1000000 gal");
    private final Field<Double> storm =
        standard("storm", WATER_DEPTH, "0 mm")
            .label("Design storm")
            .means("depth of the design storm")
            .such("130 mm", "5 in");
    private final Field<Double> freeboard =
        standard("freeboard", WATER_DEPTH, "0.3 m")
            .label("Freeboard")
            .means("freeboard, below the depth")
            .such("0.3 m", "1 ft");
    private final Field<Double> settled =
        standard("settledSand", CommonLimits.CONTENTS, "0 m3")
            .label("Settled sand, in bulk")
            .means("sand on the floor now, in bulk")
            .such("100 m3", "3500 ft3");
    private final Field<List<StorageAccount.Month>> months =
        list("months", new MonthFields())
            .label("Months, without a year of the plant")
            .means(
                "the months of its year, one entry of 365 d will do; not with a year of the plant");
    private final Field<Double> runoffArea =
        standard("runoffArea", Type.quantity(Measure.AREA, "0 m2", "1000000 m2"), "0 m2")
            .label("Area that drains into it")
            .means("area beside the storage whose rain runs into it")
            .such("500 m2", "5000 ft2");
    private final Field<Double> runoffShare =
        standard("runoffShare", CommonLimits.SHARE, "100 %")
            .label("Rain that runs off")
            .means("share of the rain on that area that runs into the storage")
            .such("90 %");

    StorageFields() {
      super("storage", "storage");
      begins("{\"months\": [{\"name\": \"year\", \"length\": \"365 d\"}]}");
      for (Field<?> field : List.of(fibre, fines)) {
        neededWhen(field, this::givesBack, SETTLING);
        shownWhen(field, this::givesBack);
      }
      shownWhen(pool, this::givesBack);
      rule(
          months,
          List.of(),
          values -> !values.get(months).isEmpty() || values.seen().has(YEAR),
          values ->
              "a storage needs the months of its year, one entry of 365 d will do, or the plant a"
                  + " year");
      onlyWhen(months, seen -> !seen.has(YEAR), "the year of the plant says this");
      shownWhen(runoffShare, seen -> seen.has(runoffArea));
      rule(
          freeboard,
          List.of(depth),
          values -> values.get(freeboard) < values.get(depth),
          values -> "must be below the depth");
    }

    private boolean givesBack(Seen seen) {
      return !seen.here().at(pumps.name()).entries().isEmpty();
    }

    private static String poolOf(String name) {
      return "Pool of " + name;
    }

    private static String staysIn(String name) {
      return "stays in " + name;
    }

    @Override
    protected void check(Values values) {
      PUMP.tellTwice(values.inside(pumps));
    }

    @Override
    public List<Ports> ports(Values values) {
      if (!givesBack(values.seen())) {
        return one(values, List.of());
      }
      String name = nameOf(values);
      List<String> out = new ArrayList<>(pumped(values));
      out.addAll(List.of(staysIn(name), PitUnit.settledIn(name)));
      return List.of(
          new Ports(poolOf(name), values.maybe(in).orElse(List.of()), out),
          new Ports(name, List.of(PitUnit.settledIn(name), staysIn(name)), List.of()));
    }

    /** It is emptied to its floor and filled up to its freeboard. */
    @Override
    Optional<Levels> levels(OptionalDouble floorM, Values values) {
      double full = floorM.orElse(0) + values.get(depth) - values.get(freeboard);
      return floorM.isEmpty()
          ? Optional.empty()
          : Optional.of(new Levels(floorM, floorM.getAsDouble(), full, full));
    }

    @Override
    public List<String> pumped(Values values) {
      return PUMP.streams(values.inside(pumps));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      Pond pond =
          new Pond(values.get(length), values.get(width), values.get(side), values.get(depth));
      List<PlantUnit> units = new ArrayList<>();
      String called = values.get(name);
      List<String> kept = values.get(in);
      if (givesBack(values.seen())) {
        Optional<PitUnit> made = pool(values, pond);
        if (made.isEmpty()) {
          return Optional.empty();
        }
        units.add(made.get());
        kept = List.of(PitUnit.settledIn(called), staysIn(called));
      }
      List<String> ends = kept;
      return values.made(
          depth,
          () -> {
            units.add(
                new StorageUnit(
                    called,
                    ends,
                    pond,
                    values.get(months),
                    values.get(storm),
                    values.get(freeboard),
                    values.get(settled),
                    values.get(runoffArea) * values.get(runoffShare)));
            return List.copyOf(units);
          });
    }

    private Optional<PitUnit> pool(Values values, Pond pond) {
      String called = values.get(name);
      double full = values.get(pool).orElse(pond.volumeM3() / 2);
      return values.made(
          pool,
          () ->
              new PitUnit(
                  new Pit(
                      poolOf(called),
                      values.get(in),
                      DrawFields.draws(values.get(pumps)),
                      Optional.of(staysIn(called)),
                      full,
                      pond.volumeM3(),
                      full),
                  Optional.empty(),
                  pond.areaM2(values.get(depth)),
                  Optional.of(
                      new GivenFloor(
                          PitUnit.settledIn(called),
                          values.get(sand),
                          values.get(fibre).orElseThrow(),
                          values.get(fines).orElseThrow()))));
    }

    /** A month of the year of a storage. */
    private static final class MonthFields extends Fields<StorageAccount.Month> {
      private static final Type<Double> RAIN = Type.quantity(Measure.LENGTH, "0 mm", "2000 mm");

      private final Field<String> name =
          needed("name", Type.name("the month"))
              .label("Name")
              .means("name of the month")
              .such("year");
      private final Field<Double> days =
          needed("length", Type.quantity(Measure.TIME, "1 d", "366 d").map(InUnit.DAY::of))
              .label("Length")
              .means("its length")
              .such("30 d");
      private final Field<Double> rain =
          standard("rain", RAIN, "0 mm").label("Rain").means("rain on the storage").such("80 mm");
      private final Field<Double> evaporation =
          standard("evaporation", RAIN, "0 mm")
              .label("Evaporation")
              .means("evaporation of the storage")
              .such("60 mm");

      MonthFields() {
        super("month", "month");
      }

      @Override
      protected Optional<StorageAccount.Month> make(Values values) {
        return Optional.of(
            new StorageAccount.Month(
                values.get(name), values.get(days), 0, values.get(rain), values.get(evaporation)));
      }
    }
  }
}
