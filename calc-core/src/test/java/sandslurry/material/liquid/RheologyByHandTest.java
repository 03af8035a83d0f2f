package sandslurry.material.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.RheogramFit.Candidate;
import sandslurry.material.liquid.RheogramFit.Parameter;
import sandslurry.material.liquid.RheogramFit.Weighting;

/** Fits of a rheogram with the textbook formulas of least squares worked by hand. */
class RheologyByHandTest {
  /**
   * x 10 to 60 1/s, y in Pa: n = 6, Σx = 210, Σx² = 9100, Σy = 21, Σy² = 89.92, Σxy = 904; Sxx =
   * 1750, Sxy = 169, Syy = 16.42.
   */
  private static final double[] STRESSES = {1.1, 1.9, 3.2, 3.9, 5.1, 5.8};

  private final RheogramFit fit =
      RheogramFit.of(
          IntStream.range(0, 6)
              .mapToObj(i -> new ViscometerReading(10 * (i + 1), STRESSES[i]))
              .toList(),
          Weighting.SAME_PASCALS);

  private static Candidate law(RheogramFit fit, String model) {
    return fit.candidates().stream().filter(c -> c.model().equals(model)).findFirst().orElseThrow();
  }

  /**
   * mu = 904/9100 = 0.0993407, S = 89.92 - 904²/9100 = 0.116044; error √(S/5/9100) = 0.00159700;
   * AICc (Hurvich and Tsai 1989) with k = 2: 6 ln(S/6) + 4 + 12/3 = -15.6733.
   */
  @Test
  void aStraightLineThroughTheOrigin() {
    Candidate newtonian = law(fit, "Newtonian");
    Parameter viscosity = newtonian.parameters().get(0);
    assertThat(viscosity.value()).isCloseTo(0.0993407, within(1e-7));
    assertThat(viscosity.standardError()).isCloseTo(0.00159700, within(1e-8));
    assertThat(newtonian.rmsePa()).isCloseTo(Math.sqrt(0.116044 / 6), within(1e-6));
    assertThat(newtonian.criterion()).isCloseTo(-15.6733, within(1e-3));
  }

  /**
   * Slope 169/1750 = 0.0965714, intercept 3.5 - 35 · 0.0965714 = 0.12, S = 16.42 - 169²/1750 =
   * 0.0994286, s² = S/4; error of the intercept √(s² 9100/(6 · 1750)) = 0.146775; AICc with k = 3:
   * 6 ln(S/6) + 6 + 24/2 = -6.6004.
   */
  @Test
  void aStraightLineWithAnIntercept() {
    Candidate bingham = law(fit, "Bingham");
    assertThat(bingham.parameters().get(0).value()).isCloseTo(0.12, within(1e-9));
    assertThat(bingham.parameters().get(0).standardError()).isCloseTo(0.146775, within(1e-6));
    assertThat(bingham.parameters().get(1).value()).isCloseTo(0.0965714, within(1e-7));
    assertThat(bingham.criterion()).isCloseTo(-6.6004, within(1e-3));
    // 9 more than the best: the readings do not speak for a yield stress.
    assertThat(fit.best().model()).isEqualTo("Newtonian");
    assertThat(fit.equallyGood()).doesNotContain(bingham);
  }

  /**
   * Two errors of the viscosity either way, 1 + 2 · 0.0015970/0.0993407 = 1.032152, and two errors
   * of the intercept that a line with one would have, 2 · 0.146775 · 1.032152 = 0.302989 Pa.
   */
  @Test
  void aYieldStressThatTheFitHasThrownAwayMayBeThere() {
    Carrier.Scatter scatter = fit.scatter(law(fit, "Newtonian"));
    assertThat(scatter.factor()).isCloseTo(1.032152, within(1e-6));
    assertThat(scatter.thicker().yieldStressPa()).isCloseTo(0.302989, within(1e-5));
    assertThat(scatter.thicker().consistency()).isCloseTo(0.0993407 * 1.032152, within(1e-6));
    assertThat(scatter.thinner().yieldStressPa()).isZero();
    assertThat(scatter.thinner().consistency()).isCloseTo(0.0993407 / 1.032152, within(1e-6));
  }

