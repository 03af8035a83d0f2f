package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sandslurry.assessment.line.LineEvaluation.State;
import sandslurry.assessment.line.LineResult.JudgedRun;
import sandslurry.transport.friction.ClearLiquid.Regime;

/**
 * The line at the flow rates judged and at each temperature of its liquid.
 *
 * @param given at the temperatures given, that of the carrier first
 * @param around at the ends of what liquids on farms are, where only one temperature is given
 */
public record WarmStates(List<Warmth> given, List<Warmth> around) {
  /** By verdict, of equals by the margin that is left. */
  private static final Comparator<RunPoint> GRAVER =
      Comparator.comparing(RunPoint::severity)
          .thenComparing(Comparator.comparingDouble(WarmStates::left).reversed());

  /** What is left: of the velocity, or in laminar flow of what may reach the floor. */
  private static double left(RunPoint point) {
    return point.regime() == Regime.LAMINAR && point.hasSand()
        ? point.carriage().map(c -> c.toleratedShare() / c.floorShare()).orElseThrow()
        : point.margin();
  }

  /**
   * The line at one temperature.
   *
   * @param temperatureK temperature of its liquid [K]
   * @param states its states
   */
  public record Warmth(double temperatureK, List<State> states) {
    /** The worst case of a run. */
    State worst(int run) {
      return states.stream()
          .max(Comparator.comparing(state -> state.runs().get(run), GRAVER))
          .orElseThrow();
    }

    RunPoint worstPoint(int run) {
      return worst(run).runs().get(run);
    }
  }

  /**
   * The states judged, at each temperature.
   *
   * @param warmths the line at each temperature
   * @param states its states at the temperature of the carrier
   * @param whole false for an end of the scatter of its liquid, which is not judged around it
   * @return the same at every temperature
   */
  public static WarmStates of(LineWarmths warmths, List<State> states, boolean whole) {
    return new WarmStates(
        warmths.given().stream().map(at -> at(at, warmths.asDesigned(), states)).toList(),
        whole
            ? warmths.around().stream().map(at -> at(at, warmths.asDesigned(), states)).toList()
            : List.of());
  }

  private static Warmth at(LineWarmths.At warmth, LineModel asDesigned, List<State> states) {
    LineModel line = warmth.line();
    return new Warmth(
        warmth.temperatureK(),
        line == asDesigned ? states : states.stream().map(state -> state.in(line)).toList());
  }

  /** The line as designed. */
  List<State> asDesigned() {
    return given.get(0).states();
  }

  /** The worst case of each run over all temperatures; none where the mixture does not flow. */
  List<JudgedRun> worstOfEach() {
    List<JudgedRun> worst = new ArrayList<>();
    if (asDesigned().isEmpty()) {
      return worst;
    }
    List<Warmth> all = Stream.concat(given.stream(), around.stream()).toList();
    for (int run = 0; run < asDesigned().get(0).runs().size(); run++) {
      Warmth warmth = worst(all, run);
      State state = warmth.worst(run);
      RunPoint point = state.runs().get(run);
      worst.add(
          new JudgedRun(
              point.pipe().spec().name(),
              state.flowCase(),
              warmth == given.get(0)
                  ? OptionalDouble.empty()
                  : OptionalDouble.of(warmth.temperatureK()),
              point.severity(),
              point.regime(),
              point.deposition(),
              point.carriage()));
    }
    return worst;
  }

  /** The temperature at which a run is worst. */
  static Warmth worst(List<Warmth> warmths, int run) {
    return warmths.stream()
        .max(Comparator.comparing(warmth -> warmth.worstPoint(run), GRAVER))
        .orElseThrow();
  }
}
