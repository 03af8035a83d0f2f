package sandslurry.separation.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.GrainRange;
import sandslurry.material.sand.GrainShape;
import sandslurry.separation.OrganicMatter;
import sandslurry.separation.Partition;
import sandslurry.separation.UnitFeed;
import sandslurry.separation.capture.Outlook;
import sandslurry.separation.channel.OpenChannel;

/** What stays in a lane beside its sand, with numbers worked by hand. */
class DepositByHandTest {
  /** 0.8 of 2 m by 10 m works: 16 m2, over which 80 L/s rise at 5 mm/s. */
  private static final LaneReach REACH =
      new LaneReach(new OpenChannel(2, 0, 0.015), 10, OptionalDouble.of(0.5), 0.15, 0.8);

  private static final double SAND_KGPS = 2;
  private static final double SIZE = 0.8e-3;

  /**
   * 80 L/s with 2 kg/s of coarse sand, 0.5 kg/s of fibre and 1.5 % of fines and dissolved matter.
   */
  private static final UnitFeed FEED =
      new UnitFeed(
          0.08 - SAND_KGPS / 2650,
          new Liquid(1000, 1e-3),
          0.01,
          0.005,
          0.5,
          2650,
          GrainShape.NATURAL,
          List.of(new GrainRange(SIZE, SIZE)),
          List.of(SAND_KGPS),
          1,
          0);

  private static LaneDeposit deposit(int reaches, double thicknessM, Outlook outlook) {
    return LaneDeposit.of(
        Collections.nCopies(reaches, REACH),
        Collections.nCopies(reaches, thicknessM),
        FEED,
        OrganicMatter.FEEDLOT,
        0.4,
        outlook);
  }

  /** 3 mm/s of 5 mm/s are 0.6 of the 0.55 that settle: 0.33, in two reaches 0.55 (1 - 0.4²). */
  @Test
  void fibreSettlesInEachReachFromWhatIsLeft() {
    assertThat(deposit(1, 0, Outlook.HOPEFUL).partition().fibre()).isCloseTo(0.33, within(1e-12));
    assertThat(deposit(2, 0, Outlook.HOPEFUL).partition().fibre()).isCloseTo(0.462, within(1e-12));
    assertThat(deposit(2, 0.15, Outlook.HOPEFUL).partition().fibre()).isZero();
  }

  /**
   * 0.08 m/s of the 0.3 that move it leave 1 - 0.0711 of the fall, 2.786667 mm/s, in mixed flow 1 -
   * exp(-0.557333) = 0.427266 of 0.55.
   */
  @Test
  void fibreNearTheVelocityThatMovesItSettlesLess() {
    assertThat(deposit(1, 0, Outlook.CAUTIOUS).partition().fibre())
        .isCloseTo(0.234996, within(1e-6));
  }

  /**
   * The pores of 2 kg/s of sand, 2/2650 · 0.4/0.6 = 0.503145 L/s, hold 0.635 % of the liquor and of
   * its 1.188679 kg/s of matter; with 0.33 of the fibre that is 0.172547 kg/s beside 2 kg/s.
   */
  @Test
  void thePoresKeepLiquorWithWhatIsInIt() {
    LaneDeposit deposit = deposit(1, 0, Outlook.HOPEFUL);
    assertThat(deposit.sandRecovery(FEED)).isEqualTo(1);
    assertThat(deposit.partition().water()).isCloseTo(0.00634921, within(1e-8));
    assertThat(deposit.partition().fines()).isEqualTo(deposit.partition().water());
    assertThat(deposit.foreignMatter()).isCloseTo(0.0794216, within(1e-7));
  }

  /**
   * All sand fills the first reach and then, in as long again, the second. Fibre stays in both
   * while the first fills, 0.462, then in the second alone, 0.33: 0.396 of all.
   */
  @Test
  void theMeanOfTwoReachesIsThatOfTheTimesTheyFillIn() {
    Partition mean =
        LaneFilling.mean(
            List.of(REACH, REACH), FEED, OrganicMatter.FEEDLOT, 0.4, Outlook.HOPEFUL, 0.5);
    assertThat(mean.fibre()).isCloseTo(0.396, within(1e-9));
    assertThat(mean.sand().get(0)).isCloseTo(1, within(1e-9));
    assertThat(mean.water()).isCloseTo(0.00634921, within(1e-8));
  }
}
