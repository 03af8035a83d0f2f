package sandslurry.plant.unit;

import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.PitFloor;

/**
 * A floor that keeps given shares of what comes in: the settling in a storage or lagoon, which is
 * known from practice and not worked out.
 *
 * @param stream name of the stream of what settles
 * @param sand share of the sand of every class, 0 to 1
 * @param fibre share of the fibre, 0 to 1
 * @param fines share of organic and mineral fines, 0 to 1
 */
public record GivenFloor(String stream, double sand, double fibre, double fines)
    implements PitFloor {
  /** Checks the shares. */
  public GivenFloor {
    for (double share : new double[] {sand, fibre, fines}) {
      if (!(share >= 0 && share <= 1)) {
        throw new IllegalArgumentException(stream + ": a share lies in 0 to 1 but was " + share);
      }
    }
  }

  @Override
  public double[] kept(Stream through, Stream arriving) {
    double[] kept = new double[through.constituents().count()];
    kept[Constituents.FIBRE] = fibre;
    kept[Constituents.ORGANIC_FINES] = fines;
    kept[Constituents.MINERAL_FINES] = fines;
    for (int i = Constituents.SAND; i < kept.length; i++) {
      kept[i] = sand;
    }
    for (int i = 0; i < kept.length; i++) {
      kept[i] *= through.kgps(i) > 0 ? Math.min(1, arriving.kgps(i) / through.kgps(i)) : 1;
    }
    return kept;
  }
}
