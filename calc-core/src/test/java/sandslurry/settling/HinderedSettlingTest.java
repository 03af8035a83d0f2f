package sandslurry.settling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sandslurry.correlation.Correlation;
import sandslurry.correlation.Estimate;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;
import sandslurry.material.sand.GrainShape;

class HinderedSettlingTest {
  private static final Liquid WATER = new Liquid(998.2, 1.0016e-3);
  private static final Grain SAND = new Grain(5e-4, 2650, GrainShape.NATURAL);

  static List<HinderedSettling> laws() {
    return HinderedSettlings.FAMILY.all();
  }

  @Test
  void everyKeyFindsItsLawAndNoTwoAreAlike() {
    assertThat(HinderedSettlings.FAMILY.all().get(0)).isSameAs(HinderedSettlings.DEFAULT);
    assertThat(HinderedSettlings.FAMILY.all()).extracting(Correlation::id).doesNotHaveDuplicates();
    assertThat(HinderedSettlings.FAMILY.all())
        .allSatisfy(
            law -> assertThat(HinderedSettlings.FAMILY.find(law.id()).orElseThrow()).isSameAs(law));
    assertThat(HinderedSettlings.FAMILY.find("nobody-1900")).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("laws")
  void everyLawTellsItsNameEquationSourceAndRange(HinderedSettling law) {
    assertThat(law.name()).isNotBlank();
    assertThat(law.about().equation()).startsWith("n = ");
    assertThat(law.id()).endsWith(Integer.toString(law.citation().year()));
    assertThat(law.about().bounds()).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    // the limits that the constants of each law give by hand
    "rowe-1987, 4.7, 2.342857",
    "richardson-zaki-1954, 4.65, 2.39",
    "garside-al-dibouni-1977, 5.1, 2.7",
  })
  void exponentTendsToItsTwoLimits(String id, double creeping, double turbulent) {
    HinderedSettling law = HinderedSettlings.FAMILY.find(id).orElseThrow();
    assertThat(law.exponent(0, 0.1).value()).isEqualTo(creeping);
    assertThat(law.exponent(1e12, 0.1).value()).isCloseTo(turbulent, within(1e-4));
  }

  @ParameterizedTest
  @MethodSource("laws")
  void loneGrainIsNotHindered(HinderedSettling law) {
    Estimate factor = law.factor(37, 0);
    assertThat(factor.value()).isEqualTo(1);
    assertThat(factor.inRange()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("laws")
  void valuesThatAreNoneAreRefused(HinderedSettling law) {
    for (double fraction : new double[] {-0.01, 1, 1.5, Double.NaN}) {
      assertThatThrownBy(() -> law.exponent(1, fraction))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(Double.toString(fraction));
    }
    for (double reynolds : new double[] {-1, Double.NaN}) {
      assertThatThrownBy(() -> law.exponent(reynolds, 0.1))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(Double.toString(reynolds));
    }
  }

  @ParameterizedTest
  @MethodSource("laws")
  void crowdNearPackingIsReported(HinderedSettling law) {
    assertThat(law.factor(10, 0.39).inRange()).isTrue();
    assertThat(law.factor(10, 0.41).inRange()).isFalse();
  }

  @Test
  void defaultIsRowes() {
    double reynolds = SettlingVelocities.reynoldsNumber(SAND, WATER);
    double power = Math.pow(reynolds, 0.75);
    double exponent = (4.7 + 0.41 * power) / (1 + 0.175 * power);
    assertThat(HinderedSettlings.DEFAULT.factor(reynolds, 0.15).value())
        .isCloseTo(Math.pow(0.85, exponent), withinPercentage(1e-9));
  }

  @Test
  void fivePercentOfSandCostsAboutAFifthOfTheVelocityOfFineGrains() {
    // 0.95^4.65 = 0.788 and 0.95^2.39 = 0.885, by hand
    HinderedSettling law = new RichardsonZaki1954();
    assertThat(law.factor(0.01, 0.05).value()).isCloseTo(0.788, within(5e-4));
    assertThat(law.factor(2000, 0.05).value()).isCloseTo(0.885, within(5e-4));
  }
}
