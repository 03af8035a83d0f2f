package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Gradation;

/**
 * The sand that a line must carry.
 *
 * @param slurry liquid and sand at the usual concentration; of a carrier whose viscosity depends on
 *     the shear rate, the apparent viscosity at the wall
 * @param highestFraction the highest volume fraction that comes through, not below the usual one
 * @param sizes the sizes for which it is judged
 */
public record SandLoad(Slurry slurry, double highestFraction, Sizes sizes) {
  /** Checks the order of the fractions. */
  public SandLoad {
    if (!(highestFraction >= slurry.volumeFraction() && highestFraction < 1)) {
      throw new IllegalArgumentException(
          "the highest volume fraction lies between the usual one, "
              + slurry.volumeFraction()
              + ", and 1 but was "
              + highestFraction);
    }
  }

  /**
   * Sand of one size that always comes at the same concentration.
   *
   * @param slurry liquid and sand, judged at its d50
   * @return the load
   */
  public static SandLoad even(Slurry slurry) {
    return new SandLoad(slurry, slurry.volumeFraction(), Sizes.uniform(slurry.d50M()));
  }

  /**
   * The sizes for which a graded sand is judged, each with its share of the concentration.
   *
   * <p>A size d is judged as uniform sand of that size at the concentration C min(1, R/0.5) min(1,
   * R/0.02), R the mass retained on d. So the middle size carries the whole concentration, and a
   * coarse tail its own twice: what is coarser than d counts as if the same mass below it travelled
   * with it. Below 2 % retained the share falls with R², so that a size on which 1 % is retained
   * counts with just that 1 %, and single stones fade out instead of dropping out at a limit.
   *
   * <p>Judged are fixed shares retained, from one half to 0.3 %, and every sieve of the gradation
   * in between, so that no step of a gap-graded sand is missed. At a fixed share retained a coarser
   * sand has a coarser size, so the judgement of a coarser sand is never milder.
   */
  public static final class Sizes {
    /** The share that the middle size retains. */
    private static final double MIDDLE = 0.5;

    /** Below this share retained a tail counts with less than twice its own concentration. */
    private static final double FADES = 0.02;

    private static final double LEAST = 0.003;

    /** What all but 1 % passes: the coarse end of a sand. */
    private static final double COARSE_END = 0.01;

    private static final double[] RETAINED = {
      MIDDLE,
      0.42,
      0.35,
      0.28,
      0.22,
      0.17,
      0.13,
      0.10,
      0.075,
      0.055,
      0.04,
      0.03,
      0.02,
      0.014,
      COARSE_END,
      0.006,
      LEAST
    };

    private final double[] sizesM;
    private final double[] shares;
    private final double coarsestM;

    private Sizes(double[] sizesM, double[] shares, double coarsestM) {
      this.sizesM = sizesM;
      this.shares = shares;
      this.coarsestM = coarsestM;
    }

    /**
     * The sizes of a gradation.
     *
     * @param sand the sand without its fines
     * @return the sizes, the middle one first
     */
    public static Sizes of(Gradation sand) {
      record Point(double sizeM, double retained) {}
      List<Point> points = new ArrayList<>();
      for (double retained : RETAINED) {
        points.add(new Point(sand.sizePassingM(1 - retained), retained));
      }
      for (double sieve : sand.sievesM()) {
        double retained = 1 - sand.fractionPassing(sieve);
        if (retained < MIDDLE && retained > LEAST) {
          points.add(new Point(sieve, retained));
        }
      }
      points.sort(Comparator.comparingDouble(Point::sizeM));
      return new Sizes(
          points.stream().mapToDouble(Point::sizeM).toArray(),
          points.stream().mapToDouble(p -> share(p.retained())).toArray(),
          sand.sizePassingM(1 - COARSE_END));
    }

    /**
     * Sand of one size.
     *
     * @param sizeM the size [m]
     * @return that size with the whole concentration
     */
    public static Sizes uniform(double sizeM) {
      return new Sizes(new double[] {sizeM}, new double[] {1}, sizeM);
    }

    /** The middle size alone, with the whole concentration. */
    Sizes middleOnly() {
      return uniform(sizesM[0]);
    }

    private static double share(double retained) {
      return Math.min(1, retained / MIDDLE) * Math.min(1, retained / FADES);
    }

    int count() {
      return sizesM.length;
    }

    /** A size [m]. */
    double sizeM(int index) {
      return sizesM[index];
    }

    /** Its concentration over that of the whole sand. */
    double share(int index) {
      return shares[index];
    }

    /**
     * The size that all but 1 % of the sand passes.
     *
     * @return the size [m]
     */
    public double coarsestM() {
      return coarsestM;
    }
  }
}
