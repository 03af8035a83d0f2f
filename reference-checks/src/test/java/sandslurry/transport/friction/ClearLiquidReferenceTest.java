package sandslurry.transport.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.pipe.Bore;
import sandslurry.units.Measure;

class ClearLiquidReferenceTest {
  private static double feet(double number) {
    return Measure.LENGTH.entry("ft").toSi(number);
  }

  private static double inches(double number) {
    return Measure.LENGTH.entry("in").toSi(number);
  }

  // Function Churchill_1977 of the general-purpose Python library CalebBell/fluids 1.3.1; the
  // value at 1e5, 1e-4 is also the one in its documentation. Same formula, hence all digits.
  @ParameterizedTest
  @CsvSource({
    "1e3, 0,    0.06400000000000129",
    "3e3, 1e-3, 0.043691540569894126",
    "1e4, 0,    0.031002130652565126",
    "1e4, 1e-2, 0.04404362283924592",
    "1e5, 1e-4, 0.018462624566280075",
    "2e5, 2e-4, 0.01713608183752882",
    "1e6, 1e-3, 0.020021956409965864",
    "1e7, 1e-5, 0.009058892927957394"
  })
  void agreesWithTheLibraryOnChurchill(double reynolds, double roughness, double expected) {
    ours(PipeFriction.darcyFactor(reynolds, roughness)).isCloseTo(expected, withPercentage(1e-6));
  }

  // Function Colebrook of CalebBell/fluids 1.3.1. Churchill differs by up to 2.1 % there, worst at
  // the rough, slow corner: the tolerance.
  @ParameterizedTest
  @CsvSource({
    "1e4, 0,    0.03088295035348769, 1",
    "1e4, 1e-2, 0.04312658470681172, 2.2",
    "1e7, 1e-5, 0.008995711744834444, 1"
  })
  void isNearColebrookAtTheCorners(
      double reynolds, double roughness, double expected, double percent) {
    ours(PipeFriction.darcyFactor(reynolds, roughness))
        .isCloseTo(expected, withPercentage(percent));
  }

  // Documentation of CalebBell/fluids: Prandtl_von_Karman_Nikuradse(1E7) and Blasius(10000). The
  // smooth-pipe laws differ from Colebrook with zero roughness by about 2 %: the tolerance.
  @ParameterizedTest
  @CsvSource({"1e7, 0.008102669430874914", "1e4, 0.03164"})
  void isNearTheLawsOfSmoothPipes(double reynolds, double expected) {
    ours(PipeFriction.darcyFactor(reynolds, 0)).isCloseTo(expected, withPercentage(2.1));
  }

  // Cengel and Cimbala, Fluid Mechanics, example 8-3: water at 60 °F in a stainless-steel pipe of
  // 2 in, 0.2 ft3/s, 200 ft, roughness 7e-6 ft. Inputs read in a textbook-companion repository;
  // results (9.17 ft/s, 126 400, 0.0174, 1700 lbf/ft2, 27.3 ft) from memory, unverified. Printed to
  // three digits by Colebrook, which Churchill follows here within 0.5 %.
  @Test
  void solvesTheExampleOfTheStainlessSteelPipe() {
    Liquid water = new Liquid(Measure.DENSITY.entry("lb/ft3").toSi(62.36), viscosityOf(7.536e-4));
    Bore bore = new Bore(inches(2), feet(7e-6));
    double velocity = bore.velocityMps(0.2 * Math.pow(feet(1), 3));
    ClearLiquid flow = ClearLiquid.of(water, bore, velocity);
    ours(velocity).isCloseTo(feet(9.17), withPercentage(0.1));
    ours(flow.reynolds()).isCloseTo(126_400, withPercentage(0.1));
    assertThat(ClearLiquid.regime(flow.reynolds())).isEqualTo(ClearLiquid.Regime.TURBULENT);
    ours(flow.darcyFactor()).isCloseTo(0.0174, withPercentage(0.6));
    ours(flow.gradient() * 200).isCloseTo(27.3, withPercentage(0.6));
    ours(flow.pressureGradientPaPm() * feet(200))
        .isCloseTo(Measure.PRESSURE.entry("psi").toSi(11.8), withPercentage(0.6));
  }

  /** A viscosity in lb/(ft s), which is not a unit of the calculator. */
  private static double viscosityOf(double poundsPerFootSecond) {
    return poundsPerFootSecond * Measure.MASS.entry("lb").toSi(1) / feet(1);
  }

  // White, Fluid Mechanics, example 6.7 (from memory, unverified): 200 ft of 6-in asphalted
  // cast-iron pipe (roughness 0.0004 ft), water at 6 ft/s, nu = 1.1e-5 ft2/s: Re 2.7e5, f 0.020,
  // head loss 4.5 ft. Two printed digits, so 2.5 %.
  @Test
  void solvesTheExampleOfTheAsphaltedPipe() {
    double kinematic = 1.1e-5 * feet(1) * feet(1);
    ClearLiquid flow =
        ClearLiquid.of(
            new Liquid(1000, 1000 * kinematic), new Bore(inches(6), feet(0.0004)), feet(6));
    ours(flow.reynolds()).isCloseTo(2.7e5, withPercentage(1.5));
    ours(flow.darcyFactor()).isCloseTo(0.020, withPercentage(2.5));
    ours(flow.gradient() * 200).isCloseTo(4.5, withPercentage(2.5));
  }

  // White, Fluid Mechanics, example 6.9 (from memory, unverified): oil of 950 kg/m3 and 2e-5 m2/s
  // in a pipe of 30 cm, relative roughness 0.0002, loses 8 m in 100 m at 4.84 m/s; Re 72 600,
  // f 0.0201. Tolerance: digits, by Colebrook, from whom Churchill differs by 1 %.
  @Test
  void solvesTheExampleOfTheOilPipe() {
    ClearLiquid flow =
        ClearLiquid.of(new Liquid(950, 950 * 2e-5), new Bore(0.3, 0.0002 * 0.3), 4.84);
    ours(flow.reynolds()).isCloseTo(72_600, withPercentage(0.1));
    ours(flow.darcyFactor()).isCloseTo(0.0201, withPercentage(1));
    ours(flow.gradient() * 100).isCloseTo(8, withPercentage(1));
  }
}
