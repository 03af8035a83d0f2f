package sandslurry.plant.unit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import sandslurry.fact.CommonLimits;
import sandslurry.fact.Field;
import sandslurry.fact.Fields;
import sandslurry.fact.Type;
import sandslurry.fact.Values;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.network.Pit;
import sandslurry.plant.network.PitFloor;
import sandslurry.plant.network.PitLevels;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.profile.Levels;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.pit.PitMixing;
import sandslurry.units.Kind;
import sandslurry.units.Measure;

/**
 * A pit, or the pool of a storage from which liquor is pumped back.
 *
 * @param pit the pit, without its floor
 * @param mixer its mixer, if it has one
 * @param areaM2 plan area [m2]
 * @param pool what settles in the pool of a storage, as it is given; empty for a pit, in which it
 *     is worked out
 */
public record PitUnit(Pit pit, Optional<Mixer> mixer, double areaM2, Optional<GivenFloor> pool)
    implements PlantUnit {
  /** A pit is dug out when sand has taken this share of it: ours, no source. */
  private static final double DUG_AT = 0.25;

  @Override
  public String name() {
    return pit.name();
  }

  @Override
  public List<String> inlets() {
    return pit.inlets();
  }

  @Override
  public List<String> outlets() {
    List<String> outlets = new ArrayList<>(pit.outlets());
    outlets.add(settled());
    return List.copyOf(outlets);
  }

  @Override
  public List<String> byGravity() {
    return pool.isPresent() ? List.of() : pit.overflow().stream().toList();
  }

  @Override
  public List<String> pumped() {
    return List.copyOf(pit.draws().keySet());
  }

  /**
   * The stream of what settles.
   *
   * @return its name
   */
  public String settled() {
    return pool.map(GivenFloor::stream).orElseGet(() -> settledIn(pit.name()));
  }

  /**
   * The stream of what spills over the brim.
   *
   * @return its name; empty when the pit has a weir
   */
  public Optional<String> spills() {
    return pit.overflow().isPresent() ? Optional.empty() : Optional.of(pit.rest());
  }

  /**
   * The stream of what settles in a pit.
   *
   * @param pit name of the pit
   * @return its name
   */
  public static String settledIn(String pit) {
    return "settled in " + pit;
  }

  @Override
  public String kind() {
    return pool.isPresent() ? "pool" : "pit";
  }

  @Override
  public Role role() {
    return Role.HOLDS;
  }

  @Override
  public Optional<PitUnit> asPit() {
    return Optional.of(this);
  }

  @Override
  public Map<String, Double> pumps() {
    return pit.draws();
  }

  /**
   * Whether it is the pool of a storage.
   *
   * @return false for a pit, which is dug out
   */
  public boolean isPool() {
    return pool.isPresent();
  }

  @Override
  public Pit built(Conditions c) {
    Map<String, Double> draws = new LinkedHashMap<>();
    pumps().forEach((stream, flow) -> draws.put(stream, c.pumpM3ps().applyAsDouble(stream, flow)));
    return new Pit(
        name(),
        inlets(),
        draws,
        pit.overflow(),
        pit.weirVolumeM3(),
        pit.capacityM3(),
        pit.startVolumeM3(),
        pit.levels(),
        Optional.of(pool.<PitFloor>map(given -> given).orElseGet(() -> floor(c))));
  }

  private PitFloor floor(Conditions c) {
    return new SettlingFloor(
        settled(),
        areaM2,
        c.porosity(),
        c.liquor(),
        mixer.map(turning -> new SettlingFloor.Mixing(turning.impeller(), turning.speedRps())));
  }

  @Override
  public Unit built(Conditions c, String out) {
    return built(c).without(out);
  }

  @Override
  public UnitResult at(Conditions c, SteadyBalance balance) {
    Optional<UnitFeed> stirred =
        mixer.flatMap(any -> c.settling(balance.feed(name()), 1, SettlingFloor.SHEAR_PS));
    return new PitUnitResult(
        this,
        balance,
        c.porosity(),
        stirred,
        stirred.map(
            feed ->
                PitMixing.of(
                    mixer.orElseThrow().impeller(),
                    mixer.orElseThrow().speedRps(),
                    feed,
                    pit.weirVolumeM3())));
  }

  @Override
  public Map<String, Part> parts() {
    Map<String, Part> parts = new LinkedHashMap<>();
    pumps().keySet().forEach(stream -> parts.put(stream, Part.PUMP));
    return parts;
  }

  @Override
  public Optional<EnergyUse> energy(
      Conditions c, ToDoubleFunction<ToDoubleFunction<SteadyBalance>> meanOverDay) {
    return mixer.map(
        turning ->
            new EnergyUse(
                "mixer of " + name(),
                Range.of(
                    turning
                        .impeller()
                        .powerW(
                            turning.speedRps(),
                            meanOverDay.applyAsDouble(
                                balance -> balance.feed(name()).densityKgM3()))),
                turning.runningShare()));
  }

  /**
   * Time in which settled sand takes a quarter of the pit.
   *
   * @param settles what settles in the pit
   * @param porosity pores over bulk volume of settled sand
   * @param mostS a time that is long enough [s]
   * @return time, at most that [s]; empty when no sand settles
   */
  public OptionalDouble fillsS(Stream settles, double porosity, double mostS) {
    double bulk = settles.sandKgps() / settles.constituents().sandDensityKgM3() / (1 - porosity);
    return bulk > 0
        ? OptionalDouble.of(Math.min(DUG_AT * pit.weirVolumeM3() / bulk, mostS))
        : OptionalDouble.empty();
  }

  @Override
  public OptionalDouble staysS(Stream feed, double share) {
    return feed.volumeM3ps() > 0
        ? OptionalDouble.of(pit.weirVolumeM3() / feed.volumeM3ps())
        : OptionalDouble.empty();
  }

  @Override
  public Optional<Care> care(Care.Numbers shown) {
    if (isPool()) {
      return Optional.empty();
    }
    String levels =
        "pumps stop at "
            + shown.show(Kind.VOLUME, pit.levels().stopM3())
            + ", start at "
            + shown.show(Kind.VOLUME, pit.levels().startM3())
            + ", alarm at "
            + shown.show(Kind.VOLUME, pit.levels().alarmM3());
    return Optional.of(
        new Care(
            "the level keeps between its marks ("
                + levels
                + ")"
                + (mixer.isPresent() ? "; the mixer runs at its hours" : "")
                + "; note the hours of the pumps.",
            "test the alarm; measure the sand on the floor with a rod from outside; have the total"
                + " solids of the liquor measured"
                + shown.liquor().map(figure -> ", design " + figure.shown(shown.units())).orElse("")
                + ".",
            "the level drifts from day to day (worn or blocked pump, leak); a pump starts more"
                + " often than it did; the liquor thickens.",
            shown
                .lasts()
                .map(
                    figure ->
                        "dig it out when sand takes a quarter of it, in about "
                            + figure.shown(shown.units())
                            + ".")
                .orElse("when the rod finds sand over a quarter of the depth.")));
  }

  /**
   * A mixer in a pit.
   *
   * @param impeller the impeller
   * @param speedRps its speed [1/s]
   * @param runningShare share of the day that it runs
   */
  public record Mixer(Impeller impeller, double speedRps, double runningShare) {}

  /** The fields of a pit with its pumps and mixer. */
  static final class PitFields extends UnitFields {
    private static final DrawFields PUMP = new DrawFields();

    private final Field<List<Map.Entry<String, Double>>> pumps =
        list("pumps", PUMP)
            .label("Pumps, in the order that they are served")
            .means(
                "pumps in the order in which they are served; they start and stop by the level, so"
                    + " that a pump larger than what comes in runs for a share of the time");
    private final Field<Optional<String>> overflow =
        optional("overflow", Type.name("the stream over the weir"), "none")
            .label("Overflow stream")
            .means("name of the stream over the weir")
            .such("surplus");
    private final Field<Double> capacity =
        needed("capacity", CommonLimits.PIT)
            .label("Volume to the brim")
            .means("volume to the brim")
            .such("60 m3", "16000 gal");
    private final Field<Optional<Double>> weir =
        optional("weirVolume", CommonLimits.PIT, "needed with an overflow")
            .label("Volume to the weir")
            .means("volume up to the overflow, below the capacity")
            .such("40 m3", "10000 gal");
    private final Field<Optional<Double>> start =
        optional("startVolume", CommonLimits.CONTENTS, "default: to the weir")
            .label("Volume at the start")
            .means("volume when the schedule starts")
            .such("40 m3", "10000 gal");
    private final Field<Double> depth =
        standard("depth", CommonLimits.DEPTH, "3 m")
            .label("Depth to the brim")
            .means("depth to the brim; the plan area is the capacity over it")
            .such("3 m", "10 ft");
    private final Field<Optional<Double>> stop =
        level(
            "stopLevel",
            "20 % of weir or brim",
            "Pumps stop at",
            "the pumps stop",
            "0.5 m",
            "20 in");
    private final Field<Optional<Double>> restart =
        level(
            "startLevel",
            "70 % of weir or brim",
            "Pumps start at",
            "the pumps start",
            "2 m",
            "7 ft");
    private final Field<Optional<Double>> alarm =
        level(
            "alarmLevel",
            "90 % of weir or brim",
            "Alarm at",
            "the alarm is raised",
            "2.5 m",
            "8 ft");
    private final Field<Optional<Mixer>> mixer =
        optional("mixer", new MixerFields(), "none")
            .label("It has a mixer")
            .means("mixer of the pit");

    PitFields() {
      super("pit", "pit or tank");
      begins("{\"pumps\": [{}]}");
      rule(
          restart,
          List.of(stop, alarm, capacity, depth, weir),
          this::rises,
          values -> "must lie above the stop level and not above the alarm level, weir or brim");
      neededWhen(weir, seen -> seen.has(overflow), "the volume up to the overflow");
      rule(
          weir,
          List.of(capacity, overflow),
          values ->
              values.get(weir).isEmpty()
                  || values.get(weir).get() < values.get(capacity)
                  || values.get(overflow).isEmpty()
                      && values.get(weir).get().equals(values.get(capacity)),
          values -> "must be below the capacity: else the brim is the overflow");
      rule(
          start,
          List.of(capacity),
          values -> values.get(start).isEmpty() || values.get(start).get() <= values.get(capacity),
          values -> "must not be above the capacity");
    }

    private Field<Optional<Double>> level(
        String field, String standard, String label, String what, String... examples) {
      return optional(field, CommonLimits.DEPTH, "default: " + standard)
          .label(label)
          .means("level above the floor at which " + what)
          .such(examples);
    }

    private double full(Values values) {
      return values.get(weir).orElse(values.get(capacity));
    }

    /** Volumes at the stop, start and alarm level. */
    private double[] volumes(Values values) {
      PitLevels usual = PitLevels.usual(full(values));
      double area = values.get(capacity) / values.get(depth);
      double starts = values.get(restart).map(level -> level * area).orElse(usual.startM3());
      return new double[] {
        values.get(stop).map(level -> level * area).orElse(usual.stopM3()),
        starts,
        values.get(alarm).map(level -> level * area).orElse(Math.max(starts, usual.alarmM3()))
      };
    }

    private boolean rises(Values values) {
      double[] volumes = volumes(values);
      return volumes[0] < volumes[1] && volumes[1] <= volumes[2] && volumes[1] <= full(values);
    }

    @Override
    protected void check(Values values) {
      if (!values.has(overflow) && values.good(pumps) && values.get(pumps).isEmpty()) {
        values.problem(pumps, "is missing: a pit needs a pump or an \"overflow\"");
      }
      PUMP.tellTwice(values.inside(pumps));
    }

    @Override
    public List<Ports> ports(Values values) {
      List<String> out = new ArrayList<>(pumped(values));
      if (values.has(overflow)) {
        out.add(values.maybe(overflow).flatMap(o -> o).orElse(""));
      }
      out.addAll(leaving(values));
      return one(values, out);
    }

    /** Its pumps stop at its lowest water; highest it stands at its weir, or at its alarm level. */
    @Override
    Optional<Levels> levels(OptionalDouble floorM, Values values) {
      double area = values.get(capacity) / values.get(depth);
      double[] volumes = volumes(values);
      double edge = full(values) / area;
      return floorM.isEmpty()
          ? Optional.empty()
          : Optional.of(
              new Levels(
                  floorM,
                  floorM.getAsDouble() + volumes[0] / area,
                  floorM.getAsDouble()
                      + (values.has(overflow) ? edge : Math.min(volumes[2] / area, edge)),
                  floorM.getAsDouble() + edge));
    }

    @Override
    public List<String> leaving(Values values) {
      String settled = PitUnit.settledIn(nameOf(values));
      return values.has(overflow)
          ? List.of(settled)
          : List.of(Pit.spilledFrom(nameOf(values)), settled);
    }

    @Override
    public List<String> pumped(Values values) {
      return PUMP.streams(values.inside(pumps));
    }

    @Override
    protected Optional<List<PlantUnit>> make(Values values) {
      double full = full(values);
      double[] volumes = volumes(values);
      return values.made(
          capacity,
          () ->
              List.of(
                  new PitUnit(
                      new Pit(
                          values.get(name),
                          values.get(in),
                          DrawFields.draws(values.get(pumps)),
                          values.get(overflow),
                          full,
                          values.get(capacity),
                          values.get(start).orElse(full),
                          new PitLevels(volumes[0], volumes[1], volumes[2]),
                          Optional.empty()),
                      values.get(mixer),
                      values.get(capacity) / values.get(depth),
                      Optional.empty())));
    }

    /** A mixer of a pit. */
    private static final class MixerFields extends Fields<Mixer> {
      private static final Type<Double> NUMBER = Type.quantity(Measure.NUMBER, "0.05", "50");

      private final Field<Impeller.Kind> impeller =
          standard(
                  "impeller",
                  Type.choice(
                      Arrays.asList(Impeller.Kind.values()), MixerFields::word, MixerFields::word),
                  word(Impeller.Kind.PROPELLER))
              .label("Impeller")
              .means("kind of impeller");
      private final Field<Double> diameter =
          needed("diameter", CommonLimits.DEPTH)
              .label("Impeller diameter")
              .means("diameter of the impeller")
              .such("0.5 m", "20 in");
      private final Field<Double> speed =
          needed("speed", Type.quantity(Measure.ROTATION, "0 rpm", "3000 rpm"))
              .label("Mixer speed")
              .means("speed of turning")
              .such("200 rpm");
      private final Field<Optional<Double>> suspension =
          optional("suspensionNumber", NUMBER, "default: by the impeller")
              .label("Zwietering's S")
              .means("constant S of Zwietering's equation")
              .such("6.6");
      private final Field<Optional<Double>> power =
          optional("powerNumber", NUMBER, "default: by the impeller")
              .label("Power number")
              .means("power number of the impeller")
              .such("0.35");
      private final Field<Double> running =
          standard("runningTime", RUNNING_SHARE, "24 h")
              .label("Mixer runs a day")
              .means("time that the mixer runs each day")
              .such("6 h");

      MixerFields() {
        super("mixer", "mixer");
      }

      private static String word(Impeller.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
      }

      @Override
      protected Optional<Mixer> make(Values values) {
        Impeller usual = values.get(impeller).of(values.get(diameter));
        return Optional.of(
            new Mixer(
                new Impeller(
                    values.get(diameter),
                    values.get(suspension).orElse(usual.suspensionNumber()),
                    values.get(power).orElse(usual.powerNumber())),
                values.get(speed),
                values.get(running)));
      }
    }
  }
}
