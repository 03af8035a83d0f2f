package sandslurry.design.plant;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import sandslurry.plant.Range;
import sandslurry.plant.account.Pond;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.network.Pit;
import sandslurry.plant.unit.GivenFloor;
import sandslurry.plant.unit.Splitter;
import sandslurry.separation.box.DilutionBox;
import sandslurry.separation.cyclone.Hydrocyclone;
import sandslurry.separation.cyclone.HydrocycloneModel;
import sandslurry.separation.lane.LaneReach;
import sandslurry.separation.pit.Impeller;
import sandslurry.separation.screen.CakeSeparator;

/** A unit of a plant. Values are in SI, as the kernels that it describes take them. */
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

  /**
   * A dilution settling box.
   *
   * @param name its name
   * @param inlets streams in
   * @param sand stream of sand out
   * @param overflow stream over the weir
   * @param runningShare share of the day that it runs
   * @param box the box
   * @param rinse the stream of clean water that rinses, one of the streams in; empty for no rinse
   * @param rinseEfficiency share of the pore liquor that one pore volume of rinse displaces
   * @param shearRatePs shear rate at which the viscosity of its liquor counts [1/s]
   */
  record BoxSpec(
      String name,
      List<String> inlets,
      String sand,
      String overflow,
      double runningShare,
      DilutionBox box,
      Optional<String> rinse,
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
  record LaneUnitSpec(
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
  record CycloneSpec(
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
  record CakeSpec(
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
  record SplitterSpec(Splitter splitter, String kind) implements UnitSpec {
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
  record Mixer(Impeller impeller, double speedRps, double runningShare) {}

  /**
   * A pit, or the pool of a storage from which liquor is pumped back.
   *
   * @param pit the pit, without its floor
   * @param mixer its mixer, if it has one
   * @param areaM2 plan area [m2]
   * @param pool what settles in the pool of a storage, as it is given; empty for a pit, in which it
   *     is worked out
   */
  record PitSpec(Pit pit, Optional<Mixer> mixer, double areaM2, Optional<GivenFloor> pool)
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
  record StorageSpec(
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
