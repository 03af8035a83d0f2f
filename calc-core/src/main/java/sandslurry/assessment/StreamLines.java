package sandslurry.assessment;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.plant.profile.ProfileEvaluation.StreamLine;
import sandslurry.design.Design;
import sandslurry.design.LineSpec;
import sandslurry.design.line.RouteSpec;
import sandslurry.plant.profile.Fall;

/** What the lines of a design say of the levels of the plant whose streams they carry. */
final class StreamLines {
  private StreamLines() {}

  /**
   * Looks at each line that carries a stream.
   *
   * @param design the design that names the streams
   * @param whole what came of its lines
   * @return the lines by stream
   */
  static Map<String, StreamLine> of(Design design, Assessment whole) {
    Map<String, StreamLine> all = new HashMap<>();
    for (LineSpec line : design.lines()) {
      line.stream()
          .ifPresent(
              stream ->
                  all.put(
                      stream,
                      new StreamLine(
                          line.pump().isPresent(),
                          OptionalDouble.of(staticM(line)),
                          need(line, whole.lines().getOrDefault(line.name(), whole)))));
    }
    return all;
  }

  /** At the lowest level of the source that the line is judged at. */
  private static double staticM(LineSpec line) {
    RouteSpec route = line.route();
    double rise = route.runs().stream().mapToDouble(run -> run.riseM()).sum();
    double level =
        Stream.concat(
                Stream.of(route.sourceLevelM()),
                line.service().states().flatMap(s -> s.sourceLevelM().hard()).stream())
            .mapToDouble(Double::doubleValue)
            .min()
            .orElseThrow();
    return rise + route.outletHeadM() - level;
  }

  /** A line that runs full by gravity needs its friction at the greatest flow rate. */
  private static Optional<Fall.Need> need(LineSpec line, Assessment judged) {
    RouteSpec route = line.route();
    double fixed =
        route.runs().stream().mapToDouble(run -> run.riseM()).sum()
            + route.outletHeadM()
            - route.sourceLevelM();
    OptionalDouble most =
        judged.line().stream()
            .flatMap(result -> result.states().stream())
            .map(LineState::systemHeadM)
            .mapToDouble(Double::doubleValue)
            .max();
    return most.isPresent() && line.pump().isEmpty()
        ? Optional.of(new Fall.Need(Math.max(0, most.getAsDouble() - fixed), 0, 0))
        : Optional.empty();
  }
}
