package sandslurry.plant.network;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LoopsTest {
  @Test
  void unitsOfARecycleStandTogetherBetweenThoseBeforeAndBehind() {
    // 3 -> 0 -> 2 -> 0 and 2 -> 1, which gives off to nobody.
    int[][] takers = {{2}, {-1}, {0, 1}, {0}};
    assertThat(Loops.of(takers)).isDeepEqualTo(new int[][] {{3}, {0, 2}, {1}});
  }

  @Test
  void aChainHasNoLoopWhateverTheOrderItIsGivenIn() {
    assertThat(Loops.of(new int[][] {{-1}, {0}, {1}})).isDeepEqualTo(new int[][] {{2}, {1}, {0}});
  }
}