  /**
   * Of the line the error is greatest beside the stress at 10 1/s: √(s² (1/6 + 25²/1750))/1.085714
   * = 0.105099, so a factor of 1.210198; thicker (0.12 + 2 · 0.146775) · 1.210198 Pa.
   */
  @Test
  void theYieldStressOfALineIsKnownToTwoErrors() {
    Carrier.Scatter scatter = fit.scatter(law(fit, "Bingham"));
    assertThat(scatter.factor()).isCloseTo(1.210198, within(1e-5));
    assertThat(scatter.thicker().yieldStressPa()).isCloseTo(0.500477, within(1e-5));
    assertThat(scatter.thinner().yieldStressPa()).isZero();
  }

  /**
   * Equally good in per cent: mu = Σ(x/y)/Σ(x/y)²; x/y = 8, 10, 12.5: 30.5/320.25 with 3 readings.
   */
  @Test
  void readingsEquallyGoodInPerCent() {
    RheogramFit three =
        RheogramFit.of(
            List.of(
                new ViscometerReading(8, 1),
                new ViscometerReading(20, 2),
                new ViscometerReading(50, 4)),
            Weighting.SAME_PER_CENT);
    Candidate newtonian = law(three, "Newtonian");
    assertThat(newtonian.parameters().get(0).value()).isCloseTo(30.5 / 320.25, within(1e-9));
    // Too few to rank by AICc: √(S/(3 - 1)), S = 3 - 30.5²/320.25.
    assertThat(newtonian.criterion())
        .isCloseTo(Math.sqrt((3 - 30.5 * 30.5 / 320.25) / 2), within(1e-9));
  }

  /**
   * On one shear rate the error of the mean is s/√n: 0.2/√3 of 2.2 Pa; half of it a yield stress.
   */
  @Test
  void oneShearRate() {
    RheogramFit one =
        RheogramFit.of(
            List.of(
                new ViscometerReading(10, 2.0),
                new ViscometerReading(10, 2.2),
                new ViscometerReading(10, 2.4)),
            Weighting.SAME_PASCALS);
    Candidate half = law(one, "Herschel-Bulkley");
    assertThat(half.parameters().get(0).value()).isCloseTo(1.1, within(1e-9));
    assertThat(half.parameters().get(0).standardError())
        .isCloseTo(0.2 / Math.sqrt(3) / 2, within(1e-9));
    assertThat(half.parameters().get(1).value()).isCloseTo(1.1 / Math.pow(10, 0.4), within(1e-9));
    assertThat(half.rmsePa()).isCloseTo(Math.sqrt(0.08 / 3), within(1e-9));
    assertThat(half.residualsPa().get(2)).isCloseTo(0.2, within(1e-12));
  }

  /** A liquid thickened by 1.5 has 1.5 times the stress at any shear rate. */
  @Test
  void thickeningMultipliesTheStress() {
    for (Rheology liquid :
        List.of(
            new Newtonian(0.02),
            new PowerLaw(0.5, 0.4),
            new Bingham(3, 0.02),
            new HerschelBulkley(3, 0.5, 0.4))) {
      for (double rate : new double[] {0.1, 30}) {
        assertThat(liquid.thickened(1.5).shearStressPa(rate))
            .isCloseTo(1.5 * liquid.shearStressPa(rate), within(1e-12));
      }
      assertThat(liquid.isNewtonian()).isEqualTo(liquid instanceof Newtonian);
    }
    // The tangent K n G^(n-1) of 0.5 G^0.4 at 32 1/s: 0.2 · 0.125.
    assertThat(new PowerLaw(0.5, 0.4).tangentViscosityPaS(32)).isCloseTo(0.025, within(1e-12));
  }

