package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RheogramFitTest {
  private static final double[] RATES = {1, 3, 10, 30, 100, 200, 500, 1000};

  private static List<ViscometerReading> readings(Rheology law, double noise, long seed) {
    Random random = new Random(seed);
    return Arrays.stream(RATES)
        .mapToObj(
            rate ->
                new ViscometerReading(
                    rate, law.shearStressPa(rate) * (1 + noise * random.nextGaussian())))
        .toList();
  }

  @ParameterizedTest
  @EnumSource(RheogramFit.Weighting.class)
  void findsTheLawThatMadeExactReadings(RheogramFit.Weighting weighting) {
    for (Rheology law :
        List.of(
            new Newtonian(0.004),
            new PowerLaw(1.052, 0.467),
            new Bingham(4, 0.02),
            new HerschelBulkley(6, 2.5, 0.42))) {
      RheogramFit fit = RheogramFit.of(readings(law, 0, 1), weighting);
      Rheology found = fit.best().rheology().orElseThrow();
      assertThat(found).hasSameClassAs(law);
      assertThat(found.yieldStressPa()).isCloseTo(law.yieldStressPa(), within(1e-7));
      assertThat(found.consistency()).isCloseTo(law.consistency(), within(1e-7));
      assertThat(found.index()).isCloseTo(law.index(), within(1e-8));
    }
  }

  @Test
  void doesNotForceAYieldStressOnALiquidWithoutOne() {
    RheogramFit fit =
        RheogramFit.of(readings(new PowerLaw(0.01, 1.2), 0, 1), RheogramFit.Weighting.SAME_PASCALS);
    RheogramFit.Candidate bingham =
        fit.candidates().stream()
            .filter(c -> c.model().equals("Bingham"))
            .findFirst()
            .orElseThrow();
    assertThat(bingham.rheology()).isEmpty();
    assertThat(bingham.remark()).contains("no positive yield stress");
    assertThat(fit.warnings()).anyMatch(w -> w.contains("thickens with shear"));
  }

  @Test
  void standardErrorsCoverTheTruthAboutAsOftenAsTheyShould() {
    PowerLaw truth = new PowerLaw(1.052, 0.467);
    int inside = 0;
    int trials = 300;
    for (int seed = 0; seed < trials; seed++) {
      RheogramFit.Candidate fit =
          RheogramFit.of(readings(truth, 0.05, seed), RheogramFit.Weighting.SAME_PER_CENT)
              .candidates()
              .stream()
              .filter(c -> c.model().equals("power law"))
              .findFirst()
              .orElseThrow();
      RheogramFit.Parameter index = fit.parameters().get(1);
      if (Math.abs(index.value() - truth.index()) < index.standardError()) {
        inside++;
      }
    }
    // Student's t with 6 degrees of freedom lies within 1 for 64 % of trials; 3 sigma of 300 trials
    // is 8 points.
    assertThat(inside / (double) trials).isBetween(0.56, 0.72);
  }

  @Test
  void saysSoWhenTwoModelsFitEquallyWell() {
    RheogramFit fit =
        RheogramFit.of(
            List.of(
                new ViscometerReading(50, 9.0),
                new ViscometerReading(80, 9.2),
                new ViscometerReading(120, 12.9),
                new ViscometerReading(180, 13.0),
                new ViscometerReading(250, 17.9),
                new ViscometerReading(350, 18.4)),
            RheogramFit.Weighting.SAME_PASCALS);
    assertThat(fit.warnings()).anyMatch(w -> w.contains("fit about equally well"));
    assertThat(fit.warnings()).anyMatch(w -> w.contains("span less than a factor of 10"));
  }

  @Test
  void tellsThatThreeReadingsAreTooFewToChoose() {
    RheogramFit fit =
        RheogramFit.of(
            List.of(
                new ViscometerReading(10, 3),
                new ViscometerReading(100, 9),
                new ViscometerReading(300, 15)),
            RheogramFit.Weighting.SAME_PASCALS);
    assertThat(fit.warnings()).anyMatch(w -> w.startsWith("Only 3 readings"));
    assertThat(fit.candidates())
        .filteredOn(c -> c.model().equals("Herschel-Bulkley"))
        .allMatch(c -> c.rheology().isEmpty());
    assertThat(fit.shearRates().check(5)).isPresent();
    assertThat(fit.shearRates().check(300)).isEmpty();
  }

  @Test
  void tellsAllProblemsOfATableAtOnce() {
    List<ViscometerReading> table =
        List.of(
            new ViscometerReading(10, 3),
            new ViscometerReading(10, 3),
            new ViscometerReading(-1, 2),
            new ViscometerReading(20, Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> RheogramFit.of(table, RheogramFit.Weighting.SAME_PASCALS))
        .withMessageContaining("reading 2")
        .withMessageContaining("twice")
        .withMessageContaining("reading 3")
        .withMessageContaining("-1.0 1/s")
        .withMessageContaining("reading 4")
        .withMessageContaining("NaN Pa");
    assertThat(RheogramFit.problems(List.of(new ViscometerReading(1, 1))))
        .containsExactly("a fit needs at least 3 readings but has 1");
    assertThat(
            RheogramFit.problems(
                List.of(
                    new ViscometerReading(1, 1),
                    new ViscometerReading(1, 2),
                    new ViscometerReading(5, 3))))
        .isEmpty();
  }

  @Test
  void readingsOnOneShearRateTellTheStressThereAndNoShape() {
    RheogramFit fit =
        RheogramFit.of(
            List.of(
                new ViscometerReading(20, 19),
                new ViscometerReading(20, 20),
                new ViscometerReading(20, 21)),
            RheogramFit.Weighting.SAME_PASCALS);
    assertThat(fit.equallyGood())
        .extracting(RheogramFit.Candidate::model)
        .containsExactlyInAnyOrder("Newtonian", "power law", "Herschel-Bulkley");
    for (RheogramFit.Candidate law : fit.equallyGood()) {
      assertThat(law.rheology().orElseThrow().shearStressPa(20)).isCloseTo(20, within(1e-9));
      // The mean of three has an error of 1 Pa over the root of 3: twice that either way.
      assertThat(fit.scatter(law).factor()).isCloseTo(1 + 2 / Math.sqrt(3) / 20, within(1e-9));
    }
    assertThat(fit.warnings()).anyMatch(w -> w.contains("one shear rate"));
  }

  @Test
  void aFitThatThrowsTheYieldStressAwayProbesOneOfTheSizeOfItsError() {
    List<ViscometerReading> exact = new java.util.ArrayList<>();
    List<ViscometerReading> noisy = new java.util.ArrayList<>();
    for (int i = 0; i < 8; i++) {
      double rate = 2 * Math.pow(3, i);
      double stress = 3 * Math.pow(rate, 0.5);
      exact.add(new ViscometerReading(rate, stress));
      noisy.add(new ViscometerReading(rate, stress * (1 + (i % 2 == 0 ? 0.05 : -0.05))));
    }
    RheogramFit sharp = RheogramFit.of(exact, RheogramFit.Weighting.SAME_PER_CENT);
    assertThat(sharp.scatter(sharp.best()).matters()).isFalse();
    RheogramFit rough = RheogramFit.of(noisy, RheogramFit.Weighting.SAME_PER_CENT);
    RheogramFit.Candidate power =
        rough.candidates().stream().filter(c -> c.model().equals("power law")).findFirst().get();
    Carrier.Scatter scatter = rough.scatter(power);
    assertThat(scatter.thicker().yieldStressPa()).isBetween(0.05, 5.0);
    assertThat(scatter.thinner().yieldStressPa()).isZero();
    assertThat(scatter.factor()).isBetween(1.02, 1.3);
  }

  @Test
  void fitsALiquidWhoseStressFallsWithTheShearRateOnlyAsNewtonian() {
    RheogramFit fit =
        RheogramFit.of(
            List.of(
                new ViscometerReading(10, 9),
                new ViscometerReading(100, 8),
                new ViscometerReading(300, 7),
                new ViscometerReading(900, 6)),
            RheogramFit.Weighting.SAME_PASCALS);
    assertThat(fit.best().model()).isEqualTo("Newtonian");
    assertThat(fit.candidates().get(3).remark()).contains("does not rise");
  }

  /** Found by fuzzing: one reading of a two-hundredth of its stress gave a flow index of 2.07. */
  @Test
  void aLawThatNoLiquorFollowsIsNotFitted() {
    double[] rates = {5, 10, 20, 40, 80, 150, 250, 400};
    double[] stresses = {0.000208746, 0.0792, 0.142, 0.242, 0.431, 0.702, 1.07, 1.56};
    List<ViscometerReading> readings = new ArrayList<>();
    for (int i = 0; i < rates.length; i++) {
      readings.add(new ViscometerReading(rates[i], stresses[i]));
    }
    RheogramFit fit = RheogramFit.of(readings, RheogramFit.Weighting.SAME_PER_CENT);
    assertThat(fit.equallyGood())
        .isNotEmpty()
        .allMatch(law -> law.rheology().orElseThrow().index() <= 1.5);
    assertThat(fit.warnings()).anyMatch(warning -> warning.contains("no liquor does that"));
  }
}
