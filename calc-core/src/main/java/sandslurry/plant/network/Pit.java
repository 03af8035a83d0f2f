package sandslurry.plant.network;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sandslurry.plant.Stream;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * A volume that is kept mixed: reception pit, sump, recycle tank, storage. Pumps take given flows
 * from it; what comes in beyond that leaves by the overflow, or fills it.
 *
 * <p>In a steady balance the level stays where it is: pumps take their flows in the order given as
 * far as the feed goes, and the overflow takes the rest. A pit without overflow has no steady level
 * unless its pumps take what comes in, so its last pump is then taken to follow the feed. In a day
 * by schedule the pit has a level and pumps take what they are set to.
 *
 * @param name what it is called
 * @param inlets names of the streams in
 * @param draws names of the streams pumped out, with the flow of each pump [m3/s]; in the order in
 *     which they are served
 * @param overflow name of the stream that leaves over a weir, if there is one
 * @param weirVolumeM3 volume up to the weir, or the capacity when there is none [m3]
 * @param capacityM3 volume up to the brim [m3]
 * @param startVolumeM3 volume at the start of a day [m3]
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
        || !(startVolumeM3 >= 0 && startVolumeM3 <= capacityM3)) {
      throw new IllegalArgumentException(
          name
              + ": weir and start must lie within the capacity but are "
              + weirVolumeM3
              + ", "
              + startVolumeM3
              + " and "
              + capacityM3
              + " m3");
    }
  }

  /**
   * A pit in which nothing settles.
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
    this(name, inlets, draws, overflow, weirVolumeM3, capacityM3, startVolumeM3, Optional.empty());
  }

  @Override
  public List<String> outlets() {
    List<String> outlets = new ArrayList<>(draws.keySet());
    overflow.ifPresent(outlets::add);
    floor.ifPresent(f -> outlets.add(f.stream()));
    return List.copyOf(outlets);
  }

  /** What of a feed does not settle. */
  private Stream afloat(Stream feed, double[] kept) {
    double[] flows = feed.toArray();
    for (int i = 0; i < flows.length; i++) {
      flows[i] *= 1 - kept[i];
    }
    return Stream.of(feed.constituents(), flows);
  }

  private double[] kept(Stream feed) {
    return floor.map(f -> f.kept(feed)).orElseGet(() -> new double[feed.constituents().count()]);
  }

  @Override
  public Split split(Stream feed) {
    double[][] shares = new double[outlets().size()][feed.constituents().count()];
    List<String> notes = new ArrayList<>();
    double[] kept = kept(feed);
    double volume = afloat(feed, kept).volumeM3ps();
    int moving = shares.length - (floor.isPresent() ? 1 : 0);
    double left = 1;
    int outlet = 0;
    for (Map.Entry<String, Double> draw : draws.entrySet()) {
      boolean follows = overflow.isEmpty() && outlet == moving - 1;
      double wanted = volume > 0 ? draw.getValue() / volume : 0;
      if (!follows && wanted > left) {
        notes.add(
            name
                + ": the pump of \""
                + draw.getKey()
                + "\" is to take more than comes in for it: it gets "
                + UnitSystem.METRIC.show(Kind.PERCENT, left / wanted)
                + " of its flow.");
      }
      double share = follows ? left : Math.min(wanted, left);
      Arrays.fill(shares[outlet], share);
      left -= share;
      outlet++;
    }
    if (overflow.isPresent()) {
      Arrays.fill(shares[outlet], left);
    }
    for (int i = 0; i < kept.length; i++) {
      for (int o = 0; o < moving; o++) {
        shares[o][i] *= 1 - kept[i];
      }
      if (floor.isPresent()) {
        shares[moving][i] = kept[i];
      }
    }
    return new Split(shares, notes);
  }

  /**
   * What the pit holds in a steady balance, full to the weir with what of its feed does not settle.
   *
   * @param balance a balance of a network with this pit
   * @return the contents; flows are to be read as masses [kg]
   */
  public Stream atRest(SteadyBalance balance) {
    Stream mixed = balance.feed(name);
    Stream feed = afloat(mixed, kept(mixed));
    double volume = feed.volumeM3ps();
    return volume > 0 ? feed.times(weirVolumeM3 / volume) : feed;
  }
}
