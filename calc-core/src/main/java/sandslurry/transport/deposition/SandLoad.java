package sandslurry.transport.deposition;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import sandslurry.material.Slurry;
import sandslurry.material.sand.Gradation;
import sandslurry.pipe.Bore;
import sandslurry.pipe.CircularSegment;

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
   * The limit of deposition of this load in a gravity pipe.
   *
   * @param wetted the wetted section
   * @param darcyFriction Darcy friction factor of the flow, positive
   * @return the velocities of the three relations for sewers
   * @throws IllegalArgumentException if there is no sand, no flow or no friction
   */
  public SewerLimit sewerLimit(CircularSegment wetted, double darcyFriction) {
    double area = wetted.areaM2();
    if (!(highestFraction > 0) || !(area > 0) || !(darcyFriction > 0)) {
      throw new IllegalArgumentException(
          "a limit of deposition needs sand, a wetted section and a friction factor > 0 but has "
              + highestFraction
              + ", "
              + area
              + " m2 and "
              + darcyFriction);
    }
    double finest = AbGhani1993.FINEST_M;
    double macke = 0;
    for (int i = 0; i < sizes.count(); i++) {
      Slurry uniform = slurry.ofUniformSize(sizes.sizeM(i));
      double load =
          highestFraction
              * sizes.share(i)
              * Macke1982.resistance(slurry, uniform.d50Grain(), area)
              / Math.pow(darcyFriction, 3);
      macke = Math.max(macke, Math.pow(load, 0.2));
    }
    return new SewerLimit(
        May1996.valueMps(
            highestFraction,
            May1996.thresholdMps(slurry, finest, wetted.depthM()),
            May1996.capacity(slurry, finest, wetted.diameterM(), area)),
        macke,
        AbGhani1993.demand(slurry, finest, area / wetted.wettedPerimeterM(), highestFraction)
            / Math.pow(darcyFriction, AbGhani1993.FRICTION_POWER));
  }

  /**
   * Limit of deposition of a gravity pipe that need not run full, by the three relations for
   * sewers, each for the wetted section: {@link May1996} with its area and depth, {@link Macke1982}
   * with its area and {@link AbGhani1993} with its hydraulic radius. The largest governs.
   *
   * <p>They were made for less than about 0.2 % of sand by volume and grow without limit beyond.
   * May and Ab Ghani ask less of coarser grains: they count with the finest grain that Ab Ghani
   * tested, 0.46 mm, so that coarser sand never looks easier to carry.
   *
   * @param mayMps velocity by May [m/s]
   * @param mackeMps velocity by Macke [m/s]
   * @param abGhaniMps velocity by Ab Ghani [m/s]
   */
  public record SewerLimit(double mayMps, double mackeMps, double abGhaniMps) {
    /** The most sand by volume for which the relations were made. */
    public static final double MOST_SAND = May1996.MOST_SAND;

    /**
     * The limit.
     *
     * @return the largest of the three [m/s]
     */
    public double governingMps() {
      return Math.max(mayMps, Math.max(mackeMps, abGhaniMps));
    }

    /**
     * The least of the three, the other end of the spread.
     *
     * @return the smallest [m/s]
     */
    public double leastMps() {
      return Math.min(mayMps, Math.min(mackeMps, abGhaniMps));
    }
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
    private final Map<Bore, InBore> known = new HashMap<>();

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
    static Sizes uniform(double sizeM) {
      return new Sizes(new double[] {sizeM}, new double[] {1}, sizeM);
    }

    /** The middle size alone, with the whole concentration. */
    Sizes middleOnly() {
      return uniform(sizesM[0]);
    }

    private static double share(double retained) {
      return Math.min(1, retained / MIDDLE) * Math.min(1, retained / FADES);
    }

    /**
     * These sizes in a pipe, kept since the same pipe is judged time after time; a sand may be
     * shared among threads.
     */
    synchronized InBore in(Bore bore, double densityRatio) {
      InBore found = known.get(bore);
      if (found == null || found.densityRatio != densityRatio) {
        found = new InBore(bore, densityRatio);
        known.put(bore, found);
      }
      return found;
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

    /**
     * The sizes in one bore: what {@link DepositionLimit} needs of them that no viscosity changes.
     * A liquid that thins with shear is judged anew at every flow rate, with the same sizes at the
     * same concentrations.
     */
    final class InBore {
      /** Where Oroskar and Turian's power of C and 1 - C is greatest: 0.1536/(0.1536 + 0.3564). */
      static final double PEAK_FRACTION = 0.1536 / (0.1536 + 0.3564);

      /** The usual and the highest concentration, of a mixture and of the one before. */
      private static final int KEPT = 4;

      private static final double UNKNOWN = -1;

      private final Bore bore;
      private final double densityRatio;
      private final List<Crowd> crowds = new ArrayList<>();

      private InBore(Bore bore, double densityRatio) {
        this.bore = bore;
        this.densityRatio = densityRatio;
      }

      /** The sizes at a concentration of the whole sand. */
      synchronized Crowd at(double fraction) {
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
          suspending = new double[count()];
          wilson = new double[count()];
          for (int i = 0; i < suspending.length; i++) {
            suspending[i] =
                OroskarTurian1980Regression.crowding(Math.min(fraction(i), PEAK_FRACTION));
            wilson[i] = UNKNOWN;
          }
        }

        /** The volume fraction that counts for a size. */
        double fraction(int index) {
          return whole * share(index);
        }

        /** What Oroskar and Turian's velocity has of the concentration, held at its peak. */
        double oroskarTurian(int index) {
          return suspending[index];
        }

        /** {@link WilsonConcentration2006#factor} of a size. */
        double wilson(int index) {
          if (wilson[index] == UNKNOWN) {
            double most = WilsonConcentration2006.crowded(densityRatio, sizeM(index), bore);
            wilson[index] = WilsonConcentration2006.factor(fraction(index), most);
          }
          return wilson[index];
        }
      }
    }
  }
}
