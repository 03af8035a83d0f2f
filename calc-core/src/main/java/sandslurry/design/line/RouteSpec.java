package sandslurry.design.line;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.fittings.FittingKind;

/**
 * The way of the mixture from the pump, or the start of a gravity line, to the outlet.
 *
 * @param sourceLevelM level of the liquid in the pit above the start of the line; negative below it
 * @param outletHeadM depth of the outlet below the surface that it feeds; 0 for a free outlet
 * @param runs pipe runs in the order of flow
 */
public record RouteSpec(double sourceLevelM, double outletHeadM, List<RunSpec> runs) {
  /** Copies the list. */
  public RouteSpec {
    runs = List.copyOf(runs);
  }

  /**
   * One of the runs.
   *
   * @param name its name
   * @return the first run of that name
   * @throws java.util.NoSuchElementException if there is none
   */
  public RunSpec run(String name) {
    return runs.stream().filter(run -> run.name().equals(name)).findFirst().orElseThrow();
  }

  /**
   * One run of equal pipe at an even slope.
   *
   * @param name what it is called in the report
   * @param pipe the standard pipe, absent when the bore was given
   * @param largestBoreM the largest bore that the pipe may have: it gives the lowest velocity
   * @param meanBoreM the bore to expect: it gives the friction
   * @param ratingPa pressure rating of a pipe given by its bore, absent when none is known
   * @param roughnessM roughness of the wall
   * @param lengthM length along the pipe
   * @param riseM height of its end above its start; negative when it falls
   * @param fittings fittings by kind and count
   */
  public record RunSpec(
      String name,
      Optional<StandardPipe> pipe,
      double largestBoreM,
      double meanBoreM,
      Optional<Double> ratingPa,
      double roughnessM,
      double lengthM,
      double riseM,
      Map<FittingKind, Integer> fittings) {
    /** Copies the map, in a fixed order. */
    public RunSpec {
      fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /**
     * The pressure ratingPa of the pipe when it is as warm as its liquid.
     *
     * @param temperatureK temperature of the liquid [K]
     * @return the ratingPa given, or that of the standard pipe; empty when there is none [Pa]
     */
    public OptionalDouble ratingPa(double temperatureK) {
      if (pipe.isPresent()) {
        return pipe.get().ratingPa(temperatureK);
      }
      return ratingPa.isPresent() ? OptionalDouble.of(ratingPa.get()) : OptionalDouble.empty();
    }

    /**
     * The same run in another standard pipe.
     *
     * @param other the pipe
     * @return the run with its bores; the roughnessM stays
     */
    public RunSpec inPipe(StandardPipe other) {
      return new RunSpec(
          name,
          Optional.of(other),
          other.largestBoreM(),
          other.meanBoreM(),
          Optional.empty(),
          roughnessM,
          lengthM,
          riseM,
          fittings);
    }

    /**
     * The same run with another bore.
     *
     * @param boreM the bore [m]
     * @return the run; the roughnessM stays
     */
    public RunSpec inBore(double boreM) {
      double bore = boreM;
      return new RunSpec(
          name, Optional.empty(), bore, bore, ratingPa, roughnessM, lengthM, riseM, fittings);
    }
  }
}
