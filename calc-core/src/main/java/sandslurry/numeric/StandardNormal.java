package sandslurry.numeric;

import org.apache.commons.math3.distribution.NormalDistribution;

/** The normal distribution of mean 0 and standard deviation 1. */
public final class StandardNormal {
  private static final NormalDistribution LAW = new NormalDistribution(null, 0, 1);

  private StandardNormal() {}

  /**
   * The share of the distribution below a value.
   *
   * @param z the value, in standard deviations
   * @return the share, 0 to 1
   */
  public static double shareBelow(double z) {
    return LAW.cumulativeProbability(z);
  }

  /**
   * The value below which a share of the distribution lies.
   *
   * @param share the share, between 0 and 1 without these
   * @return the value, in standard deviations
   */
  public static double quantile(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("a share lies between 0 and 1 but was " + share);
    }
    return LAW.inverseCumulativeProbability(share);
  }
}
