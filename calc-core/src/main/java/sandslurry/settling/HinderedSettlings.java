package sandslurry.settling;

import java.util.ArrayList;
import java.util.List;
import sandslurry.correlation.Bound;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Family;
import sandslurry.material.liquid.Liquid;
import sandslurry.material.sand.Grain;

/** The catalogue of hindered-settling correlations. */
public final class HinderedSettlings {
  /** The correlation used unless another is asked for: smooth, and true to the measurements. */
  public static final HinderedSettling DEFAULT = new Rowe1987();

  /** Every correlation of the family. */
  public static final Family<HinderedSettling> FAMILY =
      Family.of("hindered settling", DEFAULT, new RichardsonZaki1954(), new GarsideAlDibouni1977());

  private HinderedSettlings() {}

  /**
   * Settling velocity of a grain among others: w (1 − C)ⁿ, with n at the Reynolds number of the
   * grain falling alone.
   *
   * <p>The velocity is that against the vessel, not against the liquid that the sand displaces
   * upwards. It must not be corrected again by a correlation that contains (1 − C) itself.
   *
   * @param lone the correlation for one grain
   * @param law the correlation for the crowd
   * @param grain the grain
   * @param liquid the liquid with its fines
   * @param volumeFraction volume of all sand over volume of mixture, from 0 and below 1
   * @return the velocity [m/s], and what lay outside the range of either correlation
   */
  static Estimate hinderedVelocityMps(
      SettlingVelocityModel lone,
      HinderedSettling law,
      Grain grain,
      Liquid liquid,
      double volumeFraction) {
    Estimate velocity = lone.velocityMps(grain, liquid);
    double reynolds = GrainNumbers.of(grain, liquid).reynolds(velocity.value());
    Estimate factor = law.factor(reynolds, volumeFraction);
    List<Bound.Excess> excesses = new ArrayList<>(velocity.excesses());
    excesses.addAll(factor.excesses());
    return new Estimate(velocity.value() * factor.value(), excesses);
  }
}
