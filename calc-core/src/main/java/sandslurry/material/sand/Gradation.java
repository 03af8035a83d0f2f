package sandslurry.material.sand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sandslurry.numeric.StandardNormal;
import sandslurry.units.Kind;
import sandslurry.units.UnitSystem;

/**
 * The sizes of the grains of a sand: mass passing against sieve size.
 *
 * <p>Between two sieves the mass passing is linear in the logarithm of the size.
 *
 * <p>No grain is lost at the ends. What passes the smallest sieve is spread between that sieve and
 * half its opening; what stays on the largest sieve is spread between that sieve and twice its
 * opening: one step of the usual series of sieves, whose openings double. {@link #notes} says how
 * much sand this concerns.
 */
public final class Gradation {
  /**
   * The ASTM No. 200 sieve [m]: finer grains count as fines, which thicken the carrier, coarser
   * ones as sand, which it must carry.
   */
  public static final double FINES_BOUNDARY_M = 75e-6;

  private static final double SERIES_STEP = 2;
  private static final double WIDEST_CLASS = Math.sqrt(2);
  private static final double LEAST_PASSING_LARGEST = 0.85;
  private static final double MOST_PASSING_SMALLEST = 0.5;

  /** A log-normal sand is cut off three standard deviations from its middle. */
  private static final double TAIL = 3;

  private static final double TAIL_STEP = 0.25;

  private final double[] sizes;
  private final double[] passing;
  private final List<String> notes;

  /** Points in ascending order, from the last with nothing passing to the first with all. */
  private Gradation(List<SievePoint> points, List<String> notes) {
    int from = 0;
    while (points.get(from + 1).fractionPassing() <= 0) {
      from++;
    }
    int to = points.size() - 1;
    while (points.get(to - 1).fractionPassing() >= 1) {
      to--;
    }
    List<SievePoint> used = points.subList(from, to + 1);
    this.sizes = used.stream().mapToDouble(SievePoint::sizeM).toArray();
    this.passing = used.stream().mapToDouble(SievePoint::fractionPassing).toArray();
    this.notes = List.copyOf(notes);
  }

  /**
   * Makes the gradation of a sieve analysis.
   *
   * @param points two sieves or more, in any order
   * @return the gradation
   * @throws IllegalArgumentException if the points have {@link #problems}; the message holds all
   */
  public static Gradation of(List<SievePoint> points) {
    List<String> problems = problems(points);
    if (!problems.isEmpty()) {
      throw new IllegalArgumentException(String.join("; ", problems));
    }
    List<SievePoint> sorted = new ArrayList<>(ascending(points));
    SievePoint smallest = sorted.get(0);
    SievePoint largest = sorted.get(sorted.size() - 1);
    List<String> notes = new ArrayList<>();
    if (smallest.fractionPassing() > 0) {
      double end = smallest.sizeM() / SERIES_STEP;
      sorted.add(0, new SievePoint(end, 0));
      notes.add(
          percent(smallest.fractionPassing())
              + " of the sand passes the smallest sieve; it is taken to lie between "
              + millimetres(end)
              + " and "
              + millimetres(smallest.sizeM())
              + ".");
    }
    if (largest.fractionPassing() < 1) {
      double end = largest.sizeM() * SERIES_STEP;
      sorted.add(new SievePoint(end, 1));
      notes.add(
          percent(1 - largest.fractionPassing())
              + " of the sand stays on the largest sieve; it is taken to lie between "
              + millimetres(largest.sizeM())
              + " and "
              + millimetres(end)
              + ".");
    }
    return new Gradation(sorted, notes);
  }

