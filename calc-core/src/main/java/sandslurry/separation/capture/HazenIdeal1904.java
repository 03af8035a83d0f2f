package sandslurry.separation.capture;

import java.util.List;
import sandslurry.correlation.Citation;
import sandslurry.correlation.Estimate;
import sandslurry.correlation.Published;

/**
 * Capture in an ideal basin: plug flow without turbulence, after Hazen.
 *
 * <pre>η = min(1, w A / Q)</pre>
 *
 * <p>η share caught; w settling velocity [m/s]; A plan area [m²]; Q flow [m³/s]. Each grain falls
 * in a straight line while the water carries it along; it is caught when it meets the floor before
 * the end. The depth cancels: a deeper lane gives more time but a longer fall. No lane of the same
 * area does better, so this is the upper bound of the family.
 *
 * <p>Source: Hazen (1904), with Camp (1946), Transactions ASCE 111:895. The equation is elementary;
 * the citations are from memory, unverified. No range is published: it is a limit.
 */
public final class HazenIdeal1904 extends Published implements CaptureRelation {
  /** Creates the relation; it has no state. */
  public HazenIdeal1904() {
    super(
        "hazen-ideal-1904",
        "Hazen, ideal basin",
        "eta = min(1, w A / Q)",
        new Citation("Hazen", 1904, "Transactions ASCE 53:45; from memory, unverified"),
        List.of());
  }

  @Override
  public Estimate fraction(BasinFlow flow, double settlingVelocityMps) {
    return Estimate.checks().value(Math.min(1, flow.fallNumber(settlingVelocityMps)));
  }
}
