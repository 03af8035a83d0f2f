package sandslurry.plant.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.plant.Stream;

/**
 * A volume that is kept mixed: reception pit, sump, recycle tank, storage. Its pumps start and stop
 * by its level; what they do not take leaves over the weir, or spills over the brim.
 *
 * <p>A pump that is larger than what comes in for it takes what comes in, in a share of the time.
 * At rest the level stays where it is: pumps are served in the order given. In time the pit fills
 * and empties between the stop level and the weir or brim.
 *
 * @param name what it is called
 * @param inlets names of the streams in
 * @param draws names of the streams pumped out, with the flow of each pump while it runs [m3/s]; in
 *     the order in which they are served
 * @param overflow name of the stream that leaves over a weir, if there is one
 * @param weirVolumeM3 volume up to the weir, or the capacity when there is none [m3]
 * @param capacityM3 volume up to the brim [m3]
 * @param startVolumeM3 volume at the start of a day [m3]
 * @param levels by which the pumps start and stop
 * @param floor what settles in it and stays; nothing does when it is left out
 */
public record Pit(
    String name,
    List<String> inlets,
    Map<String, Double> draws,
    Optional<String> overflow,
    double weirVolumeM3,
    double capacityM3,
    double startVolumeM3,
    PitLevels levels,
    Optional<PitFloor> floor)
    implements Unit {
  /** Copies the lists and checks every bound. */
  public Pit {
    inlets = List.copyOf(inlets);
    Map<String, Double> ordered = new LinkedHashMap<>(draws);
    draws = Collections.unmodifiableMap(ordered);
    if (!draws.values().stream().allMatch(flow -> flow >= 0 && Double.isFinite(flow))) {
      throw new IllegalArgumentException(name + ": pumps need flows >= 0 but have " + draws);
    }
    if (!(capacityM3 > 0 && Double.isFinite(capacityM3))
        || !(weirVolumeM3 > 0 && weirVolumeM3 <= capacityM3)
        || !(startVolumeM3 >= 0 && startVolumeM3 <= capacityM3)
        || !(levels.startM3() <= weirVolumeM3)) {
      throw new IllegalArgumentException(
          name
              + ": weir, start volume and the level at which pumps start must lie within the"
              + " capacity but are at "
              + weirVolumeM3
              + ", "
              + startVolumeM3
              + " and "
              + levels.startM3()
              + " of "
              + capacityM3
              + " m3");
    }
  }

  /**
   * A pit with the usual levels, in which nothing settles.
   *
   * @param name what it is called
   * @param inlets names of the streams in
   * @param draws names of the streams pumped out, with the flow of each pump [m3/s]
   * @param overflow name of the stream that leaves over a weir, if there is one
   * @param weirVolumeM3 volume up to the weir, or the capacity when there is none [m3]
   * @param capacityM3 volume up to the brim [m3]
   * @param startVolumeM3 volume at the start of a day [m3]
   */
  public Pit(
      String name,
      List<String> inlets,
      Map<String, Double> draws,
      Optional<String> overflow,
      double weirVolumeM3,
      double capacityM3,
      double startVolumeM3) {
    this(
        name,
        inlets,
        draws,
        overflow,
        weirVolumeM3,
        capacityM3,
        startVolumeM3,
        PitLevels.usual(weirVolumeM3),
        Optional.empty());
  }

  /**
   * The pit with a pump that stands.
   *
   * @param stream the stream of the pump
   * @return this pit where it has no such pump
   */
  public Pit without(String stream) {
    if (!draws.containsKey(stream)) {
      return this;
    }
    Map<String, Double> left = new LinkedHashMap<>(draws);
    left.put(stream, 0.0);
    return new Pit(
        name, inlets, left, overflow, weirVolumeM3, capacityM3, startVolumeM3, levels, floor);
  }

  /**
   * The stream of what runs over the brim of a pit without a weir.
   *
   * @param pit name of the pit
   * @return its name
   */
  public static String spilledFrom(String pit) {
    return "spilled from " + pit;
  }

  /**
   * What the pumps do not take and the pit does not hold.
   *
   * @return the name of the stream over the weir, or of what spills
   */
  public String rest() {
    return overflow.orElseGet(() -> spilledFrom(name));
  }

  @Override
  public Optional<Pit> asPit() {
    return Optional.of(this);
  }

  /** Volume from which on more of it leaves over weir or brim [m3]. */
  double brimM3() {
    return overflow.isPresent() ? weirVolumeM3 : capacityM3;
  }

  @Override
  public List<String> outlets() {
    List<String> outlets = new ArrayList<>(draws.keySet());
    outlets.add(rest());
    floor.ifPresent(f -> outlets.add(f.stream()));
    return List.copyOf(outlets);
  }

  /** Share of each constituent of what passes through that settles. */
  double[] kept(Stream through, Stream arriving) {
    return floor
        .map(f -> f.kept(through, arriving))
        .orElseGet(() -> new double[through.constituents().count()]);
  }

  @Override
  public Split split(Stream feed) {
    double[] settles = kept(feed, feed);
    double volume = feed.volumeM3ps();
    double afloat = afloat(feed, settles).volumeM3ps();
    Hydraulics.PitOutlets at =
        new Hydraulics.PitOutlets(
            volume > 0 ? afloat / volume : 1,
            0,
            0,
            draws.values().stream().mapToDouble(Double::doubleValue).toArray());
    double[] out = new double[outlets().size()];
    at.at(volume, out, new double[out.length]);
    double[][] shares = shares(settles, out, afloat, true);
    return new Split(Arrays.copyOf(shares, out.length), List.of());
  }

  /** What of a feed does not settle. */
  private static Stream afloat(Stream feed, double[] settles) {
    double[] flows = feed.toArray();
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= 1 - settles[i];
    }
    return Stream.of(feed.constituents(), flows);
  }

  /**
   * Shares of what passes through by outlet and constituent, what the pit keeps after them.
   *
   * @param settles share of each constituent that settles
   * @param outM3ps volume by each outlet [m3/s]
   * @param afloatM3ps volume that does not settle [m3/s]
   * @param rest whether the level stays: what rounding leaves then goes over the weir
   */
  double[][] shares(double[] settles, double[] outM3ps, double afloatM3ps, boolean rest) {
    int count = settles.length;
    int moving = draws.size() + 1;
    double[][] shares = new double[outM3ps.length + 1][count];
    double left = 1;
    for (int o = 0; o < moving; o++) {
      double share = afloatM3ps > 0 ? Math.min(left, outM3ps[o] / afloatM3ps) : 0;
      left -= share;
      for (int i = 0; i < count; i++) {
        shares[o][i] = share * (1 - settles[i]);
      }
    }
    for (int i = 0; i < count; i++) {
      if (floor.isPresent()) {
        shares[moving][i] = settles[i];
      }
      shares[rest ? moving - 1 : outM3ps.length][i] += left * (1 - settles[i]);
    }
    return shares;
  }

  /**
   * What the pit holds in a steady balance, full to the weir with what of its feed does not settle.
   *
   * @param balance a balance of a network with this pit
   * @return the contents; flows are to be read as masses [kg]
   */
  public Stream atRest(SteadyBalance balance) {
    Stream mixed = balance.feed(name);
    Stream feed = afloat(mixed, kept(mixed, mixed));
    double volume = feed.volumeM3ps();
    return volume > 0 ? feed.times(brimM3() / volume) : feed;
  }
}
