package sandslurry.plant.network;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;

/**
 * The units of a network in the order of flow, those that pass on to each other in a round taken
 * together: what comes to a loop follows from those before it. Found by the method of Tarjan
 * (1972), SIAM Journal on Computing 1:146-160.
 */
final class Loops {
  private static final int NOT_YET = -1;

  private final int[][] takers;
  private final int[] number;
  private final int[] lowest;
  private final boolean[] waiting;
  private final Deque<Integer> stack = new ArrayDeque<>();

  /** How many units were left before each: of two in flow, the later one is left first. */
  private final int[] left;

  private int leaving;
  private final List<int[]> found = new ArrayList<>();
  private int next;

  private Loops(int[][] takers) {
    this.takers = takers;
    this.number = new int[takers.length];
    this.lowest = new int[takers.length];
    this.waiting = new boolean[takers.length];
    this.left = new int[takers.length];
    Arrays.fill(number, NOT_YET);
  }

  /**
   * Finds them.
   *
   * @param takers the unit that takes each outlet of each unit, below 0 where none does
   * @return indexes of the units of each loop in the order of flow, as far as a round has one; of a
   *     unit in no loop its own alone
   */
  static int[][] of(int[][] takers) {
    Loops loops = new Loops(takers);
    for (int u = 0; u < takers.length; u++) {
      if (loops.number[u] == NOT_YET) {
        loops.visit(u);
      }
    }
    // The last loop of the flow is found first.
    int[][] inOrder = new int[loops.found.size()][];
    for (int i = 0; i < inOrder.length; i++) {
      inOrder[i] = loops.found.get(inOrder.length - 1 - i);
    }
    return inOrder;
  }

  private void visit(int unit) {
    number[unit] = next;
    lowest[unit] = next++;
    stack.push(unit);
    waiting[unit] = true;
    for (int to : takers[unit]) {
      if (to >= 0 && number[to] == NOT_YET) {
        visit(to);
        lowest[unit] = Math.min(lowest[unit], lowest[to]);
      } else if (to >= 0 && waiting[to]) {
        lowest[unit] = Math.min(lowest[unit], number[to]);
      }
    }
    left[unit] = leaving++;
    if (lowest[unit] == number[unit]) {
      List<Integer> loop = new ArrayList<>();
      int last;
      do {
        last = stack.pop();
        waiting[last] = false;
        loop.add(last);
      } while (last != unit);
      found.add(
          loop.stream()
              .sorted(Comparator.comparingInt(u -> -left[u]))
              .mapToInt(Integer::intValue)
              .toArray());
    }
  }
}