  /** 10 Pa at 12 % solids as the power 5.5: at 6 % 10/2^5.5. */
  @Test
  void manureOfHalfTheSolidsHasAFortyFifthOfTheYieldStress() {
    assertThat(Carriers.yieldStressPa(0.12)).isCloseTo(10, within(1e-12));
    assertThat(Carriers.yieldStressPa(0.06)).isCloseTo(0.220971, within(1e-6));
  }

  /**
   * At 35 degC the rows of the table of Achkari-Begdouri and Goodrich (1992; from memory,
   * unverified): total solids, K and n.
   */
  @ParameterizedTest
  @CsvSource({
    "0.025, 0.042, 0.710",
    "0.054, 0.192, 0.562",
    "0.075, 0.525, 0.533",
    "0.091, 1.052, 0.467",
    "0.121, 5.885, 0.367"
  })
  void manureOfATabulatedContentHasItsPowerLaw(double solids, double k, double n) {
    Carrier manure = Carriers.manure(solids, 308.15);
    assertThat(manure.rheology().consistency()).isCloseTo(k, within(1e-9 * k));
    assertThat(manure.rheology().index()).isCloseTo(n, within(1e-9));
  }

  /**
   * An error of K and n goes into ln τ = ln K + n ln γ̇: √(var K/K² + 2 cov ln γ̇/K + var n ln²
   * γ̇), at the worst reading.
   */
  @Test
  void theScatterOfAPowerLaw() {
    Candidate power = law(fit, "power law");
    double k = power.parameters().get(0).value();
    double worst = 0;
    for (int i = 1; i <= 6; i++) {
      double log = Math.log(10 * i);
      double variance =
          power.covariance().get(0).get(0) / k / k
              + 2 * power.covariance().get(0).get(1) * log / k
              + power.covariance().get(1).get(1) * log * log;
      worst = Math.max(worst, Math.sqrt(variance));
    }
    assertThat(worst).isBetween(0.01, 0.1);
    assertThat(fit.scatter(power).factor()).isCloseTo(1 + 2 * worst, within(1e-9));
  }

  /** exp(4830 (1/278.15 − 1/308.15)) · 50^(0.0046831 · −30) = 5.4224 · 0.57717 = 3.1297. */
  @Test
  void theMeasuredRatioOfColdManure() {
    assertThat(Carriers.coldRatio(308.15)).isEqualTo(1);
    assertThat(Carriers.coldRatio(278.15)).isCloseTo(3.1297, within(1e-4));
  }

  /** A kilogram of 10 % solids at 35 °C: 0.9 kg of water and 0.1 kg of 1450 kg/m³. */
  @Test
  void theDensityOfManure() {
    double water = Water.at(308.15).densityKgM3();
    assertThat(water).isCloseTo(994.03, within(0.05));
    assertThat(Carriers.manure(0.1, 308.15).densityKgM3())
        .isCloseTo(1 / (0.9 / water + 0.1 / 1450), within(1e-9));
  }

  /** Twice as thick has twice the yield stress, and at least the one that may be hidden. */
  @Test
  void aHiddenYieldStressCountsWhereItIsMore() {
    Carrier.Scatter hidden = Carrier.Scatter.of(Carrier.Source.SOLIDS, new PowerLaw(1, 0.5), 2, 3);
    assertThat(hidden.thicker()).isEqualTo(new HerschelBulkley(3, 2, 0.5));
    assertThat(hidden.thinner().consistency()).isEqualTo(0.5);
    assertThat(hidden.matters()).isTrue();
    Carrier.Scatter plain = Carrier.Scatter.of(Carrier.Source.SOLIDS, new Bingham(5, 1), 2, 3);
    assertThat(plain.thicker()).isEqualTo(new Bingham(10, 2));
    assertThat(Carrier.Scatter.none(new Bingham(5, 1)).matters()).isFalse();
  }

  /** 1 mPa.s in 1000 kg/m³. */
  @Test
  void kinematicViscosity() {
    assertThat(new Liquid(1000, 1e-3).kinematicViscosityM2ps()).isCloseTo(1e-6, within(1e-18));
  }
}
