package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.List;
import sandslurry.pipe.Bore;

/**
 * The sizes of a sand in one bore: what {@link DepositionLimit} needs of them that no viscosity
 * changes. A liquid that thins with shear is judged anew at every flow rate, with the same sizes at
 * the same concentrations.
 */
final class SizesInBore {
  /** Where Oroskar and Turian's power of C and 1 - C is greatest: 0.1536/(0.1536 + 0.3564). */
  static final double PEAK_FRACTION = 0.1536 / (0.1536 + 0.3564);

  /** The usual and the highest concentration, of a mixture and of the one before. */
  private static final int KEPT = 4;

  private static final double UNKNOWN = -1;

  private final SandLoad.Sizes sizes;
  private final Bore bore;
  private final double densityRatio;
  private final List<Crowd> crowds = new ArrayList<>();

  SizesInBore(SandLoad.Sizes sizes, Bore bore, double densityRatio) {
    this.sizes = sizes;
    this.bore = bore;
    this.densityRatio = densityRatio;
  }

  boolean isOf(Bore otherBore, double otherRatio) {
    return densityRatio == otherRatio && bore.equals(otherBore);
  }

  SandLoad.Sizes sizes() {
    return sizes;
  }

  /** The sizes at a concentration of the whole sand. */
  Crowd at(double fraction) {
    for (Crowd crowd : crowds) {
      if (crowd.whole == fraction) {
        return crowd;
      }
    }
    if (crowds.size() == KEPT) {
      crowds.remove(0);
    }
    Crowd crowd = new Crowd(fraction);
    crowds.add(crowd);
    return crowd;
  }

  /** All sizes at one concentration, each with its share of it. */
  final class Crowd {
    private final double whole;
    private final double[] suspending;
    private final double[] wilson;

    private Crowd(double whole) {
      this.whole = whole;
      suspending = new double[sizes.count()];
      wilson = new double[sizes.count()];
      for (int i = 0; i < suspending.length; i++) {
        suspending[i] = OroskarTurian1980Regression.crowding(Math.min(fraction(i), PEAK_FRACTION));
        wilson[i] = UNKNOWN;
      }
    }

    /** The volume fraction that counts for a size. */
    double fraction(int index) {
      return whole * sizes.share(index);
    }

    /** What Oroskar and Turian's velocity has of the concentration, held at its peak. */
    double oroskarTurian(int index) {
      return suspending[index];
    }

    /** {@link WilsonConcentration2006#factor} of a size. */
    double wilson(int index) {
      if (wilson[index] == UNKNOWN) {
        double most = WilsonConcentration2006.crowded(densityRatio, sizes.sizeM(index), bore);
        wilson[index] = WilsonConcentration2006.factor(fraction(index), most);
      }
      return wilson[index];
    }
  }
}
