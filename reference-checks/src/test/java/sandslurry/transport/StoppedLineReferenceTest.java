package sandslurry.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sandslurry.pipe.Bore;

/** Stopped lines against measurements and the rule of thumb of sliding beds. */
class StoppedLineReferenceTest {
  /**
   * Source: Shook, Rollins and Vassie (1974), Canadian Journal of Chemical Engineering 52:300,
   * abstract read: settled layers slid at inclinations above 22 degrees. Tolerance: the printed
   * degree, for a thin bed with the usual friction of 0.4, which was not fitted to it.
   */
  @Test
  void aSettledBedSlidesAboveTwentyTwoDegrees() {
    StoppedLine line = new StoppedLine(new Bore(0.05, 0), 10, 0.005, 0.6);
    assertThat(Math.toDegrees(line.slideAngleRad(StoppedLine.SLIDING_FRICTION)))
        .isCloseTo(22, within(1.0));
  }

  /**
   * Source: rule of thumb for beds in laminar flow after A. D. Thomas, Cooke (2002) and Gillies and
   * others (1999, 2007), 1 to 2 kPa/m; from memory, unverified. The two estimates must part by no
   * more than the factor that the restart states, for beds that take 10 to 30 % of the section.
   */
  @Test
  void theBalanceAndTheRuleOfThumbPartByNoMoreThanTheFactorStated() {
    for (double share : new double[] {0.1, 0.2, 0.3}) {
      StoppedLine line = new StoppedLine(new Bore(0.154, 0), 1, share * 0.6, 0.6);
      StoppedLine.Restart restart = line.restart(2650, 1000, 0.4, 0, 0);
      double factor = StoppedLine.Restart.UNCERTAINTY;
      assertThat(restart.slidingBedPa())
          .isBetween(
              LaminarTransport.SLIDING_GRADIENT_LOW_PAPM / factor,
              LaminarTransport.SLIDING_GRADIENT_HIGH_PAPM * factor);
    }
  }
}
