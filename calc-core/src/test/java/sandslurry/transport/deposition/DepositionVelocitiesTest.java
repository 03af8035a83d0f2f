package sandslurry.transport.deposition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.material.Slurry;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainShape;
import sandslurry.pipe.Bore;
import sandslurry.units.UnitSystem;

class DepositionVelocitiesTest {
  private static final Liquid WATER = new Liquid(998.207, 1.0016e-3);
  private static final Bore PIPE = new Bore(0.15408, 4.5e-5);

  private static Slurry quartz(double sizeM, double fraction) {
    return new Slurry(WATER, 2650, GrainShape.NATURAL, sizeM, sizeM, fraction);
  }

  @Test
  void everyModelIsFoundByAKeyOfItsOwn() {
    List<String> ids =
        DepositionVelocities.FAMILY.all().stream().map(DepositionVelocityModel::id).toList();
    assertThat(ids).doesNotHaveDuplicates().hasSize(18);
    for (DepositionVelocityModel model : DepositionVelocities.FAMILY.all()) {
      assertThat(DepositionVelocities.FAMILY.find(model.id())).containsSame(model);
      assertThat(DepositionVelocities.defaultRole(model)).isNotNull();
    }
    assertThat(DepositionVelocities.FAMILY.find("nobody-1900")).isEmpty();
  }

  @Test
  void everyModelTellsOfItself() {
    for (DepositionVelocityModel model : DepositionVelocities.FAMILY.all()) {
      assertThat(model.name()).isNotBlank();
      assertThat(model.about().equation()).contains(" = ");
      assertThat(model.citation().year()).isBetween(1950, 2010);
      assertThat(model.limit().words()).isNotBlank();
      assertThat(model.about().bounds()).isNotEmpty();
      for (Bound bound : model.about().bounds()) {
        assertThat(bound.describe(UnitSystem.METRIC)).isNotBlank();
        assertThat(bound.describe(UnitSystem.US)).isNotBlank();
      }
    }
    assertThat(new WilsonTse1984().about().equation()).contains("Delta");
    assertThat(new WilsonTse1984().about().bounds()).hasSize(1);
    assertThat(new WilsonTse1984().citation().year()).isEqualTo(1984);
    assertThat(new WilsonTse1984().id()).isEqualTo("wilson-tse-1984");
    assertThat(new WilsonTse1984().name()).isNotBlank();
  }

  @Test
  void mediumSandInWaterIsInsideTheRangeOfEveryModelButTheFloorAndThoseOfSewers() {
    for (DepositionVelocityModel model : DepositionVelocities.FAMILY.all()) {
      Estimate estimate = model.velocityMps(quartz(0.25e-3, 0.1), PIPE);
      // A tenth of sand is far beyond the sand of sewers.
      boolean other =
          model instanceof Thomas1979
              || model instanceof May1996
              || model instanceof AbGhani1993
              || model instanceof Macke1982;
      assertThat(estimate.inRange()).as(model.id()).isEqualTo(!other);
    }
    assertThat(new Thomas1979().velocityMps(quartz(0.04e-3, 0.1), PIPE).inRange()).isTrue();
  }

  @Test
  void whatLiesOutsideTheRangeIsReported() {
    Estimate fine = new GilliesShook().velocityMps(quartz(0.1e-3, 0.1), PIPE);
    assertThat(fine.excesses())
        .extracting(e -> e.bound().what())
        .containsExactly("Archimedes number");
    Estimate thick =
        new WilsonBounded()
            .velocityMps(
                new Slurry(new Liquid(1000, 0.5), 2650, GrainShape.NATURAL, 3e-4, 3e-4, 0.1), PIPE);
    assertThat(thick.excesses())
        .extracting(e -> e.bound().what())
        .containsExactly("kinematic viscosity", "Reynolds number of the carrier at this velocity");
    assertThat(new ZandiGovatos1967().velocityMps(quartz(3e-4, 0.2), PIPE).inRange()).isFalse();
    assertThat(new Wasp1977().velocityMps(quartz(3e-4, 0.01), PIPE).inRange()).isFalse();
    assertThat(new WilsonJudge1978().velocityMps(quartz(5e-3, 0.1), PIPE).inRange()).isFalse();
  }

  /** The pieces of Gillies and Shook, found by the grain sizes at which they meet. */
  @Test
  void theSaskatchewanPiecesMeetWithinAThirdOfAPercent() {
    for (double number : new double[] {80, 160, 540}) {
      double size = Math.cbrt(number / GilliesShook.archimedes(quartz(1, 0.1)));
      GilliesShook model = new GilliesShook();
      double below = model.velocityMps(quartz(size * (1 - 1e-9), 0.1), PIPE).value();
      double above = model.velocityMps(quartz(size * (1 + 1e-9), 0.1), PIPE).value();
      assertThat(above).as("Ar " + number).isCloseTo(below, withPercentage(0.34));
    }
  }

  /** Found by 200,000 random cases: at 540 the pieces fall by 4e-7, and so did the rule. */
  @Test
  void theRisingFormOfGilliesAndShookNeverFalls() {
    double before = 0;
    for (double number = 1; number < 1e6; number *= 1.0001) {
      double now = GilliesShook.risingFroude(number);
      assertThat(now).as("Ar " + number).isGreaterThanOrEqualTo(before);
      before = now;
    }
    assertThat(GilliesShook.risingFroude(540)).isGreaterThan(GilliesShook.risingFroude(539.999999));
  }

  @Test
  void archimedesNumberEightyIsFineSandInWater() {
    assertThat(GilliesShook.archimedes(quartz(0.155e-3, 0.1))).isCloseTo(80, offset(1.0));
  }

  /** Largest where the derivative of d^1.75/(d² + 0.11 D^0.7) vanishes: d² = 7 · 0.11 D^0.7. */
  @Test
  void theNomographPeaksAtTheMurphianSize() {
    double peak = Math.sqrt(0.77 * Math.pow(0.15408, 0.7)) * 1e-3;
    Wilson1986Fit model = new Wilson1986Fit();
    double most = model.velocityMps(quartz(peak, 0.1), PIPE).value();
    assertThat(peak).isBetween(0.43e-3, 0.48e-3);
    assertThat(model.velocityMps(quartz(peak * 1.05, 0.1), PIPE).value()).isLessThan(most);
    assertThat(model.velocityMps(quartz(peak / 1.05, 0.1), PIPE).value()).isLessThan(most);
  }

  @Test
  void thickerCarrierLowersWhatTheArchimedesNumberAsksOfFineSand() {
    Slurry thick = new Slurry(new Liquid(1010, 5e-3), 2650, GrainShape.NATURAL, 3e-4, 3e-4, 0.1);
    assertThat(new GilliesShook().velocityMps(thick, PIPE).value())
        .isLessThan(new GilliesShook().velocityMps(quartz(3e-4, 0.1), PIPE).value());
  }

  @Test
  void aSlopeBeyondTheVerticalIsRefused() {
    assertThatThrownBy(() -> new WilsonTse1984().durandIncrement(1.6)).hasMessageContaining("1.6");
    assertThatThrownBy(() -> new WilsonTse1984().durandIncrement(Double.NaN))
        .hasMessageContaining("NaN");
  }
}
