package sandslurry.plant;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import sandslurry.material.sand.SizeClass;

/**
 * A flow of mixture, by constituent: what one named line of a plant carries. Immutable.
 *
 * <p>Three shares of sand are told apart, because they are confused in practice: by mass, by volume
 * of grains, and by bulk volume, as two heaps side by side would be measured. Five volumes of bulk,
 * one of them sand, hold about a third of sand by mass.
 */
public final class Stream {
  private final Constituents constituents;
  private final double[] kgps;

  Stream(Constituents constituents, double[] kgps) {
    if (kgps.length != constituents.count()) {
      throw new IllegalArgumentException(
          "a stream needs " + constituents.count() + " flows but has " + kgps.length);
    }
    for (int i = 0; i < kgps.length; i++) {
      if (!(kgps[i] >= 0 && Double.isFinite(kgps[i]))) {
        throw new IllegalArgumentException(
            "the flow of " + constituents.name(i) + " must be >= 0 but was " + kgps[i] + " kg/s");
      }
    }
    this.constituents = constituents;
    this.kgps = kgps;
  }

  /**
   * Makes a stream.
   *
   * @param constituents what it is made of
   * @param kgps mass flow of each constituent, in their order [kg/s]
   * @return the stream
   * @throws IllegalArgumentException if a flow is missing, negative or not finite
   */
  public static Stream of(Constituents constituents, double... kgps) {
    return new Stream(constituents, kgps.clone());
  }

  /**
   * Makes a stream of a part of many flows.
   *
   * @param constituents what it is made of
   * @param kgps mass flows, those of the stream among them [kg/s]
   * @param from index of its first constituent among them
   * @return the stream
   * @throws IllegalArgumentException if a flow is missing, negative or not finite
   */
  public static Stream of(Constituents constituents, double[] kgps, int from) {
    return new Stream(constituents, Arrays.copyOfRange(kgps, from, from + constituents.count()));
  }

  /**
   * Liquor or manure without sand.
   *
   * @param constituents what streams are made of
   * @param massKgps total mass flow [kg/s]
   * @param totalSolids dry matter over total mass, 0 to 1
   * @param solids how the dry matter is divided
   * @return the stream
   */
  public static Stream liquor(
      Constituents constituents, double massKgps, double totalSolids, ManureSolids solids) {
    if (!(totalSolids >= 0 && totalSolids <= 1)) {
      throw new IllegalArgumentException("total solids lie in 0 to 1 but were " + totalSolids);
    }
    double[] flows = new double[constituents.count()];
    double dry = massKgps * totalSolids;
    flows[Constituents.WATER] = massKgps * (1 - totalSolids);
    flows[Constituents.DISSOLVED] = dry * solids.dissolvedShare();
    flows[Constituents.FIBRE] = dry * solids.fibreShare();
    flows[Constituents.ORGANIC_FINES] = dry * solids.finesShare();
    return new Stream(constituents, flows);
  }

  /**
   * Streams put together.
   *
   * @param constituents what they are made of
   * @param streams the streams; none gives nothing
   * @return their sum
   * @throws IllegalArgumentException if a stream is made of other constituents
   */
  public static Stream mix(Constituents constituents, Collection<Stream> streams) {
    double[] sum = new double[constituents.count()];
    for (Stream stream : streams) {
      if (!stream.constituents.equals(constituents)) {
        throw new IllegalArgumentException("streams of different constituents cannot be mixed");
      }
      for (int i = 0; i < sum.length; i++) {
        sum[i] += stream.kgps[i];
      }
    }
    return new Stream(constituents, sum);
  }

  /**
   * This stream and another.
   *
   * @param other the other
   * @return the sum
   */
  public Stream plus(Stream other) {
    return mix(constituents, List.of(this, other));
  }

