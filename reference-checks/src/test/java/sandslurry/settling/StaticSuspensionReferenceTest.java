package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static sandslurry.outside.Ours.ours;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sandslurry.correlation.Physics;
import sandslurry.material.liquid.Bingham;
import sandslurry.material.liquid.PowerLaw;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class StaticSuspensionReferenceTest {
  /** Constant Y of the theory of a sphere: its yield parameter 0.143 over 3. */
  private static final double THEORY = 0.143 / 3;

  @Test
  void theTheoreticalConstantIsTheYieldParameterOfTheSphere() {
    // Beris, Tsamopoulos, Armstrong and Brown (1985), Journal of Fluid Mechanics 158:219, abstract
    // (read): the sphere falls only when the critical yield parameter, 2 τy π R²/F, is below 0.143.
    double radius = 5e-4;
    double weight = 4.0 / 3 * Math.PI * Math.pow(radius, 3) * 1650 * Physics.GRAVITY;
    double stress =
        StaticSuspension.neededYieldStressPa(
            new Grain(2 * radius, 2650, GrainShape.SPHERE), 1000, THEORY);
    ours(2 * stress * Math.PI * radius * radius / weight).isCloseTo(0.143, within(1e-9));
  }

  @Test
  void aCreepingSphereIsHeldWithinAFifthOfTheTheory() {
    // Our settling at rest, Stokes' law with the apparent viscosity at w/d, stops at 1/18 = 0.056
    // of
    // the submerged weight per area; Beris and others compute 0.0477 (abstract read).
    Grain grain = new Grain(1e-3, 2650, GrainShape.SPHERE);
    double theory = StaticSuspension.neededYieldStressPa(grain, 1000, THEORY);
    double low = theory;
    while (ShearSettling.atRest(grain, new Bingham(low, 0.1), 1000, SettlingVelocities.DEFAULT)
            .value()
        > 0) {
      low *= 1.01;
    }
    ours(low / theory).isBetween(1.0, 1.2);
  }

  /**
   * Drag of a sphere that creeps through a power-law liquid over 3 pi d w K (w/d)^(n-1): numerical
   * solutions of Gu and Tanner (1985), Journal of Non-Newtonian Fluid Mechanics 17:1, as tabulated
   * by Chhabra, Bubbles, Drops, and Particles in Non-Newtonian Fluids; from memory, unverified. Our
   * fall at rest leaves that factor out: it must be faster by X^(1/n), never slower, which is the
   * safe side for a line.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 1.002",
    "0.9, 1.14",
    "0.8, 1.24",
    "0.7, 1.32",
    "0.6, 1.382",
    "0.5, 1.42",
    "0.4, 1.442",
    "0.3, 1.458"
  })
  void atRestAGrainIsToldFasterThanThePublishedDragMakesIt(double index, double factor) {
    Grain grain = new Grain(1e-3, 2650, GrainShape.SPHERE);
    // Thick enough to creep: the submerged weight over 18 d is 0.9 Pa, at 0.1 1/s and less.
    double k = 0.9 / Math.pow(0.1, index);
    double ours =
        ShearSettling.atRest(grain, new PowerLaw(k, index), 1000, new Stokes1851()).value();
    double published =
        1e-3 * Math.pow(1650 * Physics.GRAVITY * 1e-3 / (18 * k * factor), 1 / index);
    ours(ours / published).isCloseTo(Math.pow(factor, 1 / index), within(1e-6));
    assertThat(ours).isGreaterThan(published);
  }
}
