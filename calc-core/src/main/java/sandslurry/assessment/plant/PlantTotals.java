package sandslurry.assessment.plant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import sandslurry.assessment.plant.PlantResult.LiquorLimit;
import sandslurry.design.plant.PlantSpec.Product;
import sandslurry.design.plant.PlantSpec.Use;
import sandslurry.design.plant.YearSpec.MonthSpec;
import sandslurry.plant.Stream;
import sandslurry.plant.account.SandAccount;
import sandslurry.plant.account.StorageAccount;
import sandslurry.plant.unit.Liquor;
import sandslurry.plant.unit.PitUnit;
import sandslurry.plant.unit.StorageUnit;

/**
 * The streams of a plant put together by what they are for.
 *
 * @param model the plant
 */
public record PlantTotals(PlantModel model) {
  /** Days of a year [d]. */
  public static final double YEAR_D = 365;

  /** Nobody plans further than this. */
  public static final double MANY_YEARS = 50;

  /** The heading of the account of what settles in pits. */
  public static final String PITS = "Pits: time until settled sand takes a quarter";

  /**
   * Streams mixed into one.
   *
   * @param streams mean flows by name of the stream
   * @param names names of the streams
   * @return the sum of their mass flows
   */
  public Stream sum(Map<String, Stream> streams, List<String> names) {
    return Stream.mix(model.constituents(), names.stream().map(streams::get).toList());
  }

  List<String> feeds() {
    List<String> names = new ArrayList<>();
    model.spec().pens().forEach(pen -> names.add(pen.stream()));
    model.spec().waters().forEach(water -> names.add(water.stream()));
    return names;
  }

  List<String> products(Use use) {
    return model.spec().products().stream()
        .filter(p -> p.use() == use)
        .map(Product::stream)
        .toList();
  }

  /**
   * The weather on a storage.
   *
   * @param storage the storage
   * @return rain and evaporation of each month of the year of the plant, else of its own; their
   *     inflow is 0 here
   */
  public List<StorageAccount.Month> weather(StorageUnit storage) {
    List<MonthSpec> year = model.spec().year().months();
    return year.isEmpty()
        ? storage.months()
        : year.stream()
            .map(
                month ->
                    new StorageAccount.Month(
                        month.name(), month.days(), 0, month.rainM(), month.evaporationM()))
            .toList();
  }

  /**
   * Sand by bulk volume of settled and heaped sand.
   *
   * @return mass of dry sand over bulk volume [kg/m3]
   */
  public double sandBulkKgM3() {
    return model.constituents().sandDensityKgM3() * (1 - model.spec().porosity());
  }

  /**
   * The liquor that leaves for good: to storages, or as waste in a plant without one.
   *
   * @return names of its streams
   */
  public List<String> surplus() {
    List<String> names = new ArrayList<>();
    model.spec().storages().forEach(storage -> names.addAll(storage.inlets()));
    names.removeAll(settled());
    return names.isEmpty() ? products(Use.WASTE) : names;
  }

  /**
   * What settles in pits, and in storages from which liquor is pumped back.
   *
   * @return names of its streams
   */
  public List<String> settled() {
    return model.spec().pits().stream().map(PitUnit::settled).toList();
  }

  /** What settles in pits and is dug out there; the pool of a storage settles in the storage. */
  private List<String> dug() {
    return model.spec().pits().stream().filter(pit -> !pit.isPool()).map(PitUnit::settled).toList();
  }

  /**
   * What spills over the brim of pits without a weir.
   *
   * @return names of its streams
   */
  public List<String> spilled() {
    return model.spec().pits().stream().flatMap(pit -> pit.spills().stream()).toList();
  }

  /**
   * Solids of the liquor at steady state, from what is not captured and the net water.
   *
   * @param streams mean flows by name of the stream
   * @return the limit with the sand recovery
   */
  public LiquorLimit limit(Map<String, Stream> streams) {
    Stream in = sum(streams, feeds());
    List<String> surplus = surplus();
    double solids = in.solidsKgps();
    double water = in.waterKgps();
    for (Product product : model.spec().products()) {
      if (!surplus.contains(product.stream())) {
        solids -= streams.get(product.stream()).solidsKgps();
        water -= streams.get(product.stream()).waterKgps();
      }
    }
    Stream lost = sum(streams, settled()).plus(sum(streams, spilled()));
    solids -= lost.solidsKgps();
    water -= lost.waterKgps();
    double notCaught = Math.max(0, solids);
    double net = Math.max(0, water);
    Stream leaves = leaving(streams, surplus);
    return new LiquorLimit(
        notCaught,
        net,
        Liquor.limit(notCaught, net),
        leaves.totalSolids(),
        leaves.dissolvedShare(),
        capture(streams));
  }

  /** The liquor that leaves; of a loop without a way out, what spills, or what goes round. */
  private Stream leaving(Map<String, Stream> streams, List<String> surplus) {
    Stream leaves = sum(streams, surplus);
    if (leaves.waterKgps() > 0) {
      return leaves;
    }
    Stream spills = sum(streams, spilled());
    return spills.waterKgps() > 0 ? spills : sum(streams, List.copyOf(model.recycles()));
  }

  /**
   * Sand recovered for bedding over sand flushed.
   *
   * @param streams mean flows by name of the stream
   * @return share; 0 when no sand is flushed
   */
  public double capture(Map<String, Stream> streams) {
    double flushed = sum(streams, feeds()).sandKgps();
    double recovered = sum(streams, products(Use.BEDDING)).sandKgps();
    return flushed > 0 ? recovered / flushed : 0;
  }

  /** The streams that leave for good: products, what is dug out of pits, what flows to storages. */
  List<String> leavingNames() {
    List<String> names = new ArrayList<>();
    model.spec().products().forEach(product -> names.add(product.stream()));
    names.addAll(dug());
    names.addAll(spilled());
    model.spec().storages().forEach(storage -> names.addAll(storage.inlets()));
    return names;
  }

  Stream leaving(Map<String, Stream> streams) {
    return sum(streams, leavingNames());
  }

  /** Where the sand goes. */
  SandAccount account(Stream bedded, Map<String, Stream> streams) {
    Map<String, Stream> lost = new LinkedHashMap<>();
    for (StorageUnit storage : model.spec().storages()) {
      lost.put(storage.name(), sum(streams, storage.inlets()));
    }
    for (Use use : List.of(Use.FIBRE, Use.SETTLED, Use.WASTE)) {
      List<String> names = new ArrayList<>(products(use));
      if (use == Use.SETTLED) {
        names.addAll(dug());
      }
      if (use == Use.WASTE) {
        names.addAll(spilled());
      }
      if (!names.isEmpty()) {
        lost.put(use.word(), sum(streams, names));
      }
    }
    return new SandAccount(
        bedded,
        sum(streams, feeds()),
        sum(streams, products(Use.BEDDING)),
        model.spec().rebeddedShare(),
        lost);
  }
}