  /**
   * A multiple of this stream.
   *
   * @param factor 0 or more
   * @return every flow multiplied
   */
  public Stream times(double factor) {
    double[] flows = kgps.clone();
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= factor;
    }
    return new Stream(constituents, flows);
  }

  /**
   * What it is made of.
   *
   * @return the constituents
   */
  public Constituents constituents() {
    return constituents;
  }

  /**
   * The flow of one constituent.
   *
   * @param index index of the constituent
   * @return mass flow [kg/s]
   */
  public double kgps(int index) {
    return kgps[index];
  }

  /**
   * All flows.
   *
   * @return mass flows in the order of the constituents, a copy [kg/s]
   */
  public double[] toArray() {
    return kgps.clone();
  }

  /**
   * Flow of water.
   *
   * @return mass flow [kg/s]
   */
  public double waterKgps() {
    return kgps[Constituents.WATER];
  }

  /**
   * Flow of sand, without mineral fines.
   *
   * @return mass flow of dry sand [kg/s]
   */
  public double sandKgps() {
    return sum(Constituents.SAND, kgps.length);
  }

  /**
   * Flow of one class of the sand.
   *
   * @param sandClass index of the class, 0 for the finest
   * @return mass flow of dry sand [kg/s]
   */
  public double sandKgps(int sandClass) {
    return kgps[Constituents.SAND + sandClass];
  }

  /**
   * Flow of fines, organic and mineral.
   *
   * @return mass flow [kg/s]
   */
  public double finesKgps() {
    return kgps[Constituents.ORGANIC_FINES] + kgps[Constituents.MINERAL_FINES];
  }

  /**
   * Flow of solids other than sand: dissolved, fibre and all fines.
   *
   * @return mass flow of dry matter [kg/s]
   */
  public double solidsKgps() {
    return sum(Constituents.DISSOLVED, Constituents.SAND);
  }

  /**
   * Flow of manure solids: dissolved, fibre and organic fines.
   *
   * @return mass flow of dry matter [kg/s]
   */
  double manureSolidsKgps() {
    return sum(Constituents.DISSOLVED, Constituents.MINERAL_FINES);
  }

  /**
   * Flow of everything.
   *
   * @return mass flow [kg/s]
   */
  public double massKgps() {
    return sum(Constituents.WATER, kgps.length);
  }

  /**
   * Volume flow; sand counts with the volume of its grains.
   *
   * @return volume flow [m3/s]
   */
  public double volumeM3ps() {
    return volume(Constituents.WATER, kgps.length);
  }

  /**
   * Density.
   *
   * @return mass over volume; that of water when nothing flows [kg/m3]
   */
  public double densityKgM3() {
    return quotient(massKgps(), volumeM3ps(), constituents.waterDensityKgM3());
  }

  /**
   * Sand-free total solids: dry matter without sand over mass without sand. Mineral fines count as
   * solids.
   *
   * @return mass fraction; 0 when nothing but sand flows
   */
  public double totalSolids() {
    return quotient(solidsKgps(), sum(Constituents.WATER, Constituents.SAND), 0);
  }

  /**
   * Total solids of manure alone, without sand and mineral fines: what the flow curve of manure is
   * tabled by. Mineral fines thicken the liquor besides.
   *
   * @return mass fraction; 0 when there is no liquor
   */
  public double manureTotalSolids() {
    return quotient(manureSolidsKgps(), sum(Constituents.WATER, Constituents.MINERAL_FINES), 0);
  }

  /**
   * Dissolved solids over dissolved solids and water.
   *
   * @return mass fraction; 0 when there is no water
   */
  public double dissolvedShare() {
    double dissolved = kgps[Constituents.DISSOLVED];
    return quotient(dissolved, dissolved + waterKgps(), 0);
  }

  /**
   * Mineral fines in the liquor.
   *
   * @return volume of mineral fines over volume without sand; 0 when there is no liquor
   */
  public double mineralFinesVolumeShare() {
    return quotient(
        volume(Constituents.MINERAL_FINES, Constituents.SAND),
        volume(Constituents.WATER, Constituents.SAND),
        0);
  }

  /**
   * Sand by mass.
   *
   * @return mass of dry sand over total mass
   */
  public double sandMassShare() {
    return quotient(sandKgps(), massKgps(), 0);
  }

  /**
   * Sand by volume of its grains, as hydraulics needs it.
   *
   * @return volume of grains over total volume
   */
  public double sandVolumeShare() {
    return quotient(volume(Constituents.SAND, kgps.length), volumeM3ps(), 0);
  }

  /**
   * Sand by bulk volume, as the two would be measured in heaps side by side before they are mixed.
   * It is not the share of a mixture: in the mixture, liquor fills the pores.
   *
   * @param porosity pores over bulk volume of the sand, 0 to below 1
   * @return bulk volume of sand over bulk volume of sand plus volume of the rest
   */
  public double sandBulkShare(double porosity) {
    if (!(porosity >= 0 && porosity < 1)) {
      throw new IllegalArgumentException("porosity lies in 0 to 1 but was " + porosity);
    }
    double bulk = volume(Constituents.SAND, kgps.length) / (1 - porosity);
    return quotient(bulk, bulk + volume(Constituents.WATER, Constituents.SAND), 0);
  }

  /**
   * Organic matter in the dry matter; dissolved solids count as organic.
   *
   * @return mass fraction; 0 when there is no dry matter
   */
  public double organicShareOfDry() {
    return quotient(manureSolidsKgps(), solidsKgps() + sandKgps(), 0);
  }

  /**
   * The sand of this stream by class.
   *
   * @return the classes with the mass fractions of this stream; those of the bedding when there is
   *     no sand
   */
  public List<SizeClass> sandClasses() {
    double sand = sandKgps();
    if (!(sand > 0)) {
      return constituents.sandClasses();
    }
    return java.util.stream.IntStream.range(0, constituents.sandClasses().size())
        .mapToObj(
            k -> {
              SizeClass size = constituents.sandClasses().get(k);
              return new SizeClass(size.lowM(), size.highM(), size.meanM(), sandKgps(k) / sand);
            })
        .toList();
  }

  /** Flow of the constituents from one up to another, which is left out [kg/s]. */
  private double sum(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += kgps[i];
    }
    return sum;
  }

  /** The same as a volume [m3/s]. */
  private double volume(int from, int to) {
    double volume = 0;
    for (int i = from; i < to; i++) {
      volume += kgps[i] / constituents.densityKgM3(i);
    }
    return volume;
  }

  private static double quotient(double part, double whole, double ofNothing) {
    return whole > 0 ? part / whole : ofNothing;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Stream stream
        && constituents.equals(stream.constituents)
        && Arrays.equals(kgps, stream.kgps);
  }

  @Override
  public int hashCode() {
    return 31 * constituents.hashCode() + Arrays.hashCode(kgps);
  }

  @Override
  public String toString() {
    return massKgps() + " kg/s, sand-free total solids " + totalSolids();
  }
}