  /**
   * Makes the gradation of a sand of which only two sizes are known: log-normal, cut off at three
   * standard deviations. With d85 equal to d50 all grains are of one size.
   *
   * @param d50M size that half of the mass passes [m]
   * @param d85M size that 85 % of the mass passes [m]
   * @return the gradation
   * @throws IllegalArgumentException unless 0 &lt; d50 ≤ d85
   */
  public static Gradation ofD50D85(double d50M, double d85M) {
    if (!(d50M > 0) || !(d85M >= d50M) || !Double.isFinite(d85M)) {
      throw new IllegalArgumentException(
          "need 0 < d50 <= d85 but have d50 = " + d50M + " m and d85 = " + d85M + " m");
    }
    if (d85M == d50M) {
      return new Gradation(
          List.of(new SievePoint(d50M, 0), new SievePoint(d50M, 1)),
          List.of("All grains are taken to be of one size."));
    }
    double z85 = StandardNormal.quantile(0.85);
    double deviation = Math.log(d85M / d50M) / z85;
    List<SievePoint> points = new ArrayList<>();
    points.add(new SievePoint(d50M * Math.exp(-TAIL * deviation), 0));
    for (double z = -TAIL + TAIL_STEP; z < TAIL - TAIL_STEP / 2; z += TAIL_STEP) {
      points.add(new SievePoint(d50M * Math.exp(z * deviation), StandardNormal.shareBelow(z)));
      if (z < z85 && z + TAIL_STEP > z85) {
        points.add(new SievePoint(d85M, 0.85));
      }
    }
    points.add(new SievePoint(d50M * Math.exp(TAIL * deviation), 1));
    return new Gradation(
        points, List.of("The gradation is taken as log-normal through d50 and d85."));
  }

  /**
   * All that is wrong with a sieve analysis.
   *
   * @param points the sieves, in any order
   * @return one sentence each, without a stop; empty when the analysis can be used
   */
  public static List<String> problems(List<SievePoint> points) {
    List<String> problems = new ArrayList<>();
    if (points.size() < 2) {
      problems.add("a sieve analysis needs two sieves or more but has " + points.size());
    }
    for (int i = 0; i < points.size(); i++) {
      SievePoint point = points.get(i);
      if (!(point.sizeM() > 0) || !Double.isFinite(point.sizeM())) {
        problems.add("line " + (i + 1) + ": a sieve needs a positive size");
      }
      if (!(point.fractionPassing() >= 0 && point.fractionPassing() <= 1)) {
        problems.add("line " + (i + 1) + ": the part that passes must lie in 0 % to 100 %");
      }
    }
    if (!problems.isEmpty()) {
      return problems;
    }
    List<SievePoint> sorted = ascending(points);
    for (int i = 1; i < sorted.size(); i++) {
      SievePoint small = sorted.get(i - 1);
      SievePoint large = sorted.get(i);
      if (small.sizeM() == large.sizeM()) {
        problems.add("the sieve of " + millimetres(large.sizeM()) + " is given twice");
      } else if (small.fractionPassing() > large.fractionPassing()) {
        problems.add(
            "more passes the sieve of "
                + millimetres(small.sizeM())
                + " ("
                + percent(small.fractionPassing())
                + ") than the larger one of "
                + millimetres(large.sizeM())
                + " ("
                + percent(large.fractionPassing())
                + ")");
      }
    }
    SievePoint smallest = sorted.get(0);
    SievePoint largest = sorted.get(sorted.size() - 1);
    if (smallest.fractionPassing() > MOST_PASSING_SMALLEST) {
      problems.add(
          percent(smallest.fractionPassing())
              + " passes the smallest sieve of "
              + millimetres(smallest.sizeM())
              + ": a finer sieve is needed that at most half passes");
    }
    if (largest.fractionPassing() < LEAST_PASSING_LARGEST) {
      problems.add(
          "only "
              + percent(largest.fractionPassing())
              + " passes the largest sieve of "
              + millimetres(largest.sizeM())
              + ": a coarser sieve is needed that at least 85 % passes");
    }
    return problems;
  }

  private static List<SievePoint> ascending(List<SievePoint> points) {
    return points.stream().sorted(Comparator.comparingDouble(SievePoint::sizeM)).toList();
  }

  private static String millimetres(double sizeM) {
    return UnitSystem.METRIC.show(Kind.GRAIN, sizeM);
  }

  private static String percent(double fraction) {
    return UnitSystem.METRIC.show(Kind.PERCENT, fraction);
  }

  /**
   * What was assumed where nothing was measured.
   *
   * @return sentences for the report; empty when the sieves enclose all the sand
   */
  public List<String> notes() {
    return notes;
  }

