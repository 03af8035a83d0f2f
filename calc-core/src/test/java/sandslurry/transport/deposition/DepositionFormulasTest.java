package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.fact.step.Trace;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;

/**
 * Values of the formulas by thirty digits apart from this program, for sand of 2650 kg/m3 in a
 * liquid of 1000 kg/m3 and 1 mm2/s and a bore of 0.15 m, g = 9.80665 m/s2. The coefficients are
 * those that each formula names, with its source.
 */
class DepositionFormulasTest {
  private static final Bore PIPE = new Bore(0.15, 5e-5);

  private static Slurry sand(double millimetres, double fraction) {
    double size = millimetres * 1e-3;
    return new Slurry(new Liquid(1000, 1e-3), 2650, GrainShape.NATURAL, size, size, fraction);
  }

  private static double value(DepositionVelocityModel model, double millimetres, double fraction) {
    return model.velocityMps(sand(millimetres, fraction), PIPE).value();
  }

  /** 1.3 · 0.1^0.125 (1 - exp(-6.9 · 0.2)) √(2 g D · 1.65). */
  @Test
  void durandByTheCurveOfSchillerAndHerbich() {
    assertThat(value(new Durand1953(), 0.2, 0.1)).isCloseTo(1.607505671, within(1e-8));
  }

  /** By Ferguson and Church C_D = 7.99088307; K = 0.2335947686. */
  @Test
  void gilliesAndOthersOf2000() {
    assertThat(value(new Gillies2000(), 0.2, 0.1)).isCloseTo(2.193557839, within(1e-8));
  }

  /** Re = D √(g D · 1.65)/nu = 233689.4995. */
  @Test
  void turianHsuAndMa() {
    assertThat(value(new TurianHsuMa1987(), 0.5, 0.1)).isCloseTo(2.101637259, within(1e-8));
  }

  /** Ar = 72.8, 159.97, 164.95, 337, 545.5 and 565: either side of both seams. */
  @ParameterizedTest
  @CsvSource({
    "0.15, 1.705693596, 1.705693596",
    "0.195, 2.336861867, 2.336861867",
    "0.197, 2.332788106, 2.337018545",
    "0.25, 2.409041342, 2.409041342",
    "0.2935, 2.460194005, 2.460665725",
    "0.297, 2.458532198, 2.460665725",
    "1, 2.29415638, 2.460665725"
  })
  void gilliesAndShookOnEitherSideOfTheirSeams(double millimetres, double value, double held) {
    assertThat(value(new GilliesShook(), millimetres, 0.1)).isCloseTo(value, within(1e-8));
    assertThat(GilliesShook.risingMps(sand(1, 0.1), millimetres * 1e-3, PIPE, Trace.NONE))
        .isCloseTo(held, within(1e-8));
  }

  /** C_rm = 0.134098 and 0.368672, on either side of a third; 0.66, its most; 0.119192. */
  @ParameterizedTest
  @CsvSource({
    "0.15, 0.5, 2650, 0.02, 0.749211451",
    "0.15, 0.15, 2650, 0.02, 0.1872201321",
    "0.30, 0.05, 2650, 0.05, 0.2034235517",
    "0.15, 0.5, 4300, 0.02, 0.7976059031"
  })
  void wilsonsFactorForTheConcentration(
      double bore, double millimetres, double density, double fraction, double factor) {
    double size = millimetres * 1e-3;
    Slurry slurry =
        new Slurry(new Liquid(1000, 1e-3), density, GrainShape.NATURAL, size, size, fraction);
    assertThat(
            WilsonConcentration2006.factor(
                slurry, size, fraction, new Bore(bore, 5e-5), Trace.NONE))
        .isCloseTo(factor, within(1e-9));
  }

  /**
   * The points of the chart (from memory, unverified), and beside each the force balance of a bed
   * that slides at 0.4: 0.75 (√(cos θ + sin θ/0.4) - 1).
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0, 0",
    "5, 0.08, 0.0764",
    "10, 0.15, 0.1434",
    "20, 0.27, 0.2548",
    "30, 0.34, 0.3410",
    "35, 0.36, 0.3758",
    "60, 0.36, 0.3758",
    "-20, 0, 0"
  })
  void theChartOfWilsonAndTse(double degrees, double chart, double balance) {
    double angle = Math.toRadians(degrees);
    assertThat(new WilsonTse1984().durandIncrement(angle).value()).isCloseTo(chart, within(1e-12));
    assertThat(chart).isCloseTo(balance, within(0.016));
    double held = Math.toRadians(Math.min(35, Math.max(0, degrees)));
    assertThat(0.75 * (Math.sqrt(Math.cos(held) + Math.sin(held) / 0.4) - 1))
        .isCloseTo(balance, within(5e-5));
  }
}
