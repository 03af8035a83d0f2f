package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.correlation.Physics;
import sandslurry.material.Bingham;
import sandslurry.material.Grain;
import sandslurry.material.GrainShape;

class StaticSuspensionReferenceTest {
  @Test
  void theTheoreticalConstantIsTheYieldParameterOfTheSphere() {
    // Beris, Tsamopoulos, Armstrong and Brown (1985), Journal of Fluid Mechanics 158:219, abstract
    // (read): the sphere falls only when the critical yield parameter, 2 τy π R²/F, is below 0.143.
    double radius = 5e-4;
    double weight = 4.0 / 3 * Math.PI * Math.pow(radius, 3) * 1650 * Physics.GRAVITY;
    double stress =
        StaticSuspension.neededYieldStressPa(
            new Grain(2 * radius, 2650, GrainShape.SPHERE),
            1000,
            StaticSuspension.THEORETICAL_CONSTANT);
    assertThat(2 * stress * Math.PI * radius * radius / weight).isCloseTo(0.143, within(1e-9));
  }

  @Test
  void aCreepingSphereIsHeldWithinAFifthOfTheTheory() {
    // Our settling at rest, Stokes' law with the apparent viscosity at w/d, stops at 1/18 = 0.056
    // of
    // the submerged weight per area; Beris and others compute 0.0477 (abstract read).
    Grain grain = new Grain(1e-3, 2650, GrainShape.SPHERE);
    double theory =
        StaticSuspension.neededYieldStressPa(grain, 1000, StaticSuspension.THEORETICAL_CONSTANT);
    double low = theory;
    while (ShearSettling.atRest(grain, new Bingham(low, 0.1), 1000, SettlingVelocities.DEFAULT)
            .value()
        > 0) {
      low *= 1.01;
    }
    assertThat(low / theory).isBetween(1.0, 1.2);
  }
}
