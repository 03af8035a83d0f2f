package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import sandslurry.design.Design;
import sandslurry.design.plant.PlantSpec;
import sandslurry.design.plant.PlantSpec.ModeSpec;
import sandslurry.design.plant.PlantSpec.PenSpec;
import sandslurry.design.plant.PlantSpec.WaterSpec;
import sandslurry.material.liquid.Water;
import sandslurry.plant.Constituents;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Mode;
import sandslurry.plant.network.Network;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.SteadyBalance;
import sandslurry.plant.network.Unit;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.pen.PenLoad;
import sandslurry.plant.schedule.Batches;
import sandslurry.plant.schedule.DaySchedule;
import sandslurry.plant.unit.Conditions;
import sandslurry.plant.unit.LiquorModel;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.PlantUnit.Role;
import sandslurry.plant.unit.UnitResult;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.cyclone.HydrocycloneModel;

/** The plant of a design as networks of kernels, one for each mode. */
public final class PlantModel {
  /**
   * Which ends of the inputs' ranges are taken.
   *
   * @param sand of the sand bedded
   * @param reaching of the share of it that reaches the plant
   * @param water of the water that reaches the manure
   * @param manure of the manure
   */
  record Ends(
      Function<Range, Double> sand,
      Function<Range, Double> reaching,
      Function<Range, Double> water,
      Function<Range, Double> manure) {}

  /**
   * What is changed in the plant to see what it does.
   *
   * @param recycleFactor all recycle pumps over their flow
   * @param extraWaterM3ps fresh water beside that of the mode [m3/s]
   * @param areaFactor settling areas over theirs
   * @param replacedM3ps recycled liquor that fresh water takes the place of [m3/s]
   */
  record Changes(
      double recycleFactor, double extraWaterM3ps, double areaFactor, double replacedM3ps) {
    static final Changes NONE = new Changes(1, 0, 1, 0);
  }

  /**
   * A plant at the ends of its ranges, with a hope and a change.
   *
   * @param ends which ends of the inputs' ranges are taken
   * @param cleanness end of what makes recovered sand clean: its low end is the dirty one
   * @param outlook how hopeful the capture is
   * @param changes what is changed
   * @param bedding the gradation bedded; empty for that of the sand bought
   * @param liquors how thick and warm the liquor is, and what model cuts by
   */
  public record Case(
      Ends ends,
      End cleanness,
      Outlook outlook,
      Changes changes,
      Optional<Stream> bedding,
      Liquors liquors) {
    /** The expected case: the middle of each range, nothing changed. */
    public static final Case BASE = of(Range::base, Range::base, Range::base, Range::base);

    /**
     * A case at an end of each range.
     *
     * @param sand end of the sand bedded
     * @param reaching end of the share of it that reaches the plant
     * @param water end of the water that reaches the manure
     * @param manure end of the manure
     * @return the case, all else as expected
     */
    public static Case of(
        Function<Range, Double> sand,
        Function<Range, Double> reaching,
        Function<Range, Double> water,
        Function<Range, Double> manure) {
      return new Case(
          new Ends(sand, reaching, water, manure),
          End.BASE,
          Outlook.LIKELY,
          Changes.NONE,
          Optional.empty(),
          Liquors.GIVEN);
    }

    /**
     * The same case with another liquor.
     *
     * @param other how liquor and cyclones differ from what is expected
     * @return the case
     */
    public Case in(Liquors other) {
      return new Case(ends, cleanness, outlook, changes, bedding, other);
    }

    /**
     * The same case with another outlook on capture.
     *
     * @param other conservative, expected or optimistic
     * @return the case
     */
    public Case seen(Outlook other) {
      return new Case(ends, cleanness, other, changes, bedding, liquors);
    }

    /**
     * The same case with cleaner or dirtier recovered sand.
     *
     * @param end the low end is the dirty one
     * @return the case
     */
    public Case clean(End end) {
      return new Case(ends, end, outlook, changes, bedding, liquors);
    }

    Case changed(Changes other) {
      return new Case(ends, cleanness, outlook, other, bedding, liquors);
    }

    /**
     * The same case with other recycle flow rates.
     *
     * @param factor flow rate of each recycle pump over its own
     * @return the case
     */
    public Case recycling(double factor) {
      return changed(new Changes(factor, 0, 1, 0));
    }

    /**
     * The same case with more fresh water.
     *
     * @param extraM3ps fresh water beside that of the mode [m3/s]
     * @return the case
     */
    public Case withWater(double extraM3ps) {
      return changed(new Changes(1, extraM3ps, 1, 0));
    }

    /**
     * The same case with part of the recycled liquor let go, and as much fresh water in its place.
     *
     * @param replacedM3ps flow rate of liquor replaced [m3/s]
     * @return the case
     */
    public Case replacing(double replacedM3ps) {
      return changed(new Changes(1, 0, 1, replacedM3ps));
    }

    /**
     * The same case with larger settling areas.
     *
     * @param factor settling areas over theirs
     * @return the case
     */
    public Case withArea(double factor) {
      return changed(new Changes(1, 0, factor, 0));
    }

    Case bedded(Stream gradation) {
      return new Case(ends, cleanness, outlook, changes, Optional.of(gradation), liquors);
    }
  }

