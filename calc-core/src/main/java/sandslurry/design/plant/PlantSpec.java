package sandslurry.design.plant;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.design.station.GravitySpec;
import sandslurry.material.sand.StandardSand;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Range;
import sandslurry.plant.account.EnergyUse;
import sandslurry.plant.pen.Flush;
import sandslurry.plant.pen.ManureProduction;
import sandslurry.plant.pen.Pen;
import sandslurry.plant.profile.SiteLevels;
import sandslurry.plant.schedule.Batches;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.PlantUnit;
import sandslurry.plant.unit.StorageUnit;
import sandslurry.separation.channel.OpenChannel;

/**
 * The way from the pens to the storage: units that are connected by streams of equal name. Values
 * are in SI, as the kernels that they describe take them.
 *
 * @param production the equation for manure
 * @param solids how the dry matter of manure is divided
 * @param coatingFactor settling velocity of coated grains over that of clean ones
 * @param year its months, or the coldest and the warmest liquor where they are given
 * @param porosity pores over bulk volume of settled and heaped sand
 * @param pens the pens with the streams that they make
 * @param waters streams of fresh water
 * @param units the units
 * @param products streams that leave and what becomes of them
 * @param modes how the plant runs in the course of a day
 * @param machines machines whose power is given
 * @param rebeddedShare share of the recovered sand that goes back to the stalls
 * @param targets what the plant is judged by
 * @param accounting what only the accounts need
 * @param levels at what level the units stand, as far as that is given
 * @param gravityLines pipes and channels in which streams run by gravity
 */
