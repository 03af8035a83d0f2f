package sandslurry.plant.schedule;

import java.util.ArrayList;
import java.util.List;
import sandslurry.plant.Stream;

/**
 * Where the contents of a pool lead that changes a little every day, for months or years: each
 * constituent goes on as it changed in the last two days, by the same share less every day
 * (Aitken's rule for a series that falls off evenly).
 */
final class PoolCourse {
  private final List<Stream> evenings = new ArrayList<>();

  /** What the pool holds at the end of a day. */
  void evening(Stream held) {
    evenings.add(held);
  }

  /** What it comes to hold in the same volume; the days before count no longer. */
  Stream ahead() {
    Stream last = evenings.get(evenings.size() - 1);
    double[] kilograms = last.toArray();
    for (int i = 0; evenings.size() >= 3 && i < kilograms.length; i++) {
      double then = change(evenings.size() - 2, i);
      double now = change(evenings.size() - 1, i);
      // A constituent that turns round, or does not fall off, leads nowhere that can be told.
      if (now / then > 0 && now / then < 1) {
        kilograms[i] = Math.max(0, kilograms[i] + now * now / (then - now));
      }
    }
    evenings.clear();
    Stream ahead = Stream.of(last.constituents(), kilograms);
    return ahead.times(last.volumeM3ps() / ahead.volumeM3ps());
  }

  private double change(int day, int constituent) {
    return evenings.get(day).kgps(constituent) - evenings.get(day - 1).kgps(constituent);
  }
}
