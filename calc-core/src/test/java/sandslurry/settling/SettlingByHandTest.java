package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.liquid.Newtonian;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;
import sandslurry.settling.ShearSettling.Assumption;

/** Settling alone, in a crowd and under shear, with numbers worked by hand. */
class SettlingByHandTest {
  private static final SettlingVelocityModel LAW = SettlingVelocities.DEFAULT;
  private static final HinderedSettling CROWD = new RichardsonZaki1954();

  private static Grain quartz(double diameterM) {
    return new Grain(diameterM, 2650, GrainShape.NATURAL);
  }

  /** 4.35 at Re = 1; 4.45 · 500^-0.1 = 4.45 · 0.537159 = 2.39036; just above, 2.39. */
  @ParameterizedTest
  @CsvSource({
    "0.2, 4.65",
    "0.203, 4.56315",
    "1, 4.35",
    "1.01, 4.44557",
    "500, 2.39036",
    "505, 2.39"
  })
  void aLimitOfRichardsonAndZakiBelongsToTheBranchBelow(double reynolds, double exponent) {
    assertThat(CROWD.exponent(reynolds, 0.1).value()).isCloseTo(exponent, within(1e-5));
  }

  /** The share falls with the third power of the logarithm: half of the way leaves an eighth. */
  @ParameterizedTest
  @CsvSource({"0.1, 1", "0.2, 1", "0.4472136, 0.125", "1, 0", "3, 0"})
  void restLaysDownTheFewerGrainsTheStrongerTheLiquid(double constant, double share) {
    Grain grain = quartz(1e-3);
    // τ = Y g d (ρs − ρ) = Y · 9.80665 · 0.001 · 1650 = 16.18097 Y
    assertThat(StaticSuspension.neededYieldStressPa(grain, 1000, 1))
        .isCloseTo(16.18097, within(1e-5));
    assertThat(StaticSuspension.restingShare(grain, constant * 16.18097, 1000))
        .isCloseTo(share, within(1e-4));
  }

  /**
   * By hand: the constant 0.04 leaves 39/40, 0.0894 (the root of 0.04 times 0.2) half, 0.2 1/40.
   */
  @Test
  void aYieldStressLeavesOfTheFallWhatTheExperimentsSay() {
    Grain grain = new Grain(1e-3, 2650, GrainShape.NATURAL);
    double weight = 9.80665 * 1650 * 1e-3;
    assertThat(StaticSuspension.fallingShare(grain, 0, 1000)).isEqualTo(1);
    assertThat(StaticSuspension.fallingShare(grain, 0.04 * weight, 1000))
        .isEqualTo(0.975, within(1e-9));
    assertThat(StaticSuspension.fallingShare(grain, 0.0894427191 * weight, 1000))
        .isEqualTo(0.5, within(1e-9));
    assertThat(StaticSuspension.fallingShare(grain, 0.2 * weight, 1000))
        .isEqualTo(0.025, within(1e-9));
    // A hundredth of the size needs a hundredth of the stress.
    assertThat(
            StaticSuspension.fallingShare(
                new Grain(1e-5, 2650, GrainShape.NATURAL), 0.4e-3 * weight, 1000))
        .isEqualTo(0.975, within(1e-9));
  }

  @Test
  void aLiquidAsDenseAsTheGrainOrOfNoDensityHoldsNothing() {
    Grain grain = quartz(1e-3);
    assertThatThrownBy(() -> StaticSuspension.neededYieldStressPa(grain, 2650, 0.2))
        .hasMessageContaining("denser");
    assertThatThrownBy(() -> StaticSuspension.neededYieldStressPa(grain, 0, 0.2))
        .hasMessageContaining("denser");
    assertThatThrownBy(() -> StaticSuspension.neededYieldStressPa(grain, 1000, 0))
        .hasMessageContaining("constant");
  }

  /** A stone that falls faster than 1 m/s. */
  @Test
  void aStoneFallsAtRestAsItsLawSays() {
    Grain stone = quartz(0.2);
    double law = LAW.velocityMps(stone, new Liquid(1000, 1e-3)).value();
    assertThat(law).isGreaterThan(1);
    assertThat(ShearSettling.atRest(stone, new Newtonian(1e-3), 1000, LAW).value())
        .isCloseTo(law, withinPercentage(1e-7));
  }

