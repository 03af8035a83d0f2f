package sandslurry.plant.unit;

import java.util.Arrays;
import java.util.List;
import sandslurry.plant.Stream;
import sandslurry.plant.network.Split;
import sandslurry.plant.network.Unit;

/**
 * A unit that divides a stream without changing it: a tee, a weir, a valve. One outlet alone makes
 * it a mixing point.
 *
 * @param name what it is called
 * @param inlets names of the streams in
 * @param outlets names of the streams out
 * @param shares share of the feed that each outlet takes
 */
public record Splitter(String name, List<String> inlets, List<String> outlets, List<Double> shares)
    implements Unit {
  /** Copies the lists and checks the shares. */
  public Splitter {
    inlets = List.copyOf(inlets);
    outlets = List.copyOf(outlets);
    shares = List.copyOf(shares);
    double sum = shares.stream().mapToDouble(Double::doubleValue).sum();
    if (shares.size() != outlets.size()
        || !shares.stream().allMatch(share -> share >= 0)
        || !(Math.abs(sum - 1) <= 1e-9)) {
      throw new IllegalArgumentException(
          name + ": needs a share >= 0 for each of " + outlets + ", with sum 1, but has " + shares);
    }
  }

  /**
   * A mixing point.
   *
   * @param name what it is called
   * @param inlets names of the streams in
   * @param outlet name of the stream out
   * @return the unit
   */
  public static Splitter mixing(String name, List<String> inlets, String outlet) {
    return new Splitter(name, inlets, List.of(outlet), List.of(1.0));
  }

  @Override
  public Split split(Stream feed) {
    double[][] split = new double[outlets.size()][feed.constituents().count()];
    for (int outlet = 0; outlet < split.length; outlet++) {
      Arrays.fill(split[outlet], shares.get(outlet));
    }
    return new Split(split, List.of());
  }
}
