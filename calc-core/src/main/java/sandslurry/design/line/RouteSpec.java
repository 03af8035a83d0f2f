package sandslurry.design.line;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Pressure;
import sandslurry.pipe.catalogue.StandardPipe;
import sandslurry.pipe.fittings.FittingKind;
import sandslurry.units.Measure;

/**
 * The way of the mixture from the pump, or the start of a gravity line, to the outlet.
 *
 * @param sourceLevel level of the liquid in the pit above the start of the line; negative below it
 * @param outletHead depth of the outlet below the surface that it feeds; 0 for a free outlet
 * @param runs pipe runs in the order of flow
 */
public record RouteSpec(
    Quantity<Length> sourceLevel, Quantity<Length> outletHead, List<RunSpec> runs) {
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
   * @param largestBore the largest bore that the pipe may have: it gives the lowest velocity
   * @param meanBore the bore to expect: it gives the friction
   * @param rating pressure rating of a pipe given by its bore, absent when none is known
   * @param roughness roughness of the wall
   * @param length length along the pipe
   * @param rise height of its end above its start; negative when it falls
   * @param fittings fittings by kind and count
   */
  public record RunSpec(
      String name,
      Optional<StandardPipe> pipe,
      Quantity<Length> largestBore,
      Quantity<Length> meanBore,
      Optional<Quantity<Pressure>> rating,
      Quantity<Length> roughness,
      Quantity<Length> length,
      Quantity<Length> rise,
      Map<FittingKind, Integer> fittings) {
    /** Copies the map, in a fixed order. */
    public RunSpec {
      fittings = Collections.unmodifiableMap(new TreeMap<>(fittings));
    }

    /**
     * The pressure rating of the pipe when it is as warm as its liquid.
     *
     * @param temperatureK temperature of the liquid [K]
     * @return the rating given, or that of the standard pipe; empty when there is none [Pa]
     */
    public OptionalDouble ratingPa(double temperatureK) {
      if (pipe.isPresent()) {
        return pipe.get().ratingPa(temperatureK);
      }
      return rating.isPresent()
          ? OptionalDouble.of(Measure.PRESSURE.si(rating.get()))
          : OptionalDouble.empty();
    }

    /**
     * The same run in another standard pipe.
     *
     * @param other the pipe
     * @return the run with its bores; the roughness stays
     */
    public RunSpec inPipe(StandardPipe other) {
      return new RunSpec(
          name,
          Optional.of(other),
          Measure.LENGTH.of(other.largestBoreM()),
          Measure.LENGTH.of(other.meanBoreM()),
          Optional.empty(),
          roughness,
          length,
          rise,
          fittings);
    }

    /**
     * The same run with another bore.
     *
     * @param boreM the bore [m]
     * @return the run; the roughness stays
     */
    public RunSpec inBore(double boreM) {
      Quantity<Length> bore = Measure.LENGTH.of(boreM);
      return new RunSpec(
          name, Optional.empty(), bore, bore, rating, roughness, length, rise, fittings);
    }
  }
}
