package sandslurry.plant.schedule;

import java.util.Comparator;
import java.util.List;
import sandslurry.plant.Stream;

/**
 * A stream at three moments of a day by schedule, each as it is while it flows.
 *
 * @param sandiest when it holds most sand by volume
 * @param least when least flows; what flows more slowly brings less than {@link #SELDOM} of its
 *     sand
 * @param greatest when most flows
 */
public record StreamDay(Stream sandiest, Stream least, Stream greatest) {
  /** So much of the sand of a day is too little to judge a flow by (a choice of this program). */
  public static final double SELDOM = 0.05;

  /** Flow rates as near as this are one: of them the moment with most sand is taken. */
  private static final double SAME = 1e-3;

  /**
   * What flows in a step of the day.
   *
   * @param stream the stream as it is while it flows
   * @param runningS for how long it flows [s]
   * @param volumeM3ps its volume [m3/s]
   */
  record Moment(Stream stream, double runningS, double volumeM3ps) {
    Moment(Stream stream, double runningS) {
      this(stream, runningS, stream.volumeM3ps());
    }

    private double weight(boolean sandy) {
      return runningS * (sandy ? stream.sandKgps() : volumeM3ps);
    }
  }

  /** Looks for the three among all moments at which something flows, one at least. */
  static StreamDay of(List<Moment> moments) {
    List<Moment> rising =
        moments.stream().sorted(Comparator.comparingDouble(Moment::volumeM3ps)).toList();
    boolean sandy = moments.stream().anyMatch(moment -> moment.stream().sandKgps() > 0);
    double all = rising.stream().mapToDouble(moment -> moment.weight(sandy)).sum();
    double before = 0;
    int place = 0;
    while (place < rising.size() - 1 && before + rising.get(place).weight(sandy) < SELDOM * all) {
      before += rising.get(place).weight(sandy);
      place++;
    }
    double least = rising.get(place).volumeM3ps();
    double greatest = rising.get(rising.size() - 1).volumeM3ps();
    return new StreamDay(
        sandiest(moments),
        sandiest(
            rising.subList(place, rising.size()).stream()
                .filter(moment -> moment.volumeM3ps() <= least * (1 + SAME))
                .toList()),
        sandiest(
            rising.stream()
                .filter(moment -> moment.volumeM3ps() >= greatest * (1 - SAME))
                .toList()));
  }

  private static Stream sandiest(List<Moment> moments) {
    return moments.stream()
        .map(Moment::stream)
        .reduce((a, b) -> a.sandVolumeShare() >= b.sandVolumeShare() ? a : b)
        .orElseThrow();
  }
}
