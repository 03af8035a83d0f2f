package sandslurry.separation.capture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Capture, and the fall that a share needs, with values worked by hand. */
class CaptureByHandTest {
  /** 1 - (V/Vc)²: all at rest, three quarters at half the critical velocity, nothing from it on. */
  @ParameterizedTest
  @CsvSource({"0, 1", "0.5, 0.75", "0.9, 0.19", "1, 0", "2, 0"})
  void aMovingFlowLeavesWhatKroneSays(double nearness, double factor) {
    assertThat(Krone1962.factor(nearness)).isCloseTo(factor, within(1e-12));
  }

  /**
   * w A/Q = 1: min(1, 1), 1 - 1/e, and between them 0.7221 at K = 1, by an integration of the
   * differential equation made before this program.
   */
  @Test
  void eachOutlookCatchesByItsOwnRelation() {
    BasinFlow flow = new BasinFlow(0.01, 1 / 15.0);
    assertThat(Outlook.HOPEFUL.caught(flow, 0.01)).isEqualTo(1);
    assertThat(Outlook.LIKELY.caught(flow, 0.01)).isCloseTo(0.7221, within(6e-4));
    assertThat(Outlook.CAUTIOUS.caught(flow, 0.01)).isCloseTo(0.632121, within(1e-6));
  }

  /** Half is caught at half of the overflow velocity, or at ln 2 of it in mixed water. */
  @Test
  void halfOfTheSandIsCaughtAtAVelocityKnownByHand() {
    BasinFlow still = new BasinFlow(0.01, 0);
    assertThat(Outlook.HOPEFUL.velocityCaughtMps(still, 0.5)).isCloseTo(0.005, within(1e-12));
    assertThat(Outlook.CAUTIOUS.velocityCaughtMps(still, 0.5)).isCloseTo(0.00693147, within(1e-8));
    // Without turbulence Camp and Dobbins are the ideal basin, with much of it the mixed one.
    assertThat(Outlook.LIKELY.velocityCaughtMps(still, 0.5)).isCloseTo(0.005, within(1e-9));
    assertThat(Outlook.LIKELY.velocityCaughtMps(new BasinFlow(0.01, 1e9), 0.5))
        .isCloseTo(0.00693147, within(1e-8));
  }

  /**
   * What falls at the velocity of a share is caught by that share, whatever the turbulence: K/T =
   * v0 over 0.15 u* from e^-9 to e^14, which passes both ends of the points solved beforehand. The
   * share rises by less than the fall number, to whose 1e-5 it is interpolated.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-9, -7.9, -3.1, -0.6, 0.1, 1.9, 4.05, 9.9, 10.1, 14})
  void theVelocityOfAShareIsTheInverseOfTheCapture(double logRatio) {
    BasinFlow flow = new BasinFlow(0.15 * Math.exp(logRatio), 1);
    for (double share : new double[] {0.05, 0.5, 0.95}) {
      double velocity = Outlook.LIKELY.velocityCaughtMps(flow, share);
      assertThat(Outlook.LIKELY.caught(flow, velocity))
          .as("%s", share)
          .isCloseTo(share, withinPercentage(2e-3));
    }
  }

  @Test
  void inStillWaterAGrainThatDoesNotFallIsNotCaught() {
    assertThat(Outlook.LIKELY.caught(new BasinFlow(0.01, 0), 0)).isZero();
  }

  /** At a fall number of 1: 1 - 1.17^(-1/0.17) = 0.602894, 1 - 1.5^-2 = 0.555556 (Hazen). */
  @Test
  void hazensBasinsOfTheFamily() {
    BasinFlow flow = new BasinFlow(0.01, 0);
    assertThat(
            CaptureRelations.FAMILY.all().stream()
                .filter(HazenBasins.class::isInstance)
                .map(relation -> relation.fraction(flow, 0.01).value()))
        .satisfiesExactly(
            good -> assertThat(good).isCloseTo(0.602894, within(1e-6)),
            poor -> assertThat(poor).isCloseTo(5.0 / 9, within(1e-12)));
  }
}
