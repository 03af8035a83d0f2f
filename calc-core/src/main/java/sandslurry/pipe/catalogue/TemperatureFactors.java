package sandslurry.pipe.catalogue;

import java.util.OptionalDouble;
import sandslurry.units.Measure;
import sandslurry.units.UnitEntry;

/**
 * By how much the pressure rating of a plastic pipe falls when it is warm: printed pairs of
 * temperature and factor, and a straight line between them.
 *
 * <p>Below the first temperature the factor is that of the first, which is 1: a cold pipe is never
 * credited with more than its rating. Above the last there is no factor, because the source gives
 * none: the pipe is not to be used under pressure without the word of its maker.
 */
final class TemperatureFactors {
  /** Nothing to derate: the standard gives no rating at all. */
  static final TemperatureFactors NONE = new TemperatureFactors(Measure.TEMPERATURE.entry("K"));

  /**
   * PVC 1120, degrees Fahrenheit. READ in ix23.com/workshop/schedule-40-pvc-pipe-dimensions, which
   * names no standard; the same row is in common use for ASTM D1785 and D2241.
   */
  static final TemperatureFactors PVC =
      new TemperatureFactors(
          Measure.TEMPERATURE.entry("degF"),
          new double[] {73, 1.00},
          new double[] {80, 0.88},
          new double[] {90, 0.75},
          new double[] {100, 0.62},
          new double[] {110, 0.51},
          new double[] {120, 0.40},
          new double[] {130, 0.31},
          new double[] {140, 0.22});

  /**
   * Polyethylene by AWWA Manual M55 (2006), Table 4-6: 1.0 below 81, 0.9 from 81 to 90, 0.8 from 91
   * to 100 degrees Fahrenheit. READ in a copy of that page. The steps are joined by straight lines
   * whose ends lie on the safe side: each step's factor is reached where the step begins.
   */
  static final TemperatureFactors POLYETHYLENE =
      new TemperatureFactors(
          Measure.TEMPERATURE.entry("degF"),
          new double[] {80, 1.0},
          new double[] {81, 0.9},
          new double[] {90, 0.9},
          new double[] {91, 0.8},
          new double[] {100, 0.8});

  /** Polyethylene by ISO 4427-1, Annex A, degrees Celsius: from memory, unverified. */
  static final TemperatureFactors POLYETHYLENE_ISO =
      new TemperatureFactors(
          Measure.TEMPERATURE.entry("degC"),
          new double[] {20, 1.00},
          new double[] {30, 0.87},
          new double[] {40, 0.74});

  private final UnitEntry<?> scale;
  private final double[][] pairs;

  private TemperatureFactors(UnitEntry<?> scale, double[]... pairs) {
    this.scale = scale;
    this.pairs = pairs;
  }

  /** The factor at a temperature [K], or nothing above the last printed one. */
  OptionalDouble at(double temperatureK) {
    double temperature = scale.fromSi(temperatureK);
    if (pairs.length == 0 || !(temperature <= pairs[pairs.length - 1][0])) {
      return OptionalDouble.empty();
    }
    if (temperature <= pairs[0][0]) {
      return OptionalDouble.of(pairs[0][1]);
    }
    int i = 1;
    while (temperature > pairs[i][0]) {
      i++;
    }
    double share = (temperature - pairs[i - 1][0]) / (pairs[i][0] - pairs[i - 1][0]);
    return OptionalDouble.of(pairs[i - 1][1] + share * (pairs[i][1] - pairs[i - 1][1]));
  }
}
