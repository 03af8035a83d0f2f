package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class HinderedSettlingProperties {
  @Provide
  Arbitrary<HinderedSettling> laws() {
    return Arbitraries.of(HinderedSettlings.FAMILY.all());
  }

  @Property
  void denserCrowdsFallSlower(
      @ForAll("laws") HinderedSettling law,
      @ForAll @DoubleRange(min = -14, max = 6) double logReynolds,
      @ForAll @DoubleRange(min = 0, max = 0.95) double fraction) {
    double reynolds = Math.pow(10, logReynolds);
    assertThat(law.factor(reynolds, fraction + 0.01).value())
        .isLessThan(law.factor(reynolds, fraction).value())
        .isBetween(0.0, 1.0);
  }

  @Property
  void smoothLawsLetTheExponentFallWithTheReynoldsNumber(
      @ForAll @DoubleRange(min = -6, max = 4) double logReynolds) {
    double reynolds = Math.pow(10, logReynolds);
    for (HinderedSettling law :
        new HinderedSettling[] {new Rowe1987(), new GarsideAlDibouni1977()}) {
      assertThat(law.exponent(reynolds * 1.1, 0.1).value())
          .isLessThan(law.exponent(reynolds, 0.1).value());
    }
  }

  @Property
  void roweStaysWithinFivePercentOfTheStepsItSmooths(
      @ForAll @DoubleRange(min = -6, max = 4) double logReynolds) {
    double reynolds = Math.pow(10, logReynolds);
    double steps = new RichardsonZaki1954().exponent(reynolds, 0.1).value();
    assertThat(new Rowe1987().exponent(reynolds, 0.1).value() / steps).isBetween(0.95, 1.05);
  }

  @Property
  void hinderedVelocityIsNeverAboveThatOfTheLoneGrain(
      @ForAll @DoubleRange(min = 0, max = 1) double size,
      @ForAll @DoubleRange(min = 0, max = 1) double thickness,
      @ForAll @DoubleRange(min = 0, max = 0.99) double fraction) {
    Grain grain = new Grain(1e-6 * Math.pow(10, 4.3 * size), 2650, GrainShape.NATURAL);
    Liquid liquid = new Liquid(1010, 3e-4 * Math.pow(10, 4.5 * thickness));
    double reynolds = SettlingVelocities.reynoldsNumber(grain, liquid);
    assertThat(HinderedSettlings.DEFAULT.factor(reynolds, fraction).value())
        .isPositive()
        .isLessThanOrEqualTo(1);
  }
}
