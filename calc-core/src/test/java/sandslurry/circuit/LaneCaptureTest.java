package sandslurry.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import sandslurry.material.GrainShape;
import sandslurry.separation.OpenChannel;
import sandslurry.separation.SettlingLane;

class LaneCaptureTest {
  private static final CaptureLaw LANE =
      new LaneCapture(
          new SettlingLane(
              new OpenChannel(2, 0.002, 0.015), 12, OptionalDouble.of(0.3), 0.2, 0.4, 1),
          1,
          283.15,
          GrainShape.NATURAL,
          1,
          false,
          LaneCapture.Relation.CAMP_DOBBINS,
          0.05,
          0);

  private static Stream feed(double totalSolids) {
    return Stream.liquor(Plant.THREE, 20, totalSolids, ManureSolids.FRESH)
        .plus(Plant.THREE.deliveredSand(0.3));
  }

  @Test
  void thickerLiquorLetsLessSandSettleInEveryClass() {
    CaptureLaw.Captured thin = LANE.of(feed(0.005));
    CaptureLaw.Captured thick = LANE.of(feed(0.06));
    assertThat(thin.notes()).isEmpty();
    assertThat(thin.sand().get(0)).isGreaterThan(2 * thick.sand().get(0));
    for (int k = 0; k < 3; k++) {
      assertThat(thin.sand().get(k)).isGreaterThanOrEqualTo(thick.sand().get(k));
    }
  }

  @Test
  void manureThatIsNoLiquidLetsNothingSettleAndSaysSo() {
    CaptureLaw.Captured stiff = LANE.of(feed(0.15));
    assertThat(stiff.sand()).containsOnly(0.0);
    assertThat(stiff.notes()).singleElement().asString().contains("15.0 %");
    assertThat(LANE.of(Plant.THREE.nothing()).sand()).containsOnly(0.0);
  }
}
