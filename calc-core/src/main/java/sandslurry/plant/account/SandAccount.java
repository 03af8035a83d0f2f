package sandslurry.plant.account;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import sandslurry.plant.Stream;

/**
 * Where the sand goes. "Recovery" is always of something: of the sand flushed out of the alleys, of
 * the sand bedded, or the share that was not bought.
 *
 * @param bedded sand put into the stalls
 * @param flushed sand that reaches the plant with the manure
 * @param recovered wet sand taken out for the stalls, with its moisture and organic matter
 * @param rebeddedShare share of the recovered sand that goes back to the stalls, 0 to 1
 * @param lost sand that leaves otherwise, by where it goes: "storage", "fibre"
 */
public record SandAccount(
    Stream bedded,
    Stream flushed,
    Stream recovered,
    double rebeddedShare,
    Map<String, Stream> lost) {
  /** Copies the map and checks the share. */
  public SandAccount {
    lost = Collections.unmodifiableMap(new LinkedHashMap<>(lost));
    if (!(rebeddedShare >= 0 && rebeddedShare <= 1)) {
      throw new IllegalArgumentException(
          "the share reused as bedding lies in 0 to 1 but was " + rebeddedShare);
    }
  }

  /**
   * Sand recovered of the sand flushed.
   *
   * @return the share; 0 when nothing is flushed
   */
  public double recoveryOfFlushed() {
    return share(recovered.sandKgps(), flushed.sandKgps());
  }

  /**
   * Sand of one class recovered of the sand of this class flushed.
   *
   * @param sandClass index of the class
   * @return the share; 0 when nothing of it is flushed
   */
  public double recoveryOfFlushed(int sandClass) {
    return share(recovered.sandKgps(sandClass), flushed.sandKgps(sandClass));
  }

  /**
   * Sand recovered of the sand bedded.
   *
   * @return the share; 0 when nothing is bedded
   */
  public double recoveryOfBedded() {
    return share(recovered.sandKgps(), bedded.sandKgps());
  }

  /**
   * The share of the sand bedded that need not be bought.
   *
   * @return sand bedded again over sand bedded
   */
  public double notBought() {
    return share(recovered.sandKgps() * rebeddedShare, bedded.sandKgps());
  }

  /**
   * What the recovery of flushed sand seems to be when the heap is weighed wet and taken for sand:
   * moisture and organic matter count as sand.
   *
   * @return wet mass recovered over dry sand flushed
   */
  public double recoveryAsWeighed() {
    return share(recovered.massKgps(), flushed.sandKgps());
  }

  /**
   * Sand that was bedded and never reached the plant: it stays in stalls and alleys and is hauled
   * when they are cleaned out.
   *
   * @return mass flow of dry sand [kg/s]
   */
  public double beforeThePlantKgps() {
    return Math.max(0, bedded.sandKgps() - flushed.sandKgps());
  }

  /**
   * Sand that was flushed and neither recovered nor lost to a place that is known: what stays in
   * channel, line and pits.
   *
   * @return mass flow of dry sand, near 0 in a steady balance [kg/s]
   */
  public double stillInTheLineKgps() {
    return flushed.sandKgps()
        - recovered.sandKgps()
        - lost.values().stream().mapToDouble(Stream::sandKgps).sum();
  }

  private static double share(double part, double whole) {
    return whole > 0 ? part / whole : 0;
  }
}
