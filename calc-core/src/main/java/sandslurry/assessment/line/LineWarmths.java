package sandslurry.assessment.line;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import sandslurry.assessment.materials.Materials;
import sandslurry.design.line.RouteSpec.RunSpec;
import sandslurry.units.Measure;

/**
 * A line with its liquid at each temperature at which its sand is judged. The first is that of the
 * carrier.
 *
 * @param given at the temperatures given
 * @param around at the ends of what liquids on farms are, where only one temperature is given
 */
public record LineWarmths(List<At> given, List<At> around) {
  /**
   * The line at a temperature.
   *
   * @param temperatureK temperature of its liquid [K]
   * @param line the line
   */
  public record At(double temperatureK, LineModel line) {}

  /** Temperatures between which liquids on farms lie (common practice, no source) [degC]. */
  private static final double COLD_C = 2;

  private static final double WARM_C = 30;

  /**
   * The line of a design at each temperature at which its sand is judged.
   *
   * @param model the physics of its line
   * @return the line at the temperatures given and around them
   */
  public static LineWarmths of(LineModel model) {
    List<At> given = new ArrayList<>();
    given.add(new At(model.materials().carrier().temperatureK(), model));
    List<Double> range = model.materials().temperatureRangeK();
    range.forEach(temperature -> given.add(at(model.materials(), temperature)));
    List<At> around =
        range.isEmpty()
            ? List.of(at(model.materials(), kelvin(COLD_C)), at(model.materials(), kelvin(WARM_C)))
            : List.of();
    return new LineWarmths(given, around);
  }

  private static At at(Materials materials, double temperatureK) {
    return new At(temperatureK, new LineModel(materials.at(temperatureK)));
  }

  private static double kelvin(double celsius) {
    return Measure.TEMPERATURE.si(Measure.TEMPERATURE.of(celsius, "degC"));
  }

  /**
   * The line as designed.
   *
   * @return the line at the temperature of the carrier
   */
  public LineModel asDesigned() {
    return given.get(0).line();
  }

  /**
   * The least flow rate from which turbulence carries the sand of a run with its margin at every
   * temperature; empty when at one of them none does.
   */
  OptionalDouble leastSafeFlowM3ps(RunSpec run) {
    double most = 0;
    for (At at : all()) {
      OptionalDouble least = at.line().leastSafeFlowM3ps(run);
      if (least.isEmpty()) {
        return least;
      }
      most = Math.max(most, least.getAsDouble());
    }
    return OptionalDouble.of(most);
  }

  /**
   * The line at every temperature.
   *
   * @return that of the carrier first
   */
  public List<At> all() {
    List<At> all = new ArrayList<>(given);
    all.addAll(around);
    return all;
  }
}
