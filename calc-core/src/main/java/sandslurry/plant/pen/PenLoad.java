package sandslurry.plant.pen;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.plant.Constituents;
import sandslurry.plant.ManureSolids;
import sandslurry.plant.Range;
import sandslurry.plant.Stream;
import sandslurry.units.InUnit;

/**
 * What pens make: sand-laden manure with the water that reaches it.
 *
 * <p>Mass and volume follow from the balance of the parts: manure, its dry matter, sand with the
 * density of its grains, water. Ranges are found at all combinations of least and greatest manure,
 * sand and water, which is exact, since each result only rises or only falls with each of them.
 */
public final class PenLoad {
  private static final int CORNERS = 8;

  private final String name;
  private final Stream base;
  private final List<Stream> corners;
  private final double scrapesPerDay;
  private final List<Bound.Excess> excesses;

  private PenLoad(
      String name,
      Stream base,
      List<Stream> corners,
      double scrapesPerDay,
      Collection<Bound.Excess> excesses) {
    this.name = name;
    this.base = base;
    this.corners = List.copyOf(corners);
    this.scrapesPerDay = scrapesPerDay;
    this.excesses = List.copyOf(excesses);
  }

  /**
   * Works out the load of a pen.
   *
   * @param pen the pen
   * @param production the equation for manure
   * @param solids how the dry matter of manure is divided
   * @param constituents what streams are made of, with the bedding sand
   * @return the load
   * @throws IllegalArgumentException if the equations give more dry matter than manure
   */
  public static PenLoad of(
      Pen pen, ManureProduction production, ManureSolids solids, Constituents constituents) {
    Estimate manureOfCow = production.manureKgps(pen.milkKgps());
    Estimate dryOfCow = Nennich2005.dryMatterKgps(pen.milkKgps());
    double manure = pen.cows() * manureOfCow.value();
    double dry = pen.cows() * dryOfCow.value();
    for (Map.Entry<OtherCattle, Double> other : pen.others().entrySet()) {
      manure += other.getValue() * other.getKey().manureKgps();
      dry += other.getValue() * other.getKey().dryMatterKgps();
    }
    double totalSolids = manure > 0 ? dry / manure : 0;
    Stream excreted = Stream.liquor(constituents, manure, totalSolids, solids);
    Stream sand = constituents.deliveredSand(pen.stalls());
    Stream water = constituents.water(constituents.waterDensityKgM3());
    List<Stream> corners = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      corners.add(
          excreted
              .times(end(pen.manureFactor(), i & 1))
              .plus(sand.times(end(pen.sandKgps(), i & 2)))
              .plus(water.times(end(pen.waterM3ps(), i & 4))));
    }
    Stream base =
        excreted
            .times(pen.manureFactor().base())
            .plus(sand.times(pen.sandKgps().base()))
            .plus(water.times(pen.waterM3ps().base()));
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    if (pen.cows() > 0) {
      excesses.addAll(manureOfCow.excesses());
      excesses.addAll(dryOfCow.excesses());
    }
    return new PenLoad(pen.name(), base, corners, pen.scrapesPerDay(), excesses);
  }

  private static double end(Range range, int high) {
    return high == 0 ? range.low() : range.high();
  }

  /**
   * The load of several pens together. Their ranges are taken to move together: the habits of one
   * dairy are the same in all its pens.
   *
   * @param name what they are called together
   * @param loads the loads, at least one
   * @return the sum; its batch is that of all pens scraped at once, as often as the pen that is
   *     scraped least
   */
  public static PenLoad sum(String name, List<PenLoad> loads) {
    if (loads.isEmpty()) {
      throw new IllegalArgumentException("at least one pen is needed");
    }
    Constituents constituents = loads.get(0).base.constituents();
    List<Stream> corners = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      int corner = i;
      corners.add(
          Stream.mix(constituents, loads.stream().map(load -> load.corners.get(corner)).toList()));
    }
    Set<Bound.Excess> excesses = new LinkedHashSet<>();
    loads.forEach(load -> excesses.addAll(load.excesses));
    return new PenLoad(
        name,
        Stream.mix(constituents, loads.stream().map(load -> load.base).toList()),
        corners,
        loads.stream().mapToDouble(load -> load.scrapesPerDay).min().orElseThrow(),
        excesses);
  }

  /**
   * The name.
   *
   * @return that of the pen
   */
  public String name() {
    return name;
  }

  /**
   * The expected load as a mean flow over the day, to feed a network with.
   *
   * @return the stream
   */
  public Stream meanFlow() {
    return base;
  }

  /**
   * What lay outside the range of the equations.
   *
   * @return empty when nothing did
   */
  public List<Bound.Excess> excesses() {
    return excesses;
  }

  /**
   * The range of anything that can be asked of a stream.
   *
   * @param result for example {@code Stream::densityKgM3}
   * @return from the least to the greatest
   */
  public Range range(ToDoubleFunction<Stream> result) {
    return Range.over(base, corners, result);
  }

  /**
   * Mass in a day.
   *
   * @return mass [kg]
   */
  public Range massPerDayKg() {
    return perDay(Stream::massKgps);
  }

  /**
   * Volume in a day.
   *
   * @return volume, sand with that of its grains [m3]
   */
  public Range volumePerDayM3() {
    return perDay(Stream::volumeM3ps);
  }

  /**
   * Sand in a day, mineral fines left out.
   *
   * @return mass of dry sand [kg]
   */
  public Range sandPerDayKg() {
    return perDay(Stream::sandKgps);
  }

  /**
   * Solids other than sand in a day.
   *
   * @return mass of dry matter [kg]
   */
  public Range solidsPerDayKg() {
    return perDay(Stream::solidsKgps);
  }

  /**
   * Mass of one batch: what is scraped at once.
   *
   * @return mass [kg]
   */
  public Range massPerBatchKg() {
    return massPerDayKg().map(day -> day / scrapesPerDay);
  }

  /**
   * Volume of one batch: what the reception must take at once.
   *
   * @return volume [m3]
   */
  public Range volumePerBatchM3() {
    return volumePerDayM3().map(day -> day / scrapesPerDay);
  }

  /**
   * Sand in one batch.
   *
   * @return mass of dry sand [kg]
   */
  public Range sandPerBatchKg() {
    return sandPerDayKg().map(day -> day / scrapesPerDay);
  }

  /**
   * Sand-free total solids.
   *
   * @return mass fraction
   */
  public Range totalSolids() {
    return range(Stream::totalSolids);
  }

  /**
   * Sand by mass.
   *
   * @return mass of sand over mass of all
   */
  public Range sandMassShare() {
    return range(Stream::sandMassShare);
  }

  /**
   * Sand by volume of grains.
   *
   * @return volume of grains over volume of all
   */
  public Range sandVolumeShare() {
    return range(Stream::sandVolumeShare);
  }

  /**
   * Sand by bulk volume, heaps side by side.
   *
   * @param porosity porosity of the heap of sand
   * @return share of bulk volume
   */
  public Range sandBulkShare(double porosity) {
    return range(stream -> stream.sandBulkShare(porosity));
  }

  /**
   * Density.
   *
   * @return density [kg/m3]
   */
  public Range densityKgM3() {
    return range(Stream::densityKgM3);
  }

  private Range perDay(ToDoubleFunction<Stream> flow) {
    double day = InUnit.DAY.si(1);
    return range(stream -> flow.applyAsDouble(stream) * day);
  }
}
