package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.settling.SettlingVelocities;

/**
 * What was measured of the deposition velocity beside what the rule requires, at the concentration
 * measured, with no higher one assumed.
 *
 * <p>No table of single measurements with all conditions could be read. {@code
 * measured-deposits.csv} holds what could: the ends of the ranges in the abstract of a report, and
 * values of fits that authors gave for their own measurements. Beside them stand the regressions of
 * large collections, tried at random conditions within their data. A fit is the middle of its
 * measurements: some of them lie above it.
 *
 * <p>Sources: May, Brown, Hare and Jones (1989), HR Wallingford report SR 221, its abstract read;
 * greatest velocity and greatest concentration are paired here, as are the least; roughness of
 * concrete 0.6 mm is common practice, no source. Graf, Robinson and Yucel (1970), Lehigh
 * University: fit F_L = 0.928 C^0.105 d^0.058, C in per cent, d in mm, sands of 0.45 and 0.88 mm in
 * 4 and 6 in pipe (from memory, unverified). Durand and Condolios (1952): plateau 1.05 for coarse
 * sand (from memory, unverified). Soleil and Ballade (1952), figure of Miedema, Slurry Transport,
 * section 6.4, points on both sides of Durand's curve; that curve is taken, concentration about 10
 * %. Ranges of the collections: as the classes of the correlations say; of May (1996) 77 to 450 mm,
 * 0.16 to 8.3 mm, 0.24 to 1.5 m/s and 2.3 to 2110 ppm, 332 data (from memory, unverified).
 */
class MeasuredDepositsTest {
  private static final Liquid WATER = new Liquid(998.207, 1.0016e-3);
  private static final double QUARTZ_KG_M3 = 2650;
  private static final double SMOOTH_M = 1e-5;
  private static final int TRIES = 4_000;
  private static final int DRAWN = 60;

  /** Coarser sand than this keeps to the margin over May's fit, finer does not. */
  private static final double FINEST_OF_MAY_M = 0.6e-3;

  /** Each set with what it is, in the order of the page. */
  private static final Map<String, String> SETS = new LinkedHashMap<>();

  static {
    SETS.put("SR 221", "ends of the ranges, 0.72 mm, rough concrete 300 mm");
    SETS.put("Lehigh", "authors' fit, 0.45 and 0.88 mm, 4 and 6 in");
    SETS.put("Durand", "plateau of coarse sand, 40 to 580 mm");
    SETS.put("Soleil and Ballade", "points about Durand's curve, 0.55 and 0.60 mm, 580 and 700 mm");
    SETS.put("Turian", "fit of 864 data, from 2 %");
    SETS.put("Oroskar and Turian", "fit of some 360 data, 1 to 30 %, 0.1 to 3 mm");
    SETS.put("May", "fit of 332 data in sewers, 0.6 mm and coarser");
    SETS.put("May, finer", "the same fit, 0.16 to 0.6 mm");
    SETS.put("Ab Ghani", "fit in sewers, 154 to 450 mm, to 1450 ppm");
    SETS.put("Macke", "fit in sewers, to 2 mm");
  }

  /**
   * The set whose fit the rule does not follow: a law of bed load, carried on to suspended sand.
   */
  private static final String EXPLAINED = "May, finer";

  private static final List<Deposit> ALL = new ArrayList<>();

  /**
   * A deposition velocity that was measured, and what the rule requires there.
   *
   * @param set the set that it belongs to
   * @param boreM bore of the pipe [m]
   * @param grainM grain size [m]
   * @param fraction volume fraction of sand
   * @param measuredMps velocity at which sand deposits [m/s]
   * @param judged the judgement of standstill
   */
  private record Deposit(
      String set,
      double boreM,
      double grainM,
      double fraction,
      double measuredMps,
      DepositionJudgement judged) {
    double share() {
      return judged.requiredMps() / measuredMps;
    }
  }

  @BeforeAll
  static void collect() throws IOException {
    for (String line :
        Files.readAllLines(Path.of("src/test/resources/measured-deposits.csv")).stream()
            .skip(1)
            .toList()) {
      String[] row = line.split(",");
      double[] n = new double[row.length];
      for (int i = 1; i < row.length; i++) {
        n[i] = Double.parseDouble(row[i]);
      }
      Slurry slurry = sand(n[3] / 1000, n[4] / 100);
      ALL.add(deposit(row[0], slurry, new Bore(n[1] / 1000, n[2] / 1000), n[5]));
    }
    fit("Turian", new TurianHsuMa1987(), 0.02, 0.3, 0.1e-3, 3e-3);
    fit("Oroskar and Turian", new OroskarTurian1980Regression(), 0.01, 0.3, 0.1e-3, 3e-3);
    fit("May", new May1996(), 2.3e-6, 2.11e-3, FINEST_OF_MAY_M, 8.3e-3);
    fit("May, finer", new May1996(), 2.3e-6, 2.11e-3, 0.16e-3, FINEST_OF_MAY_M);
    fit("Ab Ghani", new AbGhani1993(), 0.76e-6, 1450e-6, 0.46e-3, 8.3e-3);
    fit("Macke", new Macke1982(), 1e-6, 2e-3, 0.1e-3, 2e-3);
  }