// More than ten components: each part that a person may fill in is one.
public record PlantSpec(
    ManureProduction production,
    ManureSolids solids,
    double coatingFactor,
    YearSpec year,
    double porosity,
    List<PenSpec> pens,
    List<WaterSpec> waters,
    List<PlantUnit> units,
    List<Product> products,
    List<ModeSpec> modes,
    List<EnergyUse> machines,
    double rebeddedShare,
    Targets targets,
    Accounting accounting,
    SiteLevels levels,
    List<GravityLineSpec> gravityLines) {
  /** Copies the lists. */
  public PlantSpec {
    pens = List.copyOf(pens);
    waters = List.copyOf(waters);
    units = List.copyOf(units);
    gravityLines = List.copyOf(gravityLines);
    products = List.copyOf(products);
    modes = List.copyOf(modes);
    machines = List.copyOf(machines);
  }

  /**
   * The names of all streams.
   *
   * @return those of pens, of fresh water and of units, in this order
   */
  public List<String> streams() {
    List<String> names = new ArrayList<>();
    pens.forEach(pen -> names.add(pen.stream()));
    waters.forEach(water -> names.add(water.stream()));
    units.forEach(unit -> names.addAll(unit.outlets()));
    return names;
  }

  /**
   * The pits of the plant.
   *
   * @return pits, and the pools of storages from which liquor is pumped back, as the design has
   *     them
   */
  public List<PitUnit> pits() {
    return units.stream().flatMap(unit -> unit.asPit().stream()).toList();
  }

  /**
   * The storages of the plant.
   *
   * @return in the order of the design; empty when it has none
   */
  public List<StorageUnit> storages() {
    return units.stream().flatMap(unit -> unit.asStorage().stream()).toList();
  }

  /**
   * Whether a unit of the plant has a role.
   *
   * @param role the role
   * @return true when one has it
   */
  public boolean has(PlantUnit.Role role) {
    return units.stream().anyMatch(unit -> unit.role() == role);
  }

  /**
   * A pipe or channel in which a stream runs by gravity.
   *
   * @param stream the stream
   * @param conduit pipe or channel
   */
  public record GravityLineSpec(String stream, GravitySpec conduit) {}

  /**
   * A pen and where its manure goes.
   *
   * @param pen the pen
   * @param stream the stream that it makes, before any flush water
   * @param batches when it is scraped or flushed; it is fed evenly when left out
   * @param flush how it is flushed, if it is
   */
  public record PenSpec(
      Pen pen, String stream, Optional<Batches> batches, Optional<FlushSpec> flush) {}

  /**
   * How a pen is flushed.
   *
   * @param unit name of the unit in which manure and flush water meet
   * @param water the stream of flush water
   * @param alley the alley
   * @param lengthM its length [m]
   * @param volumeM3 volume of one flush [m3]
   * @param rateM3ps rate at which it is let out [m3/s]
   */
  public record FlushSpec(
      String unit,
      String water,
      OpenChannel alley,
      double lengthM,
      double volumeM3,
      double rateM3ps) {
    /**
     * The flush in its alley.
     *
     * @return uniform flow of the rate for as long as the volume lasts
     */
    public Flush flush() {
      return Flush.released(alley, volumeM3, rateM3ps);
    }
  }

  /**
   * Fresh water.
   *
   * @param stream the stream
   * @param flowM3ps its flow unless a mode says otherwise [m3/s]
   * @param mostM3ps the most that could be had, when more water is to be looked at as a remedy
   *     [m3/s]
   */
  public record WaterSpec(String stream, double flowM3ps, OptionalDouble mostM3ps) {}

  /** What becomes of a stream that leaves the plant. */
  public enum Use {
    /** Sand for the stalls. */
    BEDDING("bedding"),
    /** Fibre, to be heaped, sold or spread. */
    FIBRE("fibre"),
    /** Sand that settles in channels, lines and pits and is dug out there. */
    SETTLED("settled"),
    /** Anything else, such as trash. */
    WASTE("waste");

    private final String word;

    Use(String word) {
      this.word = word;
    }

    /**
     * The use in a word, as in files.
     *
     * @return for example "bedding"
     */
    public String word() {
      return word;
    }
  }

  /**
   * A stream that leaves.
   *
   * @param stream the stream
   * @param use what becomes of it
   */
  public record Product(String stream, Use use) {}

  /**
   * A way in which the plant runs for some hours.
   *
   * @param name what it is called
   * @param fromS start since midnight [s]
   * @param toS end since midnight [s]
   * @param flowsM3ps flows of pumps and fresh water that differ in this mode, by stream [m3/s]
   */
  public record ModeSpec(String name, double fromS, double toS, Map<String, Double> flowsM3ps) {
    /** Copies the map, order kept. */
    public ModeSpec {
      flowsM3ps = Collections.unmodifiableMap(new LinkedHashMap<>(flowsM3ps));
    }
  }

  /**
   * What a plant is judged by.
   *
   * @param sandCapture least share of the flushed sand that is recovered
   * @param bedOrganicMatter most organic matter in the dry matter of recovered sand
   * @param bedMoisture most water in recovered sand, by mass
   * @param liquorSolids most solids of the liquor, when one is wanted
   * @param storageDays least days of storage, when a number is wanted
   * @param gradation what the bedding is to be, when a gradation is wanted
   */
  public record Targets(
      double sandCapture,
      double bedOrganicMatter,
      double bedMoisture,
      OptionalDouble liquorSolids,
      OptionalDouble storageDays,
      Optional<WantedGradation> gradation) {}

  /**
   * A gradation wanted.
   *
   * @param name what it is called
   * @param limits least and greatest share that may pass each sieve, in any order
   */
  public record WantedGradation(String name, List<StandardSand.Limit> limits) {
    /** Copies the list. */
    public WantedGradation {
      limits = List.copyOf(limits);
    }
  }

  /**
   * What only the accounts need.
   *
   * @param sandReachingPlant share of the sand bedded that reaches the plant; the rest stays in
   *     stalls and alleys and is hauled with the bedding that is cleaned out
   * @param organicSettlingVelocityMps velocity at which the part of the fibre that settles does so
   *     in a liquor as thin as water [m/s]
   * @param organicSettleableShare share of the fibre that settles
   * @param prices the user's prices
   */
  public record Accounting(
      Range sandReachingPlant,
      Range organicSettlingVelocityMps,
      Range organicSettleableShare,
      Prices prices) {}

  /**
   * Prices in the user's own currency. None is ever assumed.
   *
   * @param currency what stands behind a sum; may be empty
   * @param sandPerKg price of sand delivered, by mass
   * @param haulingPerM3 price of hauling what the storage holds and what is dug out, by volume
   * @param energyPerJ price of electricity
   * @param waterPerM3 price of fresh water
   */
  public record Prices(
      String currency,
      Optional<Range> sandPerKg,
      Optional<Range> haulingPerM3,
      Optional<Range> energyPerJ,
      Optional<Range> waterPerM3) {}
}