  /**
   * How the liquor and the cyclones differ from what is expected.
   *
   * @param thickness what manure adds to the viscosity of water, over that of the table
   * @param temperatureK temperature; empty for that of the design [K]
   * @param cyclones the model of all cyclones; empty for the one that each has
   */
  public record Liquors(
      double thickness, OptionalDouble temperatureK, Optional<HydrocycloneModel> cyclones) {
    static final Liquors GIVEN = new Liquors(1, OptionalDouble.empty(), Optional.empty());

    /**
     * Liquor of another viscosity.
     *
     * @param factor what manure adds to the viscosity of water, over that of the table
     * @return the liquors, all else as expected
     */
    public static Liquors thick(double factor) {
      return new Liquors(factor, OptionalDouble.empty(), Optional.empty());
    }

    /**
     * Liquor at another temperature.
     *
     * @param temperatureK temperature [K]
     * @return the liquors, all else as expected
     */
    public static Liquors at(double temperatureK) {
      return new Liquors(1, OptionalDouble.of(temperatureK), Optional.empty());
    }

    /**
     * All cyclones by one model.
     *
     * @param model model of cut size and split
     * @return the liquors, all else as expected
     */
    public static Liquors cutting(HydrocycloneModel model) {
      return new Liquors(1, OptionalDouble.empty(), Optional.of(model));
    }
  }

  /** An end of a range, or its middle. */
  public enum End {
    /** The lower end. */
    LOW(Range::low),
    /** The middle. */
    BASE(Range::base),
    /** The upper end. */
    HIGH(Range::high);

    private final Function<Range, Double> of;

    End(Function<Range, Double> of) {
      this.of = of;
    }

    /**
     * The value of a range at this end.
     *
     * @param range the range
     * @return its value, in the unit of the range
     */
    public double of(Range range) {
      return of.apply(range);
    }

    /**
     * Which end of what, in words.
     *
     * @param what name of the quantity
     * @return for example "least water"; empty for the middle
     */
    public String word(String what) {
      return this == LOW ? "least " + what : this == HIGH ? "most " + what : "";
    }

    End other() {
      return this == LOW ? HIGH : this == HIGH ? LOW : BASE;
    }
  }

  private final PlantSpec spec;
  private final Constituents constituents;
  private final LiquorModel liquor;
  private final Set<String> recycles;
  private final List<Double> seasonsK;

  /** The balance of each mode as it is given: others are looked for from it. */
  private final Map<String, SteadyBalance> known = new HashMap<>();

  /** What pens make without sand: the modes of many cases are fed the same. */
  private final Map<Excreted, Stream> excreted = new HashMap<>();

