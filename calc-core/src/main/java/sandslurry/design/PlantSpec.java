package sandslurry.design;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.circuit.Batches;
import sandslurry.circuit.EnergyUse;
import sandslurry.circuit.Flush;
import sandslurry.circuit.GivenFloor;
import sandslurry.circuit.ManureProduction;
import sandslurry.circuit.ManureSolids;
import sandslurry.circuit.Pen;
import sandslurry.circuit.Pit;
import sandslurry.circuit.Pond;
import sandslurry.circuit.Range;
import sandslurry.circuit.Splitter;
import sandslurry.circuit.StorageAccount;
import sandslurry.material.StandardSand;
import sandslurry.separation.CakeSeparator;
import sandslurry.separation.DilutionBox;
import sandslurry.separation.Hydrocyclone;
import sandslurry.separation.HydrocycloneModel;
import sandslurry.separation.Impeller;
import sandslurry.separation.LaneReach;
import sandslurry.separation.OpenChannel;

/**
 * The way from the pens to the storage: units that are connected by streams of equal name. Values
 * are in SI, as the kernels that they describe take them.
 *
 * @param production the equation for manure
 * @param solids how the dry matter of manure is divided
 * @param coatingFactor settling velocity of coated grains over that of clean ones
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
 */
public record PlantSpec(
    ManureProduction production,
    ManureSolids solids,
    double coatingFactor,
    double porosity,
    List<PenSpec> pens,
    List<WaterSpec> waters,
    List<UnitSpec> units,
    List<Product> products,
    List<ModeSpec> modes,
    List<EnergyUse> machines,
    double rebeddedShare,
    Targets targets,
    Accounting accounting) {
  /** Copies the lists. */
  public PlantSpec {
    pens = List.copyOf(pens);
    waters = List.copyOf(waters);
    units = List.copyOf(units);
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
      Optional<Range> waterPerM3) {
    /**
     * Whether any price is known.
     *
     * @return false when none is
     */
    public boolean any() {
      return sandPerKg.isPresent()
          || haulingPerM3.isPresent()
          || energyPerJ.isPresent()
          || waterPerM3.isPresent();
    }
  }

  /** A unit of the plant. */
  public sealed interface UnitSpec {
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
     * The kind, as in files.
     *
     * @return for example "box"
     */
    String kind();
  }

  /**
   * A dilution settling box.
   *
   * @param name its name
   * @param inlets streams in
   * @param sand stream of sand out
   * @param overflow stream over the weir
   * @param runningShare share of the day that it runs
   * @param box the box
   * @param rinseEfficiency share of the pore liquor that one pore volume of rinse displaces
   * @param shearRatePs shear rate at which the viscosity of its liquor counts [1/s]
   */
  public record BoxSpec(
      String name,
      List<String> inlets,
      String sand,
      String overflow,
      double runningShare,
      DilutionBox box,
      Range rinseEfficiency,
      double shearRatePs)
      implements UnitSpec {
    @Override
    public List<String> outlets() {
      return List.of(sand, overflow);
    }

    @Override
    public String kind() {
      return "box";
    }
  }

  /**
   * A settling lane, or several in turn.
   *
   * @param name its name
   * @param inlets streams in
   * @param sand stream of sand dug out, as a mean over the time
   * @param overflow stream out
   * @param runningShare share of the day that it runs
   * @param reaches its reaches from the inlet on
   * @param filled how full of sand it is judged, as a share of the depth for sand; left out, what
   *     it keeps is meant from clean to clean-out
   * @param lanes how many there are in turn
   * @param drainS time to drain before it is dug [s]
   * @param digS time to dig it out [s]
   * @param drainPathM longest way of the water in the sand to a drain [m]
   * @param stackS time that the sand lies in a stack [s]
   * @param stackHeightM height of the stack [m]
   */
  public record LaneUnitSpec(
      String name,
      List<String> inlets,
      String sand,
      String overflow,
      double runningShare,
      List<LaneReach> reaches,
      OptionalDouble filled,
      int lanes,
      double drainS,
      double digS,
      double drainPathM,
      double stackS,
      double stackHeightM)
      implements UnitSpec {
    /** Copies the list. */
    public LaneUnitSpec {
      reaches = List.copyOf(reaches);
    }

    @Override
    public List<String> outlets() {
      return List.of(sand, overflow);
    }

    @Override
    public String kind() {
      return "lane";
    }

    /**
     * Thickness of the deposit at which it is judged.
     *
     * @return one for each reach, half the depth for sand when none is given [m]
     */
    public List<Double> depositsM() {
      return reaches.stream().map(reach -> filled.orElse(0.5) * reach.storageDepthM()).toList();
    }
  }

  /**
   * Hydrocyclones side by side.
   *
   * @param name their name
   * @param inlets streams in
   * @param underflow stream of sand out
   * @param overflow stream of liquor out
   * @param runningShare share of the day that they run
   * @param cyclone the cyclones
   * @param model the model
   * @param shearRatePs shear rate at which the viscosity of the liquor counts [1/s]
   * @param pumpEfficiency efficiency of feed pump and motor
   */
  public record CycloneSpec(
      String name,
      List<String> inlets,
      String underflow,
      String overflow,
      double runningShare,
      Hydrocyclone cyclone,
      HydrocycloneModel model,
      double shearRatePs,
      double pumpEfficiency)
      implements UnitSpec {
    @Override
    public List<String> outlets() {
      return List.of(underflow, overflow);
    }

    @Override
    public String kind() {
      return "cyclone";
    }
  }

  /**
   * A coarse screen or a fibre separator.
   *
   * @param name its name
   * @param kind "screen" or "fibreSeparator"
   * @param inlets streams in
   * @param cake stream of what is held
   * @param liquid stream of the rest
   * @param runningShare share of the day that it runs
   * @param separator the separator
   */
  public record CakeSpec(
      String name,
      String kind,
      List<String> inlets,
      String cake,
      String liquid,
      double runningShare,
      CakeSeparator separator)
      implements UnitSpec {
    @Override
    public List<String> outlets() {
      return List.of(cake, liquid);
    }
  }

  /**
   * A tee, weir or mixing point.
   *
   * @param splitter the splitter
   * @param kind "splitter", or "flush" where manure and flush water meet
   */
  public record SplitterSpec(Splitter splitter, String kind) implements UnitSpec {
    @Override
    public String name() {
      return splitter.name();
    }

    @Override
    public List<String> inlets() {
      return splitter.inlets();
    }

    @Override
    public List<String> outlets() {
      return splitter.outlets();
    }
  }

  /**
   * A mixer in a pit.
   *
   * @param impeller the impeller
   * @param speedRps its speed [1/s]
   * @param runningShare share of the day that it runs
   */
  public record Mixer(Impeller impeller, double speedRps, double runningShare) {}

  /**
   * A pit, or the pool of a storage from which liquor is pumped back.
   *
   * @param pit the pit, without its floor
   * @param mixer its mixer, if it has one
   * @param areaM2 plan area [m2]
   * @param pool what settles in the pool of a storage, as it is given; empty for a pit, in which it
   *     is worked out
   */
  public record PitSpec(Pit pit, Optional<Mixer> mixer, double areaM2, Optional<GivenFloor> pool)
      implements UnitSpec {
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

    /**
     * The stream of what settles.
     *
     * @return its name
     */
    public String settled() {
      return pool.map(GivenFloor::stream).orElseGet(() -> settledIn(pit.name()));
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
  }

  /**
   * A storage, where streams end until it is emptied.
   *
   * @param name its name
   * @param inlets streams in
   * @param pond its shape
   * @param months the months of the year: names, days, rain and evaporation; their inflow is 0 here
   * @param stormM depth of the design storm [m]
   * @param freeboardM freeboard [m]
   * @param settledSandM3 sand on its floor now [m3]
   */
  public record StorageSpec(
      String name,
      List<String> inlets,
      Pond pond,
      List<StorageAccount.Month> months,
      double stormM,
      double freeboardM,
      double settledSandM3)
      implements UnitSpec {
    /** Copies the list. */
    public StorageSpec {
      months = List.copyOf(months);
    }

    @Override
    public List<String> outlets() {
      return List.of();
    }

    @Override
    public String kind() {
      return "storage";
    }
  }
}
