package sandslurry.assessment;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineState;
import sandslurry.assessment.plant.profile.ProfileEvaluation.StreamLine;
import sandslurry.design.Design;
import sandslurry.design.line.RouteSpec;
import sandslurry.design.material.MixtureSpec;
import sandslurry.plant.profile.Fall;
import sandslurry.units.Measure;

/** What the lines of a design say of the levels of the plant whose streams they carry. */
final class StreamLines {
  private StreamLines() {}

  /**
   * Looks at each line that carries a stream.
   *
   * @param design the design that names the streams
   * @param lines what came of its lines
   * @return the lines by stream
   */
  static Map<String, StreamLine> of(Design design, List<Assessment> lines) {
    Map<String, StreamLine> all = new HashMap<>();
    for (Assessment line : lines) {
      Optional<MixtureSpec.OfStream> carried = design.mixture().flatMap(MixtureSpec::ofStream);
      if (carried.isPresent()) {
        design
            .route()
            .ifPresent(
                route ->
                    all.put(
                        carried.get().stream(),
                        new StreamLine(
                            design.pump().isPresent(),
                            OptionalDouble.of(staticM(design, route)),
                            need(line, design, route))));
      }
    }
    return all;
  }

  /** At the lowest level of the source that the line is judged at. */
  private static double staticM(Design design, RouteSpec route) {
    double rise = route.runs().stream().mapToDouble(run -> Measure.LENGTH.si(run.rise())).sum();
    double level =
        Stream.concat(
                Stream.of(route.sourceLevel()),
                design.service().states().flatMap(s -> s.lowSourceLevel()).stream())
            .mapToDouble(Measure.LENGTH::si)
            .min()
            .orElseThrow();
    return rise + Measure.LENGTH.si(route.outletHead()) - level;
  }

  /** A line that runs full by gravity needs its friction at the greatest flow rate. */
  private static Optional<Fall.Need> need(Assessment line, Design design, RouteSpec route) {
    double fixed =
        route.runs().stream().mapToDouble(run -> Measure.LENGTH.si(run.rise())).sum()
            + Measure.LENGTH.si(route.outletHead())
            - Measure.LENGTH.si(route.sourceLevel());
    OptionalDouble most =
        line.line().stream()
            .flatMap(result -> result.states().stream())
            .map(LineState::systemHead)
            .mapToDouble(Measure.LENGTH::si)
            .max();
    return most.isPresent() && design.pump().isEmpty()
        ? Optional.of(new Fall.Need(Math.max(0, most.getAsDouble() - fixed), 0, 0))
        : Optional.empty();
  }
}