  private record Excreted(String pen, double manureFactor, double waterM3ps) {}

  /** What the units do at balances that were looked at. */
  private final Map<SteadyBalance, Map<String, UnitResult>> results = new IdentityHashMap<>();

  /**
   * The plant of a design.
   *
   * @param design the design
   */
  public PlantModel(Design design) {
    this.spec = design.plant().orElseThrow();
    double temperature = design.carrier().temperatureK();
    this.constituents =
        Constituents.of(
            design.sand().gradation(), Water.densityKgM3(temperature), design.sand().densityKgM3());
    this.liquor = new LiquorModel(temperature, design.sand().shape(), spec.coatingFactor());
    this.recycles = findRecycles();
    this.seasonsK =
        spec.year().seasonsK().isEmpty() ? seasonsOfLine(design) : spec.year().seasonsK();
  }

  private static List<Double> seasonsOfLine(Design design) {
    List<Double> seasons = new ArrayList<>();
    design
        .service()
        .states()
        .ifPresent(
            states -> {
              states.temperatureK().hard().ifPresent(seasons::add);
              states.temperatureK().easy().ifPresent(seasons::add);
            });
    return seasons;
  }

  /**
   * Its streams put together.
   *
   * @return the sums
   */
  public PlantTotals totals() {
    return new PlantTotals(this);
  }

  /**
   * The plant as the design gives it.
   *
   * @return pens, waters, units, products, modes and targets
   */
  public PlantSpec spec() {
    return spec;
  }

  /**
   * What the streams of the plant are made of.
   *
   * @return water, solids and sand by size class
   */
  public Constituents constituents() {
    return constituents;
  }

  /**
   * How the liquor flows in the expected case.
   *
   * @return viscosity, temperature and settling of grains
   */
  public LiquorModel liquor() {
    return liquor;
  }

  /** How the liquor flows in a case. */
  LiquorModel liquor(Case one) {
    Liquors liquors = one.liquors();
    return new LiquorModel(
        liquors.temperatureK().orElse(liquor.temperatureK()),
        liquor.shape(),
        liquor.settlingFactor(),
        liquors.thickness());
  }

  /**
   * Coldest and warmest liquor.
   *
   * @return temperatures [K]; empty when the design gives none
   */
  public List<Double> seasonsK() {
    return seasonsK;
  }

  /**
   * Pumped streams that return to the pit that they leave.
   *
   * @return their names
   */
  public Set<String> recycles() {
    return recycles;
  }

  private Set<String> findRecycles() {
    Set<String> found = new LinkedHashSet<>();
    for (PlantUnit unit : spec.units()) {
      for (String stream : unit.pumps().keySet()) {
        if (dilutes(stream) && reaches(stream, unit, new LinkedHashSet<>())) {
          found.add(stream);
        }
      }
    }
    return found;
  }

  /** A recycle flows where manure flows in too, or before it. */
  private boolean dilutes(String stream) {
    Set<String> manure = new LinkedHashSet<>();
    spec.pens().forEach(pen -> manure.add(pen.stream()));
    return spec.units().stream()
        .filter(unit -> unit.inlets().contains(stream))
        .anyMatch(unit -> unit.inlets().stream().anyMatch(manure::contains));
  }