  /** A liquid that thins so strongly that the fall itself sets the viscosity. */
  @Test
  void aShearThatIsNextToNoneLeavesTheFallAtRest() {
    Grain grain = quartz(2e-3);
    PowerLaw liquid = new PowerLaw(1.5, 0.08);
    double rest = ShearSettling.atRest(grain, liquid, 1000, LAW).value();
    assertThat(rest).isPositive();
    assertThat(ShearSettling.sheared(grain, liquid, 1000, 1e-9, Assumption.SLOWEST, LAW).value())
        .isCloseTo(rest, withinPercentage(1e-5));
  }

  /**
   * The crowd falls as one grain times (1 − C)ⁿ, with n at the Reynolds number of that grain in the
   * viscosity K γ^(n−1) at γ = √(γ_flow² + (w/d)²).
   */
  @Test
  void aCrowdUnderShearFallsByTheViscosityThatItsGrainMeets() {
    Grain grain = quartz(1e-3);
    PowerLaw liquid = new PowerLaw(0.05, 0.6);
    double w = ShearSettling.sheared(grain, liquid, 1000, 20, Assumption.SLOWEST, LAW).value();
    double shear = Math.hypot(20, w / 1e-3);
    double viscosity = 0.05 * Math.pow(shear, -0.4);
    assertThat(LAW.velocityMps(grain, new Liquid(1000, viscosity)).value())
        .isCloseTo(w, withinPercentage(1e-6));
    double reynolds = 1000 * w * 1e-3 / viscosity;
    assertThat(reynolds).isBetween(1.0, 400.0);
    assertThat(crowd(grain, liquid, 20, 0.2))
        .isCloseTo(w * Math.pow(0.8, 4.45 * Math.pow(reynolds, -0.1)), withinPercentage(1e-6));
    assertThat(crowd(grain, liquid, 20, 0)).isCloseTo(w, withinPercentage(1e-9));
  }

  private static double crowd(Grain grain, PowerLaw liquid, double rate, double fraction) {
    return ShearSettling.shearedHindered(
            grain, liquid, 1000, rate, fraction, Assumption.SLOWEST, LAW, CROWD)
        .value();
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.01, 1, Double.NaN})
  void aCrowdWithoutLiquidIsRefused(double fraction) {
    assertThatThrownBy(() -> crowd(quartz(1e-3), new PowerLaw(0.05, 0.6), 20, fraction))
        .hasMessageContaining("volume fraction");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
  void aShearThatIsNoneIsRefused(double rate) {
    assertThatThrownBy(() -> crowd(quartz(1e-3), new PowerLaw(0.05, 0.6), rate, 0.1))
        .hasMessageContaining("shear rate");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -0.1, 1.01, Double.NaN})
  void aSphericityThatIsNoneIsRefused(double sphericity) {
    assertThatThrownBy(() -> HaiderLevenspiel1989.dragLaw(sphericity))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /**
   * Haider and Levenspiel give spheres to Re 2.6e5 and other shapes to 25 000. Quartz of 30 mm
   * falls by √(4 g · 1.65 d/(3 C_D)), as a sphere of C_D 0.45 at 1.2 m/s and Re 36 000; of 100 mm,
   * as sand of C_D near 1.4, at 1.2 m/s and Re 120 000.
   */
  @Test
  void aSphereIsInItsRangeAtAReynoldsNumberThatIsTooHighForSand() {
    SettlingVelocityModel model = new HaiderLevenspiel1989();
    Liquid water = new Liquid(1000, 1e-3);
    assertThat(model.velocityMps(new Grain(0.03, 2650, GrainShape.SPHERE), water).excesses())
        .isEmpty();
    assertThat(model.velocityMps(new Grain(0.1, 2650, GrainShape.NATURAL), water).excesses())
        .extracting(e -> e.bound().what())
        .containsExactly("Reynolds number");
    assertThat(model.velocityMps(new Grain(0.3, 2650, GrainShape.SPHERE), water).excesses())
        .extracting(e -> e.bound().what())
        .containsExactly("Reynolds number of a sphere");
  }
}
