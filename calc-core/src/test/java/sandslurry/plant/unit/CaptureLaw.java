package sandslurry.plant.unit;

import java.util.List;
import sandslurry.plant.Constituents;
import sandslurry.plant.Stream;
import sandslurry.plant.network.UnitNote;

/** What share of each constituent of a feed a separator catches with its solids. */
@FunctionalInterface
public interface CaptureLaw {
  /**
   * What is caught of a feed.
   *
   * @param feed the feed
   * @return the shares
   */
  Captured of(Stream feed);

  /**
   * Shares caught.
   *
   * @param fibre of the fibre
   * @param organicFines of the organic fines
   * @param mineralFines of the mineral fines
   * @param sand of each class of the sand, in the order of the constituents
   * @param notes what is the matter with this feed
   */
  record Captured(
      double fibre,
      double organicFines,
      double mineralFines,
      List<Double> sand,
      List<UnitNote> notes) {
    /** Checks that all are shares and copies the lists. */
    public Captured {
      sand = List.copyOf(sand);
      notes = List.copyOf(notes);
      if (!isShare(fibre)
          || !isShare(organicFines)
          || !isShare(mineralFines)
          || !sand.stream().allMatch(Captured::isShare)) {
        throw new IllegalArgumentException(
            "shares caught lie in 0 to 1 but were fibre "
                + fibre
                + ", organic fines "
                + organicFines
                + ", mineral fines "
                + mineralFines
                + ", sand "
                + sand);
      }
    }

    private static boolean isShare(double share) {
      return share >= 0 && share <= 1;
    }

    double share(int constituent) {
      return switch (constituent) {
        case Constituents.WATER, Constituents.DISSOLVED -> 0;
        case Constituents.FIBRE -> fibre;
        case Constituents.ORGANIC_FINES -> organicFines;
        case Constituents.MINERAL_FINES -> mineralFines;
        default -> sand.get(constituent - Constituents.SAND);
      };
    }
  }

  /**
   * Shares that do not depend on the feed, as a maker or a test states them.
   *
   * @param captured the shares
   * @return the law
   */
  static CaptureLaw fixed(Captured captured) {
    return feed -> captured;
  }
}