  private boolean reaches(String stream, PlantUnit goal, Set<String> seen) {
    for (PlantUnit unit : spec.units()) {
      if (unit.inlets().contains(stream)) {
        if (unit == goal) {
          return true;
        }
        for (String out : unit.outlets()) {
          if (seen.add(out) && reaches(out, goal, seen)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /**
   * What a pen makes, with the part of its sand that reaches the plant.
   *
   * @param pen the pen
   * @return manure, sand and water of the pen
   */
  public PenLoad load(PenSpec pen) {
    Range sand = pen.pen().sandKgps();
    Range reaching = spec.accounting().sandReachingPlant();
    return load(
        pen.pen(),
        pen.pen().manureFactor(),
        new Range(
            sand.low() * reaching.low(),
            sand.base() * reaching.base(),
            sand.high() * reaching.high()),
        pen.pen().waterM3ps());
  }

  private PenLoad load(Pen pen, Range manureFactor, Range sandKgps, Range waterM3ps) {
    Pen seen =
        new Pen(
            pen.name(),
            pen.cows(),
            pen.milkKgps(),
            pen.others(),
            manureFactor,
            pen.stalls(),
            sandKgps,
            waterM3ps,
            pen.scrapesPerDay());
    return PenLoad.of(seen, spec.production(), spec.solids(), constituents);
  }

  /** The organic matter as it settles in water, in a case. */
  OrganicMatter organic(Case one) {
    End dirt = one.cleanness().other();
    return new OrganicMatter(
        dirt.of(spec.accounting().organicSettleableShare()),
        dirt.of(spec.accounting().organicSettlingVelocityMps()),
        OrganicMatter.FEEDLOT.scourVelocityMps(),
        one.cleanness() != End.LOW);
  }

  /**
   * The sand bedded in the stalls of all pens.
   *
   * @param one the case
   * @return mass flow by size class [kg/s]
   */
  public Stream bedded(Case one) {
    double sand =
        spec.pens().stream()
            .mapToDouble(pen -> pen.pen().stalls() * one.ends().sand().apply(pen.pen().sandKgps()))
            .sum();
    return sand(sand, one);
  }

  /** Sand with the gradation that is bedded in a case. */
  private Stream sand(double kgps, Case one) {
    if (one.bedding().isEmpty()) {
      return constituents.deliveredSand(kgps);
    }
    double[] flows = new double[constituents.count()];
    double sum = 0;
    for (int i = Constituents.MINERAL_FINES; i < flows.length; i++) {
      flows[i] = one.bedding().get().kgps(i);
      sum += flows[i];
    }
    return sum > 0
        ? Stream.of(constituents, flows).times(kgps / sum)
        : constituents.deliveredSand(kgps);
  }

  Stream manure(PenSpec pen, Case one) {
    double sand = one.ends().sand().apply(pen.pen().sandKgps());
    double reaching = one.ends().reaching().apply(spec.accounting().sandReachingPlant());
    Excreted key =
        new Excreted(
            pen.pen().name(),
            one.ends().manure().apply(pen.pen().manureFactor()),
            one.ends().water().apply(pen.pen().waterM3ps()));
    Stream without =
        excreted.computeIfAbsent(
            key,
            any ->
                load(
                        pen.pen(),
                        Range.of(key.manureFactor()),
                        Range.of(0),
                        Range.of(key.waterM3ps()))
                    .meanFlow());
    return without.plus(sand(pen.pen().stalls() * sand * reaching, one));
  }

  /**
   * Density of the manure as it is excreted, without sand and water of the pens.
   *
   * @return by the densities of its parts [kg/m3]; that of water where there are no animals
   */
  public double manureDensityKgM3() {
    Case alone = Case.of(r -> 0.0, Range::base, r -> 0.0, Range::base);
    Stream sum =
        Stream.mix(constituents, spec.pens().stream().map(pen -> manure(pen, alone)).toList());
    return sum.massKgps() > 0 ? sum.densityKgM3() : constituents.waterDensityKgM3();
  }

  double waterM3ps(WaterSpec water, ModeSpec mode, Case one) {
    double flow = mode.flowsM3ps().getOrDefault(water.stream(), water.flowM3ps());
    return extra(water) ? flow + one.changes().extraWaterM3ps() + replacedM3ps(mode, one) : flow;
  }

  /**
   * Recycled liquor in a mode as it is given.
   *
   * @param mode a mode of the day
   * @return flow rate of all recycles [m3/s]
   */
  public double recycledM3ps(ModeSpec mode) {
    double sum = 0;
    for (PlantUnit unit : spec.units()) {
      for (Map.Entry<String, Double> pump : unit.pumps().entrySet()) {
        if (recycles.contains(pump.getKey())) {
          sum += mode.flowsM3ps().getOrDefault(pump.getKey(), pump.getValue());
        }
      }
    }
    return sum;
  }

  private double replacedM3ps(ModeSpec mode, Case one) {
    return Math.min(one.changes().replacedM3ps(), recycledM3ps(mode));
  }

  /**
   * When the streams that come in batches flow: manure, and the water of its flush.
   *
   * @return batches by stream
   */
  public Map<String, Batches> batches() {
    Map<String, Batches> batches = new LinkedHashMap<>();
    for (PenSpec pen : spec.pens()) {
      pen.batches()
          .ifPresent(
              when -> {
                batches.put(pen.stream(), when);
                pen.flush().ifPresent(flush -> batches.put(flush.water(), when));
              });
    }
    return batches;
  }

  /** Units that batches reach before a pit: the schedule itself says when they run. */
  private Set<String> paced() {
    Set<String> names = new LinkedHashSet<>();
    Set<String> streams = new LinkedHashSet<>();
    spec.pens().forEach(pen -> pen.batches().ifPresent(b -> streams.add(pen.stream())));
    boolean grew = true;
    while (grew) {
      grew = false;
      for (PlantUnit unit : spec.units()) {
        if (unit.role() != Role.HOLDS
            && unit.inlets().stream().anyMatch(streams::contains)
            && names.add(unit.name())) {
          streams.addAll(unit.outlets());
          grew = true;
        }
      }
    }
    return names;
  }

  /** Whether this is the water that a remedy is looked for in: the first that may grow. */
  private boolean extra(WaterSpec water) {
    return spec.waters().stream()
        .filter(w -> w.mostM3ps().isPresent())
        .findFirst()
        .filter(water::equals)
        .isPresent();
  }

  /**
   * A mode as a network, its batches averaged over the day.
   *
   * @param mode a mode of the day
   * @param one the case
   * @return units, feeds and the balance to start from
   */
  public Mode mode(ModeSpec mode, Case one) {
    return mode(mode, one, Set.of());
  }

  /**
   * Keeps the balance of a mode as it is given, from which those of other cases are found sooner.
   *
   * @param mode a mode of the day
   * @param balance its steady balance
   */
  public void remember(ModeSpec mode, SteadyBalance balance) {
    known.put(mode.name(), balance);
  }

  /**
   * A mode for the schedule, with batches at their times.
   *
   * @param mode a mode of the day
   * @param one the case
   * @return units and feeds in that case
   */
  public Mode scheduled(ModeSpec mode, Case one) {
    return mode(mode, one, paced());
  }

  /**
   * The day of its modes, one after the other.
   *
   * @param modes units and feeds of each mode
   * @param batches when what comes in batches flows
   * @return the schedule
   */
  public DaySchedule day(Function<ModeSpec, Mode> modes, Map<String, Batches> batches) {
    return DaySchedule.of(
        spec.modes().stream()
            .map(mode -> new DaySchedule.Period(modes.apply(mode), mode.fromS(), mode.toS()))
            .toList(),
        batches);
  }

  /**
   * A mode, manure coming evenly, in which something is out: a separator lets all pass, a pump
   * stands.
   *
   * @param mode a mode of the day
   * @param out name of the separator, or stream of the pump
   * @return the mode
   */
  Mode without(ModeSpec mode, String out) {
    return mode(mode, Case.BASE, Set.of(), out);
  }

  private Mode mode(ModeSpec mode, Case one, Set<String> paced) {
    return mode(mode, one, paced, "");
  }

  private Mode mode(ModeSpec mode, Case one, Set<String> paced, String out) {
    Map<String, Stream> feeds = new LinkedHashMap<>();
    for (PenSpec pen : spec.pens()) {
      feeds.put(pen.stream(), manure(pen, one));
    }
    for (WaterSpec water : spec.waters()) {
      feeds.put(
          water.stream(),
          constituents.water(waterM3ps(water, mode, one) * constituents.waterDensityKgM3()));
    }
    List<Unit> units = new ArrayList<>();
    List<String> leaving = new ArrayList<>();
    spec.products().forEach(product -> leaving.add(product.stream()));
    Conditions even = conditions(mode, one, false);
    Conditions atTimes = conditions(mode, one, true);
    for (PlantUnit unit : spec.units()) {
      Conditions here = paced.contains(unit.name()) ? atTimes : even;
      units.add(out.isEmpty() ? unit.built(here) : unit.built(here, out));
    }
    for (PitUnit pit : spec.pits()) {
      if (!pit.isPool()) {
        leaving.add(pit.settled());
        pit.spills().ifPresent(leaving::add);
      }
    }
    return new Mode(
        mode.name(),
        Network.of(units, feeds.keySet(), leaving),
        feeds,
        Optional.ofNullable(known.get(mode.name())));
  }

  /** What the units have in common in a mode of a case. */
  private Conditions conditions(ModeSpec mode, Case one, boolean paced) {
    double all = recycledM3ps(mode);
    double left = all > 0 ? Math.max(0, 1 - replacedM3ps(mode, one) / all) : 1;
    return new Conditions(
        liquor(one),
        organic(one),
        spec.porosity(),
        one.outlook(),
        one.cleanness()::of,
        one.changes().areaFactor(),
        one.liquors().cyclones(),
        freshM3ps(mode, one),
        (stream, given) -> {
          double here = mode.flowsM3ps().getOrDefault(stream, given);
          return recycles.contains(stream) ? here * one.changes().recycleFactor() * left : here;
        },
        paced);
  }

  private ToDoubleFunction<String> freshM3ps(ModeSpec mode, Case one) {
    Map<String, Double> fresh = new HashMap<>();
    spec.waters().forEach(w -> fresh.merge(w.stream(), waterM3ps(w, mode, one), Double::sum));
    return stream -> fresh.getOrDefault(stream, 0.0);
  }

  /**
   * What the units have in common in the expected case, in the mode that runs longest.
   *
   * @return liquor, flows and which end is taken of what is not known
   */
  public Conditions expected() {
    return conditions(longestMode(), Case.BASE, false);
  }

  /**
   * What a unit does with a feed other than that of a balance, in the mode that runs longest.
   *
   * @param unit a unit of the plant
   * @param feed what flows in, such as a batch
   * @return the shares of it that leave by each outlet
   */
  public Split at(PlantUnit unit, Stream feed) {
    return unit.built(momentary(unit)).split(feed);
  }

  /**
   * What a unit does in the mode that runs longest. It is worked out once for a balance.
   *
   * @param unit a unit of the plant
   * @param balance the steady balance of that mode
   * @return the result of its kernel
   */
  public UnitResult at(PlantUnit unit, SteadyBalance balance) {
    return results
        .computeIfAbsent(balance, any -> new HashMap<>())
        .computeIfAbsent(unit.name(), any -> unit.at(expected(), balance));
  }

  /**
   * Time that such a feed stays in a unit while it runs.
   *
   * @param unit a unit of the plant
   * @param feed what flows in at a moment of the day
   * @return the time [s]; empty where it holds no liquid, or nothing flows
   */
  public OptionalDouble staysS(PlantUnit unit, Stream feed) {
    return unit.staysS(feed, unit.seen(momentary(unit)));
  }

  private Conditions momentary(PlantUnit unit) {
    return conditions(longestMode(), Case.BASE, paced().contains(unit.name()));
  }

  /** The mode that runs longest in a day; the first of equals. */
  private ModeSpec longestMode() {
    ModeSpec longest = spec.modes().get(0);
    for (ModeSpec mode : spec.modes()) {
      longest = mode.toS() - mode.fromS() > longest.toS() - longest.fromS() ? mode : longest;
    }
    return longest;
  }
}