  /**
   * The size that a fraction of the mass passes.
   *
   * @param fraction mass fraction, 0 to 1
   * @return the least such size [m]
   */
  public double sizePassingM(double fraction) {
    if (!(fraction >= 0 && fraction <= 1)) {
      throw new IllegalArgumentException("a mass fraction lies in 0 to 1 but was " + fraction);
    }
    int i = 1;
    while (i < sizes.length - 1 && passing[i] < fraction) {
      i++;
    }
    double t = (fraction - passing[i - 1]) / (passing[i] - passing[i - 1]);
    return t >= 1 ? sizes[i] : sizes[i - 1] * Math.pow(sizes[i] / sizes[i - 1], t);
  }

  /**
   * The sizes between which the mass passing was told.
   *
   * @return sieve sizes in ascending order, from none passing to all [m]
   */
  public double[] sievesM() {
    return sizes.clone();
  }

  /**
   * The mass that passes a sieve.
   *
   * @param sizeM opening of the sieve, positive [m]
   * @return mass fraction, 0 to 1
   */
  public double fractionPassing(double sizeM) {
    if (!(sizeM > 0)) {
      throw new IllegalArgumentException("a sieve needs a positive size but has " + sizeM + " m");
    }
    if (sizeM >= sizes[sizes.length - 1]) {
      return 1;
    }
    if (sizeM <= sizes[0]) {
      return 0;
    }
    int i = 1;
    while (sizeM > sizes[i]) {
      i++;
    }
    double t = Math.log(sizeM / sizes[i - 1]) / Math.log(sizes[i] / sizes[i - 1]);
    return passing[i - 1] + t * (passing[i] - passing[i - 1]);
  }

  /**
   * The middle size.
   *
   * @return size that half of the mass passes [m]
   */
  public double d50M() {
    return sizePassingM(0.5);
  }

  /**
   * The coarse size that deposition correlations ask for.
   *
   * @return size that 85 % of the mass passes [m]
   */
  public double d85M() {
    return sizePassingM(0.85);
  }

  /**
   * The part of the sand that a sieve retains.
   *
   * @param sizeM opening of the sieve [m]
   * @return gradation of the coarser part alone, whose mass counts as one
   * @throws IllegalArgumentException if no grain is coarser
   */
  public Gradation coarserThan(double sizeM) {
    double cut = fractionPassing(sizeM);
    if (!(cut < 1)) {
      throw new IllegalArgumentException("no grain is coarser than " + millimetres(sizeM));
    }
    if (sizeM <= sizes[0]) {
      return this;
    }
    List<SievePoint> points = new ArrayList<>();
    points.add(new SievePoint(sizeM, 0));
    for (int i = 0; i < sizes.length; i++) {
      if (sizes[i] > sizeM) {
        points.add(new SievePoint(sizes[i], (passing[i] - cut) / (1 - cut)));
      }
    }
    return new Gradation(points, notes);
  }

  /**
   * The sand that counts as such.
   *
   * @return the part coarser than {@link #FINES_BOUNDARY_M}
   */
  public Gradation withoutFines() {
    return coarserThan(FINES_BOUNDARY_M);
  }

  /**
   * The sand cut into classes none of which is wider than a factor of √2 in size.
   *
   * @return the classes in ascending order, without empty ones; the mass fractions add up to 1
   */
  public List<SizeClass> classes() {
    List<SizeClass> classes = new ArrayList<>();
    for (int i = 1; i < sizes.length; i++) {
      double mass = passing[i] - passing[i - 1];
      if (mass > 0) {
        double width = sizes[i] / sizes[i - 1];
        int parts = Math.max(1, (int) Math.ceil(Math.log(width) / Math.log(WIDEST_CLASS) - 1e-9));
        for (int part = 0; part < parts; part++) {
          double low = sizes[i - 1] * Math.pow(width, (double) part / parts);
          double high = sizes[i - 1] * Math.pow(width, (part + 1.0) / parts);
          classes.add(new SizeClass(low, high, Math.sqrt(low * high), mass / parts));
        }
      }
    }
    return List.copyOf(classes);
  }
}