  private static Slurry sand(double grainM, double fraction) {
    return new Slurry(WATER, QUARTZ_KG_M3, GrainShape.NATURAL, grainM, grainM, fraction);
  }

  private static Deposit deposit(String set, Slurry slurry, Bore bore, double measuredMps) {
    return new Deposit(
        set,
        bore.diameterM(),
        slurry.d50M(),
        slurry.volumeFraction(),
        measuredMps,
        DepositionRule.DEFAULT.judge(SandLoad.even(slurry), bore, 0, 0));
  }

  /** A regression at random conditions within its data. */
  private static void fit(
      String set,
      DepositionVelocityModel model,
      double less,
      double more,
      double fine,
      double coarse) {
    SplittableRandom random = new SplittableRandom(1969);
    for (int i = 0; i < TRIES; i++) {
      Slurry slurry = sand(between(random, fine, coarse), between(random, less, more));
      Bore bore = new Bore(between(random, 0.05, 0.5), SMOOTH_M);
      var estimate = model.velocityMps(slurry, bore);
      boolean tested =
          !set.startsWith("May")
              || bore.diameterM() > 0.077
                  && bore.diameterM() < 0.45
                  && estimate.value() > 0.24
                  && estimate.value() < 1.5;
      if (tested && (estimate.inRange() || set.startsWith("May"))) {
        ALL.add(deposit(set, slurry, bore, estimate.value()));
      }
    }
  }

  private static double between(SplittableRandom random, double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  @Test
  void everySetHasItsDeposits() {
    assertThat(ALL.stream().map(Deposit::set).distinct().toList())
        .containsExactlyInAnyOrderElementsOf(SETS.keySet());
    assertThat(ALL).hasSizeGreaterThan(10_000);
  }

  @Test
  void everyDepositLiesBelowTheRequiredVelocityOrIsExplained() {
    assertThat(ALL)
        .filteredOn(deposit -> !deposit.set().equals(EXPLAINED))
        .allSatisfy(
            d ->
                assertThat(d.measuredMps())
                    .as("%s", d)
                    .isLessThanOrEqualTo(d.judged().requiredMps()));
  }

  /**
   * What explains May's fit for fine sand: at the required velocity that sand is in suspension
   * (settling velocity below 0.75 of the shear velocity; below 1 by Bagnold's criterion, from
   * memory, unverified), or the required velocity is within a tenth of the fit.
   */
  @Test
  void fineSandOfMaysFitIsInSuspensionOrNearlyMet() {
    assertThat(ALL)
        .filteredOn(d -> d.set().equals(EXPLAINED) && d.share() < 1)
        .isNotEmpty()
        .allMatch(d -> d.share() > 0.9 || d.share() > 0.8 && settlingOverShear(d) < 0.75);
  }

  /** Settling velocity over shear velocity at the required velocity. */
  private static double settlingOverShear(Deposit deposit) {
    Slurry slurry = sand(deposit.grainM(), deposit.fraction());
    double velocity = deposit.judged().requiredMps();
    double friction = VelocityScale.friction(slurry, new Bore(deposit.boreM(), SMOOTH_M), velocity);
    return SettlingVelocities.DEFAULT.velocityMps(slurry.d50Grain(), slurry.liquid()).value()
        / (velocity * Math.sqrt(friction / 8));
  }

  @Test
  void theTableIsCurrent() throws IOException {
    StringBuilder table =
        new StringBuilder(
            "| set | what | deposits | required over measured: least / middle | where least |\n"
                + "|---|---|---|---|---|\n");
    SETS.forEach(
        (set, what) -> {
          List<Deposit> of =
              ALL.stream()
                  .filter(d -> d.set().equals(set))
                  .sorted(Comparator.comparingDouble(Deposit::share))
                  .toList();
          Deposit least = of.get(0);
          table.append(
              String.format(
                  Locale.ROOT,
                  "| %s | %s | %d | %.2f / %.2f | %.2g mm, %.0f mm, %.2g %%: %.2f m/s, required"
                      + " %.2f |\n",
                  set,
                  what,
                  of.size(),
                  least.share(),
                  of.get(of.size() / 2).share(),
                  1000 * least.grainM(),
                  1000 * least.boreM(),
                  100 * least.fraction(),
                  least.measuredMps(),
                  least.judged().requiredMps()));
        });
    PagePart.isCurrent("measured deposits", table.toString());
  }

  @Test
  void theChartIsCurrent() throws IOException {
    ScatterChart chart =
        new ScatterChart("required velocity, m/s", "measured deposition velocity, m/s", 0.3, 8);
    for (String set : SETS.keySet()) {
      chart.add(
          set,
          ALL.stream()
              .filter(d -> d.set().equals(set))
              .limit(DRAWN)
              .map(d -> new ScatterChart.Point(d.judged().requiredMps(), d.measuredMps()))
              .toList());
    }
    PagePart.isCurrent(
        Path.of("..", "docs", "theory", "pictures", "measured-deposits.svg"), chart.svg());
  }
}
