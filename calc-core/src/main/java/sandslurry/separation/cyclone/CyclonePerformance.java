package sandslurry.separation.cyclone;

import java.util.List;
import sandslurry.correlation.Bound;

/**
 * What a model says of one hydrocyclone.
 *
 * @param cutSizeM corrected cut size: half of the grains that do not merely follow the water go to
 *     the underflow [m]
 * @param pressureDropPa pressure from inlet to overflow [Pa]
 * @param underflowShare volume flow of the underflow over that of the feed, above 0 and below 1
 * @param sharpness exponent m of the corrected partition curve
 * @param excesses what lay outside the published range
 */
public record CyclonePerformance(
    double cutSizeM,
    double pressureDropPa,
    double underflowShare,
    double sharpness,
    List<Bound.Excess> excesses) {
  private static final double LN_2 = Math.log(2);

  /**
   * Checks that the values are finite and in bounds, and copies the list.
   *
   * @throws ArithmeticException if a value is not a positive finite number
   */
  public CyclonePerformance {
    for (double value : new double[] {cutSizeM, pressureDropPa, sharpness}) {
      if (!(value > 0 && Double.isFinite(value))) {
        throw new ArithmeticException("a model of a hydrocyclone gave " + value);
      }
    }
    if (!(underflowShare > 0 && underflowShare < 1)) {
      throw new ArithmeticException("a model gave an underflow of " + underflowShare);
    }
    excesses = List.copyOf(excesses);
  }

  /**
   * The corrected partition curve, of Rosin and Rammler's form as Plitt writes it.
   *
   * @param sizeM grain size [m]
   * @return 1 − exp(−ln 2 (d/d50c)^m)
   */
  public double correctedPartition(double sizeM) {
    return -Math.expm1(-LN_2 * Math.pow(sizeM / cutSizeM, sharpness));
  }
}
